import { useAthlete } from "../../reading.ts";
import { Condition } from "../condition.tsx";
import { Day } from "../day.tsx";
import { Figure } from "../figure.tsx";
import { Gear, Named } from "../names.tsx";
import { Say } from "../say.tsx";
import { PERCENT } from "./bats.tsx";
import { Part, Table } from "./parts.tsx";

const WHOLE = { unit: "mph", decimals: 0 } as const;

/** The marks below which a ball does not count, how many swings they kept out, and what results would be with others. */
export function Gate() {
  const { report } = useAthlete();
  const { gate } = report;
  if (gate === null || gate.judged === 0) return null;
  return (
    <Part
      id="gate"
      head="gate.head"
      chart="gate"
      caption="gate.caption"
      table={
        <Table words={1} heads={["gate.measure", "gate.by", "table.swings", "gate.first", "gate.last", "gate.change"]}>
          {gate.effects.flatMap((effect, index) => {
            const of = `/gate/effects/${index}`;
            const style = { unit: effect.unit, decimals: effect.decimals } as const;
            const row = (at: string, ends: typeof effect.ungated, by: number | null) => (
              <tr key={at}>
                <th scope="row">
                  <Named kind="metric" id={effect.metric} /> <Condition of={of} report={report} />
                </th>
                <td class="n">
                  {by === null ? (
                    <Say k="gate.without" />
                  ) : by === 0 ? (
                    <Say k="gate.asIs" />
                  ) : (
                    <Figure at={`${at}/by`} {...WHOLE} signed />
                  )}
                </td>
                <td class="n">
                  <Figure at={`${at}/n`} />
                </td>
                <td class="n">{ends.first === null ? null : <Figure at={`${at}/first`} {...style} />}</td>
                <td class="n">{ends.last === null ? null : <Figure at={`${at}/last`} {...style} />}</td>
                <td class="n">{ends.estimate === null ? null : <Figure at={`${at}/estimate`} {...style} signed />}</td>
              </tr>
            );
            return [
              row(`${of}/ungated`, effect.ungated, null),
              ...effect.moves.map((move, i) => row(`${of}/moves/${i}`, move, move.by)),
            ];
          })}
        </Table>
      }
    >
      <p>
        <Say k="gate.about" />
      </p>
      <ul>
        {gate.marks.map((mark, index) => {
          const at = `/gate/marks/${index}`;
          return (
            <li key={at}>
              <span class="dots">
                {Object.entries(mark.applies).map(([key, values]) => (
                  <span key={key}>
                    {values.map((value, i) => [
                      i === 0 ? null : ", ",
                      key === "implement" || key === "ball" ? (
                        <Gear report={report} kind={key} id={value} />
                      ) : (
                        <Named kind={key} id={value} />
                      ),
                    ])}
                  </span>
                ))}
                {mark.from === null ? null : (
                  <span>
                    <Say k="growth.from" with={{ day: <Day at={`${at}/from`} form="short" /> }} />
                  </span>
                )}
              </span>
              :{" "}
              <Say
                k={mark.atLeast === null ? "gate.recent" : "gate.fixed"}
                with={{
                  mark: mark.atLeast === null ? null : <Figure at={`${at}/atLeast`} {...WHOLE} />,
                  share: mark.share === null ? null : <Figure at={`${at}/share`} {...PERCENT} />,
                  days: mark.days === null ? null : <Figure at={`${at}/days`} />,
                  passed: <Figure at={`${at}/passed`} />,
                  judged: <Figure at={`${at}/judged`} />,
                }}
              />
            </li>
          );
        })}
      </ul>
    </Part>
  );
}
