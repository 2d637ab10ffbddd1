import type { Problem } from "../schema/season.ts";
import { near } from "./near.ts";
import { remark, withSuggestion } from "./problem.ts";
import type { SwingTable } from "./swing-table.ts";

/** Names in swing files that the season's own lists would explain, but do not: one note a name, where it stands first. */
export function unlisted(
  tables: readonly SwingTable[],
  files: readonly string[],
  lists: Readonly<Record<string, { readonly list: string; readonly names: ReadonlySet<string> | null }>>,
): Problem[] {
  const problems: Problem[] = [];
  for (const [field, { list, names }] of Object.entries(lists)) {
    if (names === null) continue;
    const told = new Set(names);
    for (const table of tables) {
      const column = table.fieldNumbers.get(field) ?? null;
      for (const [row, name] of (table.words.get(field) ?? []).entries()) {
        if (name === null || table.kept[row] !== 1 || told.has(name)) continue;
        told.add(name);
        const at = { file: files[table.file] ?? "", line: table.lines[row] ?? null, column };
        problems.push(remark("not-in-list", at, withSuggestion({ key: field, found: name, list }, near(name, names))));
      }
    }
  }
  return problems;
}
