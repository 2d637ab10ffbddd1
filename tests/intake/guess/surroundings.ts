import type { Surroundings } from "../../../src/intake/guess/surroundings.ts";
import { swingFields } from "../../../src/intake/swing-fields.ts";
import { BUILT_IN_METRICS } from "../../../src/schema/metric.ts";

const fields = swingFields(BUILT_IN_METRICS);
const ATHLETES = new Set(["ana-l", "ben-k", "ana lindqvist", "benny k"]);

/** A season of two athletes, with no bats and no balls listed. */
export const SURROUNDINGS: Surroundings = {
  columns: fields.columns,
  byHeader: fields.byHeader,
  measured: fields.measured,
  allowed: ({ is }) => (is.kind === "words" ? is.words.map((id) => ({ id, label: null })) : null),
  whom: (text) => (ATHLETES.has(text.toLowerCase()) ? "one" : "unknown"),
};
