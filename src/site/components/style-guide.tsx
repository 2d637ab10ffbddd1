import type { ComponentChildren } from "preact";
import { useAthlete, useReading } from "../reading.ts";
import type { StyleView } from "../style-view.ts";
import type { MessageKey } from "../words.ts";
import { Beginning } from "./beginning.tsx";
import { Cautions } from "./cautions.tsx";
import { CheckIns } from "./check-ins.tsx";
import { Closing } from "./closing.tsx";
import { Document } from "./document.tsx";
import { Figure } from "./figure.tsx";
import { Goals } from "./goals.tsx";
import { Headline } from "./headline.tsx";
import { Imprint } from "./imprint.tsx";
import { Measures } from "./measure.tsx";
import { Notes, OwnWords } from "./notes.tsx";
import { ProgramCard } from "./program.tsx";
import { Scroll, Section } from "./section.tsx";
import { Mark } from "./verdict.tsx";
import { Work } from "./work.tsx";

const ANSWERS = ["better", "same", "worse", "open", "none"] as const;

/** What pages are made of: colours by role, sizes, distances, signs, and the parts of a report themselves. For the preview alone. */
export function StyleGuide({ view }: { readonly view: StyleView }) {
  const { words } = useReading();
  const { report, assets } = useAthlete();
  return (
    <Document
      title={words.text("style.title")}
      words={words}
      assets={assets}
      root="../"
      kind="family"
      notice={report.facility.notice}
    >
      <header class="masthead">
        <Imprint />
        <h1>{words.text("style.title")}</h1>
        <p class="season">{words.text("style.about")}</p>
      </header>
      <main id="main">
        <Section id="style-colours" head="style.colours">
          <Scroll name={words.text("table.scroll", { name: words.text("style.colours") })}>
            <table>
              <thead>
                <tr>
                  {(["style.role", "style.use", "style.day", "style.night"] as const).map((head) => (
                    <th scope="col" key={head}>
                      {words.text(head)}
                    </th>
                  ))}
                </tr>
              </thead>
              <tbody>
                {view.roles.map(({ name, day, night }, index) => (
                  <tr key={name}>
                    <th scope="row" data-own>
                      {name}
                    </th>
                    <td>{words.text(`style.role.${name}` as MessageKey)}</td>
                    <td>
                      <Swatch fill={day} /> <span data-own>{day}</span>{" "}
                      <Figure at={`/style/roles/${index}/onDay`} decimals={1} />
                    </td>
                    <td>
                      <Swatch fill={night} /> <span data-own>{night}</span>{" "}
                      <Figure at={`/style/roles/${index}/onNight`} decimals={1} />
                    </td>
                  </tr>
                ))}
              </tbody>
            </table>
          </Scroll>
          <p class="aside">{words.text("style.contrast")}</p>
        </Section>
        <Section id="style-type" head="style.type">
          <Steps of={view.type} />
          <p class="lead">{words.text("style.lead")}</p>
          <p>{words.text("style.text")}</p>
          <p class="aside">{words.text("style.small")}</p>
        </Section>
        <Section id="style-gaps" head="style.gaps">
          <Steps of={view.gaps} />
        </Section>
        <Section id="style-signs" head="style.signs">
          <p class="dots">
            {ANSWERS.map((answer) => (
              <span key={answer}>
                <Mark of={answer} says={words.text(`style.sign.${answer}`)} /> {words.text(`style.sign.${answer}`)}
              </span>
            ))}
          </p>
        </Section>
        <Parts />
      </main>
    </Document>
  );
}

function Swatch({ fill }: { readonly fill: string }) {
  return (
    <svg width="28" height="14" viewBox="0 0 28 14" aria-hidden="true">
      <rect width="28" height="14" fill={fill} stroke="var(--line)" />
    </svg>
  );
}

function Steps({ of }: { readonly of: StyleView["type"] }) {
  return (
    <dl class="before">
      {of.map(({ name, value }) => (
        <div key={name}>
          <dt data-own>{name}</dt>
          <dd data-own>{value}</dd>
        </div>
      ))}
    </dl>
  );
}

/** The parts of a family's report as pages show them, filled with the first report of the season. */
function Parts(): ComponentChildren {
  return (
    <>
      <Headline />
      <Closing />
      <Measures />
      <Goals />
      <CheckIns />
      <Work />
      <Beginning />
      <Notes />
      <OwnWords />
      <ProgramCard />
      <Cautions />
    </>
  );
}
