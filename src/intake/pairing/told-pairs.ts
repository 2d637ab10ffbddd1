import type { AppliedCorrection, Problem } from "../../schema/season.ts";
import type { Correction } from "../corrections/correction.ts";
import { rowAtPlace } from "../corrections/named-rows.ts";
import { fault } from "../problem.ts";
import type { RowAt, RowFates } from "../row-fates.ts";

/** The field by which corrections speak of pairs: `from` is the partner that is wrong, `to` the one that is right. */
export const PAIR_FIELD = "pair";

/** What corrections say of pairs. Keys of rows as {@link rowKeyOf} makes them. */
export interface ToldPairs {
  readonly made: readonly (readonly [RowAt, RowAt])[];
  /** Two keys that are not one swing. */
  readonly broken: ReadonlySet<string>;
  /** Rows that have no partner at all. */
  readonly alone: ReadonlySet<string>;
  readonly applied: readonly AppliedCorrection[];
  readonly problems: readonly Problem[];
}

export const rowKeyOf = ({ table, row }: RowAt): string => `${table}:${row}`;
export const pairKey = (one: RowAt, other: RowAt): string => [rowKeyOf(one), rowKeyOf(other)].sort().join(" ");

/**
 * Reads corrections of pairs, in order of `on`, then of line: the later one stands. A correction that cannot be followed is refused as a whole.
 *
 * @param side what a row's file measures
 */
export function toldPairs(
  corrections: readonly Correction[],
  fates: RowFates,
  side: (at: RowAt) => "bat" | "ball" | null,
): ToldPairs {
  const made = new Map<string, readonly [RowAt, RowAt]>();
  const broken = new Set<string>();
  const alone = new Set<string>();
  const applied: AppliedCorrection[] = [];
  const problems: Problem[] = [];
  const refuse = ({ at }: Correction, code: string, args: Problem["args"] = {}): void => {
    problems.push(fault(code, { ...at, column: null }, args));
  };
  const inOrder = [...corrections].sort((a, b) => (a.on < b.on ? -1 : a.on > b.on ? 1 : a.at.line - b.at.line));
  for (const correction of inOrder) {
    const { file, line, from, to } = correction;
    if (file === undefined || line === undefined) {
      refuse(correction, "correction-incomplete", { detail: "a pair is named by file and line of one of its rows" });
      continue;
    }
    const own = rowAtPlace(file, line, fates);
    if (own === null) {
      refuse(correction, "correction-without-rows");
      continue;
    }
    const other = (text: string | undefined): RowAt | null | undefined => {
      if (text === undefined) return undefined;
      const [, name = "", number = ""] = /^(.*):(\d+)$/.exec(text.trim()) ?? [];
      const found = rowAtPlace(name, Number(number), fates);
      return found !== null && partners(fates, own, found, side) ? found : null;
    };
    const [was, is] = [other(from), other(to)];
    const wrong = was === null ? "from" : is === null ? "to" : null;
    if (wrong !== null) {
      const expected = "file:line of the other device's row of the same day";
      refuse(correction, "wrong-value", { key: wrong, found: (wrong === "from" ? from : to) ?? "", expected });
      continue;
    }
    for (const at of [own, is ?? own]) {
      for (const [key, pair] of made) if (pair.some((one) => rowKeyOf(one) === rowKeyOf(at))) made.delete(key);
      alone.delete(rowKeyOf(at));
    }
    if (was) broken.add(pairKey(own, was));
    if (is) {
      broken.delete(pairKey(own, is));
      made.set(pairKey(own, is), side(own) === "bat" ? [own, is] : [is, own]);
    } else if (!was) alone.add(rowKeyOf(own));
    const rows = [own, was, is].flatMap((at) => (at ? [{ at, athlete: fates.athleteOf(at) }] : []));
    applied.push({
      at: correction.at,
      by: correction.by,
      on: correction.on,
      reason: correction.reason,
      action: "set",
      field: PAIR_FIELD,
      from: from ?? null,
      to: to ?? null,
      rows: rows.map(({ at, athlete }) => ({ ...fates.placeOf(at), athlete, now: athlete })),
      overruledBy: null,
    });
  }
  return { made: [...made.values()], broken, alone, applied, problems };
}

/** Two rows that may be one swing at all: one of the bat, one of the ball, of one day, and not of two people. */
function partners(fates: RowFates, one: RowAt, other: RowAt, side: (at: RowAt) => "bat" | "ball" | null): boolean {
  const [sides, days] = [[side(one), side(other)], [one, other].map((at) => fates.files[at.table]?.table.day[at.row])];
  const whose = [fates.athleteOf(one), fates.athleteOf(other)].filter((id) => id !== null);
  return sides.includes("bat") && sides.includes("ball") && days[0] === days[1] && new Set(whose).size <= 1;
}
