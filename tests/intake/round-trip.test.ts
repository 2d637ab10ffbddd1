import fc from "fast-check";
import { expect, test } from "vitest";
import { seasonOf } from "./season-of.ts";

const marks = fc.constantFrom(",", ";", "\t", "|");
const ends = fc.constantFrom("\n", "\r\n");
/** Text that stays itself when spaces at its ends go. */
const comment = fc
  .array(fc.constantFrom("a", "\u00e9", '"', ",", ";", "|", "\t", "\n", " ", "0", "\ud83e\udd4e"), { maxLength: 8 })
  .map((signs) => signs.join("").trim());
const tenths = (lo: number, hi: number) => fc.integer({ min: lo * 10, max: hi * 10 }).map((value) => value / 10);
const rep = fc.record({
  day: fc
    // Up to a few months after the season: far beyond, a date is set aside as a mistyped year.
    .integer({ min: 0, max: 2500 })
    .map((days) => new Date(Date.UTC(2020, 0, 1) + days * 86_400_000).toISOString().slice(0, 10)),
  speed: fc.option(tenths(15, 110)),
  launch: fc.option(tenths(-90, 90)),
  side: fc.option(fc.constantFrom("left", "right")),
  comment: fc.option(comment.filter((text) => text !== "")),
});

test("reps written as CSV, with any mark between cells, come back as they were", async () => {
  await fc.assert(
    fc.asyncProperty(
      fc.array(rep, { minLength: 1, maxLength: 20 }),
      marks,
      ends,
      fc.boolean(),
      fc.boolean(),
      async (reps, mark, end, comma, always) => {
        const header = ["who", "day", "speed", "launch", "side", "said"];
        const number = (value: number | null): string =>
          value === null ? "" : String(value).replace(".", comma ? "," : ".");
        const quote = (cell: string): string =>
          always || /["\r\n]/.test(cell) || cell.includes(mark) ? `"${cell.replaceAll('"', '""')}"` : cell;
        const lines = reps.map((one) =>
          ["ana-l", one.day, number(one.speed), number(one.launch), one.side ?? "", one.comment ?? ""]
            .map(quote)
            .join(mark),
        );
        const mapping = {
          label: "Any",
          header,
          delimiter: mark,
          decimal: comma ? "," : ".",
          columns: {
            who: { field: "athlete_id" },
            day: { field: "date" },
            speed: { field: "bat_speed" },
            launch: { field: "launch_angle" },
            side: { field: "side" },
            said: { field: "comment" },
          },
        };
        const season = await seasonOf({
          "data/mappings/any.json": JSON.stringify(mapping),
          "data/swings/a.csv": [header.join(mark), ...lines, ""].join(end),
        });
        expect(season.setAside).toEqual([]);
        const read = season.athletes[0]?.reps;
        expect(read?.date).toEqual(reps.map(({ day }) => day));
        expect(read?.numbers).toEqual({
          bat_speed: reps.map(({ speed }) => speed),
          launch_angle: reps.map(({ launch }) => launch),
        });
        expect(read?.words).toEqual({
          side: reps.map(({ side }) => side),
          comment: reps.map(({ comment: said }) => said),
        });
        const starts = reps.map((_, index) => 2 + index + breaksBefore(reps, index));
        expect(read?.line).toEqual(starts);
      },
    ),
    { numRuns: 200 },
  );
});

const breaksBefore = (reps: readonly { comment: string | null }[], index: number): number =>
  reps.slice(0, index).reduce((sum, { comment: said }) => sum + (said ?? "").split("\n").length - 1, 0);
