import { useAthlete } from "../reading.ts";
import { Day } from "./day.tsx";
import { Say } from "./say.tsx";

/** Whose report this is, whom to ask, and the day it speaks of. */
export function Colophon() {
  const { facility } = useAthlete().report;
  return (
    <footer class="colophon">
      <p>
        <span data-own>{facility.name}</span> <Say k="page.asOf" with={{ day: <Day at="/asOf" /> }} />
      </p>
      {facility.contact === null ? null : (
        <p>
          <Say k="page.contact" /> <span data-own>{facility.contact}</span>
        </p>
      )}
    </footer>
  );
}
