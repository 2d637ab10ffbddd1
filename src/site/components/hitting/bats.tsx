import { useAthlete } from "../../reading.ts";
import { Figure } from "../figure.tsx";
import { Gear, Named } from "../names.tsx";
import { Say } from "../say.tsx";
import { Part, Range, Table } from "./parts.tsx";

export const PERCENT = { unit: null, decimals: 0, share: true } as const;
const SPEED = { unit: "mph", decimals: 1 } as const;

/** Other bats against the game bat of the same days. */
export function Bats() {
  const { report } = useAthlete();
  const bats = report.hitting.implements;
  if (bats.length === 0) return null;
  return (
    <Part
      id="bats"
      head="bats.head"
      chart="bats"
      caption="bats.caption"
      table={
        <Table
          words={2}
          heads={[
            "bats.bat",
            "bats.where",
            "bats.mass",
            "bats.length",
            "table.days",
            "bats.speed",
            "bats.ratio",
            "hitting.rangeHead",
            "bats.expected",
          ]}
        >
          {bats.map((bat, index) => {
            const at = `/hitting/implements/${index}`;
            return (
              <tr key={at}>
                <th scope="row">
                  <Gear report={report} kind="implement" id={bat.id} />{" "}
                  <small>{bat.roles.map((role, i) => [i === 0 ? null : ", ", <Say k={`bats.${role}`} />])}</small>
                </th>
                <td>{bat.environment === null ? null : <Named kind="environment" id={bat.environment} />}</td>
                <td class="n">{bat.mass === null ? null : <Figure at={`${at}/mass`} {...PERCENT} />}</td>
                <td class="n">{bat.length === null ? null : <Figure at={`${at}/length`} {...PERCENT} />}</td>
                <td class="n">
                  <Figure at={`${at}/days`} />
                </td>
                <td class="n">
                  <Figure at={`${at}/speed`} {...SPEED} />
                </td>
                <td class="n">
                  <Figure at={`${at}/ratio/estimate`} {...PERCENT} decimals={1} />
                </td>
                <td class="n">
                  <Range at={`${at}/ratio/ci95`} of={bat.ratio.ci95} style={{ ...PERCENT, decimals: 1 }} />
                </td>
                <td class="n">
                  <Range at={`${at}/expected`} of={bat.expected} style={PERCENT} />
                </td>
              </tr>
            );
          })}
        </Table>
      }
    >
      <p>
        <Say k="bats.about" />
      </p>
      {bats.some(({ inertiaBy }) => inertiaBy === "rod") ? (
        <p class="aside">
          <Say k="bats.rod" />
        </p>
      ) : null}
      <p class="aside">
        <Say k="bats.caution" />
      </p>
    </Part>
  );
}
