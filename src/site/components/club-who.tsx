import type { ComponentChildren } from "preact";
import { useAthlete, useReading } from "../reading.ts";
import { Day } from "./day.tsx";
import { Figure } from "./figure.tsx";
import { BatLine } from "./growth.tsx";
import { Named } from "./names.tsx";

/** Who the hitter is, as far as a club needs it. Height and mass are given for adults only. */
export function ClubWho() {
  const { words } = useReading();
  const { athlete } = useAthlete().report;
  const heights = athlete.minor ? 0 : athlete.heights.length;
  const masses = athlete.minor ? 0 : athlete.masses.length;
  const bat = athlete.gameBats.at(-1);
  return (
    <dl class="cells">
      {athlete.age === null ? null : (
        <Cell head={words.text("club.age")}>
          <Figure at="/athlete/age" />
        </Cell>
      )}
      {athlete.sport === null ? null : (
        <Cell head={words.text("club.sport")}>
          <Named kind="sport" id={athlete.sport} />
          {athlete.level === null ? null : (
            <>
              , <Named kind="level" id={athlete.level} />
            </>
          )}
        </Cell>
      )}
      {athlete.bats === null ? null : (
        <Cell head={words.text("club.bats")}>
          <Named kind="hand" id={athlete.bats} />
        </Cell>
      )}
      {athlete.throws === null ? null : (
        <Cell head={words.text("club.throws")}>
          <Named kind="hand" id={athlete.throws} />
        </Cell>
      )}
      {athlete.positions.length === 0 ? null : (
        <Cell head={words.text("club.positions")}>
          {athlete.positions.map((position, index) => (
            <span key={position}>
              {index === 0 ? "" : ", "}
              <Named kind="position" id={position} />
            </span>
          ))}
        </Cell>
      )}
      {bat === undefined ? null : (
        <Cell head={words.text("growth.bats")}>
          <BatLine bat={bat} at={`/athlete/gameBats/${athlete.gameBats.length - 1}`} />
        </Cell>
      )}
      {heights === 0 ? null : (
        <Cell head={words.text("club.height")}>
          <Figure at={`/athlete/heights/${heights - 1}/in`} unit="in" decimals={1} />{" "}
          <small>
            <Day at={`/athlete/heights/${heights - 1}/date`} form="short" />
          </small>
        </Cell>
      )}
      {masses === 0 ? null : (
        <Cell head={words.text("club.mass")}>
          <Figure at={`/athlete/masses/${masses - 1}/lb`} unit="lb" />{" "}
          <small>
            <Day at={`/athlete/masses/${masses - 1}/date`} form="short" />
          </small>
        </Cell>
      )}
    </dl>
  );
}

function Cell({ head, children }: { readonly head: string; readonly children: ComponentChildren }) {
  return (
    <div>
      <dt>{head}</dt>
      <dd>{children}</dd>
    </div>
  );
}
