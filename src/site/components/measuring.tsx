import type { ComponentChildren } from "preact";
import { useAthlete, useReading } from "../reading.ts";
import type { MessageKey } from "../words.ts";
import { Day } from "./day.tsx";
import { Figure } from "./figure.tsx";
import { BatLine } from "./growth.tsx";
import { Named } from "./names.tsx";
import { Count, Say } from "./say.tsx";

/** The measuring record: with what, off what, at what speed and where the counted swings were measured. */
export function Measuring() {
  const { measuring } = useAthlete().report;
  const empty = Object.values(measuring).every((list) => list.length === 0);
  if (empty) {
    return (
      <p>
        <Say k="how.nothing" />
      </p>
    );
  }
  return (
    <dl class="pairs record">
      <Devices />
      <List
        head="how.bats"
        items={measuring.bats.map((bat, index) => (
          <>
            <BatLine bat={bat} at={`/measuring/bats/${index}`} />
            {bat.role === null ? null : (
              <>
                , <Named kind="role" id={bat.role} />
              </>
            )}
            <Swings at={`/measuring/bats/${index}`} />
          </>
        ))}
      />
      <List
        head="how.balls"
        items={measuring.balls.map((ball, index) => (
          <>
            <span data-own>{ball.label ?? ball.id}</span>
            <Swings at={`/measuring/balls/${index}`} />
          </>
        ))}
      />
      <PitchSpeeds />
      <List
        head="how.places"
        items={measuring.places.map(({ place }, index) => (
          <>
            <Named kind="place" id={place} />
            <Swings at={`/measuring/places/${index}`} />
          </>
        ))}
      />
    </dl>
  );
}

function List({ head, items }: { readonly head: MessageKey; readonly items: readonly ComponentChildren[] }) {
  const { words } = useReading();
  if (items.length === 0) return null;
  return (
    <>
      <dt>{words.text(head)}</dt>
      {items.map((item) => (
        <dd>{item}</dd>
      ))}
    </>
  );
}

function Swings({ at }: { readonly at: string }) {
  return (
    <>
      {" "}
      <small>
        <Count k="count.swings" at={`${at}/swings`} />
      </small>
    </>
  );
}

function Devices() {
  const { words } = useReading();
  const { devices } = useAthlete().report.measuring;
  return (
    <List
      head="how.devices"
      items={devices.map((device, index) => {
        const at = `/measuring/devices/${index}`;
        return (
          <>
            <span class="dots">
              <span data-own>{device.id}</span>
              {device.kind === null ? null : (
                <span>
                  <Named kind="device" id={device.kind} />
                </span>
              )}
              {device.pointOnBat === null ? null : (
                <span>
                  <Say k="how.pointOnBat" with={{ point: <Named kind="point" id={device.pointOnBat} /> }} />
                </span>
              )}
              {device.from === null && device.to === null ? null : (
                <span>
                  <Use at={at} from={device.from} to={device.to} />
                </span>
              )}
            </span>
            {device.swings === 0 ? ` ${words.text("how.unused")}` : <Swings at={at} />}
          </>
        );
      })}
    />
  );
}

function Use({ at, from, to }: { readonly at: string; readonly from: string | null; readonly to: string | null }) {
  if (from === null) return <Say k="how.until" with={{ to: <Day at={`${at}/to`} form="short" /> }} />;
  if (to === null) return <Say k="growth.from" with={{ day: <Day at={`${at}/from`} form="short" /> }} />;
  return (
    <Say
      k="how.fromTo"
      with={{ from: <Day at={`${at}/from`} form="short" />, to: <Day at={`${at}/to`} form="short" /> }}
    />
  );
}

function PitchSpeeds() {
  const { pitchSpeeds } = useAthlete().report.measuring;
  return (
    <List
      head="how.pitches"
      items={pitchSpeeds.map((pitch, index) => {
        const at = `/measuring/pitchSpeeds/${index}`;
        return (
          <>
            <span class="dots">
              <span>
                <Named kind="environment" id={pitch.environment} />
              </span>
              <span>
                <Say
                  k="how.pitch"
                  with={{
                    low: <Figure at={`${at}/pitchSpeed/0`} unit="mph" bare />,
                    high: <Figure at={`${at}/pitchSpeed/1`} unit="mph" />,
                  }}
                />
              </span>
              {pitch.at === null ? null : (
                <span>
                  <Named kind="how.at" id={pitch.at} />
                </span>
              )}
              {pitch.distanceFt === null ? null : (
                <span>
                  <Say k="how.distance" with={{ distance: <Figure at={`${at}/distanceFt`} unit="ft" /> }} />
                </span>
              )}
            </span>
            <Swings at={at} />
          </>
        );
      })}
    />
  );
}
