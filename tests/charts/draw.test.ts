import { execFile } from "node:child_process";
import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { promisify } from "node:util";
import { gzipSync } from "node:zlib";
import fc from "fast-check";
import { HtmlValidate } from "html-validate";
import { describe, expect, test } from "vitest";
import { ChartError, type ChartSpec } from "../../src/charts/chart.ts";
import { compareChart } from "../../src/charts/compare.ts";
import { compiled, drawSvg } from "../../src/charts/draw.ts";
import { parseSvg, type SvgElement } from "../../src/charts/svg-tree.ts";
import { trendChart } from "../../src/charts/trend.ts";
import { weeksChart } from "../../src/charts/weeks.ts";
import { allExamples, day, line, PARTS, PERIOD, series, session, TREND_WORDS, WEEKS_WORDS, weeks } from "./examples.ts";

const examples = allExamples();
const drawn = async (charts: readonly ChartSpec[]) => {
  const texts = new Map<string, string>();
  for (const chart of charts) texts.set(chart.id, await drawSvg(chart));
  return texts;
};

function elements(root: SvgElement): SvgElement[] {
  return [root, ...root.children.flatMap((child) => (typeof child === "string" ? [] : elements(child)))];
}

/** Every number of an SVG's attributes. */
function numbers(svg: string): number[] {
  return elements(parseSvg(svg)).flatMap((element) =>
    [...element.attributes]
      .filter(([name]) => /^(d|transform|x\d?|y\d?|cx|cy|r|viewBox|stroke-width)$/.test(name))
      .flatMap(([, value]) => (value.match(/-?[\d.]+(?:e[-+]?\d+)?|NaN|Infinity/g) ?? []).map(Number)),
  );
}

describe("every kind of chart, with much data, little and none", () => {
  test.each(examples.map((chart) => [chart.id, chart] as const))("%s is one clean svg element", async (_, chart) => {
    const svg = await drawSvg(chart);
    expect(svg).toMatch(/^<svg xmlns="http:\/\/www\.w3\.org\/2000\/svg" viewBox="0 0 340 \d+"/);
    expect(svg).not.toMatch(/<script|<style|NaN|undefined|Infinity|\[object/);
    const names = elements(parseSvg(svg)).flatMap((element) => [...element.attributes.keys()]);
    const forbidden = /^(style|class|role|aria-.*|href|xlink:.*|xmlns:.*|on.*|tabindex|width|height|pointer-events)$/;
    // Rects are drawn as paths, so that width and height would be the svg's own fixed size.
    expect(names.filter((name) => forbidden.test(name))).toEqual([]);
  });

  test("colours are names of the page's palette alone", async () => {
    const palette = ["card", "ink", "ink-soft", "line", "mark", "band", "second", "goal", "away", "quiet"].map(
      (c) => `var(--${c})`,
    );
    for (const svg of (await drawn(examples)).values()) {
      for (const [, colour] of svg.matchAll(/(?:fill|stroke)="([^"]*)"/g))
        expect([...palette, "none"]).toContain(colour);
    }
  });

  test("a page with every chart in it is valid HTML with ids that never meet", async () => {
    const figures = [...(await drawn(examples)).values()].map((svg) => `<figure>${svg}</figure>`).join("");
    const page = `<!DOCTYPE html><html lang="en"><head><title>charts</title></head><body>${figures}</body></html>`;
    const checker = new HtmlValidate({
      extends: ["html-validate:standard"],
      rules: { "no-inline-style": "error", "no-dup-id": "error" },
    });
    const result = await checker.validateString(page);
    expect(result.results.flatMap((r) => r.messages.map((m) => `${m.ruleId}: ${m.message}`))).toEqual([]);
  });

  test("numbers are rounded to a tenth of a px", async () => {
    for (const svg of (await drawn(examples)).values()) {
      for (const number of numbers(svg)) expect(Math.abs(number * 10 - Math.round(number * 10))).toBeLessThan(1e-6);
    }
  });

  test("a chart weighs at most 1.3 KB zipped on average, and none above 1.6 KB", async () => {
    const sizes = [...(await drawn(examples)).values()].map((svg) => gzipSync(svg, { level: 9 }).length);
    expect(sizes.reduce((a, b) => a + b, 0) / sizes.length).toBeLessThanOrEqual(1300);
    expect(Math.max(...sizes)).toBeLessThanOrEqual(1600);
  });

  test("time scales are UTC: no compiled spec has a local one", () => {
    const text = examples.map((chart) => JSON.stringify(compiled(chart))).join("\n");
    expect(text).toMatch(/"type":"utc"/);
    expect(text).not.toMatch(/"type":"time"/);
    expect(text).not.toMatch(/(?<!utc)(?<![a-z])(timeFormat|timeOffset|datetime|timeParse)\(/i);
  });

  test("no canvas is installed for Vega to measure or draw with", () => {
    const lock = readFileSync(new URL("../../package-lock.json", import.meta.url), "utf8");
    expect(lock).toContain('"node_modules/vega-canvas"');
    expect(lock).not.toMatch(/"node_modules\/(?:[^"]*\/)?canvas"/);
  });

  test("charts of one kind share one spec, so that a kind is compiled once", () => {
    for (const kind of ["trend", "weeks", "compare"]) {
      expect(new Set(examples.filter((chart) => chart.kind === kind).map((chart) => chart.spec)).size).toBe(1);
    }
  });
});

describe("same input, same bytes", () => {
  test("the order in which charts are drawn does not show in them", async () => {
    const forth = await drawn(examples);
    const back = await drawn(examples.toReversed());
    for (const [id, svg] of forth) expect(back.get(id)).toBe(svg);
  });

  test("charts drawn at the same time come out as they do one by one", async () => {
    const together = await Promise.all(examples.map(drawSvg));
    expect(together).toEqual([...(await drawn(examples)).values()]);
  });

  test("the machine's time zone does not show in a chart", async () => {
    const script = fileURLToPath(new URL("./print-examples.ts", import.meta.url));
    const run = async (zone: string) => {
      const { stdout } = await promisify(execFile)(process.execPath, ["--import", "tsx", script], {
        env: { ...process.env, TZ: zone },
        maxBuffer: 1 << 26,
      });
      const [said, ...svgs] = stdout.split("\n");
      expect(said).toBe(zone);
      return svgs.join("\n");
    };
    const [east, west] = await Promise.all([run("Pacific/Kiritimati"), run("America/Los_Angeles")]);
    expect(west).toBe(east);
    expect(east).toBe([...(await drawn(examples)).values()].join("\n"));
  });

  test("a month is named in the language of its own chart, whatever the one before spoke", async () => {
    const chart = (locale: string) =>
      weeksChart("weeks-0", { weeks: weeks(20, ["tee"], false), period: PERIOD, away: [] }, WEEKS_WORDS, locale);
    const spanish = await drawSvg(chart("es"));
    expect(spanish).toContain(">ene<");
    expect(await drawSvg(chart("en"))).toContain(">Jan<");
    expect(await drawSvg(chart("es"))).toBe(spanish);
  });
});

describe("what cannot be drawn honestly stops the chart by name", () => {
  const gain = PARTS.gain!;
  const withMean = (mean: number) =>
    trendChart("trend-7", { ...gain, series: series([session(day(1), mean, 5)]) }, TREND_WORDS, "en");

  test.each([Number.NaN, Number.POSITIVE_INFINITY])("a session mean of %s", async (mean) => {
    const drawing = drawSvg(withMean(mean));
    await expect(drawing).rejects.toBeInstanceOf(ChartError);
    await expect(drawing).rejects.toMatchObject({ chart: "trend-7" });
  });

  test("a data set that the spec does not have", async () => {
    const chart = { ...withMean(60), data: { swings: [] } };
    await expect(drawSvg(chart)).rejects.toThrow(/^chart trend-7: .*swings/);
  });

  test("an id that could not stand in the page", async () => {
    await expect(drawSvg({ ...withMean(60), id: 'x" onload="' })).rejects.toBeInstanceOf(ChartError);
  });

  test("a second spec under the name of a kind", async () => {
    await drawSvg(withMean(60));
    await expect(drawSvg({ ...withMean(60), spec: { ...withMean(60).spec } })).rejects.toThrow(/two specs/);
  });
});

describe("any season", () => {
  const value = fc.double({ min: -1e4, max: 1e4, noNaN: true });
  const sessions = fc.array(
    fc.record({ at: fc.integer({ min: -40, max: 400 }), mean: value, n: fc.integer({ min: 1, max: 400 }) }),
    { maxLength: 30 },
  );

  test("gives a trend chart of finite numbers on a bounded sheet", async () => {
    await fc.assert(
      fc.asyncProperty(sessions, fc.option(value), value, value, async (list, goal, start, end) => {
        const made = list.map((s) => session(day(s.at), s.mean, s.n));
        const trend = made.length > 2 ? line(start, end, 0.3) : series([]).trend;
        const parts = {
          series: series(made, { trend }),
          period: PERIOD,
          away: [],
          goal: goal === null ? null : { low: goal, high: goal },
          notes: [],
          beside: [],
          plans: [],
        };
        const found = numbers(await drawSvg(trendChart("trend-1", parts, TREND_WORDS, "en")));
        expect(found.every((n) => Number.isFinite(n) && Math.abs(n) < 1000)).toBe(true);
      }),
      { numRuns: 40 },
    );
  });

  test("gives a comparison of finite numbers on a bounded sheet", async () => {
    const row = fc.record({ label: fc.constant("Tee"), first: value, last: value });
    await fc.assert(
      fc.asyncProperty(fc.array(row, { maxLength: 6 }), async (rows) => {
        const words = { xTitle: "x, mph", first: "first", last: "last", decimals: 1 };
        const found = numbers(await drawSvg(compareChart("compare-1", rows, words, "en")));
        expect(found.every((n) => Number.isFinite(n) && Math.abs(n) < 1000)).toBe(true);
      }),
      { numRuns: 30 },
    );
  });
});
