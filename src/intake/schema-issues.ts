import type { z } from "zod";
import { near } from "./near.ts";
import { keysAt } from "./schema-keys.ts";

type Issue = z.core.$ZodIssue;
type Path = readonly PropertyKey[];

/** One thing that is wrong with data, in our words' arguments. */
export interface Finding {
  readonly code: "unknown-key" | "missing-key" | "wrong-value";
  readonly path: Path;
  /** Whether the place meant is the key or its value. */
  readonly what: "key" | "value";
  readonly found: string;
  readonly expected: string;
  readonly suggestion: string | null;
}

const KINDS: Readonly<Record<string, string>> = {
  string: "text",
  number: "a number",
  int: "a whole number",
  boolean: "true or false",
  array: "a list",
  tuple: "a list",
  object: "a group of keys",
  record: "a group of keys",
};

/** What stands in the file, short enough to quote; blank is "nothing". */
export function quoted(value: unknown): string {
  if (value === null || value === undefined || value === "") return "nothing";
  if (Array.isArray(value))
    return value.length === 0 ? "an empty list" : `[${value.map(quoted).join(", ")}]`.slice(0, 60);
  if (typeof value === "object") return "a group of keys";
  return String(value).slice(0, 60);
}

/** `goals[1].by`: a path as a person would write it. */
export function dotted(path: Path): string {
  return path.reduce<string>((text, key) => {
    if (typeof key === "number") return `${text}[${key}]`;
    return text === "" ? String(key) : `${text}.${String(key)}`;
  }, "");
}

function valueAt(data: unknown, path: Path): unknown {
  return path.reduce<unknown>((value, key) => {
    if (typeof value !== "object" || value === null || !Object.hasOwn(value, key)) return undefined;
    return (value as Record<PropertyKey, unknown>)[key];
  }, data);
}

/** A sentence that a schema of ours gives beats anything that can be made from the kind of issue. */
const ownSentence = (issue: Issue): string | null =>
  /^(Invalid|Too big|Too small|Unrecognized)/.test(issue.message) ? null : issue.message;

function expectedBy(issue: Issue): string {
  const sentence = ownSentence(issue);
  if (sentence !== null) return sentence;
  switch (issue.code) {
    case "invalid_type":
      return KINDS[issue.expected] ?? issue.expected;
    case "invalid_value":
      return issue.values.length === 1 ? String(issue.values[0]) : `one of ${issue.values.join(", ")}`;
    case "invalid_format":
      return issue.format === "url" ? "an address starting with https://" : `text in the form of ${issue.format}`;
    case "too_small":
      return limit(issue.origin, issue.inclusive === false ? "more than" : "at least", issue.minimum);
    case "too_big":
      return limit(issue.origin, issue.inclusive === false ? "less than" : "at most", issue.maximum);
    case "invalid_key":
      return "another key here: two letters of a language, as en or es";
    default:
      return "something else";
  }
}

function limit(origin: string, bound: string, value: number | bigint): string {
  if (origin === "string") return value === 1 ? "some text" : `text of ${bound} ${value} characters`;
  if (origin === "array") return `a list of ${bound} ${value}`;
  return `a number ${bound} ${value}`;
}

/** The deeper an issue lies, the better its branch fits: a value of the wrong kind altogether fits worst. */
function misfit(issues: readonly Issue[]): number {
  return issues.reduce((sum, issue) => {
    if (issue.path.length === 0 && issue.code === "invalid_type") return sum + 100;
    return sum + (issue.code === "unrecognized_keys" ? issue.keys.length : 1);
  }, 0);
}

/** Issues of the union's branch that fits best; of all branches when none fits at all. */
function branchIssues(issue: z.core.$ZodIssueInvalidUnion): Issue[] {
  const branches = issue.errors.map((issues) => ({ issues, misfit: misfit(issues) }));
  const least = Math.min(...branches.map((branch) => branch.misfit));
  const best = branches.filter((branch) => branch.misfit === least);
  const chosen = least >= 100 ? best.flatMap((branch) => branch.issues) : (best[0]?.issues ?? []);
  return chosen.map((inner) => ({ ...inner, path: [...issue.path, ...inner.path] }));
}

/** Every finding of a schema about `data`, unions reported by their best-fitting branch. */
export function findings(schema: z.core.$ZodType, data: unknown, issues: readonly Issue[]): Finding[] {
  const found = issues.flatMap((issue) =>
    issue.code === "invalid_union" ? ofUnion(schema, data, issue) : one(schema, data, issue),
  );
  // A key that is misspelt is not missing as well.
  const meant = new Set(
    found.flatMap((f) =>
      f.code === "unknown-key" && f.suggestion !== null ? [dotted([...f.path.slice(0, -1), f.suggestion])] : [],
    ),
  );
  return found.filter((f) => f.code !== "missing-key" || !meant.has(dotted(f.path)));
}

function ofUnion(schema: z.core.$ZodType, data: unknown, issue: z.core.$ZodIssueInvalidUnion): Finding[] {
  const inner = findings(schema, data, branchIssues(issue));
  const [first] = inner;
  const sameValue =
    inner.length > 1 && inner.every((f) => f.code === "wrong-value" && dotted(f.path) === dotted(issue.path));
  if (first === undefined || !sameValue) return inner;
  const expected = [...new Set(inner.map((f) => f.expected))].join(", or ");
  return [{ ...first, expected }];
}

function one(schema: z.core.$ZodType, data: unknown, issue: Issue): Finding[] {
  const { path } = issue;
  if (issue.code === "unrecognized_keys") {
    const present = valueAt(data, path);
    const taken = new Set(typeof present === "object" && present !== null ? Object.keys(present) : []);
    const free = keysAt(schema, path).filter((key) => !taken.has(key));
    return issue.keys.map((key) => ({
      code: "unknown-key",
      path: [...path, key],
      what: "key",
      found: key,
      expected: free.join(", "),
      suggestion: near(key, free),
    }));
  }
  const value = valueAt(data, path);
  const key = path.at(-1);
  const missing = value === undefined && typeof key === "string";
  if (missing)
    return [{ code: "missing-key", path, what: "value", found: "", expected: expectedBy(issue), suggestion: null }];
  const words = issue.code === "invalid_value" ? issue.values.map(String) : [];
  const what = issue.code === "invalid_key" ? "key" : "value";
  const suggestion = typeof value === "string" ? near(value, words) : null;
  return [{ code: "wrong-value", path, what, found: quoted(value), expected: expectedBy(issue), suggestion }];
}
