import { type Bytes, joined } from "./bytes.ts";

/** Bytes of the authentication tag: 128 bits, the longest that GCM knows. */
export const TAG_BYTES = 16;

const keyFor = (key: Bytes, use: "encrypt" | "decrypt") => crypto.subtle.importKey("raw", key, "AES-GCM", false, [use]);

/** What goes into AES-GCM besides the text: NIST SP 800-38D, section 7. */
interface GcmTerms {
  /** 16 or 32 bytes. */
  readonly key: Bytes;
  /** Never twice with one key for two different texts. 96 bits in everything of ours. */
  readonly iv: Bytes;
  /** Not hidden, and may not be changed either. */
  readonly aad: Bytes;
}

/** @returns ciphertext of the length of `plaintext`, and its tag */
export async function encryptGcm(
  { key, iv, aad }: GcmTerms,
  plaintext: Bytes,
): Promise<{ ciphertext: Bytes; tag: Bytes }> {
  const terms = { name: "AES-GCM", iv, additionalData: aad, tagLength: TAG_BYTES * 8 };
  const both = new Uint8Array(await crypto.subtle.encrypt(terms, await keyFor(key, "encrypt"), plaintext));
  return { ciphertext: both.slice(0, -TAG_BYTES), tag: both.slice(-TAG_BYTES) };
}

/** @throws when any bit of key, IV, additional data, ciphertext or tag is not the one it was made with */
export async function decryptGcm({ key, iv, aad }: GcmTerms, ciphertext: Bytes, tag: Bytes): Promise<Bytes> {
  const terms = { name: "AES-GCM", iv, additionalData: aad, tagLength: TAG_BYTES * 8 };
  const both = joined(ciphertext, tag);
  return new Uint8Array(await crypto.subtle.decrypt(terms, await keyFor(key, "decrypt"), both));
}
