import type { AthleteReport } from "../../report/schema.ts";
import { useAthlete } from "../reading.ts";
import { Condition } from "./condition.tsx";
import { Named } from "./names.tsx";
import { Count, Say } from "./say.tsx";
import { Section } from "./section.tsx";
import { SeriesFigure } from "./series-figure.tsx";

type CheckIn = AthleteReport["checkIns"][number];

/**
 * Swings at home, at a club or in games against the last weeks here: did it hold, or why nobody can say. Measures of which more is neither better
 * nor worse are told among all the numbers.
 */
export function CheckIns() {
  const { report, variant } = useAthlete();
  const told = report.checkIns.flatMap((checkIn, index) =>
    variant.part === "numbers" || report.series[checkIn.series]?.better !== "window" ? [{ checkIn, index }] : [],
  );
  if (told.length === 0) return null;
  return (
    <Section id="held" head="hold.head">
      <ul class="changes">
        {told.map(({ checkIn, index }) => (
          <li key={checkIn.series}>
            <h3>
              <Named kind="metric" id={checkIn.metric} />
            </h3>
            <p class="setup">
              <Condition of={`/checkIns/${index}`} report={report} />
            </p>
            <p>
              <Held checkIn={checkIn} at={`/checkIns/${index}`} />
            </p>
          </li>
        ))}
      </ul>
    </Section>
  );
}

/** The answer and the values behind it. */
export function Held({ checkIn, at }: { readonly checkIn: CheckIn; readonly at: string }) {
  const { answer, why, there, here, difference } = checkIn;
  return (
    <>
      {answer === null ? null : (
        <strong>
          <Say k={`hold.answer.${answer}`} />
        </strong>
      )}{" "}
      {there === null || here === null || difference === null ? null : (
        <Say
          k="hold.values"
          with={{
            there: <SeriesFigure of={at} at="there/mean" />,
            days: <Count k="count.days" at={`${at}/there/sessions`} />,
            here: <SeriesFigure of={`/series/${here}`} at="last/mean" />,
            difference: <SeriesFigure of={at} at="difference/estimate" signed />,
            low: <SeriesFigure of={at} at="difference/ci95/0" signed bare />,
            high: <SeriesFigure of={at} at="difference/ci95/1" signed />,
          }}
        />
      )}{" "}
      {why === null ? null : <Say k={`hold.why.${why}`} />}
    </>
  );
}
