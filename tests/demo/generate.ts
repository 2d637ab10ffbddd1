import { csvText } from "./csv.ts";
import { equipmentFiles } from "./equipment.ts";
import { cleanExports } from "./exports.ts";
import { addFaults, EXPORTED_TWICE } from "./faults.ts";
import { hubFiles } from "./hub.ts";
import { addMistakes, correctionsFile } from "./mistakes.ts";
import { contentFiles } from "./notes.ts";
import { referenceFiles } from "./peers.ts";
import { sessionLogFiles } from "./sessionlog.ts";

/** Tablets of this lane put a byte-order mark before the header. */
const WITH_MARK = "data/swings/fastpitch/";

/** How the adults' last months arrive: from the hub of the barn, or as a tablet in our own columns would write them. */
export type Arrival = "hub" | "tablet";

function swingFiles(arrival: Arrival): Map<string, string> {
  const exports = cleanExports();
  addMistakes(exports);
  addFaults(exports);
  const texts = new Map([["data/corrections.csv", correctionsFile(exports)]]);
  if (arrival === "hub") for (const [path, text] of hubFiles(exports)) texts.set(path, text);
  for (const [path, file] of exports) {
    texts.set(path, (path.startsWith(WITH_MARK) ? "\uFEFF" : "") + csvText(file.columns, file.rows));
  }
  texts.set(EXPORTED_TWICE.again, texts.get(EXPORTED_TWICE.file)!);
  return texts;
}

/**
 * The invented demo season: path in the season folder (`content/…`, `data/…`) -> text of the file.
 *
 * The same on every machine and every day: no clock, no randomness from outside, no locale.
 *
 * @param arrival the season in the repository has the hub's exports; the tests hold it against the tablet's
 */
export function generateDemo(arrival: Arrival = "hub"): Map<string, string> {
  return new Map([
    ...contentFiles(),
    ...equipmentFiles(),
    ...referenceFiles(),
    ...sessionLogFiles(),
    ...swingFiles(arrival),
  ]);
}
