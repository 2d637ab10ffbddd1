import type { Series } from "../schema.ts";
import type { Group } from "./group-of.ts";

/**
 * What a start far from the group's middle would come back by though nobody changed: part of the distance is the error of the days it
 * was measured on, (1 - ICC) of it, with ICC the spread between athletes as a share of that spread and the error of a start of so
 * many sessions together.
 *
 * @returns null without a start, a group, or a scatter to weigh them by
 * @see Barnett et al. (2005), Int J Epidemiol 34:215-220
 */
export function reboundOf(first: Series["first"], noise: Series["noise"], group: Group | null): Series["rebound"] {
  if (first === null || noise === null || group === null || group.middle === null) return null;
  const between = group.sd ** 2;
  const icc = between / (between + noise.typicalError ** 2 / first.sessions);
  const { middle, athletes, source } = group;
  return { estimate: (1 - icc) * (middle - first.mean), icc, middle, athletes, source };
}
