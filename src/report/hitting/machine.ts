import { dragPerMetre } from "../../hitting/ball.ts";
import { axisDegrees, axisToClock, equalTimeSpeed, flightTime, ROOM_DENSITY, speedAfter } from "../../hitting/pitch.ts";
import { METRES_PER_FOOT, MPS_PER_MPH } from "../../schema/units.ts";
import { circular } from "../../stats/circular.ts";
import { median } from "../../stats/median.ts";
import type { HittingReport } from "../hitting-schema.ts";
import { ballFor } from "./contact.ts";
import { daysIn, grouped, type Hitting, rowsFor, valuesOf } from "./swings.ts";

type Machine = HittingReport["machine"][number];

/** Days below which a machine's setting is no part of the season's record. */
const LEAST_DAYS = 3;
/** Distances of release that other leagues pitch from, ft (reference pages; leagues differ). */
const DISTANCES = { baseball: [46, 50, 54, 60.5], softball: [35, 40, 43] } as const;
/** A machine that stands as far away needs no other speed. */
const SAME_FT = 0.5;

/** Settings of the machine in the words of another club: speed, distance, time, speed at the plate, spin. */
export function machineReport(hitting: Hitting): Machine[] {
  const { conditions, athlete } = hitting;
  const { reps } = athlete;
  const rows = rowsFor("bat", hitting).filter(
    (row) => conditions[row]!.environment === "machine" && reps.numbers.pitch_speed?.[row] != null,
  );
  const key = (row: number) =>
    JSON.stringify([
      reps.words.pitch_type?.[row] ?? null,
      conditions[row]!.ball ?? null,
      conditions[row]!.pitchSpeed ?? null,
      reps.words.pitch_speed_at?.[row] ?? null,
      reps.numbers.pitch_distance?.[row] ?? null,
    ]);
  return [...grouped(rows, key)]
    .sort(([, a], [, b]) => b.length - a.length)
    .filter(([, list]) => daysIn(hitting, list) >= LEAST_DAYS)
    .map(([, list]) => settingOf(hitting, list));
}

function settingOf(hitting: Hitting, rows: readonly number[]): Machine {
  const { reps, profile } = hitting.athlete;
  const first = rows[0]!;
  const ball = hitting.conditions[first]!.ball ?? null;
  const of = ballFor(hitting, ball);
  const speed = median(valuesOf(hitting, "pitch_speed", rows))!;
  const at = reps.words.pitch_speed_at?.[first] ?? null;
  const distanceFt = reps.numbers.pitch_distance?.[first] ?? null;
  const known = of !== null && distanceFt !== null && distanceFt > 0 && speed > 0 && at !== "plate";
  const k = known ? dragPerMetre(of.ball, of.drag, ROOM_DENSITY) : 0;
  const metres = (distanceFt ?? 0) * METRES_PER_FOOT;
  const sport = profile.sport === "softball" ? "softball" : "baseball";
  return {
    environment: "machine",
    pitchType: reps.words.pitch_type?.[first] ?? null,
    ball,
    swings: rows.length,
    days: daysIn(hitting, rows),
    speed,
    at,
    distanceFt,
    flightTimeS: known ? flightTime(speed * MPS_PER_MPH, metres, k) : null,
    plateSpeed: at === "plate" ? speed : known ? speedAfter(speed, metres, k) : null,
    spinRpm: median(valuesOf(hitting, "spin", rows)),
    axis: axisOf(hitting, rows),
    equalTime:
      distanceFt === null || distanceFt <= 0 || speed <= 0 || profile.sport === "other"
        ? []
        : DISTANCES[sport]
            .filter((other) => Math.abs(other - distanceFt) > SAME_FT)
            .map((other) => ({ distanceFt: other, mph: equalTimeSpeed(speed, distanceFt, other) })),
  };
}

/** Mean direction of the spin: directions go round, so 11:45 and 0:15 meet at 12:00. */
function axisOf(hitting: Hitting, rows: readonly number[]): Machine["axis"] {
  const written = hitting.athlete.reps.words.spin_axis;
  const degrees = rows.flatMap((row) => axisDegrees(written?.[row] ?? "") ?? []);
  const found = circular(degrees, 360);
  if (found === null || found.meanDirection === null) return null;
  return { ...axisToClock(found.meanDirection), agreement: found.resultantLength };
}
