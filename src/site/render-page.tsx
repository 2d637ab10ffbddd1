import type { VNode } from "preact";
import { render } from "preact-render-to-string";
import { CardPage } from "./components/card.tsx";
import { ClubPage } from "./components/club.tsx";
import { FamilyPage } from "./components/family.tsx";
import { NumbersPage } from "./components/numbers.tsx";
import type { PageEntry, PageSet } from "./page-set.ts";
import { AthleteContext, type Reading, ReadingContext } from "./reading.ts";
import { drawCharts } from "./season-charts.ts";
import type { PagePart } from "./variants.ts";
import { wordsFor } from "./words.ts";

/** Pages of a family's link. */
const PAGES: Readonly<Record<PagePart, VNode>> = {
  report: <FamilyPage />,
  numbers: <NumbersPage />,
  card: <CardPage />,
};

/** A whole document as text. */
export function htmlOf(document: VNode): string {
  return `<!DOCTYPE html>\n${render(document)}\n`;
}

/** One athlete's page for one reader. */
export async function renderAthletePage(set: PageSet, { page, images, variant, variants }: PageEntry): Promise<string> {
  const { report, reader } = page;
  const reading: Reading = {
    source: report,
    words: wordsFor(variant.language),
    units: variant.units,
  };
  const charts = await drawCharts(report, reader, reading, variant.part);
  const html = htmlOf(
    <ReadingContext.Provider value={reading}>
      <AthleteContext.Provider
        value={{ reader, report, charts, images, variant, variants, writtenIn: set.language, assets: set.assets.names }}
      >
        {reader === "club" ? <ClubPage /> : PAGES[variant.part]}
      </AthleteContext.Provider>
    </ReadingContext.Provider>,
  );
  set.finished();
  return html;
}
