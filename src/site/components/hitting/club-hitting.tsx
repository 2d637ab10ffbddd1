import type { AthleteReport } from "../../../report/schema.ts";
import { useAthlete } from "../../reading.ts";
import { Held } from "../check-ins.tsx";
import { Condition } from "../condition.tsx";
import { Figure } from "../figure.tsx";
import { Gear, Named } from "../names.tsx";
import { Say } from "../say.tsx";
import { PERCENT } from "./bats.tsx";
import { GapSentence, wholeWay } from "./carry.tsx";
import { MachineSentence } from "./machine.tsx";
import { Range, ShareOf, Where } from "./parts.tsx";
import { gameRounds, RoundSentence } from "./rounds.tsx";

/** What carries over, in lines: gap to the machine, rounds, contact, marks, the machine itself. */
export function ClubHitting() {
  const { report } = useAthlete();
  const { hitting, gate } = report;
  const ladder = ladderOf(hitting.implements);
  const held = report.checkIns.flatMap((checkIn, index) => (checkIn.answer === null ? [] : [{ checkIn, index }]));
  const { carryOver, rounds, contactShares, machine } = hitting;
  const whole = wholeWay(carryOver);
  const shown = gameRounds(rounds).slice(0, 1);
  if (whole.length + shown.length + machine.length + ladder.length + held.length === 0 && gate === null) return null;
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
      {ladder.length === 0 ? null : (
        <p>
          <Say k="bats.ladder" with={{ bats: <Ladder of={ladder} /> }} />
        </p>
      )}
      {held.map(({ checkIn, index }) => (
        <p key={checkIn.series}>
          <Named kind="metric" id={checkIn.metric} />, <Condition of={`/checkIns/${index}`} report={report} />:{" "}
          <Held checkIn={checkIn} at={`/checkIns/${index}`} />
        </p>
      ))}
      {machine.length === 0 ? null : <MachineSentence index={0} />}
    </section>
  );
}

type Bat = AthleteReport["hitting"]["implements"][number];

/** Bats of the surroundings with most days; a club's sheet has room for one ladder. */
function ladderOf(bats: readonly Bat[]): { readonly bat: Bat; readonly index: number }[] {
  const most = [...bats].sort((a, b) => b.days - a.days)[0];
  return bats.flatMap((bat, index) =>
    bat.environment === most?.environment && bat.side === most.side ? [{ bat, index }] : [],
  );
}

function Ladder({ of }: { readonly of: ReturnType<typeof ladderOf> }) {
  const { report } = useAthlete();
  return (
    <>
      {of.map(({ bat, index }, i) => (
        <span key={index}>
          {i === 0 ? "" : "; "}
          <Gear report={report} kind="implement" id={bat.id} />{" "}
          <Figure at={`/hitting/implements/${index}/ratio/estimate`} {...PERCENT} />
          {bat.ratio.ci95 === null ? null : (
            <>
              {" ("}
              <Range at={`/hitting/implements/${index}/ratio/ci95`} of={bat.ratio.ci95} style={PERCENT} />)
            </>
          )}
        </span>
      ))}
    </>
  );
}
