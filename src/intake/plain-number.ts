const ZERO = 48;
const NINE = 57;
const MINUS = 45;
/** So many digits are below 2^53: the quotient of two such numbers is the nearest double, as `Number` would give it. */
const MOST_DIGITS = 15;
const POWERS = Array.from({ length: MOST_DIGITS + 1 }, (_, power) => 10 ** power);

/**
 * The number that plain digits with at most one decimal mark between them say: `-12.5`. Several times as fast as a pattern and
 * `Number`, and the same to the last bit.
 *
 * @param mark code of the decimal mark
 * @returns null for anything else, which may still be a number
 */
export function plainNumber(text: string, mark: number): number | null {
  const minus = text.charCodeAt(0) === MINUS;
  const first = minus ? 1 : 0;
  const { length } = text;
  if (length === first || length - first > MOST_DIGITS) return null;
  let digits = 0;
  let point = -1;
  for (let at = first; at < length; at++) {
    const code = text.charCodeAt(at);
    if (code >= ZERO && code <= NINE) digits = digits * 10 + code - ZERO;
    else if (code === mark && point === -1 && at > first && at < length - 1) point = at;
    else return null;
  }
  const value = point === -1 ? digits : digits / (POWERS[length - point - 1] ?? Number.NaN);
  return minus ? -value : value;
}
