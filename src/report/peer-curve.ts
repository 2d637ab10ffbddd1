import type { Interval } from "../stats/interval.ts";
import { wilson } from "../stats/proportion-ci.ts";
import type { Series } from "./schema.ts";

/** Athletes below whom a percentile says nothing. */
export const PEERS_FOR_BANDS = 20;
/** Percentiles of the bands, by their names. */
export const BAND_PERCENTILES = { p10: 10, p25: 25, p50: 50, p75: 75, p90: 90 } as const;
export const LEVEL = 0.95;

export type Bands = NonNullable<Series["peers"]>["bands"];

/** Where a value stands among peers: 0 to 100, with its interval where their number is known. */
export interface Place {
  readonly percentile: number;
  readonly ci95: Interval | null;
}

/** A group of peers as it is at one age. */
export interface PeerCurve {
  readonly kind: "curve";
  /** Athletes behind it; null when a table does not say. */
  readonly n: number | null;
  readonly ages: readonly [number | null, number | null];
  readonly bands: Bands;
  /** Where a value stands; null for one that the group's distribution cannot hold. */
  readonly place: (value: number) => Place | null;
}

/** `elsewhere`: the group has nobody of that age, or does not say how they are spread. */
export type PeersAtAge = PeerCurve | { readonly kind: "too-few"; readonly n: number } | { readonly kind: "elsewhere" };

export const ELSEWHERE: PeersAtAge = { kind: "elsewhere" };

/** Bands from the value at each percentile; null where one of them has none. */
export function bandsFrom(at: (percentile: number) => number | null): Bands | null {
  const bands = Object.entries(BAND_PERCENTILES).flatMap(([name, percentile]) => {
    const value = at(percentile);
    return value !== null && Number.isFinite(value) ? [[name, value] as const] : [];
  });
  return bands.length === 5 ? (Object.fromEntries(bands) as Bands) : null;
}

/** A percentile of a curve with Wilson's interval, as if so many of `n` athletes were below. */
export function placeAt(percentile: number, n: number | null): Place {
  if (n === null) return { percentile, ci95: null };
  const [low, high] = wilson((percentile / 100) * n, n, LEVEL);
  return { percentile, ci95: [100 * low, 100 * high] };
}
