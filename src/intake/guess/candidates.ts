import type { Column } from "../../schema/columns.ts";
import type { Candidate, Certainty, Reason } from "./candidate.ts";
import { type ColumnValues, countsAnew } from "./column-values.ts";
import { headerName } from "./header-name.ts";
import { type ReadAs, readAs } from "./read-as.ts";
import { columnOf, type Surroundings } from "./surroundings.ts";
import { KINDS, NEEDS_UNIT, NOT_ONE_SWING, PERHAPS_MORE, sameWord, VOCABULARY } from "./vocabulary.ts";

/** A column of a table, before anybody knows what it holds. */
export interface GuessedColumn {
  readonly name: string;
  /** Unit in the row of units; null when there is none. */
  readonly unitBelow: string | null;
  readonly values: ColumnValues;
}

/** All that one column may be, the best first, and why nothing fits where that is so. */
export interface Candidates {
  readonly candidates: readonly Candidate[];
  /** Said of a column that is left alone. */
  readonly otherwise: readonly Reason[];
}

const reason = (code: Reason["code"], args: Reason["args"] = {}): Reason => ({ code, args });

interface Named {
  readonly column: Column;
  /** 0 to 1: how much of the name is explained by the field. */
  readonly strength: number;
  readonly length: number;
  readonly phrase: string;
}

function strengthOf(words: readonly string[], phrase: readonly string[]): number {
  if (words.join("") === phrase.join("")) return 1;
  if (!phrase.every((word) => words.includes(word))) return 0;
  return words.length === phrase.length ? 1 : phrase.length > 1 ? 0.8 : 0.5;
}

/** Fields that the words of a name may mean; the season's own metrics by their id. */
function named(words: readonly string[], surroundings: Surroundings): Named[] {
  const own = surroundings.columns.map(({ field }) => ({ field, words: field.split("_").map(sameWord) }));
  const best = new Map<string, Named>();
  for (const phrase of [...VOCABULARY, ...own]) {
    const column = columnOf(phrase.field, surroundings);
    const strength = strengthOf(words, phrase.words);
    const before = best.get(phrase.field);
    if (!column || strength === 0 || contradicts(words, phrase.words, column)) continue;
    if (before && (before.strength > strength || before.length >= phrase.words.length)) continue;
    best.set(phrase.field, { column, strength, length: phrase.words.length, phrase: phrase.words.join(" ") });
  }
  return [...best.values()];
}

/** An angle is not a speed: a name that says which kind it is cannot be of another kind. */
function contradicts(words: readonly string[], phrase: readonly string[], { is }: Column): boolean {
  return words.some((word) => {
    const kind = Object.hasOwn(KINDS, word) ? KINDS[word] : undefined;
    return kind !== undefined && !phrase.includes(word) && (is.kind !== "number" || is.unit !== kind.unit);
  });
}

function candidateOf(read: ReadAs, strength: number, certainty: Certainty, before: readonly Reason[]): Candidate {
  const open = read.askUnits.length > 0 || read.askWords !== null || read.forms.length !== 1;
  const empty = read.reasons.some(({ code }) => code === "empty");
  const weak =
    strength < 2 &&
    (read.fit < 0.95 || read.reasons.some(({ code }) => code === "unit-fits" || code === "names-unknown"));
  const capped = open ? "unsure" : certainty === "sure" && (weak || empty) ? "likely" : certainty;
  const { fit, reasons, ...how } = read;
  return { ...how, points: strength * fit, certainty: capped, reasons: [...before, ...reasons] };
}

/** What one column may be. */
export function candidatesFor({ name, unitBelow, values }: GuessedColumn, surroundings: Surroundings): Candidates {
  const exact = surroundings.byHeader.get(name);
  if (exact) {
    const read = readAs(exact.column, exact.unit, values, surroundings);
    const sure = read
      ? candidateOf(read, 2, "sure", [reason("own-column")])
      : impossible(exact.column, exact.unit, values);
    return { candidates: [sure], otherwise: [] };
  }
  const header = headerName(name);
  const words = header.words.map(sameWord);
  const unit = header.unit ?? unitBelow;
  const not = words.find((word) => NOT_ONE_SWING.has(word));
  if (not !== undefined) return { candidates: [], otherwise: [reason("not-one-swing", { word: not })] };
  const byName = fromName(words, unit, values, surroundings);
  const candidates = byName.length > 0 ? byName : fromKind(header.words, unit, values, surroundings);
  if (candidates.length > 0) return { candidates, otherwise: [] };
  const wanted = named(words, surroundings)[0];
  if (wanted) return { candidates: [], otherwise: [reason("cannot-be", { field: wanted.column.field })] };
  return { candidates: fromValues(values, unit, surroundings), otherwise: [noWords(values)] };
}

/** A column under one of our own names keeps its name, whatever stands in it. */
function impossible(column: Column, unit: string | null, values: ColumnValues): Candidate {
  const numbers = values.numbers.length > 0;
  return {
    field: column.field,
    points: 1,
    certainty: numbers ? "likely" : "sure",
    reasons: [reason("own-column"), reason("cannot-be", { field: column.field })],
    unit,
    askUnits: [],
    forms: [null],
    words: null,
    askWords: null,
  };
}

function fromName(
  words: readonly string[],
  unit: string | null,
  values: ColumnValues,
  surroundings: Surroundings,
): Candidate[] {
  const several = words.find((word) => PERHAPS_MORE.has(word));
  const found = named(words, surroundings).flatMap(({ column, strength, length, phrase }) => {
    const read = readAs(column, unit, values, surroundings);
    if (read === null) return [];
    const alone = length === 1 && NEEDS_UNIT.has(phrase) && column.is.kind === "number";
    const certainty: Certainty =
      several !== undefined || (alone && unit === null) ? "unsure" : alone || strength < 1 ? "likely" : "sure";
    const before = [reason("header-words", { words: phrase })];
    if (several !== undefined) before.push(reason("perhaps-several", { word: several }));
    // A longer phrase says more: "swing time" is no time of day.
    return [candidateOf(read, strength + length / 100, certainty, before)];
  });
  return ranked(found);
}

/** "Speed" and "angle" tell the kind, and leave open which one. */
function fromKind(
  words: readonly string[],
  unit: string | null,
  values: ColumnValues,
  surroundings: Surroundings,
): Candidate[] {
  const byWord = words.flatMap((word) => {
    const kind = sameWord(word);
    return Object.hasOwn(KINDS, kind) ? [{ word, ...KINDS[kind] }] : [];
  });
  const [kind] = byWord;
  const fields = kind?.fields ?? fieldsIn(unit, words);
  const code = kind ? reason("header-kind", { word: kind.word ?? "" }) : reason("header-kind", { word: unit ?? "" });
  return unsureOf(fields, unit, values, surroundings, 0.4, [code]);
}

/** What a unit alone may measure. */
function fieldsIn(unit: string | null, words: readonly string[]): readonly string[] {
  if (unit === null) return [];
  if (["s", "ms"].includes(unit)) return words.map(sameWord).includes("time") ? ["swing_time"] : [];
  if (["mph", "km/h", "m/s", "fps"].includes(unit)) return KINDS.speed?.fields ?? [];
  if (unit === "deg") return KINDS.angle?.fields ?? [];
  if (unit === "rpm") return KINDS.spin?.fields ?? [];
  return [];
}

function unsureOf(
  fields: readonly string[],
  unit: string | null,
  values: ColumnValues,
  surroundings: Surroundings,
  strength: number,
  before: readonly Reason[],
): Candidate[] {
  const found = fields.flatMap((field) => {
    const column = columnOf(field, surroundings);
    const read = column ? readAs(column, unit, values, surroundings) : null;
    return read ? [candidateOf(read, strength, "unsure", before)] : [];
  });
  return ranked(found);
}

const only = reason("values-only");

/** What the values say where the name says nothing. */
function fromValues(values: ColumnValues, unit: string | null, surroundings: Surroundings): Candidate[] {
  if (values.filled === 0 || unit !== null) return [];
  const of = (field: string, certainty: Certainty, strength: number, before: readonly Reason[] = [only]) => {
    const column = columnOf(field, surroundings);
    const read = column ? readAs(column, null, values, surroundings) : null;
    return read ? [candidateOf(read, strength, certainty, before)] : [];
  };
  if (values.moment !== null) return of(values.moment.is === "time" ? "time" : "date", "likely", 0.4);
  const known = values.distinct.filter((text) => surroundings.whom(text) === "one").length;
  if (known * 2 > values.distinct.length) return of("athlete_id", "likely", 0.4);
  if (countsAnew(values)) return of("rep", "likely", 0.3, [reason("counts-anew", { top: values.numbers.at(-1) ?? 0 })]);
  if (values.numbers.length > 0) {
    const below = (values.numbers[0] ?? 0) < 0 && !values.whole;
    return below ? unsureOf(KINDS.angle?.fields ?? [], null, values, surroundings, 0.2, [only]) : [];
  }
  const lists = ["result", "environment", "swing_type", "side", "pitcher_side"].flatMap((field) => {
    const words = of(field, field.endsWith("side") ? "unsure" : "likely", field === "pitcher_side" ? 0.34 : 0.35);
    return words.filter(({ askWords }) => askWords === null);
  });
  return ranked(lists);
}

function noWords({ numbers, distinct }: ColumnValues): Reason {
  if (numbers.length > 0) return reason("numbers", { lo: numbers[0] ?? 0, hi: numbers.at(-1) ?? 0 });
  return distinct.length === 0 ? reason("empty") : reason("no-words");
}

/** By points; equal ones by name, so that nothing depends on the order in which they were found. */
const ranked = (found: readonly Candidate[]): Candidate[] =>
  [...found].sort((one, other) => other.points - one.points || (one.field < other.field ? -1 : 1));
