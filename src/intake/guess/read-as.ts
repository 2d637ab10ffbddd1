import type { Column } from "../../schema/columns.ts";
import type { Candidate, Reason } from "./candidate.ts";
import type { ColumnValues } from "./column-values.ts";
import { DATE_TIME, type Surroundings } from "./surroundings.ts";
import { chooseUnit } from "./unit-choice.ts";
import { senseOf } from "./word-sense.ts";

/** How the values of a column look when they are read as one field. */
export interface ReadAs extends Pick<Candidate, "field" | "unit" | "askUnits" | "forms" | "words" | "askWords"> {
  /** 0 to 1. */
  readonly fit: number;
  readonly reasons: readonly Reason[];
}

const PLAIN = { unit: null, askUnits: [], forms: [null], words: null, askWords: null, reasons: [] } as const;
const reason = (code: Reason["code"], args: Reason["args"] = {}): Reason => ({ code, args });

/**
 * Reads a column as `column`. A day or a time is read as what the values are, be it day, time or both.
 *
 * @param written unit of the header or of a row of units
 * @returns null when the values cannot be that
 */
export function readAs(
  column: Column,
  written: string | null,
  values: ColumnValues,
  surroundings: Surroundings,
): ReadAs | null {
  const { is, field } = column;
  if (is.kind === "number") return asNumber({ field, ...is }, written, values);
  if (written !== null) return null;
  if (values.filled === 0) return { ...PLAIN, field, fit: 0.6, reasons: [reason("empty")] };
  switch (is.kind) {
    case "date":
    case "time":
      return asMoment(field, values);
    case "athlete":
      return asAthlete(field, values, surroundings);
    case "count":
      return values.whole && (values.numbers[0] ?? 0) >= 0 ? { ...PLAIN, field, fit: 1 } : null;
    case "words":
    case "implement":
    case "ball":
      return asWords(column, values, surroundings);
    case "axis":
      return asAxis(field, values);
    default:
      return { ...PLAIN, field, fit: values.numbers.length > 0 && !values.whole ? 0.3 : 0.8 };
  }
}

function asNumber(
  field: { field: string; unit: string; plausible: readonly [number, number] },
  written: string | null,
  values: ColumnValues,
): ReadAs | null {
  if (values.filled > 0 && values.numbers.length === 0) return null;
  const choice = chooseUnit(field, written, values.numbers);
  if (choice === null) return null;
  const { unit, why, ask, fit } = choice;
  const code = {
    written: "unit-written",
    "only-unit": "unit-only",
    "numbers-fit": "unit-fits",
    doubt: "unit-doubt",
    "not-written": "unit-open",
  } as const;
  const empty = values.filled === 0 ? [reason("empty")] : [];
  const askUnits = ask.map((one) => ({ unit: one.unit, middle: one.middle }));
  const reasons = [...empty, reason(code[why], { unit, field: field.field })];
  return { ...PLAIN, field: field.field, unit, askUnits, reasons, fit: values.filled === 0 ? 0.6 : fit };
}

function asMoment(field: string, { moment, distinct }: ColumnValues): ReadAs | null {
  if (moment === null) {
    if (field === "time") return null;
    const args = { example: distinct[0] ?? "" };
    return { ...PLAIN, field, fit: 0.4, forms: [], reasons: [reason("form-open", args)] };
  }
  const { is, forms, proof } = moment;
  const [form = null] = forms;
  const code =
    forms.length > 1 ? "order-open" : form === null ? "moment-iso" : proof === null ? "moment-form" : "moment-proved";
  const args = { example: distinct[0] ?? "", form: form ?? "", proof: proof ?? "" };
  return { ...PLAIN, field: is === "date_time" ? DATE_TIME : is, fit: 1, forms, reasons: [reason(code, args)] };
}

function asAthlete(field: string, values: ColumnValues, { whom }: Surroundings): ReadAs | null {
  if (values.moment !== null || (values.numbers.length > 0 && !values.whole)) return null;
  const known = values.distinct.filter((text) => whom(text) === "one").length;
  const all = values.distinct.length;
  const share = known / all;
  const fit = share > 0 ? 0.9 + share / 10 : values.numbers.length > 0 ? 0.3 : 0.7;
  return { ...PLAIN, field, fit, reasons: [reason(known > 0 ? "names-known" : "names-unknown", { known, all })] };
}

/** More unknown words than this, and the column is no list of ours. */
const MOST_UNKNOWN = 12;

function asWords(column: Column, values: ColumnValues, surroundings: Surroundings): ReadAs | null {
  const { field } = column;
  const allowed = surroundings.allowed(column);
  if (values.moment !== null || (values.numbers.length > 0 && !values.whole)) return null;
  if (allowed === null) return { ...PLAIN, field, fit: 0.8 };
  const senses = values.distinct.map((text) => [text, senseOf(field, text, allowed)] as const);
  const unknown = senses.filter(([, sense]) => sense === null).map(([text]) => text);
  if (unknown.length > MOST_UNKNOWN) return null;
  const turned = senses.filter(([text, sense]) => sense !== null && sense !== text) as [string, string][];
  const fit = Math.max(0.4, 1 - unknown.length / senses.length);
  const reasons = [
    unknown.length === 0
      ? reason("words-known", { words: senses.length })
      : reason("words-open", { words: unknown.map((text) => `"${text}"`).join(", ") }),
  ];
  return {
    ...PLAIN,
    field,
    fit,
    reasons,
    words: turned.length > 0 ? Object.fromEntries(turned) : null,
    askWords: unknown.length > 0 ? { words: unknown, allowed } : null,
  };
}

function asAxis(field: string, { distinct, numbers }: ColumnValues): ReadAs | null {
  const clock = distinct.every((text) => /^(1[0-2]|0?\d):[0-5]\d$/.test(text));
  const degrees = numbers.length > 0 && (numbers[0] ?? -1) >= 0 && (numbers.at(-1) ?? 400) <= 360;
  return clock || degrees ? { ...PLAIN, field, fit: 1 } : null;
}
