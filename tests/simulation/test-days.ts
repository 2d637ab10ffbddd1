import { withinWindows } from "../../src/report/change/test-days.ts";
import { windowChange } from "../../src/report/change/tests-change.ts";
import { isChange, verdictOf } from "../../src/report/change/verdict.ts";
import { testScatter } from "../../src/report/change/yardsticks.ts";
import { randomFrom } from "../demo/random.ts";

/** Athletes of a group that takes one test: as few as the rules let pass with two days at either end. */
export const ATHLETES = 15;
/** Coefficient of variation of the athletes' day-to-day SDs. */
const SPREAD = 0.3;
/** Day-to-day SD of a typical athlete, mph, and the smallest change that matters. */
const DAY_SD = 1.2;
const WORTH = 1;

export interface TestOutcome {
  readonly athletes: number;
  readonly changed: number;
  /** The quarter of all athletes whose days scatter most. */
  readonly noisiest: { readonly athletes: number; readonly changed: number };
}

/**
 * Groups of athletes who take a test on two days at either end and do not change: how many are called changed. Each athlete's
 * own SD is drawn from a log-normal distribution with the given spread.
 */
export function testOutcome(groups: number, seed: string, trueChange = 0): TestOutcome {
  const random = randomFrom(`${seed} tests ${trueChange}`);
  const sigma = Math.sqrt(Math.log(1 + SPREAD ** 2));
  const athletes = Array.from({ length: groups }, () => {
    const group = Array.from({ length: ATHLETES }, () => {
      const sd = DAY_SD * Math.exp(random.normal(0, sigma) - sigma ** 2 / 2);
      const day = (level: number) => random.normal(level, sd);
      const after = 60 + trueChange * WORTH;
      return { sd, windows: { first: [day(60), day(60)], last: [day(after), day(after)] } };
    });
    const parts = group.map(({ windows }) => withinWindows(windows));
    const df = parts.reduce((sum, part) => sum + part.df, 0);
    const pooled = { sd: Math.sqrt(parts.reduce((sum, part) => sum + part.squares, 0) / df), df, athletes: ATHLETES };
    const scatter = testScatter({ key: "", testDays: pooled, ownLines: null, between: [] });
    if (scatter === null) throw new Error("the simulated group is too small for its own rules");
    return group.map(({ sd, windows }) => {
      const change = windowChange(windows, scatter);
      return { sd, changed: change !== null && isChange(verdictOf(change, WORTH)) };
    });
  }).flat();
  const loudest = [...athletes].sort((a, b) => b.sd - a.sd).slice(0, Math.floor(athletes.length / 4));
  const count = (list: readonly { changed: boolean }[]) => list.filter((one) => one.changed).length;
  return {
    athletes: athletes.length,
    changed: count(athletes),
    noisiest: { athletes: loudest.length, changed: count(loudest) },
  };
}
