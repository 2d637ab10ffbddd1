import type { z } from "zod";
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
  problems.push(...(await otherFiles(files)));
  return { facility, metricsFile, drillsFile, folders, problems };
}

async function otherFiles(files: SeasonFiles): Promise<Problem[]> {
  const problems: Problem[] = [];
  for (const file of files.files) {
    const inFolder = /^content\/athletes\/[^/]+\//.test(file);
    if (inFolder || (KNOWN.includes(file) && file !== EDITIONS)) continue;
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

/** The season's metrics: built-in ones in the order of the canonical header, then the trainer's own. */
export function metricsOf(own: MetricsFile | null): Metric[] {
  const declared = (own?.metrics ?? []).map(
    (metric): Metric => ({
      id: metric.id,
      unit: metric.unit,
      better: metric.better,
      plausible: metric.plausible,
      decimals: metric.decimals,
      side: "own",
      label: metric.label,
      ...(metric.window === undefined ? {} : { window: metric.window }),
      ...(metric.typical_error === undefined ? {} : { typicalError: metric.typical_error }),
      ...(metric.smallest_worthwhile === undefined ? {} : { smallestWorthwhile: metric.smallest_worthwhile }),
    }),
  );
  return [...BUILT_IN_METRICS, ...declared];
}
