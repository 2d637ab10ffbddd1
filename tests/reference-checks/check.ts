import * as z from "zod";

/** Runs our function on the inputs of one case and gives the result in the shape of the file's `expected`. */
export type Check = (inputs: unknown) => Record<string, unknown>;

/** Checks by the `id` of the file that they run. */
export type Checks = ReadonlyMap<string, Check>;

/** A check that refuses inputs of a shape it does not know. */
export function check<Inputs>(shape: z.ZodType<Inputs>, run: (inputs: Inputs) => Record<string, unknown>): Check {
  return (inputs) => run(shape.parse(inputs));
}

/** A list of numbers of a case. */
export const numbers = z.array(z.number());
