/** What the first bytes of a file say it is, whatever its name says. */
export type TableKind = "text" | "workbook" | "old-workbook" | "picture" | "pdf" | "archive" | "binary";

/** Signatures of formats that end up in the folder by mistake (each from its format's specification). */
const SIGNATURES: readonly (readonly [TableKind, readonly number[]])[] = [
  ["workbook", [0x50, 0x4b, 0x03, 0x04]],
  ["archive", [0x50, 0x4b, 0x05, 0x06]],
  ["old-workbook", [0xd0, 0xcf, 0x11, 0xe0, 0xa1, 0xb1, 0x1a, 0xe1]],
  ["picture", [0x89, 0x50, 0x4e, 0x47]],
  ["picture", [0xff, 0xd8, 0xff]],
  ["picture", [0x47, 0x49, 0x46, 0x38]],
  ["pdf", [0x25, 0x50, 0x44, 0x46, 0x2d]],
  ["archive", [0x1f, 0x8b, 0x08]],
  ["archive", [0x37, 0x7a, 0xbc, 0xaf, 0x27, 0x1c]],
  ["archive", [0x52, 0x61, 0x72, 0x21]],
];

const LOOKED_AT = 4096;
/** Text has none of these but for tab, line ends, form feed, end of file and escape. */
const isControl = (byte: number): boolean =>
  byte < 32 && byte !== 9 && byte !== 10 && byte !== 12 && byte !== 13 && byte !== 26 && byte !== 27;

/**
 * Tells text from everything else by what stands at the beginning of the file. A few NUL bytes in a text leave it text;
 * UTF-16 is text, see {@link utf16Order}.
 *
 * @param bytes an empty file is text
 */
export function tableKind(bytes: Uint8Array): TableKind {
  const signed = SIGNATURES.find(([, signature]) => signature.every((byte, at) => bytes[at] === byte));
  if (signed) return signed[0];
  if (utf16Order(bytes) !== null) return "text";
  // A power cut leaves zeros behind what was written.
  const start = bytes.subarray(0, LOOKED_AT);
  const head = start.subarray(0, start.findLastIndex((byte) => byte !== 0) + 1);
  const controls = head.reduce((count, byte) => count + (isControl(byte) ? 1 : 0), 0);
  return controls * 10 > head.length || (head.length === 0 && bytes.length > 0) ? "binary" : "text";
}

/**
 * Byte order of UTF-16 text: by its byte order mark, or because nearly every second byte of the beginning is zero, as in
 * text of Latin letters, digits and commas.
 *
 * @returns null for anything else
 */
export function utf16Order(bytes: Uint8Array): "utf-16le" | "utf-16be" | null {
  if (bytes[0] === 0xff && bytes[1] === 0xfe) return "utf-16le";
  if (bytes[0] === 0xfe && bytes[1] === 0xff) return "utf-16be";
  const pairs = Math.floor(Math.min(bytes.length, LOOKED_AT) / 2);
  if (pairs < 4) return null;
  let high = 0;
  let low = 0;
  for (let pair = 0; pair < pairs; pair++) {
    if (bytes[2 * pair] === 0) high++;
    if (bytes[2 * pair + 1] === 0) low++;
  }
  if (low > pairs * 0.6 && high < pairs * 0.05) return "utf-16le";
  return high > pairs * 0.6 && low < pairs * 0.05 ? "utf-16be" : null;
}
