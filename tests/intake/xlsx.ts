import { deflateRawSync } from "node:zlib";

/** CRC-32 as zip has it (polynomial 0xEDB88320). */
export function crc32(bytes: Uint8Array): number {
  let crc = 0xffffffff;
  for (const byte of bytes) {
    crc ^= byte;
    for (let bit = 0; bit < 8; bit++) crc = (crc >>> 1) ^ (crc & 1 ? 0xedb88320 : 0);
  }
  return (crc ^ 0xffffffff) >>> 0;
}

/** A day, or day and clock, or a clock alone, as a workbook keeps it: days since the end of 1899. */
export interface Serial {
  readonly serial: number;
  readonly show: "day" | "clock" | "both";
}
export type SheetCell = string | number | boolean | Serial | null;

const DAY_ZERO = Date.UTC(1899, 11, 30);
const MS_PER_DAY = 86_400_000;
const STYLES = { day: 1, clock: 2, both: 3 } as const;

/** @param iso `2025-10-06`, `17:05:09` or `2025-10-06T17:05:09` */
export function serial(iso: string): Serial {
  if (!iso.includes("-")) return { serial: Date.parse(`1970-01-01T${iso}Z`) / MS_PER_DAY, show: "clock" };
  const ms = Date.parse(iso.includes("T") ? `${iso}Z` : iso);
  return { serial: (ms - DAY_ZERO) / MS_PER_DAY, show: iso.includes("T") ? "both" : "day" };
}

const escaped = (text: string): string =>
  text.replaceAll("&", "&amp;").replaceAll("<", "&lt;").replaceAll(">", "&gt;").replaceAll('"', "&quot;");

function columnName(index: number): string {
  const last = String.fromCharCode(65 + (index % 26));
  return index < 26 ? last : columnName(Math.floor(index / 26) - 1) + last;
}

function cellXml(cell: SheetCell, at: string): string {
  if (cell === null) return "";
  if (typeof cell === "string")
    return `<c r="${at}" t="inlineStr"><is><t xml:space="preserve">${escaped(cell)}</t></is></c>`;
  if (typeof cell === "boolean") return `<c r="${at}" t="b"><v>${cell ? 1 : 0}</v></c>`;
  if (typeof cell === "number") return `<c r="${at}"><v>${cell}</v></c>`;
  return `<c r="${at}" s="${STYLES[cell.show]}"><v>${cell.serial}</v></c>`;
}

const MAIN = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";
const RELATIONS = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";
const PACKAGE = "http://schemas.openxmlformats.org/package/2006/relationships";

export function sheetXml(rows: readonly (readonly SheetCell[])[]): string {
  const body = rows.map((row, index) => {
    const cells = row.map((cell, column) => cellXml(cell, `${columnName(column)}${index + 1}`));
    return row.length === 0 ? "" : `<row r="${index + 1}">${cells.join("")}</row>`;
  });
  return `<?xml version="1.0" encoding="UTF-8"?><worksheet xmlns="${MAIN}"><sheetData>${body.join("")}</sheetData></worksheet>`;
}

/** The files inside a workbook (ECMA-376, the parts that cannot be left out). */
export function workbookParts(sheets: Readonly<Record<string, string>>): Record<string, string> {
  const names = Object.keys(sheets);
  const each = (make: (name: string, number: number) => string) => names.map((name, i) => make(name, i + 1)).join("");
  return {
    "[Content_Types].xml": '<Types xmlns="http://schemas.openxmlformats.org/package/2006/content-types"/>',
    "xl/workbook.xml": `<workbook xmlns="${MAIN}" xmlns:r="${RELATIONS}"><sheets>${each((name, n) => `<sheet name="${escaped(name)}" sheetId="${n}" r:id="rId${n}"/>`)}</sheets></workbook>`,
    "xl/_rels/workbook.xml.rels": `<Relationships xmlns="${PACKAGE}">${each((_, n) => `<Relationship Id="rId${n}" Type="${RELATIONS}/worksheet" Target="worksheets/sheet${n}.xml"/>`)}<Relationship Id="rId99" Type="${RELATIONS}/styles" Target="styles.xml"/></Relationships>`,
    "xl/styles.xml": `<styleSheet xmlns="${MAIN}"><numFmts count="2"><numFmt numFmtId="164" formatCode="h:mm:ss"/><numFmt numFmtId="165" formatCode="yyyy-mm-dd hh:mm:ss"/></numFmts><cellXfs count="4"><xf numFmtId="0"/><xf numFmtId="14" applyNumberFormat="1"/><xf numFmtId="164" applyNumberFormat="1"/><xf numFmtId="165" applyNumberFormat="1"/></cellXfs></styleSheet>`,
    ...Object.fromEntries(names.map((name, index) => [`xl/worksheets/sheet${index + 1}.xml`, sheets[name] ?? ""])),
  };
}

/** What a directory may claim of a file against the truth. */
export interface Claim {
  readonly size?: number;
  readonly flags?: number;
}

/** Packs files as a zip; `claims` by name of file. */
export function zip(
  parts: Readonly<Record<string, string | Uint8Array>>,
  claims: Readonly<Record<string, Claim>> = {},
): Uint8Array {
  const local: Uint8Array[] = [];
  const directory: Uint8Array[] = [];
  let offset = 0;
  for (const [name, part] of Object.entries(parts)) {
    const body = Buffer.from(part);
    const packed = deflateRawSync(body);
    const title = Buffer.from(name);
    const facts = Buffer.alloc(26);
    facts.writeUInt16LE(20, 0);
    facts.writeUInt16LE(claims[name]?.flags ?? 0, 2);
    facts.writeUInt16LE(8, 4);
    facts.writeUInt32LE(crc32(body), 10);
    facts.writeUInt32LE(packed.length, 14);
    facts.writeUInt32LE(claims[name]?.size ?? body.length, 18);
    facts.writeUInt16LE(title.length, 22);
    const where = Buffer.alloc(14);
    where.writeUInt32LE(offset, 10);
    local.push(Buffer.from("PK\x03\x04"), facts, title, packed);
    directory.push(Buffer.from("PK\x01\x02\x14\0"), facts, where, title);
    offset += 30 + title.length + packed.length;
  }
  const end = Buffer.alloc(22);
  end.write("PK\x05\x06", 0, "latin1");
  end.writeUInt16LE(Object.keys(parts).length, 8);
  end.writeUInt16LE(Object.keys(parts).length, 10);
  end.writeUInt32LE(
    directory.reduce((sum, piece) => sum + piece.length, 0),
    12,
  );
  end.writeUInt32LE(offset, 16);
  return new Uint8Array(Buffer.concat([...local, ...directory, end]));
}

/** A workbook with these sheets. */
export const xlsx = (sheets: Readonly<Record<string, readonly (readonly SheetCell[])[]>>): Uint8Array =>
  zip(workbookParts(Object.fromEntries(Object.entries(sheets).map(([name, rows]) => [name, sheetXml(rows)]))));
