import { gameBatOn } from "../../schema/profile.ts";
import { DAY_MS, dayOf, isoDay, mondayOf, WEEK_MS } from "../calendar.ts";
import type { HittingReport } from "../hitting-schema.ts";
import { unmeasuredBlocks, workingRows } from "../work.ts";
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

/** Real swings of the season: what was measured, and what the log has of blocks that nobody measured. */
function pieces({ athlete, season }: Hitting): Piece[] {
  const { reps, log } = athlete;
  const { start, end } = season.facility.season;
  const cell = (field: string, i: number) => reps.words[field]?.[i] ?? null;
  const swung = workingRows(reps, { start, end }).map(
    (i): Piece => ({ date: reps.date[i]!, effort: cell("effort", i), implement: cell("implement", i), swings: 1 }),
  );
  const word = (value: string | number | undefined) => (typeof value === "string" ? value : null);
  const logged = unmeasuredBlocks(log, reps)
    .map(
      ({ date, context, swings }): Piece => ({
        date,
        effort: word(context.effort),
        implement: word(context.implement),
        swings: swings ?? 0,
      }),
    )
    .filter(({ date, swings }) => date >= start && date <= end && swings > 0);
  return [...swung, ...logged];
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
    const { mass, roles } = relative(find(implement), find(game));
    const found: ByMass =
      mass === null ? "unknown" : roles.includes("heavy") ? "heavier" : roles.includes("light") ? "lighter" : "alike";
    weights.set(key, found);
    return found;
  };
  const byWeek = new Map<number, Piece[]>();
  for (const piece of all) {
    const week = mondayOf(dayOf(piece.date));
    const list = byWeek.get(week);
    if (list) list.push(piece);
    else byWeek.set(week, [piece]);
  }
  const weeks: Load["weeks"] = [];
  const { start, end } = season.facility.season;
  for (let week = mondayOf(dayOf(start)); week <= dayOf(end); week += WEEK_MS) {
    const inWeek = byWeek.get(week) ?? [];
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
