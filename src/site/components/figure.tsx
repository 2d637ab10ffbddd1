import { type FigureStyle, formatFigure } from "../figures.ts";
import { readNumber } from "../pointer.ts";
import { unitText, useReading } from "../reading.ts";

export interface FigureProps extends Partial<FigureStyle> {
  /** JSON pointer to a finite number. */
  readonly at: string;
  /** Leaves the unit off, for a table whose head names it. */
  readonly bare?: boolean;
}

/**
 * A number of the report. No page prints a number in another way, so every one can be held against the report.
 *
 * @throws when the pointer does not lead to a finite number
 */
export function Figure(props: FigureProps) {
  const { at, unit = null, decimals = 0, signed = false, share = false, bare = false, least, per, percentile } = props;
  const { source, words, units } = useReading();
  const value = readNumber(source, at);
  const shown = formatFigure(
    value,
    {
      unit,
      decimals,
      signed,
      share,
      ...(least === undefined ? {} : { least }),
      ...(per === undefined ? {} : { per }),
      ...(percentile === undefined ? {} : { percentile }),
    },
    words.language,
    units,
  );
  return (
    <>
      <data value={String(value)} data-at={at} data-per={per}>
        {shown.text}
      </data>
      {shown.unit === null || bare ? null : <Unit name={shown.unit} />}
    </>
  );
}

function Unit({ name }: { readonly name: string }) {
  const { words } = useReading();
  const known = name === "deg" || words.has(`unit.${name}`);
  return known ? unitText(words, name) : <span data-own>{unitText(words, name)}</span>;
}
