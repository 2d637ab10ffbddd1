import { plainDay, plainFigure, useAthlete, useReading } from "../reading.ts";
import { ChartFigure } from "./chart-figure.tsx";
import { Day } from "./day.tsx";
import { Figure } from "./figure.tsx";
import { Named } from "./names.tsx";
import { Count, Say } from "./say.tsx";
import { Scroll, Section } from "./section.tsx";

/** Swings of each week, the days away, and the caution that belongs beside any amount of work. */
export function Work() {
  const reading = useReading();
  const { words } = reading;
  const { report } = useAthlete();
  const { work } = report;
  if (work.weeks.length === 0) {
    return (
      <Section id="work" head="work.head">
        <p>
          <Say k="work.none" />
        </p>
      </Section>
    );
  }
  const alt = words.text("work.alt", {
    from: plainDay(reading, "/period/start"),
    to: plainDay(reading, "/period/end"),
    busiest: plainFigure(reading, "/work/busiestWeek", { unit: null, decimals: 0 }),
  });
  return (
    <Section id="work" head="work.head">
      <p>
        <Say
          k="work.total"
          with={{
            swings: <Count k="count.swings" at="/work/swings" />,
            days: <Count k="count.days" at="/work/days" />,
          }}
        />{" "}
        {work.loggedUnmeasured === 0 ? null : <Count k="work.unmeasured" at="/work/loggedUnmeasured" />}
      </p>
      <ChartFigure id="weeks" alt={alt} />
      <Manner />
      <Away />
      <p class="care">
        <Say k="care.pain" />
      </p>
    </Section>
  );
}

/** Every week's work as tables: by surroundings, and by effort and bat. */
export function WorkNumbers() {
  const { work } = useAthlete().report;
  if (work.weeks.length === 0) return null;
  return (
    <Section id="work" head="work.head">
      <details>
        <summary>
          <Say k="work.values" />
        </summary>
        <WeekTable from={0} />
      </details>
      <ByManner />
    </Section>
  );
}

/** How many weeks had work, and when it was last at full effort. */
function Manner() {
  const { load } = useAthlete().report.hitting;
  if (load.weeks.length === 0) return null;
  return (
    <p>
      <Say
        k="work.weeks"
        with={{ had: <Figure at="/hitting/load/weeksWithWork" />, of: <Figure at="/hitting/load/weeksInSeason" /> }}
      />{" "}
      {load.lastMax === null ? null : <Say k="work.lastMax" with={{ day: <Day at="/hitting/load/lastMax" /> }} />}
    </p>
  );
}

function ByManner() {
  const { words } = useReading();
  const { load } = useAthlete().report.hitting;
  if (load.weeks.length === 0) return null;
  const columns = [
    ["swings", "table.swings"],
    ["byEffort/max", "work.max"],
    ["byEffort/game", "work.game"],
    ["byEffort/technical", "work.technical"],
    ["byMass/heavier", "work.heavier"],
    ["byMass/lighter", "work.lighter"],
  ] as const;
  return (
    <details>
      <summary>
        <Say k="work.manner" />
      </summary>
      <Scroll name={words.text("table.scroll", { name: words.text("work.manner") })}>
        <table>
          <thead>
            <tr>
              <th scope="col">{words.text("work.week")}</th>
              {columns.map(([key, head]) => (
                <th scope="col" class="n" key={key}>
                  {words.text(head)}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {load.weeks.map(({ start }, index) => (
              <tr key={start}>
                <th scope="row">
                  <Day at={`/hitting/load/weeks/${index}/start`} form="short" />
                </th>
                {columns.map(([key]) => (
                  <td class="n" key={key}>
                    <Figure at={`/hitting/load/weeks/${index}/${key}`} />
                  </td>
                ))}
              </tr>
            ))}
          </tbody>
        </table>
      </Scroll>
    </details>
  );
}

function Away() {
  const { words } = useReading();
  const { away } = useAthlete().report.athlete;
  if (away.length === 0) return null;
  return (
    <dl class="pairs">
      <dt>{words.text("work.awayList")}</dt>
      {away.map(({ from, say }, index) => (
        <dd key={from}>
          <Say
            k="work.awayItem"
            with={{
              from: <Day at={`/athlete/away/${index}/from`} form="short" />,
              to: <Day at={`/athlete/away/${index}/to`} form="short" />,
            }}
          />
          {say === null ? null : (
            <>
              {": "}
              <span data-coach>{say}</span>
            </>
          )}
        </dd>
      ))}
    </dl>
  );
}

/** Weeks as a table, from the one at place `from` on. */
export function WeekTable({ from, short = false }: { readonly from: number; readonly short?: boolean }) {
  const { words } = useReading();
  const { weeks, loggedUnmeasured } = useAthlete().report.work;
  return (
    <Scroll name={words.text("table.scroll", { name: words.text("work.head") })}>
      <table>
        <thead>
          <tr>
            <th scope="col">{words.text("work.week")}</th>
            <th scope="col" class="n">
              {words.text("work.days")}
            </th>
            <th scope="col" class="n">
              {words.text("table.swings")}
            </th>
            <th scope="col">{words.text("work.kinds")}</th>
            {loggedUnmeasured === 0 ? null : (
              <th scope="col" class="n">
                {words.text(short ? "club.logged" : "work.logged")}
              </th>
            )}
          </tr>
        </thead>
        <tbody>
          {weeks.map((week, index) =>
            index < from ? null : (
              <tr key={week.start}>
                <th scope="row">
                  <Day at={`/work/weeks/${index}/start`} form="short" />
                </th>
                <td class="n">
                  <Figure at={`/work/weeks/${index}/days`} />
                </td>
                <td class="n">
                  <Figure at={`/work/weeks/${index}/swings`} />
                </td>
                <td class="dots">
                  {week.byEnvironment.map(({ environment }, place) => (
                    <span key={environment ?? ""}>
                      <Named kind="environment" id={environment ?? "none"} />{" "}
                      <Figure at={`/work/weeks/${index}/byEnvironment/${place}/swings`} />
                    </span>
                  ))}
                </td>
                {loggedUnmeasured === 0 ? null : (
                  <td class="n">
                    <Figure at={`/work/weeks/${index}/loggedUnmeasured`} />
                  </td>
                )}
              </tr>
            ),
          )}
        </tbody>
      </table>
    </Scroll>
  );
}
