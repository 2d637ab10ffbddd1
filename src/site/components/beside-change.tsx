import { useAthlete } from "../reading.ts";
import { Day } from "./day.tsx";
import { Figure } from "./figure.tsx";
import { Local } from "./program.tsx";
import { Count, Say } from "./say.tsx";
import { SeriesFigure } from "./series-figure.tsx";
import { type Placed, sessionWord } from "./series-parts.ts";

/** The measure since each phase of the season began, beside its own trend. */
export function Phases({ placed: { series, at } }: { readonly placed: Placed }) {
  const { report } = useAthlete();
  if (series.phases.length === 0) return null;
  return (
    <details>
      <summary>
        <Say k="phase.head" />
      </summary>
      <ul>
        {series.phases.map(({ phase }, index) => {
          const own = `${at}/phases/${index}`;
          const label = report.facility.phases[phase]?.label;
          return (
            <li key={own}>
              <Say
                k="phase.since"
                with={{
                  phase: label ? <Local text={label} /> : <span data-own>{report.facility.phases[phase]?.id}</span>,
                  day: <Day at={`/facility/phases/${phase}/from`} form="short" />,
                  estimate: <SeriesFigure of={at} at={`phases/${index}/estimate`} signed />,
                  low: <SeriesFigure of={at} at={`phases/${index}/ci95/0`} signed bare />,
                  high: <SeriesFigure of={at} at={`phases/${index}/ci95/1`} signed />,
                  before: <Count k={sessionWord(series)} at={`${own}/before`} />,
                  since: <Count k={sessionWord(series)} at={`${own}/since`} />,
                }}
              />
            </li>
          );
        })}
      </ul>
      <p class="aside">
        <Say k="phase.notBecause" />
      </p>
    </details>
  );
}

/** What the start alone would bring back towards the middle of the group. */
export function Rebound({ placed: { series, at } }: { readonly placed: Placed }) {
  if (series.rebound === null) return null;
  return (
    <p class="aside">
      <Say
        k={`rebound.${series.rebound.source}`}
        with={{
          middle: <SeriesFigure of={at} at="rebound/middle" />,
          hitters: <Count k="count.hitters" at={`${at}/rebound/athletes`} />,
          icc: <Figure at={`${at}/rebound/icc`} decimals={2} />,
          estimate: <SeriesFigure of={at} at="rebound/estimate" signed />,
        }}
      />
    </p>
  );
}
