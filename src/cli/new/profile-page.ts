import type { Profile } from "../../schema/profile.ts";
import { frontMatterPage } from "./front-matter-page.ts";

/** One thing a profile lacks, what that costs, and how it is written. */
export interface Lack {
  readonly what: string;
  readonly costs: string;
  readonly line: string;
}

const isMinor = "goes by guardian: a grown athlete agrees with as: self";

/** What may be missing in a profile, most important first. An agreement is asked for and never made up. */
const WANTED: readonly (Lack & { readonly key: keyof Profile })[] = [
  {
    key: "consent",
    what: "consent",
    costs: "nothing is published before somebody agreed",
    line: `consent: [{ by: guardian, as: guardian, on: yyyy-mm-dd, readers: [family] }]   # ${isMinor}`,
  },
  { key: "born", what: "birth date", costs: "treated as a minor; no age, no peers", line: "born: yyyy-mm-dd" },
  { key: "bats", what: "batting side", costs: "the report cannot say it", line: "bats: right   # left, right, switch" },
  { key: "level", what: "level", costs: "no comparison with peers", line: "level: high-school" },
  {
    key: "game_bat",
    what: "game bat",
    costs: "swings with the game bat cannot be told apart when it changes",
    line: "game_bat: [{ id: an-id-of-implements-csv, from: yyyy-mm-dd }]",
  },
  {
    key: "aliases",
    what: "names in exports",
    costs: "rows under another name are set aside",
    line: "aliases: [Name as an export writes it]",
  },
  {
    key: "goals",
    what: "goals",
    costs: "no goal is followed",
    line: "goals: [{ metric: bat_speed, condition: { environment: tee }, target: 60, by: yyyy-mm-dd }]",
  },
];

/** What this profile lacks, most important first. */
export const lacksOf = (profile: Partial<Profile>): Lack[] =>
  WANTED.filter(({ key }) => profile[key] === undefined).map(({ what, costs, line }) => ({ what, costs, line }));

/** `profile.md` of an athlete. */
export const profilePage = (profile: Profile): string =>
  frontMatterPage(
    profile,
    lacksOf(profile).map(({ line }) => line),
  );
