import { type Cell, csvTable } from "./csv.ts";
import { randomFrom } from "./random.ts";

/** One way of being measured: how far it reads from the first one, in mph, and how much of itself it adds. */
interface Way {
  readonly metric: "bat_speed" | "exit_velocity";
  readonly environment: "tee" | "front-toss" | "machine";
  readonly above: number;
}

/** Invented hitters of one kind from earlier seasons. */
interface Kind {
  readonly sport: string;
  readonly sex: string;
  readonly level: string;
  readonly hitters: number;
  /** Tenths of a year. */
  readonly ages: readonly [number, number];
  /** Bat speed off the tee in the middle of the ages, what a year adds to it, and how far hitters of one age lie apart; mph. */
  readonly speed: number;
  readonly perYear: number;
  readonly spread: number;
  readonly ways: readonly Way[];
}

const way = (metric: Way["metric"], environment: Way["environment"], above: number): Way => ({
  metric,
  environment,
  above,
});
const tee = way("bat_speed", "tee", 0);

const KINDS: readonly Kind[] = [
  {
    sport: "baseball",
    sex: "male",
    level: "high-school",
    hitters: 33,
    ages: [142, 186],
    speed: 66.2,
    perYear: 1.9,
    spread: 4.1,
    ways: [
      tee,
      way("bat_speed", "front-toss", -0.8),
      way("bat_speed", "machine", -3.2),
      way("exit_velocity", "tee", 12.4),
      way("exit_velocity", "machine", 17.4),
    ],
  },
  {
    sport: "softball",
    sex: "female",
    level: "high-school",
    hitters: 31,
    ages: [140, 184],
    speed: 57.4,
    perYear: 1.2,
    spread: 3.6,
    ways: [
      tee,
      way("bat_speed", "front-toss", -0.6),
      way("bat_speed", "machine", -3.4),
      way("exit_velocity", "tee", 9.8),
      way("exit_velocity", "machine", 10.4),
    ],
  },
  {
    sport: "softball",
    sex: "female",
    level: "12u",
    hitters: 6,
    ages: [106, 128],
    speed: 47.1,
    perYear: 2.4,
    spread: 3,
    ways: [tee, way("bat_speed", "front-toss", -0.5), way("exit_velocity", "tee", 8.6)],
  },
  {
    sport: "baseball",
    sex: "male",
    level: "college",
    hitters: 21,
    ages: [188, 226],
    speed: 74.6,
    perYear: 0.7,
    spread: 3.9,
    ways: [
      tee,
      way("bat_speed", "front-toss", -0.9),
      way("bat_speed", "machine", -2.9),
      way("exit_velocity", "tee", 12.2),
      way("exit_velocity", "machine", 18.1),
    ],
  },
  {
    sport: "baseball",
    sex: "male",
    level: "independent-professional",
    hitters: 7,
    ages: [221, 312],
    speed: 77.4,
    perYear: 0.1,
    spread: 3.4,
    ways: [tee, way("exit_velocity", "tee", 13.8)],
  },
];

/** What one sensor at the cage calls the place that it reads; as devices.csv says it. */
const POINT = "6 in from the barrel end";
const SOURCE = "Sleetholm Hitting Barn, earlier seasons (invented)";
const YEAR = 2025;
const COLUMNS =
  "metric,unit,point_on_bat,environment,implement,sport,sex,level,age_lo,age_hi,kind,value,l,m,s,mean,sd,n,source,year";

type Row = Record<string, Cell>;

function rowsOf(kind: Kind): Row[] {
  const { sport, sex, level, hitters, ages, speed, perYear, spread, ways } = kind;
  const random = randomFrom(`peers ${sport} ${level}`);
  const people = Array.from({ length: hitters }, () => {
    const age = random.integer(ages[0], ages[1]) / 10;
    const years = age - (ages[0] + ages[1]) / 20;
    return { age, speed: speed + perYear * years + random.normal(0, spread) };
  });
  // By value within a way of measuring: the order of the rows says nothing of who is who.
  return ways.flatMap(({ metric, environment, above }) =>
    people
      .map((person) => ({ age: person.age, value: person.speed + above + random.normal(0, 1.3) }))
      .sort((a, b) => a.age - b.age || a.value - b.value)
      .map(({ age, value }) => ({
        metric,
        unit: "mph",
        point_on_bat: metric === "bat_speed" ? POINT : undefined,
        environment,
        implement: "game",
        sport,
        sex,
        level,
        age_lo: age.toFixed(1),
        age_hi: age.toFixed(1),
        kind: "value",
        value: value.toFixed(1),
        source: SOURCE,
        year: YEAR,
      })),
  );
}

/**
 * Values of invented hitters of earlier seasons, by path in the season folder: one row is one hitter measured in one way. Nobody's id is
 * in it. Of the youngest and of the professionals there are too few for a comparison.
 */
export function referenceFiles(): Map<string, string> {
  return new Map([["data/reference/earlier-seasons.csv", csvTable(COLUMNS.split(","), KINDS.flatMap(rowsOf))]]);
}
