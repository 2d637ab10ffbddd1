import { describe, expect, test } from "vitest";
import type { AthleteReport } from "../../src/report/schema.ts";
import { generateDemo } from "./generate.ts";
import { judged } from "./judged.ts";

const { told, problems } = await judged(generateDemo());
const reportOf = (id: string): AthleteReport => told.find(({ athlete }) => athlete.id === id)!.report;
const gap = (id: string, from: string, to: string) =>
  reportOf(id)
    .hitting.carryOver.filter((one) => one.metric === "bat_speed" && one.from === from && one.to === to)
    .sort((a, b) => b.days - a.days)[0]!;

describe("the demo's stories in the hitting report", () => {
  test("Juniper's gain in tosses does not reach the machine: the gap grew", () => {
    const found = gap("juniper-brackwell", "front-toss", "machine");
    expect(found.answer).toBe("opened");
    expect(found.change!.ci95![1]).toBeLessThan(-1);
  });

  test("Corwin's gain does: the gap did not grow", () => {
    expect(gap("corwin-tallowby", "tee", "machine").answer).not.toBe("opened");
  });

  test("Anselm fades inside his long rounds, and comes back after the rest", () => {
    const { rounds, recovery } = reportOf("anselm-drovik").hitting;
    const long = rounds.filter(({ length, implement }) => length === "long" && implement === "game");
    expect(long.length).toBeGreaterThan(1);
    for (const { drop } of long) expect(drop.ci95[1]).toBeLessThan(-2);
    expect(recovery!.recovery.ci95![0]).toBeGreaterThan(2);
  });

  test("nobody else's rounds fade like that", () => {
    for (const { athlete, report } of told) {
      if (athlete.id === "anselm-drovik") continue;
      for (const { drop, implement } of report.hitting.rounds)
        if (implement === "game") expect(drop.estimate).toBeGreaterThan(-2);
    }
  });

  test("heavy bats are slower and light ones faster than the game bat, about as their weight and length ask for", () => {
    const bats = told.flatMap(({ report }) => report.hitting.implements).filter(({ days }) => days >= 5);
    expect(bats.length).toBeGreaterThan(10);
    for (const { roles, ratio, inertia } of bats) {
      if (roles.includes("heavy") && (inertia ?? 0) > 1.1) expect(ratio.estimate).toBeLessThan(1.01);
      if (roles.includes("light") && (inertia ?? 2) < 0.95) expect(ratio.estimate).toBeGreaterThan(1);
    }
  });

  test("Anselm's mark lets most machine swings through, and a mark three higher would take his gain away", () => {
    const { gate } = reportOf("anselm-drovik");
    expect(gate!.passed / gate!.judged).toBeGreaterThan(0.8);
    const [effect] = gate!.effects;
    const at = (by: number) => effect!.moves.find((move) => move.by === by)!;
    expect(at(3).n).toBeLessThan(at(0).n);
    expect(effect!.gated.estimate).toBe(at(0).estimate);
  });

  test("no reading of the demo lies above what bat and pitch allow", () => {
    for (const { report } of told)
      for (const { impossible, swings } of report.hitting.contact) expect(impossible / swings).toBeLessThan(0.02);
  });

  test("nobody's limits are broken", () => {
    expect(problems.filter(({ code }) => code === "limit-broken" || code === "below-overload-age")).toEqual([]);
  });
});
