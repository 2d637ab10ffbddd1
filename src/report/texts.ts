import type { Facility } from "../schema/facility.ts";
import type { AthleteSeason } from "../schema/season.ts";
import { type Held, healthWord, heldClosing, heldNote } from "./held.ts";
import { type StrangeFigure, strangeFigures } from "./note-audit.ts";
import { type LostReference, lookUp, referencesIn } from "./references.ts";
import type { Series } from "./schema.ts";

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

/** Texts that stay on the desk although they are meant for readers, and what else is said of the athlete where it tells of health. */
export function heldTexts(
  { id, profile, notes, closings, assessment }: AthleteSeason,
  facility: Facility,
  minor: boolean,
): HeldText[] {
  const found = ({ file, body, bodyLine }: Written, why: Held | null): HeldText[] => {
    if (why === null) return [];
    const word = healthWord(body);
    return [{ why, file, word, line: word === null ? null : bodyLine + lineOf(body, word) - 1 }];
  };
  const meant = notes.filter(({ front }) => (front.readers ?? []).length > 0);
  const ofPages = [
    ...meant.flatMap((note) => found(note, heldNote(note, facility, minor))),
    ...closings.flatMap((closing) => found(closing, heldClosing(closing, facility, minor))),
  ];
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
