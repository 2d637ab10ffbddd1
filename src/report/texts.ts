import type { AthleteSeason } from "../schema/season.ts";
import { type Held, healthWord } from "./held.ts";
import { type StrangeFigure, strangeFigures } from "./note-audit.ts";
import { type LostReference, lookUp, referencesIn } from "./references.ts";
import type { AthleteReport, Series } from "./schema.ts";

/** A text of an athlete's folder and where it stands. */
interface Written {
  readonly file: string;
  readonly body: string;
  readonly bodyLine: number;
}

/** Every text in which a coach may use a reference. */
export function textsOf({ notes, closings, assessment, plan }: AthleteSeason): Written[] {
  return [...notes, ...closings, ...(assessment ? [assessment] : []), ...(plan ? [plan] : [])];
}

/** Something written that no reader is shown. */
export interface HeldText {
  readonly why: Held;
  readonly file: string;
  readonly line: number | null;
  /** The word about health; null where none is the reason. */
  readonly word: string | null;
}

const lineOf = (body: string, word: string): number => body.slice(0, body.indexOf(word)).split("\n").length;

/**
 * Texts that stay on the desk although they are meant for readers: notes and messages by what their report says of them, and what else is said of the
 * athlete where it tells of health.
 */
export function heldTexts(
  { id, profile, notes, closings, assessment }: AthleteSeason,
  report: AthleteReport,
): HeldText[] {
  const held = new Map([...report.notes, ...report.closings].map(({ body, held: why }) => [body, why]));
  const meant = [...notes.filter(({ front }) => (front.readers ?? []).length > 0), ...closings];
  const ofPages = meant.flatMap(({ file, body, bodyLine }): HeldText[] => {
    const why = held.get(body) ?? null;
    if (why === null) return [];
    const word = healthWord(body);
    return [{ why, file, word, line: word === null ? null : bodyLine + lineOf(body, word) - 1 }];
  });
  const own = `content/athletes/${id}/profile.md`;
  const short: [file: string, text: string | undefined][] = [
    ...(profile.away ?? []).map(({ say }): [string, string | undefined] => [own, say]),
    ...(profile.goals ?? []).map(({ why }): [string, string | undefined] => [own, why]),
    ...(assessment === null
      ? []
      : [assessment.body, ...(assessment.front.priorities ?? []).map(({ text }) => text)]
    ).map((text): [string, string] => [assessment!.file, text]),
  ];
  const ofWords = short.flatMap(([file, text]): HeldText[] => {
    const word = text === undefined ? null : healthWord(text);
    return word === null ? [] : [{ why: "health-word", file, line: null, word }];
  });
  return [...ofPages, ...ofWords];
}

export interface TextFindings {
  readonly lost: readonly (LostReference & { readonly file: string; readonly line: number })[];
  readonly strange: readonly (StrangeFigure & { readonly file: string })[];
}

/** References that lead nowhere, and hand-typed figures that the season does not bear out, each with file and line. */
export function textFindings(athlete: AthleteSeason, series: readonly Series[]): TextFindings {
  const texts = textsOf(athlete);
  return {
    lost: texts.flatMap(({ file, body, bodyLine }) =>
      referencesIn(body).flatMap(({ text, line }) => {
        const found = lookUp(text, series);
        return "kind" in found ? [] : [{ ...found, file, line: bodyLine + line - 1 }];
      }),
    ),
    strange: texts.flatMap(({ file, body, bodyLine }) =>
      strangeFigures(body, series).map((found) => ({ ...found, file, line: bodyLine + found.line - 1 })),
    ),
  };
}
