/** Repeatable random numbers for the demo season: the same label gives the same stream on every machine. */
export interface Random {
  /** A number in [0, 1), in steps of 2^-32. */
  uniform(): number;
  /** A bell-shaped deviate: sum of twelve uniforms, so within mean ± 6 sd and free of logarithms and cosines. */
  normal(mean: number, sd: number): number;
  chance(probability: number): boolean;
  /** A whole number from `low` to `high`, both included. */
  integer(low: number, high: number): number;
}

/** FNV-1a over UTF-16 units with a salt: turns a label into one 32-bit word of state. */
function hash(label: string, salt: number): number {
  let word = (0x811c9dc5 ^ salt) >>> 0;
  for (let index = 0; index < label.length; index++) {
    word = Math.imul(word ^ label.charCodeAt(index), 0x01000193);
  }
  return word >>> 0;
}

/** The small fast counting generator "sfc32" (128 bits of state, integer arithmetic alone). */
function smallFastCounting(label: string): () => number {
  let a = hash(label, 1);
  let b = hash(label, 2);
  let c = hash(label, 3);
  let counter = 1;
  const next = (): number => {
    const sum = (((a + b) | 0) + counter) | 0;
    counter = (counter + 1) | 0;
    a = b ^ (b >>> 9);
    b = (c + (c << 3)) | 0;
    c = (c << 21) | (c >>> 11);
    c = (c + sum) | 0;
    return (sum >>> 0) / 4294967296;
  };
  // The first outputs still show the seed; a dozen rounds mix it through.
  for (let round = 0; round < 12; round++) next();
  return next;
}

/**
 * A stream of its own for each label, so that changing one athlete's story leaves everybody else's rows as they are.
 *
 * Only additions, multiplications and integer shifts are used: IEEE 754 fixes their every bit, while `Math.log` and
 * `Math.cos` may differ in the last bit from one machine to the next.
 */
export function randomFrom(label: string): Random {
  const uniform = smallFastCounting(label);
  return {
    uniform,
    normal(mean, sd) {
      let sum = -6;
      for (let count = 0; count < 12; count++) sum += uniform();
      return mean + sd * sum;
    },
    chance: (probability) => uniform() < probability,
    integer: (low, high) => low + Math.floor(uniform() * (high - low + 1)),
  };
}
