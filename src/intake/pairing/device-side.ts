import type { Sides } from "../log/streams.ts";
import type { SwingFile } from "../swing-file.ts";

/** What a file measures: the bat alone, the ball alone; null for both, neither, or a mapping that forbids pairing. */
export function deviceSide({ table, plan }: SwingFile, { bat, ball }: Sides): "bat" | "ball" | null {
  if (plan === null || !plan.pairs) return null;
  const fields = [...table.fieldNumbers.keys()];
  const [hasBat, hasBall] = [fields.some((field) => bat.has(field)), fields.some((field) => ball.has(field))];
  return hasBat === hasBall ? null : hasBat ? "bat" : "ball";
}
