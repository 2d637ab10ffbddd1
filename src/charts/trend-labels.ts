import type { ChartRow, GoalMark } from "./chart.ts";
import { LABEL_PX, LINE_PX } from "./frame.ts";
import { type Box, boxAround, leastCovering } from "./place-labels.ts";
import { textWidth } from "./text-width.ts";
import { NOTE_LIFT } from "./trend-spec.ts";

/** What stands on the plot of a trend chart; times in epoch milliseconds, values in the series' unit. */
export interface LabelInput {
  readonly blocks: readonly { x: number; x2: number; y: number; which: "first" | "last" }[];
  /** `size` is the dot's area, px². */
  readonly dots: readonly { x: number; y: number; size: number }[];
  /** Points along the session line. */
  readonly line: readonly { x: number; y: number }[];
  readonly goal: GoalMark | null;
  /** Marks at the foot of the plot. */
  readonly notes: readonly { x: number }[];
  readonly awayWords: readonly { x: number; dx: number; text: string }[];
  readonly words: { readonly goal: string; readonly first: string; readonly last: string };
  readonly xDomain: readonly [number, number];
  readonly yDomain: readonly [number, number];
  /** Size of the plot, px. */
  readonly plot: { readonly width: number; readonly height: number };
}

/** Rows of the two text layers: `words` { x, y, dx, dy, text } shifted in px from a marked place, `away` { x, dx, y, text } with y in px. */
export interface TrendLabels {
  readonly words: readonly ChartRow[];
  readonly away: readonly ChartRow[];
}

type Place = readonly [number, number];

/** Words beside the goal line, the two block bars and the absences, each where it covers least of the dots and lines. */
export function trendLabels(input: LabelInput): TrendLabels {
  const { plot, words } = input;
  const { px, py } = pixels(input);
  const paper: Box = { left: 0, right: plot.width, top: 0, bottom: plot.height };
  const taken = obstacles(input);

  const free = (text: string, weight: number, places: readonly Place[]): Place => {
    const width = textWidth(text, LABEL_PX, weight);
    const boxes = places.map(([x, y]) => boxAround(x, y, width, LINE_PX));
    const box = leastCovering(boxes, taken, paper);
    taken.push(box);
    return places[boxes.indexOf(box)]!;
  };
  const beside = (text: string, x: number, y: number, places: readonly Place[]): ChartRow => {
    const [cx, cy] = free(text, 600, places);
    return { x, y, dx: cx - px(x), dy: cy - py(y), text };
  };

  const rows: ChartRow[] = [];
  if (input.goal !== null && words.goal !== "") {
    rows.push(
      beside(words.goal, input.xDomain[0], input.goal.high, goalPlaces(words.goal, py(input.goal.high), plot.width)),
    );
  }
  for (const bar of input.blocks) {
    const text = words[bar.which];
    if (text !== "")
      rows.push(beside(text, bar.x, bar.y, barPlaces(text, (px(bar.x) + px(bar.x2)) / 2, py(bar.y), plot.width)));
  }
  const away = input.awayWords.map((row) => {
    const cx = px(row.x) + row.dx;
    const [, y] = free(
      row.text,
      400,
      [8, plot.height - 8, plot.height / 2].map((cy) => [cx, cy] as const),
    );
    return { ...row, y };
  });
  return { words: rows, away };
}

function pixels(input: LabelInput): { px: (t: number) => number; py: (v: number) => number } {
  const { xDomain, yDomain, plot } = input;
  return {
    px: (t) => ((t - xDomain[0]) / (xDomain[1] - xDomain[0])) * plot.width,
    py: (v) => (1 - (v - yDomain[0]) / (yDomain[1] - yDomain[0])) * plot.height,
  };
}

/** Boxes of what is drawn before the words. */
function obstacles(input: LabelInput): Box[] {
  const { px, py } = pixels(input);
  const across = (y: number) => boxAround(input.plot.width / 2, py(y), input.plot.width, 2);
  return [
    ...input.dots.map((dot) => {
      const side = 2 * Math.sqrt(dot.size / Math.PI);
      return boxAround(px(dot.x), py(dot.y), side, side);
    }),
    ...input.notes.map(({ x }) => boxAround(px(x), input.plot.height - NOTE_LIFT, 9, 9)),
    ...input.line.map((point) => boxAround(px(point.x), py(point.y), 12, 3)),
    ...input.blocks.map((bar) => boxAround((px(bar.x) + px(bar.x2)) / 2, py(bar.y), px(bar.x2) - px(bar.x), 4)),
    ...(input.goal === null ? [] : [across(input.goal.low), across(input.goal.high)]),
  ];
}

/** Over the line before under it; at its start, its end, its middle. */
function goalPlaces(text: string, y: number, width: number): Place[] {
  const half = textWidth(text, LABEL_PX, 600) / 2;
  const xs = [half + 2, width - half - 2, width / 2];
  return [-9, 9].flatMap((dy) => xs.map((x) => [x, y + dy] as const));
}

/** Near the bar before farther off, over it before under it. */
function barPlaces(text: string, middle: number, y: number, width: number): Place[] {
  const half = textWidth(text, LABEL_PX, 600) / 2;
  const inside = (x: number) => Math.max(half, Math.min(width - half, x));
  return [10, 14, 18, 23, 28, 34, 40, 48].flatMap((d) =>
    [y - d, y + d].flatMap((cy) => [0, -14, 14].map((dx) => [inside(middle + dx), cy] as const)),
  );
}
