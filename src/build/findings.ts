import { isSealedTo } from "../publish/sealing.ts";
import type { BrokenLimit } from "../report/limits.ts";
import type { AthleteReport, Condition } from "../report/schema.ts";
import type { HeldText, TextFindings } from "../report/texts.ts";
import type { Facility } from "../schema/facility.ts";
import { recipientsOf } from "../schema/profile.ts";
import type { AppliedCorrection, AthleteSeason, Problem } from "../schema/season.ts";

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

/** Texts that no reader is shown although they are meant for some. */
export const heldProblems = (held: readonly HeldText[], athlete: string): Problem[] =>
  held.map(
    ({ why, file, line, word }): Problem => ({
      code: why,
      level: "note",
      at: { file, line, column: null },
      args: word === null ? { athlete } : { athlete, word },
      athlete: null,
    }),
  );

/** An athlete whose data is kept past the day that was set for it; null while it is not. */
export function pastKeeping({ id, profile, reps }: AthleteSeason, facility: Facility, today: string): Problem | null {
  const until = profile.keep_until ?? facility.keep_until;
  if (until === undefined || until >= today) return null;
  const file = profile.keep_until === undefined ? "content/facility.md" : `content/athletes/${id}/profile.md`;
  const args = { athlete: id, until, rows: reps.n };
  return { code: "past-keep-until", level: "note", at: { file, line: null, column: null }, args, athlete: null };
}

/** A minor whose published pages are not sealed, because somebody said so; null for everybody else. */
export function unsealedMinor(
  { id, profile }: AthleteSeason,
  report: AthleteReport,
  facility: Facility,
): Problem | null {
  const open = recipientsOf(profile).filter((recipient) => {
    const published = report.recipients.find(({ id: one }) => one === recipient.id)?.publication.publish ?? false;
    return published && !isSealedTo(recipient, profile, facility, report.athlete.minor);
  });
  if (!report.athlete.minor || open.length === 0) return null;
  const at = { file: `content/athletes/${id}/profile.md`, line: null, column: null };
  const args = { athlete: id, recipients: open.map((one) => one.id).join(", ") };
  return { code: "minor-not-sealed", level: "note", at, args, athlete: null };
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
