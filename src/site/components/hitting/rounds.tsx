import type { AthleteReport } from "../../../report/schema.ts";
import { useAthlete } from "../../reading.ts";
import { Figure } from "../figure.tsx";
import { Count, Say } from "../say.tsx";
import { Part, Range, Table, Where } from "./parts.tsx";

type Round = AthleteReport["hitting"]["rounds"][number];
const SPEED = { unit: "mph", decimals: 1, signed: true } as const;

/** Rounds with the game bat, those of the most rounds first: other bats stand in the desk's figures alone. */
export function gameRounds(rounds: readonly Round[]): { readonly round: Round; readonly index: number }[] {
  return rounds
    .map((round, index) => ({ round, index }))
    .filter(({ round }) => round.implement === "game")
    .sort((a, b) => b.round.swings - a.round.swings || a.index - b.index);
}

/** Does speed fade inside a round? */
export function Rounds() {
  const { rounds, recovery } = useAthlete().report.hitting;
  const shown = gameRounds(rounds);
  if (shown.length === 0) return null;
  return (
    <Part id="rounds" head="rounds.head" chart="rounds" caption="rounds.caption" table={<RoundTable rounds={shown} />}>
      {shown.slice(0, 1).map(({ round, index }) => (
        <RoundSentence key={index} round={round} index={index} />
      ))}
      {recovery === null ? null : (
        <p>
          <Say
            k="rounds.recovery"
            with={{
              rest: <Figure at="/hitting/recovery/restS" unit="s" decimals={0} />,
              gain: <Figure at="/hitting/recovery/recovery/estimate" {...SPEED} />,
              range: <Range at="/hitting/recovery/recovery/ci95" of={recovery.recovery.ci95} style={SPEED} />,
            }}
          />
        </p>
      )}
      <p class="aside">
        <Say k="rounds.volume" />
      </p>
    </Part>
  );
}

export function RoundSentence({ round, index }: { readonly round: Round; readonly index: number }) {
  const at = `/hitting/rounds/${index}`;
  const [low, high] = round.drop.ci95;
  return (
    <p>
      <Say
        k={high < 0 ? "rounds.fades" : low > 0 ? "rounds.grows" : "rounds.holds"}
        with={{
          where: <Where where={round} />,
          swings: <Figure at={`${at}/swingsInRound`} />,
          drop: <Figure at={`${at}/drop/estimate`} {...SPEED} />,
          range: <Range at={`${at}/drop/ci95`} of={round.drop.ci95} style={SPEED} />,
          rounds: <Count k="count.rounds" at={`${at}/rounds`} />,
        }}
      />
    </p>
  );
}

function RoundTable({ rounds }: { readonly rounds: ReturnType<typeof gameRounds> }) {
  return (
    <Table
      words={2}
      heads={[
        "rounds.where",
        "rounds.length",
        "rounds.rounds",
        "table.days",
        "rounds.perSwing",
        "rounds.drop",
        "hitting.rangeHead",
      ]}
    >
      {rounds.map(({ round, index }) => {
        const at = `/hitting/rounds/${index}`;
        return (
          <tr key={at}>
            <th scope="row">
              <Where where={round} />
            </th>
            <td>
              <Say k={`rounds.${round.length}`} />
            </td>
            <td class="n">
              <Figure at={`${at}/rounds`} />
            </td>
            <td class="n">
              <Figure at={`${at}/days`} />
            </td>
            <td class="n">
              <Figure at={`${at}/perSwing/estimate`} {...SPEED} decimals={2} />
            </td>
            <td class="n">
              <Figure at={`${at}/drop/estimate`} {...SPEED} />
            </td>
            <td class="n">
              <Range at={`${at}/drop/ci95`} of={round.drop.ci95} style={SPEED} />
            </td>
          </tr>
        );
      })}
    </Table>
  );
}
