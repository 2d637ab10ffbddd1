import { describe, expect, test } from "vitest";
import { conditionsOf } from "../../src/report/condition.ts";
import { deviceLines } from "../../src/report/device-lines.ts";
import { strandsOf } from "../../src/report/group.ts";
import { measuredBy } from "../../src/report/measured-by.ts";
import { ageBetween } from "../../src/report/peer-age.ts";
import { pointOnBatOf } from "../../src/report/peer-point.ts";
import { peerSpread } from "../../src/report/peer-spread.ts";
import { BUILT_IN_METRICS } from "../../src/schema/metric.ts";
import type { Device } from "../../src/schema/tables.ts";
import { sd } from "../../src/stats/sd.ts";
import { aged, asked, lmsRow, meanSdRow, valueRows } from "./peer-rows.ts";
import { type Rep, table } from "./season.ts";

describe("an age between two days", () => {
  test("is whole years and the part of the way to the next birthday", () => {
    expect(ageBetween("2009-05-14", "2025-05-14", "2025-05-14")).toBe(16);
    // 184 of 365 days after the birthday.
    expect(ageBetween("2009-05-14", "2025-11-14", "2025-11-14")).toBeCloseTo(16 + 184 / 365, 12);
    expect(ageBetween("2009-05-14", "2025-05-13", "2025-05-13")).toBeCloseTo(15 + 364 / 365, 12);
  });

  test("is that of the middle of the days, to the half day", () => {
    expect(ageBetween("2009-01-01", "2025-01-01", "2025-01-31")).toBeCloseTo(16 + 15 / 365, 12);
    expect(ageBetween("2009-01-01", "2025-01-01", "2025-01-02")).toBeCloseTo(16 + 0.5 / 365, 12);
  });

  test("counts 1 March as the birthday of 29 February where there is none", () => {
    expect(ageBetween("2008-02-29", "2025-03-01", "2025-03-01")).toBe(17);
    expect(ageBetween("2008-02-29", "2025-02-28", "2025-02-28")).toBeCloseTo(16 + 365 / 366, 12);
    expect(ageBetween("2008-02-29", "2024-02-29", "2024-02-29")).toBe(16);
  });

  test("is not known without a full birth date", () => {
    expect(ageBetween(2009, "2025-05-14", "2025-05-14")).toBeNull();
    expect(ageBetween(undefined, "2025-05-14", "2025-05-14")).toBeNull();
  });
});

describe("the spread between athletes", () => {
  const { start: _, end: __, ...who } = asked();
  const of = (reference: Parameters<typeof peerSpread>[1], age: number | null = 16) =>
    peerSpread({ ...who, age }, reference);
  const ten = [50, 51, 53, 58, 60, 61, 61, 66, 70, 71];

  test("is the standard deviation of ten athletes' values or more", () => {
    expect(of(valueRows(ten))).toEqual({ sd: sd(ten), middle: 60.1, athletes: 10 });
    expect(of(valueRows(ten.slice(1)))).toBeNull();
    expect(of([])).toBeNull();
  });

  test("leaves out what age explains, where ages tell", () => {
    const ages = Array.from({ length: 40 }, (_, i) => 14 + (i % 5));
    const off = ages.map((_, i) => (i % 8 < 4 ? 1 : -1));
    const found = of(
      aged(
        ages,
        ages.map((age, i) => 100 + 3 * age + off[i]!),
      ),
    );
    expect(found?.athletes).toBe(40);
    expect(found?.sd).toBeLessThan(1.1);
    expect(Math.abs(found!.middle! - (100 + 3 * 16))).toBeLessThanOrEqual(1);
    expect(of(aged(ages, ages), 20)).toEqual({ sd: 0, middle: null, athletes: 40 });
    expect(sd(ages.map((age, i) => 3 * age + off[i]!))).toBeGreaterThan(4);
  });

  test("without a level is that of the athlete's age", () => {
    const anyone = { level: null, ages: [14, 15] as const };
    expect(of(valueRows(ten, anyone), 15.5)).toEqual({ sd: sd(ten), middle: 60.1, athletes: 10 });
    expect(of(valueRows(ten, anyone), 16)).toBeNull();
    expect(of(valueRows(ten, anyone), null)).toBeNull();
    const ages = Array.from({ length: 40 }, (_, i) => 14 + (i % 5));
    const along = aged(ages, ages, { level: null });
    expect(of(along, 13)).toBeNull();
    expect(of(along, 14)).toEqual({ sd: 0, middle: 14, athletes: 40 });
  });

  test("is a published one of ten athletes or more where there are no values", () => {
    expect(of([meanSdRow(60, 4, { n: 12 })])).toEqual({ sd: 4, middle: 60, athletes: 12 });
    expect(of([meanSdRow(60, 4, { n: 9 })])).toBeNull();
    expect(of([meanSdRow(60, 4)])).toBeNull();
    expect(of([meanSdRow(60, 4, { n: 12, ages: [10, 12] })])).toBeNull();
    expect(of([lmsRow(1, 60, 0.1, { n: 90 })])).toBeNull();
    expect(of([...valueRows(ten), meanSdRow(60, 4, { n: 300 })])).toEqual({ sd: sd(ten), middle: 60.1, athletes: 10 });
  });
});

describe("the point on the bat", () => {
  const device = (id: string, point: string | undefined, more: Partial<Device> = {}): Device => ({
    id,
    measures: "bat_speed",
    ...(point === undefined ? {} : { point_on_bat: point }),
    ...more,
  });
  function point(devices: readonly Device[], reps: readonly Omit<Rep, "date">[], metric = "bat_speed") {
    const rows = table(reps.map((rep, i) => ({ date: `2025-11-0${i + 1}`, bat_speed: 60, exit_velocity: 80, ...rep })));
    const judged = rows.date.map(() => null);
    const find = measuredBy(rows, BUILT_IN_METRICS, devices);
    const strands = strandsOf(rows, BUILT_IN_METRICS, conditionsOf(rows, { name: "Ada" }), judged, find);
    const parts = strands.filter((strand) => strand.metric.id === metric);
    return pointOnBatOf(parts, rows, deviceLines(devices), BUILT_IN_METRICS);
  }

  test("is that of the device that the swings name", () => {
    const two = [device("knob-1", "tip"), device("knob-2", "middle")];
    expect(point(two, [{ device_bat: "knob-2" }, { device_bat: "knob-2" }])).toBe("middle");
    expect(point(two, [{ device_bat: "knob-1" }, { device_bat: "knob-2" }])).toBeNull();
    expect(point(two, [{ device_bat: "knob-9" }])).toBeNull();
    expect(point(two, [{ device_bat: "knob-1" }, { device_bat: "knob-9" }])).toBeNull();
  });

  test("follows a device from one set-up to the next", () => {
    const changed = [device("knob-1", "tip"), device("knob-1", "middle", { from: "2025-11-02" })];
    const same = [device("knob-1", "tip"), device("knob-1", undefined, { from: "2025-11-02", firmware: "2" })];
    const reps = [{ device_bat: "knob-1" }, { device_bat: "knob-1" }];
    expect(point(changed, reps)).toBeNull();
    expect(point(changed, reps.slice(1))).toBe("tip");
    expect(point(same, reps)).toBe("tip");
  });

  test("is known of swings that name no device where all that may have measured them read the same one", () => {
    const places = [
      device("knob-1", "tip", { lane: "a" }),
      device("knob-2", "tip", { lane: "b" }),
      device("knob-3", "middle", { lane: "c" }),
    ];
    expect(point(places.slice(0, 2), [{}, {}])).toBe("tip");
    expect(point(places, [{}])).toBeNull();
    expect(point(places, [{ lane: "b" }, { lane: "a" }])).toBe("tip");
    expect(point(places, [{ lane: "d" }])).toBeNull();
    const sites = [device("knob-1", "tip", { site: "barn" }), device("knob-2", "middle", { site: "shed" })];
    expect(point(sites, [{ site: "barn" }])).toBe("tip");
    expect(point([...places.slice(0, 2), device("knob-4", undefined, { lane: "a" })], [{}])).toBeNull();
  });

  test("is not known without devices, nor asked of the ball", () => {
    expect(point([], [{}])).toBeNull();
    expect(point([device("gate-1", "tip", { measures: "exit_velocity" })], [{}], "exit_velocity")).toBeNull();
    expect(pointOnBatOf([], table([]), [], BUILT_IN_METRICS)).toBeNull();
  });
});
