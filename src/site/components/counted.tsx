import type { AthleteReport } from "../../report/schema.ts";
import { useAthlete } from "../reading.ts";
import type { MessageKey } from "../words.ts";
import { Figure } from "./figure.tsx";
import { Named } from "./names.tsx";
import { Count, Say } from "./say.tsx";

type Ledger = AthleteReport["ledger"];

/** Every row of the athlete: counted, not counted, set aside; and why. */
export function Counted() {
  const { ledger } = useAthlete().report;
  return (
    <>
      <p>
        <LedgerLine ledger={ledger} />
      </p>
      <Reasons head="counted.notCounted" of={ledger.notCounted} at="/ledger/notCounted" />
      <Reasons head="counted.setAside" of={ledger.setAside} at="/ledger/setAside" />
      <p class="aside">
        <Say k="counted.explain" />
      </p>
    </>
  );
}

/** The balance in one line. */
export function LedgerLine({ ledger }: { readonly ledger: Ledger }) {
  if (ledger.read === 0) return <Say k="counted.zero" />;
  return (
    <Say
      k="counted.sum"
      with={{ read: <Count k="count.rows" at="/ledger/read" />, counted: <Figure at="/ledger/counted" /> }}
    />
  );
}

interface ReasonsProps {
  readonly head: MessageKey;
  readonly of: Readonly<Partial<Record<string, number>>>;
  readonly at: string;
}

/** Why rows were left out, with how many each. */
export function Reasons({ head, of, at }: ReasonsProps) {
  const reasons = Object.keys(of).filter((reason) => of[reason] !== 0);
  if (reasons.length === 0) return null;
  return (
    <>
      <h3>
        <Say k={head} />
      </h3>
      <ul class="reasons">
        {reasons.map((reason) => (
          <li key={reason}>
            <span>
              <Named kind="reason" id={reason} />
            </span>
            <span class="n">
              <Figure at={`${at}/${reason}`} />
            </span>
          </li>
        ))}
      </ul>
    </>
  );
}
