import { useAthlete, useReading } from "../../reading.ts";
import { Figure } from "../figure.tsx";
import { Named } from "../names.tsx";
import { Count, Say } from "../say.tsx";
import { PERCENT } from "./bats.tsx";
import { Part, Range, ShareOf, Table, Where } from "./parts.tsx";

const DEGREES = { unit: "deg", decimals: 0 } as const;
const FINE = { unit: "deg", decimals: 1 } as const;

/** Attack angle in its window. */
export function Plane() {
  const { plane } = useAthlete().report.hitting;
  const { words } = useReading();
  if (!plane.some(({ inside }) => inside !== null)) return null;
  return (
    <Part
      id="plane"
      head="plane.head"
      chart="plane"
      caption="plane.caption"
      table={
        <Table
          words={2}
          heads={["plane.where", "plane.window", "plane.inside", "hitting.rangeHead", "plane.middle", "plane.spread"]}
        >
          {plane.map(({ window, inside, spread, drill, ballHeight, ...where }, index) => {
            const at = `/hitting/plane/${index}`;
            return (
              <tr key={at}>
                <th scope="row">
                  <Where where={where} /> {drill === null ? null : <Named kind="drill" id={drill} />}
                  <Range at={`${at}/ballHeight`} of={ballHeight} style={{ unit: "in", decimals: 0 }} />
                </th>
                <td>
                  <Range at={`${at}/window`} of={window} style={DEGREES} />
                </td>
                <td class="n">{inside === null ? null : <ShareOf at={`${at}/inside`} />}</td>
                <td class="n">
                  {inside === null ? null : <Range at={`${at}/inside/ci95`} of={inside.ci95} style={PERCENT} />}
                </td>
                <td class="n">
                  <Figure at={`${at}/middle`} {...FINE} />
                </td>
                <td class="n">{spread === null ? null : <Figure at={`${at}/spread`} {...FINE} />}</td>
              </tr>
            );
          })}
        </Table>
      }
    >
      <p class="aside">{words.text("about.attack_angle")}</p>
    </Part>
  );
}

/** What became of the balls. */
export function Balls() {
  const { flight } = useAthlete().report.hitting;
  if (flight.length === 0) return null;
  return (
    <Part
      id="balls"
      head="balls.head"
      chart="balls"
      caption="balls.caption"
      table={
        <Table
          words={1}
          heads={[
            "balls.where",
            "balls.swings",
            "balls.hit",
            "balls.foul",
            "balls.miss",
            "balls.ground",
            "balls.line",
            "balls.fly",
            "balls.pop",
            "balls.pull",
            "balls.centre",
            "balls.opposite",
          ]}
        >
          {flight.map(({ launch, field, ...where }, index) => {
            const at = `/hitting/flight/${index}`;
            const cell = (path: string | null) => (
              <td class="n">{path === null ? null : <Figure at={`${at}/${path}`} />}</td>
            );
            return (
              <tr key={at}>
                <th scope="row">
                  <Where where={where} />
                </th>
                {cell("of/swings")}
                {cell("of/hit")}
                {cell("of/foul")}
                {cell("of/miss")}
                {(["groundBall", "lineDrive", "flyBall", "popUp"] as const).map((kind) =>
                  cell(launch === null ? null : `launch/${kind}`),
                )}
                {(["pull", "centre", "opposite"] as const).map((third) =>
                  cell(field === null ? null : `field/${third}`),
                )}
              </tr>
            );
          })}
        </Table>
      }
    >
      <ul>
        {flight.map(({ launch, firm, zones, ...where }, index) => {
          const at = `/hitting/flight/${index}`;
          if (firm === null && zones.length === 0) return null;
          return (
            <li key={at}>
              <b>
                <Where where={where} />
              </b>
              {firm === null ? null : (
                <span class="line">
                  <Say
                    k="balls.firm"
                    with={{
                      mark: <Figure at={`${at}/firm/mark`} unit="mph" decimals={0} />,
                      share: <ShareOf at={`${at}/firm`} />,
                    }}
                  />
                </span>
              )}
              {zones.map((zone, i) => (
                <span class="line" key={zone.id}>
                  <Label of={zone.label} />: <ShareOf at={`${at}/zones/${i}/in`} />
                </span>
              ))}
            </li>
          );
        })}
      </ul>
    </Part>
  );
}

/** How much of what bat and pitch allow went into the ball. */
export function Contact() {
  const { contact } = useAthlete().report.hitting;
  if (!contact.some(({ implement }) => implement === "game")) return null;
  return (
    <Part
      id="contact"
      head="contact.head"
      chart="contact"
      caption="contact.caption"
      table={
        <Table
          words={1}
          heads={["balls.where", "contact.q", "table.swings", "contact.middle", "contact.tenth", "contact.above"]}
        >
          {contact.map((one, index) => {
            const at = `/hitting/contact/${index}`;
            return (
              <tr key={at}>
                <th scope="row">
                  <Where where={one} />
                </th>
                <td class="n">
                  <Figure at={`${at}/q`} decimals={2} />
                </td>
                <td class="n">
                  <Figure at={`${at}/swings`} />
                </td>
                <td class="n">
                  <Figure at={`${at}/middle`} {...PERCENT} />
                </td>
                <td class="n">
                  <Figure at={`${at}/p90`} {...PERCENT} />
                </td>
                <td class="n">
                  <Figure at={`${at}/impossible`} />
                </td>
              </tr>
            );
          })}
        </Table>
      }
    >
      {contact.map((one, index) => {
        const at = `/hitting/contact/${index}`;
        if (one.implement !== "game") return null;
        return (
          <p key={at}>
            <Say
              k="balls.contact"
              with={{
                where: <Where where={one} />,
                middle: <Figure at={`${at}/middle`} {...PERCENT} />,
                swings: <Count k="count.swings" at={`${at}/swings`} />,
              }}
            />{" "}
            {one.impossible === 0 ? null : <Count k="balls.impossible" at={`${at}/impossible`} />}
          </p>
        );
      })}
    </Part>
  );
}

/** The trainer's own label of a zone, in the reader's language where there is one. */
export function Label({ of }: { readonly of: string | Readonly<Record<string, string>> }) {
  const { words } = useReading();
  return <span data-own>{typeof of === "string" ? of : (of[words.language] ?? Object.values(of)[0])}</span>;
}
