import { parse } from "csv-parse/sync";
import { parse as parseYaml } from "yaml";
import { Profile } from "../../src/schema/profile.ts";
import { SECOND_SENSOR_FILE } from "./exports.ts";
import { EXPORTED_TWICE } from "./faults.ts";
import { generateDemo } from "./generate.ts";
import { STORIES } from "./stories.ts";

/** The demo season as it stands in the repository. */
export const demo = generateDemo();
/** The same season with all swings in our own columns: what the tests of this folder look at, read back from its texts. */
export const onTablets = generateDemo("tablet");

/** Front matter of a Markdown file of the demo. */
export function front(path: string): unknown {
  const [, yaml = ""] = /^---\n([\s\S]*?)\n---\n/.exec(onTablets.get(path) ?? "") ?? [];
  return parseYaml(yaml);
}

/** Rows of a CSV file as records; a row that stops early has no later cells. */
export function records(path: string): Record<string, string>[] {
  return parse(onTablets.get(path) ?? "", { bom: true, columns: true, relax_column_count_less: true });
}

export const swingPaths = [...onTablets.keys()].filter((path) => path.startsWith("data/swings/"));
export const swings = swingPaths.flatMap((path) => records(path).map((row) => ({ path, row })));
export const once = swings.filter(({ path }) => path !== EXPORTED_TWICE.again).map(({ row }) => row);
export const whole = once.filter((row) => row.device_bat !== undefined);
/** Swings that a second sensor on the bat told once more. */
export const toldAgain = records(SECOND_SENSOR_FILE);
export const profiles = STORIES.map((story) => ({
  story,
  profile: Profile.parse(front(`content/athletes/${story.id}/profile.md`)),
}));
/** A number column's value; nothing for a blank or unreadable cell. */
export const numberIn = (row: Record<string, string>, column: string): number | undefined => {
  const cell = row[column] ?? "";
  return /^-?\d+(\.\d+)?$/.test(cell) ? Number(cell) : undefined;
};

/** A speed column's value in mph, whichever unit the tablet was set to. */
export const mphIn = (row: Record<string, string>, metric: string): number | undefined => {
  const kmh = numberIn(row, `${metric}_kmh`);
  return kmh === undefined ? numberIn(row, `${metric}_mph`) : kmh / 1.609344;
};
