import { isCancel, type Option, select, text } from "@clack/prompts";
import { EXIT, Stopped } from "../../publish/stopped.ts";

/** One thing that is asked at a terminal when no flag gave it. */
export interface Asked {
  readonly key: string;
  readonly message: string;
  /** Nothing may be left out that is needed. */
  readonly needed?: true;
  readonly placeholder?: string;
  readonly choices?: readonly string[];
}

/** The person went away: nothing is written. */
export function orStop<T>(answer: T): Exclude<T, symbol> {
  if (isCancel(answer))
    throw new Stopped(EXIT.usage, "stopped before anything was written", "start again when you like");
  return answer as Exclude<T, symbol>;
}

const LEAVE = "";

/** Asks for everything that was not given. Enter leaves out what is not needed. */
export async function askFor(
  asked: readonly Asked[],
  given: Record<string, string | undefined>,
): Promise<Record<string, string | undefined>> {
  const answers = { ...given };
  for (const { key, message, needed, placeholder, choices } of asked) {
    if (answers[key] !== undefined) continue;
    if (choices) {
      const options: Option<string>[] = [
        ...choices.map((value) => ({ value, label: value })),
        { value: LEAVE, label: "leave it open" },
      ];
      answers[key] = orStop(await select({ message, options }));
      continue;
    }
    const validate = (value: string | undefined) => (needed && !value?.trim() ? "This one is needed." : undefined);
    answers[key] = orStop(
      await text({
        message: needed ? message : `${message} (Enter leaves it open)`,
        validate,
        defaultValue: "",
        ...(placeholder ? { placeholder } : {}),
      }),
    );
  }
  return answers;
}
