import type { Metric } from "../schema/metric.ts";
import type { RepTable } from "../schema/season.ts";
import { type DeviceLine, measuresMetric } from "./device-lines.ts";
import type { Strand } from "./group.ts";

const meets = (cell: string | undefined, word: string | null) => cell === undefined || word === null || cell === word;

/** Lines that may have measured a swing, for swings of which nobody can tell which line did. */
function possible(
  metric: Metric,
  reps: RepTable,
  lines: readonly DeviceLine[],
  metrics: readonly Metric[],
): (row: number) => readonly DeviceLine[] {
  const found = new Map<string, readonly DeviceLine[]>();
  const word = (key: string, row: number) => reps.words[key]?.[row] ?? null;
  return (row) => {
    const [device, site, lane] = [word("device_bat", row), word("site", row), word("lane", row)];
    const key = JSON.stringify([device, site, lane]);
    const known = found.get(key);
    if (known) return known;
    const able = lines.filter((line) => measuresMetric(line, metric, metrics, device === line.id));
    const fits = (line: DeviceLine) =>
      device === null ? meets(line.site, site) && meets(line.lane, lane) : line.id === device;
    const fitting = able.filter(fits);
    found.set(key, fitting);
    return fitting;
  };
}

/**
 * Which point on the bat a series was read at, as devices.csv words it. A value counts for the line that measured it; where that cannot
 * be told, for all lines that may have: those of the device the swing names, else those whose place does not say otherwise.
 *
 * @param parts strands of a series, of one metric
 * @param lines `deviceLines` of the season
 * @returns null where a value's point is not known, or several differ; and for metrics that no bat sensor reads
 */
export function pointOnBatOf(
  parts: readonly Strand[],
  reps: RepTable,
  lines: readonly DeviceLine[],
  metrics: readonly Metric[],
): string | null {
  const metric = parts[0]?.metric;
  if (metric?.side !== "bat") return null;
  const mayHave = possible(metric, reps, lines, metrics);
  // Few sources stand behind many swings.
  const sources = new Set<number | readonly DeviceLine[]>();
  for (const { rows, by } of parts.flatMap(({ sessions }) => sessions)) {
    rows.forEach((row, i) => {
      sources.add(by[i]?.line ?? mayHave(row));
    });
  }
  const points = [...sources].flatMap((source): (string | null)[] => {
    const from = typeof source === "number" ? lines.filter(({ index }) => index === source) : source;
    return from.length === 0 ? [null] : from.map(({ point_on_bat }) => point_on_bat ?? null);
  });
  return new Set(points).size === 1 ? (points[0] ?? null) : null;
}
