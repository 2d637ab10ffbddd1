import * as z from "zod";
import { olsMultiple, olsPolynomial } from "../../src/stats/ols-multiple.ts";
import { quantileLine } from "../../src/stats/quantile-regression.ts";
import { randomIntercept } from "../../src/stats/random-intercept.ts";
import type { EffectInference, FixedEffect } from "../../src/stats/random-intercept-effect.ts";
import { type Checks, check, numbers } from "./check.ts";

/** Where the model does not exist, no figure of it does. */
const NO_MODEL = {
  fixed: null,
  sdGroup: null,
  sdResidual: null,
  varGroup: null,
  varResidual: null,
  icc: null,
  remlCriterion: null,
  logLikReml: null,
  boundary: null,
  conditionalModes: null,
};

/** Mixed models and regressions. */
export const MODEL_CHECKS: Checks = new Map([
  [
    "lmm-random-intercept",
    check(
      z.strictObject({ y: numbers, x: numbers.nullish(), group: z.array(z.union([z.string(), z.number()])) }),
      ({ y, x, group }) => {
        const model = randomIntercept(y, x ?? null, group);
        if (model.kind === "no-model") return { ...NO_MODEL, nObs: y.length, nGroups: new Set(group).size };
        const { groupSd, residualSd, criterion, slope } = model;
        const [varGroup, varResidual] = [groupSd ** 2, residualSd ** 2];
        return {
          nObs: model.rows,
          nGroups: model.groups.length,
          fixed: {
            intercept: effectAsExpected(model.intercept),
            ...(slope === null ? {} : { slope: effectAsExpected(slope) }),
          },
          sdGroup: groupSd,
          sdResidual: residualSd,
          varGroup,
          varResidual,
          icc: varGroup / (varGroup + varResidual),
          remlCriterion: criterion,
          logLikReml: -criterion / 2,
          boundary: model.boundary,
          groups: model.groups,
          conditionalModes: model.modes,
        };
      },
    ),
  ],
  [
    "ols-nist-multiple",
    check(
      z.union([
        z.strictObject({ x: numbers, y: numbers, degree: z.number() }),
        z.strictObject({ columns: z.array(z.string()), X: z.array(numbers), y: numbers }),
      ]),
      (inputs) => {
        if ("degree" in inputs) return { ...olsPolynomial(inputs.x, inputs.y, inputs.degree) };
        const columns = inputs.columns.map((_, column) => inputs.X.map((row) => row[column] ?? Number.NaN));
        return { ...olsMultiple(columns, inputs.y) };
      },
    ),
  ],
  [
    "quantile-regression",
    check(z.strictObject({ x: numbers, y: numbers, taus: numbers }), ({ x, y, taus }) => ({
      lines: taus.map((tau) => {
        const line = quantileLine(x, y, tau);
        return line.kind === "line" ? { ...line, nZeroResiduals: line.onLine } : { ...line, tau };
      }),
    })),
  ],
]);

function effectAsExpected({ estimate, se, satterthwaite, kenwardRoger }: FixedEffect): Record<string, unknown> {
  const told = ({ interval, ...rest }: EffectInference) => ({ ...rest, ci95: interval });
  return { estimate, se, satterthwaite: told(satterthwaite), kenwardRoger: told(kenwardRoger) };
}
