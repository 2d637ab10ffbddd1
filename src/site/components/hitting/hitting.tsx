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

/** What a hitter carries from practice toward a game. */
export function Hitting() {
  const { hitting, gate } = useAthlete().report;
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
      <Balls />
      <Contact />
      <Plane />
      <Bats />
      <Fittings />
      <Gate />
      <Machine />
      <Unseen />
    </Section>
  );
}
