/**
 * One swing file as typed columns of equal length, one entry a data row, kept or not. The stages after reading
 * (corrections, session log) write into the columns.
 */
export interface SwingTable {
  /** Index into the season's swing files. */
  readonly file: number;
  readonly n: number;
  /** Line on which each row starts, from 1. */
  readonly lines: Int32Array;
  /** 1 where the row was read in full. */
  readonly kept: Uint8Array;
  /** Index of the athlete; below 0 where the row names nobody, or several. */
  readonly athlete: Int32Array;
  /** Midnight of the day in UTC, epoch milliseconds. */
  readonly day: Float64Array;
  /** Field -> values in canonical units; NaN where the cell is blank. */
  readonly numbers: Map<string, Float64Array>;
  /** Field -> words; null where the cell is blank. */
  readonly words: Map<string, (string | null)[]>;
  /** Field -> what the mapping says for rows whose own cell is blank, in canonical form; not yet in the columns. */
  readonly fixed: ReadonlyMap<string, number | string>;
  /** Field -> number of the field in a row, from 1; only fields that the file itself holds. */
  readonly fieldNumbers: ReadonlyMap<string, number>;
}
