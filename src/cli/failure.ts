import { SeasonUnreadable } from "../build.ts";
import { EXIT, type Exit, Stopped } from "../publish/stopped.ts";
import { USAGE } from "./arguments.ts";
import { problemLines } from "./problems.ts";

/** Troubles of the machine, which nobody's file and no fault of ours explains. */
const MACHINE: Readonly<Record<string, string>> = {
  EACCES: "not allowed to touch",
  EPERM: "not allowed to touch",
  EROFS: "the disk cannot be written at",
  ENOSPC: "no space is left for",
  EBUSY: "another program holds",
  EMFILE: "too many files are open at",
};

export interface Failure {
  readonly exit: Exit;
  readonly lines: readonly string[];
}

/**
 * What to say of something that was thrown, and the exit status. A stack trace is for whoever mends the program.
 *
 * @param withStack say where in the program it happened, too
 */
export function failureOf(error: unknown, withStack: boolean): Failure {
  const stack = withStack && error instanceof Error && error.stack ? error.stack.split("\n") : [];
  if (error instanceof Stopped) {
    const usage =
      error.exit === EXIT.usage && error.remedy.includes("usage") ? ["", ...USAGE.trimEnd().split("\n")] : [];
    return { exit: error.exit, lines: [`${error.message}  — ${error.remedy}`, ...usage, ...stack] };
  }
  if (error instanceof SeasonUnreadable) {
    const last = "Nothing was published: put content/facility.md right first.";
    return {
      exit: EXIT.input,
      lines: [...problemLines(error.problems.filter(({ level }) => level === "error")), last, ...stack],
    };
  }
  const { code, path } = error as NodeJS.ErrnoException;
  const machine = typeof code === "string" ? MACHINE[code] : undefined;
  if (machine) {
    return {
      exit: EXIT.fault,
      lines: [`${machine} ${path ?? "a file"}  — nothing was published; set that right and try again`, ...stack],
    };
  }
  const message = error instanceof Error ? error.message : String(error);
  const hint = withStack ? [] : ["Run it again with WINTERBOOK_DEBUG=1 to see where, and report it."];
  return {
    exit: EXIT.fault,
    lines: [
      `This is a fault of Winterbook, not of your files: ${message}`,
      "Nothing was published.",
      ...hint,
      ...stack,
    ],
  };
}
