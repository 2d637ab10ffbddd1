import type { Column } from "../../schema/columns.ts";
import type { Candidate, Reason } from "./candidate.ts";
import { type Candidates, candidatesFor, type GuessedColumn } from "./candidates.ts";
import { columnValues } from "./column-values.ts";
import { decimalMark } from "./decimal-mark.ts";
import type { ColumnProposal, Proposal } from "./proposal.ts";
import { questionsOf } from "./questions.ts";
import { readAs } from "./read-as.ts";
import { columnOf, DATE_TIME, type Surroundings } from "./surroundings.ts";

/** A table to be read: names as {@link columnNames} gives them, and data rows alone. */
export interface Table {
  readonly names: readonly string[];
  /** Units by column, from a row of units; null where there is none. */
  readonly units: readonly (string | null)[];
  readonly rows: readonly (readonly string[])[];
}

/** What a person has said already. */
export interface Answers {
  /** Column -> field and unit, or null for a column that is not to be read. */
  readonly columns: ReadonlyMap<string, { readonly field: string; readonly unit: string | null } | null>;
  /** Form of days, or of day and time in one cell. */
  readonly dateForm: string | null;
  readonly timeForm: string | null;
  /** Column -> word of the export -> ours. */
  readonly words: ReadonlyMap<string, ReadonlyMap<string, string>>;
  /** Field -> value of every row. */
  readonly fixed: ReadonlyMap<string, string>;
  readonly decimal: "." | "," | null;
}

export const NO_ANSWERS: Answers = {
  columns: new Map(),
  dateForm: null,
  timeForm: null,
  words: new Map(),
  fixed: new Map(),
  decimal: null,
};

/** Fields that cannot stand beside this one. */
const takes = (field: string): readonly string[] => (field === DATE_TIME ? ["date", "time", DATE_TIME] : [field]);

/**
 * Proposes how a table is read: for each column at most one field, for each field at most one column. The order of rows makes no
 * difference. Nothing is decided that values or words do not tell: what is open stands in `questions`.
 */
export function propose(table: Table, answers: Answers, surroundings: Surroundings): Proposal {
  const mark = answers.decimal === null ? decimalMark(table.rows) : { mark: answers.decimal, open: null };
  const columns = table.names.map((name, at): GuessedColumn => {
    const cells = table.rows.map((row) => row[at] ?? "");
    return { name, unitBelow: table.units[at] ?? null, values: columnValues(cells, mark.mark) };
  });
  const all = columns.map((column): Candidates => {
    const told = answers.columns.get(column.name);
    if (told === null) return { candidates: [], otherwise: [{ code: "told", args: {} }] };
    return told === undefined ? candidatesFor(column, surroundings) : asTold(column, told, surroundings);
  });
  const chosen = assign(all, [...answers.fixed.keys()]);
  const proposed = columns.map((column, at) => proposalOf(column, all[at], chosen[at] ?? null, answers));
  const fixed = Object.fromEntries([...answers.fixed].sort(([one], [other]) => (one < other ? -1 : 1)));
  return {
    columns: proposed,
    decimal: mark.mark,
    fixed,
    questions: questionsOf(proposed, fixed, mark.open, surroundings),
  };
}

/** A field that a person named, read as the values allow: the unit may still be open. */
function asTold(
  { name, unitBelow, values }: GuessedColumn,
  told: { readonly field: string; readonly unit: string | null },
  surroundings: Surroundings,
): Candidates {
  const column: Column | undefined = columnOf(told.field === DATE_TIME ? "date" : told.field, surroundings);
  if (!column) return { candidates: [], otherwise: [] };
  const own = candidatesFor({ name, unitBelow, values }, surroundings).candidates.find(
    (candidate) => candidate.field === told.field,
  );
  const written = told.unit ?? own?.unit ?? unitBelow;
  const read = readAs(column, column.is.kind === "number" ? written : null, values, surroundings);
  const bare = { unit: told.unit, askUnits: [], forms: [null], words: null, askWords: null };
  const how = read ?? bare;
  const candidate: Candidate = {
    field: told.field,
    points: 10,
    certainty: "sure",
    reasons: [{ code: "told", args: {} }],
    unit: told.unit ?? how.unit,
    askUnits: told.unit === null ? how.askUnits : [],
    forms: how.forms,
    words: how.words,
    askWords: how.askWords,
  };
  return { candidates: [candidate], otherwise: [] };
}

/** The best pair of column and field first, then the best of what is left. */
function assign(all: readonly Candidates[], fixed: readonly string[]): (Candidate | null)[] {
  const pairs = all.flatMap(({ candidates }, at) => candidates.map((candidate) => ({ at, candidate })));
  pairs.sort((one, other) => other.candidate.points - one.candidate.points || one.at - other.at);
  const chosen: (Candidate | null)[] = all.map(() => null);
  const told = new Set(fixed);
  const held = new Set<string>();
  for (const { at, candidate } of pairs) {
    const wants = takes(candidate.field);
    if (chosen[at] || wants.some((field) => held.has(field))) continue;
    // A fixed value only stands in for blank cells: a column of the same field may stand beside it.
    if (told.has(candidate.field) && candidate.certainty === "unsure") continue;
    chosen[at] = candidate;
    for (const field of wants) held.add(field);
    if (candidate.field === "date" || candidate.field === "time") held.add(DATE_TIME);
  }
  return chosen;
}

function proposalOf(
  { name }: GuessedColumn,
  found: Candidates | undefined,
  chosen: Candidate | null,
  answers: Answers,
): ColumnProposal {
  const candidates = found?.candidates ?? [];
  if (chosen === null) {
    const [lost] = candidates;
    const reasons = lost ? [{ code: "other-column", args: { field: lost.field } } as const] : (found?.otherwise ?? []);
    return { ...LEFT, name, reasons, others: candidates };
  }
  const settled = withAnswers(name, chosen, answers);
  return {
    name,
    field: settled.field,
    unit: settled.unit,
    form: settled.forms[0] ?? null,
    words: settled.words,
    certainty: settled.certainty,
    reasons: settled.reasons,
    chosen: settled,
    others: candidates.filter((candidate) => candidate !== chosen),
  };
}

const LEFT = { field: null, unit: null, form: null, words: null, certainty: "likely", chosen: null } as const;

/** Fills in the form and the words that a person gave. */
function withAnswers(name: string, candidate: Candidate, { dateForm, timeForm, words }: Answers): Candidate {
  const timed = candidate.field === "time" ? timeForm : ["date", DATE_TIME].includes(candidate.field) ? dateForm : null;
  const given = words.get(name);
  const open = candidate.askWords?.words.filter((word) => !given?.has(word)) ?? [];
  const all = given ? { ...candidate.words, ...Object.fromEntries(given) } : candidate.words;
  const askWords = open.length > 0 && candidate.askWords ? { ...candidate.askWords, words: open } : null;
  const forms = timed === null ? candidate.forms : [timed];
  const told = timed !== null || (given !== undefined && candidate.askWords !== null && askWords === null);
  const settled = told && candidate.askUnits.length === 0 && askWords === null && forms.length === 1;
  const said: Reason[] = told ? [{ code: "told", args: {} }] : [];
  return {
    ...candidate,
    forms,
    words: all,
    askWords,
    certainty: settled && !candidate.reasons.some(isDoubt) ? "sure" : candidate.certainty,
    reasons: [...candidate.reasons.filter(({ code }) => !(told && ANSWERED.has(code))), ...said],
  };
}

/** Doubts that an answer about form or words does away with. */
const ANSWERED: ReadonlySet<string> = new Set(["order-open", "form-open", "words-open"]);
const isDoubt = ({ code }: Reason): boolean => code === "header-kind" || code === "perhaps-several";
