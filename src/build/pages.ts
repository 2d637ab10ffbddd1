import { join } from "node:path";
import { LOGO_BYTES } from "../intake/content.ts";
import type { Link } from "../publish/links.ts";
import { facilityOf } from "../report/facility-part.ts";
import { forReader } from "../report/reader.ts";
import type { AthleteReport } from "../report/schema.ts";
import type { Effects } from "../schema/effects.ts";
import type { Facility } from "../schema/facility.ts";
import type { Look } from "../site/assets.ts";
import type { SiteInput } from "../site/site.ts";
import type { Judgement } from "./judge.ts";
import type { Paths } from "./terms.ts";

/**
 * Pictures lie side by side in one folder, and some belong to notes that stay on the desk: a page takes along only those that
 * its own notes name.
 */
function withItsPictures(report: AthleteReport): AthleteReport {
  const named = (body: string, name: string) => body.includes(name) || body.includes(encodeURI(name));
  const notes = report.notes.map((note) => ({
    ...note,
    images: Object.fromEntries(Object.entries(note.images).filter(([name]) => named(note.body, name))),
  }));
  return { ...report, notes };
}

/** The facility's colour and logo; without the logo where it cannot be used, which `check` says. */
async function lookOf({ accent, logo }: Facility, content: string, { disk }: Pick<Effects, "disk">): Promise<Look> {
  const bytes = logo === undefined ? null : await disk.read(join(content, logo)).catch(() => null);
  const usable = logo !== undefined && bytes !== null && bytes.length <= LOGO_BYTES;
  return {
    accent: accent ?? null,
    logo: usable ? { bytes, ending: logo.slice(logo.lastIndexOf(".") + 1).toLowerCase() } : null,
  };
}

/** All that the public site is made from: one page for each live link, as its reader may see it, and their pictures. */
export async function siteInput(
  { told, season }: Pick<Judgement, "told" | "season">,
  links: readonly Link[],
  { content, desk }: Pick<Paths, "content"> & Partial<Pick<Paths, "desk">>,
  effects: Pick<Effects, "disk" | "progress">,
): Promise<SiteInput> {
  const reports = new Map(told.map(({ athlete, report }) => [athlete.id, report]));
  const live = links.filter(({ withheld }) => withheld === null);
  const pages = live.map(({ athlete, recipient, reader, token, sealed, until, passphrase }) => ({
    recipient,
    reader,
    token,
    report: withItsPictures(forReader(reports.get(athlete)!, reader, recipient)),
    // A preview is looked at on this machine alone, and unsealed.
    seal: sealed && desk != null ? { until, asks: passphrase !== null } : null,
  }));
  const images = new Map<string, Uint8Array>();
  for (const { report } of pages) {
    for (const path of report.notes.flatMap((note) => Object.values(note.images))) {
      if (!images.has(path)) images.set(path, await effects.disk.read(join(content, path.replace(/^content\//, ""))));
    }
  }
  return {
    facility: facilityOf(season.facility),
    look: await lookOf(season.facility, content, effects),
    languages: season.facility.languages ?? [],
    pages,
    images,
    progress: (done, of) => effects.progress("pages", done, of),
  };
}
