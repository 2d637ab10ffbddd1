import type { AthleteReport } from "../../report/schema.ts";
import { useAthlete, useReading } from "../reading.ts";
import { localText } from "../words.ts";
import { OtherPart } from "./choices.tsx";
import { CoachText } from "./coach-text.tsx";
import { Day } from "./day.tsx";
import { Figure } from "./figure.tsx";
import { Gear } from "./names.tsx";
import { Count, Say } from "./say.tsx";
import { Section } from "./section.tsx";

type Program = NonNullable<AthleteReport["program"]>;
type Item = Program["items"][number];

/** The program card: what to do, with what, how much, and what to mind. */
export function ProgramCard() {
  const { program } = useAthlete().report;
  if (program === null || (program.items.length === 0 && program.body.trim() === "")) return null;
  return (
    <Section id="program" head="program.head">
      <SetUp program={program} />
      <p class="screen">
        <OtherPart k="card.to" />
      </p>
      {program.body.trim() === "" ? null : <CoachText body={program.body} under={2} />}
      {program.items.length === 0 ? null : (
        <ol class="drills">
          {program.items.map((item, index) => (
            <li key={`${item.drill}-${item.purpose}`}>
              <Drill item={item} at={`/program/items/${index}`} />
            </li>
          ))}
        </ol>
      )}
      <p class="care">
        <Say k="care.pain" />
      </p>
    </Section>
  );
}

function SetUp({ program }: { readonly program: Program }) {
  if (program.by === null && program.date === null) return null;
  const by = <span data-own>{program.by}</span>;
  if (program.date === null) {
    return (
      <p class="aside">
        <Say k="program.byOnly" with={{ by }} />
      </p>
    );
  }
  return (
    <p class="aside">
      <Say k={program.by === null ? "program.on" : "program.by"} with={{ by, day: <Day at="/program/date" /> }} />
    </p>
  );
}

/** Sets and reps, the bat, the rest, how often, and `where` it may be done. */
export function Dose({
  item,
  at,
  where = false,
}: {
  readonly item: Item;
  readonly at: string;
  readonly where?: boolean;
}) {
  const { words } = useReading();
  const { report } = useAthlete();
  return (
    <p class="dose">
      <span class="sets">
        <Say k="program.dose" with={{ sets: <Figure at={`${at}/sets`} />, reps: <Figure at={`${at}/reps`} /> }} />
      </span>
      {item.implement === null ? null : (
        <span>
          <Gear report={report} kind="implement" id={item.implement} />
        </span>
      )}
      {item.restS === null ? null : (
        <span>
          <Say k="program.rest" with={{ rest: <Figure at={`${at}/restS`} unit="s" /> }} />
        </span>
      )}
      {item.daysPerWeek === null ? null : (
        <span>
          <Count k="program.perWeek" at={`${at}/daysPerWeek`} />
        </span>
      )}
      {item.where === null || !where ? null : <span>{words.text(`program.where.${item.where}`)}</span>}
    </p>
  );
}

function Drill({ item, at }: { readonly item: Item; readonly at: string }) {
  return (
    <>
      <h3>
        <Local text={item.label} />
      </h3>
      <Dose item={item} at={at} where />
      <p data-coach>{item.purpose}</p>
      {item.cue === null ? null : (
        <p>
          <b>
            <Say k="program.cue" />
          </b>{" "}
          <Local text={item.cue} />
        </p>
      )}
      {item.caution === null ? null : (
        <p class="care">
          <b>
            <Say k="program.caution" />
          </b>{" "}
          <Local text={item.caution} />
        </p>
      )}
    </>
  );
}

/** The trainer's text in the reader's language where there is one. */
export function Local({ text }: { readonly text: string | Readonly<Record<string, string>> }) {
  const { words } = useReading();
  const found = localText(text, words.language);
  const foreign = found.language !== null && found.language !== words.language;
  return (
    <span data-coach lang={foreign ? (found.language ?? undefined) : undefined}>
      {found.text}
    </span>
  );
}
