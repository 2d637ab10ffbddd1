import { gameBatOn } from "../schema/profile.ts";
import type { AthleteSeason } from "../schema/season.ts";
import { tInterval } from "../stats/interval.ts";
import { type WelchDifference, welch } from "../stats/welch.ts";
import { block, SESSIONS_PER_BLOCK } from "./blocks.ts";
import { conditionKey, elsewhere } from "./condition.ts";
import type { Strand } from "./group.ts";
import type { AthleteReport, Series } from "./schema.ts";
import type { SeriesContext } from "./series.ts";
import type { SessionReps } from "./sessions.ts";

type CheckIn = AthleteReport["checkIns"][number];
type Answer = Pick<CheckIn, "difference" | "worth" | "answer" | "why">;

const without = (why: NonNullable<CheckIn["why"]>): Answer => ({ difference: null, worth: null, answer: null, why });

/** What measured a value, as far as the files name it: a line of devices.csv, else the name in the row itself. */
function measuredWith({ words }: AthleteSeason["reps"], { metric }: Strand, session: SessionReps): (string | null)[] {
  const names = metric.side === "bat" ? words.device_bat : words.device_ball;
  return session.rows.map((row, i) => {
    const line = session.by[i]?.line ?? null;
    return line === null ? (names?.[row] ?? null) : `line ${line}`;
  });
}

/** Why the two do not read alike; null where one and the same device measured both. */
function sameDevice(reps: AthleteSeason["reps"], there: [Strand, SessionReps[]], here: [Strand, SessionReps[]]) {
  const used = [there, here].flatMap(([strand, of]) => of.flatMap((one) => measuredWith(reps, strand, one)));
  if (used.includes(null)) return "device-unknown";
  return new Set(used).size > 1 ? "other-device" : null;
}

const means = (of: readonly Series["sessions"][number][]) => of.map(({ mean }) => mean);

/** The two ends of a difference at a level; both at the difference where no day differs from another. */
function endsOf({ difference, se, df }: WelchDifference, level: number): [number, number] {
  const interval = se === null || df === null ? null : tInterval(difference, se, df, level);
  return interval === null ? [difference, difference] : [...interval];
}

/**
 * Did it hold? Sessions since the last block began, elsewhere less here, with Welch's interval on session means. It held where even the
 * worse end of the 90 % interval (5 % to one side) lies above less than the smallest change that matters; it is lower where
 * the whole 95 % interval is worse.
 */
function compared(
  here: Pick<Series, "better">,
  last: readonly Series["sessions"][number][],
  there: readonly Series["sessions"][number][],
  worth: number | null,
): Answer {
  const found = welch(means(last), means(there));
  if (found === null) return without("too-few-there");
  const [ci95, ci90] = [endsOf(found, 0.95), endsOf(found, 0.9)];
  const difference = { estimate: found.difference, ci95, ci90, df: found.df };
  if (here.better === "window") return { difference, worth, answer: null, why: "no-better" };
  const up = here.better === "higher";
  const worst = up ? ci90[0] : -ci90[1];
  const best = up ? ci95[1] : -ci95[0];
  if (worth !== null && worst > -worth) return { difference, worth, answer: "held", why: null };
  if (best < 0) return { difference, worth, answer: "lower", why: null };
  if (worth === null) return { difference, worth, answer: null, why: "no-yardstick" };
  return { difference, worth, answer: "cannot-tell", why: null };
}

/**
 * Check-ins from home, the club and games: each of the measures' metrics in each way it was swung elsewhere, held against the last block of
 * the same at the facility where that was measured alike, with the same game bat, on three sessions or more at either place; else why not.
 * Tests stay among tests.
 *
 * @param series of the report, in their places
 */
export function checkInsOf(
  strands: readonly Strand[],
  series: readonly Series[],
  { profile, reps }: Pick<AthleteSeason, "profile" | "reps">,
  context: Pick<SeriesContext, "judging">,
): CheckIn[] {
  const measured = new Set(series.flatMap(({ metric, measure }) => (measure === null ? [] : [metric])));
  const indexOf = ({ metric, condition }: Strand) =>
    series.findIndex(
      (one) => one.metric === metric.id && !one.pooled && conditionKey(one.condition) === conditionKey(condition),
    );
  return strands.flatMap((strand): CheckIn[] => {
    const { metric, condition } = strand;
    const place = elsewhere(condition);
    if (place === null || !measured.has(metric.id) || condition.purpose === "test" || condition.swing) return [];
    const own = indexOf(strand);
    if (own < 0) return [];
    const { place: _, ...bare } = condition;
    const mate = strands.find(
      (one) =>
        one.metric.id === metric.id &&
        [bare, { ...bare, place: "facility" }].some((key) => conditionKey(key) === conditionKey(one.condition)),
    );
    const hereIndex = mate === undefined ? -1 : indexOf(mate);
    const here = series[hereIndex];
    const last = here?.last ?? null;
    const since = series[own]!.sessions.filter(({ date }) => last === null || date >= last.from);
    const [first] = since;
    const told = {
      place,
      metric: metric.id,
      unit: metric.unit,
      decimals: metric.decimals,
      condition,
      series: own,
      here: hereIndex < 0 ? null : hereIndex,
      there: first === undefined ? null : block(since, [...since.keys()]),
    };
    const answered = (): Answer => {
      if (here === undefined || mate === undefined) return without("not-here");
      if (here.breaks.length > 0 && !here.joined) return without("set-up-changed");
      if (last === null) return without("too-few-here");
      if (since.length < SESSIONS_PER_BLOCK) return without("too-few-there");
      const inLast = ({ date }: { readonly date: string }) => date >= last.from && date <= last.to;
      const device = sameDevice(
        reps,
        [strand, strand.sessions.filter(({ date }) => date >= last.from)],
        [mate, mate.sessions.filter(inLast)],
      );
      if (device !== null) return without(device);
      const bats = new Set(
        [last.from, last.to, ...since.map(({ date }) => date)].map((day) => gameBatOn(profile, day)),
      );
      if (condition.implement === "game" && bats.size > 1) return without("other-bat");
      const worth = here.worth ?? context.judging({ condition: mate.condition, pooled: false, parts: [mate] }).worth;
      return compared(here, here.sessions.filter(inLast), since, worth?.value ?? null);
    };
    return [{ ...told, ...answered() }];
  });
}
