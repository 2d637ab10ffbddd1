import { meanInterval } from "../../stats/mean-interval.ts";
import { median } from "../../stats/median.ts";
import { randomIntercept } from "../../stats/random-intercept.ts";
import type { HittingReport } from "../hitting-schema.ts";
import { daysIn, grouped, type Hitting, rowsFor, valuesOf, whereKey, whereOf } from "./swings.ts";

type Rounds = HittingReport["rounds"][number];
type Length = Rounds["length"];

/** Rounds and days below which nothing is said of what happens inside a round. */
const LEAST_ROUNDS = 5;
const LEAST_DAYS = 3;
/** Shorter rounds have no first and last to speak of. */
const LEAST_SWINGS = 3;
/** A pause longer than this is another part of the session, not the rest between two rounds, s. */
const LONGEST_REST = 1800;

const lengthOf = (swings: number): Length => (swings <= 5 ? "short" : swings <= 7 ? "middle" : "long");

/** One round: its rows in order of swing. */
export interface Round {
  readonly rows: readonly number[];
  /** Swings in it, measured or not. */
  readonly swings: number;
  /** Place in its block. */
  readonly number: number;
  readonly block: string;
}

/** Rounds that the rows name, each with what counts of it. */
export function roundsOf(hitting: Hitting): Round[] {
  const { reps } = hitting.athlete;
  const { round, rep } = reps.numbers;
  const block = (row: number) =>
    JSON.stringify([
      reps.date[row],
      reps.words.session?.[row] ?? null,
      reps.words.block?.[row] ?? null,
      whereKey(hitting.conditions[row]!),
    ]);
  const named = rowsFor("bat", hitting).filter((row) => round?.[row] != null && rep?.[row] != null);
  return [...grouped(named, (row) => `${block(row)} ${round![row]}`).values()].map((rows) => {
    const inOrder = [...rows].sort((a, b) => rep![a]! - rep![b]!);
    return {
      rows: inOrder,
      swings: Math.max(...inOrder.map((row) => rep![row]!)),
      number: round![inOrder[0]!]!,
      block: block(inOrder[0]!),
    };
  });
}

const speedAt = ({ athlete }: Hitting, row: number): number | null => athlete.reps.numbers.bat_speed?.[row] ?? null;

/** Bat speed against the swing's place in its round, per environment, bat, side and length of round. */
export function roundsReport(hitting: Hitting, all: readonly Round[]): Rounds[] {
  const groups = new Map<string, Round[]>();
  for (const round of all) {
    const key = `${whereKey(hitting.conditions[round.rows[0]!]!)} ${lengthOf(round.swings)}`;
    groups.set(key, [...(groups.get(key) ?? []), round]);
  }
  return [...groups.values()].flatMap((rounds) => {
    const found = insideRounds(hitting, rounds);
    return found === null ? [] : [found];
  });
}

function insideRounds(hitting: Hitting, all: readonly Round[]): Rounds | null {
  const rep = hitting.athlete.reps.numbers.rep!;
  const rounds = all
    .map((round) => ({ ...round, rows: round.rows.filter((row) => speedAt(hitting, row) !== null) }))
    .filter(({ rows }) => rows.length > 1);
  const rows = rounds.flatMap((round) => round.rows);
  const days = daysIn(hitting, rows);
  if (rounds.length < LEAST_ROUNDS || days < LEAST_DAYS) return null;
  const speeds = rows.map((row) => speedAt(hitting, row)!);
  const places = rows.map((row) => rep[row]!);
  const model = randomIntercept(
    speeds,
    places,
    rounds.flatMap((round, index) => round.rows.map(() => index)),
  );
  if (model.kind !== "model" || model.slope === null) return null;
  const { estimate, kenwardRoger } = model.slope;
  const { interval, df } = kenwardRoger;
  if (interval === null || df === null) return null;
  const swingsInRound = Math.round(median(rounds.map(({ swings }) => swings))!);
  if (swingsInRound < LEAST_SWINGS) return null;
  const steps = swingsInRound - 1;
  return {
    ...whereOf(hitting.conditions[rows[0]!]!),
    length: lengthOf(rounds[0]!.swings),
    rounds: rounds.length,
    swings: rows.length,
    days,
    swingsInRound,
    perSwing: { estimate, ci95: [...interval], df },
    drop: { estimate: estimate * steps, ci95: [interval[0] * steps, interval[1] * steps] },
    places: placesOf(hitting, rounds),
  };
}

/** Mean of the swings at each place less the mean of their rounds. */
function placesOf(hitting: Hitting, rounds: readonly Round[]): Rounds["places"] {
  const rep = hitting.athlete.reps.numbers.rep!;
  const byRep = new Map<number, number[]>();
  for (const { rows } of rounds) {
    const speeds = valuesOf(hitting, "bat_speed", rows);
    const centre = speeds.reduce((sum, speed) => sum + speed, 0) / speeds.length;
    for (const row of rows) {
      const list = byRep.get(rep[row]!) ?? [];
      list.push(speedAt(hitting, row)! - centre);
      byRep.set(rep[row]!, list);
    }
  }
  return [...byRep]
    .sort(([a], [b]) => a - b)
    .map(([place, list]) => ({
      rep: place,
      n: list.length,
      mean: list.reduce((sum, one) => sum + one, 0) / list.length,
    }));
}

/** Seconds of a clock time `hh:mm[:ss]`. */
const secondsOf = (clock: string): number => {
  const [hours = 0, minutes = 0, seconds = 0] = clock.split(":").map(Number);
  return 3600 * hours + 60 * minutes + seconds;
};

/** How the first swing after a rest compares with the last before it, where clocks tell how long the rest was. */
export function recoveryReport(hitting: Hitting, all: readonly Round[]): HittingReport["recovery"] {
  const { reps } = hitting.athlete;
  const clock = (row: number) => reps.words.time?.[row] ?? null;
  const byBlock = new Map<string, Round[]>();
  for (const round of all) byBlock.set(round.block, [...(byBlock.get(round.block) ?? []), round]);
  const pairs = [...byBlock.values()].flatMap((rounds) => {
    const inOrder = [...rounds].sort((a, b) => a.number - b.number);
    return inOrder.slice(1).flatMap((next, i) => {
      const before = inOrder[i]!;
      const [last, first] = [before.rows.at(-1)!, next.rows[0]!];
      const [from, to] = [clock(last), clock(first)];
      const [ended, began] = [speedAt(hitting, last), speedAt(hitting, first)];
      if (next.number !== before.number + 1 || from === null || to === null || ended === null || began === null)
        return [];
      const rest = secondsOf(to) - secondsOf(from);
      return rest > 0 && rest <= LONGEST_REST ? [{ date: reps.date[first]!, rest, gained: began - ended }] : [];
    });
  });
  const dates = [...new Set(pairs.map(({ date }) => date))];
  const overDays = meanInterval(
    dates.map((day) => {
      const ofDay = pairs.filter(({ date }) => date === day).map(({ gained }) => gained);
      return ofDay.reduce((sum, one) => sum + one, 0) / ofDay.length;
    }),
  );
  if (pairs.length < LEAST_ROUNDS || dates.length < LEAST_DAYS || overDays === null) return null;
  const model = randomIntercept(
    pairs.map(({ gained }) => gained),
    pairs.map(({ rest }) => rest / 60),
    pairs.map(({ date }) => date),
  );
  const slope = model.kind === "model" ? model.slope : null;
  return {
    pairs: pairs.length,
    days: dates.length,
    restS: median(pairs.map(({ rest }) => rest))!,
    recovery: { ...overDays, ci95: overDays.ci95 && [...overDays.ci95] },
    perMinute:
      slope === null || slope.kenwardRoger.interval === null || slope.kenwardRoger.df === null
        ? null
        : { estimate: slope.estimate, ci95: [...slope.kenwardRoger.interval], df: slope.kenwardRoger.df },
  };
}
