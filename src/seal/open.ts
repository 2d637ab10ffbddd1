import type { Bytes } from "./bytes.ts";
import { inflated } from "./deflate.ts";
import { decryptJwe, jweParts } from "./jwe.ts";

/** `{"alg":"dir","enc":"A256GCM","zip":"DEF"}`: the only kind of message that we write or open. */
export const HEADER = "eyJhbGciOiJkaXIiLCJlbmMiOiJBMjU2R0NNIiwiemlwIjoiREVGIn0";

/**
 * What was sealed.
 *
 * @param text compact JWE
 * @param key  32 bytes
 * @throws when it was changed in any place, or the key is another: nothing of it can be had then
 */
export async function opened(text: string, key: Bytes): Promise<Bytes> {
  const jwe = jweParts(text);
  if (jwe.header !== HEADER || jwe.encryptedKey !== "") throw new Error("not ours");
  return inflated(await decryptJwe(key, jwe));
}
