import type { z } from "zod";
import type { Page, Place, Problem } from "../schema/season.ts";
import { checked } from "./checked.ts";
import { decode } from "./decode.ts";
import { splitFrontMatter } from "./front-matter.ts";
import { fault, wholeFile } from "./problem.ts";
import { readYaml } from "./yaml-text.ts";

/** Bytes of the longest page: a coach's whole book would be shorter. More is a mistake, or meant to keep the machine busy. */
const LONGEST_PAGE = 1 << 20;

/** The problem of a page or mapping that is too long to be read; null of any other. */
export function tooLong(file: string, bytes: Uint8Array, athlete: string | null = null): Problem | null {
  if (bytes.length <= LONGEST_PAGE) return null;
  return fault("page-too-long", wholeFile(file), { bytes: bytes.length, most: LONGEST_PAGE }, athlete);
}

/** A page as read: usable or not, with what is known of it. */
export interface ReadPage<Front> {
  /** Null when it cannot be used. */
  readonly page: Page<Front> | null;
  readonly problems: readonly Problem[];
  /** Front matter before it was checked; null when it is not even YAML. */
  readonly raw: unknown;
  /** Place of a key or value of the front matter. */
  at(path: readonly PropertyKey[], what: "key" | "value"): Place;
}

interface PageOptions {
  readonly athlete: string | null;
  /** A page may do without front matter when none of its keys is required. */
  readonly frontMatter: "required" | "optional";
}

/** Reads a Markdown page and holds its front matter against `schema`; all of a file's problems come at once. */
export function readPage<Front>(
  file: string,
  bytes: Uint8Array,
  schema: z.ZodType<Front>,
  { athlete, frontMatter }: PageOptions,
): ReadPage<Front> {
  const unusable = (problems: Problem[]): ReadPage<Front> => ({
    page: null,
    problems,
    raw: null,
    at: () => wholeFile(file),
  });
  const long = tooLong(file, bytes, athlete);
  if (long !== null) return unusable([long]);
  const text = decode(bytes);
  if (text === null) return unusable([fault("not-utf-8", wholeFile(file), {}, athlete)]);
  const parts = splitFrontMatter(text);
  const start: Place = { file, line: 1, column: 1 };
  if (parts.kind === "unclosed") return unusable([fault("unclosed-front-matter", start, {}, athlete)]);
  if (parts.kind === "none" && frontMatter === "required")
    return unusable([fault("no-front-matter", start, {}, athlete)]);
  const yaml = parts.kind === "found" ? readYaml(file, parts.yaml, parts.yamlLine) : { data: {}, at: () => start };
  if ("faults" in yaml) {
    return unusable(yaml.faults.map(({ at, detail }) => fault("unreadable-yaml", at, { detail }, athlete)));
  }
  const { value, problems } = checked(file, schema, yaml, athlete);
  const bodyLine = parts.kind === "found" ? parts.bodyLine : 1;
  const page = value === null ? null : { file, front: value, body: parts.body, bodyLine };
  return { page, problems, raw: yaml.data, at: yaml.at };
}
