import { offsetCandidates } from "./clock-offsets.ts";
import { type Band, type PairChain, pairChain } from "./pair-chain.ts";
import { checkSample, type Sample } from "./sample.ts";

export interface AlignmentOptions {
  /** Largest offset between the clocks that is looked for, s. */
  readonly mostOffset?: number;
  /**
   * What else speaks for two rows being one event: log of how much likelier the two readings are of one event than of two; minus infinity
   * where they cannot be.
   */
  readonly evidence?: (a: number, b: number) => number;
}

/** Two rows that are one event. */
export interface AlignedPair {
  /** Places in the two sequences. */
  readonly a: number;
  readonly b: number;
  /** Chance that they are, 0 to 1, over all ways to pair and all offsets that came into question. */
  readonly confidence: number;
}

export interface Alignment {
  /** Clock of b less clock of a at the middle of a, s; drift in s per s; SD of the difference between the two stamps, s. */
  readonly offset: number;
  readonly drift: number;
  readonly noise: number;
  /** Chance of this offset among those that came into question. */
  readonly offsetConfidence: number;
  /** Pairs that are made, in order. */
  readonly pairs: readonly AlignedPair[];
  /** Likelier than not, and too doubtful to be made. */
  readonly doubtful: readonly AlignedPair[];
}

/** `empty`: a sequence has no rows; `cannot-tell`: no offset stands out from the others, or too few rows meet. */
export type NoAlignment = { readonly kind: "none"; readonly reason: "empty" | "cannot-tell" };

/** Confidence from which a pair is made, and from which it is told as doubtful. */
const MADE = 0.6;
const DOUBTFUL = 0.5;
/** Chance of the best offset below which nothing is made. */
const OFFSET_SURE = 0.95;
/** Share of the shorter sequence that must find a partner. */
const LEAST_SHARE = 0.4;
/** Part of the best offset's pairs from which another offset comes into question; what must tell them apart then. */
const ALIKE = 0.8;
const COARSER = 1.3;
const LUCK_SDS = 2;
const EVIDENCE_SURE = 8;
/** Offsets nearer to each other than so many SDs are one. */
const SAME_SDS = 2;
const MOST_OFFSET = 900;
const CANDIDATES = 12;
const ROUNDS = 8;
const NOISE = { first: 2, least: 0.2, most: 6 };
/** SDs to either side in which a partner is looked for. */
const REACH = 6;
/** SD of the drift of one quartz clock against another, s per s. */
const USUAL_DRIFT = 1e-4;

/** One hypothesis about the clocks, fitted. */
interface Fit {
  readonly offset: number;
  readonly drift: number;
  readonly noise: number;
  readonly band: Band;
  readonly chain: PairChain;
  /** Expected number of pairs, and what the evidence says for them together. */
  readonly paired: number;
  readonly evidence: number;
}

/**
 * Pairs two timed sequences of the same events, each with rows of its own that the other missed, on clocks that differ by an unknown
 * offset and drift. Monotone: no two pairs cross. Offsets are taken from the differences of all rows; for each of the best the clocks, the noise
 * and the share of rows without a partner are refined in turn with the chances of all pairs (expectation-maximisation), and the offsets are
 * weighed against each other by how well the whole sequences fit.
 *
 * Time and memory are linear in rows as long as few rows lie within six SDs of each other.
 *
 * @param a times of one device in rising order, s
 * @param b times of the other in rising order, s
 * @returns the pairs, or why none are made
 * @throws {RangeError} times that fall, or are no finite numbers
 * @see Durbin, Eddy, Krogh & Mitchison (1998), Biological Sequence Analysis, ch. 4 (pair models; from memory)
 */
export function align(a: Sample, b: Sample, options: AlignmentOptions = {}): Alignment | NoAlignment {
  checkTimes(a, "a");
  checkTimes(b, "b");
  if (a.length === 0 || b.length === 0) return { kind: "none", reason: "empty" };
  const { mostOffset = MOST_OFFSET, evidence = () => 0 } = options;
  const fits = offsetCandidates(a, b, mostOffset, NOISE.first, CANDIDATES).map(({ offset }) =>
    fitted(a, b, offset, evidence),
  );
  const apart = distinct(fits);
  const best = apart[0];
  if (best === undefined) return { kind: "none", reason: "cannot-tell" };
  const total = apart.reduce((sum, fit) => sum + Math.exp(fit.chain.logTotal - best.chain.logTotal), 0);
  const offsetConfidence = 1 / total;
  const found = pairsOf(best, offsetConfidence);
  const made = found.filter(({ confidence }) => confidence >= MADE);
  if (offsetConfidence < OFFSET_SURE || made.length < LEAST_SHARE * Math.min(a.length, b.length)) {
    return { kind: "none", reason: "cannot-tell" };
  }
  const rows = Math.min(a.length, b.length) + 1;
  if (!apart.slice(1).every((other) => beats(best, other, rows))) return { kind: "none", reason: "cannot-tell" };
  const { offset, drift, noise } = best;
  const doubtful = found.filter(({ confidence }) => confidence < MADE);
  return { offset, drift, noise, offsetConfidence, pairs: made, doubtful };
}

function checkTimes(times: Sample, name: string): void {
  checkSample(times, name);
  for (let i = 1; i < times.length; i += 1) {
    if (times[i]! < times[i - 1]!) throw new RangeError(`${name}[${i}] falls: times must rise`);
  }
}

/** Fits that ended at one offset are one hypothesis; best first. */
function distinct(fits: readonly Fit[]): Fit[] {
  const sorted = [...fits].sort((one, other) => other.chain.logTotal - one.chain.logTotal);
  return sorted.filter((fit, i) =>
    sorted
      .slice(0, i)
      .every((other) => Math.abs(other.offset - fit.offset) > SAME_SDS * Math.max(fit.noise, other.noise)),
  );
}

function fitted(a: Sample, b: Sample, start: number, evidence: (a: number, b: number) => number): Fit {
  const centre = (a[0]! + a[a.length - 1]!) / 2;
  const span = Math.max(1, b[b.length - 1]! - b[0]!);
  let [offset, drift, noise] = [start, 0, NOISE.first as number];
  let paired = 0.8 * Math.min(a.length, b.length);
  let fit: Fit | null = null;
  for (let round = 0; round < ROUNDS; round += 1) {
    const expected = (i: number) => a[i]! + offset + drift * (a[i]! - centre);
    const band = bandOf(a, b, expected, REACH * noise);
    const odds = logOddsOf(paired, a.length, b.length, span, noise);
    const chain = pairChain(band, b.length, (i, j) => odds((b[j]! - expected(i)) / noise) + evidence(i, j));
    fit = { offset, drift, noise, band, chain, ...expectedOf(band, chain, evidence) };
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

/**
 * Is the best offset more than a lucky shift of another? A steady feed looks the same when it is shifted by one swing: how many rows then meet is
 * luck of which ones were missed, so the sum over pairs knows less than it seems to. An offset that pairs nearly as many rows must be
 * beaten by more pairs than luck makes, or by evidence.
 */
function beats(best: Fit, other: Fit, rows: number): boolean {
  // With stamps that are taken to be coarser anything meets anything: that is no rival.
  if (other.paired < ALIKE * best.paired || other.noise > COARSER * best.noise) return true;
  if (best.evidence - other.evidence > EVIDENCE_SURE) return true;
  const luck = best.paired * (1 - best.paired / rows) + other.paired * (1 - other.paired / rows);
  return best.paired - other.paired > LUCK_SDS * Math.sqrt(Math.max(luck, 1));
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

/**
 * Log odds of a pair against two rows alone, by its difference in SDs: how likely a row of `a` is to have a partner at all, and how dense the
 * partner's stamps are around it against the rows of `b` that come from nowhere.
 */
function logOddsOf(paired: number, rowsA: number, rowsB: number, span: number, noise: number): (z: number) => number {
  const share = Math.min(0.98, Math.max(0.05, paired / rowsA));
  const alone = Math.max(0.02 * rowsB, rowsB - paired) / span;
  const constant = Math.log(share / (1 - share)) - Math.log(alone) - Math.log(noise * Math.sqrt(2 * Math.PI));
  return (z) => constant - z ** 2 / 2;
}

/** Offset, drift, noise and number of pairs that the chances of all pairs speak for; null where hardly any pair is likely. */
function refined(a: Sample, b: Sample, { band, chain, noise: noiseNow }: Fit, centre: number) {
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

/** Pairs likelier than not: of these no two share a row, and none cross. */
function pairsOf({ band, chain }: Fit, offsetConfidence: number): AlignedPair[] {
  const pairs: AlignedPair[] = [];
  for (let i = 0; i < band.from.length; i += 1) {
    for (let j = band.from[i]!; j < band.to[i]!; j += 1) {
      const confidence = chain.chance[chain.start[i]! + j - band.from[i]!]! * offsetConfidence;
      if (confidence > DOUBTFUL) pairs.push({ a: i, b: j, confidence });
    }
  }
  return pairs;
}
