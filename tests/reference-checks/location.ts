import * as z from "zod";
import { type Bootstrap, bootstrap } from "../../src/stats/bootstrap.ts";
import type { Statistic } from "../../src/stats/bootstrap-statistic.ts";
import { circular } from "../../src/stats/circular.ts";
import { type HodgesLehmann, hodgesLehmann, hodgesLehmannShift } from "../../src/stats/hodges-lehmann.ts";
import type { Interval } from "../../src/stats/interval.ts";
import { loess } from "../../src/stats/loess.ts";
import { lowess } from "../../src/stats/lowess.ts";
import { mad, madSd } from "../../src/stats/mad.ts";
import { mean } from "../../src/stats/mean.ts";
import { median } from "../../src/stats/median.ts";
import { ols } from "../../src/stats/ols.ts";
import { quantileInterval } from "../../src/stats/quantile-ci.ts";
import { rayleigh } from "../../src/stats/rayleigh.ts";
import { type Checks, check, numbers } from "./check.ts";

/** The robust-location file gives no level: its intervals are for 95%. */
const LEVEL = 0.95;

/** The run that the ranges of a case are for. */
const DRAWS = { seed: 20_251_006, resamples: 10_000 };

/** Figures that a case may ask to resample, by the name it gives them. */
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

/** Middles, smoothing and resampling. */
export const LOCATION_CHECKS: Checks = new Map([
  [
    "quantile-ci",
    check(z.strictObject({ x: numbers, probs: numbers, confLevels: numbers }), ({ x, probs, confLevels }) =>
      Object.fromEntries(
        confLevels.map((level) => [
          `conf${Number((100 * level).toPrecision(12))}`,
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
        hodgesLehmannCI: pairsIntervalAsExpected(one),
        shift: two?.estimate ?? null,
        shiftCI: pairsIntervalAsExpected(two),
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
      ({ statistic, confLevel, x, y }) =>
        bootstrapAsExpected(bootstrap(x.length, STATISTICS[statistic](x, y ?? []), DRAWS, confLevel)),
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
            lowessIter0: lowessAsExpected(x, y, span, 0),
            lowessIter3: lowessAsExpected(x, y, span, 3),
          },
        ]),
      ),
    ),
  ],
  [
    "circular",
    check(z.strictObject({ values: numbers, units: z.string(), period: z.number() }), ({ values, period }) =>
      circularAsExpected(values, period),
    ),
  ],
]);

function pairsIntervalAsExpected(found: HodgesLehmann | null): Record<string, unknown> | null {
  return found === null || found.interval === null ? null : { confLevel: LEVEL, ...found.interval };
}

function bootstrapAsExpected(found: Bootstrap | null): Record<string, unknown> {
  const limits = (interval: Interval | undefined) => interval && { lower: interval[0], upper: interval[1] };
  return {
    estimate: found?.estimate ?? null,
    acceleration: found?.acceleration ?? null,
    acceptAtB10000: {
      percentile: limits(found?.percentile),
      bcaStrict: limits(found?.bcaStrict?.interval),
      bcaHalfTies: limits(found?.bca?.interval),
    },
  };
}

function lowessAsExpected(x: number[], y: number[], span: number, rounds: number): Record<string, unknown> {
  const curve = lowess(x, y, span, rounds);
  return { x: Array.from(curve.x), y: Array.from(curve.y) };
}

function circularAsExpected(values: number[], period: number): Record<string, unknown> {
  const found = circular(values, period);
  const test = found && rayleigh(found);
  const direction = found?.meanDirection ?? null;
  return {
    n: values.length,
    C: found?.cosine ?? null,
    S: found?.sine ?? null,
    meanDirection: direction,
    meanDirectionDegrees: direction === null ? null : (direction / period) * 360,
    resultantLength: found?.resultantLength ?? null,
    circularVariance: found?.variance ?? null,
    circularSdRadians: found?.sdRadians ?? null,
    circularSdUnits: found?.sd ?? null,
    rayleighZ: test?.z ?? null,
    rayleighPzar: test?.pZar ?? null,
    rayleighPmardia: test?.pMardia ?? null,
  };
}
