import type { AthleteReport } from "../../report/schema.ts";
import { plainFigure, type Reading, useAthlete, useReading } from "../reading.ts";
import { ChartFigure } from "./chart-figure.tsx";
import { plainCondition } from "./condition.tsx";
import { plainName } from "./names.tsx";
import { compareId, type Placed } from "./series-parts.ts";

/** The settings of one metric under each other: did what was won in one arrive in the next? */
export function Compare({ rows }: { readonly rows: readonly Placed[] }) {
  const reading = useReading();
  const { report } = useAthlete();
  const { metric } = rows[0]!.series;
  return <ChartFigure id={compareId(metric)} alt={compareAlt(reading, report, rows)} />;
}

/** The sentence that stands for a comparison. */
function compareAlt(reading: Reading, report: AthleteReport, rows: readonly Placed[]): string {
  const { words } = reading;
  const parts = rows.map(({ series, at }) => {
    const style = { unit: series.unit, decimals: series.decimals };
    return words.text("compare.row", {
      condition: plainCondition(reading, report, at),
      first: plainFigure(reading, `${at}/first/mean`, style),
      last: plainFigure(reading, `${at}/last/mean`, style),
    });
  });
  const metric = plainName(words, "metric", rows[0]!.series.metric);
  return words.text("compare.alt", { metric, rows: parts.join("; ") });
}
