import { useAthlete, useReading } from "../reading.ts";
import { Day } from "./day.tsx";
import { Figure } from "./figure.tsx";
import { Named } from "./names.tsx";
import { Say } from "./say.tsx";
import { Section } from "./section.tsx";

/** Height through the season and the game bats: both move a swing, so they stand beside it. A minor's body mass is nobody's business here. */
export function Growth() {
  const { words } = useReading();
  const { report, variant } = useAthlete();
  const { athlete } = report;
  const masses = athlete.minor ? [] : athlete.masses;
  if (athlete.heights.length + masses.length + athlete.gameBats.length === 0) return null;
  return (
    <Section id="growth" head="growth.head">
      <dl class="pairs">
        {athlete.heights.length === 0 ? null : <dt>{words.text("growth.height")}</dt>}
        {athlete.heights.map(({ date }, index) => (
          <dd key={date}>
            <Figure at={`/athlete/heights/${index}/in`} unit="in" decimals={1} />{" "}
            <small>
              <Day at={`/athlete/heights/${index}/date`} />
            </small>
          </dd>
        ))}
        {masses.length === 0 ? null : <dt>{words.text("growth.mass")}</dt>}
        {masses.map(({ date }, index) => (
          <dd key={date}>
            <Figure at={`/athlete/masses/${index}/lb`} unit="lb" />{" "}
            <small>
              <Day at={`/athlete/masses/${index}/date`} />
            </small>
          </dd>
        ))}
        {athlete.gameBats.length === 0 ? null : <dt>{words.text("growth.bats")}</dt>}
        {athlete.gameBats.map((bat, index) => (
          <dd key={`${bat.id}-${bat.from}`}>
            <BatLine bat={bat} at={`/athlete/gameBats/${index}`} />
            {bat.from === null ? null : (
              <>
                {" "}
                <small>
                  <Say k="growth.from" with={{ day: <Day at={`/athlete/gameBats/${index}/from`} /> }} />
                </small>
              </>
            )}
          </dd>
        ))}
      </dl>
      {variant.part === "numbers" ? <PeersGain /> : null}
      <p class="aside">
        <Say k="growth.note" /> {athlete.growing === true ? <Say k="growth.growing" /> : null}
      </p>
    </Section>
  );
}

/** What others gain while growing as much older: so that growing is not sold as training. */
function PeersGain() {
  const gains = useAthlete().report.hitting.growth?.peers ?? [];
  const told = gains.map((gain, index) => ({ gain, at: `/hitting/growth/peers/${index}` }));
  return (
    <ul>
      {told.map(({ gain, at }) =>
        gain.change === null ? null : (
          <li key={at}>
            <Say
              k="growth.peers"
              with={{
                metric: (
                  <>
                    <Named kind="metric" id={gain.metric} /> (
                    {gain.condition.environment === undefined ? null : (
                      <Named kind="environment" id={gain.condition.environment} />
                    )}
                    )
                  </>
                ),
                gain: <Figure at={`${at}/peersGain`} unit={gain.unit} decimals={gain.decimals} signed />,
                change: <Figure at={`${at}/change`} unit={gain.unit} decimals={gain.decimals} signed />,
              }}
            />
          </li>
        ),
      )}
    </ul>
  );
}

export interface BatLineProps {
  readonly bat: {
    readonly id: string;
    readonly label: string | null;
    readonly lengthIn: number | null;
    readonly weightOz: number | null;
  };
  readonly at: string;
}

/** A bat by its label, with length and weight where they are known. */
export function BatLine({ bat, at }: BatLineProps) {
  return (
    <span class="dots">
      {bat.label === null ? (
        <span>
          <Named kind="implement" id={bat.id} />
        </span>
      ) : (
        <span data-own>{bat.label}</span>
      )}
      {bat.lengthIn === null ? null : (
        <span>
          <Figure at={`${at}/lengthIn`} unit="in" decimals={Number.isInteger(bat.lengthIn) ? 0 : 1} />
        </span>
      )}
      {bat.weightOz === null ? null : (
        <span>
          <Figure at={`${at}/weightOz`} unit="oz" decimals={Number.isInteger(bat.weightOz) ? 0 : 1} />
        </span>
      )}
    </span>
  );
}
