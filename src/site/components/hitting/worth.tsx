import { useAthlete } from "../../reading.ts";
import { Figure } from "../figure.tsx";
import { Named } from "../names.tsx";
import { Say } from "../say.tsx";
import { Part, Range } from "./parts.tsx";

const SPEED = { unit: "mph", decimals: 1, signed: true } as const;
const FEET = { unit: "ft", decimals: 0, signed: true } as const;

/** What the change of bat speed is worth, by models: never measured, and said so. Carry and the model itself stand among all the numbers. */
export function Worth() {
  const { report, variant } = useAthlete();
  const { worth } = report.hitting;
  const deep = variant.part === "numbers";
  if (worth === null) return null;
  const at = "/hitting/worth";
  return (
    <Part id="worth" head="worthOf.head" chart="worth" caption="worthOf.caption">
      <p>
        <Say
          k="worthOf.exit"
          with={{
            where: worth.environment === null ? null : <Named kind="environment" id={worth.environment} />,
            change: <Figure at={`${at}/batSpeed/change`} {...SPEED} />,
            exit: <Figure at={`${at}/exit/estimate`} {...SPEED} />,
            range: <Range at={`${at}/exit/range`} of={worth.exit.range} style={SPEED} />,
          }}
        />
      </p>
      {worth.carry === null || !deep ? null : (
        <p>
          <Say
            k="worthOf.carry"
            with={{
              carry: <Figure at={`${at}/carry/estimate`} {...FEET} />,
              range: <Range at={`${at}/carry/range`} of={worth.carry.range} style={FEET} />,
              launch: <Figure at={`${at}/carry/launch`} unit="deg" />,
              spin: <Figure at={`${at}/carry/backspin`} unit="rpm" />,
            }}
          />{" "}
          {worth.carry.extrapolated ? <Say k="worthOf.extrapolated" /> : null}
        </p>
      )}
      {deep ? (
        <p class="aside">
          <Say k="worthOf.model" with={{ q: <Figure at={`${at}/q`} decimals={2} /> }} />
        </p>
      ) : null}
    </Part>
  );
}
