import { STRIP } from "../../charts/pair-strips.ts";
import type { AssetNames } from "../assets.ts";
import type { DeskView } from "../desk-view.ts";
import type { PairDay, PairRow } from "../pair-view.ts";
import { useReading } from "../reading.ts";
import { type MessageKey, wordsFor } from "../words.ts";
import { Day } from "./day.tsx";
import { DeskPage } from "./desk-page.tsx";
import { Figure } from "./figure.tsx";
import { Say } from "./say.tsx";
import { Scroll } from "./section.tsx";

const TOTALS = ["days", "paired", "pairs", "doubtful", "noBall", "noSwing", "noBat"] as const;

/** Days with two devices in figures, with a way to each athlete's page. */
export function DeskPairs({ view }: { readonly view: DeskView }) {
  const { words } = useReading();
  if (view.paired.length === 0) return null;
  return (
    <section aria-labelledby="pairs">
      <h2 id="pairs">
        <Say k="pairs.head" />
      </h2>
      <p>
        <Say k="pairs.about" />
      </p>
      <Scroll name={words.text("table.scroll", { name: words.text("pairs.head") })}>
        <table>
          <thead>
            <tr>
              <th scope="col">{words.text("desk.athlete")}</th>
              {TOTALS.map((total) => (
                <th scope="col" class="n" key={total}>
                  {words.text(`pairs.${total}`)}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {view.paired.map(({ id, name }, index) => (
              <tr key={id}>
                <th scope="row">
                  <a href={`pairs/${id}.html`} data-own>
                    {name}
                  </a>
                </th>
                {TOTALS.map((total) => (
                  <td class="n" key={total}>
                    <Figure at={`/paired/${index}/total/${total}`} />
                  </td>
                ))}
              </tr>
            ))}
          </tbody>
        </table>
      </Scroll>
    </section>
  );
}

/** One athlete's days with two devices: both sequences on one time axis, and every row without a partner. */
export function pairsDocument(view: DeskView, index: number, assets: AssetNames) {
  const words = wordsFor("en");
  const { name, days } = view.paired[index]!;
  return (
    <DeskPage
      title={words.text("pairs.title", { name })}
      source={view}
      words={words}
      facility={view.facility}
      assets={assets}
      head={
        <>
          <h1>
            <Say k="pairs.head" />
          </h1>
          <p class="season">
            <span data-own>{name}</span>
            <span>
              <Say k="desk.private" />
            </span>
          </p>
        </>
      }
    >
      <section aria-labelledby="key">
        <h2 id="key">
          <Say k="pairs.key" />
        </h2>
        <p>
          <Say k="pairs.keyText" />
        </p>
        <p>
          <Say k="pairs.correct" />
        </p>
      </section>
      {days.map((day, i) => (
        <OneDay key={day.date} day={day} at={`/paired/${index}/days/${i}`} />
      ))}
    </DeskPage>
  );
}

function OneDay({ day, at }: { readonly day: PairDay; readonly at: string }) {
  const { words } = useReading();
  const id = `day-${at.replaceAll("/", "-")}`;
  return (
    <section aria-labelledby={id} class="pair-day">
      <h2 id={id}>
        <Day at={`${at}/date`} />
      </h2>
      <p>
        <Say
          k={`pairs.outcome.${day.outcome}`}
          with={{
            pairs: <Figure at={`${at}/counts/pairs`} />,
            bats: <Figure at={`${at}/counts/bats`} />,
            balls: <Figure at={`${at}/counts/balls`} />,
          }}
        />{" "}
        {day.counts.told === 0 ? null : (
          <>
            <Say k="pairs.told" with={{ told: <Figure at={`${at}/counts/told`} /> }} />{" "}
          </>
        )}
        {day.clocks === null ? null : (
          <Say
            k="pairs.clocks"
            with={{
              offset: <Figure at={`${at}/clocks/offset`} unit="s" decimals={1} signed />,
              drift: <Figure at={`${at}/driftPpm`} decimals={0} signed />,
              noise: <Figure at={`${at}/clocks/noise`} unit="s" decimals={1} />,
            }}
          />
        )}
      </p>
      {day.outcome === "paired" ? (
        <figure class="strips">
          {day.strips.map((strip) => (
            <div class="strip" key={strip.clock}>
              <span class="clock" data-own>
                {strip.clock}
              </span>
              <svg viewBox={`0 0 ${STRIP.width} ${STRIP.height}`} aria-hidden="true" focusable="false">
                <path class="minute" d={strip.minutes} />
                <path class="link" d={strip.links} />
                <path class="doubt" d={strip.doubtful} />
                <path class="tick" d={strip.bats} />
                <path class="tick" d={strip.balls} />
                <path class="lonely" d={strip.lonelyBats} />
                <path class="lonely" d={strip.lonelyBalls} />
              </svg>
            </div>
          ))}
          <figcaption>{words.text("pairs.caption")}</figcaption>
        </figure>
      ) : null}
      <Doubtful day={day} at={at} />
      {(["noBall", "noSwing", "noBat"] as const).map((kind) => (
        <Rows key={kind} head={`pairs.${kind}`} rows={day[kind]} at={`${at}/${kind}`} />
      ))}
    </section>
  );
}

function Doubtful({ day, at }: { readonly day: PairDay; readonly at: string }) {
  const { words } = useReading();
  if (day.doubtful.length === 0) return null;
  return (
    <>
      <h3>
        <Say k="pairs.doubtful" />
      </h3>
      <Scroll name={words.text("table.scroll", { name: words.text("pairs.doubtful") })}>
        <table>
          <thead>
            <tr>
              <th scope="col">{words.text("pairs.bat")}</th>
              <th scope="col" class="n">
                {words.text("metric.bat_speed")}
              </th>
              <th scope="col">{words.text("pairs.ball")}</th>
              <th scope="col" class="n">
                {words.text("metric.exit_velocity")}
              </th>
              <th scope="col" class="n">
                {words.text("pairs.confidence")}
              </th>
            </tr>
          </thead>
          <tbody>
            {day.doubtful.map(({ bat, ball }, i) => (
              <tr key={bat.place}>
                <PlaceCells row={bat} at={`${at}/doubtful/${i}/bat`} />
                <PlaceCells row={ball} at={`${at}/doubtful/${i}/ball`} />
                <td class="n">
                  <Figure at={`${at}/doubtful/${i}/confidence`} share decimals={0} />
                </td>
              </tr>
            ))}
          </tbody>
        </table>
      </Scroll>
    </>
  );
}

function PlaceCells({ row, at }: { readonly row: PairRow; readonly at: string }) {
  return (
    <>
      <td data-own>{row.place}</td>
      <td class="n">{row.mph === null ? null : <Figure at={`${at}/mph`} unit="mph" decimals={1} />}</td>
    </>
  );
}

function Rows({
  head,
  rows,
  at,
}: {
  readonly head: MessageKey;
  readonly rows: readonly PairRow[];
  readonly at: string;
}) {
  const { words } = useReading();
  if (rows.length === 0) return null;
  return (
    <details>
      <summary>
        <Say k={head} />
      </summary>
      <Scroll name={words.text("table.scroll", { name: words.text(head) })}>
        <table>
          <thead>
            <tr>
              <th scope="col">{words.text("desk.place")}</th>
              <th scope="col" class="n">
                {words.text("pairs.speed")}
              </th>
            </tr>
          </thead>
          <tbody>
            {rows.map((row, i) => (
              <tr key={row.place}>
                <PlaceCells row={row} at={`${at}/${i}`} />
              </tr>
            ))}
          </tbody>
        </table>
      </Scroll>
    </details>
  );
}
