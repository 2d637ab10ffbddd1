import { describe, expect, test } from "vitest";
import { measuresMetric } from "../../src/report/device-lines.ts";
import { reportFor } from "../../src/report/report.ts";
import { BUILT_IN_METRICS, type Metric } from "../../src/schema/metric.ts";
import type { Device } from "../../src/schema/tables.ts";
import { input, type Rep, weekLater } from "./season.ts";

const OWN: Metric = { id: "hand_tempo", unit: "g", better: "higher", plausible: [0, 50], decimals: 1, side: "own" };
const METRICS = [...BUILT_IN_METRICS, OWN];

/** Ten training days, one a week. */
const weeks = (more: (week: number) => Partial<Rep>): Rep[] =>
  Array.from({ length: 10 }, (_, week) => ({
    date: weekLater(week),
    bat_speed: 60,
    attack_angle: 8,
    exit_velocity: 70,
    hand_tempo: 12,
    ...more(week),
  }));
const breaks = (reps: Rep[], devices: Device[]) => {
  const { series } = reportFor(input(reps, { season: { devices, metrics: METRICS } })).report;
  return Object.fromEntries(
    series.map((one) => [one.metric, one.breaks.map(({ date, kind, to }) => [date, kind, to])]),
  );
};
const none = { bat_speed: [], attack_angle: [], exit_velocity: [], hand_tempo: [] };
const day = weekLater(5);

describe("what a device measures", () => {
  const ids = (device: Partial<Device>, named = false) =>
    METRICS.filter((metric) => measuresMetric({ id: "x", ...device }, metric, METRICS, named)).map(({ id }) => id);
  const bat = ["bat_speed", "attack_angle", "swing_time"];
  const ball = ["exit_velocity", "launch_angle", "spray_angle", "distance", "hit_spin"];

  test.each([
    ["bat_speed attack_angle", ["bat_speed", "attack_angle"]],
    ["Bat speed, attack angle", ["bat_speed", "attack_angle"]],
    ["speed", bat],
    ["flight", ball],
    ["both", [...bat, ...ball]],
    ["bat_speed; flight", ["bat_speed", ...ball]],
    ["hand_tempo", ["hand_tempo"]],
  ])("is what its cell lists: %s", (measures, expected) => {
    expect(ids({ measures })).toEqual(expected);
  });

  test("is told by its kind where the cell is blank, else taken to be both sides", () => {
    expect(ids({ kind: "bat sensor" })).toEqual(bat);
    expect(ids({ kind: "radar" })).toEqual([...bat, ...ball]);
  });
});

describe("a line of devices.csv breaks what it touches and nothing else", () => {
  test("once, when the old device's last day is the new one's first", () => {
    const both = weeks((week) => ({ device_bat: week < 6 ? "knob-1" : "knob-2" }));
    const again = {
      date: day,
      bat_speed: 61,
      attack_angle: 8,
      exit_velocity: 70,
      hand_tempo: 12,
      device_bat: "knob-2",
    };
    const devices = [
      { id: "knob-1", measures: "bat_speed", to: day },
      { id: "knob-2", measures: "bat_speed", from: day },
    ];
    expect(breaks([...both, again], devices)).toEqual({ ...none, bat_speed: [[day, "bat-sensor", "knob-2"]] });
  });

  test("twice, when the old device was used beside the new one for a while", () => {
    const reps = weeks((week) => ({ device_bat: week < 5 || week === 6 ? "knob-1" : "knob-2" }));
    const devices = [
      { id: "knob-1", measures: "bat_speed", to: weekLater(6) },
      { id: "knob-2", measures: "bat_speed", from: day },
    ];
    expect(breaks(reps, devices).bat_speed).toHaveLength(2);
  });

  test("a replacement, by name, and only the metrics that it measures", () => {
    const reps = weeks((week) => ({ device_bat: week < 5 ? "knob-1" : "knob-2" }));
    const devices = [
      { id: "knob-1", measures: "bat_speed" },
      { id: "knob-2", measures: "bat_speed", from: day },
    ];
    expect(breaks(reps, devices)).toEqual({ ...none, bat_speed: [[day, "bat-sensor", "knob-2"]] });
  });

  test("new firmware: a second line of one device, its blank cells as before", () => {
    const reps = weeks(() => ({ device_bat: "knob-1" }));
    const devices = [
      { id: "knob-1", measures: "bat_speed attack_angle", firmware: "1.8" },
      { id: "knob-1", from: day, firmware: "2.0" },
    ];
    const broken = [[day, "firmware", "knob-1"]];
    expect(breaks(reps, devices)).toEqual({ ...none, bat_speed: broken, attack_angle: broken });
    expect(
      breaks(
        weeks(() => ({ device_bat: "knob-9" })),
        [...devices, { id: "knob-9" }],
      ),
    ).toEqual(none);
  });

  test("a replacement in a lane, for swings that name the lane and no device", () => {
    const devices = [
      { id: "gate-1", measures: "flight", site: "barn", lane: "a" },
      { id: "gate-2", measures: "flight", site: "barn", lane: "b" },
      { id: "gate-9", measures: "flight", site: "barn", lane: "a", from: day },
    ];
    const broken = { ...none, exit_velocity: [[day, "ball-screen", "gate-9"]] };
    expect(
      breaks(
        weeks(() => ({ site: "barn", lane: "a" })),
        devices,
      ),
    ).toEqual(broken);
    expect(
      breaks(
        weeks(() => ({ lane: "a" })),
        devices,
      ),
    ).toEqual(broken);
    expect(
      breaks(
        weeks(() => ({ site: "barn", lane: "b" })),
        devices,
      ),
    ).toEqual(none);
    expect(
      breaks(
        weeks(() => ({ site: "shed", lane: "a" })),
        devices,
      ),
    ).toEqual(none);
    expect(
      breaks(
        weeks(() => ({})),
        devices,
      ),
    ).toEqual(none);
    // By name it is the other lane's device, wherever the swing was taken.
    expect(
      breaks(
        weeks(() => ({ lane: "a", device_ball: "gate-2" })),
        devices,
      ),
    ).toEqual(none);
  });

  test("nobody is guessed where a lane's name stands at two sites", () => {
    const devices = [
      { id: "gate-1", measures: "flight", site: "barn", lane: "a" },
      { id: "gate-2", measures: "flight", site: "shed", lane: "a" },
      { id: "gate-9", measures: "flight", site: "barn", lane: "a", from: day },
    ];
    expect(
      breaks(
        weeks(() => ({ lane: "a" })),
        devices,
      ),
    ).toEqual(none);
    expect(
      breaks(
        weeks(() => ({ site: "barn", lane: "a" })),
        devices,
      ).exit_velocity,
    ).toHaveLength(1);
  });

  test("a facility with one sensor and no lanes needs no name on a swing", () => {
    const devices = [
      { id: "knob-1", measures: "speed" },
      { id: "knob-2", measures: "speed", from: day },
    ];
    expect(
      breaks(
        weeks(() => ({})),
        devices,
      ).bat_speed,
    ).toEqual([[day, "bat-sensor", "knob-2"]]);
  });

  test("a device that moves lanes breaks the lane it left, the lane it came to, and the swings that name it", () => {
    const devices = [
      { id: "knob-1", measures: "bat_speed", lane: "a" },
      { id: "knob-2", measures: "bat_speed", lane: "b" },
      { id: "knob-1", lane: "b", from: day },
      { id: "knob-3", measures: "bat_speed", lane: "c" },
    ];
    const at = (more: Partial<Rep>) =>
      breaks(
        weeks(() => more),
        devices,
      ).bat_speed;
    expect(at({ lane: "a" })).toEqual([[day, "set-up", "knob-1"]]);
    expect(at({ lane: "b" })).toEqual([[day, "bat-sensor", "knob-1"]]);
    expect(at({ device_bat: "knob-1" })).toEqual([[day, "set-up", "knob-1"]]);
    expect(at({ device_bat: "knob-2" })).toEqual([]);
    expect(at({ lane: "c" })).toEqual([]);
  });

  test("a device whose last day has passed breaks the line on the day after, when another one follows", () => {
    const devices = [
      { id: "knob-1", measures: "bat_speed", to: weekLater(4) },
      { id: "knob-2", measures: "bat_speed" },
      { id: "knob-3", measures: "bat_speed" },
    ];
    const after = "2025-11-04";
    const followed = weeks((week) => ({ device_bat: week < 5 ? "knob-1" : "knob-2" }));
    expect(breaks(followed, devices).bat_speed).toEqual([[after, "bat-sensor", "knob-2"]]);
    // Long out of use for this hitter by then.
    const earlier = weeks((week) => ({ device_bat: week < 2 ? "knob-1" : "knob-2" }));
    expect(breaks(earlier, devices).bat_speed).toEqual([]);
    expect(
      breaks(
        weeks(() => ({ device_bat: "knob-3" })),
        devices,
      ).bat_speed,
    ).toEqual([]);
  });

  test("a device that ended and its successor with a date of its own are one break", () => {
    const devices = [
      { id: "knob-1", measures: "bat_speed", to: weekLater(4) },
      { id: "knob-2", measures: "bat_speed", from: day },
    ];
    const reps = weeks((week) => ({ device_bat: week < 5 ? "knob-1" : "knob-2" }));
    expect(breaks(reps, devices).bat_speed).toEqual([[day, "bat-sensor", "knob-2"]]);
  });

  test("a metric of the trainer's own breaks where the device lists it", () => {
    const devices = [
      { id: "knob-1", measures: "hand_tempo" },
      { id: "knob-2", measures: "hand_tempo", from: day },
    ];
    const reps = weeks((week) => ({ device_bat: week < 5 ? "knob-1" : "knob-2" }));
    expect(breaks(reps, devices)).toEqual({ ...none, hand_tempo: [[day, "device", "knob-2"]] });
  });
});

test("on the day of a break each rep belongs to its own device's stretch", () => {
  const devices = [{ id: "old" }, { id: "new", from: day }];
  const reps = [
    ...weeks((week) => ({ device_bat: week < 5 ? "old" : "new", bat_speed: week < 5 ? 60 : 63 })),
    { date: day, device_bat: "old", bat_speed: 60 },
  ];
  const { series } = reportFor(input(reps, { season: { devices } })).report;
  expect(series[0]?.stretches.map(({ from, to, n, mean }) => [from, to, n, mean])).toEqual([
    [weekLater(0), day, 6, 60],
    [day, weekLater(9), 5, 63],
  ]);
});
