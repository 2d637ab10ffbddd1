import type { AthleteReport } from "../../report/schema.ts";
import { plainDay, useAthlete, useReading } from "../reading.ts";
import { localText } from "../words.ts";
import { ChartFigure } from "./chart-figure.tsx";
import { Figure } from "./figure.tsx";
import { ShareOf } from "./hitting/parts.tsx";
import { Named } from "./names.tsx";
import { Local } from "./program.tsx";
import { Say } from "./say.tsx";
import { Section } from "./section.tsx";
import { SeriesFigure } from "./series-figure.tsx";
import { aimId } from "./series-parts.ts";

type Aim = AthleteReport["aims"][number];

/** Among all the numbers: for each drill with an aim, the share of its reps inside it, day by day. */
export function Aims() {
  const reading = useReading();
  const { report } = useAthlete();
  const { words } = reading;
  if (report.aims.length === 0) return null;
  return (
    <Section id="aims" head="aim.head">
      {report.aims.map((aim, index) => {
        const at = `/aims/${index}`;
        return (
          <article class="measure" key={at} aria-labelledby={`aim-${index}-head`}>
            <h3 id={`aim-${index}-head`}>
              <Local text={aim.label} />
            </h3>
            <p class="setup">
              <Aimed aim={aim} at={at} />
            </p>
            <p>
              <Say k="aim.all" with={{ share: <ShareOf at={`${at}/all`} /> }} /> <Ends aim={aim} at={at} />
            </p>
            <ChartFigure
              id={aimId(index)}
              alt={words.text("aim.alt", {
                drill: localText(aim.label, words.language).text,
                from: plainDay(reading, `${at}/days/0/date`),
                to: plainDay(reading, `${at}/days/${aim.days.length - 1}/date`),
              })}
            >
              <Say k="aim.caption" />
            </ChartFigure>
          </article>
        );
      })}
    </Section>
  );
}

/** Under a priority: how often its drills' reps were inside their aim. */
export function AimLine({ drill }: { readonly drill: string }) {
  const { aims } = useAthlete().report;
  return (
    <>
      {aims.flatMap((aim, index) =>
        aim.drill === drill && aim.first !== null && aim.last !== null
          ? [
              <span key={`${drill}-${index}`}>
                <Local text={aim.label} />
                {", "}
                <Aimed aim={aim} at={`/aims/${index}`} within />
                {": "}
                <Say
                  k="aim.short"
                  with={{
                    first: <Figure at={`/aims/${index}/first/share`} share />,
                    last: <Figure at={`/aims/${index}/last/share`} share />,
                  }}
                />
              </span>,
            ]
          : [],
      )}
    </>
  );
}

/** Has this drill an aim with a start and an end? */
export const hasAim = (report: AthleteReport, drill: string): boolean =>
  report.aims.some((aim) => aim.drill === drill && aim.first !== null && aim.last !== null);

/** What a rep must be to be inside. */
function Aimed({ aim, at, within = false }: { readonly aim: Aim; readonly at: string; readonly within?: boolean }) {
  if (aim.zone !== null) return <Local text={aim.zone} />;
  const metric = aim.metric === null ? null : <Named kind="metric" id={aim.metric} within={within} />;
  if (aim.window !== null)
    return (
      <Say
        k="aim.window"
        with={{
          metric,
          low: <SeriesFigure of={at} at="window/0" bare asWritten />,
          high: <SeriesFigure of={at} at="window/1" asWritten />,
        }}
      />
    );
  return <Say k="aim.atLeast" with={{ metric, low: <SeriesFigure of={at} at="atLeast" asWritten /> }} />;
}

function Ends({ aim, at }: { readonly aim: Aim; readonly at: string }) {
  if (aim.first === null || aim.last === null) return <Say k="aim.few" />;
  const share = (pointer: string, signed = false) => <Figure at={`${at}/${pointer}`} share signed={signed} />;
  return (
    <>
      <Say k="aim.ends" with={{ first: share("first/share"), last: share("last/share") }} />{" "}
      {aim.change === null ? null : (
        <Say
          k="aim.change"
          with={{
            change: share("change/estimate", true),
            low: share("change/ci95/0", true),
            high: share("change/ci95/1", true),
          }}
        />
      )}
    </>
  );
}
