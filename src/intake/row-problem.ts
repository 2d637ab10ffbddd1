import type { SetAsideReason } from "../schema/reasons.ts";
import type { Place, Problem } from "../schema/season.ts";
import { type CellContext, MOST } from "./cell-reader.ts";
import { allowedWords } from "./mapping-faults.ts";
import { near } from "./near.ts";
import { rowFault, withSuggestion } from "./problem.ts";
import type { SwingFields } from "./swing-fields.ts";
import type { PlannedColumn } from "./swing-plan.ts";

/** What the trainer should know about one cell that cannot stand. */
export function cellProblem(
  reason: SetAsideReason,
  at: Place,
  planned: PlannedColumn,
  value: string,
  fields: SwingFields,
  context: CellContext,
): Problem {
  const { column, header: field } = planned;
  const args = { field, value };
  switch (reason) {
    case "unreadable-number":
      return rowFault(reason, at, withSuggestion(args, numberMeant(value)));
    case "out-of-range":
      return rowFault(reason, at, { ...args, ...rangeOf(planned) });
    case "unknown-id": {
      const allowed = allowedWords(column.is.kind, column.field, fields, context);
      return rowFault(reason, at, withSuggestion({ ...args, ...placeOfWords(planned, allowed) }, near(value, allowed)));
    }
    case "unknown-athlete":
    case "ambiguous-name": {
      const whom = context.names.find(value);
      if (whom.kind === "ambiguous") return rowFault(reason, at, { ...args, athletes: whom.ids.join(", ") });
      return rowFault(reason, at, withSuggestion(args, whom.kind === "unknown" ? whom.suggestion : null));
    }
    default:
      return rowFault(reason, at, args);
  }
}

/** Where a word could be described, or which words there are and no others. */
function placeOfWords({ column: { is }, mapped }: PlannedColumn, allowed: readonly string[]): Problem["args"] {
  const list = is.kind === "implement" || is.kind === "ball" ? `${is.kind}s` : null;
  const open = is.kind === "words" && is.open === true;
  return {
    ...(list !== null && { list }),
    ...(open && { list: "environments" }),
    ...(list === null && allowed.length > 0 && { allowed: oneOf(allowed) }),
    ...(mapped && { mapped: 1 }),
  };
}

const oneOf = (words: readonly string[]): string =>
  words.length < 2 ? words.join("") : `${words.slice(0, -1).join(", ")} or ${words.at(-1)}`;

/** `61,5` and `61.5 mph` are plain enough to say what to write. */
function numberMeant(text: string): string | null {
  const parts = /^([-+]?\d+)(?:[.,](\d+))?\s*[a-z/°]*$/i.exec(text.trim());
  if (!parts) return null;
  return parts[2] === undefined ? (parts[1] ?? null) : `${parts[1]}.${parts[2]}`;
}

function rangeOf({ column }: PlannedColumn): { lo: number; hi: number; unit: string } {
  if (column.is.kind === "number")
    return { lo: column.is.plausible[0], hi: column.is.plausible[1], unit: column.is.unit };
  return column.is.kind === "count" ? { lo: 0, hi: MOST, unit: "" } : { lo: 0, hi: 360, unit: "deg" };
}
