import { distance } from "fastest-levenshtein";

/** Case and the choice between space, hyphen and underscore are slips, not other words. */
const plain = (word: string): string =>
  word
    .trim()
    .toLowerCase()
    .replaceAll(/[\s_-]+/g, "-");

/** Two letters that changed places are one slip, not two. */
function swapped(one: string, other: string): boolean {
  if (one.length !== other.length) return false;
  const at = [...one].findIndex((letter, index) => letter !== other[index]);
  const turned = one.slice(0, at) + (one[at + 1] ?? "") + (one[at] ?? "") + one.slice(at + 2);
  return at !== -1 && turned === other;
}

/**
 * The allowed word that `word` was probably meant to be.
 *
 * Near means: at most one slip in a word of up to five letters, two in up to eight, three in longer ones.
 *
 * @returns null when nothing is near; the first of several equally near words
 * @example near("recipiants", ["recipients", "goals"]) // => "recipients"
 */
export function near(word: string, allowed: Iterable<string>): string | null {
  const wanted = plain(word);
  const reach = wanted.length <= 5 ? 1 : wanted.length <= 8 ? 2 : 3;
  let best: string | null = null;
  let bestSlips = reach + 1;
  for (const candidate of allowed) {
    const other = plain(candidate);
    if (Math.abs(other.length - wanted.length) >= bestSlips) continue;
    const slips = swapped(wanted, other) ? 1 : distance(wanted, other);
    // A word of which every letter changed is another word.
    if (slips < bestSlips && slips < wanted.length) {
      best = candidate;
      bestSlips = slips;
    }
  }
  return best;
}
