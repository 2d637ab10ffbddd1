import lighthouse from "lighthouse";
import { launch } from "../../src/cli/chromium.ts";
import { filesOf, linksOnDesk, openedSite } from "../opened-site.ts";
import { serveFiles } from "./static-server.ts";

/**
 * `npm run lighthouse`, after a build: each kind of the demo's pages, before sealing and one sealed, as Lighthouse sees it on a phone, from a server that packs what it sends. Speed
 * is the best of five, because a busy machine only ever makes it worse. Never part of CI.
 */
const RUNS = 5;
const LEAST_SPEED = 95;
const PORT = 9333;

const lying = filesOf("_site");
const links = linksOnDesk("_desk");
const files = await openedSite(lying, links);
const heaviest = (pattern: RegExp) =>
  files.filter(({ path }) => pattern.test(path)).sort((a, b) => b.body.length - a.body.length)[0]?.path;
const pages = {
  family: heaviest(/^r\/[^/]+\/index\.html$/),
  numbers: heaviest(/^r\/[^/]+\/numbers\/index\.html$/),
  card: heaviest(/^r\/[^/]+\/card\/index\.html$/),
  club: heaviest(/^c\/[^/]+\/index\.html$/),
  front: "index.html",
};
const { path: sealed, key } = links.find((link) => link.reader === "family" && link.key !== null)!;

const server = await serveFiles(files, { packed: true });
const sealedServer = await serveFiles(lying, { packed: true });
const addresses = {
  ...Object.fromEntries(Object.entries(pages).map(([kind, path]) => [kind, `${server.origin}/${path}`])),
  sealed: `${sealedServer.origin}/${sealed}#${key}`,
};
const browser = await launch([`--remote-debugging-port=${PORT}`]);
try {
  for (const [kind, address] of Object.entries(addresses)) {
    const seen: Record<string, number[]> = {};
    for (let run = 0; run < RUNS; run += 1) {
      const result = await lighthouse(address, {
        port: PORT,
        logLevel: "error",
        onlyCategories: ["performance", "accessibility", "best-practices"],
      });
      for (const { id, score } of Object.values(result?.lhr.categories ?? {}))
        seen[id] = [...(seen[id] ?? []), Math.round(100 * (score ?? 0))];
    }
    const best = (id: string) => Math.max(...(seen[id] ?? [0]));
    const worst = (id: string) => Math.min(...(seen[id] ?? [0]));
    const line = [kind, best("performance"), worst("accessibility"), worst("best-practices")];
    process.stdout.write(`${line.join("\t")}\t(speed ${seen.performance?.join(" ")})\n`);
    const well =
      best("performance") >= LEAST_SPEED && worst("accessibility") === 100 && worst("best-practices") === 100;
    if (!well) process.exitCode = 1;
  }
} finally {
  await browser.close();
  await Promise.all([server.close(), sealedServer.close()]);
}
