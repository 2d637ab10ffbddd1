import { createHmac } from "node:crypto";
import type { Reader } from "../schema/reasons.ts";

/** Whom a link is for. Raising `rotation` makes the old link dead. */
export interface LinkHolder {
  readonly athlete: string;
  readonly recipient: string;
  readonly reader: Reader;
  readonly rotation: number;
}

const ALPHABET = "abcdefghijklmnopqrstuvwxyz234567";
/** 160 bits: 32 letters without padding, safe on disks that do not tell capitals apart. */
const BYTES = 20;

/** What a token looks like, without anchors. */
export const TOKEN_PATTERN = "[a-z2-7]{32}";

/**
 * Base32 as RFC 4648 section 6, in lower case and without padding.
 *
 * @param bytes any number of bytes; none give an empty text
 */
export function base32(bytes: Uint8Array): string {
  let text = "";
  let held = 0;
  let bits = 0;
  for (const byte of bytes) {
    held = (held << 8) | byte;
    bits += 8;
    while (bits >= 5) {
      bits -= 5;
      text += ALPHABET[(held >>> bits) & 31];
    }
    held &= (1 << bits) - 1;
  }
  return bits > 0 ? text + ALPHABET[(held << (5 - bits)) & 31] : text;
}

/** A holder as a text that is no other holder's. Keys in this order for ever: another order is another token. */
export const holderText = ({ athlete, recipient, reader, rotation }: LinkHolder): string =>
  JSON.stringify({ v: 1, athlete, recipient, reader, rotation });

/**
 * The unguessable part of a link: the first 160 bits of HMAC-SHA-256 (RFC 2104) of the holder under the season's secret.
 * The same from build to build.
 *
 * @param secret 32 bytes
 * @returns 32 letters and digits
 */
export function tokenFor(secret: Uint8Array, holder: LinkHolder): string {
  const digest = createHmac("sha256", secret).update(holderText(holder), "utf8").digest();
  return base32(digest.subarray(0, BYTES));
}
