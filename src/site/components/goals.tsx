import type { GoalReport } from "../../report/schema.ts";
import { useAthlete, useReading } from "../reading.ts";
import { localText, type MessageKey } from "../words.ts";
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
          <li
            key={`${goal.metric}-${goal.by}-${goal.set}-${index}`}
            class={goal.replacedOn === null ? undefined : "replaced"}
          >
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
      {goal.zone === null ? null : <ZoneRanges at={at} zone={goal.zone} />}
      {goal.replacedOn === null ? (
        <Status goal={goal} at={at} />
      ) : (
        <p class="aside">
          <Say k="goals.replaced" with={{ day: <Day at={`${at}/replacedOn`} /> }} />
        </p>
      )}
      {goal.baseline === null || goal.current === null ? (
        <NoProgress goal={goal} />
      ) : goal.replacedOn !== null ? null : goal.progress === null ? (
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

/** Where the goal stands, in words, and the chance by the day where it may be told. */
function Status({ goal, at }: { readonly goal: GoalReport; readonly at: string }) {
  const { status, probabilityByDate: chance } = goal;
  return (
    <>
      {status === null ? null : (
        <p class={`status ${status}`}>
          <strong>
            <Say k={`goals.status.${status}`} />
          </strong>
        </p>
      )}
      {chance === null ? null : (
        <p>
          {chance < ONE_IN_TWENTY ? (
            <Say k="goals.chanceLow" />
          ) : chance > 1 - ONE_IN_TWENTY ? (
            <Say k="goals.chanceHigh" />
          ) : (
            <Say k="goals.chance" with={{ chance: <Figure at={`${at}/probabilityByDate`} per={10} /> }} />
          )}
        </p>
      )}
    </>
  );
}

/** Chances nearer to none or to all than this are words: a whole tenth would say too much. */
const ONE_IN_TWENTY = 0.05;

/** What a ball must do to count. */
function ZoneRanges({ at, zone }: { readonly at: string; readonly zone: NonNullable<GoalReport["zone"]> }) {
  const { words } = useReading();
  const ranges = (["exitVelocity", "launchAngle", "spray"] as const).flatMap((name) => {
    if (zone[name] === null) return [];
    const unit = name === "exitVelocity" ? "mph" : "deg";
    const ends = {
      low: <Figure at={`${at}/zone/${name}/0`} unit={unit} bare />,
      high: <Figure at={`${at}/zone/${name}/1`} unit={unit} />,
    };
    if (name === "spray") return [<Say key={name} k="goals.zoneSpray" with={ends} />];
    const metric = words.text(name === "exitVelocity" ? "metric.exit_velocity" : "metric.launch_angle").toLowerCase();
    return [<Say key={name} k="goals.zoneRange" with={{ ...ends, metric }} />];
  });
  const list = ranges.flatMap((range, i) => (i === 0 ? [range] : [", ", range]));
  return ranges.length === 0 ? null : (
    <p class="aside">
      <Say k="goals.zoneOf" with={{ ranges: <>{list}</> }} />
    </p>
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
export function Aim({ goal, at }: { readonly goal: GoalReport; readonly at: string }) {
  const { words } = useReading();
  const common = {
    metric: <Named kind="metric" id={goal.metric} />,
    by: <Day at={`${at}/by`} />,
    share: goal.share === null ? null : <Figure at={`${at}/share`} share />,
  };
  if (goal.zone !== null) {
    const { text, language } = localText(goal.zone.label, words.language);
    const zone = (
      <span data-own lang={language ?? undefined}>
        {text}
      </span>
    );
    return <Say k="goals.zone" with={{ ...common, zone }} />;
  }
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
  const value = (which: string, bare = false) =>
    goal.kind === "target" ? <SeriesFigure of={at} at={which} bare={bare} /> : <Figure at={`${at}/${which}`} share />;
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
        <Say k="goals.values" with={{ baseline: value("baseline"), current: value("current") }} />{" "}
        {goal.currentCi95 === null ? null : (
          <Say k="goals.plausible" with={{ low: value("currentCi95/0", true), high: value("currentCi95/1") }} />
        )}
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
