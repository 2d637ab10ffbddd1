import type { AthleteReport } from "../../../report/schema.ts";
import { useAthlete } from "../../reading.ts";
import { Figure } from "../figure.tsx";
import { Named } from "../names.tsx";
import { Count, Say } from "../say.tsx";
import { Band, Part, Range, ShareOf, Table, Where } from "./parts.tsx";

type Hitting = AthleteReport["hitting"];
type Gap = Hitting["carryOver"][number];

/** Gaps in bat speed over the longest way, the band of most days first: what a reader is told in words. */
export function wholeWay(gaps: readonly Gap[]): { readonly gap: Gap; readonly index: number }[] {
  const speeds = gaps.map((gap, index) => ({ gap, index })).filter(({ gap }) => gap.metric === "bat_speed");
  const sides = [...new Set(speeds.map(({ gap }) => gap.side))];
  return sides.flatMap((side) => {
    const ofSide = speeds.filter(({ gap }) => gap.side === side);
    const pitched = ofSide.filter(({ gap }) => gap.pitchSpeed !== null);
    const from = (pitched.length > 0 ? pitched : ofSide).filter(({ gap }) => gap.from === ofSide[0]?.gap.from);
    return from.sort((a, b) => b.gap.days - a.gap.days || a.index - b.index).slice(0, 1);
  });
}

/** Does the speed arrive at the machine? */
export function Carry() {
  const { carryOver, contactShares } = useAthlete().report.hitting;
  if (carryOver.length === 0) return null;
  return (
    <Part id="carry" head="carry.head" chart="carry" caption="carry.caption" table={<GapTable gaps={carryOver} />}>
      {wholeWay(carryOver).map(({ gap, index }) => (
        <GapSentence key={index} gap={gap} at={`/hitting/carryOver/${index}`} />
      ))}
      {contactShares.length === 0 ? null : (
        <ul>
          {contactShares.map(({ environment, side, pitchSpeed }, index) => {
            const at = `/hitting/contactShares/${index}`;
            return (
              <li key={at}>
                <Say
                  k={pitchSpeed === null ? "carry.touchedAny" : "carry.touched"}
                  with={{
                    where: <Where where={{ environment, side }} />,
                    band: <Band at={`${at}/pitchSpeed`} of={pitchSpeed} />,
                    share: <ShareOf at={`${at}/touched`} />,
                  }}
                />
              </li>
            );
          })}
        </ul>
      )}
    </Part>
  );
}

export function GapSentence({ gap, at }: { readonly gap: Gap; readonly at: string }) {
  const style = { unit: gap.unit, decimals: gap.decimals, signed: true } as const;
  return (
    <p>
      <Say
        k="carry.gap"
        with={{
          from: <Named kind="environment" id={gap.from} />,
          to: <Where where={{ environment: gap.to, side: gap.side }} />,
          gap: (
            <b>
              <Figure at={`${at}/gap/estimate`} {...style} />
            </b>
          ),
          range: <Range at={`${at}/gap/ci95`} of={gap.gap.ci95} style={style} />,
          days: <Count k="count.days" at={`${at}/days`} />,
        }}
      />{" "}
      {gap.answer === null || gap.change === null ? null : (
        <Say k={`carry.${gap.answer}`} with={{ change: <Figure at={`${at}/change/estimate`} {...style} /> }} />
      )}{" "}
      {gap.alwaysLater ? <Say k="carry.later" with={{ to: <Named kind="environment" id={gap.to} /> }} /> : null}
    </p>
  );
}

function GapTable({ gaps }: { readonly gaps: readonly Gap[] }) {
  return (
    <Table
      words={2}
      heads={["carry.way", "carry.measure", "table.days", "carry.gapHead", "hitting.rangeHead", "carry.changed"]}
    >
      {gaps.map((gap, index) => {
        const at = `/hitting/carryOver/${index}`;
        const style = { unit: gap.unit, decimals: gap.decimals, signed: true } as const;
        return (
          <tr key={at}>
            <th scope="row">
              <Named kind="environment" id={gap.from} /> → <Where where={{ environment: gap.to, side: gap.side }} />{" "}
              <small>
                <Band at={`${at}/pitchSpeed`} of={gap.pitchSpeed} />
              </small>
            </th>
            <td>
              <Named kind="metric" id={gap.metric} />{" "}
              {gap.answer === null ? (
                <small>
                  <Say k={gap.pitchAdds ? "carry.pitchAdds" : "carry.otherBall"} />
                </small>
              ) : null}
            </td>
            <td class="n">
              <Figure at={`${at}/days`} />
            </td>
            <td class="n">
              <Figure at={`${at}/gap/estimate`} {...style} />
            </td>
            <td class="n">
              <Range at={`${at}/gap/ci95`} of={gap.gap.ci95} style={style} />
            </td>
            <td class="n">{gap.change === null ? null : <Figure at={`${at}/change/estimate`} {...style} />}</td>
          </tr>
        );
      })}
    </Table>
  );
}
