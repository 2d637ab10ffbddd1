import type { z } from "zod";
import { contrast, PAPER, readableOn, TEXT_CONTRAST } from "../schema/colour.ts";
import { Facility } from "../schema/facility.ts";
import { BUILT_IN_METRICS, type Metric, MetricsFile } from "../schema/metric.ts";
import { DayPlan, DrillsFile } from "../schema/pages.ts";
import type { Problem } from "../schema/season.ts";
import { type AthleteFolder, athleteFolders, ownerOf, readAthleteFolder } from "./athlete-folder.ts";
import { near } from "./near.ts";
import { type ReadPage, readPage } from "./page.ts";
import { fault, remark, wholeFile, withSuggestion } from "./problem.ts";
import type { SeasonFiles } from "./season-files.ts";

/** What `content/` holds, each file held against its schema. */
export interface Content {
  readonly facility: ReadPage<Facility> | null;
  readonly metricsFile: ReadPage<MetricsFile> | null;
  readonly drillsFile: ReadPage<Drills> | null;
  readonly folders: readonly AthleteFolder[];
  /** Problems of the folder itself; those of pages stand in the pages. */
  readonly problems: readonly Problem[];
}
type Drills = z.infer<typeof DrillsFile>;

const FACILITY = "content/facility.md";
const METRICS = "content/metrics.md";
const DRILLS = "content/drills.md";
const EDITIONS = "content/editions.csv";
const KNOWN = [FACILITY, METRICS, DRILLS, EDITIONS];

/** Reads `content/`: one pass, every file, whatever is wrong with another. */
export async function readContent(files: SeasonFiles): Promise<Content> {
  const problems: Problem[] = files.refused.map((path) =>
    fault("not-a-plain-file", wholeFile(path), {}, ownerOf(path)),
  );
  const page = async <T>(file: string, schema: z.ZodType<T>): Promise<ReadPage<T> | null> => {
    if (!files.files.includes(file)) return null;
    const bytes = await files.read(file);
    if (bytes instanceof Uint8Array) return readPage(file, bytes, schema, { athlete: null, frontMatter: "required" });
    problems.push(bytes);
    return null;
  };
  const facility = await page(FACILITY, Facility);
  if (!files.files.includes(FACILITY)) problems.push(fault("missing-file", wholeFile(FACILITY), { file: FACILITY }));
  const metricsFile = await page(METRICS, MetricsFile);
  const drillsFile = await page(DRILLS, DrillsFile);
  const folders: AthleteFolder[] = [];
  for (const [id, paths] of athleteFolders(files)) folders.push(await readAthleteFolder(id, paths, files));
  problems.push(...(await lookProblems(facility, files)));
  problems.push(...(await otherFiles(files, facility?.page?.front.logo)));
  return { facility, metricsFile, drillsFile, folders, problems };
}

/** Bytes that a logo may have: it is loaded with every page. */
export const LOGO_BYTES = 40_000;

/** The facility's colour and its logo, as pages can use them. */
async function lookProblems(facility: ReadPage<Facility> | null, files: SeasonFiles): Promise<Problem[]> {
  if (!facility?.page) return [];
  const { accent, logo } = facility.page.front;
  const problems: Problem[] = [];
  if (accent !== undefined && contrast(accent, PAPER.day) < TEXT_CONTRAST) {
    const shown = readableOn(accent, PAPER.day, TEXT_CONTRAST);
    problems.push(remark("pale-accent", facility.at(["accent"], "value"), { found: accent, shown }));
  }
  if (logo === undefined) return problems;
  const file = `content/${logo}`;
  if (!files.files.includes(file))
    return [...problems, fault("missing-file", facility.at(["logo"], "value"), { file })];
  const bytes = await files.read(file);
  if (!(bytes instanceof Uint8Array)) return [...problems, bytes];
  if (bytes.length > LOGO_BYTES) {
    const sizes = { found: Math.ceil(bytes.length / 1000), most: LOGO_BYTES / 1000 };
    problems.push(fault("heavy-logo", wholeFile(file), sizes));
  }
  return problems;
}

async function otherFiles(files: SeasonFiles, logo: string | undefined): Promise<Problem[]> {
  const problems: Problem[] = [];
  for (const file of files.files) {
    const inFolder = /^content\/athletes\/[^/]+\//.test(file);
    if (inFolder || (KNOWN.includes(file) && file !== EDITIONS) || file === `content/${logo}`) continue;
    if (file === EDITIONS) problems.push(remark("not-used-yet", wholeFile(file), { what: "editions" }));
    else if (/^content\/plans\/[^/]+\.md$/.test(file)) problems.push(...(await dayPlan(file, files)));
    else problems.push(remark("unknown-file", wholeFile(file), withSuggestion({}, near(file, KNOWN))));
  }
  return problems;
}

async function dayPlan(file: string, files: SeasonFiles): Promise<Problem[]> {
  const bytes = await files.read(file);
  if (!(bytes instanceof Uint8Array)) return [bytes];
  const read = readPage(file, bytes, DayPlan, { athlete: null, frontMatter: "optional" });
  return [...read.problems, remark("not-used-yet", wholeFile(file), { what: "plans" })];
}

type Declared = NonNullable<MetricsFile["metrics"]>[number];

/** What may be said of any metric, under the names that a metric has it by. */
function settings({ window, typical_error, smallest_worthwhile }: Declared): Partial<Metric> {
  return {
    ...(window === undefined ? {} : { window }),
    ...(typical_error === undefined ? {} : { typicalError: typical_error }),
    ...(smallest_worthwhile === undefined ? {} : { smallestWorthwhile: smallest_worthwhile }),
  };
}

/** The season's metrics: built-in ones in the order of the canonical header and as metrics.md sets them, then the trainer's own. */
export function metricsOf(own: MetricsFile | null): Metric[] {
  const declared = own?.metrics ?? [];
  const set = new Map(declared.flatMap((entry) => ("unit" in entry ? [] : [[entry.id, settings(entry)] as const])));
  const added = declared.flatMap((entry): Metric[] => {
    if (!("unit" in entry)) return [];
    const { id, unit, better, plausible, decimals, label } = entry;
    return [{ id, unit, better, plausible, decimals, side: "own", label, ...settings(entry) }];
  });
  return [...BUILT_IN_METRICS.map((metric) => ({ ...metric, ...set.get(metric.id) })), ...added];
}
