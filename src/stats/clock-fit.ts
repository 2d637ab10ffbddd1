import { type Band, type PairChain, pairChain } from "./pair-chain.ts";
import type { Sample } from "./sample.ts";
import { strangerDensity } from "./stranger-density.ts";

const ROUNDS = 8;
/** SD of the difference between two stamps of one event, s: to begin with, and bounds. */
export const NOISE = { first: 2, least: 0.2, most: 6 };
/** SDs to either side in which a partner is looked for. */
const REACH = 6;
/** SD of the drift of one quartz clock against another, s per s. */
const USUAL_DRIFT = 1e-4;

/** One hypothesis about the clocks, fitted. */
export interface ClockFit {
  readonly offset: number;
  readonly drift: number;
  readonly noise: number;
  readonly band: Band;
  readonly chain: PairChain;
  /** Expected number of pairs, and what the evidence says for them together. */
  readonly paired: number;
  readonly evidence: number;
  /**
   * How much better the rows fit as two records of the same events than as rows that have nothing to do with each other: log of the
   * ratio of both likelihoods, rows without a partner taken to come at any moment.
   */
  readonly support: number;
}

/**
 * Clocks, noise and share of rows without a partner, refined in turn with the chances of all pairs (expectation-maximisation).
 *
 * @param a         rising times, s; at least one
 * @param b         rising times, s; at least one
 * @param start     offset to begin with, s
 * @param evidence  log of what else speaks for a pair
 * @param strangers whether rows without a partner come from anywhere, or keep the distance from each other that events keep
 */
export function fitClocks(
  a: Sample,
  b: Sample,
  start: number,
  evidence: (a: number, b: number) => number,
  strangers: "anywhere" | "keep-distance" = "anywhere",
): ClockFit {
  const centre = (a[0]! + a[a.length - 1]!) / 2;
  const span = Math.max(1, b[b.length - 1]! - b[0]!);
  let [offset, drift, noise] = [start, 0, NOISE.first as number];
  let paired = 0.8 * Math.min(a.length, b.length);
  let fit: ClockFit | null = null;
  for (let round = 0; round < ROUNDS; round += 1) {
    const expected = (i: number) => a[i]! + offset + drift * (a[i]! - centre);
    const band = bandOf(a, b, expected, REACH * noise);
    const mix = mixOf(paired, a.length, b.length);
    const odds = logOddsOf(mix, span, noise);
    const company = strangers === "anywhere" ? () => 1 : strangerDensity(a, noise, REACH);
    const chain = pairChain(band, b.length, (i, j) => {
      const off = b[j]! - expected(i);
      return odds(off / noise) - Math.log(company(off)) + evidence(i, j);
    });
    const support = chain.logTotal + mix.unpaired;
    fit = { offset, drift, noise, band, chain, support, ...expectedOf(band, chain, evidence) };
    const next = refined(a, b, fit, centre);
    if (next === null) break;
    ({ offset, drift, noise, paired } = next);
  }
  return fit!;
}

/** Pairs that the chances of a fit add up to, and the evidence for them. */
function expectedOf(band: Band, chain: PairChain, evidence: (a: number, b: number) => number) {
  let [paired, sum] = [0, 0];
  for (let i = 0; i < band.from.length; i += 1) {
    for (let j = band.from[i]!; j < band.to[i]!; j += 1) {
      const chance = chain.chance[chain.start[i]! + j - band.from[i]!]!;
      if (chance === 0) continue;
      paired += chance;
      sum += chance * evidence(i, j);
    }
  }
  return { paired, evidence: sum };
}

/** Columns within reach of each row; both ends never fall, since times and clocks rise. */
function bandOf(a: Sample, b: Sample, expected: (i: number) => number, reach: number): Band {
  const from = new Int32Array(a.length);
  const to = new Int32Array(a.length);
  let [low, high] = [0, 0];
  for (let i = 0; i < a.length; i += 1) {
    const middle = expected(i);
    while (low < b.length && b[low]! < middle - reach) low += 1;
    high = Math.max(high, low);
    while (high < b.length && b[high]! <= middle + reach) high += 1;
    from[i] = low;
    to[i] = high;
  }
  return { from, to };
}

/** What so many expected pairs mean: the chance of a row of `a` to have a partner, the rows of `b` that have none. */
interface Mix {
  readonly share: number;
  readonly alone: number;
  /** Log of the likelihood of a way without any pair, against rows of which none is expected to have one. */
  readonly unpaired: number;
}

function mixOf(paired: number, rowsA: number, rowsB: number): Mix {
  const share = Math.min(0.98, Math.max(0.05, paired / rowsA));
  const alone = Math.max(0.02 * rowsB, rowsB - paired);
  const unpaired = rowsA * Math.log(1 - share) + rowsB * Math.log(alone / rowsB) - (alone - rowsB);
  return { share, alone, unpaired };
}

/**
 * Log odds of a pair against two rows alone, by its difference in SDs: how likely a row of `a` is to have a partner at all, and how dense the
 * partner's stamps are around it against the rows of `b` that come from nowhere.
 */
function logOddsOf({ share, alone }: Mix, span: number, noise: number): (z: number) => number {
  const constant = Math.log(share / (1 - share)) - Math.log(alone / span) - Math.log(noise * Math.sqrt(2 * Math.PI));
  return (z) => constant - z ** 2 / 2;
}

/** Offset, drift, noise and number of pairs that the chances of all pairs speak for; null where hardly any pair is likely. */
function refined(a: Sample, b: Sample, { band, chain, noise: noiseNow }: ClockFit, centre: number) {
  let [weight, sumX, sumY, sumXX, sumXY] = [0, 0, 0, 0, 0];
  const each = (visit: (x: number, y: number, chance: number) => void) => {
    for (let i = 0; i < a.length; i += 1) {
      for (let j = band.from[i]!; j < band.to[i]!; j += 1) {
        const chance = chain.chance[chain.start[i]! + j - band.from[i]!]!;
        if (chance > 1e-3) visit(a[i]! - centre, b[j]! - a[i]!, chance);
      }
    }
  };
  each((x, y, chance) => {
    weight += chance;
    sumX += chance * x;
    sumY += chance * y;
    sumXX += chance * x * x;
    sumXY += chance * x * y;
  });
  if (weight < 3) return null;
  const spread = sumXX - sumX ** 2 / weight;
  // A short session tells next to nothing of drift: clocks are taken to drift by about USUAL_DRIFT until it does.
  const drift = (sumXY - (sumX * sumY) / weight) / (spread + (noiseNow / USUAL_DRIFT) ** 2);
  const offset = sumY / weight - (drift * sumX) / weight;
  let squares = 0;
  each((x, y, chance) => {
    squares += chance * (y - offset - drift * x) ** 2;
  });
  const noise = Math.min(NOISE.most, Math.max(NOISE.least, Math.sqrt(squares / weight)));
  return { offset, drift, noise, paired: weight };
}
