import { useAthlete, useReading } from "../reading.ts";
import { AthleteDocument } from "./athlete-document.tsx";
import { Choices, OtherPart } from "./choices.tsx";
import { CoachText } from "./coach-text.tsx";
import { Condition } from "./condition.tsx";
import { Day } from "./day.tsx";
import { Figure } from "./figure.tsx";
import { Aim } from "./goals.tsx";
import { Imprint } from "./imprint.tsx";
import { isStaffs } from "./notes.tsx";
import { Local } from "./program.tsx";
import { Count, Say } from "./say.tsx";

/** A note while the season lasts, one screen of a phone: who came, the work, the goals, what is next, and the coach's latest word. */
export function InterimPage() {
  const { words } = useReading();
  const { report } = useAthlete();
  const { athlete, facility, interim } = report;
  if (interim === null) throw new Error(`the report of ${athlete.id} holds nothing for a note in between`);
  const { came, phase, nextPhase, nextTest } = interim;
  return (
    <AthleteDocument title="interim.title" kind="card interim">
      <header class="masthead">
        <Imprint />
        <h1 data-own>{athlete.displayName}</h1>
        <p class="when">
          <Say k="interim.head" with={{ season: <span data-own>{facility.season}</span>, day: <Day at="/asOf" /> }} />
        </p>
      </header>
      <Choices />
      <main id="main">
        <dl class="before">
          {came === null ? null : (
            <div>
              <dt>{words.text("interim.came")}</dt>
              <dd>
                <Say
                  k="interim.cameOf"
                  with={{
                    kept: <Figure at="/interim/came/kept" />,
                    planned: <Count k="interim.planned" at="/interim/came/planned" />,
                  }}
                />
                {came.besides === 0 ? null : (
                  <>
                    {" "}
                    <Count k="interim.besides" at="/interim/came/besides" />
                  </>
                )}
              </dd>
            </div>
          )}
          <div>
            <dt>{words.text("interim.sofar")}</dt>
            <dd>
              <Work at="sofar" />
            </dd>
          </div>
          <div>
            <dt>
              <Say k="interim.lately" with={{ from: <Day at="/interim/lately/from" form="short" /> }} />
            </dt>
            <dd>
              <Work at="lately" />
            </dd>
          </div>
          {phase === null && nextPhase === null ? null : (
            <div>
              <dt>{words.text(phase === null ? "interim.next" : "interim.phase")}</dt>
              <dd>
                {phase === null ? null : <Phase index={phase} />}
                {phase === null || nextPhase === null ? "" : "; "}
                {nextPhase === null ? null : (
                  <Say
                    k="interim.nextFrom"
                    with={{
                      phase: <Phase index={nextPhase} />,
                      day: <Day at={`/facility/phases/${nextPhase}/from`} form="short" />,
                    }}
                  />
                )}
              </dd>
            </div>
          )}
          <div>
            <dt>{words.text("interim.test")}</dt>
            <dd>{nextTest === null ? words.text("interim.noTest") : <Day at="/interim/nextTest" />}</dd>
          </div>
        </dl>
        <InterimGoals />
        <LatestNote />
        <p class="care">
          <Say k="care.pain" />
        </p>
        <p class="screen">
          <OtherPart k="interim.card" />
        </p>
      </main>
    </AthleteDocument>
  );
}

function Work({ at }: { readonly at: "sofar" | "lately" }) {
  const { interim } = useAthlete().report;
  return (
    <Say
      k={interim?.[at].logged === 0 ? "strand.swings" : "strand.swingsLogged"}
      with={{
        swings: <Count k="count.swings" at={`/interim/${at}/swings`} />,
        logged: <Figure at={`/interim/${at}/logged`} />,
        days: <Count k="count.days" at={`/interim/${at}/days`} />,
      }}
    />
  );
}

function Phase({ index }: { readonly index: number }) {
  const { id, label } = useAthlete().report.facility.phases[index]!;
  return label === null ? <span data-own>{id}</span> : <Local text={label} />;
}

/** Each goal that stands, and how it stands. */
function InterimGoals() {
  const { report } = useAthlete();
  const standing = report.goals.flatMap((goal, index) => (goal.replacedOn === null ? [{ goal, index }] : []));
  if (standing.length === 0) return null;
  return (
    <section aria-labelledby="goals">
      <h2 id="goals">
        <Say k="goals.head" />
      </h2>
      <ul>
        {standing.map(({ goal, index }) => (
          <li key={`/goals/${index}`}>
            <p>
              <Aim goal={goal} at={`/goals/${index}`} />
            </p>
            <p>
              <small>
                <Condition of={`/goals/${index}`} report={report} />
              </small>{" "}
              {goal.status === null ? null : (
                <strong>
                  <Say k={`goals.status.${goal.status}`} />
                </strong>
              )}
            </p>
          </li>
        ))}
      </ul>
    </section>
  );
}

/** The newest note of the staff that the family may read. */
function LatestNote() {
  const { report, reader } = useAthlete();
  const note = report.notes
    .map((one, index) => ({ ...one, at: `/notes/${index}` }))
    .filter(
      (one) => one.readers.includes(reader) && one.date <= report.asOf && isStaffs(one, report.athlete.displayName),
    )
    .sort((a, b) => (a.date < b.date ? -1 : 1))
    .at(-1);
  if (note === undefined) return null;
  return (
    <section aria-labelledby="note">
      <h2 id="note">
        <Say k="interim.note" />
      </h2>
      <CoachText body={note.body} under={2} images={note.images} />
      <p class="by">
        <span data-own>{note.author}</span>, <Day at={`${note.at}/date`} />
      </p>
    </section>
  );
}
