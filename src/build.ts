import { checkPages } from "./build/check-pages.ts";
import { deskFiles } from "./build/desk.ts";
import { checkKnown, deleteHoldings, endLinks, type Forgotten } from "./build/forget.ts";
import { type Judgement, judgeSeason } from "./build/judge.ts";
import { linksIn } from "./build/links.ts";
import { siteInput } from "./build/pages.ts";
import { pdfFiles } from "./build/pdfs.ts";
import { pairByPhysics } from "./build/physics.ts";
import { alone, publish } from "./build/publish.ts";
import type { Assessed, BuildEffects, Built, Options, Paths } from "./build/terms.ts";
import { type Holding, holdingsOf } from "./intake/holdings.ts";
import { readSeason } from "./intake/season.ts";
import { changedLinks, keepLinkState, type LinkChange } from "./publish/change-links.ts";
import { forgottenBy } from "./publish/link-state.ts";
import type { Link } from "./publish/links.ts";
import { sealFiles } from "./publish/sealing.ts";
import type { Effects } from "./schema/effects.ts";
import { PAGE_LANGUAGES, renderSite, type SiteInput } from "./site/site.ts";

export { type Explored, explore } from "./build/explore.ts";
export type { Forgotten } from "./build/forget.ts";
export { type Rehearsal, rehearse } from "./build/rehearse.ts";
export type { Assessed, BuildEffects, Built, Options, Paths } from "./build/terms.ts";
export type { Reason } from "./intake/guess/candidate.ts";
export type { NoTable, Told } from "./intake/guess/export-table.ts";
export type { ColumnProposal, Proposal, Question } from "./intake/guess/proposal.ts";
export type { Answers } from "./intake/guess/propose.ts";
export type { Holding } from "./intake/holdings.ts";
export { SeasonUnreadable } from "./intake/season.ts";
export type { LinkChange } from "./publish/change-links.ts";
export type { Link } from "./publish/links.ts";
export { pdfPrinter } from "./publish/pdf.ts";

/**
 * The front door: content + data -> Season, every row kept or set aside -> one report per athlete, every row judged ->
 * pages, charts inside -> both folders replaced at once, or neither.
 *
 * @throws {Stopped} for a reason that was foreseen; whatever is thrown, what was published stays as it was
 */
export async function build(paths: Paths, options: Options, effects: BuildEffects): Promise<Built> {
  return alone(paths, effects, () => made(paths, options, effects));
}

async function made(paths: Paths, options: Options, effects: BuildEffects): Promise<Built> {
  const season = await readSeason(paths, effects, pairByPhysics, PAGE_LANGUAGES); //                      1 intake
  const judged = judgeSeason(season, options.asOf, effects); //            2 report: stats and hitting do the sums
  const { secret, links } = await linksIn(judged, paths, effects); //      3 who may open what
  const input = {
    ...(await siteInput(judged, links, paths, effects)),
    interim: options.interim ?? false,
    pdfs: effects.print !== undefined && season.facility.publish_pdf === true,
    styleGuide: paths.desk === null,
  };
  const pages = await renderSite(input); //                                4 site: shows, computes nothing
  const { desk: folder, out } = paths;
  const tables = folder === null ? [] : await deskFiles(judged, links, { desk: folder, out }, options);
  const pdfs = await pdfFiles(pages, input, links, judged.asOf, effects);
  const [site, desk] = [
    [...pages, ...pdfs.beside],
    [...tables, ...pdfs.desk],
  ];
  checkPages(site, desk, season, links); //                                5 nobody in another's page, nothing from elsewhere
  const shown = paths.desk === null ? site : await sealFiles(secret, site, links); // 6 what is sealed becomes ciphertext
  await publish(shown, desk, paths, effects); //                           7 both folders at once
  const count = site.filter(({ path }) => path.endsWith(".html")).length;
  return { ...assessed(judged), links, pages: count };
}

/** Goes as far as the finished reports and writes nothing. */
export async function check(
  paths: Pick<Paths, "content" | "data">,
  options: Pick<Options, "asOf" | "today">,
  effects: Effects,
): Promise<Assessed> {
  return assessed(await judgedSeason(paths, options, effects));
}

/** What the public site would be made from, for a preview that renders the pages itself. Only the secret is written. */
export async function preview(
  paths: Pick<Paths, "content" | "data" | "state">,
  options: Pick<Options, "asOf">,
  effects: Effects,
): Promise<SiteInput> {
  const judged = await judgedSeason(paths, options, effects);
  const { links } = await linksIn(judged, paths, effects);
  return { ...(await siteInput(judged, links, paths, effects)), styleGuide: true };
}

/** Who may open what, as things stand. Only the secret is written. */
export async function links(
  paths: Pick<Paths, "content" | "data" | "state">,
  options: Pick<Options, "asOf">,
  effects: Effects,
): Promise<readonly Link[]> {
  const judged = await judgedSeason(paths, options, effects);
  return (await linksIn(judged, paths, effects)).links;
}

/** Replaces links, makes them dead or notes that one was handed out; the next build follows. */
export async function changeLinks(
  paths: Paths,
  change: LinkChange,
  options: Pick<Options, "asOf">,
  effects: BuildEffects,
): Promise<readonly Link[]> {
  return alone(paths, effects, async () => {
    const judged = await judgedSeason(paths, options, effects);
    const { state, links: before } = await linksIn(judged, paths, effects);
    await keepLinkState(paths.state, changedLinks(state, before, change), effects);
    return (await linksIn(judged, paths, effects)).links;
  });
}

/**
 * Takes an athlete's pages, links and caches away, says which files hold their rows, and deletes those where `confirm` says so. Then both folders are built
 * anew without them.
 *
 * @throws {Stopped} nobody of that id is in the season
 */
export async function forget(
  paths: Paths,
  id: string,
  confirm: (holdings: readonly Holding[]) => Promise<boolean>,
  options: Options & { readonly on: string },
  effects: BuildEffects,
): Promise<Forgotten & { readonly built: Built }> {
  return alone(paths, effects, async () => {
    const season = await readSeason(paths, effects, pairByPhysics, PAGE_LANGUAGES);
    checkKnown(season, id);
    const { secret, ...before } = await linksIn(judgeSeason(season, options.asOf, effects), paths, effects);
    const ended = await endLinks(id, options.on, before, paths, effects);
    const holdings = await holdingsOf(id, season, paths, effects.disk);
    const deleted = await confirm(holdings);
    if (deleted) {
      await deleteHoldings(id, holdings, paths, effects);
      await keepLinkState(paths.state, forgottenBy(ended, secret, id), effects);
    }
    return { holdings, deleted, built: await made(paths, options, effects) };
  });
}

/** As far as the finished reports. */
async function judgedSeason(
  paths: Pick<Paths, "content" | "data">,
  { asOf, today }: Pick<Options, "asOf" | "today">,
  effects: Effects,
): Promise<Judgement> {
  return judgeSeason(await readSeason(paths, effects, pairByPhysics, PAGE_LANGUAGES), asOf, effects, today);
}

function assessed({ asOf, told, missing, ledger, problems }: Judgement): Assessed {
  const athletes = told.map(({ athlete, withheld }) => ({ id: athlete.id, name: athlete.profile.name, withheld }));
  return { asOf, athletes, missing, ledger, problems };
}
