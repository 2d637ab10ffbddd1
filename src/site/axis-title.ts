import { plainName } from "./components/names.tsx";
import { unitText } from "./reading.ts";
import type { Words } from "./words.ts";

/** What stands over a chart's scale: the metric with the unit in which a reader sees it, "Bat speed, mph". */
export function axisTitle(words: Words, metric: string, unit: string): string {
  return words.text("measure.axis", { metric: plainName(words, "metric", metric), unit: unitText(words, unit).trim() });
}
