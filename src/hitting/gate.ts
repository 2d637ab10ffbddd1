import { quantile } from "../stats/quantile.ts";

/** A bat-speed mark: a fixed one in mph, or a share of the hitter's own best of the last days. */
export type Mark =
  | { readonly kind: "fixed"; readonly atLeast: number }
  | { readonly kind: "recent"; readonly share: number; readonly days: number; readonly best: "max" | "p90" };

/** A swing as a gate sees it. */
export interface GatedSwing {
  /** Whole days from any one day. */
  readonly day: number;
  /** Bat speed, mph; null where none was read. */
  readonly speed: number | null;
  /** What stands for it that day; null where none does. */
  readonly mark: Mark | null;
  /** Swings of one name share a recent best: one bat in one environment from one side. */
  readonly group: string;
}

/** `no-mark`: none applies, or there is no recent best yet; such a swing counts. */
export type GateAnswer = "passed" | "under-mark" | "no-speed-to-judge" | "no-mark";

/** Swings that a recent best needs: of fewer the best says more of luck than of the hitter. */
const SWINGS_FOR_A_BEST = 5;

/**
 * Judges each swing by its mark. A recent best is that of earlier days alone, so that the order within a day moves nothing and a swing
 * is never judged by itself.
 *
 * @param shift mph added to every mark, to see how results move with it
 * @returns one answer per swing, in their order
 */
export function gate(swings: readonly GatedSwing[], shift = 0): GateAnswer[] {
  const bests = recentBests(swings);
  return swings.map((swing) => {
    if (swing.mark === null) return "no-mark";
    const mark = swing.mark.kind === "fixed" ? swing.mark.atLeast : bests(swing, swing.mark);
    if (mark === null) return "no-mark";
    if (swing.speed === null) return "no-speed-to-judge";
    return swing.speed >= mark + shift ? "passed" : "under-mark";
  });
}

type Recent = Extract<Mark, { kind: "recent" }>;

/** Finds the recent mark of a swing, each day and group worked out once. */
function recentBests(swings: readonly GatedSwing[]): (swing: GatedSwing, mark: Recent) => number | null {
  const byGroup = new Map<string, GatedSwing[]>();
  for (const swing of swings) {
    if (swing.speed === null) continue;
    const list = byGroup.get(swing.group);
    if (list) list.push(swing);
    else byGroup.set(swing.group, [swing]);
  }
  const known = new Map<string, number | null>();
  return ({ day, group }, { share, days, best }) => {
    const key = JSON.stringify([group, day, share, days, best]);
    const found = known.get(key);
    if (found !== undefined) return found;
    const speeds = (byGroup.get(group) ?? []).flatMap((one) =>
      one.day < day && one.day >= day - days && one.speed !== null ? [one.speed] : [],
    );
    const top = speeds.length < SWINGS_FOR_A_BEST ? null : best === "max" ? Math.max(...speeds) : quantile(speeds, 0.9);
    const mark = top === null ? null : share * top;
    known.set(key, mark);
    return mark;
  };
}
