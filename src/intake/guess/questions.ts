import type { Candidate } from "./candidate.ts";
import type { ColumnProposal, Option, Question } from "./proposal.ts";
import { DATE_TIME, type Surroundings } from "./surroundings.ts";

/** Candidates this close to each other are equally good. */
const CLOSE = 0.05;

/** Everything that is still open, in the order of the columns; what is missing comes last. */
export function questionsOf(
  columns: readonly ColumnProposal[],
  fixed: Readonly<Record<string, string>>,
  openDecimal: string | null,
  { measured }: Surroundings,
): Question[] {
  const held = new Map(columns.flatMap(({ field, chosen }) => (field && chosen ? [[field, chosen] as const] : [])));
  const asked = columns.flatMap((column) =>
    column.chosen ? ofChosen(column, column.chosen, held) : ofLost(column, held),
  );
  const has = (field: string) => held.has(field) || fixed[field] !== undefined;
  const missing: Question[] = [];
  if (!has("athlete_id")) missing.push({ kind: "missing", field: "athlete_id" });
  if (!has("date") && !has(DATE_TIME)) missing.push({ kind: "missing", field: "date" });
  if (![...held.keys()].some((field) => measured.has(field))) missing.push({ kind: "missing", field: "measured" });
  const decimal: Question[] = openDecimal === null ? [] : [{ kind: "decimal", example: openDecimal }];
  return [...decimal, ...asked, ...missing];
}

const optionOf = ({ field, unit }: Candidate): Option => ({ field, unit });

function ofChosen(
  { name, others }: ColumnProposal,
  chosen: Candidate,
  held: ReadonlyMap<string, Candidate>,
): Question[] {
  const free = others.filter((other) => held.get(other.field)?.certainty !== "sure");
  const { field, askUnits, askWords, forms, certainty, reasons } = chosen;
  const told = reasons.some(({ code }) => code === "told");
  const which = reasons.some(
    ({ code }) => code === "header-kind" || code === "perhaps-several" || code === "values-only",
  );
  const open = askUnits.length > 0 || askWords !== null || forms.length !== 1;
  // Which field it is comes first: the answer settles the rest, or asks anew.
  if (certainty === "unsure" && !told && (which || !open))
    return [{ kind: "column", column: name, options: [optionOf(chosen), ...free.map(optionOf)] }];
  const questions: Question[] = [];
  if (askUnits.length > 0) questions.push({ kind: "unit", column: name, field, units: askUnits });
  const example = String(reasons.find(({ args }) => args.example !== undefined)?.args.example ?? "");
  const known = forms.filter((form) => form !== null);
  if (forms.length > 1) questions.push({ kind: "date-order", column: name, forms: known, example });
  if (forms.length === 0) questions.push({ kind: "date-form", column: name, field, example });
  if (askWords) questions.push({ kind: "words", column: name, field, ...askWords });
  return questions;
}

/** A column whose field went to another one: asked only when both are equally good. */
function ofLost({ name, others }: ColumnProposal, held: ReadonlyMap<string, Candidate>): Question[] {
  const [lost] = others;
  const winner = lost && held.get(lost.field);
  if (!lost || !winner || winner.reasons.some(({ code }) => code === "told")) return [];
  if (winner.points - lost.points > CLOSE || lost.certainty === "unsure") return [];
  return [{ kind: "column", column: name, options: others.map(optionOf) }];
}
