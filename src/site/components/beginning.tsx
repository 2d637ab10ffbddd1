import { useAthlete } from "../reading.ts";
import { CoachText } from "./coach-text.tsx";
import { Day } from "./day.tsx";
import { Say } from "./say.tsx";
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
          <ul class="plain">
            {assessment.priorities.map(({ id, text }) => (
              <li key={id} data-coach>
                {text}
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
