import { balance, type LedgerFile } from "../publish/balance.ts";
import { ledgerRows } from "../publish/ledger-rows.ts";
import { reassignedRows } from "../publish/reassigned.ts";
import { seasonBridges } from "../report/bridges.ts";
import { groupFacts } from "../report/group-facts.ts";
import { brokenLimits } from "../report/limits.ts";
import { reportFor } from "../report/report.ts";
import { rounded } from "../report/rounded.ts";
import { AthleteReport } from "../report/schema.ts";
import { heldTexts, textFindings } from "../report/texts.ts";
import type { Effects } from "../schema/effects.ts";
import type { NotCountedReason, SetAsideReason } from "../schema/reasons.ts";
import type { AthleteSeason, LedgerRow, Problem, Season } from "../schema/season.ts";
import { asOfFor } from "./as-of.ts";
import {
  appliedNotes,
  findingsOf,
  heldProblems,
  limitProblem,
  pastKeeping,
  textProblems,
  unsealedMinor,
} from "./findings.ts";
import {
  NAMES_ANOTHER,
  type Receiving,
  SHOWS_BIRTH_DATE,
  seasonCheck,
  withheldByReader,
  withheldFrom,
  withoutNames,
} from "./named.ts";
import type { Withheld } from "./terms.ts";

/** One athlete on the way through the build. */
export interface Told {
  readonly athlete: AthleteSeason;
  readonly report: AthleteReport;
  /** Entry i: why rep i does not count, or null where it does. */
  readonly judged: readonly (NotCountedReason | null)[];
  readonly withheld: Withheld;
  readonly receiving: readonly Receiving[];
}

/** A season with every row accounted for and every report made. */
export interface Judgement {
  readonly season: Season;
  readonly asOf: string;
  readonly told: readonly Told[];
  readonly ledger: LedgerFile;
  /** Rows not counted and set aside. */
  readonly rows: readonly LedgerRow[];
  readonly problems: readonly Problem[];
  /** Athletes missing from what is published because of some input, in order of id. */
  readonly missing: readonly string[];
}

/** The rows of one athlete that intake set aside, by reason. */
function asideOf(season: Season, athlete: string): Partial<Record<SetAsideReason, number>> {
  const counts: Partial<Record<SetAsideReason, number>> = {};
  for (const row of season.setAside) {
    if (row.athlete !== athlete) continue;
    const reason = row.reason as SetAsideReason;
    counts[reason] = (counts[reason] ?? 0) + 1;
  }
  return counts;
}

/** Held against its schema before anything reads it, so that a NaN stops here; keys come out in the schema's order. */
function checked(report: AthleteReport, id: string): AthleteReport {
  const parsed = AthleteReport.safeParse(report);
  if (parsed.success) return rounded(parsed.data);
  const first = parsed.error.issues[0];
  throw new Error(`the report of ${id} does not fit its schema at ${first?.path.join("/")}: ${first?.message}`);
}

/**
 * One report per athlete, and the balance of every row.
 *
 * @param asOf  calendar day asked for; without it the season's own
 * @param today day against which it is held how long data is kept; no figure hangs on it
 * @throws {Unbalanced} rows went missing
 */
export function judgeSeason(
  read: Season,
  asOf: string | undefined,
  effects: Pick<Effects, "progress">,
  today?: string,
): Judgement {
  const names = seasonCheck(read);
  const { facility, problems: telling } = withoutNames(read.facility, names);
  const season: Season = { ...read, facility };
  const {
    athletes,
    setAside,
    corrections,
    pairings: _,
    problems: found,
    swingFiles,
    leftOut,
    ...surroundings
  } = season;
  const day = asOf ?? asOfFor(season);
  const problems: Problem[] = [...found, ...telling, ...appliedNotes(corrections)];
  const bridges = seasonBridges(season);
  const known = { ...surroundings, bridges, group: groupFacts(season, bridges) };
  const fileNames = swingFiles.map(({ file }) => file);
  const told = athletes.map((athlete, i): Told => {
    const input = { season: known, athlete, setAside: asideOf(season, athlete.id), asOf: day, fileNames };
    const { report, judged } = reportFor(input);
    const sound = checked(report, athlete.id);
    const { receiving, problems: named } = withheldFrom(athlete, sound, season, names);
    const broken = brokenLimits(athlete, season, fileNames).map(limitProblem);
    const texts = textProblems(textFindings(athlete, sound.series), athlete.id);
    const held = heldProblems(heldTexts(athlete, facility, sound.athlete.minor), athlete.id);
    const kept = [pastKeeping(athlete, facility, today ?? day), unsealedMinor(athlete, sound, facility)].filter(
      (problem) => problem !== null,
    );
    for (const problem of [...named, ...broken, ...texts, ...held, ...kept, ...findingsOf(sound)])
      problems.push(problem);
    effects.progress("reports", i + 1, athletes.length);
    return { athlete, report: sound, judged, receiving, withheld: withheldByReader(sound, receiving) };
  });
  const accounts = told.map(({ athlete, judged }) => ({ athlete: athlete.id, reps: athlete.reps, judged }));
  const heldBack = told.filter(({ receiving }) =>
    receiving.some(({ withheld }) => withheld === NAMES_ANOTHER || withheld === SHOWS_BIRTH_DATE),
  );
  return {
    season,
    asOf: day,
    told,
    ledger: balance(swingFiles, setAside, accounts, reassignedRows(corrections)),
    rows: ledgerRows(setAside, told, swingFiles),
    problems,
    missing: [...leftOut, ...heldBack.map(({ athlete }) => athlete.id)].sort(),
  };
}
