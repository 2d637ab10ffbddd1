import { alone, publish } from "../../src/build/publish.ts";
import { realDisk } from "../../src/cli/effects.ts";

/** A program that replaces site and desk again and again, each time by files that all bear one number, until it is killed. */
const [root = ""] = process.argv.slice(2);
const paths = {
  ...{ content: `${root}/content`, data: `${root}/data`, out: `${root}/_site`, desk: `${root}/_desk` },
  ...{ state: `${root}/.winterbook`, hold: `${root}/.winterbook` },
};
const runner = { pid: process.pid, isAlive: (pid: number) => pid === process.pid };
const effects = {
  ...{ disk: realDisk, runner, elapsedMs: () => 0, log: () => {}, progress: () => {} },
  randomBytes: (count: number) => new Uint8Array(count),
};
const STYLES = "assets/winterbook.0123456789ab.css";
const PAGES = 40;
const letters = (n: number) => String.fromCharCode(97 + (n % 26)) + String.fromCharCode(97 + Math.floor(n / 26));

async function round(n: number): Promise<void> {
  const body = `<link rel="stylesheet" href="${STYLES}"> number ${n}`;
  const shared = [
    { path: "index.html", body },
    { path: STYLES, body },
  ];
  const pages = Array.from({ length: PAGES }, (_, i) => ({ path: `r/${letters(i).repeat(16)}/index.html`, body }));
  const reports = Array.from({ length: PAGES }, (_, i) => ({ path: `reports/athlete-${i}.json`, body }));
  await alone(paths, effects, () => publish([...shared, ...pages], [...shared, ...reports], paths, effects));
  process.stdout.write(`${n}\n`);
  await round(n + 1);
}

void round(Number(process.argv[3]));
