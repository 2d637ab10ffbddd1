import type { ComponentChildren } from "preact";
import type { AthleteReport } from "../../../report/schema.ts";
import type { FigureStyle } from "../../figures.ts";
import { useAthlete, useReading } from "../../reading.ts";
import type { MessageKey, Words } from "../../words.ts";
import { ChartFigure } from "../chart-figure.tsx";
import { Figure } from "../figure.tsx";
import { Gear, Named, plainGear, plainName } from "../names.tsx";
import { Say } from "../say.tsx";
import { Scroll } from "../section.tsx";

/** Charts of the hitting parts, by part. */
export const HITTING_CHARTS = [
  "carry",
  "rounds",
  "worth",
  "balls",
  "contact",
  "plane",
  "bats",
  "gate",
  "machine",
] as const;
export type HittingChart = (typeof HITTING_CHARTS)[number];
export const hittingChartId = (chart: HittingChart): string => `hitting-${chart}`;

/** A part of what carries over: heading and sentences; among all the numbers also its picture, and a table that folds out. */
export function Part(props: {
  readonly id: string;
  readonly head: MessageKey;
  readonly chart?: HittingChart;
  readonly caption?: MessageKey;
  readonly children: ComponentChildren;
  readonly table?: ComponentChildren;
}) {
  const { id, head, chart, caption, children, table } = props;
  const { words } = useReading();
  const deep = useAthlete().variant.part === "numbers";
  return (
    <article class="measure" aria-labelledby={`hitting-${id}`}>
      <h3 id={`hitting-${id}`}>
        <Say k={head} />
      </h3>
      {children}
      {chart === undefined || !deep ? null : (
        <ChartFigure id={hittingChartId(chart)} alt={words.text("hitting.chartAlt", { head: words.text(head) })}>
          {caption === undefined ? null : <Say k={caption} />}
        </ChartFigure>
      )}
      {table === undefined || !deep ? null : (
        <details>
          <summary>
            <Say k="hitting.figures" />
          </summary>
          <Scroll name={words.text("table.scroll", { name: words.text(head) })}>{table}</Scroll>
        </details>
      )}
    </article>
  );
}

/** A table with heads from the catalogue; the first `words` columns hold words, the others numbers. */
export function Table(props: {
  readonly heads: readonly MessageKey[];
  readonly words: number;
  readonly children: ComponentChildren;
}) {
  const { heads, children } = props;
  const { words } = useReading();
  return (
    <table>
      <thead>
        <tr>
          {heads.map((head, index) => (
            <th scope="col" key={head} {...(index < props.words ? {} : { class: "n" })}>
              {words.text(head)}
            </th>
          ))}
        </tr>
      </thead>
      <tbody>{children}</tbody>
    </table>
  );
}

/** "−5.3 to −4.5 mph" from an interval of the report; nothing where there is none. */
export function Range({
  at,
  of,
  style,
}: {
  readonly at: string;
  readonly of: readonly [number, number] | null;
  readonly style: FigureStyle;
}) {
  if (of === null) return null;
  return (
    <Say
      k="hitting.range"
      with={{ low: <Figure at={`${at}/0`} {...style} bare />, high: <Figure at={`${at}/1`} {...style} /> }}
    />
  );
}

/** "52 of 120 (43 %)". */
export function ShareOf({ at }: { readonly at: string }) {
  return (
    <Say
      k="hitting.share"
      with={{
        count: <Figure at={`${at}/count`} />,
        of: <Figure at={`${at}/of`} />,
        share: <Figure at={`${at}/share`} unit={null} decimals={0} share />,
      }}
    />
  );
}

interface WhereIs {
  readonly environment: string | null;
  readonly implement?: string | null;
  readonly side: string | null;
}

/** Environment, bat where it is not the game bat, and side where the hitter stands on both. */
export function Where({ where }: { readonly where: WhereIs }) {
  const { report } = useAthlete();
  const { environment, implement = null, side } = where;
  const parts = [
    environment === null ? null : <Named kind="environment" id={environment} />,
    implement === null || implement === "game" ? null : <Gear report={report} kind="implement" id={implement} />,
    side === null || report.athlete.bats !== "switch" ? null : <Named kind="side" id={side} />,
  ].filter((part) => part !== null);
  return (
    <span class="dots">
      {parts.map((part) => (
        <span>{part}</span>
      ))}
    </span>
  );
}

/** The same as plain text, for a chart's label. */
export function plainWhere(
  report: AthleteReport,
  words: Words,
  { environment, implement = null, side }: WhereIs,
): string {
  return [
    environment === null ? null : plainName(words, "environment", environment),
    implement === null || implement === "game" ? null : plainGear(report, words, "implement", implement),
    side === null || report.athlete.bats !== "switch" ? null : plainName(words, "side", side),
  ]
    .filter((part) => part !== null)
    .join(", ");
}

/** Speed bands of pitches: "70 to 75 mph". */
export function Band({ at, of }: { readonly at: string; readonly of: readonly [number, number] | null }) {
  return <Range at={at} of={of} style={{ unit: "mph", decimals: 0 }} />;
}
