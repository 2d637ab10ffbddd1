import { breaksOf, usesOf } from "./breaks.ts";
import { conditionKey } from "./condition.ts";
import type { Strand } from "./group.ts";
import { type Line, type LineContext, lineOf } from "./line.ts";
import type { MeasuredBy } from "./measured-by.ts";
import type { GoalReport } from "./schema.ts";

const NOBODY: MeasuredBy = { line: null, place: null };

/** One reading of just the balls that a zone's strands hold. */
function readingOf(metric: string, parts: readonly Strand[], strands: readonly Strand[]): Strand[] {
  return parts.flatMap((part) => {
    const rows = new Set(part.sessions.flatMap((session) => session.rows));
    const whole = strands.find(
      (strand) => strand.metric.id === metric && conditionKey(strand.condition) === conditionKey(part.condition),
    );
    if (whole === undefined) return [];
    const sessions = whole.sessions.map((session) => {
      const kept = session.rows.map((row) => rows.has(row));
      const only = <T>(list: readonly T[]) => list.filter((_, i) => kept[i]);
      return { ...session, values: only(session.values), rows: only(session.rows), by: only(session.by) };
    });
    return [{ ...whole, sessions: sessions.filter((session) => session.rows.length > 0) }];
  });
}

/**
 * The line of a zone's shares. It breaks where that of any reading breaks which the zone asks for: at another screen, and at a new game
 * bat where it asks for exit velocity. Bridges do not help: by how much a share would have been another nobody knows.
 *
 * @param parts   strands of the zone's derived metric, at least one
 * @param strands of all metrics, among them those that the zone asks for
 */
export function zoneLine(
  zone: NonNullable<GoalReport["zone"]>,
  parts: readonly Strand[],
  strands: readonly Strand[],
  context: LineContext,
): Line {
  const asked = { exit_velocity: zone.exitVelocity, launch_angle: zone.launchAngle, spray_angle: zone.spray };
  const broken = Object.entries(asked).some(([metric, range]) => {
    const read = range === null ? [] : readingOf(metric, parts, strands);
    return read.length > 0 && breaksOf(read, usesOf(read), context.setUps).length > 0;
  });
  // Who measured a ball is asked of its readings above: the share itself has no device.
  const shares = parts.map((part) => ({
    ...part,
    sessions: part.sessions.map((session) => ({ ...session, by: session.by.map(() => NOBODY) })),
  }));
  return { ...lineOf(shares, context), broken };
}
