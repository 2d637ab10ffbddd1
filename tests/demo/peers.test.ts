import { expect, test } from "vitest";
import { ReferenceRow } from "../../src/schema/tables.ts";
import { demo, profiles, records } from "./season.ts";

const FILE = "data/reference/earlier-seasons.csv";
const rows = records(FILE);

test("the demo's reference sample keeps to its format, and says in every row that it is invented", () => {
  expect(rows.length).toBeGreaterThan(400);
  expect(rows.length).toBeLessThan(500);
  for (const row of rows) {
    expect(ReferenceRow.parse(row)).toMatchObject({ kind: "value", implement: "game" });
    expect(row.source).toContain("(invented)");
  }
});

test("nobody of the demo is in it by name or id", () => {
  const text = demo.get(FILE) ?? "";
  for (const { story, profile } of profiles) {
    expect(text).not.toContain(story.id);
    for (const word of profile.name.split(" ")) expect(text).not.toContain(word);
  }
});

test("it has enough of the high schools and the college men, and too few of the youngest and of the professionals", () => {
  const onTee = rows.filter(({ metric, environment }) => metric === "bat_speed" && environment === "tee");
  const sizes = new Map<string, number>();
  for (const { level = "", sport } of onTee) sizes.set(`${sport} ${level}`, (sizes.get(`${sport} ${level}`) ?? 0) + 1);
  const many = ["baseball high-school", "softball high-school", "baseball college"];
  for (const [kind, n] of sizes) expect(n >= 20, kind).toBe(many.includes(kind));
  expect(sizes.size).toBe(5);
});

test("values rise with age in the high schools", () => {
  const boys = rows.filter(
    ({ sport, level, metric }) => `${sport} ${level} ${metric}` === "baseball high-school bat_speed",
  );
  const mean = (list: readonly number[]) => list.reduce((sum, one) => sum + one, 0) / list.length;
  const values = (from: number, to: number) =>
    boys.filter(({ age_lo }) => Number(age_lo) >= from && Number(age_lo) < to).map(({ value }) => Number(value));
  expect(mean(values(17, 19)) - mean(values(14, 15.5))).toBeGreaterThan(3);
});
