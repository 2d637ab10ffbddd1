import { useAthlete } from "../../reading.ts";
import { Figure } from "../figure.tsx";
import { Named } from "../names.tsx";
import { Say } from "../say.tsx";
import { GapSentence, wholeWay } from "./carry.tsx";
import { MachineSentence } from "./machine.tsx";
import { ShareOf, Where } from "./parts.tsx";
import { gameRounds, RoundSentence } from "./rounds.tsx";

/** What carries over, in lines: gap to the machine, rounds, contact, marks, the machine itself. */
export function ClubHitting() {
  const { hitting, gate } = useAthlete().report;
  const { carryOver, rounds, contactShares, machine, worth } = hitting;
  const whole = wholeWay(carryOver);
  const shown = gameRounds(rounds).slice(0, 1);
  if (whole.length + shown.length + machine.length === 0 && gate === null) return null;
  const widest = contactShares.map((one, index) => ({ ...one, index })).sort((a, b) => b.touched.of - a.touched.of)[0];
  return (
    <section aria-labelledby="carries" class="carries">
      <h2 id="carries">
        <Say k="hitting.head" />
      </h2>
      {whole.map(({ gap, index }) => (
        <GapSentence key={index} gap={gap} at={`/hitting/carryOver/${index}`} />
      ))}
      {shown.map(({ round, index }) => (
        <RoundSentence key={index} round={round} index={index} />
      ))}
      {widest === undefined ? null : (
        <p>
          <Say
            k="carry.touchedAny"
            with={{
              where: <Where where={{ environment: widest.environment, side: widest.side }} />,
              share: <ShareOf at={`/hitting/contactShares/${widest.index}/touched`} />,
            }}
          />
        </p>
      )}
      {gate === null || gate.judged === 0 ? null : (
        <p>
          <Say k="gate.short" with={{ passed: <Figure at="/gate/passed" />, judged: <Figure at="/gate/judged" /> }} />
        </p>
      )}
      {worth === null ? null : (
        <p>
          <Say
            k="worthOf.short"
            with={{
              where: worth.environment === null ? null : <Named kind="environment" id={worth.environment} />,
              exit: <Figure at="/hitting/worth/exit/estimate" unit="mph" decimals={1} signed />,
            }}
          />
        </p>
      )}
      {machine.length === 0 ? null : <MachineSentence index={0} />}
    </section>
  );
}
