import type { Disk, Found } from "../../src/schema/effects.ts";

/** Thrown where a test pulls the plug. */
export class PowerCut extends Error {}

/**
 * A disk in memory. `stopAfter` operations it stops, and a write or the removal of a folder may be half done by then, as on
 * a real disk: a folder is removed file by file, a write is torn in two. Renames are whole.
 */
export class MemoryDisk implements Disk {
  readonly files: Map<string, Uint8Array>;
  readonly modes = new Map<string, number>();
  operations = 0;
  stopAfter = Number.POSITIVE_INFINITY;

  constructor(files: Readonly<Record<string, string>> = {}) {
    this.files = new Map(Object.entries(files).map(([path, text]) => [path, Buffer.from(text)]));
  }

  private step(): void {
    if (this.operations >= this.stopAfter) throw new PowerCut(`stopped after ${this.stopAfter}`);
    this.operations++;
  }

  private under(folder: string): string[] {
    return [...this.files.keys()].filter((path) => path === folder || path.startsWith(`${folder}/`)).sort();
  }

  text(path: string): string | null {
    const body = this.files.get(path);
    return body ? Buffer.from(body).toString("utf8") : null;
  }

  /** Everything below a folder, as text. */
  tree(folder: string): Record<string, string> {
    const from = folder.length + 1;
    return Object.fromEntries(this.under(folder).map((path) => [path.slice(from), this.text(path) ?? ""]));
  }

  async read(path: string): Promise<Uint8Array> {
    const body = this.files.get(path);
    if (!body) throw new Error(`ENOENT ${path}`);
    return body;
  }

  async list(folder: string): Promise<Found[]> {
    return this.under(folder).map((path) => ({ path: path.slice(folder.length + 1), kind: "file" }));
  }

  async exists(path: string): Promise<boolean> {
    return this.under(path).length > 0;
  }

  async write(path: string, body: string | Uint8Array, mode?: number): Promise<void> {
    const bytes = Buffer.from(body);
    this.step();
    this.files.set(path, bytes.subarray(0, bytes.length >> 1));
    this.step();
    this.files.set(path, bytes);
    if (mode !== undefined) this.modes.set(path, mode);
  }

  async create(path: string, body: string, mode?: number): Promise<boolean> {
    if (this.files.has(path)) return false;
    this.step();
    this.files.set(path, Buffer.from(body));
    if (mode !== undefined) this.modes.set(path, mode);
    return true;
  }

  async makeFolder(path: string, mode?: number): Promise<void> {
    if (mode !== undefined) this.modes.set(path, mode);
  }

  async rename(from: string, to: string): Promise<void> {
    this.step();
    const moved = this.under(from);
    if (moved.length === 0) throw new Error(`ENOENT ${from}`);
    const isFile = this.files.has(from);
    if (!isFile && this.under(to).length > 0) throw new Error(`ENOTEMPTY ${to}`);
    for (const path of moved) {
      this.files.set(to + path.slice(from.length), this.files.get(path)!);
      this.files.delete(path);
    }
  }

  async remove(path: string): Promise<void> {
    for (const found of this.under(path)) {
      this.step();
      this.files.delete(found);
    }
  }
}
