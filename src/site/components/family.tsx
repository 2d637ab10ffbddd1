import { useAthlete, useReading } from "../reading.ts";
import { Beginning } from "./beginning.tsx";
import { Cautions, Consent } from "./cautions.tsx";
import { Closing } from "./closing.tsx";
import { Colophon } from "./colophon.tsx";
import { Counted } from "./counted.tsx";
import { Document } from "./document.tsx";
import { Goals } from "./goals.tsx";
import { Growth } from "./growth.tsx";
import { Headline } from "./headline.tsx";
import { Hitting } from "./hitting/hitting.tsx";
import { Masthead } from "./masthead.tsx";
import { Measures } from "./measure.tsx";
import { Measuring } from "./measuring.tsx";
import { Method } from "./method.tsx";
import { Notes, OwnWords } from "./notes.tsx";
import { Others } from "./others.tsx";
import { ProgramCard } from "./program.tsx";
import { Section } from "./section.tsx";
import { Work } from "./work.tsx";

/** The full report for the athlete and the family. */
export function FamilyPage() {
  const { words } = useReading();
  const { report, assets } = useAthlete();
  const { athlete, facility } = report;
  const title = words.text("page.family.title", { name: athlete.displayName, season: facility.season });
  return (
    <Document title={title} words={words} assets={assets} root="../../" kind="family" notice={facility.notice}>
      <Masthead />
      <main id="main">
        <Headline />
        <Closing />
        <Measures />
        <Hitting />
        <Goals />
        <Growth />
        <Work />
        <Beginning />
        <Notes />
        <OwnWords />
        <ProgramCard />
        <Section id="how" head="how.head">
          <Measuring />
        </Section>
        <Section id="counted" head="counted.head">
          <Counted />
        </Section>
        <Method />
        <Others />
        <Cautions />
        <Consent />
      </main>
      <Colophon />
    </Document>
  );
}
