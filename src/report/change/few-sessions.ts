import type { Match } from "../match.ts";
import type { Series, SessionValue } from "../schema.ts";
import { changeBlock, turned } from "./change-block.ts";
import type { Judging, Told } from "./judging.ts";
import type { Looked } from "./primary.ts";
import { saying, sentence } from "./sentence.ts";
import { endsOf, fewDaysChange, windowChange } from "./tests-change.ts";
import { verdictOf } from "./verdict.ts";
import { testScatter } from "./yardsticks.ts";

/** Few days of a test, or two sessions: the difference between the ends against the noise. */
export function fewDays(
  found: Match,
  sessions: readonly SessionValue[],
  isTest: boolean,
  noise: Series["noise"],
  judging: Judging,
): Told | null {
  const { metric } = found.parts[0]!;
  const { season, fact, worth } = judging;
  const worthwhile = worth?.value ?? null;
  const ends = endsOf(sessions, season);
  const rest = { smallestWorthwhile: worthwhile, outside: null };
  // A distance outside a window has a scatter of its own, which the group's days of plain values do not tell.
  const windows = isTest && metric.better !== "window" ? windowChange(ends, testScatter(fact)) : null;
  if (windows !== null) {
    const verdict = windows.judged ? verdictOf(turned(windows, metric.better), worthwhile) : "too-few";
    const p = windows.judged ? windows.p : null;
    const args = { verdict, ci95: windows.ci95, worth: worthwhile, sessions: sessions.length, needed: null };
    return {
      change: changeBlock(windows, { ...rest, verdict, p, beyondNoise: null }),
      sessionsNeeded: null,
      notes: windows.judged ? ["few-sessions"] : ["few-sessions", "noise-unknown"],
      says: windows.judged
        ? sentence({ ...args, looksDiffer: false, outside: null })
        : saying("tests-noise-unknown", { sessions: sessions.length }),
    };
  }
  if (!isTest && sessions.length > 2) return null;
  const two = fewDaysChange(ends, noise);
  if (two === null) return sessions.length > 2 ? null : unknownNoise(sessions.length);
  return {
    change: changeBlock(two, { ...rest, verdict: "too-few", p: null, beyondNoise: two.beyondNoise }),
    sessionsNeeded: null,
    notes: ["few-sessions"],
    says: saying(two.beyondNoise ? "two-beyond-noise" : "two-within-noise", {
      sessions: sessions.length,
      noise: noise?.mdc95,
    }),
  };
}

const unknownNoise = (sessions: number): Told => ({
  change: null,
  sessionsNeeded: null,
  notes: ["few-sessions", "noise-unknown"],
  says: saying("two-noise-unknown", { sessions }),
});

/** Three or four sessions: a line, and no verdict on it. */
export function fewSessions(sessions: readonly SessionValue[], looked: Looked | null, worth: Series["worth"]): Told {
  const rest = { smallestWorthwhile: worth?.value ?? null, outside: null, p: null, beyondNoise: null };
  return {
    change: looked && changeBlock(looked.primary, { ...rest, verdict: "too-few" }),
    sessionsNeeded: null,
    notes: ["few-sessions"],
    says: saying(sessions.length === 1 ? "one-session" : "too-few", { sessions: sessions.length }),
  };
}
