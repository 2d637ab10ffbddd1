import { reportFor } from "../../src/report/report.ts";
import type { AthleteReport } from "../../src/report/schema.ts";
import { input, type Rep, weekLater } from "../report/season.ts";

/** A scatter that is the same on every run. */
const wobble = (i: number) => ((i * 37) % 11) / 10 - 0.5;

const WAYS = [
  { environment: "tee", ball: "ball", pitch_speed: null, loss: 0 },
  { environment: "front-toss", ball: "ball", pitch_speed: null, loss: 0.8 },
  { environment: "machine", ball: "ball", pitch_speed: 72, loss: 3 },
] as const;

/** One winter: tee, tosses and the machine each week with the game bat, and a heavy bat off the tee. */
const reps: Rep[] = Array.from({ length: 14 }, (_, week) => [
  ...WAYS.flatMap(({ environment, ball, pitch_speed, loss }, way) =>
    [1, 2].flatMap((round) =>
      Array.from({ length: 5 }, (_, i): Rep => {
        const speed = 66 + week / 8 - loss - i / 8 + wobble(week * 7 + way * 5 + round * 3 + i);
        return {
          date: weekLater(week),
          time: `17:${String(10 * way + 4 * round).padStart(2, "0")}:${String(10 + 8 * i).padStart(2, "0")}`,
          block: String(way + 1),
          environment,
          implement: "b-33",
          side: "right",
          ball,
          round,
          rep: i + 1,
          drill: "low",
          pitch_type: pitch_speed === null ? null : "fastball",
          pitch_speed,
          pitch_speed_at: pitch_speed === null ? null : "set",
          pitch_distance: pitch_speed === null ? null : 48,
          spin_axis: pitch_speed === null ? null : "12:15",
          bat_speed: speed,
          attack_angle: 8 + 4 * wobble(i + week),
          exit_velocity: i === 4 ? null : 1.15 * speed + (pitch_speed ?? 20) / 5,
          launch_angle: i === 4 ? null : 12 + 30 * wobble(week + i),
          spray_angle: i === 4 ? null : 60 * wobble(week * 3 + i),
          result: i === 4 ? "miss" : "hit",
        };
      }),
    ),
  ),
  ...Array.from(
    { length: 4 },
    (_, i): Rep => ({
      date: weekLater(week),
      block: "9",
      environment: "tee",
      implement: "b-heavy",
      side: "right",
      round: 1,
      rep: i + 1,
      bat_speed: 60 + wobble(week + i),
    }),
  ),
]).flat();

const fitting: Rep[] = Array.from({ length: 5 }, (_, round) =>
  ["b-33", "b-heavy"].flatMap((implement, bat) =>
    Array.from(
      { length: 3 },
      (_, i): Rep => ({
        date: weekLater(9),
        environment: "front-toss",
        side: "right",
        ball: "ball",
        purpose: "fitting",
        implement,
        round: round + 1,
        rep: i + 1,
        bat_speed: 66 - 3 * bat + wobble(round * 5 + bat + i),
        exit_velocity: 78 - bat + wobble(round + i),
        launch_angle: 12,
        result: "hit",
      }),
    ),
  ),
).flat();

const made = reportFor(
  input([...reps, ...fitting], {
    season: {
      implements: [
        { id: "b-33", label: "Alloy 33", length_in: 33, weight_oz: 30 },
        { id: "b-heavy", label: "Heavy ash", length_in: 33, weight_oz: 36 },
      ],
      balls: [{ id: "ball", label: "Leather", kind: "baseball", q: 0.22 }],
      zones: [{ id: "line", label: { en: "On a line", es: "En línea" }, launch_angle: [8, 25] }],
    },
    athlete: {
      profile: {
        name: "Invented One",
        sport: "baseball",
        bats: "right",
        game_bat: "b-33",
        gates: [
          { applies: { environment: "machine" }, at_least: 62, from: "2025-10-06" },
          {
            applies: { environment: ["front-toss"], implement: "game" },
            share_of_recent_best: 0.9,
            days: 28,
            best: "p90",
          },
        ],
        measures: [
          { metric: "bat_speed", condition: { environment: "machine" } },
          { metric: "exit_velocity", condition: { environment: "machine" } },
        ],
        goals: [
          { metric: "attack_angle", window: [4, 12], share: 0.6, by: "2026-02-20" },
          { metric: "exit_velocity", at_least: 85, share: 0.5, by: "2026-02-20" },
        ],
      },
    },
  }),
).report;

/** Every part of the hitting report filled, as the report itself makes it. */
export const HITTING: AthleteReport["hitting"] = {
  ...made.hitting,
  growth: {
    heightIn: 1.5,
    massLb: 4,
    days: 120,
    peers: [
      {
        series: 0,
        metric: "bat_speed",
        unit: "mph",
        decimals: 1,
        condition: { environment: "machine" },
        change: 2.4,
        peersGain: 0.9,
      },
    ],
  },
};
export const GATE: NonNullable<AthleteReport["gate"]> = made.gate!;
