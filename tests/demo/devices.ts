/** A bat sensor that gave way to another: first day of the new one alone, and what it reads above the old (mph). */
interface SensorSwap {
  before: string;
  after: string;
  from: string;
  mph: number;
}

/** The sensor of the lane in the shed, replaced overnight: nothing was measured with both. */
export const UNBRIDGED: SensorSwap = { before: "knob-3", after: "knob-5", from: "2025-12-10", mph: 2.5 };
/** Desmond's own sensor; on the evening of `both` the old and the new one hung on his bat together. */
export const BRIDGED = { before: "knob-4", after: "knob-6", from: "2025-12-12", mph: 1.6, both: "2025-12-11" } as const;

const SWAPS: readonly SensorSwap[] = [UNBRIDGED, BRIDGED];

/** The sensor that has taken the place of `first` by this day, and what it reads above it (mph). */
export function sensorOn(first: string, date: string): { id: string; mph: number } {
  const swap = SWAPS.find(({ before, from }) => before === first && date >= from);
  return swap === undefined ? { id: first, mph: 0 } : { id: swap.after, mph: swap.mph };
}

const POINT = "6 in from the barrel end";
const SWING_METRICS = "bat_speed attack_angle swing_time";
const FLIGHT_METRICS = "exit_velocity launch_angle spray_angle distance";

/** Rows of devices.csv. */
export const DEVICES = [
  {
    id: "knob-1",
    kind: "bat sensor",
    measures: SWING_METRICS,
    point_on_bat: POINT,
    site: "barn",
    lane: "a",
    firmware: "2.1",
  },
  {
    id: "knob-2",
    kind: "bat sensor",
    measures: SWING_METRICS,
    point_on_bat: POINT,
    site: "barn",
    lane: "b",
    firmware: "2.1",
  },
  {
    id: UNBRIDGED.before,
    kind: "bat sensor",
    measures: SWING_METRICS,
    point_on_bat: POINT,
    site: "shed",
    lane: "c",
    to: "2025-12-09",
    firmware: "1.8",
    comment: "battery door broke; taken out of use",
  },
  {
    id: UNBRIDGED.after,
    kind: "bat sensor",
    measures: SWING_METRICS,
    point_on_bat: POINT,
    site: "shed",
    lane: "c",
    from: UNBRIDGED.from,
    firmware: "3.0",
    comment: "replaces knob-3; no swings were measured with both",
  },
  {
    id: BRIDGED.before,
    kind: "bat sensor",
    measures: SWING_METRICS,
    point_on_bat: POINT,
    site: "barn",
    to: BRIDGED.both,
    firmware: "1.8",
    comment: "his own, on every bat he swings here; cell worn out",
  },
  {
    id: BRIDGED.after,
    kind: "bat sensor",
    measures: SWING_METRICS,
    point_on_bat: POINT,
    site: "barn",
    from: BRIDGED.both,
    firmware: "3.0",
    comment: "replaces knob-4; both were on the bat for one evening",
  },
  {
    id: "gate-1",
    kind: "radar",
    measures: FLIGHT_METRICS,
    site: "barn",
    lane: "a",
    firmware: "5.2",
    checked_on: "2025-10-03",
  },
  {
    id: "gate-2",
    kind: "radar",
    measures: FLIGHT_METRICS,
    site: "barn",
    lane: "b",
    firmware: "5.2",
    checked_on: "2025-10-03",
  },
  {
    id: "gate-3",
    kind: "radar",
    measures: FLIGHT_METRICS,
    site: "shed",
    lane: "c",
    firmware: "5.2",
    checked_on: "2025-10-04",
  },
];
