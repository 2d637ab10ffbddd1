import { fieldThird, launchClass } from "../../hitting/batted-ball.ts";
import type { Goal } from "../../schema/profile.ts";
import { median } from "../../stats/median.ts";
import { sd } from "../../stats/sd.ts";
import type { HittingReport } from "../hitting-schema.ts";
import { inZone, sidesOf } from "../zones.ts";
import { daysIn, grouped, type Hitting, rowsFor, shareOf, valuesOf, whereKey, whereOf } from "./swings.ts";

/** Days below which an environment is left out. */
const LEAST_DAYS = 3;
/** Heights over the ground that are told apart, in: knees, belt, letters (common practice). */
const HEIGHTS: readonly [number, number][] = [
  [0, 22],
  [22, 32],
  [32, 60],
];

/** What became of the balls off the game bat, per environment and side. */
export function flightReport(hitting: Hitting): HittingReport["flight"] {
  const { conditions, athlete } = hitting;
  const rows = rowsFor("ball", hitting).filter((row) => conditions[row]!.implement === "game");
  const sides = sidesOf(athlete.reps, athlete.profile.bats);
  return places(hitting, rows).flatMap((list) => {
    const { result } = athlete.reps.words;
    const count = (word: string) => list.filter((row) => result?.[row] === word).length;
    const [hit, foul, miss] = [count("hit"), count("foul"), count("miss")];
    const launch = launchOf(hitting, list);
    const field = fieldOf(hitting, list, sides);
    if (launch === null && field === null && hit + foul + miss === 0) return [];
    return [
      {
        ...whereOf(conditions[list[0]!]!),
        of: { swings: list.length, hit, foul, miss, notKnown: list.length - hit - foul - miss },
        launch,
        field,
        firm: firmOf(hitting, list),
        zones: zonesOf(hitting, list),
      },
    ];
  });
}

/** Groups of one environment, bat and side that were trained on enough days. */
function places(hitting: Hitting, rows: readonly number[]): number[][] {
  return [...grouped(rows, (row) => whereKey(hitting.conditions[row]!))]
    .sort(([a], [b]) => (a < b ? -1 : 1))
    .map(([, list]) => list)
    .filter((list) => daysIn(hitting, list) >= LEAST_DAYS);
}

function launchOf(hitting: Hitting, rows: readonly number[]): HittingReport["flight"][number]["launch"] {
  const classes = valuesOf(hitting, "launch_angle", rows).map(launchClass);
  if (classes.length === 0) return null;
  const count = (name: (typeof classes)[number]) => classes.filter((one) => one === name).length;
  return {
    read: classes.length,
    groundBall: count("ground-ball"),
    lineDrive: count("line-drive"),
    flyBall: count("fly-ball"),
    popUp: count("pop-up"),
  };
}

function fieldOf(
  { athlete }: Hitting,
  rows: readonly number[],
  sides: readonly ("left" | "right" | null)[],
): HittingReport["flight"][number]["field"] {
  const spray = athlete.reps.numbers.spray_angle;
  const thirds = rows.flatMap((row) => {
    const [angle, side] = [spray?.[row], sides[row]];
    return typeof angle === "number" && side != null ? [fieldThird(angle, side)] : [];
  });
  if (thirds.length === 0) return null;
  const count = (name: (typeof thirds)[number]) => thirds.filter((one) => one === name).length;
  return { read: thirds.length, pull: count("pull"), centre: count("centre"), opposite: count("opposite") };
}

type HardGoal = Extract<Goal, { at_least: number }>;

/** The trainer's own speed for this athlete: that of the latest goal for exit velocity; no line of a league's. */
function firmOf(hitting: Hitting, rows: readonly number[]): HittingReport["flight"][number]["firm"] {
  const goals = (hitting.athlete.profile.goals ?? []).filter(
    (goal): goal is HardGoal => "at_least" in goal && goal.metric === "exit_velocity",
  );
  const mark = goals.reduce<HardGoal | null>((best, one) => ((one.set ?? "") >= (best?.set ?? "") ? one : best), null);
  const speeds = valuesOf(hitting, "exit_velocity", rows);
  const share = mark && shareOf(speeds.filter((speed) => speed >= mark.at_least).length, speeds.length);
  return mark && share && { ...share, mark: mark.at_least };
}

function zonesOf({ season, athlete }: Hitting, rows: readonly number[]): HittingReport["flight"][number]["zones"] {
  return season.zones.flatMap((zone) => {
    const inside = inZone(zone, athlete.reps, athlete.profile.bats);
    const read = rows.filter((row) => inside[row] !== null);
    const share = shareOf(read.filter((row) => inside[row] === 1).length, read.length);
    return share === null ? [] : [{ id: zone.id, label: zone.label, in: share }];
  });
}

/** Attack angle in the drill's window or the athlete's, overall, by drill and by height of the ball. */
export function planeReport(hitting: Hitting): HittingReport["plane"] {
  const { conditions, athlete, season } = hitting;
  const angle = athlete.reps.numbers.attack_angle;
  const rows = rowsFor("bat", hitting).filter((row) => angle?.[row] != null && conditions[row]!.implement === "game");
  const { drill } = athlete.reps.words;
  const height = athlete.reps.numbers.ball_height;
  return places(hitting, rows).flatMap((list) => {
    const drills = [...grouped(list, (row) => drill?.[row] ?? null)].filter(
      ([id]) => windowOfDrill(season.drills, id) !== null,
    );
    const heights = HEIGHTS.flatMap((band): [readonly [number, number], number[]][] => {
      const inBand = list.filter((row) => height?.[row] != null && height[row]! >= band[0] && height[row]! < band[1]);
      return inBand.length === 0 ? [] : [[band, inBand]];
    });
    return [
      planeOf(hitting, list, null, null),
      ...drills.map(([id, ofDrill]) => planeOf(hitting, ofDrill, id, null)),
      ...heights.map(([band, ofBand]) => planeOf(hitting, ofBand, null, band)),
    ];
  });
}

type Drills = Hitting["season"]["drills"];

function windowOfDrill(drills: Drills, id: string): readonly [number, number] | null {
  const aims = drills.find((one) => one.id === id)?.aims ?? [];
  for (const aim of aims) if (aim.metric === "attack_angle" && "window" in aim) return aim.window;
  return null;
}

/** The athlete's own window: the latest goal's for attack angle, else that of metrics.md. */
function ownWindow({ athlete, season }: Hitting): readonly [number, number] | null {
  const goals = (athlete.profile.goals ?? []).flatMap((goal) =>
    "window" in goal && goal.metric === "attack_angle" ? [goal] : [],
  );
  const latest = goals.sort((a, b) => ((a.set ?? "") < (b.set ?? "") ? -1 : 1)).at(-1);
  return latest?.window ?? season.metrics.find(({ id }) => id === "attack_angle")?.window ?? null;
}

function planeOf(
  hitting: Hitting,
  rows: readonly number[],
  drill: string | null,
  ballHeight: readonly [number, number] | null,
): HittingReport["plane"][number] {
  const angles = valuesOf(hitting, "attack_angle", rows);
  const ofDrill = drill === null ? null : windowOfDrill(hitting.season.drills, drill);
  const window = ofDrill ?? ownWindow(hitting);
  const inside = window && angles.filter((one) => one >= window[0] && one <= window[1]).length;
  return {
    ...whereOf(hitting.conditions[rows[0]!]!),
    drill,
    ballHeight: ballHeight && [...ballHeight],
    window: window && [...window],
    windowOf: window === null ? null : ofDrill === null ? "athlete" : "drill",
    inside: inside === null ? null : shareOf(inside, angles.length),
    swings: angles.length,
    days: daysIn(hitting, rows),
    middle: median(angles)!,
    spread: sd(angles),
  };
}
