import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { describe, expect, test } from "vitest";
import { CANONICAL_HEADER } from "../../src/schema/columns.ts";
import { Facility } from "../../src/schema/facility.ts";
import { MetricsFile } from "../../src/schema/metric.ts";
import { Assessment, Closing, DrillsFile, Note, Plan } from "../../src/schema/pages.ts";
import { BallRow, BlockRow, DeviceRow, FeedRow, ImplementRow } from "../../src/schema/tables.ts";
import { SEASON_END, SEASON_START } from "./calendar.ts";
import { BEFORE_SEASON, DAY_FIRST, EXPORTED_TWICE, FAULTS, GUEST, UNKNOWN_BAT } from "./faults.ts";
import { generateDemo } from "./generate.ts";
import {
  demo,
  front,
  numberIn,
  once,
  onTablets,
  profiles,
  records,
  swingPaths,
  swings,
  toldAgain,
  whole,
} from "./season.ts";
import { STORIES } from "./stories.ts";

const root = fileURLToPath(new URL("../..", import.meta.url));

function committed(): string[] {
  return ["content", "data"].flatMap((folder) =>
    readdirSync(join(root, folder), { recursive: true, withFileTypes: true })
      .filter((entry) => entry.isFile())
      .map((entry) => join(entry.parentPath, entry.name).slice(root.length).replaceAll("\\", "/")),
  );
}

const count = (wanted: (row: Record<string, string>) => boolean): number => once.filter(wanted).length;

describe("the demo season in the repository", () => {
  test("is what the generator makes, byte for byte, with no file missing and none too many", () => {
    expect(committed().sort()).toEqual([...demo.keys()].sort());
    for (const [path, text] of demo) {
      expect(readFileSync(join(root, path)).equals(Buffer.from(text, "utf8")), `${path} differs`).toBe(true);
    }
  });

  test("comes out the same when it is made twice", () => {
    expect([...generateDemo()]).toEqual([...demo]);
  });

  test("has nine hitters, and at least twelve thousand swings in less than 2.6 MB", () => {
    const folders = new Set([...demo.keys()].flatMap((path) => /^content\/athletes\/([^/]+)\//.exec(path)?.[1] ?? []));
    expect([...folders].sort()).toEqual(STORIES.map((story) => story.id).sort());
    expect(folders.size).toBe(9);
    const names = new Set(once.map((row) => row.athlete_id));
    for (const { id } of STORIES) expect(names).toContain(id);
    expect(swings.length).toBeGreaterThanOrEqual(12_000);
    expect(swings.length).toBeLessThanOrEqual(15_000);
    const bytes = [...demo].reduce(
      (sum, [path, text]) => sum + (path.startsWith("data/") ? Buffer.byteLength(text) : 0),
      0,
    );
    expect(bytes).toBeLessThan(2_600_000);
  });
});

describe("the demo's people and files", () => {
  test("keep to the formats of the season folder", () => {
    Facility.parse(front("content/facility.md"));
    DrillsFile.parse(front("content/drills.md"));
    MetricsFile.parse(front("content/metrics.md"));
    for (const path of demo.keys()) {
      if (/\/assessment\.md$/.test(path)) Assessment.parse(front(path));
      if (/\/plan\.md$/.test(path)) Plan.parse(front(path));
      if (/\/closing(\.es)?\.md$/.test(path)) Closing.parse(front(path));
      if (/\/notes\//.test(path)) Note.parse(front(path));
    }
    const tables = { implements: ImplementRow, balls: BallRow, feeds: FeedRow, devices: DeviceRow };
    for (const [name, schema] of Object.entries(tables)) {
      for (const row of records(`data/${name}.csv`)) schema.parse(row);
    }
    for (const path of demo.keys()) {
      if (path.startsWith("data/blocks/")) for (const row of records(path)) BlockRow.parse(row);
    }
  });

  test("carry the tablet's names in their profiles", () => {
    for (const { story, profile } of profiles) expect(profile.aliases).toContain(story.alias);
  });

  test("have agreed in eight cases: guardians for minors, adults for themselves", () => {
    const agreed = profiles.filter(({ profile }) => (profile.consent ?? []).length > 0);
    expect(agreed.length).toBe(8);
    for (const { profile } of agreed) {
      const minor = String(profile.born) > `${Number(SEASON_END.slice(0, 4)) - 18}${SEASON_END.slice(4)}`;
      expect(profile.consent?.[0]?.as, profile.name).toBe(minor ? "guardian" : "self");
    }
    const open = profiles.filter(({ profile }) => profile.consent === undefined);
    expect(open.map(({ profile }) => profile.name)).toEqual(["Rufus Ellingthorpe"]);
    expect(String(open[0]?.profile.born) > "2008-02-22").toBe(true);
  });

  test("name only drills, bats, balls and devices that exist", () => {
    const ids = (path: string): Set<string> => new Set(records(path).map((row) => row.id ?? ""));
    const bats = ids("data/implements.csv").add("game").add("").add(UNKNOWN_BAT);
    const balls = ids("data/balls.csv").add("");
    const devices = ids("data/devices.csv").add("");
    const drills = new Map(DrillsFile.parse(front("content/drills.md")).drills.map((drill) => [drill.id, drill]));
    const named = (column: string): string[] => [...new Set(whole.map((row) => row[column] ?? ""))];
    for (const bat of named("implement")) expect(bats).toContain(bat);
    for (const ball of named("ball")) expect(balls).toContain(ball);
    for (const device of [...named("device_bat"), ...named("device_ball")]) expect(devices).toContain(device);
    const drilled = whole.filter((row) => row.drill !== "");
    // Only a game has no drill.
    expect(whole.filter((row) => row.drill === "" && row.place !== "game")).toEqual([]);
    const places = new Set(drilled.map((row) => `${row.drill} ${row.environment}`));
    for (const place of places) {
      const [drill = "", environment] = place.split(" ");
      expect(drills.get(drill)?.environment, drill).toBe(environment);
    }
    for (const { id } of STORIES) {
      const plan = Plan.parse(front(`content/athletes/${id}/plan.md`));
      const items = plan.items ?? [];
      expect(items.length).toBeGreaterThanOrEqual(4);
      expect(items.length).toBeLessThanOrEqual(6);
      for (const item of items) expect([...drills.keys()]).toContain(item.drill);
    }
  });

  test("say on the facility's page that everything is invented, in both languages", () => {
    const { notice } = Facility.parse(front("content/facility.md"));
    expect(notice).toMatchObject({
      en: expect.stringContaining("all invented"),
      es: expect.stringContaining("inventados"),
    });
  });

  test("write notes and messages without figures of their own", () => {
    for (const [path, text] of demo) {
      if (!/\/(notes\/.*|closing.*|assessment|plan)\.md$/.test(path)) continue;
      expect(text.replace(/^---\n[\s\S]*?\n---\n/, ""), path).not.toMatch(/\d/);
    }
  });

  test("use columns of the canonical header alone where a tablet wrote them, in miles and feet or in kilometres and metres", () => {
    for (const path of swingPaths) {
      const header = (onTablets.get(path) ?? "").replace("\uFEFF", "").split("\n")[0]?.split(",") ?? [];
      for (const column of header) {
        expect(CANONICAL_HEADER).toContain(column.replace(/_kmh$/, "_mph").replace(/_m$/, "_ft"));
      }
    }
  });
});

describe("the faults of the demo's exports", () => {
  const speed = (row: Record<string, string>): number | undefined => numberIn(row, "bat_speed_mph");

  test.each<[keyof typeof FAULTS, number]>([
    ["misreadHigh", count((row) => (speed(row) ?? 0) > 110)],
    ["misreadLow", count((row) => (speed(row) ?? 99) < 15)],
    ["decimalComma", count((row) => /^\d+,\d$/.test(row.bat_speed_mph ?? ""))],
    ["shortRow", once.length - whole.length],
    ["dayFirstDate", count((row) => row.date === DAY_FIRST.wrong)],
    ["unknownBat", count((row) => row.implement === UNKNOWN_BAT)],
    ["guest", count((row) => row.athlete_id === GUEST)],
    ["beforeSeason", count((row) => row.date === BEFORE_SEASON)],
    ["noBat", whole.filter((row) => row.implement === "").length],
    ["noBatSpeed", whole.filter((row) => row.exit_velocity_mph !== "" && row.bat_speed_mph === "").length],
    ["doubled", once.length - new Set(once.map((row) => Object.values(row).join("|"))).size],
  ])("%s is there as often as the table of faults says", (fault, found) => {
    expect(found).toBe(FAULTS[fault].rows);
  });

  test("one file was exported twice under two names", () => {
    expect(demo.get(EXPORTED_TWICE.again)).toBe(demo.get(EXPORTED_TWICE.file));
    expect(records(EXPORTED_TWICE.file).length).toBeGreaterThan(50);
  });

  test("no swing but the doubled ones, and those that two sensors saw, shares athlete, day, time and rep with another", () => {
    const rest = whole.filter((row) => row.athlete_id !== GUEST && row.date !== DAY_FIRST.wrong);
    const keys = rest.map((row) => [row.athlete_id, row.date, row.time, row.round, row.rep].join("|"));
    expect(keys.length - new Set(keys).size).toBe(FAULTS.doubled.rows + toldAgain.length);
  });

  test("all other days lie inside the season", () => {
    for (const row of once) {
      if (row.date === BEFORE_SEASON || row.date === DAY_FIRST.wrong) continue;
      expect((row.date ?? "") >= SEASON_START && (row.date ?? "") <= SEASON_END).toBe(true);
    }
  });
});
