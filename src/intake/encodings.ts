import { isUtf8 } from "node:buffer";
import type { Encoding } from "../schema/mapping.ts";
import { utf16Order } from "./table-kind.ts";

/**
 * The encoding that the bytes themselves prove: a byte order mark, the zeros of UTF-16, or bytes that are UTF-8 throughout
 * (other encodings hit that by chance only without a letter beyond ASCII, where it makes no difference).
 *
 * @returns null when nothing is proven
 */
export function provenEncoding(bytes: Uint8Array): Encoding | null {
  return utf16Order(bytes) ?? (isUtf8(bytes) ? "utf-8" : null);
}

/** Windows-1252 at 0x80 to 0x9F (WHATWG Encoding Standard, index-windows-1252; from memory). The rest is Latin-1. */
const HIGH_CONTROLS =
  "\u20ac\u0081\u201a\u0192\u201e\u2026\u2020\u2021\u02c6\u2030\u0160\u2039\u0152\u008d\u017d\u008f" +
  "\u0090\u2018\u2019\u201c\u201d\u2022\u2013\u2014\u02dc\u2122\u0161\u203a\u0153\u009d\u017e\u0178";

const PIECE = 1 << 20;

/**
 * The same text as UTF-8. Bytes that stand for nothing in `encoding` become U+FFFD.
 *
 * @returns the bytes themselves where they are UTF-8 already
 */
export function toUtf8(bytes: Uint8Array, encoding: Encoding): Uint8Array {
  if (encoding === "utf-8") return bytes;
  const pieces: Uint8Array[] = [];
  const decoder = encoding === "windows-1252" ? null : new TextDecoder(encoding);
  const encoder = new TextEncoder();
  // Piece by piece: a whole file as one string would stand in memory three times over.
  for (let at = 0; at < bytes.length; at += PIECE) {
    const piece = bytes.subarray(at, at + PIECE);
    const last = at + PIECE >= bytes.length;
    pieces.push(encoder.encode(decoder === null ? windows1252(piece) : decoder.decode(piece, { stream: !last })));
  }
  return Buffer.concat(pieces);
}

const windows1252 = (bytes: Uint8Array): string =>
  Buffer.from(bytes.buffer, bytes.byteOffset, bytes.length)
    .toString("latin1")
    .replace(/[\x80-\x9f]/g, (sign) => HIGH_CONTROLS[sign.charCodeAt(0) - 0x80] ?? sign);
