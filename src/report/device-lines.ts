import type { Metric } from "../schema/metric.ts";
import type { Device } from "../schema/tables.ts";

/** One line of devices.csv: a device in one set-up, from a day on. Blank cells are those of the device's line before. */
export interface DeviceLine extends Device {
  /** Place in `Season.devices`, from 0. */
  readonly index: number;
  /** The same device's line before this one; null for its first. */
  readonly before: number | null;
}

type Side = "bat" | "ball";

/** Words of the cells `measures` and `kind` that stand for a whole side. `speed` and `flight` as in the session log. */
const SIDE_WORDS: Readonly<Record<string, readonly Side[]>> = {
  bat: ["bat"],
  swing: ["bat"],
  swings: ["bat"],
  speed: ["bat"],
  ball: ["ball"],
  flight: ["ball"],
  both: ["bat", "ball"],
  all: ["bat", "ball"],
  everything: ["bat", "ball"],
};

const spaced = (text: string) => ` ${text.toLowerCase().replace(/[^\p{L}\p{N}]+/gu, " ")} `;

/** Sides that the words of a cell stand for; none when it holds no such word. */
function sidesIn(text: string): Set<Side> {
  return new Set(text.split(" ").flatMap((word) => (Object.hasOwn(SIDE_WORDS, word) ? SIDE_WORDS[word]! : [])));
}

/**
 * Does a line measure a metric? The cell `measures` lists metrics (`bat_speed attack_angle`, written with any separator,
 * `bat speed` too) or whole sides (`speed`, `bat`, `swing`; `flight`, `ball`; `both`, `all`).
 *
 * A cell without any of these words leaves it to the swings' column where they name the device, else to such words in the cell
 * `kind`, else the line is taken to measure both sides: better a line broken than one joined by oversight. A trainer's own metric
 * is measured by a device only where `measures` names it.
 *
 * @param metrics all metrics of the season, to tell their names from words
 * @param named   the swings name the device in the column of the metric's side
 */
export function measuresMetric(line: Device, metric: Metric, metrics: readonly Metric[], named: boolean): boolean {
  let rest = spaced(line.measures ?? "");
  const listed = new Set<string>();
  const byLength = [...metrics].sort((a, b) => b.id.length - a.id.length);
  for (const { id } of byLength) {
    const name = spaced(id);
    if (!rest.includes(name)) continue;
    listed.add(id);
    rest = rest.replaceAll(name, "  ");
  }
  const sides = sidesIn(rest);
  if (listed.has(metric.id)) return true;
  if (metric.side === "own") return false;
  if (listed.size > 0 || sides.size > 0) return sides.has(metric.side);
  if (named) return true;
  const byKind = sidesIn(spaced(line.kind ?? ""));
  return byKind.size === 0 || byKind.has(metric.side);
}

const INHERITED = ["kind", "measures", "point_on_bat", "site", "lane", "firmware"] as const;

/**
 * The lines of devices.csv with what a second line of the same device leaves blank filled from its line before, so that
 * `knob-1,,,,,,2025-12-10,,2.2,,` is a change of firmware and nothing else.
 *
 * @returns in the order given; lines of one device follow each other by `from`, a blank one first
 */
export function deviceLines(devices: readonly Device[]): DeviceLine[] {
  const inOrder = devices
    .map((device, index) => ({ device, index }))
    .sort((a, b) => {
      const [left, right] = [a.device.from ?? "", b.device.from ?? ""];
      return left < right ? -1 : left > right ? 1 : a.index - b.index;
    });
  const latest = new Map<string, DeviceLine>();
  const filled = new Map<number, DeviceLine>();
  for (const { device, index } of inOrder) {
    const before = latest.get(device.id);
    const cells = Object.fromEntries(INHERITED.map((key) => [key, device[key] ?? before?.[key]]));
    const line: DeviceLine = { ...device, ...cells, index, before: before?.index ?? null };
    latest.set(device.id, line);
    filled.set(index, line);
  }
  return devices.map((_, index) => filled.get(index)!);
}
