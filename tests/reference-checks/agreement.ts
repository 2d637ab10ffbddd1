import * as z from "zod";

const Bound = z.strictObject({ rel: z.number().min(0).optional(), abs: z.number().min(0).optional() });

/**
 * How far a number may be off; `perField` overrides by the name of the field, for everything below it too. Where a case says what it
 * `appliesTo`, the other expected fields are Monte Carlo: they are not compared, but for `acceptAtB10000`, in which a limit is given as the
 * two ends of the range that a seeded run must fall into.
 */
export const Tolerance = z.strictObject({
  ...Bound.shape,
  perField: z.record(z.string(), Bound).optional(),
  appliesTo: z.array(z.string()).min(1).optional(),
  monteCarlo: z.string().optional(),
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

/** Where a seeded run leaves the ranges that a case accepts: one line for each limit, empty when all lie within. */
export function outsideRanges(got: unknown, accepted: Json, path: string): string[] {
  if (Array.isArray(accepted)) {
    const [low, high] = z.tuple([z.number(), z.number()]).parse(accepted);
    if (typeof got === "number" && got >= low && got <= high) return [];
    return [`${path}: got ${show(got)}, expected ${low} to ${high}`];
  }
  const ranges = z.record(z.string(), z.json()).parse(accepted);
  const fields = new Map<string, unknown>(Object.entries(got ?? {}));
  return Object.entries(ranges).flatMap(([name, range]) => outsideRanges(fields.get(name), range, `${path}.${name}`));
}

function numberDisagreement(got: unknown, expected: number, { abs = 0, rel = 0 }: Tolerance, path: string): string[] {
  const allowed = abs + rel * Math.abs(expected);
  if (typeof got === "number" && Math.abs(got - expected) <= allowed) return [];
  return [`${path}: got ${show(got)}, expected ${expected} within ${allowed}`];
}

function show(value: unknown): string {
  return typeof value === "number" ? String(value) : (JSON.stringify(value) ?? String(value));
}
