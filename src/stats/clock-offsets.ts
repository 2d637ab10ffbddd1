import type { Sample } from "./sample.ts";

/** An offset of one clock against another, s, and how many pairs of rows speak for it. */
export interface OffsetCandidate {
  readonly offset: number;
  readonly support: number;
}

/**
 * Offsets at which many rows of two timed sequences meet: peaks of the smoothed count of all differences between them.
 *
 * @param a      rising times, s
 * @param b      rising times, s
 * @param most   largest offset looked for, s
 * @param width  SD of the smoothing, s
 * @param wanted number of peaks
 * @returns strongest first, at least `width` apart; none for an empty sequence
 */
export function offsetCandidates(a: Sample, b: Sample, most: number, width: number, wanted: number): OffsetCandidate[] {
  const step = width / 2;
  const bins = new Float64Array(2 * Math.ceil(most / step) + 1);
  const middle = (bins.length - 1) / 2;
  let low = 0;
  for (let i = 0; i < a.length; i += 1) {
    while (low < b.length && b[low]! < a[i]! - most) low += 1;
    for (let j = low; j < b.length && b[j]! <= a[i]! + most; j += 1) {
      const bin = Math.round((b[j]! - a[i]!) / step) + middle;
      if (bin >= 0 && bin < bins.length) bins[bin]! += 1;
    }
  }
  const smooth = smoothed(bins, width / step);
  const peaks: OffsetCandidate[] = [];
  for (let bin = 0; bin < smooth.length; bin += 1) {
    const [before, here, after] = [smooth[bin - 1] ?? -1, smooth[bin]!, smooth[bin + 1] ?? -1];
    if (here > 0 && here >= before && here > after) peaks.push({ offset: (bin - middle) * step, support: here });
  }
  return peaks.sort((one, other) => other.support - one.support || one.offset - other.offset).slice(0, wanted);
}

/** Weighted counts around each bin, by a normal kernel of so many bins. */
function smoothed(bins: Float64Array, sd: number): Float64Array {
  const reach = Math.ceil(3 * sd);
  const kernel = Array.from({ length: 2 * reach + 1 }, (_, i) => Math.exp(-((i - reach) ** 2) / (2 * sd ** 2)));
  return bins.map((_, bin) => kernel.reduce((sum, weight, i) => sum + weight * (bins[bin + i - reach] ?? 0), 0));
}
