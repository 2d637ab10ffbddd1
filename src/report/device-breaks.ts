import type { Metric } from "../schema/metric.ts";
import { DAY_MS, dayOf, isoDay } from "./calendar.ts";
import type { DeviceLine } from "./device-lines.ts";
import type { MeasuredBy } from "./measured-by.ts";
import type { Series } from "./schema.ts";

/** A day from which a series was measured otherwise. */
export interface Break {
  readonly date: string;
  readonly kind: Series["breaks"][number]["kind"];
  readonly to: string;
  /** Line of devices.csv that measured from then on; null for a bat, or where the files cannot tell. */
  readonly line: number | null;
}

/** What measured a series on a day, and how many of its reps. */
export interface Use extends MeasuredBy {
  readonly date: string;
  readonly n: number;
}

const REPLACED = { bat: "bat-sensor", ball: "ball-screen", own: "device" } as const;

/** What changed for a series when a line of devices.csv began: another device, or the same one in another set-up. */
function kindOf(line: DeviceLine, uses: readonly Use[], lines: readonly DeviceLine[], metric: Metric): Break["kind"] {
  const before = line.before === null ? undefined : lines[line.before];
  if (before === undefined || !uses.some((use) => use.line === before.index)) return REPLACED[metric.side];
  const stayed = (["site", "lane", "point_on_bat"] as const).every((key) => before[key] === line[key]);
  return stayed && before.firmware !== line.firmware ? "firmware" : "set-up";
}

/** Lines that came into use inside the series: a replacement, new firmware, another lane. */
function begun(metric: Metric, uses: readonly Use[], lines: readonly DeviceLine[]): Break[] {
  return lines.flatMap((line) => {
    const { from, index, id } = line;
    const measured = from !== undefined && uses.some((use) => use.line === index && use.date >= from);
    return measured ? [{ date: from, kind: kindOf(line, uses, lines, metric), to: id, line: index }] : [];
  });
}

/** A device left the place of swings that name none: what came after it there is another set-up, known or not. */
function movedAway(uses: readonly Use[], lines: readonly DeviceLine[]): Break[] {
  return lines.flatMap(({ from, before, id }): Break[] => {
    if (from === undefined || before === null) return [];
    const places = uses.filter((use) => use.line === before && use.date < from).map((use) => use.place);
    const after = uses.filter((use) => use.date >= from && use.place !== null && places.includes(use.place));
    const next = after.find((use) => use.line !== before);
    return next ? [{ date: from, kind: "set-up", to: id, line: next.line }] : [];
  });
}

/** A device whose last day lies inside the series, and was in use on the last training day up to it. */
function ended(metric: Metric, uses: readonly Use[], lines: readonly DeviceLine[]): Break[] {
  return lines.flatMap(({ to, index, id }): Break[] => {
    if (to === undefined) return [];
    const upTo = uses.filter((use) => use.date <= to);
    const lastDay = upTo.at(-1)?.date;
    const inUse = upTo.filter((use) => use.date === lastDay && use.line === index);
    const places = inUse.map((use) => use.place);
    const next = uses.find(
      (use) =>
        use.date > to &&
        use.line !== index &&
        (use.line !== null || (use.place !== null && places.includes(use.place))),
    );
    if (inUse.length === 0 || next === undefined) return [];
    const date = isoDay(dayOf(to) + DAY_MS);
    if (next.line === null) return [{ date, kind: "set-up", to: id, line: null }];
    const successor = lines[next.line]!;
    // A successor with a day of its own breaks the line on that day.
    if ((successor.from ?? "") > to) return [];
    return [{ date, kind: REPLACED[metric.side], to: successor.id, line: successor.index }];
  });
}

/**
 * The days on which devices.csv changes what measured a series: a line with `from` that measures it from then on, a device that
 * left the place where it was measured, a device whose last day (`to`) has passed. A line touches only the series whose own
 * swings it measured, by name or by place.
 *
 * @param uses what measured the series, in order of date
 * @returns breaks after the first day and up to the last, one for each device and day, in order of date
 */
export function deviceBreaks(metric: Metric, uses: readonly Use[], lines: readonly DeviceLine[]): Break[] {
  const first = uses[0]?.date ?? "";
  const last = uses.at(-1)?.date ?? "";
  const inside = ({ date }: Break) => date > first && date <= last;
  const found = begun(metric, uses, lines).filter(inside);
  // The old device may be used up to a last day on which the new one is there too: the line is broken once.
  const tookOver = (one: Break, more: Break) =>
    one.line !== null &&
    one.line === more.line &&
    uses.every(({ date, line }) => line === one.line || date <= one.date || date >= more.date);
  for (const more of [...ended(metric, uses, lines), ...movedAway(uses, lines)].filter(inside)) {
    if (!found.some((one) => one.date === more.date || tookOver(one, more))) found.push(more);
  }
  return found.sort((a, b) => (a.date < b.date ? -1 : a.date > b.date ? 1 : 0));
}
