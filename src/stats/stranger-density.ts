import type { Sample } from "./sample.ts";

/** Bounds of the answer, and the rows that "as anywhere" counts for. */
const NEAR = { least: 0.1, most: 3, rows: 1 };

/**
 * How much likelier than anywhere a row of *another* event lies so many seconds from an event's own place: nobody swings twice in three seconds, so near
 * the place there is hardly a stranger, and a machine's strangers come at its beat. Taken from the distances between the rows themselves.
 *
 * @param a     rising times, s; at least one
 * @param noise SD of a stamp, s
 * @param sds   SDs to either side that are asked for
 * @returns 1 where rows come from anywhere; never below a tenth, as false rows keep no distance
 */
export function strangerDensity(a: Sample, noise: number, sds: number): (off: number) => number {
  const step = noise / 2;
  const reach = Math.ceil((sds * noise) / step);
  const wide = reach + 6;
  const counts = new Float64Array(2 * wide + 1);
  for (let i = 0; i < a.length; i += 1) {
    for (let k = i + 1; k < a.length; k += 1) {
      const cell = Math.round((a[k]! - a[i]!) / step);
      if (cell > wide) break;
      counts[wide + cell]! += 1;
      counts[wide - cell]! += 1;
    }
  }
  const span = Math.max(step, a[a.length - 1]! - a[0]!);
  const usual = (a.length * a.length * step) / span;
  const kernel = Array.from(
    { length: 13 },
    (_, i) => Math.exp(-(((i - 6) / 2) ** 2) / 2) / (2 * Math.sqrt(2 * Math.PI)),
  );
  const heights = Float64Array.from({ length: 2 * reach + 1 }, (_, i) => {
    const near = kernel.reduce((sum, weight, k) => sum + weight * (counts[wide - reach + i + k - 6] ?? 0), 0);
    return Math.min(NEAR.most, Math.max(NEAR.least, (near + NEAR.rows) / (usual + NEAR.rows)));
  });
  return (off) => heights[Math.min(2 * reach, Math.max(0, Math.round(off / step) + reach))]!;
}
