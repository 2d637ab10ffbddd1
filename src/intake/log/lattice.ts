import { betterPauses, CHANGES, type Change, logDensity, nothingSeen, type Pauses, see } from "./gaps.ts";
import { betterSlips, changeBetween, logCounts, type Run, type Slips } from "./run.ts";

/** How probable it is for every swing to belong to every run. */
export interface Fit {
  readonly swings: number;
  readonly runs: number;
  /** Entry swing * runs + run. */
  readonly probability: Float64Array;
}

/** Sum of exponentials, of logarithms collected one by one. */
class LogSum {
  #top = Number.NEGATIVE_INFINITY;
  #sum = 0;

  add(log: number): void {
    if (log === Number.NEGATIVE_INFINITY) return;
    if (log <= this.#top) this.#sum += Math.exp(log - this.#top);
    else {
      this.#sum = this.#sum * Math.exp(this.#top - log) + 1;
      this.#top = log;
    }
  }

  get log(): number {
    return this.#sum === 0 ? Number.NEGATIVE_INFINITY : this.#top + Math.log(this.#sum);
  }
}

/** All ways of laying swings over runs. Swings are 0 … n - 1; "at i" stands before swing i. */
export class Lattice {
  readonly #n: number;
  readonly #m: number;
  readonly #logs: readonly (number | null)[];
  #counts: readonly Float64Array[] = [];
  readonly #expected: readonly (number | null)[];
  /** Sums of evidence, entry run * (n + 1) + i for the swings before i. */
  readonly #evidence: Float64Array;
  /** Sums of the logarithm of being skipped, of the runs before j. */
  readonly #skips: Float64Array;
  readonly #there: Float64Array;
  readonly #changes: readonly Change[];
  readonly #inside: Float64Array;
  readonly #at: Record<Change, Float64Array>;
  /** Run j starts at i, everything before included; run j ends at i, likewise; and the same from the other end. */
  readonly #starts: Float64Array;
  readonly #ends: Float64Array;
  readonly #afterStart: Float64Array;
  readonly #afterEnd: Float64Array;
  #total = Number.NEGATIVE_INFINITY;

  constructor(
    runs: readonly Run[],
    logs: readonly (number | null)[],
    evidence: (swing: number, run: number) => number,
  ) {
    this.#n = logs.length;
    this.#m = runs.length;
    this.#logs = logs;
    this.#expected = runs.map(({ expected }) => expected);
    this.#evidence = new Float64Array(this.#m * (this.#n + 1));
    this.#skips = new Float64Array(this.#m + 1);
    this.#there = Float64Array.from(runs, ({ skip }) => Math.log(1 - skip));
    for (const [j, { skip }] of runs.entries()) {
      this.#skips[j + 1] = (this.#skips[j] ?? 0) + Math.log(skip);
      for (let i = 0; i < this.#n; i++)
        this.#evidence[j * (this.#n + 1) + i + 1] = (this.#evidence[j * (this.#n + 1) + i] ?? 0) + evidence(i, j);
    }
    this.#changes = runs.flatMap((one) => runs.map((other) => changeBetween(one, other)));
    this.#inside = new Float64Array(this.#n + 1);
    this.#at = {
      part: new Float64Array(this.#n + 1),
      turn: new Float64Array(this.#n + 1),
      round: new Float64Array(this.#n + 1),
      block: new Float64Array(this.#n + 1),
    };
    const size = (this.#n + 1) * this.#m;
    this.#starts = new Float64Array(size);
    this.#ends = new Float64Array(size);
    this.#afterStart = new Float64Array(size);
    this.#afterEnd = new Float64Array(size);
  }

  /** Sums over all ways, with these pauses and slips. */
  weigh(pauses: Pauses, slips: Slips): this {
    const counts = new Map([...new Set(this.#expected)].map((expected) => [expected, logCounts(expected, slips)]));
    this.#counts = this.#expected.map((expected) => counts.get(expected) ?? logCounts(expected, slips));
    for (let i = 1; i < this.#n; i++) {
      const log = this.#logs[i] ?? null;
      this.#inside[i + 1] = (this.#inside[i] ?? 0) + (log === null ? 0 : logDensity(pauses.within, log));
      for (const change of CHANGES) this.#at[change][i] = log === null ? 0 : logDensity(pauses.at[change], log);
    }
    this.#forward();
    this.#backward();
    return this;
  }

  /** Of a run's swings from i up to, not including, end: their number, their pauses, what else is known. */
  #segment(j: number, i: number, end: number): number {
    const row = j * (this.#n + 1);
    return (
      (this.#counts[j]?.[end - i - 1] ?? Number.NEGATIVE_INFINITY) +
      (this.#inside[end] ?? 0) -
      (this.#inside[i + 1] ?? 0) +
      (this.#evidence[row + end] ?? 0) -
      (this.#evidence[row + i] ?? 0)
    );
  }

  /** From the end of run j to the start of run k, both at i. */
  #step(j: number, k: number, i: number): number {
    const change = this.#changes[j * this.#m + k] ?? "block";
    return (this.#at[change][i] ?? 0) + (this.#skips[k] ?? 0) - (this.#skips[j + 1] ?? 0) + (this.#there[k] ?? 0);
  }

  #forward(): void {
    const m = this.#m;
    const total = new LogSum();
    for (let i = 0; i <= this.#n; i++) {
      for (let j = 0; j < m; j++) {
        const end = new LogSum();
        const most = Math.min(i, this.#counts[j]?.length ?? 0);
        for (let c = 1; c <= most; c++) end.add((this.#starts[(i - c) * m + j] ?? 0) + this.#segment(j, i - c, i));
        this.#ends[i * m + j] = end.log;
        if (i === this.#n) total.add(end.log + (this.#skips[m] ?? 0) - (this.#skips[j + 1] ?? 0));
      }
      for (let k = 0; k < m; k++) {
        const start = new LogSum();
        if (i === 0) start.add((this.#skips[k] ?? 0) + (this.#there[k] ?? 0));
        else for (let j = 0; j < k; j++) start.add((this.#ends[i * m + j] ?? 0) + this.#step(j, k, i));
        this.#starts[i * m + k] = start.log;
      }
    }
    this.#total = total.log;
  }

  #backward(): void {
    const m = this.#m;
    for (let i = this.#n; i >= 0; i--) {
      for (let j = m - 1; j >= 0; j--) {
        const after = new LogSum();
        if (i === this.#n) after.add((this.#skips[m] ?? 0) - (this.#skips[j + 1] ?? 0));
        else for (let k = j + 1; k < m; k++) after.add(this.#step(j, k, i) + (this.#afterStart[i * m + k] ?? 0));
        this.#afterEnd[i * m + j] = after.log;
      }
      if (i === 0) break;
      // Runs that start one swing earlier need only ends from here on.
      for (let j = 0; j < m; j++) {
        const after = new LogSum();
        const most = Math.min(this.#n - (i - 1), this.#counts[j]?.length ?? 0);
        for (let c = 1; c <= most; c++)
          after.add(this.#segment(j, i - 1, i - 1 + c) + (this.#afterEnd[(i - 1 + c) * m + j] ?? 0));
        this.#afterStart[(i - 1) * m + j] = after.log;
      }
    }
  }

  /** Pauses and slips as the ways weighed here show them; null when there is no way. */
  learn(now: Pauses, first: Pauses): { pauses: Pauses; slips: Slips } | null {
    if (this.#total === Number.NEGATIVE_INFINITY) return null;
    return { pauses: this.#pauses(now, first), slips: this.#slips() };
  }

  #slips(): Slips {
    let [short, swings, over, runs] = [0, 0, 0, 0];
    this.#eachSegment((j, i, end, weight) => {
      const expected = this.#expected[j] ?? null;
      if (expected === null) return;
      short += weight * Math.max(0, expected - (end - i));
      over += weight * Math.max(0, end - i - expected);
      swings += weight * expected;
      runs += weight;
    });
    return betterSlips(short, swings, over, runs);
  }

  #pauses(now: Pauses, first: Pauses): Pauses {
    const within = nothingSeen();
    const at = { part: nothingSeen(), turn: nothingSeen(), round: nothingSeen(), block: nothingSeen() };
    for (let i = 1; i < this.#n; i++) {
      const log = this.#logs[i] ?? null;
      if (log === null) continue;
      let changed = 0;
      for (let j = 0; j < this.#m; j++) {
        const before = this.#ends[i * this.#m + j] ?? Number.NEGATIVE_INFINITY;
        if (before === Number.NEGATIVE_INFINITY) continue;
        for (let k = j + 1; k < this.#m; k++) {
          const after = this.#afterStart[i * this.#m + k] ?? Number.NEGATIVE_INFINITY;
          const weight = Math.exp(before + this.#step(j, k, i) + after - this.#total);
          if (weight < 1e-9) continue;
          see(at[this.#changes[j * this.#m + k] ?? "block"], log, weight);
          changed += weight;
        }
      }
      see(within, log, Math.max(0, 1 - changed));
    }
    return betterPauses(now, within, at, first);
  }

  /** Every stretch of swings that a run may be, with its probability. */
  #eachSegment(visit: (run: number, from: number, end: number, weight: number) => void): void {
    const m = this.#m;
    for (let j = 0; j < m; j++) {
      for (let i = 0; i < this.#n; i++) {
        const start = this.#starts[i * m + j] ?? Number.NEGATIVE_INFINITY;
        if (start === Number.NEGATIVE_INFINITY) continue;
        const most = Math.min(this.#n - i, this.#counts[j]?.length ?? 0);
        for (let c = 1; c <= most; c++) {
          const way = start + this.#segment(j, i, i + c) + (this.#afterEnd[(i + c) * m + j] ?? 0) - this.#total;
          if (way > -30) visit(j, i, i + c, Math.exp(way));
        }
      }
    }
  }

  fit(): Fit | null {
    if (this.#total === Number.NEGATIVE_INFINITY) return null;
    const [n, m] = [this.#n, this.#m];
    const probability = new Float64Array(n * m);
    this.#eachSegment((j, from, end, weight) => {
      for (let i = from; i < end; i++) probability[i * m + j] = Math.min(1, (probability[i * m + j] ?? 0) + weight);
    });
    return { swings: n, runs: m, probability };
  }
}
