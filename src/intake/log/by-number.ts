import type { ResolvedBlock } from "./resolve.ts";
import type { Stream } from "./streams.ts";

/** Whether a stream's device would have seen the block: it was there, then, and measures what was measured. */
export function mayHold(stream: Stream, athlete: string | null, block: ResolvedBlock): boolean {
  if (block.day !== stream.day || (athlete !== null && block.athlete !== athlete)) return false;
  const { speed, flight } = stream.measures;
  if (block.measured === "none") return false;
  if (block.measured === "speed" && flight && !speed) return false;
  if (block.measured === "flight" && speed && !flight) return false;
  const same = (one: string | null, other: string | null): boolean => one === null || other === null || one === other;
  return same(stream.session, block.session) && same(stream.lane, block.lane) && same(stream.site, block.site);
}

/** Rows of a stream by the number of the block that they carry; those without come last, under null. */
export function byNumber<T>(rows: readonly T[], numberOf: (row: T) => string | null): Map<string | null, T[]> {
  const groups = new Map<string | null, T[]>();
  const unnumbered: T[] = [];
  for (const row of rows) {
    const number = numberOf(row);
    if (number === null) unnumbered.push(row);
    else groups.set(number, [...(groups.get(number) ?? []), row]);
  }
  if (unnumbered.length > 0) groups.set(null, unnumbered);
  return groups;
}
