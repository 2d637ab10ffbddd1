import { join } from "node:path";
import { parse } from "yaml";
import type { Disk } from "../../schema/effects.ts";
import { foldedName } from "./id-from-name.ts";
import type { NewAthlete } from "./profile-fields.ts";
import { profilePage } from "./profile-page.ts";

/** What became of each athlete, in the order given. */
export interface Made {
  readonly made: readonly NewAthlete[];
  /** Folders that were there and stay as they are; `name` is the name in it when it is another one. */
  readonly there: readonly { readonly id: string; readonly name: string | null }[];
}

/** Names in a profile that somebody wrote, whatever else is wrong with it. */
function namesIn(text: string): string[] {
  const [, yaml = ""] = /^\ufeff?---[ \t]*\r?\n([\s\S]*?)\n---/.exec(text) ?? [];
  try {
    const { name, aliases } = (parse(yaml) ?? {}) as { name?: unknown; aliases?: unknown };
    return [name, ...(Array.isArray(aliases) ? aliases : [])].map((one) => foldedName(String(one)));
  } catch {
    return [];
  }
}

/**
 * Makes `content/athletes/<id>/profile.md` for each athlete whose folder is not there yet. A folder that is there is left alone,
 * whatever is in it.
 *
 * @param content absolute path of the season's content
 */
export async function makeFolders(athletes: readonly NewAthlete[], content: string, disk: Disk): Promise<Made> {
  const made: NewAthlete[] = [];
  const there: { id: string; name: string | null }[] = [];
  for (const athlete of athletes) {
    const folder = join(content, "athletes", athlete.id);
    const file = join(folder, "profile.md");
    if (!(await disk.exists(folder)) && (await disk.create(file, profilePage(athlete.profile)))) {
      made.push(athlete);
      continue;
    }
    const names = await disk.read(file).then(
      (bytes) => namesIn(new TextDecoder("utf-8").decode(bytes)),
      (): string[] => [],
    );
    const other = names.length > 0 && !names.includes(foldedName(athlete.profile.name));
    there.push({ id: athlete.id, name: other ? athlete.profile.name : null });
  }
  return { made, there };
}
