import { fromBase64url, toBase64url } from "./base64url.ts";
import { type Bytes, utf8 } from "./bytes.ts";
import { decryptGcm, encryptGcm } from "./gcm.ts";

/** The parts of a compact JWE: RFC 7516, section 7.1. */
export interface Jwe {
  /** As it stands in the text: base64url of its JSON. Also the additional data, by section 5.1, step 14. */
  readonly header: string;
  /** Base64url of the encrypted key; empty where both sides have the key (`dir`). */
  readonly encryptedKey: string;
  readonly iv: Bytes;
  readonly ciphertext: Bytes;
  readonly tag: Bytes;
}

export const jweText = ({ header, encryptedKey, iv, ciphertext, tag }: Jwe): string =>
  [header, encryptedKey, ...[iv, ciphertext, tag].map(toBase64url)].join(".");

/** @throws when the text is not of five parts in base64url */
export function jweParts(text: string): Jwe {
  const [header = "", encryptedKey = "", ...more] = text.split(".");
  const [iv, ciphertext, tag, ...rest] = more.map(fromBase64url);
  if (!iv || !ciphertext || !tag || rest.length > 0) throw new Error("not a compact JWE");
  return { header, encryptedKey, iv, ciphertext, tag };
}

/** @param header base64url, see {@link Jwe} */
export async function encryptJwe(
  key: Bytes,
  iv: Bytes,
  { header, encryptedKey }: Pick<Jwe, "header" | "encryptedKey">,
  plaintext: Bytes,
): Promise<Jwe> {
  return { header, encryptedKey, iv, ...(await encryptGcm({ key, iv, aad: utf8(header) }, plaintext)) };
}

/** @throws when anything in it was changed, or the key is another */
export const decryptJwe = (key: Bytes, { header, iv, ciphertext, tag }: Jwe): Promise<Bytes> =>
  decryptGcm({ key, iv, aad: utf8(header) }, ciphertext, tag);
