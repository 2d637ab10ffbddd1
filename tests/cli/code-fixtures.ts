import { check, SeasonUnreadable } from "../../src/build.ts";
import type { Problem } from "../../src/schema/season.ts";
import { type Entry, memoryEffects } from "../intake/memory-disk.ts";
import { ballCsv, batCsv, madeSwings } from "../intake/pairing/two-exports.ts";
import { BASE } from "../intake/season-of.ts";
import { sheetXml, workbookParts, zip } from "../intake/xlsx.ts";

/** Changes to the small season of `season-of.ts`; null takes a file away. */
export type Changes = Readonly<Record<string, Entry | null>>;

const A = "data/swings/a.csv";
const BOOK = "data/swings/a.xlsx";
const PROFILE = "content/athletes/ana-l/profile.md";
const FACILITY = "content/facility.md";
const MAP = "data/mappings/m.json";
const LOG = "data/blocks/a.csv";
const CORRECTIONS = "data/corrections.csv";

const HEADER = "athlete_id,date,bat_speed_mph";
const swings = (...rows: readonly string[]): Changes => ({ [A]: `${[HEADER, ...rows].join("\n")}\n` });
const profile = (...lines: readonly string[]): Changes => ({ [PROFILE]: `${["---", ...lines, "---"].join("\n")}\n` });
const facility = (...more: readonly string[]): Changes => {
  const season = "season: { name: Winter, start: 2025-10-06, end: 2026-02-22 }";
  return { [FACILITY]: `${["---", "name: Barn", season, ...more, "---"].join("\n")}\n` };
};
const mapping = (change: object = {}) =>
  JSON.stringify({
    label: "Lane",
    header: ["Who", "Day", "Speed", "Note"],
    columns: { Who: { field: "athlete_id" }, Day: { field: "date" }, Speed: { field: "bat_speed", unit: "km/h" } },
    ...change,
  });
const export_ = (...lines: readonly string[]): Changes => ({ [A]: `${lines.join("\n")}\n` });
const book = (bytes: Uint8Array): Changes => ({ [BOOK]: bytes });
const PARTS = workbookParts({ S: sheetXml([["athlete_id", "date", "bat_speed_mph"]]) });
const SHEET = "xl/worksheets/sheet1.xml";
const far = sheetXml([["athlete_id"]]).replace(
  "</sheetData>",
  '<row r="1048576"><c r="XFD1048576"><v>1</v></c></row></sheetData>',
);
const correction = (...rows: readonly string[]): Changes => ({
  ...swings("ana-l,2025-10-06,61", "ana-l,2025-10-07,62"),
  [CORRECTIONS]: `${["by,on,reason,file,line,action,field,from,to", ...rows].join("\n")}\n`,
});
const log = (header: string, ...rows: readonly string[]): Changes => ({
  ...export_(
    "athlete_id,date,time,block,bat_speed_mph,environment",
    "ana-l,2025-10-06,17:00:05,1,61,machine",
    "ana-l,2025-10-06,17:00:15,9,62,",
  ),
  [LOG]: `${[header, ...rows].join("\n")}\n`,
});

/** For each code a season in which it comes up. */
export const FIXTURES: Readonly<Record<string, Changes>> = {
  "not-utf-8": { [PROFILE]: Uint8Array.of(0x2d, 0x2d, 0x2d, 0x0a, 0xff, 0xfe, 0xe9) },
  "not-a-plain-file": { [A]: { link: "/elsewhere" } },
  "unreadable-file": { "data/swings/locked.csv": "x" },
  "missing-file": { [PROFILE]: null, "content/athletes/ana-l/plan.md": "Swing.\n" },
  "unknown-file": { "content/athletes/ana-l/profil.md": "x" },
  "bad-folder-name": { "content/athletes/Ana L/profile.md": "---\nname: Ana\n---\n" },
  "empty-file": { [A]: "" },
  "no-front-matter": { [PROFILE]: "name: Ana\n" },
  "unclosed-front-matter": { [PROFILE]: "---\nname: Ana\n" },
  "unreadable-yaml": profile("name: [Ana"),
  "unreadable-json": { [MAP]: "{,}" },
  "unknown-key": profile("name: Ana", "borm: 2010"),
  "missing-key": profile("born: 2010"),
  "wrong-value": profile("name: Ana", "bats: rigth"),
  "not-in-list": profile("name: Ana", "measures: [{ metric: bat_sped }]"),
  "repeated-id": facility("staff: [{ id: k, name: Kay }, { id: k, name: Kim }]"),
  "repeated-goal": profile(
    "name: Ana",
    "goals:",
    "  - { metric: bat_speed, target: 62, by: 2026-02-01 }",
    "  - { metric: bat_speed, target: 64, by: 2026-02-01 }",
  ),
  "shared-name": { "content/athletes/ana-b/profile.md": "---\nname: Ana Lindqvist\n---\n" },
  "pale-accent": facility('accent: "#ffcc00"'),
  "heavy-logo": { ...facility("logo: mark.png"), "content/mark.png": new Uint8Array(41_000) },
  "no-measures": facility(),
  "no-pages-in-language": profile("name: Ana", "language: fr"),
  "limit-broken": {
    ...profile("name: Ana", "limits: [{ from: 2025-10-06, none_of: [max] }]"),
    [A]: "athlete_id,date,effort,bat_speed_mph\nana-l,2025-10-07,max,60\n",
  },
  "below-overload-age": {
    ...profile("name: Ana", "born: 2015-03-01"),
    ...facility("overload_from_age: 14"),
    "data/implements.csv": "id,role\nbig,overload\n",
    [A]: "athlete_id,date,implement,bat_speed_mph\nana-l,2025-10-07,big,60\n",
  },
  "not-used-yet": { "content/editions.csv": "edition,date,why\n" },
  "unknown-column": export_("athlete_id,date,bat_speed_mph,colour", "ana-l,2025-10-06,61,red"),
  "other-case": export_("Athlete_ID,date,bat_speed_mph", "ana-l,2025-10-06,61"),
  "missing-column": export_("athlete_id,bat_speed_mph", "ana-l,61"),
  "no-measured-column": export_("athlete_id,date", "ana-l,2025-10-06"),
  "repeated-column": export_("athlete_id,date,bat_speed_mph,bat_speed_kmh", "ana-l,2025-10-06,61,98"),
  "wrong-delimiter": { "data/balls.csv": "id;label;kind\nsoft;Soft;soft\n" },
  "broken-header": { [A]: "x".repeat(3 << 20) },
  "same-header": { [MAP]: mapping(), "data/mappings/n.json": mapping() },
  "repeated-file": { ...swings("ana-l,2025-10-06,61"), "data/swings/b.csv": `${HEADER}\nana-l,2025-10-06,61\n` },
  "rows-of-left-out": { ...profile("name: Ana", "borm: 2010"), ...swings("ana-l,2025-10-06,61") },
  "changed-header": { [MAP]: mapping(), ...export_("Who,Day,Speed,Notes", "ana-l,2025-10-06,98,x") },
  "changed-units": {
    [MAP]: mapping({ units_row: ["", "", "km/h", ""] }),
    ...export_("Who,Day,Speed,Note", ",,mph,", "ana-l,2025-10-06,98,x"),
  },
  "lines-skipped": export_("Report of lane 2", HEADER, "ana-l,2025-10-06,61"),
  "too-many-columns": export_(`${HEADER},${Array.from({ length: 10_000 }, (_, i) => `c${i}`).join(",")}`),
  "no-time-zone": { [MAP]: mapping({ zone: "America/Denver" }) },
  "not-a-table": { [A]: Uint8Array.of(0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a) },
  "still-growing": swings("ana-l,2025-10-06,61"),
  "workbook-too-large": book(zip(PARTS, { [SHEET]: { size: 300 * 1024 * 1024 } })),
  "workbook-too-wide": book(zip({ ...PARTS, [SHEET]: far })),
  "workbook-with-macros": book(zip({ ...PARTS, "xl/vbaProject.bin": "x" })),
  "broken-workbook": book(zip(PARTS).subarray(0, 400)),
  "unreadable-date": swings("ana-l,06/10/25,61"),
  "unreadable-number": swings('ana-l,2025-10-06,"61,5"'),
  "unreadable-row": swings("ana-l,2025-10-06"),
  "out-of-range": swings("ana-l,2025-10-06,615"),
  "unknown-athlete": swings("nobody,2025-10-06,61"),
  "ambiguous-name": {
    "content/athletes/ana-b/profile.md": "---\nname: Ana Lindqvist\n---\n",
    ...swings("Ana Lindqvist,2025-10-06,61"),
  },
  "unknown-id": export_("athlete_id,date,side,bat_speed_mph", "ana-l,2025-10-06,rigth,61"),
  duplicate: export_(
    "athlete_id,date,time,bat_speed_mph",
    "ana-l,2025-10-06,17:00:05,61",
    "ana-l,2025-10-06,17:00:05,61",
  ),
  revised: {
    ...export_(
      "athlete_id,date,time,bat_speed_mph,attack_angle_deg",
      "ana-l,2025-10-06,17:00:05,61,4",
      "ana-l,2025-10-06,17:00:15,62,5",
      "ana-l,2025-10-06,17:00:25,63,6",
    ),
    "data/swings/b.csv": `${[
      "athlete_id,date,time,bat_speed_mph,attack_angle_deg",
      "ana-l,2025-10-06,17:00:05,61,4",
      "ana-l,2025-10-06,17:00:15,62,7",
      "ana-l,2025-10-06,17:00:25,63,6",
      "ana-l,2025-10-07,17:00:25,63,6",
    ].join("\n")}\n`,
  },
  void: correction(`kay,2025-10-20,no swing,${A},2,void,,,`),
  "summary-row": {
    [MAP]: mapping({ summary_rows: { words: ["Mean"] } }),
    ...export_("Who,Day,Speed,Note", "ana-l,2025-10-06,98,x", "Mean,,98,"),
  },
  "unassigned-block": log("date,athlete_id,block,environment,rounds,reps", "2025-10-06,ana-l,1,tee,1,1"),
  "correction-incomplete": correction(`kay,2025-10-20,typo,${A},2,set,,61,64`),
  "correction-without-rows": correction(`kay,2025-10-20,typo,${A},90,void,,,`),
  "correction-mismatch": correction(`kay,2025-10-20,typo,${A},2,set,bat_speed,60,64`),
  "future-date": swings("ana-l,2062-01-05,61"),
  "correction-applied": correction(`kay,2025-10-20,typo,${A},2,set,bat_speed,61,64`),
  "possible-set-up-change": swings(
    ...Array.from({ length: 20 }, (_, day) => day).flatMap((day) => {
      const date = new Date(Date.UTC(2025, 9, 7 + 3 * day)).toISOString().slice(0, 10);
      const level = 60 + (day % 3) / 10 + (day < 10 ? 0 : 4);
      return [0, 1, 2, 3, 4].map((swing) => `ana-l,${date},${(level + swing / 10).toFixed(1)}`);
    }),
  ),
  "far-from-own-swings": swings(
    ...Array.from(
      { length: 24 },
      (_, swing) => `ana-l,2025-10-${String(7 + swing).padStart(2, "0")},${60 + (swing % 5)}`,
    ),
    "ana-l,2025-11-20,95",
  ),
  "correction-overruled": correction(
    `kay,2025-10-20,typo,${A},2,set,bat_speed,61,64`,
    `kay,2025-10-21,typo,${A},2,set,bat_speed,61,65`,
  ),
  "log-value": log("date,athlete_id,block,environment,rounds,reps", "2025-10-06,ana-l,1,teee,1,1"),
  "feed-not-valid": {
    ...log("date,athlete_id,block,environment,feed,rounds,reps", "2025-10-06,ana-l,1,machine,wheel,1,1"),
    "data/feeds.csv": "id,kind,from,to\nwheel,wheel,2025-11-01,2025-12-01\n",
  },
  "repeated-block": log(
    "date,athlete_id,block,environment,rounds,reps",
    "2025-10-06,ana-l,1,tee,1,1",
    "2025-10-06,ana-l,1,tee,1,1",
  ),
  contradiction: log("date,athlete_id,block,environment,rounds,reps", "2025-10-06,ana-l,1,tee,1,1"),
  "block-count": log("date,athlete_id,block,environment,rounds,reps", "2025-10-06,ana-l,1,machine,2,5"),
  "lost-reference": {
    ...swings("ana-l,2025-10-06,61"),
    "content/athletes/ana-l/closing.md": "---\nby: coach-k\n---\nFrom [[bat_speed: start]] on.\n",
  },
  "figure-not-borne-out": {
    ...swings("ana-l,2025-10-06,61"),
    "content/athletes/ana-l/closing.md": "---\nby: coach-k\n---\nHer bat speed went from 58 to 64.\n",
  },
  "pairs-not-told": {
    [A]: batCsv(madeSwings(30, "one day"), "ana-l"),
    "data/swings/screen/a.csv": ballCsv(madeSwings(30, "quite another day"), "ana-l", 0),
  },
  "pairs-without-seconds": {
    ...export_("athlete_id,date,time,bat_speed_mph", "ana-l,2025-10-06,17:00,61"),
    "data/swings/screen/a.csv": "athlete_id,date,time,exit_velocity_mph\nana-l,2025-10-06,17:00:05,71\n",
  },
  "page-too-long": { "content/athletes/ana-l/plan.md": `---\ndate: 2025-10-06\n---\n${"Swing. ".repeat(160_000)}\n` },
  "shows-birth-date": {
    ...profile(
      "name: Ana Lindqvist",
      "born: 1999-05-14",
      "consent: [{ by: self, as: self, on: 2025-10-06, readers: [family] }]",
    ),
    "content/athletes/ana-l/closing.md": "---\nby: coach-k\n---\nBorn on May 14, 1999, and better every year.\n",
  },
  "health-word": {
    ...profile("name: Ana Lindqvist"),
    "content/athletes/ana-l/closing.md": "---\nby: coach-k\n---\nThe wrist was sprained in January.\n",
  },
  "second-reader": {
    ...facility("second_reader: true", "staff: [{ id: coach-k, name: Kay Wend }]"),
    "content/athletes/ana-l/closing.md": "---\nby: coach-k\n---\nA fine winter.\n",
  },
  "past-keep-until": facility("keep_until: 2025-10-01"),
  "minor-not-sealed": profile(
    "name: Ana Lindqvist",
    "seal: false",
    "consent: [{ by: her mother, as: guardian, on: 2025-10-06, readers: [family] }]",
  ),
  "facility-names-athlete": {
    ...profile("name: Ana Lindqvist"),
    ...facility("notice: Well hit, Ana Lindqvist!"),
  },
  "names-other-athlete": {
    "content/athletes/ben-k/profile.md": "---\nname: Ben Kovar\n---\n",
    ...profile(
      "name: Ana Lindqvist",
      "born: 1999",
      "consent: [{ by: self, as: self, on: 2025-10-06, readers: [family] }]",
    ),
    "content/athletes/ana-l/notes/a.md":
      "---\ndate: 2025-10-07\nauthor: coach-k\nkind: words\nreaders: [family]\n---\nBetter than Ben Kovar.\n",
    ...swings("ana-l,2025-10-06,61"),
  },
};

/** Everything that `check` says of a fixture. */
export async function problemsOf(changes: Changes): Promise<readonly Problem[]> {
  const entries = new Map<string, Entry>();
  for (const [name, entry] of Object.entries({ ...BASE, ...changes }))
    if (entry !== null) entries.set(`/season/${name}`, entry);
  const effects = memoryEffects(entries);
  let looks = 0;
  const disk = {
    ...effects.disk,
    read: async (path: string) => {
      if (path.endsWith("/locked.csv")) throw new Error("permission denied");
      return effects.disk.read(path);
    },
    // A file that is longer every time somebody looks.
    ...(changes === FIXTURES["still-growing"] && { look: async () => ({ size: 90 + looks++, changed: looks }) }),
  };
  const paths = { content: "/season/content", data: "/season/data" };
  try {
    return (await check(paths, {}, { ...effects, disk })).problems;
  } catch (error) {
    if (error instanceof SeasonUnreadable) return error.problems;
    throw error;
  }
}
