import { describe, expect, test } from "vitest";
import { ChartError } from "../../src/charts/chart.ts";
import { roundNumbers } from "../../src/charts/round-numbers.ts";
import { stripSvg } from "../../src/charts/strip.ts";

const sheet = (inside: string) =>
  `<svg xmlns="http://www.w3.org/2000/svg" xmlns:xlink="http://www.w3.org/1999/xlink" version="1.1" class="marks" width="10" height="10" viewBox="0 0 10 10">${inside}</svg>`;
const HEAD = '<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 10 10" text-rendering="geometricPrecision"';

describe("a stripped drawing", () => {
  test("has no English of its own for screen readers, no class, style or link", () => {
    const svg = sheet(
      '<g class="mark-rect" role="graphics-object" aria-label="x: 3" style="mix-blend-mode: multiply;"><path d="M0,0h1v1Z" aria-hidden="true" href="#"/></g>',
    );
    expect(stripSvg("c", svg)).toBe(`${HEAD}><path d="M0,0h1v1Z"/></svg>`);
  });

  test("writes a circle as a circle, at its place", () => {
    const svg = sheet(
      '<path transform="translate(14.742,98.925)" d="M3.464,0A3.464,3.464,0,1,1,-3.464,0A3.464,3.464,0,1,1,3.464,0" fill="var(--mark)"/>',
    );
    expect(stripSvg("c", svg)).toBe(`${HEAD} fill="var(--mark)"><circle cx="14.7" cy="98.9" r="3.5"/></svg>`);
  });

  test("writes a shifted line with its real ends", () => {
    expect(stripSvg("c", sheet('<line transform="translate(313,10.3)" x2="-313" y2="0"/>'))).toBe(
      `${HEAD}><line x1="313" y1="10.3" x2="0" y2="10.3"/></svg>`,
    );
  });

  test("moves what all siblings share to their group, and leaves the rest alone", () => {
    const svg = sheet(
      '<g transform="translate(1,1)"><path d="M1" fill="a" stroke="b"/><path d="M2" fill="a"/></g><path d="M3"/>',
    );
    expect(stripSvg("c", svg)).toBe(
      `${HEAD}><g transform="translate(1,1)" fill="a"><path d="M1" stroke="b"/><path d="M2"/></g><path d="M3"/></svg>`,
    );
  });

  test("numbers ids by order under the chart's name, whatever Vega had counted to", () => {
    const svg = (n: number) =>
      sheet(
        `<g clip-path="url(#clip${n})"><path d="M0,0h1Z"/></g><defs><clipPath id="clip${n}"><path d="M0,0h9Z"/></clipPath></defs>`,
      );
    expect(stripSvg("trend-3", svg(1))).toBe(stripSvg("trend-3", svg(17)));
    expect(stripSvg("trend-3", svg(17))).toContain('clip-path="url(#trend-3-1)"');
    expect(stripSvg("trend-3", svg(17))).toContain('<clipPath id="trend-3-1">');
  });

  test("keeps the spaces and entities of its words", () => {
    expect(stripSvg("c", sheet("<text>a &amp; b &lt; c</text>"))).toContain("<text>a &amp; b &lt; c</text>");
  });

  test("with a value that is no number is refused under the chart's name", () => {
    expect(() => stripSvg("trend-3", sheet('<path d="M0,NaN"/>'))).toThrow(ChartError);
    expect(() => stripSvg("trend-3", sheet('<path d="M0,NaN"/>'))).toThrow(/trend-3/);
  });

  test("that is cut short is refused", () => {
    expect(() => stripSvg("c", sheet("<g>"))).toThrow(SyntaxError);
  });
});

test.each([
  ["d", "M3.402,138.724L-0.04,1e-7", "M3.4,138.7L0,0"],
  ["transform", "translate(58.97,149)", "translate(59,149)"],
  ["fill-opacity", "0.2249", "0.22"],
  ["font-weight", "600", "600"],
  ["fill", "var(--mark-2.55)", "var(--mark-2.55)"],
])("numbers of %s are rounded only where they are lengths or opacities", (name, value, rounded) => {
  expect(roundNumbers(name, value)).toBe(rounded);
});
