import { useAthlete, useReading } from "../reading.ts";
import { Day } from "./day.tsx";
import { Imprint } from "./imprint.tsx";
import { Named } from "./names.tsx";
import { Count, Say } from "./say.tsx";

/** Title of the family report: whose winter, where, when, and how much work stands behind it. */
export function Masthead() {
  const { words } = useReading();
  const { report } = useAthlete();
  const { facility, athlete } = report;
  return (
    <header class="masthead">
      <Imprint />
      <h1 data-own>{athlete.displayName}</h1>
      <p class="season">
        <span data-own>{facility.season}</span>
        <span>
          <Say k="page.period" with={{ start: <Day at="/period/start" />, end: <Day at="/period/end" /> }} />
        </span>
      </p>
      <p class="facts dots">
        {athlete.sport === null ? null : (
          <span>
            <Named kind="sport" id={athlete.sport} />
          </span>
        )}
        {athlete.level === null ? null : (
          <span>
            <Named kind="level" id={athlete.level} />
          </span>
        )}
        {athlete.bats === null || !words.has(`athlete.bats.${athlete.bats}`) ? null : (
          <span>{words.text(`athlete.bats.${athlete.bats}` as "athlete.bats.left")}</span>
        )}
        {report.work.days === 0 ? null : (
          <span>
            <Say
              k="athlete.record"
              with={{
                swings: <Count k="count.swings" at="/work/swings" />,
                days: <Count k="count.days" at="/work/days" />,
              }}
            />
          </span>
        )}
      </p>
    </header>
  );
}
