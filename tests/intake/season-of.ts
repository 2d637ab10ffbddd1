import { pairByPhysics } from "../../src/build/physics.ts";
import { readSeason } from "../../src/intake/season.ts";
import type { LedgerRow, Problem, Season } from "../../src/schema/season.ts";
import { type Entry, memoryEffects } from "./memory-disk.ts";

/** A facility and one athlete: what every case here stands on. */
export const BASE: Readonly<Record<string, Entry>> = {
  "content/facility.md": [
    "---",
    "name: Barn on Mill Lane",
    "season: { name: Winter, start: 2025-10-06, end: 2026-02-22 }",
    "staff: [{ id: coach-k, name: Kay }]",
    "measures: [{ metric: bat_speed }]",
    "---",
    "",
  ].join("\n"),
  "content/athletes/ana-l/profile.md": "---\nname: Ana Lindqvist\naliases: [A. Lindqvist]\n---\n",
};

/** Reads a season whose files are given by their names from the season folder; null takes a file of the base away. */
export function seasonOf(files: Readonly<Record<string, Entry | null>>, base = BASE): Promise<Season> {
  const entries = new Map<string, Entry>();
  for (const [name, entry] of Object.entries({ ...base, ...files }))
    if (entry !== null) entries.set(`/season/${name}`, entry);
  return readSeason({ content: "/season/content", data: "/season/data" }, memoryEffects(entries), pairByPhysics, [
    "en",
    "es",
  ]);
}

/** `file:line:column code`, as a person would look it up. */
export const placed = ({ at, code }: Problem): string => `${at.file}:${at.line ?? "-"}:${at.column ?? "-"} ${code}`;

/** Problems with this code. */
export const coded = (season: Pick<Season, "problems">, code: string): Problem[] =>
  season.problems.filter((problem) => problem.code === code);

/** `file:line:column reason` of a row that was set aside. */
export const asideOf = ({ file, line, column, reason }: LedgerRow): string =>
  `${file}:${line}:${column ?? "-"} ${reason}`;

/** Swing rows that ended somewhere, against those that are in the files. */
export function balance(season: Season): { read: number; kept: number; setAside: number } {
  return {
    read: season.swingFiles.reduce((sum, { rows }) => sum + rows, 0),
    kept: season.athletes.reduce((sum, { reps }) => sum + reps.n, 0),
    setAside: season.setAside.length,
  };
}
