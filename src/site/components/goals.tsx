import type { GoalReport } from "../../report/schema.ts";
import { useAthlete } from "../reading.ts";
import type { MessageKey } from "../words.ts";
import { Condition } from "./condition.tsx";
import { Day } from "./day.tsx";
import { Figure } from "./figure.tsx";
import { Named } from "./names.tsx";
import { ProgressBar } from "./progress-bar.tsx";
import { Count, Say } from "./say.tsx";
import { Section } from "./section.tsx";
import { SeriesFigure } from "./series-figure.tsx";
import { seriesOfGoal, sessionsOrDays, sessionWord } from "./series-parts.ts";

/** Goals and how far along they are, in neutral words. */
export function Goals() {
  const { report } = useAthlete();
  if (report.goals.length === 0) return null;
  return (
    <Section id="goals" head="goals.head">
      <ul class="goals">
        {report.goals.map((goal, index) => (
          <li key={`${goal.metric}-${goal.by}`}>
            <Goal goal={goal} at={`/goals/${index}`} />
          </li>
        ))}
      </ul>
    </Section>
  );
}

function Goal({ goal, at }: { readonly goal: GoalReport; readonly at: string }) {
  const { report } = useAthlete();
  return (
    <>
      <h3>
        <Aim goal={goal} at={at} />
      </h3>
      <p class="setup">
        <Condition of={at} report={report} />
      </p>
      {goal.baseline === null || goal.current === null ? (
        <NoProgress goal={goal} />
      ) : goal.progress === null ? (
        <p>
          <Say k="goals.already" />
        </p>
      ) : (
        <>
          <ProgressBar share={goal.progress} />
          <p>
            <Progress progress={goal.progress} at={`${at}/progress`} />
          </p>
        </>
      )}
      <Standing goal={goal} at={at} />
      {goal.why === null ? null : (
        <p>
          <Say k="goals.why" with={{ why: <span data-coach>{goal.why}</span> }} />
        </p>
      )}
    </>
  );
}

/** How much of the way is done. A share below nothing or above all says less than words. */
function Progress({ progress, at }: { readonly progress: number; readonly at: string }) {
  if (progress >= 1) return <Say k="goals.past" />;
  if (progress < 0) return <Say k="goals.back" />;
  return (
    <Say
      k="goals.progress"
      with={{
        share: (
          <strong>
            <Figure at={at} share />
          </strong>
        ),
      }}
    />
  );
}

/** Why nothing can be said: the set-up changed on the way, or the days are too few. */
function NoProgress({ goal }: { readonly goal: GoalReport }) {
  const found = seriesOfGoal(useAthlete().report, goal);
  const broken = found !== null && found.series.breaks.length > 0;
  return (
    <p>
      {broken ? (
        <Say k="goals.broken" with={{ day: <Day at={`${found.at}/breaks/0/date`} /> }} />
      ) : (
        <Say k="goals.noProgress" with={{ of: found === null ? "days" : sessionsOrDays(found.series) }} />
      )}
    </p>
  );
}

/** What is wanted, by when. */
function Aim({ goal, at }: { readonly goal: GoalReport; readonly at: string }) {
  const common = {
    metric: <Named kind="metric" id={goal.metric} />,
    by: <Day at={`${at}/by`} />,
    share: goal.share === null ? null : <Figure at={`${at}/share`} share />,
  };
  if (goal.kind === "window") {
    const key: MessageKey = goal.share === null ? "goals.windowAny" : "goals.window";
    const low = <SeriesFigure of={at} at="window/0" bare asWritten />;
    return <Say k={key} with={{ ...common, low, high: <SeriesFigure of={at} at="window/1" asWritten /> }} />;
  }
  if (goal.kind === "at-least") {
    const key: MessageKey = goal.share === null ? "goals.atLeastAny" : "goals.atLeast";
    return <Say k={key} with={{ ...common, low: <SeriesFigure of={at} at="atLeast" asWritten /> }} />;
  }
  return <Say k="goals.target" with={{ ...common, target: <SeriesFigure of={at} at="target" asWritten /> }} />;
}

function Standing({ goal, at }: { readonly goal: GoalReport; readonly at: string }) {
  if (goal.baseline === null || goal.current === null) return null;
  const value = (which: "baseline" | "current") =>
    goal.kind === "target" ? <SeriesFigure of={at} at={which} /> : <Figure at={`${at}/${which}`} share />;
  const found = seriesOfGoal(useAthlete().report, goal);
  const sessions = found === null ? "count.days" : sessionWord(found.series);
  const behind = (which: "baselineN" | "currentN") => ({
    swings: <Count k="count.swings" at={`${at}/${which}/n`} />,
    days: <Count k={sessions} at={`${at}/${which}/sessions`} />,
  });
  const first = behind("baselineN");
  const last = behind("currentN");
  return (
    <>
      <p>
        <Say k="goals.values" with={{ baseline: value("baseline"), current: value("current") }} />
      </p>
      <p class="aside">
        <Say
          k="goals.behind"
          with={{ firstSwings: first.swings, firstDays: first.days, lastSwings: last.swings, lastDays: last.days }}
        />
      </p>
    </>
  );
}
