import type { BrokenLimit } from "../report/limits.ts";
import type { AthleteReport, Condition } from "../report/schema.ts";
import type { TextFindings } from "../report/texts.ts";
import type { AppliedCorrection, Problem } from "../schema/season.ts";

/** So many possibilities are told in a message. */
const MOST_KNOWN = 6;

const rounded = (value: number, decimals: number) => Number(value.toFixed(decimals));

/** A condition as a trainer would say it: the words of its keys, none for a series over everything. */
function conditionText({ pitchSpeed, ...words }: Condition): string {
  const said = Object.values(words);
  return [...said, ...(pitchSpeed ? [`${pitchSpeed[0]} to ${pitchSpeed[1]} mph`] : [])].join(", ");
}

/**
 * What the reports found that a trainer should look at, as notes: a step that looks like another sensor or bat, and values far
 * from the athlete's own. Nothing was changed because of them.
 */
export function findingsOf({ athlete, suggestions, flags }: AthleteReport): Problem[] {
  const steps = suggestions.map(
    ({ kind, metric, unit, decimals, condition, date, size, otherSide }): Problem => ({
      code: kind,
      level: "note",
      at: { file: `content/athletes/${athlete.id}`, line: null, column: null },
      args: {
        athlete: athlete.id,
        metric,
        unit,
        condition: conditionText(condition),
        date,
        size: rounded(size, decimals),
        otherSide,
      },
      athlete: null,
    }),
  );
  const far = flags.map(
    ({ reason, metric, unit, decimals, condition, file, line, value, low, high }): Problem => ({
      code: reason,
      level: "note",
      at: { file: file ?? "data/swings", line: file === null ? null : line, column: null },
      args: {
        athlete: athlete.id,
        metric,
        unit,
        condition: conditionText(condition),
        value: rounded(value, decimals),
        low: rounded(low, decimals),
        high: rounded(high, decimals),
      },
      athlete: null,
    }),
  );
  return [...steps, ...far];
}

/** References that lead nowhere must be put right; figures that the season does not bear out are worth a look. */
export function textProblems({ lost, strange }: TextFindings, athlete: string): Problem[] {
  return [
    ...lost.map(
      ({ text, why, known, file, line }): Problem => ({
        code: "lost-reference",
        level: "error",
        at: { file, line, column: null },
        args: { athlete, text, why, known: known.slice(0, MOST_KNOWN).join("; ") },
        athlete: null,
      }),
    ),
    ...strange.map(
      ({ found, metric, known, file, line }): Problem => ({
        code: "figure-not-borne-out",
        level: "note",
        at: { file, line, column: null },
        args: { athlete, found, metric, known: known.slice(0, MOST_KNOWN).join("; ") },
        athlete: null,
      }),
    ),
  ];
}

/** Work that a limit did not allow: an error, though nobody's report is held back for it. */
export const limitProblem = ({ athlete, date, word, rule, decidedBy, swings, at }: BrokenLimit): Problem => ({
  code: rule === "age" ? "below-overload-age" : "limit-broken",
  level: "error",
  at: { ...at, column: null },
  args: { athlete, date, word, swings, ...(decidedBy === null ? {} : { decidedBy }) },
  athlete: null,
});

/** The corrections that were applied, each with who asked for it and how many rows it touched. */
export function appliedNotes(corrections: readonly AppliedCorrection[]): Problem[] {
  return corrections.map(({ at, by, on, reason, action, rows }) => ({
    code: "correction-applied",
    level: "note",
    at: { ...at, column: null },
    args: { action, by, on, reason, rows: rows.length },
    athlete: null,
  }));
}
