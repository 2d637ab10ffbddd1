import fc from "fast-check";
import { expect, test } from "vitest";
import { sayProblem } from "../../src/cli/messages.ts";
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

const who = fc.constantFrom("ana-l", "ben-k", "Left Out", "nobody", "");
const correction = fc.record({
  file: fc.constantFrom("0.csv", "data/swings/1.csv", "", "gone.csv"),
  line: fc.constantFrom("2", "3", "4", "9", ""),
  athlete: who,
  date: fc.constantFrom("2025-10-06", "2025-10-07", ""),
  block: fc.constantFrom("", "", "1"),
  first: fc.constantFrom("", "1", "2", "0"),
  last: fc.constantFrom("", "2", "3"),
  action: fc.constantFrom("set", "reassign", "void"),
  field: fc.constantFrom("bat_speed", "date", "side", "athlete_id", "rep", "exit_velocity_kmh", "nothing", ""),
  from: fc.constantFrom("61", "615", "fast", "ana-l", "", "left", "13/02/26"),
  to: fc.constantFrom("62", "ben-k", "2025-10-08", "right", "", "Left Out", "nobody"),
});
const logged = fc.record({
  date: fc.constantFrom("2025-10-06", "2025-10-07"),
  owner: fc.constantFrom("evening,", ",ana-l", ",ben-k", ",nobody", ","),
  block: fc.constantFrom("", "1", "2"),
  part: fc.constantFrom("", "a", "b"),
  environment: fc.constantFrom("tee", "machine", ""),
  rounds: fc.constantFrom("", "1", "3", "0"),
  reps: fc.constantFrom("", "1", "4"),
  start: fc.constantFrom("", "", "17:00"),
  measured: fc.constantFrom("", "", "none", "speed"),
});
const LANE = JSON.stringify({
  label: "Lane",
  header: ["Day", "At", "Speed"],
  columns: { Day: { field: "date" }, At: { field: "time" }, Speed: { field: "bat_speed" } },
});
const lane = fc.array(
  fc
    .tuple(cells.date, fc.constantFrom("17:05:09", "17:05:20", "17:08:00", "17:08:09", "late"), cells.speed)
    .map((all) => all.map(quoted).join(",")),
  { maxLength: 12 },
);

test("corrections and a session log move rows about, and lose none", async () => {
  const base = {
    "content/athletes/ben-k/profile.md": "---\nname: Ben\n---\n",
    "content/athletes/cal-m/profile.md": "---\nname: Left Out\nbats: lefty\n---\n",
    "content/facility.md":
      "---\nname: Barn\nseason: { name: W, start: 2025-10-06, end: 2026-02-22 }\ngroups: [{ id: evening, members: [ana-l, ben-k] }]\n---\n",
    "data/mappings/lane.json": LANE,
  };
  const plain = fc.array(row, { maxLength: 14 });
  const cases = fc.tuple(
    plain,
    plain,
    lane,
    fc.array(correction, { maxLength: 6 }),
    fc.array(logged, { maxLength: 5 }),
  );
  await fc.assert(
    fc.asyncProperty(cases, async ([first, second, third, corrections, log]) => {
      const season = await seasonOf({
        ...base,
        "data/swings/0.csv": [HEADER.join(","), ...first, ""].join("\n"),
        "data/swings/1.csv": [HEADER.join(","), ...first, ...second, ""].join("\n"),
        "data/swings/lane.csv": ["Day,At,Speed", ...third, ""].join("\n"),
        "data/corrections.csv": [
          "by,on,reason,file,line,athlete_id,date,block,first,last,action,field,from,to",
          ...corrections.map((c) =>
            [
              "kay",
              "2025-10-20",
              "why",
              c.file,
              c.line,
              c.athlete,
              c.date,
              c.block,
              c.first,
              c.last,
              c.action,
              c.field,
              c.from,
              c.to,
            ].join(","),
          ),
          "",
        ].join("\n"),
        "data/blocks/log.csv": [
          "date,group,athlete_id,block,part,environment,rounds,reps,start,measured",
          ...log.map((b) =>
            [b.date, b.owner, b.block, b.part, b.environment, b.rounds, b.reps, b.start, b.measured].join(","),
          ),
          "",
        ].join("\n"),
      });
      const { read, kept, setAside } = balance(season);
      expect(kept + setAside).toBe(read);
      const places = season.athletes.flatMap(({ reps }) =>
        reps.line.map((line, index) => `${season.swingFiles[reps.file[index] ?? -1]?.file}:${line}`),
      );
      const out = season.setAside.map((one) => `${one.file}:${one.line}`);
      expect(new Set([...places, ...out]).size).toBe(read);
      for (const { reps, log: blocks } of season.athletes) {
        for (const values of Object.values(reps.numbers))
          expect(values.every((value) => value === null || Number.isFinite(value))).toBe(true);
        const assigned = reps.words.assigned?.filter((method) => method !== null).length ?? 0;
        const given = blocks.flatMap((block) => Object.values(block.assigned)).reduce((sum, n) => sum + n, 0);
        expect(assigned).toBeLessThanOrEqual(given);
      }
      for (const problem of season.problems) expect(sayProblem(problem).problem).not.toMatch(/undefined|NaN|\[object/);
    }),
    { numRuns: 200 },
  );
});
