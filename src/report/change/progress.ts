import type { Metric } from "../../schema/metric.ts";
import type { Line } from "../line.ts";
import type { Match } from "../match.ts";
import type { Series } from "../schema.ts";
import { changeBlock } from "./change-block.ts";
import { fewDays, fewSessions } from "./few-sessions.ts";
import type { Judging, Told } from "./judging.ts";
import { lineVerdict, look } from "./line-verdict.ts";
import type { Looked } from "./primary.ts";
import { saying } from "./sentence.ts";
import { trendOf } from "./trend-block.ts";
import { noiseOf } from "./yardsticks.ts";

/** Sessions from which a change gets a verdict. */
const SESSIONS_FOR_A_VERDICT = 5;
/** Sessions from which there is a line. */
const SESSIONS_FOR_A_LINE = 3;

/** The parts of a series that tell of change. */
export type Progress = Pick<
  Series,
  "change" | "trend" | "sessionSd" | "repSd" | "noise" | "worth" | "sessionsNeeded" | "notes" | "says"
>;

type Note = Series["notes"][number];

function judge(found: Match, line: Line, looked: Looked | null, noise: Series["noise"], judging: Judging): Told {
  const { sessions, broken } = line;
  if (broken) return { change: null, sessionsNeeded: null, notes: ["broken"], says: saying("broken", {}) };
  const isTest = found.parts.every(({ condition }) => condition.purpose === "test");
  if (sessions.length >= SESSIONS_FOR_A_VERDICT && looked !== null) return lineVerdict(found, line, looked, judging);
  const few = sessions.length > 1 && sessions.length < SESSIONS_FOR_A_VERDICT;
  return (
    (few ? fewDays(found, sessions, isTest, noise, judging) : null) ?? fewSessions(sessions, looked, judging.worth)
  );
}

/** What is known of how much a change would have to be. */
function yardNotes({ better }: Metric, worth: Series["worth"], noise: Series["noise"], judged: boolean): Note[] {
  if (!judged) return [];
  if (worth === null) return better === "window" ? [] : ["no-worth"];
  return noise !== null && worth.value < noise.typicalError ? ["worth-below-noise"] : [];
}

/**
 * How a series changed: the trend in every way it is looked at, the change with its interval, and for a measure both yardsticks, the
 * verdict and its sentence. Sessions are the unit: swings of one day share the day.
 *
 * | sessions | what is told                                                                              |
 * | 1        | nothing                                                                                   |
 * | 2        | the difference, within or beyond noise                                                    |
 * | 3-4      | the line, no verdict                                                                      |
 * | 5 up     | the verdict, "few sessions" below ten                                                     |
 *
 * A test with fewer than five days, two or more at either end, is judged by its windows (`windowChange`).
 *
 * @param judging null for a series that is no measure: figures alone
 */
export function progressOf(found: Match, line: Line, judging: Judging | null): Progress {
  const { metric } = found.parts[0]!;
  const looked = line.broken || line.sessions.length < SESSIONS_FOR_A_LINE ? null : look(found, line);
  const common = {
    trend: trendOf(looked),
    sessionSd: looked?.mixed?.sessionSd ?? looked?.line.residualSd ?? null,
    repSd: looked?.mixed?.repSd ?? null,
  };
  if (judging === null) {
    const rest = { smallestWorthwhile: metric.smallestWorthwhile ?? null, outside: null, p: null, beyondNoise: null };
    const change = looked && changeBlock(looked.primary, { ...rest, verdict: "not-a-measure" });
    return { ...common, change, noise: null, worth: null, sessionsNeeded: null, notes: [], says: null };
  }
  const isTest = found.parts.every(({ condition }) => condition.purpose === "test");
  const noise = noiseOf(metric, judging.fact, isTest);
  const told = judge(found, line, looked, noise, judging);
  const judged = told.change !== null && told.change.verdict !== null;
  return {
    ...common,
    ...told,
    noise,
    worth: judging.worth,
    notes: [...told.notes, ...yardNotes(metric, judging.worth, noise, judged)],
  };
}
