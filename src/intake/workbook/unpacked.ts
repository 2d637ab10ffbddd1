import { inflateRawSync } from "node:zlib";
import { extentOf } from "./sheet-extent.ts";
import { WorkbookFault } from "./workbook-fault.ts";
import { BrokenZip, HIDDEN_SIZE, packedBytes, storedZip, type ZipEntry, zipDirectory } from "./zip-directory.ts";

/** More than this is no list of swings, unpacked. */
export const MOST_BYTES = 200 * 1024 * 1024;
/** Rows times columns that one sheet may span: a single cell in a far corner would fill memory with blanks. */
const MOST_CELLS = 10_000_000;

const isRead = ({ name }: ZipEntry): boolean => name.endsWith(".xml") || name.endsWith(".xml.rels");

/**
 * The workbook with everything in it unpacked and held against what its directory claims, so that reading it can bring no
 * surprise. Its size is judged before anything is unpacked.
 *
 * @returns a zip of the parts that a reader of tables needs, stored without compression
 * @throws {WorkbookFault} when it is too large, holds macros, or is broken
 */
export function unpackedWorkbook(bytes: Uint8Array): Buffer {
  try {
    const entries = zipDirectory(bytes);
    const total = entries.reduce((sum, { size }) => sum + size, 0);
    const hidden = entries.some(({ size, packed }) => size === HIDDEN_SIZE || packed === HIDDEN_SIZE);
    if (hidden || total > MOST_BYTES)
      throw tooLarge(hidden ? "more than 4000" : String(Math.ceil(total / 1024 / 1024)));
    if (entries.some(({ name }) => /vbaProject\.bin$/i.test(name))) throw new WorkbookFault("workbook-with-macros");
    const files = entries.filter(isRead).map((entry) => ({ ...entry, body: unpacked(bytes, entry) }));
    for (const { name, body } of files) if (/(^|\/)worksheets\/[^/]+\.xml$/.test(name)) judgeExtent(body);
    return storedZip(files);
  } catch (error) {
    if (error instanceof BrokenZip) throw new WorkbookFault("broken-workbook", { detail: error.message });
    throw error;
  }
}

const tooLarge = (size: string): WorkbookFault =>
  new WorkbookFault("workbook-too-large", { size, most: MOST_BYTES / 1024 / 1024 });

function unpacked(bytes: Uint8Array, entry: ZipEntry): Uint8Array {
  const packed = packedBytes(bytes, entry);
  const lies = new BrokenZip("a file inside it is not as large as its directory says");
  if (entry.method === 0) {
    if (packed.length !== entry.size) throw lies;
    return packed;
  }
  if (entry.method !== 8) throw new BrokenZip("it is packed in a way that is not read");
  let body: Uint8Array;
  try {
    body = inflateRawSync(packed, { maxOutputLength: Math.max(1, entry.size) });
  } catch (error) {
    const overflow =
      error instanceof RangeError ||
      (error instanceof Error && "code" in error && error.code === "ERR_BUFFER_TOO_LARGE");
    throw overflow ? lies : new BrokenZip("a file inside it is damaged");
  }
  if (body.length !== entry.size) throw lies;
  return body;
}

function judgeExtent(sheet: Uint8Array): void {
  const { rows, columns } = extentOf(sheet);
  if (rows * columns > MOST_CELLS) throw new WorkbookFault("workbook-too-wide", { rows, columns });
}
