import type { Interval } from "../../stats/interval.ts";
import type { Verdict } from "./verdict.ts";

/** A slope and its interval; the interval is null where none can be given. */
export interface Look {
  readonly slope: number;
  readonly interval: Interval | null;
}

export type SecondLook = "agrees" | "differs" | "none";

const excludesZero = ([low, high]: Interval): boolean => low > 0 || high < 0;

/**
 * Does the rank-based slope (Theil-Sen, Sen's interval) bear the line out? It differs when the two slopes have opposite signs or when
 * only one interval excludes 0. Without an interval there is no second look.
 */
export function secondLook(
  line: { readonly slope: number; readonly interval: Interval },
  other: Look | null,
): SecondLook {
  if (other === null || other.interval === null) return "none";
  if (line.slope * other.slope < 0) return "differs";
  return excludesZero(line.interval) === excludesZero(other.interval) ? "agrees" : "differs";
}

/**
 * The verdict after the second look. A change that it does not bear out cannot be told; "clear" is not said without one. "Same"
 * stands unless the second interval excludes 0: two slopes near 0 may well have opposite signs.
 */
export function afterSecondLook(verdict: Verdict, look: SecondLook, other: Look | null): Verdict {
  if (look === "none") {
    if (verdict === "clear-improvement") return "improvement";
    return verdict === "clear-decline" ? "decline" : verdict;
  }
  if (look === "agrees") return verdict;
  const moves = other?.interval ? excludesZero(other.interval) : false;
  return verdict === "same" && !moves ? "same" : "cannot-tell";
}
