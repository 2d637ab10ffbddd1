import { basename } from "node:path/posix";
import type { z } from "zod";
import type { Problem } from "../schema/season.ts";
import { fault, withSuggestion } from "./problem.ts";
import { dotted, findings } from "./schema-issues.ts";
import type { YamlText } from "./yaml-text.ts";

/**
 * Holds data that a person wrote against its schema.
 *
 * @param athlete whom a fault in this file keeps from being published
 * @returns the typed value, or null together with every problem of the file
 */
export function checked<T>(
  file: string,
  schema: z.ZodType<T>,
  yaml: YamlText,
  athlete: string | null,
): { readonly value: T | null; readonly problems: Problem[] } {
  const result = schema.safeParse(yaml.data ?? {});
  if (result.success) return { value: result.data, problems: [] };
  const problems = findings(schema, yaml.data ?? {}, result.error.issues).map((found) => {
    const key = dotted(found.path);
    const at = yaml.at(found.code === "missing-key" ? found.path.slice(0, -1) : found.path, found.what);
    if (found.code === "missing-key") return fault("missing-key", at, { key, in: basename(file) }, athlete);
    const args =
      found.code === "unknown-key"
        ? { key, in: basename(file) }
        : { key, found: found.found, expected: found.expected };
    return fault(found.code, at, withSuggestion(args, found.suggestion), athlete);
  });
  return { value: null, problems };
}
