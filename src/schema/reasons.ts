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

/** Words for a change. Given to the configured measures only, by the statistics of progress. */
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

/** How a change was computed. */
export const CHANGE_METHODS = ["session-line", "mixed", "test-windows", "two-tests"] as const;

/** Where a goal stands. */
export const GOAL_STATUSES = ["met-clear", "met-unsure", "on-course", "behind", "cannot-tell", "too-few"] as const;

/** Readers of a published report. */
export const READERS = ["family", "club"] as const;
export type Reader = (typeof READERS)[number];
