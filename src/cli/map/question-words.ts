import type { Question } from "../../build.ts";
import { fieldWords } from "./reason-words.ts";

/** A question in words, with flags that answer it. */
export interface Spoken {
  readonly question: string;
  /** Each is one possible answer. */
  readonly flags: readonly string[];
}

const round = (value: number): string => value.toFixed(1);
const quoted = (text: string): string => `"${text.replaceAll('"', '\\"')}"`;
const columnFlag = (column: string, field: string, unit: string | null): string =>
  `--column ${quoted(`${column}=${field}${unit === null ? "" : `:${unit}`}`)}`;

/** How a form is read aloud: "day first". */
function orderOf(form: string): string {
  const [first = ""] = /[dMy]/.exec(form) ?? [];
  return { d: "the day comes first", M: "the month comes first", y: "the year comes first" }[first] ?? form;
}

const MISSING = {
  athlete_id: {
    question: "No column says who swung.",
    flags: ['--column "NAME OF THE COLUMN=athlete_id"', "--fixed athlete_id=ID   (when the whole file is one athlete)"],
  },
  date: {
    question: "No column says on which day.",
    flags: ['--column "NAME OF THE COLUMN=date"', "--fixed date=yyyy-mm-dd   (when the whole file is one day)"],
  },
  measured: {
    question: "No column is a measurement.",
    flags: ['--column "NAME OF THE COLUMN=bat_speed:mph"   (or exit_velocity, launch_angle, …)'],
  },
} as const;

/** @param canonical canonical unit of a field */
export function spoken(question: Question, canonical: (field: string) => string): Spoken {
  switch (question.kind) {
    case "column": {
      const names = question.options.map(({ field }) => fieldWords(field)).join(", or ");
      return {
        question: `What is the column "${question.column}"? It may be: ${names}.`,
        flags: [
          ...question.options.map(({ field, unit }) => columnFlag(question.column, field, unit)),
          `--ignore ${quoted(question.column)}`,
        ],
      };
    }
    case "unit": {
      const own = canonical(question.field);
      return {
        question: `In which unit is "${question.column}" (${fieldWords(question.field)})?`,
        flags: question.units.map(({ unit, middle }) => {
          const flag = columnFlag(question.column, question.field, unit);
          return `${flag}   (then the middle one is ${round(middle)} ${own})`;
        }),
      };
    }
    case "date-order":
      return {
        question: `How is "${question.example}" in "${question.column}" to be read? Nothing in the file proves it.`,
        flags: question.forms.map((form) => `--date-form ${quoted(form)}   (${orderOf(form)})`),
      };
    case "date-form":
      return {
        question: `How is "${question.example}" in "${question.column}" written?`,
        flags: ['--date-form "dd/MM/yyyy"   (d day, M month, y year, H or h hour, m minute, s second, a AM or PM)'],
      };
    case "words": {
      const allowed = question.allowed.map(({ id }) => id);
      const some = allowed.length > 12 ? `${allowed.slice(0, 12).join(", ")} …` : allowed.join(", ");
      return {
        question: `What do these words in "${question.column}" mean (${fieldWords(question.field)}: ${some})?`,
        flags: [
          ...question.words.map(
            (word) => `--words ${quoted(`${question.column}:${word}=…`)}   (… one of those; nothing for a blank)`,
          ),
          `--ignore ${quoted(question.column)}`,
        ],
      };
    }
    case "missing":
      return MISSING[question.field];
    case "decimal":
      return {
        question: `Is "${question.example}" a number with decimals, or a large one?`,
        flags: [
          '--decimal ","   (with decimals)',
          '--decimal "."   (a large one; write it without the mark to be read)',
        ],
      };
  }
}

/** All open questions, numbered, each with its flags below it. */
export function questionLines(questions: readonly Question[], canonical: (field: string) => string): string[] {
  return questions.flatMap((one, i) => {
    const { question, flags } = spoken(one, canonical);
    return [`${i + 1}. ${question}`, ...flags.map((flag) => `     ${flag}`)];
  });
}
