/** One entry found below a folder. Links and special files are listed so that they can be refused by name. */
export interface Found {
  /** Relative to the folder asked for, with forward slashes. */
  readonly path: string;
  readonly kind: "file" | "link" | "other";
}

/** The disk, as the stages see it. Paths are absolute. */
export interface Disk {
  /** @throws when the file cannot be read */
  read(path: string): Promise<Uint8Array>;
  /** Size in bytes and time of the last change in milliseconds; null when the file is not there. */
  look?(path: string): Promise<{ readonly size: number; readonly changed: number } | null>;
  /** Everything below `folder` in order of code points of its path; nothing when the folder is not there. */
  list(folder: string): Promise<Found[]>;
  exists(path: string): Promise<boolean>;
  /** Makes missing folders; `mode` as for chmod. */
  write(path: string, body: string | Uint8Array, mode?: number): Promise<void>;
  /** Writes a file that must not be there yet. False when it is. */
  create(path: string, body: string, mode?: number): Promise<boolean>;
  makeFolder(path: string, mode?: number): Promise<void>;
  rename(from: string, to: string): Promise<void>;
  /** Removes a file or a whole folder; nothing happens when it is not there. */
  remove(path: string): Promise<void>;
}

/** The outside world, handed in: a build with the same effects is the same build. */
export interface Effects {
  readonly disk: Disk;
  /** Milliseconds of a clock that only moves forward; for printed durations, never for a figure. */
  elapsedMs(): number;
  randomBytes(count: number): Uint8Array;
  /** One line for the person at the terminal. */
  log(line: string): void;
  /** How far a long stage has come. */
  progress(stage: string, done: number, of: number): void;
}
