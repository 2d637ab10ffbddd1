/**
 * How well two devices are paired by time alone, over noise of their clocks and swings that each missed.
 *
 * `npm run pairs [-- SESSIONS]`; 100 sessions in each cell when nothing is said. For each cell the share of made pairs that are right, and of true
 * pairs that are made.
 */
import { writeFileSync } from "node:fs";
import { score } from "./two-devices.ts";

const say = (line: string): void => writeFileSync(1, `${line}\n`);
const percent = (share: number): string => (100 * share).toFixed(1);
const sessions = Number(process.argv[2] ?? 100);
const MISSING = [0, 0.1, 0.2, 0.3, 0.4];

say(`| noise, s | ${MISSING.map((share) => `${100 * share} % missing`).join(" | ")} |`);
say(`| --- |${" --- |".repeat(MISSING.length)}`);
for (const noise of [0.5, 1, 2, 3, 4]) {
  const cells = MISSING.map((missing) => score({ noise, missing }, sessions, "curve"));
  say(`| ${noise} | ${cells.map(({ right, made }) => `${percent(right)} / ${percent(made)}`).join(" | ")} |`);
}
