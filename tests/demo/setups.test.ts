import { beforeAll, describe, expect, test } from "vitest";
import type { Judgement } from "../../src/build/judge.ts";
import { type Bridge, seasonBridges } from "../../src/report/bridges.ts";
import type { Series } from "../../src/report/schema.ts";
import { BRIDGED, UNBRIDGED } from "./devices.ts";
import { judged } from "./judged.ts";
import { NO_SWING, WRONG_BAT, WRONG_NAME } from "./mistakes.ts";
import { demo } from "./season.ts";

let season: Judgement;
let bridges: readonly Bridge[];
beforeAll(async () => {
  season = await judged(demo);
  bridges = seasonBridges(season.season);
});

const told = (id: string) => season.told.find(({ athlete }) => athlete.id === id)!;
const measures = (id: string, metric: string): Series[] =>
  told(id).report.series.filter((one) => one.metric === metric && one.measure !== null);
const inside = (value: number, [low, high]: readonly [number, number]): boolean => low <= value && value <= high;

describe("the two sensors that were replaced", () => {
  test("an evening with both tells what Desmond's new one reads above the old, with its interval", () => {
    const found = bridges.find(({ metric }) => metric === "bat_speed")!;
    expect(found).toMatchObject({ method: "paired", date: BRIDGED.both });
    expect(found.n).toBeGreaterThanOrEqual(20);
    expect(inside(BRIDGED.mph, found.ci95)).toBe(true);
    expect(found.ci95[0]).toBeGreaterThan(1);
  });

  test("in angle and time the two agree, and nobody else's line has a bridge", () => {
    expect(bridges.map(({ metric }) => metric).sort()).toEqual(["attack_angle", "bat_speed", "swing_time"]);
    for (const { metric, ci95 } of bridges) if (metric !== "bat_speed") expect(inside(0, ci95), metric).toBe(true);
    const { devices } = season.season;
    for (const { from, to } of bridges) {
      expect([devices[from]?.id, devices[to]?.id]).toEqual([BRIDGED.before, BRIDGED.after]);
    }
  });

  test("Desmond's lines are joined over it and show no change, with the offset's doubt in the interval", () => {
    const lines = measures("desmond-farrowick", "bat_speed");
    expect(lines).toHaveLength(3);
    for (const { joined, breaks, change, sessions } of lines) {
      expect(joined).toBe(true);
      expect(breaks.map(({ date, kind, to }) => [date, kind, to])).toEqual([
        [BRIDGED.both, "bat-sensor", BRIDGED.after],
      ]);
      expect(inside(0, change!.ci95)).toBe(true);
      expect(
        sessions.filter(({ date }) => date < BRIDGED.both).every(({ shift }) => inside(shift, breaks[0]!.bridge!.ci95)),
      ).toBe(true);
      expect(sessions.filter(({ date }) => date > BRIDGED.both).every(({ shift }) => shift === 0)).toBe(true);
    }
  });

  test("unjoined, his machine line would have shown a gain that is the sensor's alone", () => {
    const machine = measures("desmond-farrowick", "bat_speed").find(
      ({ condition }) => condition.environment === "machine",
    )!;
    const [before, after] = machine.stretches.map(({ mean }) => mean);
    expect(after! - before!).toBeGreaterThan(1);
    expect(machine.change!.estimate).toBeLessThan(0.8);
  });

  test("Bastian's lines stay broken: nothing was measured with both", () => {
    for (const { joined, breaks, change } of measures("bastian-oakhollow", "bat_speed")) {
      expect(joined).toBe(false);
      expect(breaks).toEqual([
        { date: UNBRIDGED.from, kind: "bat-sensor", to: UNBRIDGED.after, bridge: null, bat: null },
      ]);
      expect(change).toBeNull();
    }
  });

  test("nobody else's bat speed is touched by either", () => {
    for (const { athlete, report } of season.told) {
      if (["bastian-oakhollow", "desmond-farrowick"].includes(athlete.id)) continue;
      const kinds = report.series.flatMap(({ breaks }) => breaks.map(({ kind }) => kind));
      expect(
        kinds.filter((kind) => kind !== "game-bat"),
        athlete.id,
      ).toEqual([]);
    }
  });
});

describe("the corrections of the demo", () => {
  test("are all followed, each on the rows it means", () => {
    const { corrections } = season.season;
    expect(corrections.map(({ action, rows, overruledBy }) => [action, rows.length, overruledBy])).toEqual([
      ["void", 1, null],
      ["reassign", WRONG_NAME.rows, null],
      ["set", WRONG_BAT.rows, null],
    ]);
    const [voided, reassigned] = corrections;
    expect(voided?.rows[0]).toMatchObject({ file: NO_SWING.file, athlete: NO_SWING.hitter });
    for (const { athlete, now } of reassigned?.rows ?? []) {
      expect([athlete, now]).toEqual([WRONG_NAME.written, WRONG_NAME.hitter]);
    }
  });

  test("the swings under a wrong name are Marisol's now, and both ledgers tell", () => {
    const { reps } = told(WRONG_NAME.hitter).athlete;
    const rows = reps.date.flatMap((date, row) =>
      date === WRONG_NAME.date && reps.words.block?.[row] === WRONG_NAME.block ? [row] : [],
    );
    expect(rows).toHaveLength(WRONG_NAME.rows);
    const files = season.season.swingFiles;
    expect(rows.every((row) => files[reps.file[row]!]?.file === WRONG_NAME.file)).toBe(true);
    const moved = (id: string) => season.ledger.athletes.find((one) => one.id === id)?.reassigned;
    const { written, hitter, rows: n } = WRONG_NAME;
    expect(moved(written)).toEqual({ to: { [hitter]: n }, from: {} });
    expect(moved(hitter)).toEqual({ to: {}, from: { [written]: n } });
  });

  test("Corwin's heavy bat is a heavy bat again", () => {
    const { reps } = told(WRONG_BAT.hitter).athlete;
    const bats = reps.date.flatMap((date, row) =>
      date === WRONG_BAT.date && reps.words.block?.[row] === WRONG_BAT.block ? [reps.words.implement?.[row]] : [],
    );
    expect(bats).toEqual(Array.from({ length: WRONG_BAT.rows }, () => WRONG_BAT.bat));
  });

  test("the bat that was let fall is no swing of Thaddeus's, and stays in the ledger", () => {
    const { reps } = told(NO_SWING.hitter).athlete;
    expect(
      reps.date.some((date, row) => date === NO_SWING.date && reps.numbers.bat_speed?.[row] === Number(NO_SWING.mph)),
    ).toBe(false);
    expect(told(NO_SWING.hitter).report.ledger.setAside.void).toBe(1);
  });
});
