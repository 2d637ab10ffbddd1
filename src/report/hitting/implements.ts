import { expectedSpeedShare, inertiaFromPeriod, PIVOT_IN, rodInertia, SPEED_POWER } from "../../hitting/inertia.ts";
import { gameBatOn } from "../../schema/profile.ts";
import type { Implement } from "../../schema/tables.ts";
import { meanInterval } from "../../stats/mean-interval.ts";
import type { HittingReport } from "../hitting-schema.ts";
import { type DayValue, dailyMeans, grouped, type Hitting, lineThrough, movedOf, rowsFor } from "./swings.ts";

type Report = HittingReport["implements"][number];

/** Common days below which bats are not held against each other. */
const LEAST_DAYS = 3;
/** Parts of the game bat's mass and length within which another bat is alike (common practice). */
const ALIKE = { mass: 0.05, length: 0.03 };

/** Other bats against the game bat of the same days: what they are, how fast they are swung, and how that moved. */
export function implementsReport(hitting: Hitting): Report[] {
  const { conditions, athlete } = hitting;
  const speed = athlete.reps.numbers.bat_speed;
  const rows = rowsFor("bat", hitting).filter(
    (row) => speed?.[row] != null && conditions[row]!.implement !== undefined,
  );
  const place = (row: number) => {
    const { environment, side } = conditions[row]!;
    return JSON.stringify([environment ?? null, side ?? null]);
  };
  return [...grouped(rows, place).values()].flatMap((here) => {
    const game = here.filter((row) => conditions[row]!.implement === "game");
    const others = here.filter((row) => conditions[row]!.implement !== "game");
    return [...grouped(others, (row) => conditions[row]!.implement!)].flatMap(([id, list]) => {
      const found = against(hitting, id, list, game);
      return found === null ? [] : [found];
    });
  });
}

function against(hitting: Hitting, id: string, rows: readonly number[], game: readonly number[]): Report | null {
  const { conditions, season } = hitting;
  const [theirs, ours] = [dailyMeans(hitting, "bat_speed", rows), dailyMeans(hitting, "bat_speed", game)];
  const common = [...theirs].filter(([date]) => ours.has(date)).sort(([a], [b]) => (a < b ? -1 : 1));
  const ratios: DayValue[] = common.map(([date, { mean }]) => ({ date, value: mean / ours.get(date)!.mean }));
  const ratio = meanInterval(ratios.map(({ value }) => value));
  if (common.length < LEAST_DAYS || ratio === null) return null;
  const { environment = null, side = null } = conditions[rows[0]!]!;
  const gameId =
    gameBatOf(
      hitting,
      common.map(([date]) => date),
    ) ?? "game";
  const find = (name: string) => season.implements.find((one) => one.id === name);
  const [bat, gameBat] = [find(id), find(gameId)];
  const mean = (list: readonly number[]) => list.reduce((sum, one) => sum + one, 0) / list.length;
  return {
    id,
    environment,
    side,
    bat: described(bat),
    gameBat: { id: gameId, ...described(gameBat) },
    ...relative(bat, gameBat),
    swings: common.reduce((sum, [, { n }]) => sum + n, 0),
    days: common.length,
    speed: mean(common.map(([, one]) => one.mean)),
    gameSpeed: mean(common.map(([date]) => ours.get(date)!.mean)),
    ratio: { ...ratio, ci95: ratio.ci95 && [...ratio.ci95] },
    ratioChange: movedOf(lineThrough(ratios)),
  };
}

const described = (bat: Implement | undefined) => ({
  lengthIn: bat?.length_in ?? null,
  weightOz: bat?.weight_oz ?? null,
  label: bat?.label ?? null,
});

/** The game bat of most of these days. */
function gameBatOf({ athlete }: Hitting, dates: readonly string[]): string | null {
  const counts = new Map<string, number>();
  for (const date of dates) {
    const bat = gameBatOn(athlete.profile, date);
    if (bat !== undefined && bat !== null) counts.set(bat, (counts.get(bat) ?? 0) + 1);
  }
  return [...counts].sort(([, a], [, b]) => b - a)[0]?.[0] ?? null;
}

type Relative = Pick<Report, "roles" | "mass" | "length" | "inertia" | "inertiaBy" | "expected">;

/** Mass, length and inertia as parts of the game bat's, and what they make of the bat. */
export function relative(bat: Implement | undefined, game: Implement | undefined): Relative {
  const part = (a: number | undefined, b: number | undefined) => (a && b ? a / b : null);
  const mass = part(bat?.weight_oz, game?.weight_oz);
  const length = part(bat?.length_in, game?.length_in);
  const { inertia, inertiaBy } = inertiaOf(bat, game);
  const share = (power: number) => expectedSpeedShare(inertia!, 1, power);
  const ends = inertia === null ? null : [share(SPEED_POWER.softball), share(SPEED_POWER.rods)].sort((a, b) => a - b);
  return {
    roles: rolesOf(mass, length),
    mass,
    length,
    inertia,
    inertiaBy,
    expected: ends === null ? null : [ends[0]!, ends[1]!],
  };
}

function rolesOf(mass: number | null, length: number | null): Report["roles"] {
  const roles: Report["roles"] = [];
  if (mass !== null && mass > 1 + ALIKE.mass) roles.push("heavy");
  if (mass !== null && mass < 1 - ALIKE.mass) roles.push("light");
  if (length !== null && length > 1 + ALIKE.length) roles.push("long");
  if (length !== null && length < 1 - ALIKE.length) roles.push("short");
  return roles.length === 0 && mass !== null && length !== null ? ["alike"] : roles;
}

/** Both bats by the same method, or a ratio would compare methods: swing periods where both were timed, else rods. */
function inertiaOf(bat: Implement | undefined, game: Implement | undefined): Pick<Report, "inertia" | "inertiaBy"> {
  const timed = [bat, game].map((one) => {
    const { weight_oz: weight, balance_in: balance, swing_period_s: period } = one ?? {};
    return weight && balance && balance > PIVOT_IN && period ? inertiaFromPeriod(weight, balance, period) : null;
  });
  if (timed[0] != null && timed[1] != null) return { inertia: timed[0] / timed[1], inertiaBy: "swing-period" };
  const rods = [bat, game].map((one) =>
    one?.weight_oz && one.length_in ? rodInertia(one.weight_oz, one.length_in) : null,
  );
  if (rods[0] != null && rods[1] != null) return { inertia: rods[0] / rods[1], inertiaBy: "rod" };
  return { inertia: null, inertiaBy: null };
}
