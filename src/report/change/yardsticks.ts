import type { Metric } from "../../schema/metric.ts";
import { sdInterval } from "../../stats/pooled-sd.ts";
import { smallestDetectable } from "../../stats/reliability.ts";
import { SHARE_OF_SPREAD } from "../../stats/smallest-worthwhile.ts";
import type { GroupFact, PooledScatter } from "../group-facts.ts";
import type { Series } from "../schema.ts";
import type { Group } from "./group-of.ts";

type Noise = NonNullable<Series["noise"]>;
type Worth = NonNullable<Series["worth"]>;

/** The group that a test's noise must come from: below either number it is not known. */
const TEST_ATHLETES = 10;
const TEST_DF = 30;
/** Degrees of freedom from which a scatter about own lines stands in for a retest. */
const LINES_DF = 10;

const noise = (found: PooledScatter, source: Noise["source"]): Noise => {
  const { sd, df, athletes } = found;
  const ci95 = sdInterval(sd, df, 0.95);
  return { typicalError: sd, ci95: ci95 && [...ci95], df, athletes, mdc95: smallestDetectable(sd), source };
};

/** The group's day-to-day scatter of a test, where enough athletes took it often enough. */
export function testScatter(fact: GroupFact | undefined): PooledScatter | null {
  const found = fact?.testDays;
  return found && found.athletes >= TEST_ATHLETES && found.df >= TEST_DF ? found : null;
}

/**
 * The first yardstick: what two sessions of an athlete who did not change differ by. The trainer's own figure, else for a test the
 * scatter of its days, else as a stand-in the scatter of athletes' sessions about their own lines.
 */
export function noiseOf(metric: Metric, fact: GroupFact | undefined, isTest: boolean): Noise | null {
  const set = metric.typicalError;
  if (set !== undefined) {
    return {
      typicalError: set,
      ci95: null,
      df: null,
      athletes: null,
      mdc95: smallestDetectable(set),
      source: "configured",
    };
  }
  if (isTest) {
    const found = testScatter(fact);
    return found && noise(found, "test-days");
  }
  const lines = fact?.ownLines;
  return lines && lines.df >= LINES_DF ? noise(lines, "own-lines") : null;
}

/**
 * The second yardstick: the smallest change that matters. The trainer's own figure, else a fifth of the spread between athletes of
 * the same kind. Null where there are too few, and for a measure with a window, where a spread between athletes says nothing of how far
 * outside matters.
 */
export function worthOf(metric: Metric, group: Group | null): Worth | null {
  const set = metric.smallestWorthwhile;
  if (set !== undefined) return { value: set, source: "configured", athletes: null };
  if (metric.better === "window" || group === null) return null;
  return { value: SHARE_OF_SPREAD * group.sd, source: group.source, athletes: group.athletes };
}
