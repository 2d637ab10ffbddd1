import type { ComponentChild } from "preact";
import type { AthleteReport, Condition as ConditionOf } from "../../report/schema.ts";
import { readPointer } from "../pointer.ts";
import { plainFigure, type Reading, useReading } from "../reading.ts";
import { Figure } from "./figure.tsx";
import { Gear, Named, plainGear, plainName } from "./names.tsx";
import { Say } from "./say.tsx";

/** Keys whose values are words, with the kind of word, in the order they are said. */
const WORDS = [
  ["swing", "swing"],
  ["environment", "environment"],
  ["implement", "implement"],
  ["ball", "ball"],
  ["side", "side"],
  ["purpose", "purpose"],
  ["place", "place"],
  ["load", "load"],
  ["protocol", "protocol"],
] as const;

/** Values that go without saying: nearly all swings are training at the facility. */
const SILENT: Readonly<Partial<Record<string, string>>> = { purpose: "training", place: "facility" };

const said = (condition: ConditionOf) =>
  WORDS.flatMap(([key, kind]) => {
    const id = condition[key];
    return id === undefined || SILENT[key] === id ? [] : [{ kind, id }];
  });

/** How the swings of a series or goal were made: "Machine · Alloy 33 · left side". */
export function Condition({ of, report }: { readonly of: string; readonly report: AthleteReport }) {
  const { source } = useReading();
  const condition = readPointer(source, `${of}/condition`) as ConditionOf;
  const parts: ComponentChild[] = said(condition).map(({ kind, id }) =>
    kind === "implement" || kind === "ball" ? (
      <Gear report={report} kind={kind} id={id} />
    ) : (
      <Named kind={kind} id={id} />
    ),
  );
  if (condition.pitchSpeed !== undefined) parts.push(<PitchSpeed at={`${of}/condition/pitchSpeed`} />);
  if (parts.length === 0) return <Say k="condition.any" />;
  return (
    <span class="dots">
      {parts.map((part) => (
        <span>{part}</span>
      ))}
    </span>
  );
}

function PitchSpeed({ at }: { readonly at: string }) {
  const low = <Figure at={`${at}/0`} unit="mph" bare />;
  return <Say k="condition.pitch" with={{ low, high: <Figure at={`${at}/1`} unit="mph" /> }} />;
}

/** The same as plain text, for a text alternative or a chart's label. */
export function plainCondition(reading: Reading, report: AthleteReport, of: string): string {
  const { words } = reading;
  const condition = readPointer(reading.source, `${of}/condition`) as ConditionOf;
  const parts = said(condition).map(({ kind, id }) =>
    kind === "implement" || kind === "ball" ? plainGear(report, words, kind, id) : plainName(words, kind, id),
  );
  if (condition.pitchSpeed !== undefined) {
    const style = { unit: "mph", decimals: 0 };
    parts.push(
      words.text("condition.pitch", {
        low: plainFigure(reading, `${of}/condition/pitchSpeed/0`, style, true),
        high: plainFigure(reading, `${of}/condition/pitchSpeed/1`, style),
      }),
    );
  }
  return parts.length === 0 ? words.text("condition.any") : parts.join(", ");
}
