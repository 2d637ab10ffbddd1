import type { Output } from "../publish/guard.ts";
import type { Link } from "../publish/links.ts";
import type { Paper, PdfJob } from "../publish/pdf.ts";
import type { SiteInput } from "../site/site.ts";
import { printedPages } from "../site/site.ts";
import type { BuildEffects } from "./terms.ts";

const PAPERS: readonly Paper[] = ["A4", "Letter"];

/**
 * Every published report as PDF, in each language and on both papers, for the desk: `pdf/<id>-<reader>-<language>-<paper>.pdf`. Several links of one
 * reader have one page, and one file.
 *
 * @param asOf day that stands in the files as that of making
 */
export async function pdfFiles(
  site: readonly Output[],
  input: SiteInput,
  links: readonly Link[],
  asOf: string,
  { print, progress }: Pick<BuildEffects, "print" | "progress">,
): Promise<Output[]> {
  if (print === undefined) return [];
  const athletes = new Map(links.map(({ token, athlete }) => [token, athlete]));
  const jobs = new Map<string, PdfJob>();
  for (const { token, reader, language, page } of printedPages(input)) {
    for (const paper of PAPERS) {
      const path = `pdf/${athletes.get(token)}-${reader}-${language}-${paper.toLowerCase()}.pdf`;
      if (!jobs.has(path)) jobs.set(path, { page, paper, path });
    }
  }
  return print(site, [...jobs.values()], asOf, (done, of) => progress("pdf", done, of));
}
