import { useAthlete, useReading } from "../reading.ts";
import { Day } from "./day.tsx";
import { Count, Say } from "./say.tsx";

/** On whose word a club has its page, and how much an adult athlete keeps to themselves: what is missing is said, not what it holds. */
export function Agreed() {
  const { words } = useReading();
  const { report, recipient } = useAthlete();
  const own = report.recipients[recipient];
  if (!own?.publication.publish) return null;
  const at = `/recipients/${recipient}`;
  const day = <Day at={`${at}/publication/agreedOn`} />;
  return (
    <p>
      <Say k={own.publication.as === "guardian" ? "club.agreed.guardian" : "club.agreed.self"} with={{ day }} />
      {own.keptCount === 0 ? null : (
        <>
          {" "}
          <Count
            k="club.kept"
            at={`${at}/keptCount`}
            with={{ list: own.kept.map((part) => words.text(`kept.${part}`)).join(", ") }}
          />
        </>
      )}
    </p>
  );
}
