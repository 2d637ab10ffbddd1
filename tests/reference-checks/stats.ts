import * as z from "zod";
import { hamedRao } from "../../src/stats/hamed-rao.ts";
import { lag1 } from "../../src/stats/lag1.ts";
import { mannKendall } from "../../src/stats/mann-kendall.ts";
import { mean } from "../../src/stats/mean.ts";
import { ols } from "../../src/stats/ols.ts";
import { olsAt } from "../../src/stats/ols-at.ts";
import { type QuantileType, quantile } from "../../src/stats/quantile.ts";
import { sd } from "../../src/stats/sd.ts";
import { theilSen } from "../../src/stats/theil-sen.ts";
import { type Checks, check, numbers } from "./check.ts";
import { LOCATION_CHECKS } from "./location.ts";
import { MODEL_CHECKS } from "./models.ts";
import { PEER_CHECKS } from "./peers.ts";
import { PROGRESS_CHECKS } from "./progress.ts";

/** Lines and single samples. */
const LINE_CHECKS: Checks = new Map([
  [
    "nist-univariate",
    check(z.strictObject({ x: numbers }), ({ x }) => ({ n: x.length, mean: mean(x), sd: sd(x), lag1: lag1(x) })),
  ],
  [
    "quantiles",
    check(z.strictObject({ x: numbers, probs: numbers }), ({ x, probs }) => {
      const ofType = (type: QuantileType) => probs.map((p) => quantile(x, p, type));
      return { type6: ofType(6), type7: ofType(7), type8: ofType(8) };
    }),
  ],
  [
    "ols",
    check(
      z.strictObject({ x: numbers, y: numbers, newX: numbers, confLevel: z.number() }),
      ({ x, y, newX, confLevel }) => {
        const line = ols(x, y, confLevel);
        if (line.kind === "no-line") return { ...line };
        return { ...line, predictions: newX.map((at) => olsAt(line, at, confLevel)) };
      },
    ),
  ],
  [
    "theil-sen",
    check(z.strictObject({ x: numbers, y: numbers, confLevel: z.number() }), ({ x, y, confLevel }) => {
      const line = theilSen(x, y, confLevel);
      if (line.kind === "no-line") return { ...line };
      return { ...line, S: line.s, ci: { confLevel: line.level, ...line.intervals } };
    }),
  ],
  [
    "mann-kendall",
    check(z.strictObject({ y: numbers }), ({ y }) => {
      const test = mannKendall(y);
      if (test === null) return {};
      return {
        ...test,
        S: test.s,
        Z: test.z,
        ZnoContinuity: test.zNoContinuity,
        hamedRao: hamedRaoAsExpected(y),
      };
    }),
  ],
]);

/** Every kind of file we can run, by its `id`. A file that is not here fails. */
export const STATS_CHECKS: Checks = new Map([
  ...LINE_CHECKS,
  ...LOCATION_CHECKS,
  ...MODEL_CHECKS,
  ...PEER_CHECKS,
  ...PROGRESS_CHECKS,
]);

function hamedRaoAsExpected(y: readonly number[]): Record<string, unknown> | null {
  const result = hamedRao(y, 0.05);
  if (result === null) return null;
  const { signed, absolute } = result;
  return { ...result, signed: { ...signed, Z: signed.z }, absolute: { ...absolute, Z: absolute.z } };
}
