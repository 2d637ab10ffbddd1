import type { LineOf, Problem } from "../schema/season.ts";
import {
  type Ball,
  BallRow,
  type Block,
  BlockRow,
  CorrectionRow,
  type Device,
  DeviceRow,
  type Feed,
  FeedRow,
  type Implement,
  ImplementRow,
  ReferenceRow,
  type ReferenceWritten,
  TestRow,
} from "../schema/tables.ts";
import type { Correction } from "./corrections/correction.ts";
import { near } from "./near.ts";
import { fault, remark, wholeFile, withSuggestion } from "./problem.ts";
import type { SeasonFiles } from "./season-files.ts";
import { readSmallTable, type SmallTable } from "./small-table.ts";
import type { WrittenTest } from "./test-results.ts";

/** A row of `data/reference` as it is written. */
export type WrittenReference = ReferenceWritten & {
  readonly at: LineOf;
  /** Names of its file's columns, in order. */
  readonly header: readonly string[];
};

/** The small tables of `data/`. A list is null when its file is not there. */
export interface DataTables {
  readonly implements: readonly Implement[] | null;
  readonly balls: readonly Ball[] | null;
  readonly feeds: readonly Feed[] | null;
  readonly devices: readonly Device[] | null;
  readonly blocks: readonly (Block & { readonly at: LineOf })[];
  /** In order of file and line. */
  readonly reference: readonly WrittenReference[];
  readonly tests: readonly WrittenTest[];
  readonly corrections: readonly Correction[];
  readonly problems: readonly Problem[];
}

const SINGLE = ["implements.csv", "balls.csv", "feeds.csv", "devices.csv", "corrections.csv"];
const FOLDERS = ["swings", "blocks", "tests", "reference", "mappings", "inbox"];
/** Files that another part of intake, or a person, reads. */
const ELSEWHERE = /^data\/(swings\/.+\.(csv|xlsx)|mappings\/[^/]+\.json|inbox\/.+)$/i;

/** Reads the small tables and names every file of `data/` that nothing reads. */
export async function readDataTables(files: SeasonFiles): Promise<DataTables> {
  const problems: Problem[] = files.refused.map((path) => fault("not-a-plain-file", wholeFile(path)));
  const tablesRead = new Map<string, Pick<SmallTable<unknown>, "header" | "lines">>();
  const read = async <T>(
    file: string,
    schema: Parameters<typeof readSmallTable<T>>[2],
  ): Promise<readonly T[] | null> => {
    if (!files.files.includes(file)) return null;
    const bytes = await files.read(file);
    const table: SmallTable<T> =
      bytes instanceof Uint8Array
        ? readSmallTable(file, bytes, schema)
        : { header: [], rows: [], lines: [], problems: [bytes] };
    problems.push(...table.problems);
    tablesRead.set(file, table);
    return table.rows;
  };
  /** Rows together with their places. */
  const placed = async <T>(
    pattern: RegExp,
    schema: Parameters<typeof readSmallTable<T>>[2],
  ): Promise<(T & { readonly at: LineOf })[]> => {
    const rows: (T & { readonly at: LineOf })[] = [];
    for (const file of files.files) {
      if (!pattern.test(file)) continue;
      const found = (await read(file, schema)) ?? [];
      rows.push(...found.map((row, i) => ({ ...row, at: { file, line: tablesRead.get(file)?.lines[i] ?? 0 } })));
    }
    return rows;
  };
  const tables = {
    implements: await read("data/implements.csv", ImplementRow),
    balls: await read("data/balls.csv", BallRow),
    feeds: await read("data/feeds.csv", FeedRow),
    devices: await read("data/devices.csv", DeviceRow),
    blocks: await placed(/^data\/blocks\/.+\.csv$/, BlockRow),
    corrections: await placed(/^data\/corrections\.csv$/, CorrectionRow),
    tests: (await placed(/^data\/tests\/.+\.csv$/, TestRow)).map(
      (row): WrittenTest => ({ ...row, header: tablesRead.get(row.at.file)?.header ?? [] }),
    ),
    reference: (await placed(/^data\/reference\/.+\.csv$/, ReferenceRow)).map(
      (row): WrittenReference => ({ ...row, header: tablesRead.get(row.at.file)?.header ?? [] }),
    ),
  };
  for (const file of files.files) problems.push(...unread(file));
  return { ...tables, problems };
}

function unread(file: string): Problem[] {
  if (ELSEWHERE.test(file) || /^data\/(blocks|tests|reference)\/.+\.csv$/.test(file)) return [];
  const [, first = ""] = file.split("/");
  const alone = !file.startsWith(`data/${first}/`);
  if (alone && SINGLE.includes(first)) return [];
  const suggestion = FOLDERS.includes(first) ? null : near(first, alone ? SINGLE : FOLDERS);
  return [remark("unknown-file", wholeFile(file), withSuggestion({}, suggestion))];
}
