import type { z } from "zod";

type Schema = z.core.$ZodType;

/** The schemas that may stand at `path` inside `schema`; several where a union is on the way. */
function schemasAt(schema: Schema, path: readonly PropertyKey[]): Schema[] {
  const def = (schema as z.core.$ZodTypes)._zod.def;
  if (def.type === "optional") return schemasAt(def.innerType, path);
  if (def.type === "pipe") return schemasAt(def.out, path);
  if (def.type === "union") return def.options.flatMap((option) => schemasAt(option, path));
  const [head, ...rest] = path;
  if (head === undefined) return [schema];
  if (def.type === "object") {
    const inner = def.shape[String(head)];
    return inner === undefined ? [] : schemasAt(inner, rest);
  }
  if (def.type === "array") return schemasAt(def.element, rest);
  if (def.type === "record") return schemasAt(def.valueType, rest);
  return [];
}

/** Keys that a group of keys at `path` may have by its schema, without repeats. */
export function keysAt(schema: Schema, path: readonly PropertyKey[]): string[] {
  const keys = schemasAt(schema, path).flatMap((found) => {
    const def = (found as z.core.$ZodTypes)._zod.def;
    return def.type === "object" ? Object.keys(def.shape) : [];
  });
  return [...new Set(keys)];
}
