import { posix } from "node:path";
import type { z } from "zod";
import { Assessment, Closing, Note, Plan } from "../schema/pages.ts";
import { Profile } from "../schema/profile.ts";
import type { Problem } from "../schema/season.ts";
import { Id } from "../schema/text.ts";
import { near } from "./near.ts";
import { type ReadPage, readPage } from "./page.ts";
import { fault, remark, wholeFile, withSuggestion } from "./problem.ts";
import type { SeasonFiles } from "./season-files.ts";

/** Everything below `content/athletes/<id>/`, read and held against the schemas, not yet against the rest of the season. */
export interface AthleteFolder {
  readonly id: string;
  readonly profile: ReadPage<Profile> | null;
  readonly assessment: ReadPage<z.infer<typeof Assessment>> | null;
  readonly plan: ReadPage<z.infer<typeof Plan>> | null;
  readonly closings: readonly { readonly language: string | null; readonly read: ReadPage<z.infer<typeof Closing>> }[];
  readonly notes: readonly ReadPage<z.infer<typeof Note>>[];
  /** Pictures beside the notes: name from the notes' folder -> path from the season folder. */
  readonly images: Readonly<Record<string, string>>;
  readonly problems: readonly Problem[];
}

const FOLDER = "content/athletes/";
const PAGES = ["profile.md", "assessment.md", "plan.md", "closing.md"];
const PICTURE = /\.(png|jpe?g|gif|webp)$/i;

/** Athletes' files by the name of their folder, in order of name. */
export function athleteFolders(files: SeasonFiles): Map<string, string[]> {
  const folders = new Map<string, string[]>();
  for (const file of files.files) {
    const [, , folder, ...rest] = file.split("/");
    if (!file.startsWith(FOLDER) || folder === undefined || rest.length === 0) continue;
    folders.set(folder, [...(folders.get(folder) ?? []), file]);
  }
  return folders;
}

/** Athlete in whose folder a path lies, if it does. */
export const ownerOf = (path: string): string | null =>
  path.startsWith(FOLDER) ? (path.slice(FOLDER.length).split("/")[0] ?? null) : null;

/** Reads one athlete's folder. Problems of its pages stand in the pages. */
export async function readAthleteFolder(
  id: string,
  paths: readonly string[],
  files: SeasonFiles,
): Promise<AthleteFolder> {
  const problems: Problem[] = [...folderName(id)];
  const page = async <T>(file: string, schema: z.ZodType<T>, frontMatter: "required" | "optional") => {
    const bytes = await files.read(file, id);
    if (bytes instanceof Uint8Array) return readPage(file, bytes, schema, { athlete: id, frontMatter });
    problems.push(bytes);
    return null;
  };
  const base = `${FOLDER}${id}/`;
  const own = async <T>(name: string, schema: z.ZodType<T>, frontMatter: "required" | "optional") =>
    paths.includes(base + name) ? page(base + name, schema, frontMatter) : null;
  const profile = await own("profile.md", Profile, "required");
  const assessment = await own("assessment.md", Assessment, "required");
  const plan = await own("plan.md", Plan, "optional");
  const closings: AthleteFolder["closings"][number][] = [];
  const notes: ReadPage<z.infer<typeof Note>>[] = [];
  const images: Record<string, string> = {};
  for (const file of paths) {
    const name = file.slice(base.length);
    const closing = /^closing(?:\.([a-z]{2}))?\.md$/.exec(name);
    if (closing) {
      const read = await page(file, Closing, "optional");
      if (read) closings.push({ language: closing[1] ?? null, read });
    } else if (/^notes\/[^/]+\.md$/.test(name)) {
      const read = await page(file, Note, "required");
      if (read) notes.push(read);
    } else if (name.startsWith("notes/") && PICTURE.test(name)) images[posix.relative("notes", name)] = file;
    else if (!PAGES.includes(name)) problems.push(unknownFile(file, name));
  }
  if (!paths.includes(`${base}profile.md`))
    problems.push(fault("missing-file", wholeFile(`${base}profile.md`), { file: `${base}profile.md` }, id));
  return { id, profile, assessment, plan, closings, notes, images, problems };
}

const unknownFile = (file: string, name: string): Problem =>
  remark("unknown-file", wholeFile(file), withSuggestion({}, near(name, PAGES)));

function folderName(id: string): Problem[] {
  if (Id.safeParse(id).success) return [];
  const suggestion = id
    .normalize("NFKD")
    .toLowerCase()
    .replaceAll(/[^a-z0-9]+/g, "-")
    .replaceAll(/^-+|-+$/g, "");
  const args = withSuggestion({ folder: id }, suggestion === "" ? null : suggestion);
  return [fault("bad-folder-name", wholeFile(`${FOLDER}${id}`), args, id)];
}

/** Every problem of the folder and its pages. */
export function problemsOf(folder: AthleteFolder): Problem[] {
  const pages = [
    folder.profile,
    folder.assessment,
    folder.plan,
    ...folder.closings.map((c) => c.read),
    ...folder.notes,
  ];
  return [...folder.problems, ...pages.flatMap((page) => page?.problems ?? [])];
}
