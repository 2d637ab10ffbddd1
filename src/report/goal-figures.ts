import { type Interval, tInterval } from "../stats/interval.ts";
import { mean } from "../stats/mean.ts";
import { satterthwaite, type VarianceTerm } from "../stats/satterthwaite.ts";
import { sd } from "../stats/sd.ts";
import type { EstimatedShift } from "../stats/session-line.ts";
import type { BlockIndices } from "./blocks.ts";
import type { GoalReport } from "./schema.ts";

/** What a goal looks at, session by session. */
export interface SessionFigures {
  /** In order of day. */
  readonly figures: readonly number[];
  /** The figures are shares of swings, 0 to 1. */
  readonly shares: boolean;
  /** Estimated offsets that stand in the figures of a joined line; for shares it only counts whether their `shares` are 0. */
  readonly shifts: readonly EstimatedShift[];
  /** What likeness of neighbouring sessions costs: factor of the error of a mean. */
  readonly inflation: number;
}

/** Start, standing and the way between, as far as both ends are known. */
export type GoalFigures = Pick<GoalReport, "baseline" | "current" | "progress" | "ci95" | "currentCi95">;

/**
 * What the offsets' errors add to the variance of a weighted sum of the figures. A mean moves with the offset; how a share of swings
 * would move nobody knows.
 *
 * @param weights of each session; 0 where it is not in the sum
 * @returns null where an offset stands in a share
 */
function ofOffsets(weights: readonly number[], { shares, shifts }: SessionFigures): VarianceTerm[] | null {
  const parts = shifts.map((shift) => weights.map((weight, i) => weight * shift.shares[i]!));
  if (shares) return parts.some((part) => part.some((one) => one !== 0)) ? null : [];
  return shifts.map(({ se, df }, k) => ({ variance: (parts[k]!.reduce((sum, one) => sum + one, 0) * se) ** 2, df }));
}

/** Variance of the mean of a block's figures; neighbours that are alike tell less than their number. */
function ofMean(figures: readonly number[], inflation: number): VarianceTerm {
  const independent = figures.length / inflation ** 2;
  return { variance: (sd(figures) ?? 0) ** 2 / independent, df: Math.max(1, independent - 1) };
}

/** t interval with the scatter of the sessions and the errors of the offsets together; width 0 where nothing varies. */
function intervalOf(estimate: number, scatter: readonly VarianceTerm[], offsets: readonly VarianceTerm[] | null) {
  if (offsets === null) return null;
  const { variance, df } = satterthwaite([...scatter, ...offsets]);
  return tInterval(estimate, Math.sqrt(variance), df, 0.95);
}

/**
 * Part of the way from start to goal: 0 at the start, 1 at the goal, below 0 for a step back. Null when the start was at the goal or
 * past it already: there was no way to go.
 */
function progressOf(baseline: number, current: number, wanted: number, better: "higher" | "lower" | null) {
  const toGo = wanted - baseline;
  const thereAlready = better === null || (better === "higher" ? toGo <= 0 : toGo >= 0);
  return thereAlready ? null : { toGo, progress: (current - baseline) / toGo };
}

const NOTHING: GoalFigures = { baseline: null, current: null, progress: null, ci95: null, currentCi95: null };

/**
 * Figures of the two blocks with their 95 % intervals.
 *
 * `currentCi95`: t interval of the mean of the last block's session figures, widened for likeness of neighbours; shares stay in 0 to 1. `ci95`: Welch's interval of the
 * change between the blocks, divided by the way to go, which is taken as fixed. On a joined line both also hold the errors of the
 * offsets, by Satterthwaite; an interval that cannot hold them is null.
 *
 * @param blocks null where the line is broken or too short: then everything is null
 * @param wanted the goal, in the unit of the figures
 * @param direction which way the goal lies, from the baseline
 */
export function goalFigures(
  of: SessionFigures,
  blocks: BlockIndices | null,
  wanted: number,
  direction: (baseline: number) => "higher" | "lower" | null,
): GoalFigures {
  const [first, last] = [blocks?.first, blocks?.last].map((indices) => (indices ?? []).map((i) => of.figures[i]!));
  const [baseline, current] = [mean(first ?? []), mean(last ?? [])];
  if (!blocks || !first || !last || baseline === null || current === null) return NOTHING;
  const weight = (indices: readonly number[]) =>
    of.figures.map((_, i) => (indices.includes(i) ? 1 / indices.length : 0));
  const [early, late] = [weight(blocks.first), weight(blocks.last)];
  const now = intervalOf(current, [ofMean(last, of.inflation)], ofOffsets(late, of));
  const way = progressOf(baseline, current, wanted, direction(baseline));
  const between = late.map((one, i) => one - early[i]!);
  const change = intervalOf(
    current - baseline,
    [ofMean(first, of.inflation), ofMean(last, of.inflation)],
    ofOffsets(between, of),
  );
  return {
    baseline,
    current,
    progress: way === null ? null : way.progress,
    ci95: way === null ? null : inOrder(change, way.toGo),
    currentCi95: now && (of.shares ? [Math.max(0, now[0]), Math.min(1, now[1])] : [...now]),
  };
}

/** An interval of a change as parts of the way to go; a way down turns its ends. */
function inOrder(change: Interval | null, toGo: number): [number, number] | null {
  if (change === null) return null;
  const [low, high] = [change[0] / toGo, change[1] / toGo];
  return low <= high ? [low, high] : [high, low];
}
