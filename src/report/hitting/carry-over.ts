import { PITCHED_ENVIRONMENTS } from "../../schema/columns.ts";
import { meanInterval } from "../../stats/mean-interval.ts";
import type { HittingReport } from "../hitting-schema.ts";
import type { Condition } from "../schema.ts";
import {
  type DayValue,
  dailyMeans,
  daysIn,
  grouped,
  type Hitting,
  lineThrough,
  movedOf,
  rowsFor,
  shareOf,
} from "./swings.ts";

type CarryOver = HittingReport["carryOver"][number];

/** The way from practice toward a game; each step and the whole way are looked at. */
const WAY = ["tee", "side-toss", "front-toss", "overhand", "machine", "live"] as const;
/** Common days below which no gap is told. */
const LEAST_DAYS = 3;
const METRICS = ["bat_speed", "exit_velocity"] as const;

interface Place {
  readonly environment: string;
  readonly condition: Condition;
  readonly rows: readonly number[];
}

/** Rows of each environment, with bands of pitch speed apart. */
function placesOf(hitting: Hitting, rows: readonly number[]): Place[] {
  const { conditions } = hitting;
  const key = (row: number) => {
    const { environment, pitchSpeed, pitchSpeedAt } = conditions[row]!;
    return environment === undefined ? null : JSON.stringify([environment, pitchSpeed ?? null, pitchSpeedAt ?? null]);
  };
  return [...grouped(rows, key).values()].map((list) => {
    const condition = conditions[list[0]!]!;
    return { environment: condition.environment!, condition, rows: list };
  });
}

/** Steps of the way between environments that the athlete trained in, and the whole way. */
function stepsOf(environments: ReadonlySet<string>): [string, string][] {
  const been = WAY.filter((one) => environments.has(one));
  const steps = been.slice(1).map((to, i): [string, string] => [been[i]!, to]);
  const whole: [string, string][] = been.length > 2 ? [[been[0]!, been.at(-1)!]] : [];
  return [...steps, ...whole];
}

/** From tee to toss to machine with the game bat: gaps of the same day, and whether they closed over the season. */
export function carryOverReport(hitting: Hitting): CarryOver[] {
  const { conditions, season } = hitting;
  return METRICS.flatMap((id) => {
    const metric = season.metrics.find((one) => one.id === id);
    if (metric === undefined) return [];
    const rows = rowsFor(metric.side === "ball" ? "ball" : "bat", hitting).filter(
      (row) => hitting.athlete.reps.numbers[id]?.[row] != null && conditions[row]!.implement === "game",
    );
    return [...grouped(rows, (row) => conditions[row]!.side ?? "").values()].flatMap((ofSide) => {
      const places = placesOf(hitting, ofSide);
      return stepsOf(new Set(places.map(({ environment }) => environment))).flatMap(([from, to]) =>
        places
          .filter(({ environment }) => environment === to)
          .flatMap((toward) => {
            const start = places.filter(({ environment }) => environment === from).flatMap((place) => place.rows);
            const found = gapBetween(
              hitting,
              { id, unit: metric.unit, decimals: metric.decimals },
              start,
              from,
              toward,
            );
            return found === null ? [] : [found];
          }),
      );
    });
  });
}

interface Shown {
  readonly id: string;
  readonly unit: string;
  readonly decimals: number;
}

function gapBetween(
  hitting: Hitting,
  metric: Shown,
  start: readonly number[],
  from: string,
  to: Place,
): CarryOver | null {
  const [before, after] = [dailyMeans(hitting, metric.id, start), dailyMeans(hitting, metric.id, to.rows)];
  const gaps: DayValue[] = [...after].flatMap(([date, { mean }]) => {
    const other = before.get(date);
    return other === undefined ? [] : [{ date, value: mean - other.mean }];
  });
  gaps.sort((a, b) => (a.date < b.date ? -1 : 1));
  const gap = meanInterval(gaps.map(({ value }) => value));
  if (gaps.length < LEAST_DAYS || gap === null) return null;
  const days = new Set(gaps.map(({ date }) => date));
  const line = lineThrough(gaps);
  const change = movedOf(line);
  const count = (means: ReadonlyMap<string, { n: number }>) =>
    [...days].reduce((sum, day) => sum + (means.get(day)?.n ?? 0), 0);
  const ball = sameBall(hitting, start, to.rows);
  const pitchAdds = metric.id === "exit_velocity" && PITCHED_ENVIRONMENTS.includes(to.environment);
  // Another ball or a faster one is not the hitter's doing; a bat does not know what it will meet.
  const alike = metric.id === "bat_speed" || (ball !== false && !pitchAdds);
  const { implement = null, side = null, pitchSpeed = null, pitchSpeedAt = null } = to.condition;
  return {
    metric: metric.id,
    unit: metric.unit,
    decimals: metric.decimals,
    implement,
    side,
    from,
    to: to.environment,
    pitchSpeed: pitchSpeed && [...pitchSpeed],
    pitchSpeedAt,
    days: gaps.length,
    swings: [count(before), count(after)],
    gap: { ...gap, ci95: gap.ci95 && [...gap.ci95] },
    start: line?.start ?? null,
    end: line?.end ?? null,
    change,
    answer: alike ? answerOf(line, change?.ci95 ?? null) : null,
    alwaysLater: [...days].every((day) => laterOn(hitting, day, start, to.rows)),
    sameBall: ball,
    pitchAdds,
  };
}

/** A gap is closed when it ended nearer to nothing, and the change is more than chance. */
function answerOf(
  line: { readonly start: number; readonly end: number } | null,
  ci95: readonly [number, number] | null,
): NonNullable<CarryOver["answer"]> {
  if (line === null || ci95 === null || (ci95[0] <= 0 && ci95[1] >= 0)) return "cannot-tell";
  return Math.abs(line.end) < Math.abs(line.start) ? "closed" : "opened";
}

/** Did the second environment come wholly after the first that day, by the clock, else by the order of the rows? */
function laterOn({ athlete }: Hitting, day: string, from: readonly number[], to: readonly number[]): boolean {
  const { reps } = athlete;
  const when = (row: number) => reps.words.time?.[row] ?? String(reps.line[row]).padStart(9, "0");
  const ofDay = (rows: readonly number[]) => rows.filter((row) => reps.date[row] === day).map(when);
  const last = ofDay(from).sort().at(-1) ?? "";
  return ofDay(to).every((one) => one > last);
}

function sameBall({ conditions }: Hitting, from: readonly number[], to: readonly number[]): boolean | null {
  const balls = (rows: readonly number[]) => new Set(rows.map((row) => conditions[row]!.ball ?? null));
  const [before, after] = [balls(from), balls(to)];
  if (before.has(null) || after.has(null)) return null;
  return [...before, ...after].every((ball) => before.has(ball) && after.has(ball));
}

/** Balls touched of all swings whose result is known, in each band of pitch speed. */
export function contactShares(hitting: Hitting): HittingReport["contactShares"] {
  const { conditions, athlete } = hitting;
  const { result } = athlete.reps.words;
  const rows = rowsFor("bat", hitting).filter(
    (row) =>
      PITCHED_ENVIRONMENTS.includes(conditions[row]!.environment ?? "") &&
      conditions[row]!.implement === "game" &&
      ["hit", "foul", "miss"].includes(result?.[row] ?? ""),
  );
  const key = (row: number) => {
    const { environment, side, pitchSpeed, pitchSpeedAt } = conditions[row]!;
    return JSON.stringify([environment, side ?? null, pitchSpeed ?? null, pitchSpeedAt ?? null]);
  };
  return [...grouped(rows, key)]
    .sort(([a], [b]) => (a < b ? -1 : 1))
    .filter(([, list]) => daysIn(hitting, list) >= LEAST_DAYS)
    .flatMap(([, list]) => {
      const { environment, side = null, pitchSpeed = null, pitchSpeedAt = null } = conditions[list[0]!]!;
      const touched = shareOf(list.filter((row) => result?.[row] !== "miss").length, list.length);
      return touched === null
        ? []
        : [{ environment: environment!, side, pitchSpeed: pitchSpeed && [...pitchSpeed], pitchSpeedAt, touched }];
    });
}
