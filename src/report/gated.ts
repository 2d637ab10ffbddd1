import { type GateAnswer, type GatedSwing, gate, type Mark } from "../hitting/gate.ts";
import type { Metric } from "../schema/metric.ts";
import type { Gate } from "../schema/profile.ts";
import type { NotCountedReason } from "../schema/reasons.ts";
import type { AthleteSeason, RepTable } from "../schema/season.ts";
import type { Implement } from "../schema/tables.ts";
import { DAY_MS } from "./calendar.ts";
import { conditionsOf, rolesOf } from "./condition.ts";
import { judge } from "./judge.ts";
import type { Condition } from "./schema.ts";

/** Reasons that keep a rep's ball flight out, and nothing else. */
const GATED: ReadonlySet<NotCountedReason | null> = new Set(["under-mark", "no-speed-to-judge"]);

/** Does a rep feed series of this side? A gate keeps the ball's flight out; what the bat did stays. */
export const feeds = (side: Metric["side"], reason: NotCountedReason | null): boolean =>
  reason === null || (side !== "ball" && GATED.has(reason));

interface Known {
  readonly metrics: readonly Metric[];
  readonly implements: readonly Implement[];
  readonly facility: Parameters<typeof judge>[2];
}

type Swings = Pick<AthleteSeason, "profile" | "reps">;

const list = (written: string | readonly string[]): readonly string[] =>
  typeof written === "string" ? [written] : written;

/** Does a gate apply to a rep? A bat fits by its id, its role or as the game bat of the day. */
function applies(gateOf: Gate, condition: Condition, bat: string | null, roles: ReadonlyMap<string, string>): boolean {
  return Object.entries(gateOf.applies).every(([key, written]) => {
    if (written === undefined) return true;
    const wanted = list(written);
    if (key !== "implement") return wanted.includes(condition[key as "environment"] ?? "");
    return [condition.implement, bat, roles.get(bat ?? "")].some((name) => name != null && wanted.includes(name));
  });
}

const markOf = (of: Gate): Mark =>
  "at_least" in of
    ? { kind: "fixed", atLeast: of.at_least }
    : { kind: "recent", share: of.share_of_recent_best, days: of.days, best: of.best ?? "max" };

/** Place in the profile's list of the gate that stands for each rep, or null: of those that apply, the latest by date. */
export function gateOfRep(
  { profile, reps }: Swings,
  conditions: readonly Condition[],
  bats: readonly Implement[],
): (number | null)[] {
  const gates = profile.gates ?? [];
  const roles = rolesOf(bats);
  return reps.date.map((date, i) => {
    const condition = conditions[i]!;
    // A slap is another swing: a mark for full ones says nothing of it.
    if (condition.swing !== undefined) return null;
    let best: number | null = null;
    gates.forEach((one, index) => {
      if ((one.from ?? "") > date || !applies(one, condition, reps.words.implement?.[i] ?? null, roles)) return;
      if (best === null || (one.from ?? "") >= (gates[best]?.from ?? "")) best = index;
    });
    return best;
  });
}

/** The reps as the gate sees them. */
function swingsOf({ profile, reps }: Swings, conditions: readonly Condition[], which: readonly (number | null)[]) {
  const marks = (profile.gates ?? []).map(markOf);
  return reps.date.map((_, i): GatedSwing => {
    const { environment, implement, side } = conditions[i]!;
    const index = which[i] ?? null;
    return {
      day: reps.day[i]! / DAY_MS,
      speed: reps.numbers.bat_speed?.[i] ?? null,
      mark: index === null ? null : marks[index]!,
      group: JSON.stringify([environment ?? null, implement ?? null, side ?? null]),
    };
  });
}

/** Was a ball hit, missed or measured? A rep that the bat's sensor alone knows has no flight that a gate could keep out. */
function hasBall(reps: RepTable, metrics: readonly Metric[], i: number): boolean {
  return (
    Boolean(reps.words.result?.[i]) || metrics.some(({ id, side }) => side === "ball" && reps.numbers[id]?.[i] != null)
  );
}

export interface Judged {
  readonly conditions: readonly Condition[];
  /** Why each rep does not count, or null. */
  readonly judged: readonly (NotCountedReason | null)[];
  /** The same as if there were no gate. */
  readonly ungated: readonly (NotCountedReason | null)[];
  /** The gate of each rep by its place in the profile's list. */
  readonly gateOf: readonly (number | null)[];
  /** What counts when every mark lies so many mph higher. */
  readonly moved: (byMph: number) => (NotCountedReason | null)[];
}

/** Judges an athlete's reps: what keeps one out altogether, then the athlete's bat-speed marks. */
export function judgeReps(athlete: Swings, season: Known): Judged {
  const { profile, reps } = athlete;
  const conditions = conditionsOf(reps, profile);
  const ungated = judge(reps, season.metrics, season.facility);
  const gateOf = gateOfRep(athlete, conditions, season.implements);
  // Reps that are out already are no part of anybody's recent best.
  const all = swingsOf(athlete, conditions, gateOf);
  const inside = ungated.flatMap((reason, i) => (reason === null ? [i] : []));
  const moved = (byMph: number) => {
    const judged = [...ungated];
    const answers: GateAnswer[] = gate(
      inside.map((i) => all[i]!),
      byMph,
    );
    answers.forEach((answer, at) => {
      const i = inside[at]!;
      if (answer === "under-mark") judged[i] = "under-mark";
      if (answer === "no-speed-to-judge" && hasBall(reps, season.metrics, i)) judged[i] = "no-speed-to-judge";
    });
    return judged;
  };
  const gated = gateOf.some((index) => index !== null);
  return { conditions, judged: gated ? moved(0) : ungated, ungated, gateOf, moved };
}
