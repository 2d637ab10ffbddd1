import type { AthleteReport } from "../../report/schema.ts";
import { useAthlete, useReading } from "../reading.ts";
import { AthleteDocument } from "./athlete-document.tsx";
import { OtherPart } from "./choices.tsx";
import { BatLine } from "./growth.tsx";
import { Imprint } from "./imprint.tsx";
import { Dose, Local } from "./program.tsx";
import { Say } from "./say.tsx";

type Item = NonNullable<AthleteReport["program"]>["items"][number];

/** Where a drill may be done, in the order of the card; `null` where the coach has not said. */
const PLACES = ["home", "supervised", null] as const;

/** The athlete's own card for the cage, one screen of a phone: bat, warm-up, the one cue, and each drill with what a good rep looks like. */
export function CardPage() {
  const { words } = useReading();
  const { athlete, program } = useAthlete().report;
  if (program === null) return null;
  const bat = athlete.gameBats.length - 1;
  return (
    <AthleteDocument title="card.title" kind="card">
      <header class="masthead">
        <Imprint />
        <h1 data-own>{athlete.displayName}</h1>
      </header>
      <main id="main">
        {program.ownCue === null ? null : (
          <p class="own-cue">
            <Local text={program.ownCue} />
          </p>
        )}
        <dl class="before">
          {bat < 0 ? null : (
            <div>
              <dt>{words.text("card.bat")}</dt>
              <dd>
                <BatLine bat={athlete.gameBats[bat]!} at={`/athlete/gameBats/${bat}`} />
              </dd>
            </div>
          )}
          {program.warmUp === null ? null : (
            <div>
              <dt>{words.text("card.warmUp")}</dt>
              <dd>
                <Local text={program.warmUp} />
              </dd>
            </div>
          )}
        </dl>
        {PLACES.map((place) => (
          <Drills key={String(place)} place={place} items={program.items} />
        ))}
        <p class="care">
          <Say k="care.pain" />
        </p>
        <p class="screen">
          <OtherPart k="card.back" />
        </p>
      </main>
    </AthleteDocument>
  );
}

function Drills({ place, items }: { readonly place: (typeof PLACES)[number]; readonly items: readonly Item[] }) {
  const here = items.flatMap((item, index) => (item.where === place ? [{ item, at: `/program/items/${index}` }] : []));
  if (here.length === 0) return null;
  return (
    <section aria-labelledby={`where-${place}`}>
      <h2 id={`where-${place}`}>
        <Say k={`card.where.${place ?? "unsaid"}`} />
      </h2>
      <ul>
        {here.map(({ item, at }) => (
          <li key={at}>
            <h3>
              <Local text={item.label} />
            </h3>
            <Dose item={item} at={at} />
            {item.cue === null ? null : (
              <p class="cue">
                <Local text={item.cue} />
              </p>
            )}
            {item.goodRep === null ? null : (
              <p>
                <b>
                  <Say k="card.goodRep" />
                </b>{" "}
                <Local text={item.goodRep} />
              </p>
            )}
            {item.caution === null ? null : (
              <p class="care">
                <Local text={item.caution} />
              </p>
            )}
          </li>
        ))}
      </ul>
    </section>
  );
}
