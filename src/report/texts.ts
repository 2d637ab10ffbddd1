import type { AthleteSeason } from "../schema/season.ts";
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
