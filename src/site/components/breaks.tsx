import { useReading } from "../reading.ts";
import { Day } from "./day.tsx";
import { Figure } from "./figure.tsx";
import { Count, Say } from "./say.tsx";
import { SeriesFigure } from "./series-figure.tsx";
import { type Placed, sessionWord } from "./series-parts.ts";

/** Why a series whose set-up became another one has no change, and what its stretches were. */
export function Breaks({ placed }: { readonly placed: Placed }) {
  const { series, at } = placed;
  return (
    <>
      <p>
        <BreakLines placed={placed} /> <Say k="break.why" />
      </p>
      <dl class="values">
        {series.stretches.map((stretch, index) => (
          <div key={stretch.from}>
            <dt>
              <Say k="break.stretch" />
            </dt>
            <dd>
              <span class="value">
                <SeriesFigure of={at} at={`stretches/${index}/mean`} />
              </span>
              <span class="under">
                <Say
                  k={stretch.from === stretch.to ? "measure.blockOneDay" : "measure.block"}
                  with={{
                    from: <Day at={`${at}/stretches/${index}/from`} form="short" />,
                    to: <Day at={`${at}/stretches/${index}/to`} form="short" />,
                    swings: <Count k="count.swings" at={`${at}/stretches/${index}/n`} />,
                    days: <Count k={sessionWord(series)} at={`${at}/stretches/${index}/sessions`} />,
                  }}
                />
              </span>
            </dd>
          </div>
        ))}
      </dl>
    </>
  );
}

/** How a series whose set-up became another one is one line all the same: what the new one reads against the old. */
export function Joined({ placed }: { readonly placed: Placed }) {
  const { series, at } = placed;
  return (
    <>
      <BreakLines placed={placed} />{" "}
      {series.breaks.map(({ date, to, bridge }, index) =>
        bridge === null ? null : (
          <span key={`${date}-${to}`}>
            <Say
              k="break.bridge"
              with={{
                on: <Day at={`${at}/breaks/${index}/bridge/date`} />,
                swings: <Count k="count.swings" at={`${at}/breaks/${index}/bridge/n`} />,
                offset: <SeriesFigure of={at} at={`breaks/${index}/bridge/offset`} signed />,
                low: <SeriesFigure of={at} at={`breaks/${index}/bridge/ci95/0`} signed bare />,
                high: <SeriesFigure of={at} at={`breaks/${index}/bridge/ci95/1`} signed />,
              }}
            />{" "}
          </span>
        ),
      )}
      <Say k="break.joined" />
    </>
  );
}

/** The same in a few words, for a table's cell: device, day, offset. */
export function JoinedShort({ placed }: { readonly placed: Placed }) {
  const { series, at } = placed;
  return (
    <>
      {series.breaks.map(({ date, to, bridge }, index) =>
        bridge === null ? null : (
          <span key={`${date}-${to}`}>
            {index === 0 ? "" : " "}
            <Say
              k="break.bridgeShort"
              with={{
                to: <span data-own>{to}</span>,
                day: <Day at={`${at}/breaks/${index}/date`} form="short" />,
                swings: <Count k="count.swings" at={`${at}/breaks/${index}/bridge/n`} />,
                offset: <SeriesFigure of={at} at={`breaks/${index}/bridge/offset`} signed bare />,
                low: <SeriesFigure of={at} at={`breaks/${index}/bridge/ci95/0`} signed bare />,
                high: <SeriesFigure of={at} at={`breaks/${index}/bridge/ci95/1`} signed bare />,
              }}
            />
          </span>
        ),
      )}
    </>
  );
}

/** One sentence for each day on which the set-up became another one. */
export function BreakLines({ placed }: { readonly placed: Placed }) {
  const { series, at } = placed;
  return (
    <>
      {series.breaks.map(({ date, kind, to, bat }, index) => (
        <span key={`${date}-${kind}-${to}`}>
          {index === 0 ? "" : " "}
          <Say
            k={`break.${kind}`}
            with={{ day: <Day at={`${at}/breaks/${index}/date`} />, to: <span data-own>{to}</span> }}
          />
          {bat === null || bat.lengthIn === null || bat.weightOz === null ? null : (
            <>
              {" "}
              <Say
                k="break.batDifference"
                with={{
                  length: <Figure at={`${at}/breaks/${index}/bat/lengthIn`} unit="in" decimals={1} signed />,
                  weight: <Figure at={`${at}/breaks/${index}/bat/weightOz`} unit="oz" decimals={1} signed />,
                }}
              />
            </>
          )}
        </span>
      ))}
    </>
  );
}

/** The averages of the stretches, in order. */
export function StretchMeans({ placed }: { readonly placed: Placed }) {
  const { words } = useReading();
  const { series, at } = placed;
  return (
    <>
      {series.stretches.map((stretch, index) => (
        <span key={stretch.from}>
          {index === 0 ? "" : words.text("break.then")}
          <SeriesFigure of={at} at={`stretches/${index}/mean`} bare={index < series.stretches.length - 1} />
        </span>
      ))}
    </>
  );
}
