/** One file inside a zip, as its central directory has it (PKWARE APPNOTE 6.3, section 4.3; from memory). */
export interface ZipEntry {
  readonly name: string;
  /** 0 stored, 8 deflated. */
  readonly method: number;
  readonly crc32: number;
  readonly packed: number;
  readonly size: number;
  /** Where its local header starts. */
  readonly offset: number;
}

/** The zip cannot be read; `detail` says why. */
export class BrokenZip extends Error {}

/** A size is kept elsewhere because it does not fit into 32 bits: more than any workbook here may hold. */
export const HIDDEN_SIZE = 0xffffffff;

const END = 0x06054b50;
const ENTRY = 0x02014b50;
const LOCAL = 0x04034b50;
const END_LENGTH = 22;
const LONGEST_COMMENT = 0xffff;
const ENCRYPTED = 1;

const viewOf = (bytes: Uint8Array): DataView => new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);

/**
 * Reads the central directory of a zip. Sizes are what the directory claims: 0xFFFFFFFF where it points to a zip64 record.
 *
 * @throws {BrokenZip} when there is none, or it does not hold what it promises
 */
export function zipDirectory(bytes: Uint8Array): ZipEntry[] {
  const view = viewOf(bytes);
  const end = endRecord(view);
  const count = view.getUint16(end + 10, true);
  let at = view.getUint32(end + 16, true);
  const entries: ZipEntry[] = [];
  const names = new Set<string>();
  for (let number = 0; number < count; number++) {
    if (at + 46 > end || view.getUint32(at, true) !== ENTRY) throw new BrokenZip("its directory is cut short");
    if ((view.getUint16(at + 8, true) & ENCRYPTED) !== 0) throw new BrokenZip("it is protected by a password");
    const length = view.getUint16(at + 28, true);
    const name = Buffer.from(bytes.subarray(at + 46, at + 46 + length)).toString("utf8");
    if (names.has(name)) throw new BrokenZip("two files inside it have one name");
    names.add(name);
    entries.push({
      name,
      method: view.getUint16(at + 10, true),
      crc32: view.getUint32(at + 16, true),
      packed: view.getUint32(at + 20, true),
      size: view.getUint32(at + 24, true),
      offset: view.getUint32(at + 42, true),
    });
    at += 46 + length + view.getUint16(at + 30, true) + view.getUint16(at + 32, true);
  }
  return entries;
}

function endRecord(view: DataView): number {
  const last = view.byteLength - END_LENGTH;
  for (let at = last; at >= Math.max(0, last - LONGEST_COMMENT); at--) if (view.getUint32(at, true) === END) return at;
  throw new BrokenZip("its end is missing");
}

/**
 * Packed bytes of an entry.
 *
 * @throws {BrokenZip} when they do not lie where the directory says
 */
export function packedBytes(bytes: Uint8Array, { offset, packed }: ZipEntry): Uint8Array {
  const view = viewOf(bytes);
  if (offset + 30 > bytes.length || view.getUint32(offset, true) !== LOCAL)
    throw new BrokenZip("its directory points to nothing");
  const from = offset + 30 + view.getUint16(offset + 26, true) + view.getUint16(offset + 28, true);
  if (from + packed > bytes.length) throw new BrokenZip("a file inside it is cut short");
  return bytes.subarray(from, from + packed);
}

/** A zip that holds these files unpacked. */
export function storedZip(
  files: readonly { readonly name: string; readonly crc32: number; readonly body: Uint8Array }[],
): Buffer {
  const pieces: Uint8Array[] = [];
  const directory: Uint8Array[] = [];
  let offset = 0;
  for (const { name, crc32, body } of files) {
    const title = Buffer.from(name, "utf8");
    const facts = Buffer.alloc(26);
    facts.writeUInt16LE(20, 0);
    facts.writeUInt32LE(crc32, 10);
    facts.writeUInt32LE(body.length, 14);
    facts.writeUInt32LE(body.length, 18);
    facts.writeUInt16LE(title.length, 22);
    const local = Buffer.alloc(4);
    local.writeUInt32LE(LOCAL, 0);
    pieces.push(local, facts, title, body);
    const entry = Buffer.alloc(6);
    entry.writeUInt32LE(ENTRY, 0);
    entry.writeUInt16LE(20, 4);
    const rest = Buffer.alloc(14);
    rest.writeUInt32LE(offset, 10);
    directory.push(entry, facts, rest, title);
    offset += 30 + title.length + body.length;
  }
  const size = directory.reduce((sum, piece) => sum + piece.length, 0);
  const end = Buffer.alloc(END_LENGTH);
  end.writeUInt32LE(END, 0);
  end.writeUInt16LE(files.length, 8);
  end.writeUInt16LE(files.length, 10);
  end.writeUInt32LE(size, 12);
  end.writeUInt32LE(offset, 16);
  return Buffer.concat([...pieces, ...directory, end]);
}
