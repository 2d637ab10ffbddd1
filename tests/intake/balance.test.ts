import fc from "fast-check";
import { expect, test } from "vitest";
import { asideOf, balance, seasonOf } from "./season-of.ts";

const HEADER = ["athlete_id", "date", "time", "rep", "side", "bat_speed_mph", "exit_velocity_mph", "comment"];
const cells = {
  athlete: fc.constantFrom("ana-l", "ben-k", "Ana Lindqvist", "Left Out", "nobody", "", "SHARED"),
  date: fc.constantFrom("2025-10-06", "2025-10-07", "13/02/26", "2025-02-29", ""),
  time: fc.constantFrom("17:05:09", "17:05", "", "late"),
  rep: fc.constantFrom("1", "2", "", "1.5"),
  side: fc.constantFrom("left", "right", "", "both"),
  speed: fc.constantFrom("61", "62.5", "", "615", "61,5", "fast"),
  comment: fc.constantFrom("", "ok", "a,b", 'say "hi"', "two\nlines", "   "),
};
const quoted = (cell: string): string => (/[",\n]/.test(cell) ? `"${cell.replaceAll('"', '""')}"` : cell);
const row = fc
  .tuple(cells.athlete, cells.date, cells.time, cells.rep, cells.side, cells.speed, cells.speed, cells.comment)
  .map((all) => all.map(quoted).join(","));
const mess = fc.constantFrom(
  "",
  ",,,,,,,",
  "ana-l,2025-10-06",
  'ana-l,"open',
  'x"y,2025-10-06,,,,61,,',
  "\u0000",
  "﻿",
  "ana-l,2025-10-06,,,,61,,,,,",
);
const file = fc.record({
  rows: fc.array(fc.oneof({ arbitrary: row, weight: 6 }, { arbitrary: mess, weight: 1 }), { maxLength: 25 }),
  header: fc.constantFrom(
    HEADER.join(","),
    HEADER.join(","),
    HEADER.toReversed().join(","),
    "athlete_id,date",
    "a,b",
    "",
  ),
  end: fc.constantFrom("\n", "\r\n"),
  bytes: fc.constantFrom("utf8", "utf8", "latin1", "bom"),
});
type File = typeof file extends fc.Arbitrary<infer T> ? T : never;

const written = ({ rows, header, end, bytes }: File): Uint8Array => {
  const text = [header, ...rows].join(end);
  if (bytes === "bom") return Buffer.from(`\ufeff${text}${end}`);
  return Buffer.from(bytes === "latin1" ? `${text}\u00e9${end}` : text, bytes);
};

test("every data row of every swing file ends in exactly one place, however messy the files are", async () => {
  const profiles = {
    "content/athletes/ben-k/profile.md": "---\nname: Ben\naliases: [shared]\n---\n",
    "content/athletes/cal-m/profile.md": "---\nname: Left Out\naliases: [shared]\nbats: lefty\n---\n",
  };
  await fc.assert(
    fc.asyncProperty(fc.array(file, { minLength: 1, maxLength: 3 }), fc.boolean(), async (files, again) => {
      const all = again && files[0] ? [...files, files[0]] : files;
      const swings = all.map((one, index) => [`data/swings/${index}.csv`, written(one)] as const);
      const season = await seasonOf({ ...profiles, ...Object.fromEntries(swings) });
      const { read, kept, setAside } = balance(season);
      expect(kept + setAside).toBe(read);
      const places = season.athletes.flatMap(({ reps }) =>
        reps.line.map((line, index) => `${season.swingFiles[reps.file[index] ?? -1]?.file}:${line}`),
      );
      const out = season.setAside.map((one) => asideOf(one).split(":").slice(0, 2).join(":"));
      expect(new Set([...places, ...out]).size).toBe(read);
      for (const { file: name, rows } of season.swingFiles) {
        expect([...places, ...out].filter((place) => place.startsWith(`${name}:`))).toHaveLength(rows);
      }
    }),
    { numRuns: 300 },
  );
});

test("rows are counted the way a person counts lines, when every row is one line", async () => {
  const plain = fc.array(
    row.filter((text) => !text.includes("\n")),
    { maxLength: 30 },
  );
  await fc.assert(
    fc.asyncProperty(plain, async (rows) => {
      const season = await seasonOf({ "data/swings/a.csv": [HEADER.join(","), ...rows, ""].join("\n") });
      expect(season.swingFiles[0]?.rows).toBe(rows.length);
    }),
    { numRuns: 100 },
  );
});
