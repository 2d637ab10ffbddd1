import type { ComponentChild } from "preact";
import { readNumber } from "../pointer.ts";
import { useReading } from "../reading.ts";
import type { MessageKey } from "../words.ts";
import { Figure } from "./figure.tsx";

export interface SayProps {
  readonly k: MessageKey;
  /** What fills the gaps of the sentence. */
  readonly with?: Readonly<Record<string, ComponentChild>>;
}

/** A sentence of the catalogue. */
export function Say({ k, with: values = {} }: SayProps) {
  const { words } = useReading();
  return <>{words.rich(k, values)}</>;
}

export interface CountProps {
  /** A sentence with `{n, plural, …}` that prints the number as `{figure}`. */
  readonly k: MessageKey;
  readonly at: string;
  readonly with?: Readonly<Record<string, ComponentChild>>;
}

/** A counted thing with the right plural: "1 swing", "12 swings". */
export function Count({ k, at, with: values = {} }: CountProps) {
  const { source } = useReading();
  return <Say k={k} with={{ ...values, n: readNumber(source, at), figure: <Figure at={at} /> }} />;
}
