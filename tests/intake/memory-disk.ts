import type { Disk, Effects, Found } from "../../src/schema/effects.ts";

/** What a memory disk may hold below its folders: text or bytes of a file, or a link. */
export type Entry = string | Uint8Array | { readonly link: string };

const bytesOf = (entry: string | Uint8Array): Uint8Array =>
  typeof entry === "string" ? new TextEncoder().encode(entry) : entry;

/** By code point, as the real disk lists. */
const byCodePoint = (one: string, other: string): number => Buffer.compare(Buffer.from(one), Buffer.from(other));

/**
 * A disk that is nothing but a map from absolute paths to entries.
 *
 * @param entries absolute path -> content; changed by writes
 */
export function memoryDisk(entries: Map<string, Entry>): Disk {
  const below = (folder: string): string[] => [...entries.keys()].filter((path) => path.startsWith(`${folder}/`));
  const put = (path: string, body: string | Uint8Array): void => {
    entries.set(path, body);
  };
  return {
    read: async (path) => {
      const entry = entries.get(path);
      if (typeof entry === "string" || entry instanceof Uint8Array) return bytesOf(entry);
      throw new Error(`no file ${path}`);
    },
    list: async (folder) =>
      below(folder)
        .map((path): Found => {
          const entry = entries.get(path);
          const kind = typeof entry === "object" && "link" in entry ? "link" : "file";
          return { path: path.slice(folder.length + 1), kind };
        })
        .sort((one, other) => byCodePoint(one.path, other.path)),
    exists: async (path) => entries.has(path) || below(path).length > 0,
    write: async (path, body) => put(path, body),
    create: async (path, body) => {
      if (entries.has(path)) return false;
      put(path, body);
      return true;
    },
    makeFolder: async () => {},
    rename: async (from, to) => {
      for (const path of [from, ...below(from)]) {
        const entry = entries.get(path);
        if (entry === undefined) continue;
        entries.delete(path);
        entries.set(to + path.slice(from.length), entry);
      }
    },
    remove: async (path) => {
      for (const one of [path, ...below(path)]) entries.delete(one);
    },
  };
}

/** Effects over a memory disk; clock and randomness stand still. */
export function memoryEffects(entries: Map<string, Entry>): Effects {
  return {
    disk: memoryDisk(entries),
    elapsedMs: () => 0,
    randomBytes: (count) => new Uint8Array(count),
    log: () => {},
    progress: () => {},
  };
}
