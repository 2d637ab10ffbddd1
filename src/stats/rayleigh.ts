import type { CircularSummary } from "./circular.ts";

/** Rayleigh's test of directions without a common one. */
export interface RayleighTest {
  /** n R^2, 0 to n. */
  readonly z: number;
  /** Two approximations of the chance of an R at least as long where every direction is equally likely, 0 to 1. */
  readonly pZar: number;
  /** Mardia's series below 50 values, exp(-z) from there on. */
  readonly pMardia: number;
}

/** From this many values on exp(-z) is as good as the series. */
const SERIES_BELOW = 50;

/**
 * @param summary of 1 direction or more
 * @returns small chances where the directions have a common one
 * @see Zar (2010), Biostatistical Analysis, 27.1, and Mardia & Jupp (2000), Directional Statistics, 6.3.1 (both from memory); checked
 *   against R's circular package (tests/reference/stats/circular.json)
 */
export function rayleigh({
  n,
  resultantLength,
  variance,
}: Pick<CircularSummary, "n" | "resultantLength" | "variance">): RayleighTest {
  const z = n * resultantLength ** 2;
  // n^2 - (n R)^2, without the rounding of R near 1.
  const rest = n * n * variance * (1 + resultantLength);
  const pZar = Math.exp(Math.sqrt(1 + 4 * n + 4 * rest) - (1 + 2 * n));
  const pMardia = Math.exp(-z) * (n < SERIES_BELOW ? series(n, z) : 1);
  return { z, pZar: asChance(pZar), pMardia: asChance(pMardia) };
}

function series(n: number, z: number): number {
  return 1 + (2 * z - z ** 2) / (4 * n) - (24 * z - 132 * z ** 2 + 76 * z ** 3 - 9 * z ** 4) / (288 * n ** 2);
}

function asChance(value: number): number {
  return Math.min(1, Math.max(0, value));
}
