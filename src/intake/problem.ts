import type { Place, Problem } from "../schema/season.ts";

type Args = Problem["args"];

/** A place that means the whole file. */
export const wholeFile = (file: string): Place => ({ file, line: null, column: null });

/** Leaves out an absent suggestion, so that problems stay plain JSON. */
export function withSuggestion(args: Args, suggestion: string | null): Args {
  return suggestion === null ? args : { ...args, suggestion };
}

/** Input that cannot be used. `athlete` names whom it keeps from being published. */
export function fault(code: string, at: Place, args: Args = {}, athlete: string | null = null): Problem {
  return { code, level: "error", at, args, athlete };
}

/** A row that was set aside. */
export const rowFault = (code: string, at: Place, args: Args = {}): Problem => ({
  code,
  level: "row",
  at,
  args,
  athlete: null,
});

/** Something that works, and costs something. */
export const remark = (code: string, at: Place, args: Args = {}): Problem => ({
  code,
  level: "note",
  at,
  args,
  athlete: null,
});
