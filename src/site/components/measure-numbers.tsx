import { useAthlete } from "../reading.ts";
import { Phases, Rebound } from "./beside-change.tsx";
import { Compare } from "./compare.tsx";
import { Condition } from "./condition.tsx";
import { EarlyLate } from "./measure.tsx";
import { Named } from "./names.tsx";
import { Peers } from "./peers.tsx";
import { Section } from "./section.tsx";
import { measuresOf, type Placed, sideBySide } from "./series-parts.ts";
import { SessionTable } from "./session-table.tsx";
import { Verdict } from "./verdict.tsx";

/** Each measure with both ends, where it stands among others, and every day's values. */
export function MeasureNumbers() {
  const { report } = useAthlete();
  const measures = measuresOf(report);
  if (measures.length === 0) return null;
  return (
    <Section id="measures" head="measure.head">
      {sideBySide(report).map((rows) => (
        <Compare key={rows[0]?.series.metric} rows={rows} />
      ))}
      {measures.map((placed) => (
        <OneMeasure key={placed.at} placed={placed} />
      ))}
    </Section>
  );
}

function OneMeasure({ placed }: { readonly placed: Placed }) {
  const { report } = useAthlete();
  const { series, at, index } = placed;
  return (
    <article class="measure" id={`measure-${index}`} aria-labelledby={`measure-${index}-head`}>
      <h3 id={`measure-${index}-head`}>
        <Named kind="metric" id={series.metric} />
      </h3>
      <p class="setup">
        <Condition of={at} report={report} />
      </p>
      <Verdict placed={placed} />
      <EarlyLate placed={placed} />
      <Rebound placed={placed} />
      <Phases placed={placed} />
      <Peers placed={placed} />
      <SessionTable placed={placed} />
    </article>
  );
}
