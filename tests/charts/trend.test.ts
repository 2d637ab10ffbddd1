import { describe, expect, test } from "vitest";
import type { ChartRow } from "../../src/charts/chart.ts";
import { drawSvg } from "../../src/charts/draw.ts";
import { trendChart } from "../../src/charts/trend.ts";
import { day, line, PARTS, PERIOD, series, session, TREND_WORDS } from "./examples.ts";

const noon = (iso: string) => Date.parse(`${iso}T12:00:00Z`);
const made = (parts: (typeof PARTS)[string]) => trendChart("trend-0", parts, TREND_WORDS, "en");
const bare = { period: PERIOD, away: [], goal: null, notes: [], beside: [], plans: [] };

describe("the dots of a trend chart", () => {
  const chart = made({
    ...bare,
    series: series([session("2025-10-08", 60, 40), session("2025-10-15", 61, 10), session("2025-10-22", 62, 3)]),
  });

  test("stand at noon of their day, at the session's mean", () => {
    expect(chart.data.solid?.map(({ x, y }) => [x, y])).toEqual([
      [noon("2025-10-08"), 60],
      [noon("2025-10-15"), 61],
    ]);
  });

  test("have areas in step with the swings behind them", () => {
    const [forty, ten] = chart.data.solid!.map((row) => Number(row.size));
    expect(forty! / ten!).toBeCloseTo(4, 10);
  });

  test("are hollow below four swings", () => {
    expect(chart.data.hollow?.map((row) => row.x)).toEqual([noon("2025-10-22")]);
  });

  test("are all drawn", async () => {
    expect((await drawSvg(chart)).match(/<circle/g)).toHaveLength(3);
  });
});

describe("the line", () => {
  test("runs from the report's start to its end, between the first and the last session", () => {
    const days = [day(0), day(14), day(28), day(56)];
    const chart = made({
      ...bare,
      series: series(
        days.map((d, i) => session(d, 60 + i, 9)),
        { trend: line(60.2, 63.4, 0.1) },
      ),
    });
    expect(chart.data.line).toEqual([
      { x: noon(days[0]!), y: 60.2 },
      { x: noon(days[3]!), y: 63.4 },
    ]);
    expect(chart.data.band!.length).toBeGreaterThan(2);
  });

  test("is absent when the report has none", () => {
    expect(made(PARTS.drop!).data).toMatchObject({ line: [], band: [] });
  });
});

describe("goal, blocks and absences", () => {
  test("a target is one line, a window two, no goal none", () => {
    expect(made(PARTS.gain!).data.goal).toEqual([{ y: 72 }]);
    expect(made(PARTS.window!).data.goal).toEqual([{ y: 4 }, { y: 11 }]);
    expect(made(PARTS.drop!).data.goal).toEqual([]);
  });

  test("a goal far above the season still lies on the sheet", () => {
    const [low, high] = made({ ...PARTS.gain!, goal: { low: 90, high: 90 } }).signals.yDomain as readonly number[];
    expect(low).toBeLessThan(60);
    expect(high).toBeGreaterThan(90);
  });

  test("a block's bar spans its days at its mean", () => {
    const first = { from: "2025-10-08", to: "2025-10-20", sessions: 4, n: 60, mean: 61.25 };
    const chart = made({ ...bare, series: series([session("2025-10-08", 61, 10)], { first }) });
    expect(chart.data.blocks).toEqual([
      { x: Date.parse("2025-10-08"), x2: Date.parse("2025-10-21"), y: 61.25, which: "first" },
    ]);
  });

  test("an absence is tinted through its last day, and cut at the season's ends", () => {
    const away = [
      { from: "2025-12-20", to: "2026-01-05" },
      { from: "2026-02-18", to: "2026-03-09" },
      { from: "2026-05-01", to: "2026-05-09" },
    ];
    expect(made({ ...PARTS.none!, away }).data.away).toEqual([
      { x: Date.parse("2025-12-20"), x2: Date.parse("2026-01-06") },
      { x: Date.parse("2026-02-18"), x2: Date.parse("2026-02-21") },
    ]);
  });
});

describe("labels", () => {
  const boxes = (rows: readonly ChartRow[]) => rows.map((row) => String(row.text));

  test("name the goal and both blocks when they are there", async () => {
    const chart = made(PARTS.gain!);
    expect(boxes(chart.data.words!)).toEqual(["goal 72.0", "61.9", "66.4"]);
    const svg = await drawSvg(chart);
    for (const text of ["Bat speed, mph", "away", "goal 72.0", "61.9", "66.4", "Nov"])
      expect(svg).toContain(`>${text}<`);
  });

  test("of two absences that nearly touch only the first is named", () => {
    const away = [
      { from: "2025-11-10", to: "2025-11-11" },
      { from: "2025-11-14", to: "2025-11-15" },
    ];
    expect(made({ ...PARTS.none!, away }).data.awayWords).toHaveLength(1);
  });

  test("a reader's word that looks like markup stays text", async () => {
    const svg = await drawSvg(trendChart("trend-0", PARTS.gain!, { ...TREND_WORDS, yTitle: `<b>&"speed"</b>` }, "en"));
    expect(svg).toContain("&lt;b&gt;&amp;");
    expect(svg).not.toContain("<b>");
  });
});

test("sessions that are all alike still get an axis with room above and below", () => {
  const [low, high] = made(PARTS.alike!).signals.yDomain as readonly number[];
  expect(low).toBeLessThan(60);
  expect(high).toBeGreaterThan(60);
});

test("without a session there are no value ticks to read anything from", () => {
  expect(made(PARTS.none!).signals.yTicks).toEqual([]);
});

describe("the quiet ribbon and the marks of notes", () => {
  test("what matters lies up and down from where the line starts, and on the sheet", () => {
    const chart = made(PARTS.gain!);
    expect(chart.data.quiet).toEqual([{ y: 61.2 - 1.5, y2: 61.2 + 1.5 }]);
    const [low] = chart.signals.yDomain as readonly number[];
    expect(low).toBeLessThan(59.7);
  });

  test("a window measure has its window instead, whatever matters", () => {
    const worth = { value: 2, source: "configured", athletes: null } as const;
    const { series: of } = PARTS.window!;
    expect(made({ ...PARTS.window!, series: { ...of, worth } }).data.quiet).toEqual([{ y: 4, y2: 11 }]);
    expect(made({ ...PARTS.window!, series: { ...of, worth, window: null } }).data.quiet).toEqual([]);
  });

  test("without a line there is nowhere to start it from", () => {
    const { series: of } = PARTS.gain!;
    expect(made({ ...PARTS.gain!, series: { ...of, trend: series([]).trend } }).data.quiet).toEqual([]);
  });

  test("each day with a note has one mark, in time order; a note from before the season none", () => {
    expect(made(PARTS.gain!).data.notes).toEqual([{ x: noon("2025-10-12") }, { x: noon("2025-11-20") }]);
  });
});
