/** Why a row could not be read or cannot be true. Closed: a reason never changes its name. */
export const SET_ASIDE_REASONS = [
  "unreadable-date",
  "unreadable-number",
  "unreadable-row",
  "out-of-range",
  "unknown-athlete",
  "unknown-id",
  "ambiguous-name",
  "duplicate",
  "revised",
  "void",
  "summary-row",
  "unassigned-block",
  "future-date",
] as const;
export type SetAsideReason = (typeof SET_ASIDE_REASONS)[number];

/** Why a readable row feeds no series. */
export const NOT_COUNTED_REASONS = [
  "under-mark",
  "no-speed-to-judge",
  "practice",
  "take",
  "bunt",
  "check",
  "no-swing",
  "technical",
  "other-season",
] as const;
export type NotCountedReason = (typeof NOT_COUNTED_REASONS)[number];

/** Words for a change. Given to the configured measures only; every other series is `not-a-measure`. */
export const VERDICTS = [
  "clear-improvement",
  "improvement",
  "small-improvement",
  "same",
  "cannot-tell",
  "small-decline",
  "decline",
  "clear-decline",
  "too-few",
  "not-a-measure",
] as const;

/** Why a verdict is what it is, or is not there; a series may have several. */
export const VERDICT_NOTES = [
  /** Five to nine sessions: the verdict stands on few of them. */
  "few-sessions",
  /** Fewer than three weeks between the first and the last session: nothing is claimed of a season. */
  "short-span",
  /** The rank-based second look does not bear the line out: the verdict is one step more careful. */
  "second-look-differs",
  /** No second look was possible: "clear" is not said. */
  "no-second-look",
  /** What change would matter is not known for this measure. */
  "no-worth",
  /** The smallest change that matters is below the noise of one session. */
  "worth-below-noise",
  /** A window measure without a window: nothing is better or worse. */
  "no-window",
  /** The mix of set-ups inside a pool moved by more than a fifth. */
  "mix-moved",
  /** The set-up changed, and no bridge joins the values before and after. */
  "broken",
  /** Too few other athletes took the test to know its noise. */
  "noise-unknown",
  /** Days away lie between the first and the last session. */
  "absence-inside",
] as const;

/** The sentences that a page may say of a measure; the site's catalogue has one for each. */
export const SENTENCES = [
  "clear-improvement",
  "improvement",
  "improvement-unweighed",
  "small-improvement",
  "same",
  "cannot-tell",
  "cannot-tell-long",
  "cannot-tell-unweighed",
  "cannot-tell-looks-differ",
  "small-decline",
  "decline",
  "decline-unweighed",
  "clear-decline",
  "window-clear-improvement",
  "window-improvement",
  "window-improvement-unweighed",
  "window-small-improvement",
  "window-same",
  "window-cannot-tell",
  "window-small-decline",
  "window-decline",
  "window-decline-unweighed",
  "window-clear-decline",
  "no-window",
  "too-few",
  "one-session",
  "two-within-noise",
  "two-beyond-noise",
  "two-noise-unknown",
  "tests-noise-unknown",
  "mix-moved",
  "broken",
] as const;

/** How a change was computed. */
export const CHANGE_METHODS = ["session-line", "mixed", "test-windows", "two-tests"] as const;

/** Where a goal stands. */
export const GOAL_STATUSES = ["met-clear", "met-unsure", "on-course", "behind", "cannot-tell", "too-few"] as const;

/** Readers of a published report. */
export const READERS = ["family", "club"] as const;
export type Reader = (typeof READERS)[number];

/** Did what was reached here hold elsewhere? */
export const HOLD_ANSWERS = ["held", "lower", "cannot-tell"] as const;
/** Why it cannot be said. */
export const NO_HOLD_ANSWERS = [
  "not-here",
  "set-up-changed",
  "too-few-here",
  "too-few-there",
  "device-unknown",
  "other-device",
  "other-bat",
  "no-better",
  "no-yardstick",
] as const;
