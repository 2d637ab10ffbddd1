import type { Effects } from "../schema/effects.ts";
import type { PairSensors } from "../schema/pairing.ts";
import type { AthleteSeason, NotePage, Problem, Season, TestResult } from "../schema/season.ts";
import { athleteProblems } from "./athlete-check.ts";
import { type AthleteFolder, problemsOf } from "./athlete-folder.ts";
import type { CellContext } from "./cell-reader.ts";
import { type Content, metricsOf, readContent } from "./content.ts";
import { type DataTables, readDataTables } from "./data-tables.ts";
import { facilityProblems } from "./facility-check.ts";
import { type Known, knownNames } from "./known.ts";
import { readMappings } from "./mappings.ts";
import { namesOf } from "./names.ts";
import { readReference } from "./reference.ts";
import { type SeasonFiles, seasonFiles } from "./season-files.ts";
import { swingFields } from "./swing-fields.ts";
import { readSwings, type Swings } from "./swings.ts";
import { readTests } from "./test-results.ts";
import { unlisted } from "./unlisted.ts";
import { written } from "./written.ts";

/** `facility.md` cannot be used, so there is no season; everything else was still looked at. */
export class SeasonUnreadable extends Error {
  readonly problems: readonly Problem[];

  constructor(problems: readonly Problem[]) {
    super("facility.md cannot be used");
    this.name = "SeasonUnreadable";
    this.problems = problems;
  }
}

/**
 * Reads everything the trainer keeps, in one pass: what cannot be used is named with its place, the rest stands.
 * Every data row of every swing file ends as a rep of one athlete or in `setAside`, never both.
 *
 * @param paths absolute paths of the two folders, whatever they are called on disk
 * @param pair  how rows of two devices are paired, which takes physics; null where nothing is to be paired
 * @param languages in which there are pages; null where nobody asks
 * @throws {SeasonUnreadable} with every problem found, when `facility.md` cannot be used
 */
export async function readSeason(
  paths: { readonly content: string; readonly data: string },
  effects: Effects,
  pair: PairSensors | null,
  languages: readonly string[] | null = null,
): Promise<Season> {
  const content = await readContent(await seasonFiles(paths.content, "content", effects.disk));
  const data = await seasonFiles(paths.data, "data", effects.disk);
  const tables = await readDataTables(data);
  const known = knownNames(content, tables.implements, tables.balls, languages);
  const own = content.metricsFile?.page?.front;
  const metrics = metricsOf(own ?? null);
  const facility = facilityProblems(content, known);
  const reference = readReference(tables.reference, metrics, known);
  const pages = [...contentProblems(content), ...facility.facility, ...facility.others];
  const problems = [...pages, ...tables.problems, ...reference.problems];
  problems.push(...content.folders.flatMap((folder) => athleteProblems(folder, known)));
  const leftOut = new Set(
    problems.flatMap(({ level, athlete }) => (level === "error" && athlete !== null ? [athlete] : [])),
  );
  const tests = readTests(tables.tests, metrics, namesOf(content.folders));
  problems.push(...tests.problems);
  const { swings, problems: ofSwings } = await readAllSwings(content, data, tables, known, leftOut, effects, pair);
  // One by one: as many arguments as a bad export has rows are too many for a call.
  for (const problem of ofSwings) problems.push(problem);
  const front = content.facility?.page?.front;
  if (!front || facility.facility.length > 0) throw new SeasonUnreadable(inOrder(problems));
  return {
    facility: front,
    metrics,
    zones: own?.zones ?? [],
    drills: content.drillsFile?.page?.front.drills ?? [],
    implements: tables.implements ?? [],
    balls: tables.balls ?? [],
    feeds: tables.feeds ?? [],
    devices: tables.devices ?? [],
    blocks: tables.blocks.map(({ at: _at, ...block }) => block),
    reference: reference.rows,
    athletes: content.folders.flatMap((folder) =>
      leftOut.has(folder.id) ? [] : athleteSeason(folder, swings, tests.byAthlete),
    ),
    leftOut: [...leftOut].sort(),
    swingFiles: swings.files,
    setAside: swings.setAside,
    corrections: swings.corrections,
    pairings: swings.pairings,
    problems: inOrder(problems),
  };
}

function contentProblems(content: Content): Problem[] {
  const pages = [content.facility, content.metricsFile, content.drillsFile].flatMap((page) => page?.problems ?? []);
  return [...content.problems, ...pages, ...content.folders.flatMap(problemsOf)];
}

async function readAllSwings(
  content: Content,
  data: SeasonFiles,
  tables: DataTables,
  known: Known,
  leftOut: ReadonlySet<string>,
  effects: Effects,
  pair: PairSensors | null,
): Promise<{ swings: Swings; problems: Problem[] }> {
  const fields = swingFields(metricsOf(content.metricsFile?.page?.front ?? null));
  const names = namesOf(content.folders);
  const athletes = content.folders.map((folder) => folder.id);
  const timeZone = content.facility?.page?.front.time_zone ?? null;
  const context: CellContext = { known, names, index: new Map(athletes.map((id, index) => [id, index])), timeZone };
  const { mappings, problems } = await readMappings(data, fields, context);
  const progress = (done: number, of: number): void => effects.progress("swings", done, of);
  const setup = { fields, mappings, context, athletes, pair };
  const swings = await readSwings(data, setup, written(content, tables, leftOut), progress);
  const devices = tables.devices && new Set(tables.devices.map((device) => device.id));
  const lists = {
    drill: { list: "drills", names: content.drillsFile ? known.drills : null },
    site: { list: "sites", names: known.sites },
    device_bat: { list: "devices", names: devices },
    device_ball: { list: "devices", names: devices },
  };
  const files = swings.files.map(({ file }) => file);
  const notes = unlisted(swings.tables, files, lists);
  return { swings, problems: [...names.problems, ...problems, ...swings.problems, ...notes] };
}

function athleteSeason(
  folder: AthleteFolder,
  swings: Swings,
  tests: ReadonlyMap<string, readonly TestResult[]>,
): AthleteSeason[] {
  const { id, profile, notes, closings, assessment, plan, images } = folder;
  const own = swings.reps.get(id);
  if (!profile?.page || !own) return [];
  return [
    {
      id,
      profile: profile.page.front,
      notes: notes.flatMap(({ page }): NotePage[] => (page ? [{ ...page, images }] : [])),
      closings: closings.flatMap(({ language, read }) => (read.page ? [{ ...read.page, language }] : [])),
      assessment: assessment?.page ?? null,
      plan: plan?.page ?? null,
      reps: own,
      log: swings.log.get(id) ?? [],
      tests: tests.get(id) ?? [],
    },
  ];
}

/** By file, then line and column; what means a whole file comes first. */
function inOrder(problems: readonly Problem[]): Problem[] {
  const order = (one: Problem, other: Problem): number =>
    byCodeUnit(one.at.file, other.at.file) ||
    (one.at.line ?? 0) - (other.at.line ?? 0) ||
    (one.at.column ?? 0) - (other.at.column ?? 0);
  return [...problems].sort(order);
}

const byCodeUnit = (one: string, other: string): number => (one < other ? -1 : one > other ? 1 : 0);
