/** Exit statuses of a command. 0 is done, rows set aside included. */
export const EXIT = { done: 0, input: 1, usage: 2, fault: 3 } as const;
export type Exit = (typeof EXIT)[keyof typeof EXIT];

/** A reason to stop that we foresaw: said in plain words with what to do, never with a stack trace. */
export class Stopped extends Error {
  readonly exit: Exit;
  readonly remedy: string;

  constructor(exit: Exit, problem: string, remedy: string) {
    super(problem);
    this.name = "Stopped";
    this.exit = exit;
    this.remedy = remedy;
  }
}
