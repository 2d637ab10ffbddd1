import type { Metric } from "../schema/metric.ts";
import type { Goal } from "../schema/profile.ts";
import type { ReadAs } from "./line.ts";
import type { GoalReport } from "./schema.ts";
import type { Zone } from "./zones.ts";

/** A goal with all its forms side by side: what does not apply is null. */
export type Aim = Pick<GoalReport, "kind" | "zone" | "target" | "window" | "atLeast" | "share">;

const rangeOf = (range: readonly [number, number] | undefined): [number, number] | null =>
  range === undefined ? null : [...range];

/** @param zones of metrics.md, to tell what a goal's zone asks for */
export function aimOf(goal: Goal, zones: readonly Zone[]): Aim {
  const none = { zone: null, target: null, window: null, atLeast: null, share: null };
  if ("target" in goal) return { ...none, kind: "target", target: goal.target };
  if ("window" in goal) return { ...none, kind: "window", window: [...goal.window], share: goal.share };
  if ("at_least" in goal) return { ...none, kind: "at-least", atLeast: goal.at_least, share: goal.share };
  const zone = zones.find(({ id }) => id === goal.zone);
  return {
    ...none,
    kind: "zone",
    share: goal.share,
    zone: {
      id: goal.zone,
      label: zone?.label ?? goal.zone,
      exitVelocity: rangeOf(zone?.exit_velocity),
      launchAngle: rangeOf(zone?.launch_angle),
      spray: rangeOf(zone?.spray),
    },
  };
}

/** The figure that the goal asks for: a value, or a share of swings. */
export const wantedBy = ({ target, share }: Aim): number => target ?? share ?? 0;

/**
 * What a swing gives to the session's figure, so that shares are pooled like means: 1 where the value is as the goal wants it, else 0.
 *
 * @returns undefined where the values themselves are it: a target's, or a zone's, which are 1 and 0 already
 */
export function readFor({ window, atLeast }: Aim): ReadAs | undefined {
  const inside =
    window !== null
      ? (value: number) => value >= window[0] && value <= window[1]
      : atLeast !== null
        ? (value: number) => value >= atLeast
        : null;
  if (inside === null) return undefined;
  // Not a slope: a share has none. It marks the sessions in which an offset stands.
  return { value: (value) => (inside(value) ? 1 : 0), slope: () => 1 };
}

/**
 * Which way the goal lies. A share of swings is better when higher. A target of a metric that is better within a window is approached
 * from where the athlete started: null where that is not known, or was the target.
 */
export function directionOf(aim: Aim, better: Metric["better"], baseline: number | null): "higher" | "lower" | null {
  if (aim.kind !== "target") return "higher";
  if (better !== "window") return better;
  if (baseline === null || aim.target === null || baseline === aim.target) return null;
  return baseline < aim.target ? "higher" : "lower";
}
