import { z } from "zod";
import { Condition, Count, Day, Num, NumOrNull, Text } from "./schema-parts.ts";

/** Ends of a series: swings, means of the first and last block, change over the season. */
const Ends = { n: Count, first: NumOrNull, last: NumOrNull, estimate: NumOrNull };

/** The bat-speed marks below which a rep's ball flight does not count, and what follows from them. */
export const GateReport = z.strictObject({
  marks: z.array(
    z.strictObject({
      /** Names of a condition with the values they may have. */
      applies: z.record(Text, z.array(Text)),
      from: Day.nullable(),
      /** mph; null for a share of the recent best. */
      atLeast: NumOrNull,
      share: NumOrNull,
      days: Count.nullable(),
      best: z.enum(["max", "p90"]).nullable(),
      /** Swings that this mark stands for, and those of them that count. */
      judged: Count,
      passed: Count,
    }),
  ),
  judged: Count,
  passed: Count,
  underMark: Count,
  noSpeed: Count,
  /** The ball-flight measures that a mark touches. */
  effects: z.array(
    z.strictObject({
      /** Place in `series`. */
      series: Count,
      metric: Text,
      unit: Text,
      decimals: Count,
      condition: Condition,
      gated: z.strictObject(Ends),
      ungated: z.strictObject(Ends),
      /** With every mark so many mph higher; 0 as it is. */
      moves: z.array(z.strictObject({ by: Num, ...Ends })),
    }),
  ),
});
