import type { VNode } from "preact";
import { render } from "preact-render-to-string";
import { CardPage } from "./components/card.tsx";
import { ClubPage } from "./components/club.tsx";
import { FamilyPage } from "./components/family.tsx";
import { InterimPage } from "./components/interim.tsx";
import { NumbersPage } from "./components/numbers.tsx";
import { SealedFrame } from "./components/sealed-frame.tsx";
import { StyleGuide } from "./components/style-guide.tsx";
import type { PageEntry, PageSet } from "./page-set.ts";
import { AthleteContext, type Reading, ReadingContext } from "./reading.ts";
import { drawCharts } from "./season-charts.ts";
import { styleView } from "./style-view.ts";
import { type PagePart, wayUp } from "./variants.ts";
import { wordsFor } from "./words.ts";

/** Pages of a family's link. */
const PAGES: Readonly<Record<PagePart, VNode>> = {
  report: <FamilyPage />,
  interim: <InterimPage />,
  numbers: <NumbersPage />,
  card: <CardPage />,
};

/** A whole document as text. */
export function htmlOf(document: VNode): string {
  return `<!DOCTYPE html>\n${render(document)}\n`;
}

const placeOf = ({ report, recipient }: PageEntry["page"]) => report.recipients.findIndex(({ id }) => id === recipient);

/** One athlete's page for one reader. */
export async function renderAthletePage(
  set: PageSet,
  { page, images, variant, variants, pdf }: PageEntry,
): Promise<string> {
  const { report, reader } = page;
  const recipient = placeOf(page);
  const reading: Reading = {
    source: report,
    words: wordsFor(variant.language),
    units: variant.units,
  };
  const charts = await drawCharts(report, reader, reading, variant.part);
  const html = htmlOf(
    <ReadingContext.Provider value={reading}>
      <AthleteContext.Provider
        value={{
          reader,
          recipient,
          report,
          charts,
          images,
          variant,
          variants,
          writtenIn: set.language,
          assets: set.assets.names,
          pdf,
        }}
      >
        {reader === "club" ? <ClubPage /> : PAGES[variant.part]}
      </AthleteContext.Provider>
    </ReadingContext.Provider>,
  );
  set.finished();
  return html;
}

/** The page that stands in the place of a sealed one; null for a page that is not sealed. */
export function renderFrame(
  { facility, assets }: PageSet,
  { page: { seal, token }, variant }: PageEntry,
): string | null {
  if (seal === null) return null;
  const words = wordsFor(variant.language);
  const root = `../../${wayUp(variant)}`;
  return htmlOf(<SealedFrame {...{ facility, words, assets: assets.names, root, token, seal }} />);
}

/** The page that shows what pages are made of, with the parts of one report. Its links lead nowhere: it is looked at, not read. */
export async function renderStyleGuide(set: PageSet, { page, variant }: PageEntry): Promise<string> {
  const { report, reader } = page;
  const { files, names } = set.assets;
  const view = styleView(String(files.find(({ path }) => path === names.styles)?.body));
  const reading: Reading = { source: { ...report, style: view }, words: wordsFor("en"), units: variant.units };
  const charts = await drawCharts(report, reader, reading, variant.part);
  const none = { images: new Map(), variants: [], pdf: null };
  return htmlOf(
    <ReadingContext.Provider value={reading}>
      <AthleteContext.Provider
        value={{
          reader,
          recipient: placeOf(page),
          report,
          charts,
          variant,
          writtenIn: set.language,
          assets: names,
          ...none,
        }}
      >
        <StyleGuide view={view} />
      </AthleteContext.Provider>
    </ReadingContext.Provider>,
  );
}
