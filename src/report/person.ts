import type { Profile } from "../schema/profile.ts";
import type { Implement } from "../schema/tables.ts";
import { CM_PER_INCH, KG_PER_POUND } from "../schema/units.ts";
import { wholeYears } from "./calendar.ts";
import type { AthleteReport } from "./schema.ts";

type Person = AthleteReport["athlete"];

/** Age at which an athlete decides for themselves. */
export const ADULT_AGE = 18;

/**
 * Is the athlete a minor on that day? Without a birth date: yes. With only the year of birth: through 31 December of the
 * year of the 18th birthday.
 */
export function isMinor(born: Profile["born"], asOf: string): boolean {
  if (born === undefined) return true;
  if (typeof born === "number") return Number(asOf.slice(0, 4)) - born <= ADULT_AGE;
  return wholeYears(born, asOf) < ADULT_AGE;
}

/** Full name of an adult; first name and initial of a minor. */
export function displayName(name: string, minor: boolean): string {
  const words = name.trim().split(/\s+/u);
  const last = words.at(-1);
  if (!minor || words.length < 2 || !last) return name.trim();
  return `${words[0]} ${[...last][0]}.`;
}

/** Years in which growth alone moves many measures, both included. */
const GROWING: readonly [number, number] = [10, 16];

/** Youngest and oldest that an athlete may be on a day. */
function agesOn(born: NonNullable<Profile["born"]>, day: string): readonly [number, number] {
  if (typeof born === "string") return [wholeYears(born, day), wholeYears(born, day)];
  const turned = Number(day.slice(0, 4)) - born;
  return [turned - 1, turned];
}

/**
 * Was the athlete of these ages on any day from `since` to `asOf`? Null where the age is not known, or only a year of birth leaves it
 * open.
 */
export function isGrowing(born: Profile["born"], asOf: string, since: string = asOf): boolean | null {
  if (born === undefined) return null;
  const [youngestBefore, oldestBefore] = agesOn(born, since);
  const [youngest, oldest] = agesOn(born, asOf);
  if (youngest >= GROWING[0] && oldestBefore <= GROWING[1]) return true;
  return oldest < GROWING[0] || youngestBefore > GROWING[1] ? false : null;
}

function gameBats(bats: Profile["game_bat"], known: readonly Implement[]): Person["gameBats"] {
  if (bats === undefined) return [];
  const list = typeof bats === "string" ? [{ id: bats, from: null }] : bats;
  return list.map(({ id, from }) => {
    const bat = known.find((one) => one.id === id);
    return { id, label: bat?.label ?? null, lengthIn: bat?.length_in ?? null, weightOz: bat?.weight_oz ?? null, from };
  });
}

const byDate = (a: { date: string }, b: { date: string }) => (a.date < b.date ? -1 : a.date > b.date ? 1 : 0);

/**
 * Who the report is about, in canonical units.
 *
 * @param since first day of the season, for what is told of the whole of it
 */
export function personOf(
  id: string,
  profile: Profile,
  known: readonly Implement[],
  asOf: string,
  since: string = asOf,
): Person {
  const minor = isMinor(profile.born, asOf);
  return {
    id,
    displayName: displayName(profile.name, minor),
    language: profile.language ?? "en",
    sport: profile.sport ?? null,
    level: profile.level ?? null,
    sex: profile.sex ?? null,
    bats: profile.bats ?? null,
    throws: profile.throws ?? null,
    positions: profile.positions ?? [],
    age: typeof profile.born === "string" ? wholeYears(profile.born, asOf) : null,
    minor,
    growing: isGrowing(profile.born, asOf, since),
    heights: (profile.heights ?? [])
      .map((one) => ({ date: one.date, in: "in" in one ? one.in : one.cm / CM_PER_INCH }))
      .sort(byDate),
    masses: (profile.masses ?? [])
      .map((one) => ({ date: one.date, lb: "lb" in one ? one.lb : one.kg / KG_PER_POUND }))
      .sort(byDate),
    gameBats: gameBats(profile.game_bat, known),
    away: (profile.away ?? []).map(({ from, to, say }) => ({ from, to, say: say ?? null })),
  };
}
