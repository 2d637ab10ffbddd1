import { useAthlete } from "../reading.ts";
import { Day } from "./day.tsx";
import { Local } from "./program.tsx";
import { Say } from "./say.tsx";
import { Section } from "./section.tsx";

/** Cautions of ours, then those the facility adds. */
export function Cautions() {
  const { report } = useAthlete();
  return (
    <Section id="care" head="care.head">
      <ul class="plain">
        <li>
          <Say k="care.pain" />
        </li>
        {report.athlete.minor ? (
          <li>
            <Say k="care.growth" />
          </li>
        ) : null}
        <li>
          <Say k="care.cage" />
        </li>
        {report.facility.cautions.map((caution, index) => (
          <li key={`/facility/cautions/${index}`}>
            <Local text={caution} />
          </li>
        ))}
      </ul>
    </Section>
  );
}

/** Who agreed, and when; never by name. */
export function Consent() {
  const { report, recipient } = useAthlete();
  const publication = report.recipients[recipient]?.publication;
  if (!publication?.publish) return null;
  return (
    <Section id="consent" head="consent.head">
      <p>
        <Say
          k={publication.as === "guardian" ? "consent.guardian" : "consent.self"}
          with={{ day: <Day at={`/recipients/${recipient}/publication/agreedOn`} /> }}
        />
      </p>
      <p class="aside">
        <Say k="consent.keep" />
      </p>
    </Section>
  );
}
