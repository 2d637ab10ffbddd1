import { expect, test } from "vitest";
import { reportFor } from "../../src/report/report.ts";
import { input, type Rep } from "./season.ts";

const swing = (day: number, bat_speed: number, pairing: string | null, more: Partial<Rep> = {}): Rep =>
  ({ date: `2025-11-0${day}`, environment: "machine", bat_speed, pairing, ...more }) as Rep;
const REPS = [
  swing(3, 60, "paired", { exit_velocity: 80 }),
  swing(3, 62, "paired", { exit_velocity: 82 }),
  swing(3, 52, "ball-not-recorded"),
  swing(3, 20, "no-swing"),
  swing(4, 64, "paired", { exit_velocity: 84 }),
  swing(4, 60, "ball-not-recorded"),
  swing(4, 58, "ball-not-recorded", { swing_type: "bunt" }),
];
const facility = (unseen?: "count" | "leave-out") => ({
  name: "Invented Cage",
  season: { name: "Invented winter", start: "2025-10-06", end: "2026-02-22" },
  ...(unseen && { ball_not_recorded: unseen }),
});

test("swings whose ball was not seen are told with and without, and left out unless the facility says otherwise", () => {
  const { report, judged } = reportFor(input(REPS, { season: { facility: facility() } }));
  expect(report.hitting.unseen).toEqual([
    {
      ...{ environment: "machine", implement: null, side: null, counted: false },
      ...{ paired: 3, unseen: 2 },
      // Days: (61 + 64) / 2 without, (58 + 62) / 2 with.
      ...{ without: 62.5, with: 60 },
    },
  ]);
  expect(judged).toEqual([null, null, "no-swing", "no-swing", null, "no-swing", "bunt"]);
  const speeds = report.series.find(({ metric, pooled }) => metric === "bat_speed" && !pooled);
  expect(speeds?.sessions.map(({ mean }) => mean)).toEqual([61, 64]);
});

test("a facility that counts them has them in its bat speed", () => {
  const { report, judged } = reportFor(input(REPS, { season: { facility: facility("count") } }));
  expect(report.hitting.unseen[0]).toMatchObject({ counted: true, without: 62.5, with: 60 });
  expect(judged[2]).toBe(null);
  const speeds = report.series.find(({ metric, pooled }) => metric === "bat_speed" && !pooled);
  expect(speeds?.sessions.map(({ mean }) => mean)).toEqual([58, 62]);
});

test("a rep of two devices is two rows of the athlete's ledger", () => {
  const made = input(REPS.slice(0, 4), { season: { facility: facility() } });
  const reps = { ...made.athlete.reps, partner: [{ file: 1, line: 2 }, { file: 1, line: 3 }, null, null] };
  const { report } = reportFor({ ...made, athlete: { ...made.athlete, reps } });
  expect(report.ledger).toMatchObject({ read: 6, counted: 4, notCounted: { "no-swing": 2 } });
});
