import { access, mkdir, mkdtemp, readdir, readFile, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import type { BuildEffects, Options, Paths } from "../../src/build.ts";
import { realDisk, thisProcess } from "../../src/cli/effects.ts";
import { sayProblem } from "../../src/cli/messages.ts";

/** A note's picture: one dot, as the smallest PNG there is. */
export const DOT = Buffer.from(
  "iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAYAAAAfFcSJAAAADUlEQVR42mNk+M9QDwADhgGAWjR9awAAAABJRU5ErkJggg==",
  "base64",
);

const FACILITY = `---
name: Lantern Cage
season: { name: Winter, start: 2026-01-05, end: 2026-02-28 }
measures:
  - { metric: bat_speed, condition: { environment: tee } }
---
`;
const consent = (as: string, readers: string) =>
  `consent: [{ by: ${as}, as: ${as}, on: 2026-01-02, readers: [${readers}] }]\n`;
const profile = (name: string, born: number, agreed: string) => `---\nname: ${name}\nborn: ${born}\n${agreed}---\n`;

/** Two dozen days of tosses, rising slowly; every fifth day a row that nobody can read. */
function swings(athlete: string, start: number): string[] {
  return Array.from({ length: 24 }, (_, i) => {
    const day = `2026-${i < 20 ? "01" : "02"}-${String(i < 20 ? i + 8 : i - 19).padStart(2, "0")}`;
    return [0, 1, 2].map((rep) => `${athlete},${day},tee,${(start + i * 0.2 + rep * 0.7).toFixed(1)}`);
  }).flat();
}

/** Files of a season of three: a grown hitter, a child with a guardian's word, and one without. */
export const SMALL: Readonly<Record<string, string | Uint8Array>> = {
  "content/facility.md": FACILITY,
  "content/athletes/ada-lund/profile.md": profile("Ada Lund", 2000, consent("self", "family, club")),
  "content/athletes/ada-lund/notes/2026-01-20.md":
    "---\ndate: 2026-01-20\nauthor: athlete\nkind: words\nreaders: [family]\n---\nThe tee felt easy. ![Stance](stance.png)\n",
  "content/athletes/ada-lund/notes/2026-01-21.md":
    "---\ndate: 2026-01-21\nauthor: athlete\nkind: words\n---\nFor the desk alone. ![Hidden](hidden.png)\n",
  "content/athletes/ada-lund/notes/stance.png": DOT,
  "content/athletes/ada-lund/notes/hidden.png": Buffer.concat([DOT, Buffer.from("hidden")]),
  "content/athletes/ben-ridge/profile.md": profile("Ben Ridge", 2014, consent("guardian", "family")),
  "content/athletes/cleo-vane/profile.md": profile("Cleo Vane", 2014, consent("self", "family, club")),
  "data/swings/january.csv": `${["athlete_id,date,environment,bat_speed_mph", ...swings("ada-lund", 66), ...swings("ben-ridge", 48)].join("\n")}\n`,
  "data/swings/more.csv": `${[
    "athlete_id,date,environment,bat_speed_mph",
    ...swings("cleo-vane", 45),
    "nobody,2026-01-20,tee,60.1",
    "ada-lund,13/02/26,tee,67.0",
    'ada-lund,2026-01-20,tee,"67,3"',
  ].join("\n")}\n`,
};

/** Writes a season into a folder of its own; `changes` replace files, null leaves one out. */
export async function seasonFolder(
  changes: Readonly<Record<string, string | Uint8Array | null>> = {},
): Promise<string> {
  const root = await mkdtemp(join(tmpdir(), "season-"));
  for (const [path, body] of Object.entries({ ...SMALL, ...changes })) {
    if (body === null) continue;
    await mkdir(dirname(join(root, path)), { recursive: true });
    await writeFile(join(root, path), body);
  }
  return root;
}

export const removeFolder = (root: string) => rm(root, { recursive: true, force: true });

/** Is anything there? */
export const isThere = (path: string): Promise<boolean> =>
  access(path).then(
    () => true,
    () => false,
  );

/** Every file below a folder with its bytes as base64, in order of path; nothing for a folder that is not there. */
export async function bytesOf(folder: string): Promise<Record<string, string>> {
  const entries = await readdir(folder, { recursive: true, withFileTypes: true }).catch(() => []);
  const paths = entries.filter((entry) => entry.isFile()).map((entry) => join(entry.parentPath, entry.name));
  const files: Record<string, string> = {};
  for (const path of paths.sort()) files[path.slice(folder.length + 1)] = (await readFile(path)).toString("base64");
  return files;
}

export const pathsOf = (root: string): Paths & { readonly desk: string } => ({
  content: join(root, "content"),
  data: join(root, "data"),
  out: join(root, "_site"),
  desk: join(root, "_desk"),
  state: join(root, ".winterbook"),
  hold: join(root, ".winterbook"),
});

export const OPTIONS: Options = { say: sayProblem };

/** The real disk, a secret that is the same every time, and silence. */
export const quiet = (): BuildEffects => ({
  disk: realDisk,
  elapsedMs: () => 0,
  randomBytes: (count) => new Uint8Array(count).fill(42),
  log: () => {},
  progress: () => {},
  runner: thisProcess,
});
