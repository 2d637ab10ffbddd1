import { useAthlete, useReading } from "../reading.ts";
import { Day } from "./day.tsx";
import { Say } from "./say.tsx";

/** Whose report this is, whom to ask, and the day it speaks of. */
export function Colophon() {
  const { words } = useReading();
  const { report, pdf } = useAthlete();
  const { facility } = report;
  return (
    <footer class="colophon">
      <p class="dots">
        <span data-own>{facility.name}</span>
        <span>
          <Say k="page.asOf" with={{ day: <Day at="/asOf" /> }} />
        </span>
      </p>
      {facility.contact === null ? null : (
        <p>
          <Say k="page.contact" with={{ contact: <span data-own>{facility.contact}</span> }} />
        </p>
      )}
      {pdf === null ? null : (
        <p class="screen">
          <a href={pdf} type="application/pdf">
            {words.text("page.pdf")}
          </a>
        </p>
      )}
    </footer>
  );
}
