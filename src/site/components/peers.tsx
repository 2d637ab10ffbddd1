import type { Series } from "../../report/schema.ts";
import { useAthlete, useReading } from "../reading.ts";
import { ChartFigure } from "./chart-figure.tsx";
import { Figure } from "./figure.tsx";
import { Named } from "./names.tsx";
import { Count, Say } from "./say.tsx";
import { SeriesFigure } from "./series-figure.tsx";
import { type Placed, peersAlt, peersId } from "./series-parts.ts";

/** Where the hitter stands among others of the same kind: in words, with who they are (`group`), and as a picture. */
export function Peers({ placed, group = true }: { readonly placed: Placed; readonly group?: boolean }) {
  const reading = useReading();
  const { charts } = useAthlete();
  const { series, at } = placed;
  const { peers, peersTooFew, peerLines } = series;
  if (peers === null && peersTooFew === null && peerLines.length === 0) return null;
  const id = peersId(placed.index);
  return (
    <div class="peers">
      {peers === null || !charts.has(id) ? null : (
        <ChartFigure id={id} alt={peersAlt(reading, series, at)}>
          {null}
        </ChartFigure>
      )}
      {peers === null ? null : <Standing peers={peers} at={`${at}/peers`} named={group} />}
      {peersTooFew === null ? null : (
        <p class="aside">
          <Count k="peers.tooFew" at={`${at}/peersTooFew`} />
        </p>
      )}
      {peerLines.map((line, index) => (
        <p class="aside" key={`${line.label}-${line.source}`}>
          <Say
            k="peers.line"
            with={{
              label: <Named kind="level" id={line.label} />,
              value: <SeriesFigure of={at} at={`peerLines/${index}/value`} />,
              source: <span data-own>{line.source}</span>,
            }}
          />
        </p>
      ))}
    </div>
  );
}

function Standing(props: {
  readonly peers: NonNullable<Series["peers"]>;
  readonly at: string;
  /** Say who the others are. */
  readonly named: boolean;
}) {
  const { peers, at, named } = props;
  const { start, end, bandsStart, n, year, source, group } = peers;
  const place = (which: "start" | "end") => <Figure at={`${at}/${which}/percentile`} percentile />;
  return (
    <>
      {end === null ? null : (
        <p>
          <Say
            k={end.ci95 === null ? "peers.endOnly" : start === null ? "peers.end" : "peers.both"}
            with={{
              start: start === null ? null : place("start"),
              end: place("end"),
              low: end.ci95 === null ? null : <Figure at={`${at}/end/ci95/0`} />,
              high: end.ci95 === null ? null : <Figure at={`${at}/end/ci95/1`} />,
            }}
          />
        </p>
      )}
      {named ? (
        <p class="aside">
          <Say
            k={n === null ? "peers.groupUnknown" : "peers.group"}
            with={{
              hitters: n === null ? null : <Count k="count.hitters" at={`${at}/n`} />,
              group: <Kind group={group} />,
              source: <span data-own>{source}</span>,
              year: year === null ? null : <Say k="peers.year" with={{ year: <span data-own>{year}</span> }} />,
            }}
          />
          {bandsStart === null ? null : (
            <>
              {" "}
              <Say k="peers.sameAge" />
            </>
          )}
        </p>
      ) : null}
    </>
  );
}

/** Sport, level and sex of the group. */
function Kind({ group }: { readonly group: NonNullable<Series["peers"]>["group"] }) {
  return (
    <>
      <Named kind="sport" id={group.sport} />
      {group.level === null ? null : (
        <>
          , <Named kind="level" id={group.level} />
        </>
      )}
      , <Named kind="sex" id={group.sex} />
    </>
  );
}
