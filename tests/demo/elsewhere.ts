import type { Drill } from "./blocks.ts";
import { clock } from "./calendar.ts";
import { csvTable } from "./csv.ts";
import { randomFrom } from "./random.ts";
import { STORIES } from "./stories.ts";
import { formOf, type Swing, swing } from "./swings.ts";

/** Swings that were not made here: with a sensor taken home, and in a club's practice games. */
interface Visit {
  readonly athlete: string;
  readonly place: "home" | "game";
  readonly environment: "tee" | "live";
  readonly days: readonly string[];
  readonly swings: number;
}

/** Corwin checks at home what he reached; Juniper's club let her wear the sensor twice. */
const VISITS: readonly Visit[] = [
  {
    ...{ athlete: "corwin-tallowby", place: "home", environment: "tee", swings: 10 },
    days: ["2026-02-05", "2026-02-08", "2026-02-12", "2026-02-15"],
  },
  {
    ...{ athlete: "juniper-brackwell", place: "game", environment: "live", swings: 6 },
    days: ["2026-02-08", "2026-02-15"],
  },
];

const COLUMNS =
  "athlete_id,date,time,environment,drill,implement,ball,side,swing_type,purpose,effort,bat_speed_mph,attack_angle_deg,swing_time_s,device_bat,place".split(
    ",",
  );

function rowsOf({ athlete, place, environment, days, swings }: Visit): Swing[] {
  const story = STORIES.find(({ id }) => id === athlete)!;
  const random = randomFrom(`${place} of ${athlete}`);
  const drill = environment === "tee" ? "tee-middle" : undefined;
  return days.flatMap((date) => {
    const form = formOf(story, date, random);
    const like: "machine" | "tee" = environment === "live" ? "machine" : environment;
    const block = {
      ...{
        environment: like,
        drill: "tee-middle",
        implement: "game",
        ball: story.balls.live,
        reps: swings,
        round: swings,
      },
      ...{ purpose: "training", effort: "game", swingType: "full" },
    } satisfies Drill;
    return Array.from({ length: swings }, (_, i) => {
      const { bat_speed, attack_angle, swing_time } = swing({ ...story, fade: 0 }, block, story.side, 1, form, random);
      const fixed = (value: Swing[string], decimals: number) =>
        typeof value === "number" ? value.toFixed(decimals) : "";
      return {
        ...{ athlete_id: athlete, date, time: clock(10 * 3600 + i * 25), environment, drill, implement: "game" },
        ...{ ball: story.balls.live, side: story.side, swing_type: "full", purpose: "training", effort: "game" },
        ...{
          bat_speed_mph: fixed(bat_speed, 1),
          attack_angle_deg: fixed(attack_angle, 1),
          swing_time_s: fixed(swing_time, 3),
        },
        ...{ device_bat: story.deviceBat, place },
      };
    }).filter((row) => row.bat_speed_mph !== "");
  });
}

/** Their one file, path in the season folder -> text. */
export function elsewhereFiles(): Map<string, string> {
  return new Map([["data/swings/elsewhere/2026-02.csv", csvTable(COLUMNS, VISITS.flatMap(rowsOf))]]);
}
