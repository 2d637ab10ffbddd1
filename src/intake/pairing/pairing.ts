import type { PairedRow, PairedSession, PairSensors, SensorPairs } from "../../schema/pairing.ts";
import type { AppliedCorrection, Problem } from "../../schema/season.ts";
import { isoDay } from "../calendar-day.ts";
import type { Correction } from "../corrections/correction.ts";
import type { Sides } from "../log/streams.ts";
import { remark, wholeFile } from "../problem.ts";
import type { RowAt, RowFates } from "../row-fates.ts";
import type { SwingFields } from "../swing-fields.ts";
import { alonePairings, onlyPaired } from "./alone.ts";
import { type DayRows, dayRows, type SensorRows } from "./day-rows.ts";
import { deviceSide } from "./device-side.ts";
import { fillBetween, joinRows, markRow } from "./join.ts";
import { onlyTheirBalls } from "./own-balls.ts";
import { type ReadingSetup, RowReadings } from "./row-reading.ts";
import { pairKey, rowKeyOf, type ToldPairs, toldPairs } from "./told-pairs.ts";

export interface PairingSetup extends ReadingSetup {
  readonly fields: SwingFields;
  readonly sides: Sides;
  /** Ids by the index that stands for them. */
  readonly athletes: readonly string[];
  /** Physics; null where nothing is to be paired. */
  readonly pair: PairSensors | null;
}

export interface PairedRows {
  readonly sessions: readonly PairedSession[];
  readonly applied: readonly AppliedCorrection[];
  readonly problems: readonly Problem[];
}

/**
 * Joins rows of a bat's sensor and a ball's screen that are one swing: where files of one day measure the bat alone and others the ball alone.
 * Two rows that are joined are one rep; everything else stays single, and is told.
 *
 * @param corrections of pairs; the others are done before
 */
export function pairRows(fates: RowFates, corrections: readonly Correction[], setup: PairingSetup): PairedRows {
  const sideOf = ({ table }: RowAt) => {
    const file = fates.files[table];
    return file === undefined ? null : deviceSide(file, setup.sides);
  };
  const told = toldPairs(corrections, fates, sideOf);
  if (setup.pair === null) return { sessions: [], applied: [], problems: [] };
  const work = new Pairer(fates, told, setup, setup.pair);
  const sessions = dayRows(fates, setup.sides).flatMap((day) => work.day(day));
  return { sessions, applied: told.applied, problems: [...told.problems, ...notesOf(sessions)] };
}

/** One sensor's day against one screen. */
interface Bout {
  readonly sensor: SensorRows;
  readonly bats: readonly RowAt[];
  readonly told: readonly (readonly [RowAt, RowAt])[];
}

class Pairer {
  readonly #fates: RowFates;
  readonly #told: ToldPairs;
  readonly #setup: PairingSetup;
  readonly #pair: PairSensors;
  readonly #readings: RowReadings;
  readonly #joined = new Set<string>();

  constructor(fates: RowFates, told: ToldPairs, setup: PairingSetup, pair: PairSensors) {
    this.#fates = fates;
    this.#told = told;
    this.#setup = setup;
    this.#pair = pair;
    this.#readings = new RowReadings(fates, setup);
  }

  day({ day, sensors, screens }: DayRows): PairedSession[] {
    return screens.flatMap(({ rows: balls }) => {
      const free = this.#inTime(balls.filter((at) => !this.#joined.has(rowKeyOf(at))));
      const bouts = this.#bouts(sensors, free);
      if (bouts.length === 0) return [];
      if (bouts.some(({ bats }) => !this.#timed(bats)) || !this.#timed(free))
        return bouts.map((bout) => this.#untold(day, bout, free, "no-seconds"));
      return this.#paired(day, bouts, free);
    });
  }

  /** For each athlete whose balls, or balls of nobody, the screen saw: the sensor with most rows. Another one saw the same swings. */
  #bouts(sensors: readonly SensorRows[], balls: readonly RowAt[]): Bout[] {
    const whose = new Set(balls.map((at) => this.#athlete(at)));
    const best = new Map<number, SensorRows>();
    for (const sensor of sensors) {
      if (!whose.has(sensor.athlete) && !whose.has(-1)) continue;
      const other = best.get(sensor.athlete);
      if (other === undefined || other.rows.length < sensor.rows.length) best.set(sensor.athlete, sensor);
    }
    const onScreen = new Set(balls.map(rowKeyOf));
    return [...best.values()].flatMap((sensor) => {
      const bats = this.#inTime(sensor.rows.filter((at) => !this.#joined.has(rowKeyOf(at))));
      const own = new Set(bats.map(rowKeyOf));
      const told = this.#told.made.filter(([bat, ball]) => own.has(rowKeyOf(bat)) && onScreen.has(rowKeyOf(ball)));
      return bats.length === 0 ? [] : [{ sensor, bats, told }];
    });
  }

  #athlete({ table, row }: RowAt): number {
    return Math.max(-1, this.#fates.files[table]?.table.athlete[row] ?? -1);
  }

  #inTime(rows: readonly RowAt[]): RowAt[] {
    const seconds = (at: RowAt) => this.#readings.seconds(at) ?? 0;
    return [...rows].sort((one, other) => seconds(one) - seconds(other));
  }

  /** Times to the second: a clock that shows minutes alone stands at :00 every time. */
  #timed(rows: readonly RowAt[]): boolean {
    const seconds = rows.map((at) => this.#readings.seconds(at));
    return seconds.every((one) => one !== null) && (rows.length < 2 || seconds.some((one) => one! % 60 !== 0));
  }

  #paired(day: number, bouts: readonly Bout[], balls: readonly RowAt[]): PairedSession[] {
    const { alone, broken } = this.#told;
    const taken = new Set(bouts.flatMap(({ told }) => told.flatMap(([bat, ball]) => [rowKeyOf(bat), rowKeyOf(ball)])));
    const single = (at: RowAt) => alone.has(rowKeyOf(at)) || taken.has(rowKeyOf(at));
    const seen = bouts.map(({ bats }) => bats.map((at) => this.#readings.bat(at, single(at))));
    const sensors = bouts.map(({ bats }, bout) => {
      const apart = this.#readings.apart(bats, balls);
      return {
        bats: seen[bout]!,
        apart: (i: number, j: number) => apart(i, j) || broken.has(pairKey(bats[i]!, balls[j]!)),
      };
    });
    const found = this.#pair(
      sensors,
      balls.map((at) => this.#readings.ball(at, single(at))),
    );
    return bouts.map((bout, i) => this.#settle(day, bout, balls, found[i]!));
  }

  #settle(day: number, bout: Bout, balls: readonly RowAt[], found: SensorPairs): PairedSession {
    const { bats, told } = bout;
    const places = new Map([...bats, ...balls].map((at, i) => [rowKeyOf(at), i < bats.length ? i : i - bats.length]));
    const byHand = told.map(([bat, ball]) => ({
      a: places.get(rowKeyOf(bat))!,
      b: places.get(rowKeyOf(ball))!,
      confidence: 1,
      told: true,
    }));
    const byClock = "kind" in found ? [] : found.pairs.map((pair) => ({ ...pair, told: false }));
    // Two rows that the log could place nowhere are still nowhere when they are one.
    const placed = [...byHand, ...byClock].filter(({ a, b }) =>
      [bats[a]!, balls[b]!].some((at) => this.#fates.reasonOf(at) === null),
    );
    if (placed.length === 0) return this.#untold(day, bout, balls, "cannot-tell");
    for (const { a, b } of placed) {
      joinRows(this.#fates, bats[a]!, balls[b]!, this.#setup.fields);
      for (const at of [bats[a]!, balls[b]!]) this.#joined.add(rowKeyOf(at));
    }
    const pairs = placed.sort((one, other) => one.a - other.a);
    this.#fillSingles(bats, pairs);
    const { batPairing, ballPairing } =
      "kind" in found
        ? onlyPaired(bats.length, balls.length, pairs)
        : alonePairings({
            bats: bats.map((at) => ({
              ...this.#readings.bat(at, false),
              unit: this.#word(at, "block") ?? this.#word(at, "environment"),
              standing: this.#stands(at),
              hasResult: this.#word(at, "result") !== null,
            })),
            balls: balls.map((at) => ({ own: this.#athlete(at) === bout.sensor.athlete, standing: this.#stands(at) })),
            pairs,
          });
    batPairing.forEach((pairing, i) => {
      if (pairing !== null) markRow(this.#fates, bats[i]!, pairing);
    });
    ballPairing.forEach((pairing, j) => {
      if (pairing === "bat-not-recorded") markRow(this.#fates, balls[j]!, pairing);
    });
    const clocks = "kind" in found ? null : { offset: found.offset, drift: found.drift, noise: found.noise };
    return this.#theirs(bout, balls, {
      ...this.#known(day, bout, balls),
      outcome: "paired",
      clocks,
      pairs,
      doubtful: "kind" in found ? [] : found.doubtful,
      batPairing,
      ballPairing,
    });
  }

  #theirs({ sensor }: Bout, balls: readonly RowAt[], session: PairedSession): PairedSession {
    return onlyTheirBalls(session, (ball) => [-1, sensor.athlete].includes(this.#athlete(balls[ball]!)));
  }

  /** Sensor rows between two pairs take over what both were swung in. */
  #fillSingles(bats: readonly RowAt[], pairs: readonly { readonly a: number }[]): void {
    for (const [place, { a }] of pairs.entries()) {
      const next = pairs[place + 1];
      if (next === undefined) return;
      for (let i = a + 1; i < next.a; i++)
        if (this.#stands(bats[i]!)) fillBetween(this.#fates, bats[i]!, bats[a]!, bats[next.a]!, this.#setup.fields);
    }
  }

  #stands(at: RowAt): boolean {
    return this.#fates.reasonOf(at) === null;
  }

  #word({ table, row }: RowAt, field: string): string | null {
    return this.#fates.files[table]?.table.words.get(field)?.[row] ?? null;
  }

  #untold(day: number, bout: Bout, balls: readonly RowAt[], outcome: "cannot-tell" | "no-seconds"): PairedSession {
    const own = this.#known(day, bout, balls);
    return this.#theirs(bout, balls, {
      ...own,
      outcome,
      clocks: null,
      pairs: [],
      doubtful: [],
      batPairing: own.bats.map(() => null),
      ballPairing: own.balls.map(() => null),
    });
  }

  #known(day: number, { sensor, bats }: Bout, balls: readonly RowAt[]) {
    const row = (at: RowAt, metric: string): PairedRow => {
      const mph = this.#fates.files[at.table]?.table.numbers.get(metric)?.[at.row] ?? Number.NaN;
      return {
        ...this.#fates.placeOf(at),
        time: this.#readings.seconds(at) ?? 0,
        mph: Number.isNaN(mph) ? null : mph,
      };
    };
    return {
      athlete: this.#setup.athletes[sensor.athlete] ?? "",
      date: isoDay(day),
      bats: bats.map((at) => row(at, "bat_speed")),
      balls: balls.map((at) => row(at, "exit_velocity")),
    };
  }
}

/** One note for each sensor file of an athlete that could not be paired, however many days it holds. */
function notesOf(sessions: readonly PairedSession[]): Problem[] {
  const found = new Map<string, { session: PairedSession; days: number }>();
  for (const session of sessions) {
    if (session.outcome === "paired") continue;
    const key = JSON.stringify([session.outcome, session.athlete, session.bats[0]?.file]);
    const before = found.get(key);
    if (before === undefined) found.set(key, { session, days: 1 });
    else before.days += 1;
  }
  return [...found.values()].map(({ session, days }) => {
    const { athlete, date, bats, balls, outcome } = session;
    const code = outcome === "no-seconds" ? "pairs-without-seconds" : "pairs-not-told";
    return remark(code, wholeFile(bats[0]?.file ?? ""), { athlete, date, days, other: balls[0]?.file ?? "" });
  });
}
