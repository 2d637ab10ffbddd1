import { select, text } from "@clack/prompts";
import type { Explored, Question } from "../../build.ts";
import { orStop } from "../new/ask.ts";
import type { Growing } from "./answers.ts";
import { spoken } from "./question-words.ts";
import { fieldWords } from "./reason-words.ts";

const NONE = "";

/** Asks one question at the terminal and keeps the answer. */
export async function ask(question: Question, answers: Growing, explored: Explored): Promise<void> {
  const canonical = (field: string) => explored.unitsOf(field)[0] ?? "";
  const { question: message } = spoken(question, canonical);
  switch (question.kind) {
    case "column": {
      const options = [
        ...question.options.map(({ field, unit }) => ({
          value: field,
          label: `${fieldWords(field)}${unit ? `, in ${unit}` : ""}`,
        })),
        { value: NONE, label: "none of these: do not read it" },
      ];
      const field = orStop(await select({ message, options }));
      // The unit stays as it was found, and is asked for next where it was not.
      answers.columns.set(question.column, field === NONE ? null : { field, unit: null });
      return;
    }
    case "unit": {
      const options = question.units.map(({ unit, middle }) => ({
        value: unit,
        label: unit,
        hint: `then the middle one is ${middle.toFixed(1)} ${canonical(question.field)}`,
      }));
      const unit = orStop(await select({ message, options }));
      answers.columns.set(question.column, { field: question.field, unit });
      return;
    }
    case "date-order":
      answers.dateForm = orStop(
        await select({ message, options: question.forms.map((form) => ({ value: form, label: form })) }),
      );
      return;
    case "date-form":
      answers.dateForm = orStop(await text({ message, placeholder: "dd/MM/yyyy", validate: needed }));
      return;
    case "words":
      for (const word of question.words) await askWord(question, word, answers);
      return;
    case "missing":
      return askMissing(question, message, answers, explored);
    case "decimal":
      answers.decimal = orStop(
        await select({
          message,
          options: [
            { value: "," as const, label: "with decimals" },
            { value: "." as const, label: "a large number" },
          ],
        }),
      );
  }
}

const needed = (value: string | undefined): string | undefined => (value?.trim() ? undefined : "This one is needed.");

async function askWord(
  { column, field, allowed }: Question & { kind: "words" },
  word: string,
  answers: Growing,
): Promise<void> {
  const options = [
    ...allowed.map(({ id, label }) => ({ value: id, label: id, ...(label ? { hint: label } : {}) })),
    { value: NONE, label: "nothing: read it as a blank" },
  ];
  const ours = orStop(
    await select({ message: `"${word}" in "${column}" (${fieldWords(field)}) means`, options, maxItems: 12 }),
  );
  answers.words.set(column, (answers.words.get(column) ?? new Map()).set(word, ours));
}

async function askMissing(
  { field }: Question & { kind: "missing" },
  message: string,
  answers: Growing,
  { names, fields }: Explored,
): Promise<void> {
  const fixed = field === "measured" ? [] : [{ value: NONE, label: "no column: it is the same for the whole file" }];
  const options = [...names.map((name) => ({ value: name, label: name })), ...fixed];
  const column = orStop(await select({ message: `${message} Which column is it?`, options, maxItems: 12 }));
  if (column === NONE) {
    answers.fixed.set(
      field,
      orStop(
        await text({ message: field === "date" ? "The day, as yyyy-mm-dd" : "The athlete's id", validate: needed }),
      ),
    );
    return;
  }
  if (field !== "measured") {
    answers.columns.set(column, { field, unit: null });
    return;
  }
  const measures = fields.filter((one) => /speed|velocity|angle|distance$|spin$|swing_time/.test(one));
  const which = orStop(
    await select({
      message: `What does "${column}" measure?`,
      options: measures.map((one) => ({ value: one, label: fieldWords(one) })),
    }),
  );
  answers.columns.set(column, { field: which, unit: null });
}
