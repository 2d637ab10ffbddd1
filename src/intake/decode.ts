import { isUtf8 } from "node:buffer";

/**
 * Text of a UTF-8 file, byte order mark taken off, line ends as `\n`.
 *
 * @returns null when the bytes are not UTF-8
 */
export function decode(bytes: Uint8Array): string | null {
  if (!isUtf8(bytes)) return null;
  return new TextDecoder("utf-8").decode(bytes).replaceAll("\r\n", "\n");
}
