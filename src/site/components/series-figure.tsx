import type { Series } from "../../report/schema.ts";
import { readNumber, readPointer } from "../pointer.ts";
import { useReading } from "../reading.ts";
import { Figure } from "./figure.tsx";

export interface SeriesFigureProps {
  /** Pointer to the series, or to a goal, whose unit and decimals the figure has. */
  readonly of: string;
  /** Pointer from there on, without its first slash: `change/estimate`. */
  readonly at: string;
  readonly signed?: boolean;
  readonly bare?: boolean;
  /** Decimals beyond those of the metric, for a slope per week. */
  readonly finer?: number;
  /** A number that a person set: whole ones are shown whole. */
  readonly asWritten?: boolean;
}

/** A figure in the unit and with the decimals of its series. */
export function SeriesFigure(props: SeriesFigureProps) {
  const { of, at, signed = false, bare = false, finer = 0, asWritten = false } = props;
  const { source } = useReading();
  const { unit, decimals } = readPointer(source, of) as Pick<Series, "unit" | "decimals">;
  const whole = asWritten && Number.isInteger(readNumber(source, `${of}/${at}`));
  return <Figure at={`${of}/${at}`} unit={unit} decimals={whole ? 0 : decimals + finer} signed={signed} bare={bare} />;
}
