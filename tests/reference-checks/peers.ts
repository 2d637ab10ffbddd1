import * as z from "zod";
import { lmsAtPercentile, lmsPercentile, lmsValue, lmsZ } from "../../src/stats/lms.ts";
import { percentileRank } from "../../src/stats/percentile-rank.ts";
import { clopperPearson, jeffreys, jeffreysModified, wilson } from "../../src/stats/proportion-ci.ts";
import { type Checks, check, numbers } from "./check.ts";

/** Standing among others: tables, ranks, shares. */
export const PEER_CHECKS: Checks = new Map([
  [
    "lms",
    check(
      z.strictObject({
        L: z.number(),
        M: z.number(),
        S: z.number(),
        percentiles: numbers.optional(),
        values: numbers.optional(),
        z: numbers.optional(),
      }),
      ({ L, M, S, percentiles = [], values = [], z: scores = [] }) => {
        const lms = { l: L, m: M, s: S };
        const zOfValues = values.map((value) => lmsZ(value, lms));
        return {
          valuesAtPercentiles: percentiles.map((one) => lmsAtPercentile(one, lms)),
          zOfValues,
          percentileOfValues: values.map((value) => lmsPercentile(value, lms)),
          x: scores.map((score) => lmsValue(score, lms)),
          roundTrip: zOfValues.map((score) => lmsValue(score, lms)),
        };
      },
    ),
  ],
  [
    "percentile-rank",
    check(
      z.strictObject({ peers: numbers, values: numbers, confLevel: z.number() }),
      ({ peers, values, confLevel }) => ({
        n: peers.length,
        results: values.map((value) => ({ value, ...percentileRank(peers, value, confLevel) })),
      }),
    ),
  ],
  [
    "proportion-ci",
    check(
      z.strictObject({
        pairs: z.array(z.strictObject({ x: z.number(), n: z.number() })),
        confLevel: z.number(),
      }),
      ({ pairs, confLevel }) => ({
        results: pairs.map(({ x, n }) => ({
          x,
          n,
          p: x / n,
          wilson: wilson(x, n, confLevel),
          wilson90: wilson(x, n, 0.9),
          jeffreys: jeffreys(x, n, confLevel),
          jeffreysModified: jeffreysModified(x, n, confLevel),
          clopperPearson: clopperPearson(x, n, confLevel),
        })),
      }),
    ),
  ],
]);
