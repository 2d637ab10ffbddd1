import type { Output } from "../publish/guard.ts";
import type { Link } from "../publish/links.ts";
import type { Paper, PdfJob } from "../publish/pdf.ts";
import type { SiteInput } from "../site/site.ts";
import { printedPages } from "../site/site.ts";
import type { BuildEffects } from "./terms.ts";

const PAPERS: readonly Paper[] = ["A4", "Letter"];

/** Printed files: for the desk, and for the site beside their pages. */
interface Printed {
  readonly desk: readonly Output[];
  readonly beside: readonly Output[];
}

/**
 * Every published report as PDF, in each language and on both papers, for the desk: `pdf/<id>-<reader>-<language>-<paper>.pdf`. Recipients whose pages are the
 * same have one file; one whose page differs, because the word about them covers less, has a file of their own, with their id at the end. Where the
 * facility wants it, each also lies beside its page, on the paper of its units.
 *
 * @param asOf day that stands in the files as that of making
 */
export async function pdfFiles(
  site: readonly Output[],
  input: SiteInput,
  links: readonly Link[],
  asOf: string,
  { print, progress }: Pick<BuildEffects, "print" | "progress">,
): Promise<Printed> {
  if (print === undefined) return { desk: [], beside: [] };
  const holders = new Map(links.map((link) => [link.token, link]));
  const pages = new Map(site.map(({ path, body }) => [path, body]));
  const jobs = new Map<string, PdfJob>();
  const wanted = new Map<string, string>();
  for (const { token, reader, language, units, page, beside } of printedPages(input)) {
    const { athlete, recipient } = holders.get(token)!;
    const own: Paper = units === "metric" ? "A4" : "Letter";
    for (const paper of PAPERS) {
      const name = `pdf/${athlete}-${reader}-${language}-${paper.toLowerCase()}`;
      const first = jobs.get(`${name}.pdf`);
      const same = first === undefined || pages.get(first.page) === pages.get(page);
      const path = same ? `${name}.pdf` : `${name}-${recipient}.pdf`;
      if (!jobs.has(path)) jobs.set(path, { page, paper, path });
      if (input.pdfs === true && paper === own) wanted.set(beside, path);
    }
  }
  const desk = await print(site, [...jobs.values()], asOf, (done, of) => progress("pdf", done, of));
  const bodies = new Map(desk.map(({ path, body }) => [path, body]));
  return { desk, beside: [...wanted].map(([path, from]) => ({ path, body: bodies.get(from)! })) };
}
