import { type Bytes, utf8 } from "./bytes.ts";

/** Bytes of every key. */
export const KEY_BYTES = 32;

/** HKDF with SHA-256 and no salt, RFC 5869: a key for one use, from which no other can be worked out. */
export async function derived(from: Bytes, use: string): Promise<Bytes> {
  const key = await crypto.subtle.importKey("raw", from, "HKDF", false, ["deriveBits"]);
  const terms = { name: "HKDF", hash: "SHA-256", salt: new Uint8Array(), info: utf8(use) };
  return new Uint8Array(await crypto.subtle.deriveBits(terms, key, KEY_BYTES * 8));
}
