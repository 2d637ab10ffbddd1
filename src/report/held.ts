import type { Facility } from "../schema/facility.ts";
import type { ClosingPage, NotePage } from "../schema/season.ts";

/** Why a text stays on the desk although its front matter names readers. */
export type Held = "health-word" | "second-reader";

/**
 * Words about somebody's health, in the languages of the pages. Common practice, and no more than a net: what a text means is for the one who reads
 * it before it goes out.
 */
const HEALTH =
  /(?<![\p{L}\p{N}])(?:injur(?:y|ies|ed)|concussions?|concussed|surger(?:y|ies)|fractur\p{L}*|sprain\p{L}*|tend[io]n[io]tis|tendinopath\p{L}*|diagnos\p{L}+|physio\p{L}*|(?:physical|occupational) therap\p{L}+|illness(?:es)?|ill|sick|medications?|asthma\p{L}*|growth plates?|rehab\p{L}*|pain(?:s|ful|fully)?|swollen|swelling|mri|x-rays?|lesi(?:ón|ones|onad\p{L}+)|conmoci(?:ón|ones)|cirug[íi]as?|fracturas?|esguinces?|tendinitis|diagn[óo]stic\p{L}+|fisioterap\p{L}+|enferm\p{L}+|medicamentos?|asma|dol(?:or|ores|orid\p{L}+|ió)|hinchad\p{L}+|hinchaz\p{L}+|rehabilitaci\p{L}+|resonancia|radiograf\p{L}+)(?![\p{L}\p{N}])/iu;

/** The first word about health in a text, as written; null where there is none. */
export const healthWord = (text: string): string | null => HEALTH.exec(text)?.[0] ?? null;

/**
 * Does a text stay on the desk? One that tells of somebody's health does; so does one about a minor that one pair of eyes alone has seen, where the
 * facility wants two. An athlete's own words need no second reader.
 *
 * @param by     staff id of the one who wrote it; null for the athlete's own words
 * @param readBy staff id of the one who read it too
 */
export function heldBack(
  { body, by, readBy }: { readonly body: string; readonly by: string | null; readonly readBy: string | undefined },
  facility: Facility,
  minor: boolean,
): Held | null {
  if (healthWord(body) !== null) return "health-word";
  const wants = facility.second_reader === true && minor && by !== null;
  return wants && (readBy === undefined || readBy === by) ? "second-reader" : null;
}

/** The same of a note of an athlete's folder. */
export const heldNote = ({ front, body }: NotePage, facility: Facility, minor: boolean): Held | null =>
  heldBack({ body, by: front.author === "athlete" ? null : front.author, readBy: front.read_by }, facility, minor);

/** The same of a closing message, which is always the staff's. */
export const heldClosing = ({ front, body }: ClosingPage, facility: Facility, minor: boolean): Held | null =>
  heldBack({ body, by: front.by ?? "", readBy: front.read_by }, facility, minor);
