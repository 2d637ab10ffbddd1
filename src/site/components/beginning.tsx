import type { AthleteReport } from "../../report/schema.ts";
import { useAthlete } from "../reading.ts";
import { AimLine, hasAim } from "./aims.tsx";
import { CoachText } from "./coach-text.tsx";
import { Condition } from "./condition.tsx";
import { Day } from "./day.tsx";
import { Figure } from "./figure.tsx";
import { Named } from "./names.tsx";
import { Local } from "./program.tsx";
import { Count, Say } from "./say.tsx";
import { Section } from "./section.tsx";

/** What was seen at the start and what the work was to be about. */
export function Beginning() {
  const { assessment } = useAthlete().report;
  if (assessment === null || (assessment.body.trim() === "" && assessment.priorities.length === 0)) return null;
  return (
    <Section id="beginning" head="start.head">
      <p class="when">
        <Day at="/assessment/date" />
      </p>
      {assessment.body.trim() === "" ? null : <CoachText body={assessment.body} under={2} />}
      {assessment.priorities.length === 0 ? null : (
        <>
          <h3>
            <Say k="start.priorities" />
          </h3>
          <ul class="strands">
            {assessment.priorities.map((priority, index) => (
              <li key={priority.id}>
                <Strand priority={priority} at={`/assessment/priorities/${index}`} />
              </li>
            ))}
          </ul>
        </>
      )}
      {assessment.by === null ? null : (
        <p class="by" data-own>
          {assessment.by}
        </p>
      )}
    </Section>
  );
}

type Priority = NonNullable<AthleteReport["assessment"]>["priorities"][number];

/** One priority through the season: what was done for it, what moved since, and what is next. */
function Strand({ priority, at }: { readonly priority: Priority; readonly at: string }) {
  const { report } = useAthlete();
  const { text, did, moved, next } = priority;
  return (
    <>
      <h4 data-coach>{text}</h4>
      {did.length === 0 ? null : (
        <p>
          <Say k="strand.did" />{" "}
          <span class="dots">
            {did.map(({ drill, label, days, logged }, index) => (
              <span key={drill}>
                <Local text={label} />
                {": "}
                {days === 0 ? (
                  <Say k="strand.notDone" />
                ) : (
                  <Say
                    k={logged === 0 ? "strand.swings" : "strand.swingsLogged"}
                    with={{
                      swings: <Count k="count.swings" at={`${at}/did/${index}/swings`} />,
                      logged: <Figure at={`${at}/did/${index}/logged`} />,
                      days: <Count k="count.days" at={`${at}/did/${index}/days`} />,
                    }}
                  />
                )}
              </span>
            ))}
          </span>
        </p>
      )}
      {did.some(({ drill }) => hasAim(report, drill)) ? (
        <p>
          <Say k="strand.aims" />{" "}
          <span class="dots">
            {did.map(({ drill }) => (
              <AimLine key={drill} drill={drill} />
            ))}
          </span>
        </p>
      ) : null}
      {moved.length === 0 ? null : (
        <>
          <p>
            <Say k="strand.moved" />
          </p>
          <ul class="moved">
            {moved.map((index) => {
              const series = report.series[index]!;
              const place = `/series/${index}`;
              return (
                <li key={place}>
                  <a href={`#measure-${index}`}>
                    <Named kind="metric" id={series.metric} />
                  </a>{" "}
                  <small>
                    <Condition of={place} report={report} />
                  </small>
                  {": "}
                  <Say k={`club.verdict.${series.change?.verdict ?? "none"}`} />
                </li>
              );
            })}
          </ul>
        </>
      )}
      {next.length === 0 ? null : (
        <p>
          <Say k="strand.next" />{" "}
          {next.map((index, i) => (
            <span key={index}>
              {i === 0 ? null : "; "}
              <Local text={report.program!.items[index]!.label} />
            </span>
          ))}
        </p>
      )}
    </>
  );
}
