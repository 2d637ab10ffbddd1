import { COMMANDS } from "./arguments.ts";

/** Where a command speaks. */
export interface Terminal {
  /** What was asked for: one line on standard output. */
  print(line: string): void;
  /** What goes on meanwhile, and what went wrong: one line on standard error. */
  tell(line: string): void;
  /** Where progress is shown. */
  readonly display: NodeJS.WriteStream;
  /** The folder that relative paths start from, absolute. */
  readonly here: string;
  /** The folder that is the season when none is named, absolute. */
  readonly home: string;
  /** Whether somebody sits there who can be asked. */
  readonly interactive: boolean;
}

/**
 * The terminal this process was started from. An npm script runs in the project's folder, which is the season when none is
 * named; a path given by hand starts where the person was.
 */
export function thisTerminal(): Terminal {
  const home = process.cwd();
  const { INIT_CWD: asked, npm_lifecycle_event: script } = process.env;
  const byScript = asked !== undefined && (COMMANDS as readonly string[]).includes(script ?? "");
  return {
    print: (line) => void process.stdout.write(`${line}\n`),
    tell: (line) => void process.stderr.write(`${line}\n`),
    display: process.stderr,
    here: byScript ? asked : home,
    home,
    interactive: process.stdin.isTTY === true && process.stdout.isTTY === true,
  };
}
