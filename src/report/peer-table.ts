import type { Reference } from "../schema/season.ts";
import { normalCdf, normalQuantile } from "../stats/distributions.ts";
import { type Lms, lmsAtPercentile, lmsZ } from "../stats/lms.ts";
import { agesOf, hasAges, holdsAge, isSingleAge } from "./peer-age.ts";
import { bandsFrom, ELSEWHERE, PEERS_FOR_BANDS, type PeerCurve, type PeersAtAge, placeAt } from "./peer-curve.ts";
import type { PeerGroup } from "./peer-match.ts";

/** Beyond this many standard deviations a percentile is 0 or 100 to every digit of a double. */
const FAR = 40;

/** An L this near 0 is 0 to every digit of a double; its products might be too small for one. */
const TINY = 1e-15;

type LmsRow = Extract<Reference, { kind: "lms" }>;
type Found<T> = { readonly row: T; readonly n: number | null };

/** Between two single ages the smaller n counts, and only where both are known. */
function between(low: LmsRow, high: LmsRow, age: number): Found<Lms> {
  const share = (age - (low.ages[0] ?? 0)) / ((high.ages[0] ?? 0) - (low.ages[0] ?? 0));
  const mix = (a: number, b: number) => a + share * (b - a);
  return {
    row: { l: mix(low.l, high.l), m: mix(low.m, high.m), s: mix(low.s, high.s) },
    n: low.n === null || high.n === null ? null : Math.min(low.n, high.n),
  };
}

const byFirstAge = (a: Reference, b: Reference) => (a.ages[0] ?? 0) - (b.ages[0] ?? 0);

/** L, M and S between rows of single ages; null outside of them. */
function amongSingleAges(rows: readonly LmsRow[], age: number): Found<Lms> | null {
  const points = [...rows].sort(byFirstAge);
  const above = points.findIndex(({ ages: [at] }) => at !== null && at >= age);
  const high = points[above];
  if (high === undefined) return null;
  if (high.ages[0] === age) return { row: high, n: high.n };
  const low = points[above - 1];
  return low === undefined ? null : between(low, high, age);
}

const compare = (a: number, b: number) => (a < b ? -1 : a > b ? 1 : 0);

/**
 * The row whose ages hold the athlete's: to the letter before within the last year of life, then the row for the fewest years, then the one
 * of the most athletes. Rows without ages come last.
 */
function holding<T extends Reference>(rows: readonly T[], age: number | null): Found<T> | null {
  const fits = rows.flatMap((row) => {
    const [low, high] = row.ages;
    if (!hasAges(row)) return [{ row, loose: 2, years: Number.POSITIVE_INFINITY }];
    if (age === null || !holdsAge(row, age)) return [];
    const years = low === null || high === null ? Number.POSITIVE_INFINITY : high - low;
    return [{ row, loose: high === null || age <= high ? 0 : 1, years }];
  });
  const best = fits.sort(
    (a, b) => a.loose - b.loose || compare(a.years, b.years) || (b.row.n ?? 0) - (a.row.n ?? 0),
  )[0];
  return best === undefined ? null : { row: best.row, n: best.row.n };
}

function enough(n: number | null, curve: () => PeerCurve | null): PeersAtAge {
  if (n !== null && n < PEERS_FOR_BANDS) return { kind: "too-few", n };
  return curve() ?? ELSEWHERE;
}

/** Percentile of a z score, with its interval where `n` is known. */
const placeOf = (z: number, n: number | null) => placeAt(100 * normalCdf(Math.max(-FAR, Math.min(FAR, z))), n);

/**
 * Published L, M and S at one age: of rows for single ages straight between two of them, else of the row whose ages hold the athlete's.
 *
 * @see Cole & Green (1992), Stat Med 11:1305-1319
 */
export function lmsAt(group: PeerGroup, age: number | null): PeersAtAge {
  const rows = group.rows.flatMap((row) => (row.kind === "lms" ? [row] : []));
  const singles = rows.filter(isSingleAge);
  const found =
    (age === null ? null : amongSingleAges(singles, age)) ??
    holding(
      rows.filter((row) => !isSingleAge(row)),
      age,
    );
  if (found === null) return ELSEWHERE;
  const { row, n } = found;
  const lms = { l: Math.abs(row.l) < TINY ? 0 : row.l, m: row.m, s: row.s };
  return enough(n, () => {
    const bands = bandsFrom((percentile) => lmsAtPercentile(percentile, lms));
    // The method knows only values above 0.
    const place = (value: number) => (value > 0 ? placeOf(lmsZ(value, lms), n) : null);
    return bands && { kind: "curve", n, ages: agesOf(rows), bands, place };
  });
}

/** A published mean and standard deviation, taken as normal, of the row whose ages hold the athlete's. */
export function meanSdAt(group: PeerGroup, age: number | null): PeersAtAge {
  const found = holding(
    group.rows.flatMap((row) => (row.kind === "mean-sd" ? [row] : [])),
    age,
  );
  if (found === null) return ELSEWHERE;
  const { row, n } = found;
  return enough(n, () => {
    const bands = bandsFrom((percentile) => row.mean + row.sd * normalQuantile(percentile / 100));
    const place = (value: number) => placeOf((value - row.mean) / row.sd, n);
    return bands && { kind: "curve", n, ages: row.ages, bands, place };
  });
}
