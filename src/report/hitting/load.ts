import { gameBatOn } from "../../schema/profile.ts";
import { DAY_MS, dayOf, isoDay, mondayOf, WEEK_MS } from "../calendar.ts";
import type { HittingReport } from "../hitting-schema.ts";
import { relative } from "./implements.ts";
import type { Hitting } from "./swings.ts";

type Load = HittingReport["load"];
type ByMass = keyof Load["weeks"][number]["byMass"];

/** Swings of one day in one manner, measured or logged. */
interface Piece {
  readonly date: string;
  readonly effort: string | null;
  readonly implement: string | null;
  readonly swings: number;
}

/** Parts of the game bat's mass beyond which a bat is heavier or lighter (common practice). */
const ALIKE = 0.05;

/** Real swings of the season: what was measured, and what the log has of blocks that nobody measured. */
function pieces({ athlete, season }: Hitting): Piece[] {
  const { reps, log } = athlete;
  const { start, end } = season.facility.season;
  const cell = (field: string, i: number) => reps.words[field]?.[i] ?? null;
  const swung = reps.date.flatMap((date, i): Piece[] =>
    cell("result", i) === "take" || cell("swing_type", i) === "practice"
      ? []
      : [{ date, effort: cell("effort", i), implement: cell("implement", i), swings: 1 }],
  );
  const free = new Set(reps.date.filter((_, i) => cell("assigned", i) === null));
  const logged = log.flatMap(({ date, context, swings, assigned, measured }): Piece[] => {
    const empty = Object.keys(assigned).length === 0;
    if (!(measured === "none" || (empty && !free.has(date)))) return [];
    const word = (value: string | number | undefined) => (typeof value === "string" ? value : null);
    return [{ date, effort: word(context.effort), implement: word(context.implement), swings: swings ?? 0 }];
  });
  return [...swung, ...logged].filter(({ date, swings }) => date >= start && date <= end && swings > 0);
}

/** Work per week by effort and by the bat's mass, days since the last at full effort, and how many weeks had any. */
export function loadReport(hitting: Hitting, asOf: string): Load {
  const { season, athlete } = hitting;
  const all = pieces(hitting);
  const weights = new Map<string, ByMass>();
  const massOf = ({ implement, date }: Piece): ByMass => {
    const game = gameBatOn(athlete.profile, date);
    if (implement === "game" || (implement !== null && implement === game)) return "alike";
    const key = `${implement} ${game}`;
    const known = weights.get(key);
    if (known !== undefined) return known;
    const find = (id: string | null | undefined) => season.implements.find((one) => one.id === id);
    const { mass } = relative(find(implement), find(game));
    const found: ByMass =
      mass === null ? "unknown" : mass > 1 + ALIKE ? "heavier" : mass < 1 - ALIKE ? "lighter" : "alike";
    weights.set(key, found);
    weights.set(key, found);
    return found;
  };
  const weeks: Load["weeks"] = [];
  const { start, end } = season.facility.season;
  for (let week = mondayOf(dayOf(start)); week <= dayOf(end); week += WEEK_MS) {
    const inWeek = all.filter(({ date }) => mondayOf(dayOf(date)) === week);
    const sum = (of: (piece: Piece) => boolean) => inWeek.filter(of).reduce((total, { swings }) => total + swings, 0);
    weeks.push({
      start: isoDay(week),
      swings: sum(() => true),
      byEffort: {
        max: sum(({ effort }) => effort === "max"),
        game: sum(({ effort }) => effort === "game"),
        technical: sum(({ effort }) => effort === "technical"),
        unknown: sum(({ effort }) => effort === null),
      },
      byMass: {
        heavier: sum((piece) => massOf(piece) === "heavier"),
        alike: sum((piece) => massOf(piece) === "alike"),
        lighter: sum((piece) => massOf(piece) === "lighter"),
        unknown: sum((piece) => massOf(piece) === "unknown"),
      },
    });
  }
  const lastMax = all
    .filter(({ effort, date }) => effort === "max" && date <= asOf)
    .reduce<string | null>((last, { date }) => (last === null || date > last ? date : last), null);
  return {
    weeks,
    lastMax,
    daysSinceMax: lastMax === null ? null : Math.round((dayOf(asOf) - dayOf(lastMax)) / DAY_MS),
    weeksWithWork: weeks.filter(({ swings }) => swings > 0).length,
    weeksInSeason: weeks.length,
  };
}
