import { useAthlete, useReading } from "../reading.ts";
import { wayUp } from "../variants.ts";
import { Beginning } from "./beginning.tsx";
import { Cautions, Consent } from "./cautions.tsx";
import { Choices, OtherPart } from "./choices.tsx";
import { Closing } from "./closing.tsx";
import { Colophon } from "./colophon.tsx";
import { LedgerLine } from "./counted.tsx";
import { Document } from "./document.tsx";
import { Goals } from "./goals.tsx";
import { Growth } from "./growth.tsx";
import { Headline } from "./headline.tsx";
import { Hitting } from "./hitting/hitting.tsx";
import { Masthead } from "./masthead.tsx";
import { Measures } from "./measure.tsx";
import { Measuring } from "./measuring.tsx";
import { Notes, OwnWords } from "./notes.tsx";
import { ProgramCard } from "./program.tsx";
import { Section } from "./section.tsx";
import { Work } from "./work.tsx";

/** The full report for the athlete and the family. */
export function FamilyPage() {
  const { words } = useReading();
  const { report, assets, variant } = useAthlete();
  const { athlete, facility } = report;
  const title = words.text("page.family.title", { name: athlete.displayName, season: facility.season });
  return (
    <Document
      title={title}
      words={words}
      assets={assets}
      root={`../../${wayUp(variant)}`}
      kind="family"
      notice={facility.notice}
    >
      <Masthead />
      <Choices />
      <main id="main">
        <Headline />
        <Closing />
        <Measures />
        <Goals />
        <Work />
        <Hitting />
        <Growth />
        <Beginning />
        <Notes />
        <OwnWords />
        <ProgramCard />
        <Section id="how" head="how.head">
          <Measuring />
          <p>
            <LedgerLine ledger={report.ledger} />
          </p>
          <p class="screen">
            <OtherPart k="numbers.to" />
          </p>
        </Section>
        <Cautions />
        <Consent />
      </main>
      <Colophon />
    </Document>
  );
}
