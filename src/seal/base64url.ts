import type { Bytes } from "./bytes.ts";

/** Base64 for addresses, RFC 4648 section 5, without padding. */
export function toBase64url(bytes: Uint8Array): string {
  let letters = "";
  for (const byte of bytes) letters += String.fromCharCode(byte);
  return btoa(letters).replace(/\+/g, "-").replace(/\//g, "_").replace(/=+$/, "");
}

/**
 * The bytes of a text in base64url.
 *
 * @throws for anything that {@link toBase64url} would not have written, bits behind the last byte included: of one message there is one text
 */
export function fromBase64url(text: string): Bytes {
  const letters = atob(text.replace(/-/g, "+").replace(/_/g, "/"));
  const bytes = Uint8Array.from(letters, (letter) => letter.charCodeAt(0));
  if (toBase64url(bytes) !== text) throw new Error("not base64url");
  return bytes;
}
