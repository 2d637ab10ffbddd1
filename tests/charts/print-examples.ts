/** Prints the time zone and every example chart: run in child processes, one per zone. */
import { drawSvg } from "../../src/charts/draw.ts";
import { allExamples } from "./examples.ts";

const svgs: string[] = [];
for (const chart of allExamples()) svgs.push(await drawSvg(chart));
process.stdout.write([Intl.DateTimeFormat().resolvedOptions().timeZone, ...svgs].join("\n"));
