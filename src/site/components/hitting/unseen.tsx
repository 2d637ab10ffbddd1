import { useAthlete } from "../../reading.ts";
import { Figure } from "../figure.tsx";
import { Count, Say } from "../say.tsx";
import { Part, Where } from "./parts.tsx";

const SPEED = { unit: "mph", decimals: 1 } as const;

/** Swings whose ball the screen did not record, and what bat speed is with and without them. */
export function Unseen() {
  const { unseen } = useAthlete().report.hitting;
  if (unseen.length === 0) return null;
  return (
    <Part id="unseen" head="unseen.head">
      {unseen.map((one, index) => {
        const at = `/hitting/unseen/${index}`;
        const both = one.without !== null && one.with !== null;
        return (
          <p class="sentence" key={at}>
            <Say
              k={both ? "unseen.sentence" : "unseen.short"}
              with={{
                where: <Where where={one} />,
                paired: <Count k="count.swings" at={`${at}/paired`} />,
                unseen: <Figure at={`${at}/unseen`} />,
                without: both ? <Figure at={`${at}/without`} {...SPEED} /> : null,
                with: both ? <Figure at={`${at}/with`} {...SPEED} /> : null,
              }}
            />{" "}
            <Say k={one.counted ? "unseen.counted" : "unseen.notCounted"} />
          </p>
        );
      })}
      <p class="aside">
        <Say k="unseen.about" />
      </p>
    </Part>
  );
}
