/** Bytes that lie in memory of their own, as WebCrypto wants them. */
export type Bytes = Uint8Array<ArrayBuffer>;

/** A text as UTF-8. */
export const utf8 = (text: string): Bytes => new TextEncoder().encode(text);

/** `parts`, one behind the other. */
export function joined(...parts: readonly Uint8Array[]): Bytes {
  const all = new Uint8Array(parts.reduce((sum, { length }) => sum + length, 0));
  let at = 0;
  for (const part of parts) {
    all.set(part, at);
    at += part.length;
  }
  return all;
}
