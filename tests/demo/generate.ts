import { csvText } from "./csv.ts";
import { equipmentFiles } from "./equipment.ts";
import { cleanExports } from "./exports.ts";
import { addFaults, EXPORTED_TWICE } from "./faults.ts";
import { contentFiles } from "./notes.ts";
import { sessionLogFiles } from "./sessionlog.ts";

/** Tablets of this lane put a byte-order mark before the header. */
const WITH_MARK = "data/swings/fastpitch/";

function swingFiles(): Map<string, string> {
  const exports = cleanExports();
  addFaults(exports);
  const texts = new Map<string, string>();
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
 */
export function generateDemo(): Map<string, string> {
  return new Map([...contentFiles(), ...equipmentFiles(), ...sessionLogFiles(), ...swingFiles()]);
}
