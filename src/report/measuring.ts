import { gameBatOn, type Profile } from "../schema/profile.ts";
import type { NotCountedReason } from "../schema/reasons.ts";
import type { RepTable } from "../schema/season.ts";
import type { Ball, Device, Implement } from "../schema/tables.ts";
import { conditionKey } from "./condition.ts";
import type { AthleteReport, Condition } from "./schema.ts";

type Measuring = AthleteReport["measuring"];

interface Known {
  readonly implements: readonly Implement[];
  readonly balls: readonly Ball[];
  readonly devices: readonly Device[];
}

/** How often each word stands in the counted rows of the given columns, most frequent first, then by name. */
function tally(rows: readonly number[], ...columns: (readonly (string | null)[] | undefined)[]): [string, number][] {
  const counts = new Map<string, number>();
  for (const column of columns) {
    for (const i of rows) {
      const word = column?.[i];
      if (word) counts.set(word, (counts.get(word) ?? 0) + 1);
    }
  }
  return [...counts].sort(([a, n], [b, m]) => m - n || (a < b ? -1 : 1));
}

function pitches(reps: RepTable, rows: readonly number[], conditions: readonly Condition[]): Measuring["pitchSpeeds"] {
  const byKey = new Map<string, Measuring["pitchSpeeds"][number]>();
  for (const i of rows) {
    const { environment, pitchSpeed, pitchSpeedAt } = conditions[i]!;
    if (!environment || !pitchSpeed) continue;
    const distanceFt = reps.numbers.pitch_distance?.[i] ?? null;
    const key = JSON.stringify([conditionKey({ environment, pitchSpeed }), pitchSpeedAt ?? null, distanceFt]);
    const found = byKey.get(key);
    if (found) found.swings += 1;
    else byKey.set(key, { environment, pitchSpeed, at: pitchSpeedAt ?? null, distanceFt, swings: 1 });
  }
  return [...byKey.entries()].sort(([a], [b]) => (a < b ? -1 : 1)).map(([, value]) => value);
}

/** The measuring record of the counted swings: which devices, bats, balls, machine speeds and places they name. */
export function measuringOf(
  reps: RepTable,
  judged: readonly (NotCountedReason | null)[],
  conditions: readonly Condition[],
  profile: Profile,
  known: Known,
): Measuring {
  const rows = judged.flatMap((reason, i) => (reason === null ? [i] : []));
  const bats = reps.date.map((date, i) => {
    const bat = conditions[i]?.implement ?? null;
    return bat === "game" ? (gameBatOn(profile, date) ?? bat) : bat;
  });
  return {
    devices: tally(rows, reps.words.device_bat, reps.words.device_ball).map(([id, swings]) => {
      const device = known.devices.find((one) => one.id === id);
      return {
        id,
        kind: device?.kind ?? null,
        measures: device?.measures ?? null,
        pointOnBat: device?.point_on_bat ?? null,
        from: device?.from ?? null,
        to: device?.to ?? null,
        swings,
      };
    }),
    bats: tally(rows, bats).map(([id, swings]) => {
      const bat = known.implements.find((one) => one.id === id);
      const { label = null, length_in: lengthIn = null, weight_oz: weightOz = null, role = null } = bat ?? {};
      return { id, label, lengthIn, weightOz, role, from: null, swings };
    }),
    balls: tally(rows, reps.words.ball).map(([id, swings]) => {
      const ball = known.balls.find((one) => one.id === id);
      return { id, label: ball?.label ?? null, kind: ball?.kind ?? null, swings };
    }),
    pitchSpeeds: pitches(reps, rows, conditions),
    places: tally(rows, reps.words.place).map(([place, swings]) => ({ place, swings })),
  };
}
