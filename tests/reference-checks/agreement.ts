import * as z from "zod";

const Bound = z.strictObject({ rel: z.number().min(0).optional(), abs: z.number().min(0).optional() });

/** How far a number may be off; `perField` overrides by the name of the field, for everything below it too. */
export const Tolerance = z.strictObject({
  ...Bound.shape,
  perField: z.record(z.string(), Bound).optional(),
});
export type Tolerance = z.infer<typeof Tolerance>;

/** Anything JSON can hold. */
export type Json = z.infer<ReturnType<typeof z.json>>;

/**
 * Where a result disagrees with what a case expects.
 *
 * A number agrees if |got - expected| <= abs + rel |expected|; `null` only with `null` (no such value exists); text and
 * true/false only with themselves; lists must be as long; every expected field must be there. A result may have more
 * fields than expected.
 *
 * @returns one line for each disagreement, empty when all agrees
 */
export function disagreements(got: unknown, expected: Json, tolerance: Tolerance, path = "expected"): string[] {
  if (typeof expected === "number") return numberDisagreement(got, expected, tolerance, path);
  if (Array.isArray(expected)) {
    if (!Array.isArray(got)) return [`${path}: got ${show(got)}, expected a list`];
    const length = got.length === expected.length ? [] : [`${path}: ${got.length} items, expected ${expected.length}`];
    return [...length, ...expected.flatMap((item, i) => disagreements(got[i], item, tolerance, `${path}[${i}]`))];
  }
  if (typeof expected === "object" && expected !== null) {
    if (typeof got !== "object" || got === null) return [`${path}: got ${show(got)}, expected an object`];
    const fields = new Map<string, unknown>(Object.entries(got));
    return Object.entries(expected).flatMap(([name, value]) =>
      fields.has(name)
        ? disagreements(fields.get(name), value, { ...tolerance, ...tolerance.perField?.[name] }, `${path}.${name}`)
        : [`${path}.${name}: not returned`],
    );
  }
  return got === expected ? [] : [`${path}: got ${show(got)}, expected ${show(expected)}`];
}

function numberDisagreement(got: unknown, expected: number, { abs = 0, rel = 0 }: Tolerance, path: string): string[] {
  const allowed = abs + rel * Math.abs(expected);
  if (typeof got === "number" && Math.abs(got - expected) <= allowed) return [];
  return [`${path}: got ${show(got)}, expected ${expected} within ${allowed}`];
}

function show(value: unknown): string {
  return typeof value === "number" ? String(value) : (JSON.stringify(value) ?? String(value));
}
