import { type Goal, goalKey } from "../schema/profile.ts";
import type { Problem } from "../schema/season.ts";
import type { ReadPage } from "./page.ts";
import { remark } from "./problem.ts";

/**
 * Goals that ask for the same of the same swings and were set on the same day, or on none: nobody can tell which of them is the later
 * version, and both stand in the report.
 */
export function repeatedGoals(page: Pick<ReadPage<unknown>, "at">, goals: readonly Goal[] = []): Problem[] {
  const seen = new Map<string, number>();
  return goals.flatMap((goal, index) => {
    const key = `${goal.set ?? ""} ${goalKey(goal)}`;
    const before = seen.get(key);
    if (before === undefined) {
      seen.set(key, index);
      return [];
    }
    const { file, line } = page.at(["goals", before], "value");
    return [
      remark("repeated-goal", page.at(["goals", index], "value"), {
        set: goal.set ?? "",
        other: `${file}:${line ?? 1}`,
      }),
    ];
  });
}
