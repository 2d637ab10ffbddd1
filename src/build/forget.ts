import { dirname, join } from "node:path";
import { type Holding, withoutRecords } from "../intake/holdings.ts";
import { changedLinks, keepLinkState } from "../publish/change-links.ts";
import type { Link } from "../publish/links.ts";
import { EXIT, Stopped } from "../publish/stopped.ts";
import type { LinkState } from "../schema/link-state.ts";
import type { Season } from "../schema/season.ts";
import type { BuildEffects, Paths } from "./terms.ts";

/** What was done about an athlete who is to be forgotten. */
export interface Forgotten {
  readonly holdings: readonly Holding[];
  /** Whether the files were deleted; else only pages, links and caches are gone. */
  readonly deleted: boolean;
}

/** @throws {Stopped} nobody of that id is in the season */
export function checkKnown({ athletes, leftOut }: Season, id: string): void {
  const known = [...athletes.map((one) => one.id), ...leftOut].sort();
  if (known.includes(id)) return;
  throw new Stopped(EXIT.usage, `there is no athlete "${id}"`, `known: ${known.join(", ")}`);
}

/** Makes all links of an athlete dead, and takes away what earlier runs kept of the season for speed or for a look. */
export async function endLinks(
  id: string,
  on: string,
  { state, links }: { readonly state: LinkState; readonly links: readonly Link[] },
  paths: Paths,
  { disk }: BuildEffects,
): Promise<LinkState> {
  const mine = links.some(({ athlete }) => athlete === id);
  const ended = mine ? changedLinks(state, links, { kind: "revoked", athlete: id, recipient: null, on }) : state;
  await keepLinkState(paths.state, ended, { disk });
  const home = dirname(paths.state);
  for (const folder of [join(home, ".cache", "winterbook"), join(home, ".preview")]) await disk.remove(folder);
  return ended;
}

/** Deletes what holds an athlete's rows; rows of others stay on their lines. The athlete's own folder goes last: until then it can be done again. */
export async function deleteHoldings(
  id: string,
  holdings: readonly Holding[],
  { content, data }: Pick<Paths, "content" | "data">,
  { disk }: BuildEffects,
): Promise<void> {
  const at = (file: string) =>
    join(file.startsWith("content/") ? content : data, file.replace(/^(?:content|data)\//, ""));
  const folder = `content/athletes/${id}/`;
  for (const { file, lines, kind } of holdings) {
    if (kind === "by-hand" || file.startsWith(folder)) continue;
    if (kind === "own") await disk.remove(at(file));
    else {
      await disk.write(`${at(file)}.next`, withoutRecords(await disk.read(at(file)), lines));
      await disk.rename(`${at(file)}.next`, at(file));
    }
  }
  await disk.remove(join(content, "athletes", id));
}
