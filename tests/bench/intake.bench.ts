/**
 * How long a large export takes to be read, against cutting it into cells alone, and how much memory it needs.
 *
 * `npm run bench [-- ROWS]`; a million rows when nothing is said. Each side runs in turns with the other, so that a busy
 * machine slows both, and in a process of its own, so that neither inherits the other's memory.
 */
import { fork } from "node:child_process";
import { writeFileSync } from "node:fs";
import { parse } from "csv-parse/sync";
import { swingFields } from "../../src/intake/swing-fields.ts";
import { readSwingFile } from "../../src/intake/swing-file.ts";
import { BUILT_IN_METRICS } from "../../src/schema/metric.ts";
import { largeExport, plainSetup } from "./large-export.ts";

const TURNS = 5;
const MB = 1024 * 1024;
type Side = "read" | "cut";
interface Figures {
  readonly ms: number;
  /** Time of the processor, all threads: a busy machine does not stretch it. */
  readonly cpuMs: number;
  readonly rows: number;
  /** Most memory of the process less what it had before, the file itself included. */
  readonly grown: number;
}

const say = (line: string): void => writeFileSync(1, `${line}\n`);
const median = (values: readonly number[]): number =>
  [...values].sort((one, other) => one - other)[Math.floor(values.length / 2)] ?? Number.NaN;

/** Runs in a process of its own: one side once. */
async function once(side: Side, rows: number): Promise<Figures> {
  const before = process.memoryUsage().rss;
  const bytes = largeExport(rows);
  const setup = plainSetup(swingFields(BUILT_IN_METRICS));
  const cpu = process.cpuUsage();
  const start = performance.now();
  const read =
    side === "cut" ? parse(bytes).length - 1 : (await readSwingFile("data/swings/a.csv", 0, bytes, setup)).table.n;
  const ms = performance.now() - start;
  const { user, system } = process.cpuUsage(cpu);
  return { ms, cpuMs: (user + system) / 1000, rows: read, grown: process.resourceUsage().maxRSS * 1024 - before };
}

function inOwnProcess(side: Side, rows: number): Promise<Figures> {
  return new Promise((resolve, reject) => {
    const child = fork(import.meta.filename, [side, String(rows)]);
    child.once("message", (figures) => resolve(figures as Figures));
    child.once("error", reject);
    child.once("exit", (code) => code !== 0 && reject(new Error(`a run ended with ${code}`)));
  });
}

async function compare(rows: number): Promise<void> {
  const ratios: number[] = [];
  const cpuRatios: number[] = [];
  const grown = { read: 0, cut: 0 };
  for (let turn = 1; turn <= TURNS; turn++) {
    const cut = await inOwnProcess("cut", rows);
    const read = await inOwnProcess("read", rows);
    if (cut.rows !== rows || read.rows !== rows)
      throw new Error(`rows were lost: ${cut.rows} and ${read.rows} of ${rows}`);
    ratios.push(read.ms / cut.ms);
    cpuRatios.push(read.cpuMs / cut.cpuMs);
    grown.read = Math.max(grown.read, read.grown);
    grown.cut = Math.max(grown.cut, cut.grown);
    const shown = (kind: "ms" | "cpuMs") =>
      `${cut[kind].toFixed(0)} and ${read[kind].toFixed(0)} ms, ${(read[kind] / cut[kind]).toFixed(2)} times`;
    say(`turn ${turn}: cutting and reading take ${shown("ms")}; of the processor ${shown("cpuMs")}`);
  }
  say(`median of ${TURNS} turns, ${rows} rows: ${median(ratios).toFixed(2)} times as long as cutting alone`);
  say(`median of the processor's time: ${median(cpuRatios).toFixed(2)} times`);
  say(`most memory: reading ${(grown.read / MB).toFixed(0)} MB, cutting ${(grown.cut / MB).toFixed(0)} MB`);
}

const [first, second] = process.argv.slice(2);
if (process.send && (first === "read" || first === "cut")) {
  process.send(await once(first, Number(second)));
  process.disconnect();
} else await compare(Number(first ?? 1_000_000));
