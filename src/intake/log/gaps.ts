/** Pauses of one kind, as the logarithm of their seconds: normal with this middle and spread. */
export interface Pause {
  readonly middle: number;
  readonly spread: number;
}

/** Kinds of change between two runs of swings, from the smallest to the largest. */
export const CHANGES = ["part", "turn", "round", "block"] as const;
export type Change = (typeof CHANGES)[number];

/** Pauses inside a run and at every kind of change. */
export interface Pauses {
  readonly within: Pause;
  readonly at: Readonly<Record<Change, Pause>>;
}

/** How much longer than between two swings a pause is, to begin with; what the day itself shows takes over. */
const FIRST_GUESS: Readonly<Record<Change, number>> = { part: 2.5, turn: 4, round: 6, block: 10 };
/** A change that takes no longer than a swing more cannot be seen. */
const LEAST_RATIO = 1.5;
const SPREAD = { within: [0.25, 0.6], at: [0.25, 0.9] } as const;
const PRIOR_PAUSES = 2;
const PRIOR_SPREAD = 0.6;

const clamp = (value: number, [lo, hi]: readonly [number, number]): number => Math.min(hi, Math.max(lo, value));
const middleOf = (sorted: readonly number[]): number => sorted[Math.floor((sorted.length - 1) / 2)] ?? Math.log(10);

/** Logarithm of a pause in milliseconds; pauses under half a second are half a second: clocks do not tell them apart. */
export const logPause = (ms: number): number => Math.log(Math.max(0.5, ms / 1000));

/**
 * Pauses of a day before anything is known but how many changes are planned: the shortest pauses are those between two
 * swings of a run.
 *
 * @param logs    logarithms of the day's pauses, those that are known
 * @param changes planned changes among them
 */
export function firstPauses(logs: readonly number[], changes: number): Pauses {
  const sorted = [...logs].sort((one, other) => one - other);
  const inside = sorted.slice(0, Math.max(Math.ceil(sorted.length / 2), sorted.length - changes));
  const middle = middleOf(inside);
  const spreads = inside.map((log) => Math.abs(log - middle)).sort((one, other) => one - other);
  const at = (change: Change): Pause => ({ middle: middle + Math.log(FIRST_GUESS[change]), spread: 0.7 });
  return {
    within: { middle, spread: clamp(1.4826 * (spreads.length > 0 ? middleOf(spreads) : 0.4), SPREAD.within) },
    at: { part: at("part"), turn: at("turn"), round: at("round"), block: at("block") },
  };
}

/** Weighted pauses of one kind. */
export interface Seen {
  weight: number;
  sum: number;
  squares: number;
}

export const nothingSeen = (): Seen => ({ weight: 0, sum: 0, squares: 0 });

export function see(seen: Seen, log: number, weight: number): void {
  seen.weight += weight;
  seen.sum += weight * log;
  seen.squares += weight * log * log;
}

/** Pauses as the day shows them so far, held to what was thought before as long as little was seen. */
export function betterPauses(before: Pauses, within: Seen, at: Readonly<Record<Change, Seen>>, first: Pauses): Pauses {
  const better = (was: Pause, seen: Seen, range: readonly [number, number]): Pause => {
    const weight = seen.weight + PRIOR_PAUSES;
    const middle = (seen.sum + PRIOR_PAUSES * was.middle) / weight;
    const off = seen.squares - 2 * middle * seen.sum + middle * middle * seen.weight;
    return { middle, spread: clamp(Math.sqrt((off + PRIOR_PAUSES * PRIOR_SPREAD ** 2) / weight), range) };
  };
  const inside = within.weight < 3 ? before.within : better(first.within, within, SPREAD.within);
  let least = inside.middle + Math.log(LEAST_RATIO);
  const changes = CHANGES.map((change) => {
    const pause = better(first.at[change], at[change], SPREAD.at);
    // A larger change does not take less time than a smaller one.
    least = Math.max(least, pause.middle);
    return [change, { middle: least, spread: pause.spread }] as const;
  });
  return { within: inside, at: Object.fromEntries(changes) as unknown as Record<Change, Pause> };
}

/** Logarithm of the normal density. */
export function logDensity({ middle, spread }: Pause, log: number): number {
  const off = (log - middle) / spread;
  return -0.5 * off * off - Math.log(spread) - 0.9189385332046727;
}
