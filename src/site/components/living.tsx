import type { AthleteReport } from "../../report/schema.ts";
import { useAthlete, useReading } from "../reading.ts";
import { Figure } from "./figure.tsx";
import { trendAlt } from "./measure.tsx";
import { Say } from "./say.tsx";
import { trendId } from "./series-parts.ts";

/** What stands for a reference inside a coach's text: a figure, a range, a small chart, or the coach's own words. */
export function Living({ reference }: { readonly reference: AthleteReport["references"][number] }) {
  const { kind, at, unit, decimals, signed, words, series } = reference;
  const reading = useReading();
  const { report, charts } = useAthlete();
  const style = { unit, decimals, signed };
  if (kind === "words") return <span data-coach>{words}</span>;
  if (kind === "figure") return <Figure at={at[0]!} {...style} />;
  if (kind === "range")
    return (
      <Say
        k="hitting.range"
        with={{ low: <Figure at={at[0]!} {...style} bare />, high: <Figure at={at[1]!} {...style} /> }}
      />
    );
  const svg = series === null ? undefined : charts.get(trendId(series));
  if (svg === undefined || series === null) return null;
  const placed = { series: report.series[series]!, index: series, at: at[0]! };
  return (
    <span
      class="small-chart"
      role="img"
      aria-label={trendAlt(reading, report, placed)}
      dangerouslySetInnerHTML={{ __html: svg }}
    />
  );
}
