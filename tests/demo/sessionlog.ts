import { csvTable } from "./csv.ts";
import { trainingDays } from "./exports.ts";
import { hubLog, type LogRow } from "./hublog.ts";
import { randomFrom } from "./random.ts";
import { STORIES } from "./stories.ts";
import type { Story } from "./story.ts";

const COLUMNS =
  "date,session,group,athlete_id,block,part,environment,drill,implement,ball,side,feed,aim,purpose,effort,feedback,ball_height_in,rounds,reps,rest_s,start,end,site,lane,trainer,measured,comment".split(
    ",",
  );

/** Work without a device, as the trainer writes it down: every fifth session or so of each athlete. */
function unmeasured(story: Story): LogRow[] {
  const random = randomFrom(`log of ${story.id}`);
  const trainer = story.group === "fastpitch" ? "oda" : "brandt";
  const rows: LogRow[] = [];
  for (const [number, date] of trainingDays(story).entries()) {
    if (number % 3 !== 0) continue;
    const shared = {
      date,
      athlete_id: story.id,
      block: "u1",
      purpose: "training",
      site: story.site,
      lane: story.lane,
      trainer,
    };
    const wall = number % 2 === 0;
    rows.push({
      ...shared,
      ...(wall
        ? { environment: "dry", drill: "mirror-turns", implement: "game", effort: "technical", feedback: "mirror" }
        : {
            environment: "overhand",
            drill: "short-overhand",
            implement: "game",
            ball: story.balls.live,
            effort: "game",
          }),
      ...{ rounds: random.integer(2, 3), reps: random.integer(5, 8), rest_s: 60, measured: "none" },
      comment: wall ? undefined : "no device on the far net",
    });
  }
  return rows;
}

/** A whole group's work, with one athlete's own row beside it. */
const GROUP_ROWS: readonly LogRow[] = [
  {
    ...{
      date: "2025-11-05",
      group: "diamond",
      block: "u2",
      environment: "dry",
      drill: "mirror-turns",
      implement: "game",
    },
    ...{
      purpose: "training",
      effort: "technical",
      rounds: 2,
      reps: 6,
      rest_s: 45,
      trainer: "brandt",
      measured: "none",
    },
  },
  {
    ...{ date: "2025-11-05", group: "diamond", athlete_id: "bastian-oakhollow", block: "u2", reps: 4 },
    ...{ measured: "none", comment: "came late" },
  },
  {
    ...{
      date: "2025-12-03",
      group: "fastpitch",
      block: "u2",
      environment: "dry",
      drill: "mirror-turns",
      implement: "game",
    },
    ...{ purpose: "training", effort: "technical", rounds: 2, reps: 6, rest_s: 45, trainer: "oda", measured: "none" },
  },
];

/** The session log: one file a month, a day's blocks in order, the group's line before an athlete's. */
export function sessionLogFiles(): Map<string, string> {
  const rows = [...STORIES.flatMap(unmeasured), ...GROUP_ROWS, ...hubLog()];
  const key = (row: LogRow): string => [row.date, row.block, row.athlete_id ?? ""].join(" ");
  rows.sort((one, other) => (key(one) < key(other) ? -1 : key(one) > key(other) ? 1 : 0));
  const months = new Map<string, LogRow[]>();
  for (const row of rows) {
    const month = String(row.date).slice(0, 7);
    months.set(month, [...(months.get(month) ?? []), row]);
  }
  return new Map([...months].map(([month, list]) => [`data/blocks/${month}.csv`, csvTable(COLUMNS, list)]));
}
