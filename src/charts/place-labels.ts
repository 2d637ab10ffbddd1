/** Something on the plot, px from its top left corner. */
export interface Box {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

/**
 * The first of several places for a label that covers least of what is drawn already and stays on the plot.
 *
 * @param candidates boxes in order of liking, at least one
 * @param taken      boxes that are better left visible
 * @param plot       the area to stay on
 */
export function leastCovering(candidates: readonly Box[], taken: readonly Box[], plot: Box): Box {
  let best = candidates[0]!;
  let least = Number.POSITIVE_INFINITY;
  for (const box of candidates) {
    const outside = area(box) - overlap(box, plot);
    const cost = 4 * outside + taken.reduce((sum, other) => sum + overlap(box, other), 0);
    if (cost < least - 1e-6) {
      least = cost;
      best = box;
    }
  }
  return best;
}

/** Shared area of two boxes, px²; 0 when they do not meet. */
export function overlap(a: Box, b: Box): number {
  const width = Math.min(a.right, b.right) - Math.max(a.left, b.left);
  const height = Math.min(a.bottom, b.bottom) - Math.max(a.top, b.top);
  return Math.max(0, width) * Math.max(0, height);
}

/** Box of a line of text around its middle. */
export function boxAround(x: number, y: number, width: number, height: number): Box {
  return { left: x - width / 2, right: x + width / 2, top: y - height / 2, bottom: y + height / 2 };
}

function area(box: Box): number {
  return (box.right - box.left) * (box.bottom - box.top);
}
