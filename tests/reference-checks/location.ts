import * as z from "zod";
import { bootstrap, type Statistic } from "../../src/stats/bootstrap.ts";
import { circular, rayleigh } from "../../src/stats/circular.ts";
import { type HodgesLehmann, hodgesLehmann, hodgesLehmannShift } from "../../src/stats/hodges-lehmann.ts";
import { loess, lowess } from "../../src/stats/loess.ts";
import { mad, madSd } from "../../src/stats/mad.ts";
import { mean } from "../../src/stats/mean.ts";
import { median } from "../../src/stats/median.ts";
import { ols } from "../../src/stats/ols.ts";
import { quantileInterval } from "../../src/stats/quantile-ci.ts";
import { type Checks, check, numbers } from "./check.ts";

const LEVEL = 0.95;
const SEED = 20_251_006;
const RESAMPLES = 10_000;

/** Middles, smoothing and resampling. */
export const LOCATION_CHECKS: Checks = new Map([
  [
    "quantile-ci",
    check(z.strictObject({ x: numbers, probs: numbers, confLevels: numbers }), ({ x, probs, confLevels }) =>
      Object.fromEntries(
        confLevels.map((level) => [
          `conf${Math.round(100 * level)}`,
          probs.map((p) => ({ p, ...quantileInterval(x, p, level) })),
        ]),
      ),
    ),
  ],
  [
    "robust-location",
    check(z.strictObject({ x: numbers, y: numbers.optional() }), ({ x, y }) => {
      const raw = mad(x);
      const one = hodgesLehmann(x, LEVEL);
      const two = y === undefined ? null : hodgesLehmannShift(x, y, LEVEL);
      return {
        median: median(x),
        madRaw: raw,
        "mad1.4826": raw === null ? null : 1.4826 * raw,
        madExact: madSd(x),
        hodgesLehmann: one?.estimate ?? null,
        hodgesLehmannCI: intervalOf(one),
        ...(y === undefined ? {} : { shift: two?.estimate ?? null, shiftCI: intervalOf(two) }),
      };
    }),
  ],
  [
    "bootstrap",
    check(
      z.strictObject({
        statistic: z.enum(["mean", "median", "slope"]),
        confLevel: z.number(),
        x: numbers,
        y: numbers.optional(),
      }),
      ({ statistic, confLevel, x, y }) => {
        const found = bootstrap(x.length, STATISTICS[statistic](x, y ?? []), {
          seed: SEED,
          resamples: RESAMPLES,
          level: confLevel,
        });
        if (found === null) return {};
        const limits = ([lower, upper]: readonly [number, number]) => ({ lower, upper });
        const { estimate, acceleration, percentile, bca, bcaStrict } = found;
        return {
          estimate,
          acceleration,
          acceptAtB10000: {
            percentile: limits(percentile),
            bcaStrict: bcaStrict && limits(bcaStrict),
            bcaHalfTies: bca && limits(bca),
          },
        };
      },
    ),
  ],
  [
    "loess",
    check(z.strictObject({ x: numbers, y: numbers, at: numbers, spans: numbers }), ({ x, y, at, spans }) =>
      Object.fromEntries(
        spans.map((span) => [
          `span${span}`,
          {
            loessDegree1: loess(x, y, at, span),
            lowessIter0: lowess(x, y, span, 0),
            lowessIter3: lowess(x, y, span, 3),
          },
        ]),
      ),
    ),
  ],
  [
    "circular",
    check(z.strictObject({ values: numbers, units: z.string(), period: z.number() }), ({ values, period }) => {
      const found = circular(values, period);
      if (found === null) return {};
      const test = rayleigh(found);
      return {
        n: found.n,
        C: found.cosine,
        S: found.sine,
        meanDirection: found.meanDirection,
        meanDirectionDegrees: (found.meanDirection * 360) / period,
        resultantLength: found.resultantLength,
        circularVariance: found.variance,
        circularSdRadians: found.sdRadians,
        circularSdUnits: found.sd,
        rayleighZ: test.z,
        rayleighPzar: test.pZar,
        rayleighPmardia: test.pMardia,
      };
    }),
  ],
]);

const STATISTICS: Readonly<Record<"mean" | "median" | "slope", (x: number[], y: number[]) => Statistic>> = {
  mean: (x) => (rows) => mean(Float64Array.from(rows, (i) => x[i]!)),
  median: (x) => (rows) => median(Float64Array.from(rows, (i) => x[i]!)),
  slope: (x, y) => (rows) => {
    const line = ols(
      Float64Array.from(rows, (i) => x[i]!),
      Float64Array.from(rows, (i) => y[i]!),
    );
    return line.kind === "line" ? line.slope : null;
  },
};

function intervalOf(found: HodgesLehmann | null): Record<string, unknown> | null {
  return found === null || found.interval === null ? null : { confLevel: LEVEL, ...found.interval };
}
