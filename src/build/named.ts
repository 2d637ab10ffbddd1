import type { Identity, Named } from "../publish/isolation.ts";
import { forReader } from "../report/reader.ts";
import type { AthleteReport } from "../report/schema.ts";
import { READERS, type Reader } from "../schema/reasons.ts";
import type { AthleteSeason, Place, Problem, Season } from "../schema/season.ts";
import type { Withheld } from "./terms.ts";

/** Reason why a page is held back although somebody agreed to it, and code of the problem that says so. */
export const NAMES_ANOTHER = "names-other-athlete";

/** What tells the season's athletes apart; of those left out only the id is known. */
export function identities({ athletes, leftOut }: Pick<Season, "athletes" | "leftOut">): Identity[] {
  const known = athletes.map(({ id, profile }) => ({ id, names: [profile.name], tokens: [] }));
  return [...known, ...leftOut.map((id) => ({ id, names: [], tokens: [] }))];
}

type Check = (text: string, owner: string | null) => Named[];

/** Every text in a piece of plain JSON, names of keys included, one below the other. */
function wordsOf(value: unknown): string {
  if (typeof value === "string") return value;
  if (Array.isArray(value)) return value.map(wordsOf).join("\n|\n");
  if (typeof value !== "object" || value === null) return "";
  return Object.entries(value)
    .map(([key, inner]) => `${key}\n${wordsOf(inner)}`)
    .join("\n|\n");
}

/** Looks twice: as it is written, and without the signs of Markdown that may stand inside a name. */
function namedIn(value: unknown, owner: string, names: Check): Named | undefined {
  const words = wordsOf(value);
  return names(`${words}\n\n${words.replace(/[*_`~\\]/g, "")}`, owner)[0];
}

/** Where the trainer wrote the name: the first line of the athlete's own pages that holds it, else the folder. */
function placeOf(athlete: AthleteSeason, names: Check): Place {
  const pages = [...athlete.notes, ...athlete.closings, athlete.assessment, athlete.plan].filter(
    (page) => page !== null,
  );
  for (const { file, front, body, bodyLine } of pages) {
    const line = body.split("\n").findIndex((text) => namedIn(text, athlete.id, names));
    if (line >= 0) return { file, line: bodyLine + line, column: null };
    if (namedIn([front, body], athlete.id, names)) return { file, line: null, column: null };
  }
  return { file: `content/athletes/${athlete.id}/profile.md`, line: null, column: null };
}

/**
 * Whether each reader may be given the report: somebody has to agree, and it must name nobody else's child.
 *
 * @param names the season's check, see `isolationCheck`
 */
export function withheldFrom(
  athlete: AthleteSeason,
  report: AthleteReport,
  names: Check,
): { withheld: Withheld; problems: Problem[] } {
  const withheld: Record<Reader, string | null> = { family: null, club: null };
  const problems: Problem[] = [];
  for (const reader of READERS) {
    const agreed = report.publication[reader];
    if (!agreed.publish) {
      withheld[reader] = agreed.why;
      continue;
    }
    const named = namedIn(forReader(report, reader), athlete.id, names);
    if (!named) continue;
    withheld[reader] = NAMES_ANOTHER;
    problems.push({
      code: NAMES_ANOTHER,
      level: "error",
      at: placeOf(athlete, names),
      args: { reader, other: named.athlete, words: named.words },
      athlete: athlete.id,
    });
  }
  return { withheld, problems };
}
