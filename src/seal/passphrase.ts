import { type Bytes, joined, utf8 } from "./bytes.ts";
import { derived, KEY_BYTES } from "./derive.ts";

/** Rounds of PBKDF2 with SHA-256: OWASP Password Storage Cheat Sheet, "PBKDF2" (2023 and since). */
export const ROUNDS = 600_000;

/** Words as people type them: one form of every letter, no blanks around. */
const plain = (words: string): Bytes => utf8(words.normalize("NFKC").trim());

/** PBKDF2 with HMAC-SHA-256, RFC 8018 section 5.2. */
export async function stretched(words: Bytes, salt: Bytes, iterations: number): Promise<Bytes> {
  const key = await crypto.subtle.importKey("raw", words, "PBKDF2", false, ["deriveBits"]);
  const terms = { name: "PBKDF2", hash: "SHA-256", salt, iterations };
  return new Uint8Array(await crypto.subtle.deriveBits(terms, key, KEY_BYTES * 8));
}

/**
 * The key of a report that asks for a passphrase as well: nobody has it without the link's own key, and nobody with that alone.
 *
 * @param linkKey key that the link carries
 * @param token   of the link; the same words are another key under another link
 */
export async function withPassphrase(linkKey: Bytes, words: string, token: string): Promise<Bytes> {
  return derived(joined(linkKey, await stretched(plain(words), utf8(token), ROUNDS)), "winterbook seal 1 passphrase");
}
