import { type Sample, sortedCopy } from "./sample.ts";

/**
 * Sizes of the groups of equal values, each 2 or more, in rising order of size.
 *
 * @param values any number of values, in any order
 * @returns empty when no two values are equal
 * @example tieGroups([5, 7, 5, 7, 7, 1]) // => [2, 3]
 */
export function tieGroups(values: Sample): number[] {
  const sorted = sortedCopy(values);
  const sizes: number[] = [];
  let start = 0;
  for (let i = 1; i <= sorted.length; i += 1) {
    if (i < sorted.length && sorted[i] === sorted[start]) continue;
    if (i - start > 1) sizes.push(i - start);
    start = i;
  }
  return sizes.sort((a, b) => a - b);
}
