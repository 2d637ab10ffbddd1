import type { Problem } from "../schema/season.ts";
import type { AthleteFolder } from "./athlete-folder.ts";
import { near } from "./near.ts";
import { remark } from "./problem.ts";

/** Whom a cell of a swing file names. */
export type Whom =
  | { readonly kind: "one"; readonly id: string }
  | { readonly kind: "unknown"; readonly suggestion: string | null }
  | { readonly kind: "ambiguous"; readonly ids: readonly string[] };

/** Finds the athlete by id, alias or name: exactly, but for Unicode form, width, case and the number of spaces. */
export interface Names {
  find(text: string): Whom;
  /** Aliases and names that fit more than one athlete. */
  readonly problems: readonly Problem[];
}

/** Upper case first, so that ß and SS, or the two small sigmas, meet (the folding of Unicode's CaseFolding in all that names need). */
const folded = (text: string): string =>
  text.normalize("NFKC").trim().replace(/\s+/gu, " ").toUpperCase().toLowerCase().normalize("NFC");

/** Names as the profile's front matter gives them, even when the profile as a whole cannot be used. */
function written(folder: AthleteFolder): { readonly name: string; readonly path: readonly (string | number)[] }[] {
  const raw = folder.profile?.raw;
  if (typeof raw !== "object" || raw === null) return [];
  const { name, aliases } = raw as { name?: unknown; aliases?: unknown };
  const found = typeof name === "string" ? [{ name, path: ["name"] as (string | number)[] }] : [];
  const list: unknown[] = Array.isArray(aliases) ? aliases : [];
  return [
    ...found,
    ...list.flatMap((alias, index) => (typeof alias === "string" ? [{ name: alias, path: ["aliases", index] }] : [])),
  ];
}

/** Index over everybody who has a folder, published or not. */
export function namesOf(folders: readonly AthleteFolder[]): Names {
  const owners = new Map<string, Set<string>>();
  const own = (name: string, id: string): Set<string> => {
    const set = owners.get(folded(name)) ?? new Set<string>();
    owners.set(folded(name), set.add(id));
    return set;
  };
  for (const { id } of folders) own(id, id);
  const problems: Problem[] = [];
  for (const folder of folders) {
    for (const { name, path } of written(folder)) {
      const ids = own(name, folder.id);
      if (ids.size < 2 || !folder.profile) continue;
      problems.push(remark("shared-name", folder.profile.at(path, "value"), { name, athletes: [...ids].join(", ") }));
    }
  }
  const find = (text: string): Whom => {
    const ids = [...(owners.get(folded(text)) ?? [])];
    if (ids.length > 1) return { kind: "ambiguous", ids };
    if (ids[0] !== undefined) return { kind: "one", id: ids[0] };
    const meant = owners.get(near(text, owners.keys()) ?? "");
    return { kind: "unknown", suggestion: meant?.size === 1 ? ([...meant][0] ?? null) : null };
  };
  return { find, problems };
}
