import { wilson } from "../../src/stats/proportion-ci.ts";
import { type Cell, changed, UNCHANGED, verdicts } from "./seasons.ts";
import { ATHLETES, testOutcome } from "./test-days.ts";

/** A share of simulated seasons that were called changed, against what is allowed. */
export interface Rate {
  readonly name: string;
  readonly kind: "independent" | "alike" | "tests";
  readonly changed: number;
  readonly seasons: number;
  readonly limit: number;
}

/** Allowed shares of false alarms. */
const LIMIT = { independent: 0.07, alike: 0.1, tests: 0.07, noisiest: 0.1 } as const;

const nameOf = ({ sessions, alike, share, swings }: Cell): string =>
  `${sessions} sessions of ${swings.join(" to ")} swings, ${100 * share} % of the variance between sessions, neighbours ${alike === 0 ? "independent" : `alike (${alike})`}`;

/** False alarms of every cell, training and tests. */
export function falseAlarms(seasons: number, seed: string): Rate[] {
  const lines = UNCHANGED.map((cell): Rate => {
    const kind = cell.alike === 0 ? "independent" : "alike";
    return { name: nameOf(cell), kind, changed: changed(verdicts(cell, seasons, seed)), seasons, limit: LIMIT[kind] };
  });
  // Enough groups for as many athletes in the noisiest quarter alone.
  const tests = testOutcome(Math.ceil((4 * seasons) / ATHLETES), seed);
  return [
    ...lines,
    {
      name: "tests on 2 + 2 days, all athletes",
      kind: "tests",
      changed: tests.changed,
      seasons: tests.athletes,
      limit: LIMIT.tests,
    },
    {
      name: "tests on 2 + 2 days, noisiest quarter of athletes",
      kind: "tests",
      changed: tests.noisiest.changed,
      seasons: tests.noisiest.athletes,
      limit: LIMIT.noisiest,
    },
  ];
}

/** Is a cell surely above what is allowed: is even the lower end of its own 95 % interval? */
export function tooMany({ changed: n, seasons, limit }: Rate): boolean {
  return wilson(n, seasons, 0.95)[0] > limit;
}
