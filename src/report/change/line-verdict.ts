import { sessionsForChange } from "../../stats/sessions-for-change.ts";
import { DAY_MS, dayOf } from "../calendar.ts";
import { type Line, lineOf } from "../line.ts";
import type { Match } from "../match.ts";
import type { Series, SessionValue } from "../schema.ts";
import { weeksOf } from "../sessions.ts";
import { changeBlock, turned } from "./change-block.ts";
import type { Judging, Told } from "./judging.ts";
import { mixMoved } from "./mix.ts";
import { outsideOf } from "./outside.ts";
import { type Looked, lookAt } from "./primary.ts";
import { afterSecondLook, type SecondLook, secondLook } from "./second-look.ts";
import { saying, sentence } from "./sentence.ts";
import { isChange, type Verdict, verdictOf } from "./verdict.ts";

/** Sessions from which a verdict no longer stands on few. */
const MANY_SESSIONS = 10;
/** Days of a season about which something may be claimed. */
const SEASON_DAYS = 21;

type Note = Series["notes"][number];

/** One line of sessions as it is looked at: the values themselves, or their distances outside a window. */
export function look(found: Match, { sessions, pooled, shifts }: Line): Looked | null {
  const reps = found.parts.length === 1 ? pooled.sessions.map((one) => one.values) : null;
  return lookAt({ weeks: weeksOf(sessions), means: sessions.map((one) => one.mean), reps, shifts });
}

/** The distances outside the window along their line. */
function outsideBlock({ primary, line, fit }: Looked): NonNullable<NonNullable<Series["change"]>["outside"]> {
  const at = (week: number) => Math.max(0, fit.meanY + fit.slope * (week - fit.meanX));
  const { estimate, ci95, ci90, df } = primary;
  return { start: at(0), end: at(line.spanWeeks), estimate, ci95: [...ci95], ci90: [...ci90], df };
}

function notesOf(sessions: readonly SessionValue[], verdict: Verdict, seen: SecondLook, looksDiffer: boolean): Note[] {
  const days = (dayOf(sessions.at(-1)!.date) - dayOf(sessions[0]!.date)) / DAY_MS;
  return [
    ...(sessions.length < MANY_SESSIONS ? (["few-sessions"] as const) : []),
    ...(days < SEASON_DAYS ? (["short-span"] as const) : []),
    ...(looksDiffer ? (["second-look-differs"] as const) : []),
    ...(seen === "none" && isChange(verdict) ? (["no-second-look"] as const) : []),
  ];
}

/** Five sessions or more: the verdict of the line, held against the second look. */
export function lineVerdict(found: Match, line: Line, looked: Looked, judging: Judging): Told {
  const { metric } = found.parts[0]!;
  const { window, worth } = judging;
  const { sessions } = line;
  const worthwhile = worth?.value ?? null;
  const rest = { smallestWorthwhile: worthwhile, beyondNoise: null };
  const none = (note: "mix-moved" | "no-window"): Told => ({
    change: changeBlock(looked.primary, { ...rest, verdict: null, outside: null, p: null }),
    sessionsNeeded: null,
    notes: [note],
    says: saying(note, { sessions: sessions.length }),
  });
  if (mixMoved(found.parts)) return none("mix-moved");
  if (metric.better === "window" && window === null) return none("no-window");
  const judged = window === null ? looked : look(found, lineOf(found.parts, judging.lines, outsideOf(window)));
  if (judged === null) return none("no-window");
  const { primary, sen } = judged;
  const alone = verdictOf(turned(primary, window === null ? metric.better : "lower"), worthwhile);
  const seen = secondLook({ slope: primary.estimate, interval: primary.ci95 }, sen);
  const verdict = afterSecondLook(alone, seen, sen);
  const looksDiffer = verdict === "cannot-tell" && alone !== "cannot-tell";
  const scatter = (judged.line.residualSd ?? 0) * judged.line.inflation;
  const needed = worthwhile === null ? null : sessionsForChange(worthwhile, scatter);
  const outside = window === null ? null : outsideBlock(judged);
  return {
    change: changeBlock(looked.primary, { ...rest, verdict, outside, p: primary.p }),
    sessionsNeeded: needed,
    notes: notesOf(sessions, verdict, seen, looksDiffer),
    says: sentence({
      verdict,
      ci95: primary.ci95,
      worth: worthwhile,
      sessions: sessions.length,
      needed,
      looksDiffer,
      outside,
    }),
  };
}
