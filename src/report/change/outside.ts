import type { Interval } from "../../stats/interval.ts";
import type { ReadAs } from "../line.ts";

/**
 * A value read as its distance outside a window: 0 inside, both ends included, else how far it is to the nearer end. Less is
 * better, whichever side the hitter comes from.
 */
export function outsideOf([low, high]: Interval): ReadAs {
  return {
    value: (value) => (value < low ? low - value : value > high ? value - high : 0),
    slope: (value) => (value < low ? -1 : value > high ? 1 : 0),
  };
}
