/**
 * Why no line can be drawn: fewer than 2 points, or all points at one x.
 * `n` is the number of points.
 */
export interface NoLine {
  readonly kind: "no-line";
  readonly n: number;
  readonly reason: "too-few" | "same-x";
}
