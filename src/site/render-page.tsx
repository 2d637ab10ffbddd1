import type { VNode } from "preact";
import { render } from "preact-render-to-string";
import { ClubPage } from "./components/club.tsx";
import { FamilyPage } from "./components/family.tsx";
import type { PageEntry, PageSet } from "./page-set.ts";
import { AthleteContext, type Reading, ReadingContext } from "./reading.ts";
import { drawCharts } from "./season-charts.ts";
import { wordsFor } from "./words.ts";

/** A whole document as text. */
export function htmlOf(document: VNode): string {
  return `<!DOCTYPE html>\n${render(document)}\n`;
}

/** One athlete's page for one reader. */
export async function renderAthletePage(set: PageSet, { page, images }: PageEntry): Promise<string> {
  const { report, reader } = page;
  const reading: Reading = {
    source: report,
    words: wordsFor(report.athlete.language),
    units: report.facility.units,
  };
  const charts = await drawCharts(report, reader, reading);
  const html = htmlOf(
    <ReadingContext.Provider value={reading}>
      <AthleteContext.Provider value={{ reader, report, charts, images, assets: set.assets.names }}>
        {reader === "family" ? <FamilyPage /> : <ClubPage />}
      </AthleteContext.Provider>
    </ReadingContext.Provider>,
  );
  set.finished();
  return html;
}
