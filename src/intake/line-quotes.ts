const QUOTE = 34;
const RETURN = 13;

/**
 * What the quotation marks of one line make of it.
 *
 * `bare`: no cell begins with one, so that those inside cells are text, as in `33" bat`. `broken`: one closes a cell in the
 * middle, or stands inside a cell beside others that are quoted. `open`: a cell goes on behind the line. `sound`: all closed.
 */
export type LineQuotes = "bare" | "broken" | "open" | "sound";

/** Looks at the line that starts at `from`, and where the next one starts. */
export function lineQuotes(
  bytes: Uint8Array,
  from: number,
  mark: number,
  newline: number,
): { readonly quotes: LineQuotes; readonly next: number } {
  const found = bytes.indexOf(newline, from);
  const end = found === -1 ? bytes.length : found;
  const next = found === -1 ? bytes.length : found + 1;
  let quoted = false;
  let inside = false;
  for (let at = from; at < end; ) {
    if (bytes[at] === QUOTE) {
      quoted = true;
      const close = closing(bytes, at + 1, end);
      if (close === -1) return { quotes: "open", next };
      at = close + 1;
      if (at < end && bytes[at] !== mark && !(bytes[at] === RETURN && at + 1 === end))
        return { quotes: "broken", next };
    }
    while (at < end && bytes[at] !== mark) inside = bytes[at++] === QUOTE || inside;
    at++;
  }
  return { quotes: !quoted ? "bare" : inside ? "broken" : "sound", next };
}

/** The mark that closes a cell: the first that is not doubled. */
function closing(bytes: Uint8Array, from: number, end: number): number {
  for (let at = from; at < end; at++) {
    if (bytes[at] !== QUOTE) continue;
    if (at + 1 < end && bytes[at + 1] === QUOTE) at++;
    else return at;
  }
  return -1;
}
