import { tQuantile, tTwoSidedP } from "../../stats/distributions.ts";
import { meanInterval } from "../../stats/mean-interval.ts";
import { holm } from "../../stats/multiplicity.ts";
import { feeds } from "../gated.ts";
import type { HittingReport } from "../hitting-schema.ts";
import { inZone } from "../zones.ts";
import { grouped, type Hitting, shareOf, valuesOf } from "./swings.ts";

type Fitting = HittingReport["fittings"][number];
type Pair = Fitting["pairs"][number];

/** Bats of one fitting; with more nobody swings alike to the last. */
const BATS = [2, 5] as const;
/** Rounds that both bats need before their difference is told. */
const LEAST_ROUNDS = 3;
/** Corrected chance of a difference by luck below which one is told. */
const LEVEL = 0.05;
const METRICS = ["bat_speed", "exit_velocity"] as const;

/** Bats tried on one day off one feed with one ball from one side, turn about: what each did, and which differ. */
export function fittingReport(hitting: Hitting): Fitting[] {
  const { conditions, judged, athlete } = hitting;
  const rows = conditions.flatMap((condition, i) =>
    condition.purpose === "fitting" && condition.swing === undefined && condition.implement && feeds("bat", judged[i]!)
      ? [i]
      : [],
  );
  const key = (row: number) => {
    const { environment, ball, side, pitchSpeed } = conditions[row]!;
    return JSON.stringify([
      athlete.reps.date[row],
      environment ?? null,
      ball ?? null,
      side ?? null,
      pitchSpeed ?? null,
    ]);
  };
  return [...grouped(rows, key).values()].flatMap((list) => {
    const bats = grouped(list, (row) => conditions[row]!.implement!);
    if (bats.size < BATS[0] || bats.size > BATS[1]) return [];
    const { environment = null, ball = null, side = null } = conditions[list[0]!]!;
    return [
      {
        date: athlete.reps.date[list[0]!]!,
        environment,
        ball,
        side,
        bats: [...bats].map(([id, ofBat]) => batOf(hitting, id, ofBat)),
        pairs: pairsOf(hitting, bats),
      },
    ];
  });
}

function batOf(hitting: Hitting, id: string, rows: readonly number[]): Fitting["bats"][number] {
  const { season, athlete } = hitting;
  const { result } = athlete.reps.words;
  const mean = (field: string) => {
    const found = meanInterval(valuesOf(hitting, field, rows));
    return found && { ...found, ci95: found.ci95 && ([...found.ci95] as [number, number]) };
  };
  return {
    id,
    swings: rows.length,
    misses: rows.filter((row) => result?.[row] === "miss").length,
    speed: mean("bat_speed"),
    exit: mean("exit_velocity"),
    zones: season.zones.flatMap((zone) => {
      const inside = inZone(zone, athlete.reps, athlete.profile.bats);
      const read = rows.filter((row) => inside[row] !== null);
      const share = shareOf(read.filter((row) => inside[row] === 1).length, read.length);
      return share === null ? [] : [{ id: zone.id, label: zone.label, in: share }];
    }),
  };
}

/** Differences of every two bats, paired by round, with Holm's correction for all of them together. */
function pairsOf(hitting: Hitting, bats: ReadonlyMap<string, readonly number[]>): Pair[] {
  const ids = [...bats.keys()];
  const twos = ids.flatMap((bat, i) => ids.slice(i + 1).map((other) => [bat, other] as const));
  const found = METRICS.flatMap((id) => {
    const metric = hitting.season.metrics.find((one) => one.id === id);
    return metric === undefined
      ? []
      : twos.flatMap(([bat, other]) => {
          const difference = differenceOf(hitting, id, bats.get(bat)!, bats.get(other)!);
          return difference === null
            ? []
            : [{ metric: id, unit: metric.unit, decimals: metric.decimals, bat, other, ...difference }];
        });
  });
  const corrected = holm(found.map(({ p }) => p));
  return found.map((pair, i) => ({ ...pair, pHolm: corrected[i]!, differs: corrected[i]! < LEVEL }));
}

function differenceOf(hitting: Hitting, field: string, bat: readonly number[], other: readonly number[]) {
  const round = hitting.athlete.reps.numbers.round;
  const means = (rows: readonly number[]) =>
    new Map(
      [...grouped(rows, (row) => (round?.[row] == null ? null : String(round[row])))].flatMap(([name, ofRound]) => {
        const values = valuesOf(hitting, field, ofRound);
        return values.length === 0 ? [] : [[name, values.reduce((sum, one) => sum + one, 0) / values.length] as const];
      }),
    );
  const [mine, theirs] = [means(bat), means(other)];
  const found = meanInterval([...mine].flatMap(([name, mean]) => (theirs.has(name) ? [mean - theirs.get(name)!] : [])));
  if (found === null || found.n < LEAST_ROUNDS || found.ci95 === null) return null;
  const { estimate, ci95, df, n } = found;
  const half = (ci95[1] - ci95[0]) / 2;
  return { rounds: n, estimate, ci95: [...ci95] as [number, number], p: chanceOf(estimate, half, df) };
}

/** Two-sided p of no difference, from the estimate and half its 95 % interval; alike in every round is no chance, or all of it. */
function chanceOf(estimate: number, half: number, df: number): number {
  if (half === 0) return estimate === 0 ? 1 : 0;
  return tTwoSidedP((estimate * tQuantile(0.975, df)) / half, df);
}
