import { existsSync, readdirSync, readFileSync } from "node:fs";
import path from "node:path";
import * as z from "zod";
import { disagreements, outsideRanges, Tolerance } from "./agreement.ts";
import type { Check } from "./check.ts";
import { domainTests } from "./domain-cases.ts";
import { STATS_CHECKS } from "./stats.ts";

/** One case as a test: `run` throws when the code disagrees with it, or when nothing here knows how to run it. */
export interface ReferenceTest {
  readonly title: string;
  readonly run: () => void;
}

const Expected = z
  .record(z.string(), z.json())
  .refine((fields) => Object.keys(fields).length > 0, "expects nothing, so it checks nothing");

const Case = z.strictObject({
  id: z.string().min(1),
  inputs: z.record(z.string(), z.json()),
  expected: Expected,
  tolerance: Tolerance,
  source: z.string().min(1),
  computedWith: z.array(z.string()),
  published: z.json().optional(),
  notes: z.string().optional(),
});

const StatsFile = z.strictObject({
  id: z.string().min(1),
  title: z.string(),
  checks: z.string(),
  conventions: z.array(z.string()),
  cases: z.array(z.unknown()).min(1),
});

/** What a case is called even when it is otherwise out of shape. */
const Named = z.looseObject({ id: z.string().min(1) });

/**
 * Every case in a folder as a test: `stats/*.json` and `domain-checks.json` one test a case, and one failing test for each JSON file
 * that nothing here knows. Files of other kinds (a README) are not cases.
 *
 * @param folder a path; a missing folder or one without cases gives one failing test
 */
export function referenceTests(folder: string): ReferenceTest[] {
  if (!existsSync(folder)) return [failing(folder, "there is no such folder")];
  const files = readdirSync(folder, { recursive: true, encoding: "utf8" })
    .map((file) => file.split(path.sep).join("/"))
    .filter((file) => file.endsWith(".json"))
    .sort();
  if (files.length === 0) return [failing(folder, "it holds no cases")];
  const tests = files.flatMap((file) => {
    if (/^stats\/[^/]+$/.test(file)) return testsOfStatsFile(file, path.join(folder, file));
    if (file === "domain-checks.json") return domainTests(path.join(folder, file));
    return [failing(file, "no check is known for this file")];
  });
  return [...tests, ...repeatedTitles(tests)];
}

function testsOfStatsFile(name: string, fullPath: string): ReferenceTest[] {
  let file: z.infer<typeof StatsFile>;
  try {
    file = StatsFile.parse(JSON.parse(readFileSync(fullPath, "utf8")));
  } catch (cause) {
    return [failing(name, "it is not in the format of a reference file", cause)];
  }
  const check = STATS_CHECKS.get(file.id);
  return file.cases.map((entry, index) => {
    const named = Named.safeParse(entry);
    const title = `stats/${file.id}/${named.success ? named.data.id : `case ${index + 1}`}`;
    if (check === undefined) return failing(title, `no check is known for the file id "${file.id}"`);
    return { title, run: () => runCase(check, entry) };
  });
}

/** Ranges for the limits of a seeded run. */
const RANGES = "acceptAtB10000";

/** The named fields, each of which must be there: a misspelt one would compare nothing. */
function only(expected: z.infer<typeof Expected>, fields: readonly string[]): z.infer<typeof Expected> {
  return Object.fromEntries(
    fields.map((field) => {
      const value = expected[field];
      if (value === undefined) throw new Error(`the tolerance applies to "${field}", which is not expected`);
      return [field, value];
    }),
  );
}

function runCase(check: Check, entry: unknown): void {
  const { inputs, expected, tolerance } = Case.parse(entry);
  const got = check(inputs);
  const compared = tolerance.appliesTo ? only(expected, tolerance.appliesTo) : expected;
  const ranges = tolerance.appliesTo ? expected[RANGES] : undefined;
  const problems = [
    ...disagreements(got, compared, tolerance),
    ...(ranges === undefined ? [] : outsideRanges(got[RANGES], ranges, RANGES)),
  ];
  if (problems.length > 0) throw new Error(problems.join("\n"));
}

function repeatedTitles(tests: readonly ReferenceTest[]): ReferenceTest[] {
  const seen = new Set<string>();
  return tests.flatMap(({ title }) => {
    if (seen.has(title)) return [failing(`${title} (again)`, "two cases have this name")];
    seen.add(title);
    return [];
  });
}

function failing(title: string, reason: string, cause?: unknown): ReferenceTest {
  return {
    title,
    run: () => {
      throw new Error(`${title}: ${reason}`, { cause });
    },
  };
}
