import type { Candidate, Certainty, Reason } from "./candidate.ts";
import type { Allowed } from "./word-sense.ts";

/** What only a person can tell. */
export type Question =
  | { readonly kind: "column"; readonly column: string; readonly options: readonly Option[] }
  | {
      readonly kind: "unit";
      readonly column: string;
      readonly field: string;
      /** With the middle of the numbers in the field's canonical unit. */
      readonly units: Candidate["askUnits"];
    }
  | {
      readonly kind: "date-order";
      readonly column: string;
      readonly forms: readonly string[];
      readonly example: string;
    }
  | { readonly kind: "date-form"; readonly column: string; readonly field: string; readonly example: string }
  | {
      readonly kind: "words";
      readonly column: string;
      readonly field: string;
      readonly words: readonly string[];
      readonly allowed: readonly Allowed[];
    }
  | { readonly kind: "missing"; readonly field: "athlete_id" | "date" | "measured" }
  | { readonly kind: "decimal"; readonly example: string };

export interface Option {
  readonly field: string;
  readonly unit: string | null;
}

/** What one column is taken for; `field` null: it is not read. */
export interface ColumnProposal {
  readonly name: string;
  readonly field: string | null;
  readonly unit: string | null;
  readonly form: string | null;
  readonly words: Readonly<Record<string, string>> | null;
  readonly certainty: Certainty;
  readonly reasons: readonly Reason[];
  /** The choice that was made, and those that were not; for questions. */
  readonly chosen: Candidate | null;
  readonly others: readonly Candidate[];
}

export interface Proposal {
  readonly columns: readonly ColumnProposal[];
  readonly decimal: "." | ",";
  readonly fixed: Readonly<Record<string, string>>;
  /** In the order of the columns, what is missing last. */
  readonly questions: readonly Question[];
}
