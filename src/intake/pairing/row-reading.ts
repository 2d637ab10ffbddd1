import type { BallReading, BatReading } from "../../schema/pairing.ts";
import type { LoggedBlock } from "../../schema/season.ts";
import type { Ball } from "../../schema/tables.ts";
import { isoDay } from "../calendar-day.ts";
import { clockMs } from "../log/by-time.ts";
import type { SameName } from "../log/inherit.ts";
import type { RowAt, RowFates } from "../row-fates.ts";
import type { SwingTable } from "../swing-table.ts";

export interface ReadingSetup {
  readonly balls: readonly Ball[];
  readonly same: SameName;
  readonly log: ReadonlyMap<string, readonly LoggedBlock[]>;
}

/** Words by which two rows are told apart. */
const CONTEXT = ["session", "block", "environment", "drill", "implement", "ball", "side", "purpose", "place"] as const;
const NOTHING_HIT: readonly (string | null)[] = ["miss", "take"];
const NO_BALL: readonly (string | null)[] = ["practice", "check"];

const word = (table: SwingTable | undefined, field: string, row: number): string | null =>
  table?.words.get(field)?.[row] ?? null;

function number(table: SwingTable | undefined, field: string, row: number): number | null {
  const value = table?.numbers.get(field)?.[row] ?? Number.NaN;
  return Number.isNaN(value) ? null : value;
}

/** Turns rows into what a pairing looks at. */
export class RowReadings {
  readonly #fates: RowFates;
  readonly #setup: ReadingSetup;
  readonly #measured = new Map<string, LoggedBlock["measured"]>();

  constructor(fates: RowFates, setup: ReadingSetup) {
    this.#fates = fates;
    this.#setup = setup;
    for (const [athlete, blocks] of setup.log) {
      for (const { date, session, block, measured } of blocks)
        this.#measured.set(JSON.stringify([athlete, date, session, block]), measured);
    }
  }

  /** Seconds of the day; null where the time is missing or has no seconds. */
  seconds({ table, row }: RowAt): number | null {
    const time = word(this.#fates.files[table]?.table, "time", row);
    return time === null || time.length < 8 ? null : clockMs(time) / 1000;
  }

  bat(at: RowAt, alone: boolean): BatReading {
    const table = this.#fates.files[at.table]?.table;
    const noBall =
      alone ||
      NOTHING_HIT.includes(word(table, "result", at.row)) ||
      NO_BALL.includes(word(table, "swing_type", at.row)) ||
      word(table, "environment", at.row) === "dry" ||
      ["speed", "none"].includes(this.#measuredIn(at) ?? "");
    return { time: this.seconds(at) ?? 0, speed: number(table, "bat_speed", at.row), noBall };
  }

  ball(at: RowAt, alone: boolean): BallReading {
    const table = this.#fates.files[at.table]?.table;
    const mph = number(table, "pitch_speed", at.row);
    const named = word(table, "ball", at.row);
    return {
      time: this.seconds(at) ?? 0,
      exit: number(table, "exit_velocity", at.row),
      noBat:
        alone ||
        NOTHING_HIT.includes(word(table, "result", at.row)) ||
        ["flight", "none"].includes(this.#measuredIn(at) ?? ""),
      environment: word(table, "environment", at.row),
      pitch:
        mph === null
          ? null
          : {
              mph,
              at: word(table, "pitch_speed_at", at.row),
              distanceFt: number(table, "pitch_distance", at.row),
            },
      ball: this.#setup.balls.find(({ id }) => id === named) ?? null,
    };
  }

  #measuredIn(at: RowAt): LoggedBlock["measured"] | undefined {
    const table = this.#fates.files[at.table]?.table;
    const date = isoDay(table?.day[at.row] ?? 0);
    const [session, block] = [word(table, "session", at.row), word(table, "block", at.row)];
    return this.#measured.get(JSON.stringify([this.#fates.athleteOf(at), date, session, block]));
  }

  /**
   * Which rows of two lists cannot be one swing by what is said of them: other people, blocks, bats, sides. Rows that say the same are asked once.
   */
  apart(bats: readonly RowAt[], balls: readonly RowAt[]): (bat: number, ball: number) => boolean {
    const [left, right] = [this.#kinds(bats), this.#kinds(balls)];
    const table = left.kinds.map((one) => right.kinds.map((other) => this.#differ(one, other)));
    return (bat, ball) => table[left.of[bat]!]?.[right.of[ball]!] ?? false;
  }

  #kinds(rows: readonly RowAt[]): { of: number[]; kinds: (readonly (string | null)[])[] } {
    const known = new Map<string, number>();
    const kinds: (readonly (string | null)[])[] = [];
    const of = rows.map((at) => {
      const table = this.#fates.files[at.table]?.table;
      const date = isoDay(table?.day[at.row] ?? 0);
      const kind = [this.#fates.athleteOf(at), date, ...CONTEXT.map((field) => word(table, field, at.row))];
      const key = JSON.stringify(kind);
      const index = known.get(key) ?? kinds.push(kind) - 1;
      known.set(key, index);
      return index;
    });
    return { of, kinds };
  }

  #differ(one: readonly (string | null)[], other: readonly (string | null)[]): boolean {
    const [athlete, date] = one;
    if (athlete != null && other[0] != null && athlete !== other[0]) return true;
    return CONTEXT.some((field, i) => {
      const [left, right] = [one[i + 2] ?? null, other[i + 2] ?? null];
      return left !== null && right !== null && !this.#setup.same(field, left, right, athlete ?? "", date ?? "");
    });
  }
}
