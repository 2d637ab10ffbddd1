import type { Metric } from "../../schema/metric.ts";
import type { Series } from "../schema.ts";
import type { Primary } from "./primary.ts";
import type { WindowChange } from "./tests-change.ts";
import { mirrored, type Turned } from "./verdict.ts";

/** A change turned so that above 0 is better. */
export const turned = (change: Turned, better: Metric["better"]): Turned =>
  better === "higher" ? change : mirrored(change);

type Change = NonNullable<Series["change"]>;

/** The report's change from what was computed and what stands beside it; what all measures together say is filled in later. */
export const changeBlock = (
  { estimate, ci95, ci90, df, method }: Primary | WindowChange,
  rest: Pick<Change, "smallestWorthwhile" | "verdict" | "outside" | "p" | "beyondNoise">,
): Change => ({
  estimate,
  ci95: [...ci95],
  ci90: [...ci90],
  df,
  method,
  pHolm: null,
  holds: null,
  ...rest,
});
