import { foreignRequests } from "../publish/foreign.ts";
import type { Output } from "../publish/guard.ts";
import type { Link } from "../publish/links.ts";
import { type Framed, linkFolder } from "../publish/sealing.ts";
import { EXIT, Stopped } from "../publish/stopped.ts";
import type { Season } from "../schema/season.ts";
import { seasonCheck } from "./named.ts";

const TEXT = /\.(?:html|css|svg|txt|js)$/;
/** Shows one athlete's report, on this machine alone: no other kind of folder may hold it. */
const STYLE_GUIDE = "style/index.html";

/**
 * The last look at finished pages: nothing may be fetched from elsewhere, nobody may stand in another's page. What the trainer
 * wrote was looked at before; whatever is found here came from the program.
 *
 * @throws {Stopped} something was found; nothing is published then
 */
export function checkPages(
  finished: readonly Framed[],
  desk: readonly Output[],
  season: Season,
  links: readonly Link[],
): void {
  // Whoever has no key sees the page around a sealed one.
  const frames = finished.flatMap(({ path, frame }) => (frame === undefined ? [] : [{ path, body: frame }]));
  const site: readonly Output[] = [...finished, ...frames];
  const [foreign] = [...foreignRequests(site), ...foreignRequests(desk)];
  if (foreign) {
    throw new Stopped(
      EXIT.fault,
      `${foreign.path} would ask another machine for ${foreign.address} (${foreign.where})`,
      "nothing was published; this is a fault of Winterbook, please report it",
    );
  }
  const tokens = (id: string) =>
    links.filter(({ athlete }) => athlete === id).flatMap(({ token, key }) => (key === null ? [token] : [token, key]));
  const names = seasonCheck(season, tokens);
  const owners = new Map(links.map(({ path, athlete }) => [path, athlete]));
  for (const { path, body } of site) {
    if (!TEXT.test(path) || path === STYLE_GUIDE) continue;
    // Other languages, units and all the numbers lie below the link's own folder.
    const owner = owners.get(linkFolder(path)) ?? null;
    const [named] = names(typeof body === "string" ? body : Buffer.from(body).toString("utf8"), owner);
    if (named) {
      throw new Stopped(
        EXIT.fault,
        `${path} ${owner === null ? "is for everybody" : `belongs to ${owner}`} and holds the ${named.by} of ${named.athlete}`,
        "nothing was published; look for the name in content/facility.md, drills.md and metrics.md, else report this fault",
      );
    }
  }
}
