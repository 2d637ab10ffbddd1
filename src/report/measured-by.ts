import type { Metric } from "../schema/metric.ts";
import type { RepTable } from "../schema/season.ts";
import type { Device } from "../schema/tables.ts";
import { type DeviceLine, deviceLines, measuresMetric } from "./device-lines.ts";

/** What measured one value. */
export interface MeasuredBy {
  /** Place in `Season.devices`, or null when the files cannot tell. */
  readonly line: number | null;
  /** Site and lane of a swing that names no device; null for one that does, or that names no place either. */
  readonly place: string | null;
}

/** The line of devices.csv that measured a metric of a rep, by the rep's row in the table. */
export type FindMeasuredBy = (metric: Metric, row: number) => MeasuredBy;

const NOT_KNOWN: MeasuredBy = { line: null, place: null };

/**
 * Finds for each value which line of devices.csv measured it.
 *
 * A swing that names the device of the metric's side was measured by that device, in the set-up it had on that day. A swing that
 * names none was measured by what measures the metric where it was swung: the line in use that day whose `site` and `lane` agree
 * with the swing's, the latest by `from` where one replaced another. Where two places or two devices would do, nobody is
 * guessed. Lines without any place stand for swings that name no device of either side, and only where no line for the
 * metric has a place.
 */
export function measuredBy(reps: RepTable, metrics: readonly Metric[], devices: readonly Device[]): FindMeasuredBy {
  // Without a single date nothing changes, so nobody asks.
  if (devices.every(({ from, to }) => from === undefined && to === undefined)) return () => NOT_KNOWN;
  const lines = deviceLines(devices);
  const { kinds, kindOf } = circumstancesOf(reps);
  const found = new Map<string, MeasuredBy[]>();
  return (metric, row) => {
    const ofMetric = found.get(metric.id) ?? kinds.map((kind) => measuring(metric, kind, lines, metrics));
    found.set(metric.id, ofMetric);
    return ofMetric[kindOf[row]!] ?? NOT_KNOWN;
  };
}

/** Everything about a swing that tells what measured it; many swings share one. */
interface Circumstances extends Where {
  readonly date: string;
  readonly bat: string | null;
  readonly ball: string | null;
}

/** The different circumstances of a table, and which of them each row has. */
function circumstancesOf({ n, date, words }: RepTable): {
  readonly kinds: Circumstances[];
  readonly kindOf: Int32Array;
} {
  const index = new Map<string, number>();
  const kinds: Circumstances[] = [];
  const kindOf = new Int32Array(n);
  for (let row = 0; row < n; row += 1) {
    const bat = words.device_bat?.[row] ?? null;
    const ball = words.device_ball?.[row] ?? null;
    const site = words.site?.[row] ?? null;
    const lane = words.lane?.[row] ?? null;
    const key = `${date[row]}\n${bat}\n${ball}\n${site}\n${lane}`;
    let kind = index.get(key);
    if (kind === undefined) {
      kind = kinds.length;
      index.set(key, kind);
      kinds.push({ date: date[row]!, bat, ball, site, lane, nameless: bat === null && ball === null });
    }
    kindOf[row] = kind;
  }
  return { kinds, kindOf };
}

function measuring(
  metric: Metric,
  swing: Circumstances,
  lines: readonly DeviceLine[],
  metrics: readonly Metric[],
): MeasuredBy {
  const { date, bat, ball, site, lane } = swing;
  const own = metric.side === "bat" ? [bat] : metric.side === "ball" ? [ball] : [bat, ball];
  const names = own.filter((name) => name !== null);
  const able = lines.filter((line) => measuresMetric(line, metric, metrics, names.includes(line.id)));
  if (names.length > 0) return { line: byName(able, names, date), place: null };
  const place = site === null && lane === null ? null : JSON.stringify([site, lane]);
  return { line: byPlace(able, swing, date), place };
}

const later = (a: DeviceLine, b: DeviceLine) => ((a.from ?? "") < (b.from ?? "") ? b : a);
const latest = (lines: readonly DeviceLine[]): DeviceLine | undefined =>
  lines.length === 0 ? undefined : lines.reduce(later);
const earliest = (lines: readonly DeviceLine[]): DeviceLine | undefined =>
  lines.length === 0 ? undefined : lines.reduce((a, b) => (later(a, b) === b ? a : b));

const begun = (line: DeviceLine, date: string) => (line.from ?? "") <= date;

/** The named device's set-up of the day; its first one when the swing is older than that. */
function byName(measuring: readonly DeviceLine[], names: readonly string[], date: string): number | null {
  const named = measuring.filter((line) => names.includes(line.id));
  if (new Set(named.map((line) => line.id)).size > 1) return null;
  return (latest(named.filter((line) => begun(line, date))) ?? earliest(named))?.index ?? null;
}

interface Where {
  readonly site: string | null;
  readonly lane: string | null;
  /** The swing names no device of either side. */
  readonly nameless: boolean;
}

/** How many of a line's filled place cells agree with a swing's; null when one says otherwise. */
function agreement({ site, lane }: DeviceLine, where: Where): number | null {
  if (site !== undefined && where.site !== null && site !== where.site) return null;
  if (lane !== undefined && where.lane !== null && lane !== where.lane) return null;
  return Number(site !== undefined && site === where.site) + Number(lane !== undefined && lane === where.lane);
}

function byPlace(measuring: readonly DeviceLine[], where: Where, date: string): number | null {
  const placeless = where.nameless && measuring.every((line) => line.site === undefined && line.lane === undefined);
  const inUse = [...new Set(measuring.map((line) => line.id))].flatMap((id) => {
    const line = latest(measuring.filter((one) => one.id === id && begun(one, date)));
    return line && (line.to === undefined || line.to >= date) ? [line] : [];
  });
  const fitting = inUse.flatMap((line) => {
    const agreeing = agreement(line, where);
    return agreeing === null || (agreeing === 0 && !placeless) ? [] : [{ line, agreeing }];
  });
  const most = fitting.reduce((best, { agreeing }) => Math.max(best, agreeing), 0);
  const closest = fitting.filter(({ agreeing }) => agreeing === most).map(({ line }) => line);
  if (new Set(closest.map(({ site, lane }) => JSON.stringify([site, lane]))).size > 1) return null;
  const newest = latest(closest);
  const alike = closest.filter((line) => (line.from ?? "") === (newest?.from ?? ""));
  return alike.length === 1 ? (newest?.index ?? null) : null;
}
