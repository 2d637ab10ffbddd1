import { useAthlete } from "../../reading.ts";
import { Day } from "../day.tsx";
import { Figure } from "../figure.tsx";
import { Gear, Named } from "../names.tsx";
import { Say } from "../say.tsx";
import { Part, Range, Table, Where } from "./parts.tsx";

const SPEED = { unit: "mph", decimals: 1 } as const;

/** Bats tried against each other, and whether a difference can be seen. */
export function Fittings() {
  const { report } = useAthlete();
  const { fittings } = report.hitting;
  if (fittings.length === 0) return null;
  return (
    <Part
      id="fittings"
      head="fitting.head"
      table={
        <Table
          words={2}
          heads={[
            "table.day",
            "bats.bat",
            "table.swings",
            "balls.miss",
            "bats.speed",
            "hitting.rangeHead",
            "fitting.exit",
          ]}
        >
          {fittings.flatMap((fitting, index) =>
            fitting.bats.map((bat, i) => {
              const at = `/hitting/fittings/${index}/bats/${i}`;
              return (
                <tr key={at}>
                  <th scope="row">
                    <Day at={`/hitting/fittings/${index}/date`} form="short" />
                  </th>
                  <td>
                    <Gear report={report} kind="implement" id={bat.id} />
                  </td>
                  <td class="n">
                    <Figure at={`${at}/swings`} />
                  </td>
                  <td class="n">
                    <Figure at={`${at}/misses`} />
                  </td>
                  <td class="n">{bat.speed === null ? null : <Figure at={`${at}/speed/estimate`} {...SPEED} />}</td>
                  <td class="n">
                    {bat.speed === null ? null : <Range at={`${at}/speed/ci95`} of={bat.speed.ci95} style={SPEED} />}
                  </td>
                  <td class="n">{bat.exit === null ? null : <Figure at={`${at}/exit/estimate`} {...SPEED} />}</td>
                </tr>
              );
            }),
          )}
        </Table>
      }
    >
      {fittings.map((fitting, index) => {
        const at = `/hitting/fittings/${index}`;
        const told = fitting.pairs.map((pair, i) => ({ pair, i })).filter(({ pair }) => pair.differs);
        return (
          <p key={at}>
            <b>
              <Day at={`${at}/date`} />
            </b>
            , <Where where={{ environment: fitting.environment, side: fitting.side }} />:{" "}
            {told.length === 0 ? (
              <Say k="fitting.none" />
            ) : (
              told.map(({ pair, i }) => (
                <span class="line" key={`${pair.metric}-${pair.bat}-${pair.other}`}>
                  <Say
                    k="fitting.differs"
                    with={{
                      metric: <Named kind="metric" id={pair.metric} />,
                      bat: <Gear report={report} kind="implement" id={pair.bat} />,
                      other: <Gear report={report} kind="implement" id={pair.other} />,
                      difference: (
                        <Figure at={`${at}/pairs/${i}/estimate`} unit={pair.unit} decimals={pair.decimals} signed />
                      ),
                      range: (
                        <Range
                          at={`${at}/pairs/${i}/ci95`}
                          of={pair.ci95}
                          style={{ unit: pair.unit, decimals: pair.decimals, signed: true }}
                        />
                      ),
                    }}
                  />
                </span>
              ))
            )}
          </p>
        );
      })}
      <p class="aside">
        <Say k="fitting.rules" />
      </p>
    </Part>
  );
}
