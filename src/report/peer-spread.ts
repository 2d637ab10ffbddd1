import type { Reference } from "../schema/season.ts";
import { mean } from "../stats/mean.ts";
import { type QuantileLine, quantileLine } from "../stats/quantile-regression.ts";
import { sd } from "../stats/sd.ts";
import { hasAges, holdsAge } from "./peer-age.ts";
import { type PeerGroup, type PeerQuestion, peerGroups } from "./peer-match.ts";
import { agedSample, valuesOf } from "./peer-sample.ts";

/** How far athletes of one kind lie apart, in the metric's unit. */
export interface PeerSpread {
  readonly sd: number;
  /** Where their middle lies at the athlete's age; null where it moves with an age that is not known or not among theirs. */
  readonly middle: number | null;
  readonly athletes: number;
}

/** Athletes from whom a spread between them may be told. */
const ATHLETES = 10;

const spread = (values: readonly number[]): PeerSpread | null => {
  const found = values.length < ATHLETES ? null : sd(values);
  return found === null ? null : { sd: found, middle: mean(values), athletes: values.length };
};

/** Median lines of groups, drawn once. */
const ABOUT_LINE = new WeakMap<PeerGroup, { readonly spread: PeerSpread; readonly line: QuantileLine }>();

/** What age explains is no difference between athletes of one age: only the spread about the median line in age is. */
function ofSample(group: PeerGroup, age: number | null): PeerSpread | null {
  const sample = agedSample(group);
  if (sample === null) {
    const ofAge = (row: Reference) => group.level !== null || (age !== null && holdsAge(row, age));
    return spread(valuesOf(group.rows.filter(ofAge)));
  }
  const within = age !== null && age >= sample.youngest && age <= sample.oldest;
  if (group.level === null && !within) return null;
  const known = ABOUT_LINE.get(group);
  const atAge = ({ spread, line }: NonNullable<typeof known>): PeerSpread => ({
    ...spread,
    middle: within ? line.intercept + line.slope * age : null,
  });
  if (known) return atAge(known);
  const line = quantileLine(sample.ages, sample.values, 0.5);
  if (line.kind !== "line") return null;
  const found = spread(sample.values.map((value, i) => value - line.intercept - line.slope * sample.ages[i]!));
  if (found === null) return null;
  ABOUT_LINE.set(group, { spread: found, line });
  return atAge({ spread: found, line });
}

function ofTable({ rows }: PeerGroup, age: number | null): PeerSpread | null {
  for (const row of rows) {
    if (row.kind !== "mean-sd" || row.n === null || row.n < ATHLETES) continue;
    if (!hasAges(row) || (age !== null && holdsAge(row, age))) return { sd: row.sd, middle: row.mean, athletes: row.n };
  }
  return null;
}

/**
 * Spread between athletes of the same kind who were measured the same way: of the first group of athletes' own values with ten or more, else
 * a published standard deviation of ten or more.
 *
 * @param question what `peersOf` is asked, and the athlete's age in years; without it only groups that name a level tell
 */
export function peerSpread(
  question: PeerQuestion & { readonly age: number | null },
  reference: readonly Reference[],
): PeerSpread | null {
  for (const group of peerGroups(question, reference)) {
    const found = group.kind === "value" ? ofSample(group, question.age) : ofTable(group, question.age);
    if (found !== null) return found;
  }
  return null;
}
