import { Aims } from "./aims.tsx";
import { AthleteDocument } from "./athlete-document.tsx";
import { CheckIns } from "./check-ins.tsx";
import { Choices, OtherPart } from "./choices.tsx";
import { Colophon } from "./colophon.tsx";
import { Counted } from "./counted.tsx";
import { Growth } from "./growth.tsx";
import { Hitting } from "./hitting/hitting.tsx";
import { Masthead } from "./masthead.tsx";
import { MeasureNumbers } from "./measure-numbers.tsx";
import { Method } from "./method.tsx";
import { Others } from "./others.tsx";
import { Say } from "./say.tsx";
import { Section } from "./section.tsx";
import { WorkNumbers } from "./work.tsx";

/** All the numbers behind a family's report: every day's values, pictures and tables of each part, and how a verdict comes about. */
export function NumbersPage() {
  return (
    <AthleteDocument title="numbers.title" kind="family">
      <Masthead />
      <Choices />
      <main id="main">
        <p class="lead screen">
          <Say k="numbers.about" /> <OtherPart k="numbers.back" />
        </p>
        <MeasureNumbers />
        <Hitting />
        <Growth />
        <CheckIns />
        <Aims />
        <WorkNumbers />
        <Others />
        <Section id="counted" head="counted.head">
          <Counted />
        </Section>
        <Method />
      </main>
      <Colophon />
    </AthleteDocument>
  );
}
