import { describe, expect, test } from "vitest";
import { BRIDGED } from "./devices.ts";
import { trainingDays } from "./exports.ts";
import { mphIn, profiles, toldAgain, whole } from "./season.ts";
import { STORIES } from "./stories.ts";

describe("the nine stories", () => {
  /** Mean over days of the day's mean, of full game-bat swings at game effort, from the first to the second date. */
  function level(id: string, environment: string, metric: string, from: string, to: string, side = ""): number {
    const days = new Map<string, number[]>();
    for (const row of whole) {
      const kept = row.athlete_id === id && row.environment === environment && row.implement === "game";
      const full = row.swing_type === "full" && row.effort === "game" && (side === "" || row.side === side);
      const value = mphIn(row, metric);
      const date = row.date ?? "";
      if (!kept || !full || value === undefined || date < from || date > to) continue;
      if (metric === "bat_speed" && (value > 110 || value < 15)) continue;
      days.set(date, [...(days.get(date) ?? []), value]);
    }
    const means = [...days.values()].map((list) => list.reduce((sum, value) => sum + value, 0) / list.length);
    return means.reduce((sum, value) => sum + value, 0) / means.length;
  }
  const gain = (id: string, environment: string, metric: string, side = ""): number =>
    level(id, environment, metric, "2026-02-01", "2026-02-22", side) -
    level(id, environment, metric, "2025-10-06", "2025-10-27", side);

  test("Corwin's bat is faster off the tee and off the machine", () => {
    expect(gain("corwin-tallowby", "tee", "bat_speed")).toBeGreaterThan(3);
    expect(gain("corwin-tallowby", "machine", "bat_speed")).toBeGreaterThan(3);
  });

  test("Juniper's gain in tosses does not carry over to the machine", () => {
    expect(gain("juniper-brackwell", "front-toss", "bat_speed")).toBeGreaterThan(2.3);
    expect(Math.abs(gain("juniper-brackwell", "machine", "bat_speed"))).toBeLessThan(0.8);
  });

  test("Desmond stays where he was, once it is taken out what his new sensor reads above the old", () => {
    for (const environment of ["tee", "front-toss", "machine"]) {
      const same = gain("desmond-farrowick", environment, "bat_speed") - BRIDGED.mph;
      expect(Math.abs(same), environment).toBeLessThan(0.8);
    }
    expect(Math.abs(gain("desmond-farrowick", "machine", "exit_velocity"))).toBeLessThan(1.5);
  });

  test("Desmond's old and new sensor hung on one bat for one evening", () => {
    expect(new Set(toldAgain.map((row) => `${row.athlete_id} ${row.date} ${row.device_bat}`))).toEqual(
      new Set([`desmond-farrowick ${BRIDGED.both} ${BRIDGED.after}`]),
    );
    const first = whole.filter((row) => row.date === BRIDGED.both && row.device_bat === BRIDGED.before);
    const times = new Set(first.flatMap((row) => (mphIn(row, "bat_speed") === undefined ? [] : [row.time])));
    expect(toldAgain.every((row) => times.has(row.time))).toBe(true);
  });

  test("Wrenna loses speed over her weeks away and swings nothing in between", () => {
    const before = level("wrenna-stillbourne", "machine", "bat_speed", "2025-11-10", "2025-12-11");
    const after = level("wrenna-stillbourne", "machine", "bat_speed", "2026-01-19", "2026-02-22");
    expect(after - before).toBeLessThan(-2.5);
    expect(level("wrenna-stillbourne", "tee", "bat_speed", "2025-12-12", "2026-01-18")).toBeNaN();
  });

  test("Marisol grows, changes her game bat in January and hits the ball harder", () => {
    const { profile } = profiles.find(({ story }) => story.id === "marisol-quintalba")!;
    expect(profile.heights?.length).toBeGreaterThan(1);
    expect(profile.game_bat).toHaveLength(2);
    expect(gain("marisol-quintalba", "tee", "exit_velocity")).toBeGreaterThan(2);
  });

  test("Anselm hits from the left and slows down inside a round", () => {
    const rounds = whole.filter((row) => row.athlete_id === "anselm-drovik" && row.drill === "machine-set");
    expect(rounds.every((row) => row.side === "left")).toBe(true);
    const at = (reps: readonly string[]): number => {
      const speeds = rounds.flatMap((row) => {
        const value = reps.includes(row.rep ?? "") && row.swing_type === "full" ? mphIn(row, "bat_speed") : undefined;
        return value === undefined || value > 110 || value < 15 ? [] : [value];
      });
      return speeds.reduce((sum, value) => sum + value, 0) / speeds.length;
    };
    expect(at(["1", "2", "3"]) - at(["8", "9", "10"])).toBeGreaterThan(2);
  });

  test("Thaddeus gains from the right and stays put from the left", () => {
    expect(gain("thaddeus-marchbane", "machine", "bat_speed", "right")).toBeGreaterThan(1.3);
    expect(Math.abs(gain("thaddeus-marchbane", "machine", "bat_speed", "left"))).toBeLessThan(0.8);
  });

  test("Rufus came four times", () => {
    expect(trainingDays(STORIES.find((story) => story.id === "rufus-ellingthorpe")!)).toHaveLength(4);
    expect(new Set(whole.filter((row) => row.athlete_id === "rufus-ellingthorpe").map((row) => row.date)).size).toBe(4);
  });

  test("Bastian's bat speed jumps with the new sensor while the ball leaves as before", () => {
    const step = (metric: string): number =>
      level("bastian-oakhollow", "tee", metric, "2025-12-10", "2026-01-20") -
      level("bastian-oakhollow", "tee", metric, "2025-10-27", "2025-12-09");
    expect(step("bat_speed")).toBeGreaterThan(1.7);
    expect(step("bat_speed")).toBeLessThan(3.3);
    expect(Math.abs(step("exit_velocity"))).toBeLessThan(1);
    const devices = new Set(whole.filter((row) => row.athlete_id === "bastian-oakhollow").map((row) => row.device_bat));
    expect([...devices].sort()).toEqual(["knob-3", "knob-5"]);
  });
});
