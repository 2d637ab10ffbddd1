import { useAthlete } from "../../reading.ts";
import { Section } from "../section.tsx";
import { Balls, Contact, Plane } from "./balls.tsx";
import { Bats } from "./bats.tsx";
import { Carry } from "./carry.tsx";
import { Fittings } from "./fittings.tsx";
import { Gate } from "./gate.tsx";
import { Machine } from "./machine.tsx";
import { Rounds } from "./rounds.tsx";
import { Unseen } from "./unseen.tsx";
import { Worth } from "./worth.tsx";

/** What a hitter carries from practice toward a game: the main answers in the report, every part among all the numbers. */
export function Hitting() {
  const { report, variant } = useAthlete();
  const { hitting, gate } = report;
  const empty =
    gate === null &&
    Object.values({ ...hitting, load: null }).every(
      (part) => part === null || (Array.isArray(part) && part.length === 0),
    );
  if (empty) return null;
  return (
    <Section id="hitting" head="hitting.head">
      <Carry />
      <Rounds />
      <Worth />
      <Gate />
      {variant.part === "report" ? null : (
        <>
          <Balls />
          <Contact />
          <Plane />
          <Bats />
          <Fittings />
          <Machine />
          <Unseen />
        </>
      )}
    </Section>
  );
}
