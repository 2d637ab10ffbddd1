import { parse } from "csv-parse/sync";
import { parse as parseYaml } from "yaml";
import { Profile } from "../../src/schema/profile.ts";
import { EXPORTED_TWICE } from "./faults.ts";
import { generateDemo } from "./generate.ts";
import { STORIES } from "./stories.ts";

/** The demo season, read back from its texts: what the tests of this folder look at. */
export const demo = generateDemo();

/** Front matter of a Markdown file of the demo. */
export function front(path: string): unknown {
  const [, yaml = ""] = /^---\n([\s\S]*?)\n---\n/.exec(demo.get(path) ?? "") ?? [];
  return parseYaml(yaml);
}

/** Rows of a CSV file as records; a row that stops early has no later cells. */
export function records(path: string): Record<string, string>[] {
  return parse(demo.get(path) ?? "", { bom: true, columns: true, relax_column_count_less: true });
}

export const swingPaths = [...demo.keys()].filter((path) => path.startsWith("data/swings/"));
export const swings = swingPaths.flatMap((path) => records(path).map((row) => ({ path, row })));
export const once = swings.filter(({ path }) => path !== EXPORTED_TWICE.again).map(({ row }) => row);
export const whole = once.filter((row) => row.device_bat !== undefined);
export const profiles = STORIES.map((story) => ({
  story,
  profile: Profile.parse(front(`content/athletes/${story.id}/profile.md`)),
}));
/** A number column's value; nothing for a blank or unreadable cell. */
export const numberIn = (row: Record<string, string>, column: string): number | undefined => {
  const cell = row[column] ?? "";
  return /^-?\d+(\.\d+)?$/.test(cell) ? Number(cell) : undefined;
};
