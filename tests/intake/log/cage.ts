import { seasonOf } from "../season-of.ts";

/** Random numbers that are the same every time (mulberry32). */
export function seeded(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let t = Math.imul(state ^ (state >>> 15), 1 | state);
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };
}

export const HITTERS = ["ana-l", "ben-k", "cal-m"] as const;
export const BATS = ["game", "wood"] as const;

/** What a simulated cage does beyond the plan; shares are of swings, of turns, of days. */
export interface Mishaps {
  /** The sensor does not see a swing. */
  readonly missed: number;
  /** The sensor takes a waggle for a swing. */
  readonly waggle: number;
  /** A hitter leaves out a round. */
  readonly leftOut: number;
  /** Rounds that a hitter leaves out for certain; the next one steps in. */
  readonly without?: (round: number, athlete: string) => boolean;
}

export interface Sighting {
  readonly ms: number;
  readonly athlete: string;
  readonly bat: string;
  readonly block: string;
  readonly round: number;
}

/** Pauses in seconds: between swings, for the other bat, for the next hitter, to pick up balls, between blocks. */
const PAUSE = { swing: 9, part: 28, turn: 45, round: 150, block: 330 } as const;

/** One block as the log has it. */
export interface Planned {
  readonly block: string;
  readonly rounds: number;
  readonly reps: number;
}

/**
 * What a sensor on one lane sees of hitters who rotate round by round, each with one bat and then the other. Pauses vary by
 * about a third each way (log-normal), so that they overlap.
 */
export function sightings(plan: readonly Planned[], mishaps: Mishaps, random: () => number): Sighting[] {
  const seen: Sighting[] = [];
  const normal = (): number => Math.sqrt(-2 * Math.log(1 - random())) * Math.cos(2 * Math.PI * random());
  let ms = 17 * 3_600_000;
  const wait = (kind: keyof typeof PAUSE): void => {
    ms += Math.round(PAUSE[kind] * Math.exp((kind === "swing" ? 0.25 : 0.3) * normal())) * 1000;
  };
  for (const { block, rounds, reps } of plan) {
    for (let round = 1; round <= rounds; round++) {
      for (const athlete of HITTERS) {
        if (random() < mishaps.leftOut || mishaps.without?.(round, athlete) === true) continue;
        for (const bat of BATS) {
          for (let rep = 0; rep < reps; rep++) {
            if (rep > 0) wait("swing");
            if (random() < mishaps.waggle) {
              seen.push({ ms, athlete, bat, block, round });
              wait("swing");
            }
            if (random() >= mishaps.missed) seen.push({ ms, athlete, bat, block, round });
          }
          wait("part");
        }
        wait("turn");
      }
      wait("round");
    }
    wait("block");
  }
  return seen;
}

const clock = (ms: number): string => new Date(ms).toISOString().slice(11, 19);

export const MAPPING = {
  label: "Lane sensor",
  header: ["Day", "At", "Speed"],
  columns: { Day: { field: "date" }, At: { field: "time" }, Speed: { field: "bat_speed" } },
  fixed: { lane: "b" },
};

/** The sensor's export: it knows no names. */
export const exported = (seen: readonly Sighting[], day: string): string =>
  ["Day,At,Speed", ...seen.map(({ ms }, i) => `${day},${clock(ms)},${60 + (i % 7)}`), ""].join("\n");

export const LOG_HEADER =
  "date,session,group,athlete_id,block,part,environment,drill,implement,ball,side,feed,rounds,reps,start,end,lane,measured";

/** A row of the log from a few of its cells. */
export const logLine = (cells: Readonly<Record<string, string | number>>): string =>
  LOG_HEADER.split(",")
    .map((name) => cells[name] ?? "")
    .join(",");

export const GROUP_FACILITY = [
  "---",
  "name: Barn on Mill Lane",
  "season: { name: Winter, start: 2025-10-06, end: 2026-02-22 }",
  "measures: [{ metric: bat_speed }]",
  `groups: [{ id: evening, members: [${HITTERS.join(", ")}] }]`,
  "---",
  "",
].join("\n");

export const PROFILES = {
  "content/facility.md": GROUP_FACILITY,
  "content/athletes/ben-k/profile.md": "---\nname: Ben Kovar\nbats: left\n---\n",
  "content/athletes/cal-m/profile.md": "---\nname: Cal Mirren\n---\n",
};

/** A season in which one lane's sensor saw all of this on one day. */
export const seasonOfLane = (seen: readonly Sighting[], plan: readonly Planned[], day = "2025-10-06") =>
  seasonOf({
    ...PROFILES,
    "data/mappings/lane.json": JSON.stringify(MAPPING),
    "data/swings/lane.csv": exported(seen, day),
    "data/blocks/log.csv": [
      LOG_HEADER,
      ...plan.flatMap(({ block, rounds, reps }) =>
        BATS.map((implement, i) =>
          logLine({
            date: day,
            group: "evening",
            block,
            part: "ab"[i] ?? "",
            environment: "tee",
            implement,
            rounds,
            reps,
          }),
        ),
      ),
      "",
    ].join("\n"),
  });
