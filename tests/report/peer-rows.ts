import type { PeerAsked } from "../../src/report/peers.ts";
import { BUILT_IN_METRICS } from "../../src/schema/metric.ts";
import type { Reference } from "../../src/schema/season.ts";

type About = Omit<Reference, "kind">;

const ABOUT: About = {
  metric: "bat_speed",
  pointOnBat: "tip",
  environment: "tee",
  implement: "game",
  sport: "baseball",
  sex: "male",
  level: "high-school",
  ages: [null, null],
  n: null,
  source: "Invented league",
  year: 2024,
  at: { file: "data/reference/a.csv", line: 2 },
};

/** One athlete's value in a reference sample. */
export const valueRow = (value: number, over: Partial<About> = {}): Reference => ({
  ...ABOUT,
  n: 1,
  ...over,
  kind: "value",
  value,
});
export const valueRows = (values: readonly number[], over: Partial<About> = {}) =>
  values.map((value) => valueRow(value, over));
export const lmsRow = (l: number, m: number, s: number, over: Partial<About> = {}): Reference => ({
  ...ABOUT,
  ...over,
  kind: "lms",
  l,
  m,
  s,
});
export const meanSdRow = (mean: number, sd: number, over: Partial<About> = {}): Reference => ({
  ...ABOUT,
  ...over,
  kind: "mean-sd",
  mean,
  sd,
});
export const lineRow = (value: number, over: Partial<About> = {}): Reference => ({
  ...ABOUT,
  ...over,
  kind: "line",
  value,
});
/** The same rows along age, one age each. */
export const aged = (ages: readonly number[], values: readonly number[], over: Partial<About> = {}) =>
  values.map((value, i) => valueRow(value, { ...over, ages: [ages[i]!, ages[i]!] }));

export const metricOf = (id: string) => BUILT_IN_METRICS.find((metric) => metric.id === id)!;

/** A high-school hitter's bat speed off the tee at both ends of a season. */
export function asked(over: Partial<PeerAsked> = {}): PeerAsked {
  return {
    metric: metricOf("bat_speed"),
    condition: { environment: "tee", implement: "game", purpose: "training" },
    pointOnBat: "tip",
    sport: "baseball",
    sex: "male",
    level: "high-school",
    start: { value: 60, age: 16 },
    end: { value: 64, age: 16.4 },
    ...over,
  };
}
export const ending = (value: number, age: number | null = 16.4) => asked({ start: null, end: { value, age } });
