import type { Strand } from "../group.ts";
import { bySession } from "../sessions.ts";

/** More than a fifth of the swings: the pool is no longer the same mixture. */
const MOST_MOVED = 0.2;

/**
 * Did the mix of a pool's parts move between the first and the last third of its sessions? Measured as the share of swings that would have
 * to change their part (half the sum of the differences of shares).
 *
 * @param parts the strands of the pool; one part never moves
 */
export function mixMoved(parts: readonly Strand[]): boolean {
  if (parts.length < 2) return false;
  const named = new Map(
    parts.flatMap(({ sessions }) => sessions).map((one) => [`${one.date} ${one.session ?? ""}`, one]),
  );
  const names = [...named].sort(([, a], [, b]) => bySession(a, b)).map(([name]) => name);
  const third = Math.max(1, Math.floor(names.length / 3));
  const shares = (chosen: ReadonlySet<string>) => {
    const counts = parts.map(({ sessions }) =>
      sessions.reduce((sum, one) => sum + (chosen.has(`${one.date} ${one.session ?? ""}`) ? one.values.length : 0), 0),
    );
    const all = counts.reduce((sum, n) => sum + n, 0);
    return counts.map((n) => n / all);
  };
  const before = shares(new Set(names.slice(0, third)));
  const after = shares(new Set(names.slice(-third)));
  const moved = before.reduce((sum, share, i) => sum + Math.abs(share - after[i]!), 0) / 2;
  return moved > MOST_MOVED + 1e-12;
}
