/** Cosine and sine of a direction. */
export interface UnitVector {
  readonly cosine: number;
  readonly sine: number;
}

/**
 * The direction after a number of turns. Quarter turns are exact, so that opposite directions cancel to 0.
 *
 * @param turns any finite number
 * @example unitVector(0.5) // => { cosine: -1, sine: 0 }
 */
export function unitVector(turns: number): UnitVector {
  const quarters = Math.round((turns % 1) * 4);
  const rest = 2 * Math.PI * ((turns % 1) - quarters / 4);
  const [cosine, sine] = [Math.cos(rest), Math.sin(rest)];
  switch ((quarters + 4) % 4) {
    case 0:
      return { cosine, sine };
    case 1:
      return { cosine: -sine, sine: cosine };
    case 2:
      return { cosine: -cosine, sine: -sine };
    default:
      return { cosine: sine, sine: -cosine };
  }
}
