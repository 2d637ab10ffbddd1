import { expect, test } from "vitest";
import { drawSvg } from "../../src/charts/draw.ts";
import { peersChart } from "../../src/charts/peers.ts";
import { BANDS, PEERS, PEERS_WORDS } from "./examples.ts";

const made = (name: string) => peersChart("peers-0", PEERS[name]!, PEERS_WORDS, "en");

test("each end stands before the bands of its own age", () => {
  const { bands, hitters } = made("both").data;
  expect(bands?.map(({ p10, p50, p90 }) => [p10, p50, p90])).toEqual([
    [58, 63, 69],
    [59, 64, 70],
  ]);
  expect(hitters?.map(({ value }) => value)).toEqual([62.1, 66]);
});

test("bands that do not move with age serve both ends", () => {
  const chart = peersChart("peers-0", { ...PEERS.both!, bands: BANDS, bandsStart: null }, PEERS_WORDS, "en");
  expect(chart.data.bands?.map(({ p50 }) => p50)).toEqual([63, 63]);
});

test("an end without a value has no row, and the sheet is shorter for it", () => {
  expect(made("end").data.labels?.map(({ text }) => text)).toEqual(["End"]);
  expect(made("end").height).toBeLessThan(made("both").height);
  expect(made("neither").data.hitters).toEqual([]);
});

test("a hitter far above the peers still lies on the sheet, and so does the value beside the dot", async () => {
  const chart = made("end");
  const [low, high] = chart.signals.xDomain as readonly number[];
  expect(low).toBeLessThan(58);
  expect(high).toBeGreaterThan(80);
  expect(chart.data.values?.[0]?.dx).toBeLessThanOrEqual(0);
});

test("rows, values and what the marks mean are written on it", async () => {
  const svg = await drawSvg(made("both"));
  for (const text of [
    "Start",
    "End",
    "62.1 mph",
    "66.0 mph",
    "eight of ten",
    "middle half",
    "this hitter",
    "Bat speed, mph",
  ])
    expect(svg).toContain(`>${text}<`);
});
