import type { AthleteReport } from "./schema.ts";

/**
 * How often the rules of `progressOf` call an athlete changed who did not change: the worst case of each kind, as the simulation in
 * tests/simulation measures it. `npm run simulate` prints these figures; a test holds them against a smaller run.
 */
export const MEASURED_RATES: AthleteReport["method"] = {
  falseAlarm: { independent: 0.033, alike: 0.081, tests: 0.078 },
  seasons: 4000,
};
