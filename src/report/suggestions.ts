import { type Step, stepScan, VALUES_PER_SIDE, VALUES_TO_SCAN } from "../stats/step-scan.ts";
import { DAY_MS, dayOf } from "./calendar.ts";
import type { Strand } from "./group.ts";
import { type Line, type LineContext, lineOf } from "./line.ts";
import type { AthleteReport, SessionValue } from "./schema.ts";
import { weeksOf } from "./sessions.ts";

/** Chance, at most, that a steady line with independent scatter is said to have a step. */
export const FALSE_ALARM = 0.01;
/** Swings of a session below which it is left out of the search. */
export const SWINGS_PER_SESSION = 4;
/** Days within which two steps are taken to be one event. */
const SAME_EVENT_DAYS = 10;

type Suggestion = AthleteReport["suggestions"][number];

/** Sessions between two known breaks that were searched, and the step that was found there. */
interface Searched {
  readonly strand: Strand;
  readonly sessions: readonly SessionValue[];
  readonly step: Step | null;
}

/** Parts of a line in which the set-up is not known to have changed. */
function unbroken({ sessions, breaks, broken }: Line): SessionValue[][] {
  if (!broken) return [[...sessions]];
  const starts = ["", ...new Set(breaks.map(({ date }) => date))];
  return starts.map((start, i) => {
    const next = starts[i + 1];
    return sessions.filter(({ date }) => date >= start && (next === undefined || date < next));
  });
}

function search(strand: Strand, context: LineContext): Searched[] {
  return unbroken(lineOf([strand], context)).flatMap((part) => {
    const sessions = part.filter(({ n }) => n >= SWINGS_PER_SESSION);
    if (sessions.length < VALUES_TO_SCAN) return [];
    const step = stepScan(
      weeksOf(sessions),
      sessions.map((session) => session.median),
    );
    return [{ strand, sessions, step: step !== null && step.p < FALSE_ALARM ? step : null }];
  });
}

const dayOfStep = ({ sessions, step }: Searched): number | null => (step ? dayOf(sessions[step.at]!.date) : null);

/** How many searched series have enough sessions on either side of a day, and how many of them stepped around it. */
function around(day: number, searched: readonly Searched[]): Suggestion["sameSide"] {
  const near = searched.filter(({ sessions }) => {
    const before = sessions.filter(({ date }) => dayOf(date) < day).length;
    return before >= VALUES_PER_SIDE && sessions.length - before >= VALUES_PER_SIDE;
  });
  const moved = near.filter((one) => {
    const other = dayOfStep(one);
    return other !== null && Math.abs(other - day) <= SAME_EVENT_DAYS * DAY_MS;
  });
  return { searched: near.length, moved: moved.length };
}

/**
 * What the other series did around a step: a swapped sensor moves the series of its side alone, while a hitter, or a bat, moves
 * both sides. `not-measured` when none of the other side could be searched around that day.
 */
function company(found: Searched, day: number, all: readonly Searched[]): Pick<Suggestion, "sameSide" | "otherSide"> {
  const { side } = found.strand.metric;
  const of = (wanted: (other: Searched) => boolean) => around(day, all.filter(wanted));
  const other = of(({ strand }) => side !== "own" && strand.metric.side !== "own" && strand.metric.side !== side);
  return {
    sameSide: of((one) => one !== found && one.strand.metric.side === side),
    otherSide: other.searched === 0 ? "not-measured" : other.moved > 0 ? "moved" : "still",
  };
}

/**
 * Steps in an athlete's own session medians that look as if something had been swapped and nobody had written it down: one at
 * most in each stretch of each condition. Of a hundred steady series about one is suggested all the same (see `stepScan`);
 * `sameSide` and `otherSide` help to tell. Nothing is changed by a suggestion: a line in devices.csv or the date of a game bat
 * breaks the series.
 *
 * @returns in order of date, then of the metrics
 */
export function suggestionsOf(strands: readonly Strand[], context: LineContext): Suggestion[] {
  const all = strands.flatMap((strand) => search(strand, context));
  const found = all.flatMap((one): Suggestion[] => {
    const day = dayOfStep(one);
    if (one.step === null || day === null) return [];
    const { metric, condition } = one.strand;
    const { at, size, p } = one.step;
    return [
      {
        kind: "possible-set-up-change",
        metric: metric.id,
        unit: metric.unit,
        decimals: metric.decimals,
        condition,
        date: one.sessions[at]!.date,
        previous: one.sessions[at - 1]!.date,
        size,
        sessions: [at, one.sessions.length - at],
        p,
        ...company(one, day, all),
      },
    ];
  });
  return found.sort((a, b) => (a.date < b.date ? -1 : a.date > b.date ? 1 : 0));
}
