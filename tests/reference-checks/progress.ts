import * as z from "zod";
import { agreement } from "../../src/stats/agreement.ts";
import { groupMeans } from "../../src/stats/group-means.ts";
import { icc } from "../../src/stats/icc.ts";
import { tInterval } from "../../src/stats/interval.ts";
import { lag1Inflation } from "../../src/stats/lag1-inflation.ts";
import { benjaminiHochberg, bonferroni, holm } from "../../src/stats/multiplicity.ts";
import { ols } from "../../src/stats/ols.ts";
import { trialsAnova, typicalError } from "../../src/stats/reliability.ts";
import { sd } from "../../src/stats/sd.ts";
import { smallestWorthwhile } from "../../src/stats/smallest-worthwhile.ts";
import { targetProbability } from "../../src/stats/target-probability.ts";
import { type Checks, check, numbers } from "./check.ts";

/** Trends of sessions, targets, reliability. */
export const PROGRESS_CHECKS: Checks = new Map([
  [
    "group-trend",
    check(
      z.strictObject({ y: numbers, x: numbers, group: z.array(z.string()), confLevel: z.number() }),
      ({ y, x, group, confLevel }) => {
        const { groups, withinSd } = groupMeans(x, y, group);
        const at = groups.map((one) => one.x);
        const values = groups.map((one) => one.mean);
        const line = ols(at, values, confLevel);
        if (line.kind !== "line") return { ...line };
        const inflated = lag1Inflation(values.map((value, i) => value - line.intercept - line.slope * at[i]!));
        const span = Math.max(...at) - Math.min(...at);
        const told = (se: number | null, df: number) => ({
          se,
          df,
          ci95: tInterval(line.slope, se, df, confLevel),
          changeCi95: tInterval(line.slope * span, se === null ? null : se * span, df, confLevel),
        });
        const se = line.seSlope;
        return {
          groups: groups.map((one) => one.name),
          reps: groups.map((one) => one.n),
          groupX: at,
          groupMean: values,
          groupMedian: groups.map((one) => one.median),
          pooledWithinSd: withinSd,
          plain: { slope: line.slope, changeOverSpan: line.slope * span, ...told(se, line.df) },
          ...inflated,
          adjusted: told(se === null ? null : se * inflated.inflation, Math.min(line.df, inflated.df)),
        };
      },
    ),
  ],
  [
    "target-probability",
    check(
      z.strictObject({
        x: numbers,
        y: numbers,
        x0: z.number(),
        target: z.number(),
        better: z.enum(["higher", "lower"]),
      }),
      ({ x, y, x0, target, better }) => {
        const line = ols(x, y);
        if (line.kind !== "line") return { ...line };
        return { ...targetProbability(line, x0, target, better) };
      },
    ),
  ],
  [
    "reliability",
    check(z.strictObject({ trialsBySubject: z.array(numbers), confLevel: z.number() }), (inputs) =>
      reliability(inputs.trialsBySubject, inputs.confLevel),
    ),
  ],
  [
    "multiplicity",
    check(z.strictObject({ p: numbers }), ({ p }) => {
      const rejected = (adjusted: readonly number[]) => adjusted.filter((one) => one <= 0.05).length;
      return {
        holm: holm(p),
        benjaminiHochberg: benjaminiHochberg(p),
        bonferroni: bonferroni(p),
        rejectedHolm05: rejected(holm(p)),
        rejectedBH05: rejected(benjaminiHochberg(p)),
      };
    }),
  ],
]);

function reliability(trials: readonly (readonly number[])[], level: number): Record<string, unknown> {
  const anova = trialsAnova(trials);
  const worth = smallestWorthwhile(trials);
  if (anova === null || worth === null) return {};
  const correlations = icc(anova, level);
  const error = typicalError(anova, level);
  const two = anova.k === 2 ? agreement(trials as unknown as [number, number][], level) : null;
  const all = sd(trials.flat())!;
  return {
    n: anova.n,
    k: anova.k,
    anova: {
      MSsubjects: anova.subjects,
      MStrials: anova.trials,
      MSerror: anova.error,
      MSwithin: anova.within,
    },
    icc1_1: correlations.oneWay,
    icc2_1: correlations.agreement,
    icc2_1_ci: correlations.agreementInterval,
    icc3_1: correlations.consistency,
    icc3_1_ci: correlations.consistencyInterval,
    typicalError: error.typicalError,
    typicalErrorCI: error.interval,
    typicalErrorDf: error.df,
    withinSubjectSdWithBias: error.withBias,
    mdc95: error.mdc95,
    mdc95ExactZ: error.mdc95Exact,
    ...(two === null
      ? {}
      : {
          meanChange: two.meanChange,
          sdChange: two.sdChange,
          meanChangeCI: two.interval,
          typicalErrorFromDiff: two.typicalError,
          limitsOfAgreement196: two.limits,
        }),
    betweenSdFirstTrial: worth.firstTrial.sd,
    swcFirstTrial: worth.firstTrial.change,
    betweenSdAthleteMeans: worth.means.sd,
    swcAthleteMeans: worth.means.change,
    betweenSdTrue: worth.true.sd,
    swcTrue: worth.true.change,
    // A shortcut of textbooks, here for the comparison alone: the typical error is the one to use (Weir 2005).
    semFromIcc3: correlations.consistency === null ? null : all * Math.sqrt(1 - correlations.consistency),
  };
}
