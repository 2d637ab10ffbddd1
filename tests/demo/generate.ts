import { csvText } from "./csv.ts";
import { elsewhereFiles } from "./elsewhere.ts";
import { equipmentFiles } from "./equipment.ts";
import { cleanExports } from "./exports.ts";
import { addFaults, EXPORTED_TWICE } from "./faults.ts";
import { hubFiles } from "./hub.ts";
import { addMistakes, correctionsFile } from "./mistakes.ts";
import { contentFiles } from "./notes.ts";
import { referenceFiles } from "./peers.ts";
import { sessionLogFiles } from "./sessionlog.ts";
import { splitDevices } from "./two-devices.ts";

/** Tablets of this lane put a byte-order mark before the header. */
const WITH_MARK = "data/swings/fastpitch/";

/**
 * How the last months arrive: the adults' from the hub of the barn and the young hitters' from two devices (`devices`; `calm` without what the sensor
 * took for swings), the adults' alone from the hub, or all as a tablet in our own columns would write them.
 */
export type Arrival = "devices" | "calm" | "hub" | "tablet";

function swingFiles(arrival: Arrival): Map<string, string> {
  const exports = cleanExports();
  addMistakes(exports);
  addFaults(exports);
  const texts = new Map([["data/corrections.csv", correctionsFile(exports)]]);
  if (arrival !== "tablet") for (const [path, text] of hubFiles(exports)) texts.set(path, text);
  if (arrival === "devices" || arrival === "calm")
    for (const [path, text] of splitDevices(exports, arrival === "devices")) texts.set(path, text);
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
 * @param arrival the season in the repository has the devices' exports; the tests hold it against the tablet's
 */
export function generateDemo(arrival: Arrival = "devices"): Map<string, string> {
  return new Map([
    ...contentFiles(),
    ...equipmentFiles(),
    ...referenceFiles(),
    ...sessionLogFiles(),
    ...swingFiles(arrival),
    ...elsewhereFiles(),
  ]);
}
