import { count, tableLines } from "../table.ts";
import type { Made } from "./make-folders.ts";
import type { NewAthlete } from "./profile-fields.ts";
import { lacksOf } from "./profile-page.ts";

const folders = (n: number): string => (n === 1 ? "1 folder" : `${count(n)} folders`);

/** What was made, what was there, and what is still to be done. */
export function madeLines({ made, there }: Made): string[] {
  const lines = [`Made ${folders(made.length)} under content/athletes.`];
  if (there.length > 0) lines.push(`There already and left as they are: ${there.map(({ id }) => id).join(", ")}.`);
  for (const { id, name } of there) {
    if (name !== null)
      lines.push(`  ${id} is the folder of somebody who is not called ${name}: give ${name} another id.`);
  }
  return [...lines, ...lackLines(made), ...groupLines(made)];
}

/** Each new athlete with what is not written yet, then what each lack costs. */
function lackLines(made: readonly NewAthlete[]): string[] {
  if (made.length === 0) return [];
  const [only, ...more] = made;
  if (only && more.length === 0) {
    const own = lacksOf(only.profile);
    if (own.length === 0) return [];
    return ["", "Still lacking:", ...left(own.map(({ what, costs }) => [what, costs])), "", CONSENT];
  }
  const lacks = made.map(({ id, profile }) => ({ id, lacks: lacksOf(profile) }));
  const rows = lacks.map(({ id, lacks: own }) => `${id}: ${own.map(({ what }) => what).join(", ") || "nothing"}`);
  const costs = new Map(lacks.flatMap(({ lacks: own }) => own.map(({ what, costs: cost }) => [what, cost] as const)));
  const table = tableLines(
    [...costs].map(([what]) => [
      what,
      of(lacks.filter((one) => one.lacks.some((l) => l.what === what)).length, made.length),
    ]),
  );
  return [
    "",
    "Still lacking, for each:",
    ...rows.map((row) => `  ${row}`),
    "",
    "What that costs:",
    ...table.map((line, i) => `  ${line}  ${[...costs.values()][i]}`),
    "",
    CONSENT,
  ];
}

const CONSENT =
  "The new profile.md shows how the missing lines are written. Consent is written down by you, when somebody gave it.";

const left = (rows: readonly (readonly [string, string])[]): string[] => {
  const width = Math.max(...rows.map(([one]) => one.length));
  return rows.map(([one, other]) => `  ${one.padEnd(width)}  ${other}`);
};

const of = (n: number, all: number): string => `${n} of ${all}`;

/** Groups are kept by the facility: shown, so that they can be put there. */
function groupLines(made: readonly NewAthlete[]): string[] {
  const groups = new Map<string, string[]>();
  for (const { id, group } of made) if (group !== null) groups.set(group, [...(groups.get(group) ?? []), id]);
  if (groups.size === 0) return [];
  const lines = [...groups].map(([group, members]) => `  - { id: ${group}, members: [${members.join(", ")}] }`);
  return ["", "Groups stand in content/facility.md; put these under groups:", ...lines];
}
