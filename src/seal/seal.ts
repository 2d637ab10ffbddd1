import { type Bytes, utf8 } from "./bytes.ts";
import { deflated } from "./deflate.ts";
import { derived } from "./derive.ts";
import { encryptJwe, jweText } from "./jwe.ts";
import { HEADER } from "./open.ts";

/** Bytes of an IV: 96 bits, the length that GCM uses as it is. */
const IV_BYTES = 12;

/** Keys of one link, 32 bytes each. */
export interface SealKeys {
  readonly content: Bytes;
  readonly iv: Bytes;
}

/**
 * Keys of one link, by HKDF from the season's secret: the same from build to build, others for every other holder.
 *
 * @param holder whom the link is for, how often it was replaced included, in a form that is no other holder's
 */
export async function sealKeys(secret: Bytes, holder: string): Promise<SealKeys> {
  const [content, iv] = await Promise.all([
    derived(secret, `winterbook seal 1 content ${holder}`),
    derived(secret, `winterbook seal 1 iv ${holder}`),
  ]);
  return { content, iv };
}

/** The first 96 bits of HMAC-SHA-256 of a text: another text has another IV, the same text the same. */
export async function ivFor(ivKey: Bytes, text: Bytes): Promise<Bytes> {
  const key = await crypto.subtle.importKey("raw", ivKey, { name: "HMAC", hash: "SHA-256" }, false, ["sign"]);
  return new Uint8Array(await crypto.subtle.sign("HMAC", key, text)).slice(0, IV_BYTES);
}

/**
 * Seals bytes: compressed, then encrypted as compact JWE (RFC 7516; `dir`, A256GCM, DEF).
 *
 * The IV is worked out from the very bytes that are encrypted, which are the compressed ones: two machines may compress one text differently, and one IV
 * for two different messages would give the key's secrets away.
 */
export async function sealed(bytes: Bytes | string, { content, iv: ivKey }: SealKeys): Promise<string> {
  const plaintext = await deflated(typeof bytes === "string" ? utf8(bytes) : bytes);
  const iv = await ivFor(ivKey, plaintext);
  return jweText(await encryptJwe(content, iv, { header: HEADER, encryptedKey: "" }, plaintext));
}
