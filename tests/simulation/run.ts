/**
 * How often the rules behind the verdicts call an athlete changed who is not, and how often they see one who is.
 *
 * `npm run simulate [-- SEASONS]`; 4000 seasons in each cell when nothing is said. Ends with status 1 when a cell is surely above its limit.
 * The last lines are what `src/report/measured-rates.ts` holds.
 */
import { writeFileSync } from "node:fs";
import { falseAlarms, type Rate, tooMany } from "./rates.ts";
import { CHANGED, changed, verdicts } from "./seasons.ts";
import { testOutcome } from "./test-days.ts";

const say = (line: string): void => writeFileSync(1, `${line}\n`);
const percent = (share: number): string => `${(100 * share).toFixed(1)} %`.padStart(7);
const seasons = Number(process.argv[2] ?? 4000);
const SEED = "winter";

const rates = falseAlarms(seasons, SEED);
say(`Nobody changed: called changed, of ${seasons} seasons a line (limit)`);
for (const rate of rates) {
  say(
    `${percent(rate.changed / rate.seasons)} (${percent(rate.limit).trim()})  ${rate.name}${tooMany(rate) ? "  TOO MANY" : ""}`,
  );
}
say("");
say("Somebody did change, by 1 and 2 of the smallest changes that matter: seen");
for (const cell of CHANGED) {
  const seen = changed(verdicts(cell, seasons, SEED)) / seasons;
  say(`${percent(seen)}  by ${cell.trueChange}, ${cell.sessions} sessions`);
}
for (const by of [1, 2]) {
  const { changed: n, athletes } = testOutcome(Math.ceil(seasons / 4), SEED, by);
  say(`${percent(n / athletes)}  by ${by}, tests on 2 + 2 days`);
}
say("");
const worst = (kind: Rate["kind"]) =>
  Math.max(...rates.filter((rate) => rate.kind === kind).map((rate) => rate.changed / rate.seasons)).toFixed(3);
say(`independent ${worst("independent")}, alike ${worst("alike")}, tests ${worst("tests")}; ${seasons} seasons`);
process.exitCode = rates.some(tooMany) ? 1 : 0;
