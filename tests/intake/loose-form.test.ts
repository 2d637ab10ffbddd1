import { expect, test } from "vitest";
import { looseForm } from "../../src/intake/loose-form.ts";
import { seasonOf } from "./season-of.ts";

test.each([
  ["dd/MM/yyyy", "d/M/yyyy"],
  ["yyyy-MM-dd HH:mm:ss", "yyyy-M-d H:mm:ss"],
  ["yyyyMMdd", "yyyyMMdd"],
  ["dd MMM yyyy", "d MMM yyyy"],
])("%s is read as %s", (form, loose) => {
  expect(looseForm(form)).toBe(loose);
});

test("a day written with one digit is read by a mapping whose form has two, and with two as well", async () => {
  const mapping = {
    label: "Lane",
    header: ["Who", "Day", "Speed"],
    columns: {
      Who: { field: "athlete_id" },
      Day: { field: "date", form: "dd/MM/yyyy" },
      Speed: { field: "bat_speed" },
    },
  };
  const season = await seasonOf({
    "data/mappings/m.json": JSON.stringify(mapping),
    "data/swings/a.csv": "Who,Day,Speed\nana-l,3/11/2025,61\nana-l,04/11/2025,62\nana-l,31/11/2025,62\n",
  });
  expect(season.athletes[0]?.reps.date).toEqual(["2025-11-03", "2025-11-04"]);
  expect(season.setAside.map(({ reason, value }) => [reason, value])).toEqual([["unreadable-date", "31/11/2025"]]);
});
