import { gameBatOn } from "../schema/profile.ts";
import type { AthleteSeason, LineOf, Season } from "../schema/season.ts";
import type { Implement } from "../schema/tables.ts";
import { wholeYears } from "./calendar.ts";
import { relative } from "./hitting/implements.ts";

/** Work of one day that a limit did not allow. */
export interface BrokenLimit {
  readonly athlete: string;
  readonly date: string;
  /** The word of the limit that it met: a role of a bat, an effort, an environment. */
  readonly word: string;
  /** `limit`: the athlete's own; `age`: the facility's age for heavy bats. */
  readonly rule: "limit" | "age";
  /** Whose decision the limit is; null where nobody is named. */
  readonly decidedBy: string | null;
  /** Swings, measured or as the log has them. */
  readonly swings: number;
  readonly at: LineOf;
}

type Known = Pick<Season, "implements" | "facility">;

/** One piece of work: a rep, or a block of the log that nobody measured. */
interface Work {
  readonly date: string;
  readonly environment: string | null;
  readonly implement: string | null;
  readonly effort: string | null;
  readonly swings: number;
  readonly at: LineOf;
}

/** What a bat may be called by: its id, its role, and what mass and length against the game bat make of it. */
const ROLE_WORDS = { heavy: "overload", light: "underload", long: "long", short: "short" } as const;

function workOf({ reps, log }: AthleteSeason, files: readonly string[]): Work[] {
  const word = (field: string, i: number) => reps.words[field]?.[i] ?? null;
  const swung = reps.date.map(
    (date, i): Work => ({
      date,
      environment: word("environment", i),
      implement: word("implement", i),
      effort: word("effort", i),
      swings: 1,
      at: { file: files[reps.file[i]!] ?? "data/swings", line: reps.line[i]! },
    }),
  );
  const text = (value: string | number | undefined) => (typeof value === "string" ? value : null);
  const logged = log.flatMap(({ date, context, swings, assigned, from }): Work[] => {
    const [at] = from;
    // A block whose swings were measured is there already, swing by swing.
    if (at === undefined || Object.keys(assigned).length > 0) return [];
    const { environment, implement, effort } = context;
    return [
      {
        date,
        environment: text(environment),
        implement: text(implement),
        effort: text(effort),
        swings: swings ?? 0,
        at,
      },
    ];
  });
  return [...swung, ...logged];
}

function wordsOf(
  { environment, implement, effort, date }: Work,
  athlete: AthleteSeason,
  bats: readonly Implement[],
): Set<string> {
  const words = [environment, implement, effort];
  const bat = bats.find(({ id }) => id === implement);
  const game = gameBatOn(athlete.profile, date);
  const made =
    implement === game
      ? []
      : relative(
          bat,
          bats.find(({ id }) => id === game),
        ).roles;
  const roles = made.flatMap((role) => (role === "alike" ? [] : [ROLE_WORDS[role]]));
  return new Set([...words, bat?.role ?? null, ...roles].filter((word) => word !== null));
}

/**
 * Work that a limit of the athlete's profile, or the facility's age for heavy bats, did not allow: one entry for each day and word.
 * It says what was done, and nothing of what it did.
 *
 * @param files names of `Season.swingFiles`, in their order
 */
export function brokenLimits(athlete: AthleteSeason, season: Known, files: readonly string[]): BrokenLimit[] {
  const { limits = [], born } = athlete.profile;
  const fromAge = season.facility.overload_from_age;
  if (limits.length === 0 && fromAge === undefined) return [];
  const found = new Map<string, BrokenLimit>();
  const add = (work: Work, word: string, rule: BrokenLimit["rule"], decidedBy: string | null) => {
    const key = JSON.stringify([work.date, word, rule]);
    const known = found.get(key);
    const { date, swings, at } = work;
    found.set(
      key,
      known
        ? { ...known, swings: known.swings + swings }
        : { athlete: athlete.id, date, word, rule, decidedBy, swings, at },
    );
  };
  for (const work of workOf(athlete, files)) {
    const { start, end } = season.facility.season;
    if (work.date < start || work.date > end) continue;
    const words = wordsOf(work, athlete, season.implements);
    for (const { from, to, none_of: barred, decided_by_role: decidedBy } of limits) {
      if (work.date < from || work.date > (to ?? end)) continue;
      for (const word of barred) if (words.has(word)) add(work, word, "limit", decidedBy ?? null);
    }
    const young = typeof born === "string" && fromAge !== undefined && wholeYears(born, work.date) < fromAge;
    if (young && words.has("overload")) add(work, "overload", "age", null);
  }
  return [...found.values()].sort((a, b) => (a.date < b.date ? -1 : a.date > b.date ? 1 : 0));
}
