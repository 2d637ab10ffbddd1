import { expect, test } from "vitest";
import { drawSvg } from "../../src/charts/draw.ts";
import { type IntervalRow, intervalsChart } from "../../src/charts/intervals.ts";

const row = (more: Partial<IntervalRow> = {}): IntervalRow => ({
  label: "Tee",
  value: -2,
  range: [-3, -1],
  expected: null,
  said: "−2.0 mph",
  ...more,
});
const made = (rows: readonly IntervalRow[], none: number | null = 0) =>
  intervalsChart("hitting-carry", rows, { xTitle: "Bat speed, mph", none, decimals: 1 }, "en");

test("values, ranges and what was expected lie on one scale that holds them all, and no difference too", () => {
  const chart = made([row(), row({ value: -4, range: [-6, -2], expected: [-9, -8] })]);
  const [low, high] = chart.signals.xDomain as readonly number[];
  expect(low).toBeLessThan(-9);
  expect(high).toBeGreaterThan(0);
  expect(chart.data.ranges?.map((span) => [span.low, span.high])).toEqual([
    [-3, -1],
    [-6, -2],
  ]);
  expect(chart.data.expected).toMatchObject([{ low: -9, high: -8 }]);
});

test("without a line of no difference there is none, and without a range the dot stands alone", () => {
  const chart = made([row({ range: null })], null);
  expect(chart.data.none).toEqual([]);
  expect(chart.data.ranges).toEqual([]);
  expect(chart.data.values).toHaveLength(1);
});

test("label and value stand at the two ends of one line; a long label is cut before it meets the value", async () => {
  const svg = await drawSvg(
    made([row({ label: "A very long name of a drill that the trainer made up one evening, machine" })]),
  );
  expect(svg).toContain(">−2.0 mph<");
  expect(svg).toMatch(/>A very long name of a drill[^<]*…</);
  expect(await drawSvg(made([row()]))).toContain(">Tee<");
});

test("no rows give an empty frame", async () => {
  expect(made([]).data).toMatchObject({ none: [], values: [], labels: [] });
  await expect(drawSvg(made([]))).resolves.toContain("<svg");
});
