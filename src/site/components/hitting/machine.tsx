import { useAthlete } from "../../reading.ts";
import { Figure } from "../figure.tsx";
import { Gear, Named } from "../names.tsx";
import { Say } from "../say.tsx";
import { Part, Table } from "./parts.tsx";

const SPEED = { unit: "mph", decimals: 0 } as const;
const FEET = { unit: "ft", decimals: 1 } as const;

/** The machine's settings in words that another club can set up. */
export function Machine() {
  const { report } = useAthlete();
  const { machine } = report.hitting;
  if (machine.length === 0) return null;
  return (
    <Part
      id="machine"
      head="machine.head"
      chart="machine"
      caption="machine.caption"
      table={
        <Table
          words={1}
          heads={[
            "machine.pitch",
            "table.swings",
            "machine.speed",
            "machine.distance",
            "machine.time",
            "machine.plate",
            "machine.equal",
          ]}
        >
          {machine.map((setting, index) => {
            const at = `/hitting/machine/${index}`;
            return (
              <tr key={at}>
                <th scope="row">
                  <Pitch index={index} />
                </th>
                <td class="n">
                  <Figure at={`${at}/swings`} />
                </td>
                <td class="n">
                  <Figure at={`${at}/speed`} {...SPEED} />{" "}
                  {setting.at === null ? null : (
                    <small>
                      <Named kind="pitchAt" id={setting.at} />
                    </small>
                  )}
                </td>
                <td class="n">{setting.distanceFt === null ? null : <Figure at={`${at}/distanceFt`} {...FEET} />}</td>
                <td class="n">
                  {setting.flightTimeS === null ? null : <Figure at={`${at}/flightTimeS`} unit="s" decimals={2} />}
                </td>
                <td class="n">{setting.plateSpeed === null ? null : <Figure at={`${at}/plateSpeed`} {...SPEED} />}</td>
                <td class="n">
                  <span class="dots">
                    {setting.equalTime.map((other, i) => (
                      <span key={other.distanceFt}>
                        <Say
                          k="machine.from"
                          with={{
                            mph: <Figure at={`${at}/equalTime/${i}/mph`} {...SPEED} />,
                            distance: <Figure at={`${at}/equalTime/${i}/distanceFt`} {...FEET} />,
                          }}
                        />
                      </span>
                    ))}
                  </span>
                </td>
              </tr>
            );
          })}
        </Table>
      }
    >
      <MachineSentence index={0} />
      <p class="aside">
        <Say k="machine.about" />
      </p>
    </Part>
  );
}

function Pitch({ index }: { readonly index: number }) {
  const { report } = useAthlete();
  const { pitchType, ball, axis } = report.hitting.machine[index]!;
  const at = `/hitting/machine/${index}`;
  return (
    <span class="dots">
      {pitchType === null ? null : (
        <span>
          <Named kind="pitch" id={pitchType} />
        </span>
      )}
      {ball === null ? null : (
        <span>
          <Gear report={report} kind="ball" id={ball} />
        </span>
      )}
      {axis === null ? null : (
        <span>
          <Say
            k="machine.axis"
            with={{ hour: <Figure at={`${at}/axis/hour`} />, minute: <Figure at={`${at}/axis/minute`} /> }}
          />
        </span>
      )}
    </span>
  );
}

/** One setting in a sentence. */
export function MachineSentence({ index }: { readonly index: number }) {
  const { report } = useAthlete();
  const setting = report.hitting.machine[index]!;
  const at = `/hitting/machine/${index}`;
  return (
    <p class="sentence">
      <Say
        k={setting.flightTimeS === null || setting.distanceFt === null ? "machine.short" : "machine.sentence"}
        with={{
          pitch: <Pitch index={index} />,
          speed: <Figure at={`${at}/speed`} {...SPEED} />,
          distance: setting.distanceFt === null ? null : <Figure at={`${at}/distanceFt`} {...FEET} />,
          time: setting.flightTimeS === null ? null : <Figure at={`${at}/flightTimeS`} unit="s" decimals={2} />,
          plate: setting.plateSpeed === null ? null : <Figure at={`${at}/plateSpeed`} {...SPEED} />,
        }}
      />
    </p>
  );
}
