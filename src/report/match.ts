import type { ConditionWritten } from "../schema/condition.ts";
import type { Implement } from "../schema/tables.ts";
import { conditionKey, elsewhere, rolesOf } from "./condition.ts";
import type { ConditionOutcomes, Outcomes, Strand } from "./group.ts";
import type { Condition } from "./schema.ts";

/** The strands that stand for a condition as the trainer wrote it: one and the same, or a pool of several. */
export interface Match {
  readonly condition: Condition;
  readonly pooled: boolean;
  readonly parts: readonly Strand[];
}

/** Only the keys that are there: `exactOptionalPropertyTypes` keeps absent and undefined apart. */
export function conditionFrom(written: ConditionWritten): Condition {
  return Object.fromEntries(Object.entries(written).filter(([, value]) => value !== undefined)) as Condition;
}

/** Does a strand lie in the named condition? A bat fits by its id or by its role. */
function fits(condition: Condition, named: Condition, roles: ReadonlyMap<string, string>): boolean {
  return Object.entries(named).every(([key, wanted]) => {
    const has = condition[key as keyof Condition];
    if (key === "implement" && typeof has === "string") return has === wanted || roles.get(has) === wanted;
    return JSON.stringify(has) === JSON.stringify(wanted);
  });
}

/** Tests are not training. */
const isTest = ({ purpose }: Condition): boolean => purpose === "test";

/** Two conditions of one place, on the same side, of tests or of training, and with pitch speeds read alike, as far as both say. */
const meet = (one: Condition, other: Condition): boolean =>
  isTest(one) === isTest(other) &&
  elsewhere(one) === elsewhere(other) &&
  (["side", "pitchSpeedAt", "load", "protocol"] as const).every(
    (key) => !one[key] || !other[key] || one[key] === other[key],
  );

/**
 * What became of all swings in the condition of a match: the denominator of its ball-flight figures. Swings of conditions in
 * which nothing was read belong to it too, or a hitter who misses would look like one who was not measured.
 */
export function outcomesIn(
  { condition, pooled, parts }: Match,
  all: readonly ConditionOutcomes[],
  bats: readonly Implement[],
): Outcomes {
  const roles = rolesOf(bats);
  const belongs = (other: Condition) =>
    pooled
      ? !other.swing && fits(other, condition, roles) && meet(other, parts[0]!.condition)
      : conditionKey(other) === conditionKey(parts[0]!.condition);
  const inside = all.filter((one) => belongs(one.condition)).map((one) => one.of);
  const sum = (key: keyof Outcomes) => inside.reduce((total, of) => total + of[key], 0);
  return { swings: sum("swings"), hit: sum("hit"), foul: sum("foul"), miss: sum("miss"), notKnown: sum("notKnown") };
}

/**
 * Finds the strands of a measure or goal. The strand with exactly the named values where there is one, else a pool of all
 * that lie in it; but the two sides of a switch hitter, pitch speeds read at different places, tests and training, and slaps and
 * full swings never meet: each gives a match of its own. Swings at home, at a club or in games are looked at where the condition names
 * their place, or where there are no others.
 *
 * @returns no match when nothing was measured there
 */
export function match(
  strands: readonly Strand[],
  metric: string,
  written: ConditionWritten,
  bats: readonly Implement[],
): Match[] {
  const named = conditionFrom(written);
  const ofMetric = strands.filter((strand) => strand.metric.id === metric);
  const exact = ofMetric.find((strand) => conditionKey(strand.condition) === conditionKey(named));
  if (exact) return [{ condition: named, pooled: false, parts: [exact] }];

  const roles = rolesOf(bats);
  const fitting = ofMetric.filter((strand) => !strand.condition.swing && fits(strand.condition, named, roles));
  const here = named.place === undefined ? fitting.filter(({ condition }) => elsewhere(condition) === null) : [];
  const inside = here.length > 0 ? here : fitting;
  const apart = new Map<string, Strand[]>();
  for (const strand of inside) {
    const { side, pitchSpeedAt, load, protocol } = strand.condition;
    const key = JSON.stringify(
      [side, pitchSpeedAt, load, protocol, elsewhere(strand.condition)]
        .map((part) => part ?? null)
        .concat(String(isTest(strand.condition))),
    );
    apart.set(key, [...(apart.get(key) ?? []), strand]);
  }
  const several = apart.size > 1;
  return [...apart.entries()]
    .sort(([a], [b]) => (a < b ? -1 : 1))
    .map(([, parts]) => {
      const { side, pitchSpeedAt, load, protocol } = parts[0]!.condition;
      const condition = {
        ...named,
        ...(several && isTest(parts[0]!.condition) ? { purpose: "test" } : {}),
        ...(several && side ? { side } : {}),
        ...(several && pitchSpeedAt ? { pitchSpeedAt } : {}),
        ...(several && load ? { load } : {}),
        ...(several && protocol ? { protocol } : {}),
        ...(several && elsewhere(parts[0]!.condition) ? { place: elsewhere(parts[0]!.condition)! } : {}),
      };
      return { condition, pooled: true, parts };
    });
}
