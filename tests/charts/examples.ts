import type { ChartSpec } from "../../src/charts/chart.ts";
import { compareChart } from "../../src/charts/compare.ts";
import { type IntervalRow, intervalsChart } from "../../src/charts/intervals.ts";
import { type PeersParts, type PeersWords, peersChart } from "../../src/charts/peers.ts";
import { type TrendParts, type TrendWords, trendChart } from "../../src/charts/trend.ts";
import { type WeeksParts, type WeeksWords, weeksChart } from "../../src/charts/weeks.ts";
import type { Series, SessionValue } from "../../src/report/schema.ts";

/** Invented numbers in the report's own shapes. */
export const PERIOD = { start: "2025-10-06", end: "2026-02-20" };

export function day(n: number): string {
  return new Date(Date.UTC(2025, 9, 6 + n)).toISOString().slice(0, 10);
}

export function session(date: string, mean: number, n: number): SessionValue {
  return {
    date,
    session: null,
    n,
    mean,
    sd: n > 1 ? 2.1 : null,
    median: mean,
    p90: mean + 2.5,
    max: mean + 4,
    shift: 0,
  };
}

const NO_TREND: Series["trend"] = { sessionLine: null, mixed: null, theilSen: null, ols: null, mannKendall: null };

export function series(sessions: SessionValue[], more: Partial<TrendParts["series"]> = {}): TrendParts["series"] {
  return {
    sessions,
    first: null,
    last: null,
    trend: NO_TREND,
    decimals: 1,
    breaks: [],
    stretches: [],
    joined: false,
    better: "higher",
    window: null,
    worth: null,
    ...more,
  };
}

export function line(start: number, end: number, half: number): Series["trend"] {
  const perWeek = (end - start) / 17;
  const sessionLine = {
    perWeek,
    se: half / 2,
    df: 20,
    ci95: [perWeek - half, perWeek + half] as [number, number],
    lag1: 0.1,
    inflation: 1,
    start,
    end,
  };
  return { ...NO_TREND, sessionLine };
}

function steady(count: number, from: number, rise: number, wobble: number, counts: readonly number[]): SessionValue[] {
  return Array.from({ length: count }, (_, i) =>
    session(
      day(1 + Math.round((i * 126) / count)),
      from + (rise * i) / count + wobble * Math.sin(i * 2.3) + wobble * 0.5 * Math.cos(i * 5.1),
      counts[i % counts.length]!,
    ),
  );
}

function blocks(sessions: SessionValue[], each: number): Pick<Series, "first" | "last"> {
  const block = (part: SessionValue[]) => ({
    from: part[0]!.date,
    to: part.at(-1)!.date,
    sessions: part.length,
    n: part.reduce((sum, s) => sum + s.n, 0),
    mean: part.reduce((sum, s) => sum + s.mean, 0) / part.length,
  });
  return { first: block(sessions.slice(0, each)), last: block(sessions.slice(-each)) };
}

export const TREND_WORDS: TrendWords = {
  yTitle: "Bat speed, mph",
  goal: "goal 72.0",
  away: "away",
  first: "61.9",
  last: "66.4",
};
const AWAY = [{ from: "2025-12-20", to: "2026-01-05" }];

const gain = steady(24, 61, 6, 1.1, [24, 30, 18, 36, 3, 22]);
const drop = steady(16, 74, -1, 0.7, [20, 28, 2]).filter((s) => s.date < "2025-12-20" || s.date > "2026-01-10");
const angle = steady(20, 5, 3, 2.5, [12, 15, 9]);

export const PARTS: Readonly<Record<string, TrendParts>> = {
  gain: {
    series: series(gain, {
      ...blocks(gain, 6),
      trend: line(61.2, 66.9, 0.12),
      worth: { value: 1.5, source: "configured", athletes: null },
    }),
    period: PERIOD,
    away: AWAY,
    goal: { low: 72, high: 72 },
    notes: ["2025-11-20", "2025-10-12", "2025-11-20", "2024-01-01"],
    beside: [],
    plans: [],
  },
  drop: {
    series: series(drop, blocks(drop, 4)),
    period: PERIOD,
    away: AWAY,
    goal: null,
    notes: [],
    beside: [],
    plans: [],
  },
  window: {
    series: series(angle, { ...blocks(angle, 5), trend: line(5, 8, 0.2), better: "window", window: [4, 11] }),
    period: PERIOD,
    away: [],
    goal: { low: 4, high: 11 },
    notes: [],
    beside: [],
    plans: [],
  },
  none: { series: series([]), period: PERIOD, away: AWAY, goal: null, notes: [], beside: [], plans: [] },
  one: {
    series: series([session("2025-11-03", 58.2, 12)]),
    period: PERIOD,
    away: [],
    goal: { low: 60, high: 60 },
    notes: [],
    beside: [],
    plans: [],
  },
  two: {
    series: series([session("2025-11-03", 58.2, 12), session("2026-01-20", 59.6, 3)]),
    period: PERIOD,
    away: [],
    goal: null,
    notes: [],
    beside: [],
    plans: [],
  },
  alike: {
    series: series(Array.from({ length: 9 }, (_, i) => session(day(i * 12), 60, 10))),
    period: PERIOD,
    away: [],
    goal: null,
    notes: [],
    beside: [],
    plans: [],
  },
  seconds: {
    series: series(steady(14, 0.171, -0.012, 0.004, [16, 20]), { decimals: 3 }),
    period: PERIOD,
    away: [{ from: "2025-11-27", to: "2025-11-29" }, ...AWAY],
    goal: { low: 0.15, high: 0.15 },
    notes: [],
    beside: [],
    plans: [],
  },
};

export function trendExamples(): ChartSpec[] {
  const words: Record<string, Partial<TrendWords>> = {
    drop: { yTitle: "Exit velocity, mph", first: "start 74.1", last: "end 73.0" },
    window: { yTitle: "Attack angle, degrees", goal: "goal 4.0 to 11.0", first: "start 5.9", last: "end 7.4" },
    seconds: { yTitle: "Swing time, s", goal: "goal 0.150" },
    one: { goal: "goal 60.0" },
  };
  return Object.entries(PARTS).map(([name, parts]) =>
    trendChart(`trend-${name}`, parts, { ...TREND_WORDS, ...words[name] }, "en"),
  );
}

const NAMES: Record<string, string> = {
  tee: "Tee",
  "front-toss": "Front toss",
  machine: "Machine",
  live: "Live",
  dry: "Dry swings",
  overhand: "Overhand",
};
export const WEEKS_WORDS: WeeksWords = {
  yTitle: "Swings a week",
  environment: (id) => (id === null ? "not noted" : (NAMES[id] ?? id)),
  others: "all other",
  unmeasured: "logged, not measured",
  away: "away",
};

export function weeks(count: number, environments: readonly string[], unmeasured: boolean): WeeksParts["weeks"] {
  return Array.from({ length: count }, (_, i) => {
    const away = i === 11 || i === 12;
    const byEnvironment = environments.map((environment, e) => ({
      environment,
      swings: away ? 0 : Math.round(70 / (e + 1) + 18 * Math.sin(i * (e + 2)) + (e === 2 ? i * 2 : 0)),
    }));
    const swings = byEnvironment.reduce((sum, part) => sum + part.swings, 0);
    return {
      start: day(i * 7),
      days: away ? 0 : 3,
      swings,
      byEnvironment,
      loggedUnmeasured: unmeasured && !away && i % 3 === 0 ? 40 : 0,
    };
  });
}

export function weeksExamples(): ChartSpec[] {
  const three = ["tee", "front-toss", "machine"];
  return [
    weeksChart("weeks-three", { weeks: weeks(20, three, true), period: PERIOD, away: AWAY }, WEEKS_WORDS, "en"),
    weeksChart(
      "weeks-six",
      { weeks: weeks(20, [...three, "live", "dry", "overhand"], true), period: PERIOD, away: [] },
      WEEKS_WORDS,
      "es",
    ),
    weeksChart("weeks-one", { weeks: weeks(20, ["machine"], false), period: PERIOD, away: [] }, WEEKS_WORDS, "en"),
    weeksChart("weeks-none", { weeks: [], period: PERIOD, away: AWAY }, WEEKS_WORDS, "en"),
  ];
}

export function compareExamples(): ChartSpec[] {
  const words = { xTitle: "Bat speed, mph", first: "first 6 sessions", last: "last 6 sessions", decimals: 1 };
  return [
    compareChart(
      "compare-three",
      [
        { label: "Tee", first: 63.2, last: 68.4 },
        { label: "Front toss", first: 62.1, last: 66 },
        { label: "Machine, 60 to 65 mph", first: 60.9, last: 60.4 },
      ],
      words,
      "en",
    ),
    compareChart("compare-alike", [{ label: "Tee", first: 60, last: 60 }], words, "en"),
    compareChart("compare-none", [], words, "en"),
  ];
}

export const PEERS_WORDS: PeersWords = {
  xTitle: "Bat speed, mph",
  start: "Start",
  end: "End",
  startValue: "62.1 mph",
  endValue: "66.0 mph",
  most: "eight of ten",
  half: "middle half",
  hitter: "this hitter",
};
export const BANDS = { p10: 58, p25: 60.5, p50: 63, p75: 66, p90: 69 };

export const PEERS: Readonly<Record<string, PeersParts>> = {
  both: {
    start: { value: 62.1, age: 14.1, percentile: 45, ci95: [38, 52] },
    end: { value: 66, age: 14.5, percentile: 70, ci95: [63, 76] },
    bands: { p10: 59, p25: 61.5, p50: 64, p75: 67, p90: 70 },
    bandsStart: BANDS,
    decimals: 1,
  },
  end: {
    start: null,
    end: { value: 80, age: null, percentile: 99, ci95: null },
    bands: BANDS,
    bandsStart: null,
    decimals: 1,
  },
  neither: { start: null, end: null, bands: BANDS, bandsStart: null, decimals: 1 },
};

export function peersExamples(): ChartSpec[] {
  return Object.entries(PEERS).map(([name, parts]) => peersChart(`peers-${name}`, parts, PEERS_WORDS, "en"));
}

export function intervalsExamples(): ChartSpec[] {
  const words = { xTitle: "Bat speed, mph", none: 0, decimals: 1 };
  const rows: IntervalRow[] = [
    { label: "Tee → Machine", value: -2.7, range: [-3, -2.4], expected: [-2, -1], said: "−2.7 mph" },
    { label: "Tee → Toss", value: 0.4, range: null, expected: null, said: "+0.4 mph" },
  ];
  return [intervalsChart("intervals-two", rows, words, "en"), intervalsChart("intervals-none", [], words, "es")];
}

export function allExamples(): ChartSpec[] {
  return [...trendExamples(), ...weeksExamples(), ...compareExamples(), ...peersExamples(), ...intervalsExamples()];
}
