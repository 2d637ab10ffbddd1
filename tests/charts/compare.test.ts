import { expect, test } from "vitest";
import { compareChart } from "../../src/charts/compare.ts";
import { drawSvg } from "../../src/charts/draw.ts";

const words = { xTitle: "Bat speed, mph", first: "first sessions", last: "last sessions", decimals: 1 };
const rows = [
  { label: "Tee", first: 63.2, last: 68.4 },
  { label: "Machine", first: 60.9, last: 60.4 },
];

test("each value stands on the side away from the other dot, also when the swing lost speed", () => {
  const values = compareChart("compare-0", rows, words, "en").data.values;
  expect(values?.map(({ value, side }) => [value, side])).toEqual([
    [63.2, "right"],
    [68.4, "left"],
    [60.9, "left"],
    [60.4, "right"],
  ]);
});

test("all rows share one scale, with the order of the rows as given", async () => {
  const chart = compareChart("compare-0", rows, words, "en");
  const [low, high] = chart.signals.xDomain as readonly number[];
  expect(low).toBeLessThan(60.4);
  expect(high).toBeGreaterThan(68.4);
  const svg = await drawSvg(chart);
  expect(svg.indexOf(">Tee<")).toBeLessThan(svg.indexOf(">Machine<"));
  for (const text of ["63.2", "68.4", "60.9", "60.4", "first sessions", "last sessions", "Bat speed, mph"])
    expect(svg).toContain(`>${text}<`);
});

test("values are written in the reader's way", async () => {
  expect(await drawSvg(compareChart("compare-0", rows, words, "es"))).toContain(">63,2<");
});

test("a row more makes the sheet taller, not the rows closer", () => {
  const height = (n: number) => compareChart("compare-0", Array(n).fill(rows[0]), words, "en").height;
  expect(height(3) - height(2)).toBe(height(2) - height(1));
  expect(height(2)).toBeGreaterThan(height(1));
});
