import { useAthlete } from "../reading.ts";
import { AthleteDocument } from "./athlete-document.tsx";
import { Beginning } from "./beginning.tsx";
import { Cautions, Consent } from "./cautions.tsx";
import { CheckIns } from "./check-ins.tsx";
import { Choices, OtherPart } from "./choices.tsx";
import { Closing } from "./closing.tsx";
import { Colophon } from "./colophon.tsx";
import { LedgerLine } from "./counted.tsx";
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
  const { report } = useAthlete();
  return (
    <AthleteDocument title="page.family.title" kind="family">
      <Masthead />
      <Choices />
      <main id="main">
        <Headline />
        <Closing />
        <Measures />
        <Goals />
        <CheckIns />
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
    </AthleteDocument>
  );
}
