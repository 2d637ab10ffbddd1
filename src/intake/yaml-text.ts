import { isMap, isNode, isScalar, LineCounter, parseDocument } from "yaml";
import type { Place } from "../schema/season.ts";

type Path = readonly PropertyKey[];

/** YAML that was read, with the way back from a path to its place in the file. */
export interface YamlText {
  /** Plain data; null when there is nothing. */
  readonly data: unknown;
  /** Place of the key or of the value at `path`; that of the nearest thing around it when there is none. */
  at(path: Path, what: "key" | "value"): Place;
}

/** What the YAML library could not make sense of. */
export interface YamlFault {
  readonly at: Place;
  /** Its own words, first line. */
  readonly detail: string;
}

const MOST_ALIASES = 20;

/**
 * Reads YAML (or JSON, which is YAML) and keeps the positions of everything in it. Days such as 2025-10-06 stay text.
 *
 * @param firstLine line of the file on which `text` starts, from 1
 */
export function readYaml(file: string, text: string, firstLine: number): YamlText | { readonly faults: YamlFault[] } {
  const counter = new LineCounter();
  const doc = parseDocument(text, {
    version: "1.2",
    schema: "core",
    merge: false,
    uniqueKeys: true,
    prettyErrors: false,
    lineCounter: counter,
  });
  const place = (offset: number): Place => {
    const { line, col } = counter.linePos(offset);
    return { file, line: line + firstLine - 1, column: col };
  };
  if (doc.errors.length > 0) {
    const faults = doc.errors.map((error) => ({ at: place(error.pos[0]), detail: error.message.split("\n")[0] ?? "" }));
    return { faults };
  }
  let data: unknown;
  try {
    data = doc.toJS({ maxAliasCount: MOST_ALIASES });
  } catch (error) {
    const detail = error instanceof Error ? error.message : String(error);
    return { faults: [{ at: { file, line: firstLine, column: 1 }, detail }] };
  }
  const keyOffset = (path: Path): number | null => {
    const parent = doc.getIn(path.slice(0, -1), true);
    if (!isMap(parent)) return null;
    const pair = parent.items.find((item) => isScalar(item.key) && String(item.key.value) === String(path.at(-1)));
    return isNode(pair?.key) ? (pair.key.range?.[0] ?? null) : null;
  };
  const valueOffset = (path: Path): number | null => {
    const node = doc.getIn(path, true);
    return isNode(node) ? (node.range?.[0] ?? null) : null;
  };
  const at = (path: Path, what: "key" | "value"): Place => {
    if (path.length === 0) return { file, line: 1, column: 1 };
    const offset = what === "key" ? (keyOffset(path) ?? valueOffset(path)) : (valueOffset(path) ?? keyOffset(path));
    return offset === null ? at(path.slice(0, -1), what) : place(offset);
  };
  return { data, at };
}
