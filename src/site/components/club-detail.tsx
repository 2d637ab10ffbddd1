import type { ComponentChild } from "preact";
import { useReading } from "../reading.ts";
import { Figure } from "./figure.tsx";
import { Say } from "./say.tsx";
import { SeriesFigure } from "./series-figure.tsx";
import type { Placed } from "./series-parts.ts";

/** Sessions from which the likeness of neighbours is worth printing. */
const SESSIONS_FOR_LAG = 15;

/** What an analyst asks of a measure, in one small line: noise, worth, p, the second look, scatter, model. */
export function ClubDetail({ placed }: { readonly placed: Placed }) {
  const { words } = useReading();
  const { series, at } = placed;
  const { change, trend, noise, worth } = series;
  const p = (pointer: string) => <Figure at={`${at}/${pointer}`} decimals={3} least={0.001} />;
  const parts: (ComponentChild | null)[] = [
    noise && (
      <Say
        k={`club.noise.${noise.source}`}
        with={{
          value: <SeriesFigure of={at} at="noise/typicalError" bare finer={1} />,
          athletes: noise.athletes === null ? null : <Figure at={`${at}/noise/athletes`} />,
        }}
      />
    ),
    worth && (
      <Say
        k={`club.worth.${worth.source}`}
        with={{
          value: <SeriesFigure of={at} at="worth/value" bare finer={1} />,
          athletes: worth.athletes === null ? null : <Figure at={`${at}/worth/athletes`} />,
        }}
      />
    ),
    change && change.p !== null ? <Say k="club.p" with={{ p: p("change/p") }} /> : null,
    change && change.pHolm !== null ? <Say k="club.pHolm" with={{ p: p("change/pHolm") }} /> : null,
    trend.theilSen && change ? (
      <Say
        k={trend.theilSen.ci95[0] === null || trend.theilSen.ci95[1] === null ? "club.senOnly" : "club.sen"}
        with={{
          slope: <SeriesFigure of={at} at="trend/theilSen/perWeek" signed bare finer={1} />,
          low:
            trend.theilSen.ci95[0] === null ? null : (
              <SeriesFigure of={at} at="trend/theilSen/ci95/0" signed bare finer={1} />
            ),
          high:
            trend.theilSen.ci95[1] === null ? null : (
              <SeriesFigure of={at} at="trend/theilSen/ci95/1" signed bare finer={1} />
            ),
        }}
      />
    ) : null,
    trend.mannKendall && change ? <Say k="club.mk" with={{ p: p("trend/mannKendall/p") }} /> : null,
    trend.sessionLine && trend.sessionLine.lag1 !== null && series.sessionCount >= SESSIONS_FOR_LAG ? (
      <Say k="club.lag1" with={{ r: <Figure at={`${at}/trend/sessionLine/lag1`} decimals={2} signed /> }} />
    ) : null,
    series.sessionSd !== null ? (
      <Say k="club.sdDays" with={{ sd: <SeriesFigure of={at} at="sessionSd" bare finer={1} /> }} />
    ) : null,
    series.repSd !== null ? (
      <Say k="club.sdSwings" with={{ sd: <SeriesFigure of={at} at="repSd" bare finer={1} /> }} />
    ) : null,
    change ? (
      <Say
        k="club.model"
        with={{
          method: words.text(`club.method.${change.method}`),
          df: <Figure at={`${at}/change/df`} decimals={1} />,
        }}
      />
    ) : null,
  ];
  const said = parts.filter((part) => part !== null);
  return said.length === 0 ? null : <span>{said.flatMap((part, i) => (i === 0 ? [part] : [" · ", part]))}</span>;
}
