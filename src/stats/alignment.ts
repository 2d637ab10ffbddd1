import { type ClockFit, fitClocks, NOISE } from "./clock-fit.ts";
import { offsetCandidates } from "./clock-offsets.ts";
import { checkSample, type Sample } from "./sample.ts";

export interface AlignmentOptions {
  /** Largest offset between the clocks that is looked for, s. */
  readonly mostOffset?: number;
  /**
   * What else speaks for two rows being one event: log of how much likelier the two readings are of one event than of two; minus infinity
   * where they cannot be.
   */
  readonly evidence?: (a: number, b: number) => number;
  /** An offset that was found before and is only refined, with its chance. */
  readonly known?: { readonly offset: number; readonly offsetConfidence: number };
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
export const MADE = 0.9;
export const DOUBTFUL = 0.5;
/** Chance of the best offset below which nothing is made. */
const OFFSET_SURE = 0.95;
/** Share of the shorter sequence for which partners must be expected, and which must be made: with hopeless clocks something always meets. */
const LEAST_SHARE = 0.4;
const LEAST_MADE = 0.45;
/**
 * What the best of all offsets must have over rows with nothing in common. Some hundred offsets are tried, and rows that keep a distance
 * meet oftener than rows at any moment: of 100 simulated pairs of strangers each, 10 to 120 rows, at most 3 reach it.
 */
const LEAST_SUPPORT = 12;
/** Part of the best offset's pairs from which another offset comes into question; what must tell them apart then. */
const ALIKE = 0.8;
const COARSER = 1.3;
const LUCK_SDS = 2;
const EVIDENCE_SURE = 8;
/** Offsets nearer to each other than so many SDs are one. */
const SAME_SDS = 2;
const MOST_OFFSET = 900;
const CANDIDATES = 12;

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
  const { mostOffset = MOST_OFFSET, evidence = () => 0, known } = options;
  const candidates = known ? [known] : offsetCandidates(a, b, mostOffset, NOISE.first, CANDIDATES);
  const fits = candidates.map(({ offset }) => fitClocks(a, b, offset, evidence));
  const apart = distinct(fits);
  const best = apart[0];
  if (best === undefined) return { kind: "none", reason: "cannot-tell" };
  const total = apart.reduce((sum, fit) => sum + Math.exp(fit.chain.logTotal - best.chain.logTotal), 0);
  const offsetConfidence = (known?.offsetConfidence ?? 1) / total;
  if (known === undefined && best.support < LEAST_SUPPORT) return { kind: "none", reason: "cannot-tell" };
  if (offsetConfidence < OFFSET_SURE || best.paired < LEAST_SHARE * Math.min(a.length, b.length)) {
    return { kind: "none", reason: "cannot-tell" };
  }
  const rows = Math.min(a.length, b.length) + 1;
  if (!apart.slice(1).every((other) => beats(best, other, rows))) return { kind: "none", reason: "cannot-tell" };
  // Only now that the offset stands: near the places of a wrong offset there are no strangers either.
  const settled = fitClocks(a, b, best.offset, evidence, "keep-distance");
  const { offset, drift, noise } = settled;
  const found = pairsOf(settled, offsetConfidence);
  const made = found.filter(({ confidence }) => confidence >= MADE);
  if (made.length < LEAST_MADE * Math.min(a.length, b.length)) return { kind: "none", reason: "cannot-tell" };
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
function distinct(fits: readonly ClockFit[]): ClockFit[] {
  const sorted = [...fits].sort((one, other) => other.chain.logTotal - one.chain.logTotal);
  return sorted.filter((fit, i) =>
    sorted
      .slice(0, i)
      .every((other) => Math.abs(other.offset - fit.offset) > SAME_SDS * Math.max(fit.noise, other.noise)),
  );
}

/**
 * Is the best offset more than a lucky shift of another? A steady feed looks the same when it is shifted by one swing: how many rows then meet is
 * luck of which ones were missed, so the sum over pairs knows less than it seems to. An offset that pairs nearly as many rows must be
 * beaten by more pairs than luck makes, or by evidence.
 */
function beats(best: ClockFit, other: ClockFit, rows: number): boolean {
  // With stamps that are taken to be coarser anything meets anything: that is no rival.
  if (other.paired < ALIKE * best.paired || other.noise > COARSER * best.noise) return true;
  if (best.evidence - other.evidence > EVIDENCE_SURE) return true;
  const luck = best.paired * (1 - best.paired / rows) + other.paired * (1 - other.paired / rows);
  return best.paired - other.paired > LUCK_SDS * Math.sqrt(Math.max(luck, 1));
}

/** Pairs likelier than not: of these no two share a row, and none cross. */
function pairsOf({ band, chain }: ClockFit, offsetConfidence: number): AlignedPair[] {
  const pairs: AlignedPair[] = [];
  for (let i = 0; i < band.from.length; i += 1) {
    for (let j = band.from[i]!; j < band.to[i]!; j += 1) {
      const confidence = chain.chance[chain.start[i]! + j - band.from[i]!]! * offsetConfidence;
      if (confidence > DOUBTFUL) pairs.push({ a: i, b: j, confidence });
    }
  }
  return pairs;
}
