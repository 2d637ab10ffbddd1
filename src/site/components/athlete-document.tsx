import type { ComponentChildren } from "preact";
import { useAthlete, useReading } from "../reading.ts";
import { wayUp } from "../variants.ts";
import type { MessageKey } from "../words.ts";
import { Document } from "./document.tsx";

/** The shell of an athlete's page, wherever below its link it lies. */
export function AthleteDocument(props: {
  /** Its title, of the athlete's name and the season. */
  readonly title: MessageKey;
  readonly kind: "family" | "club" | "card" | "card interim";
  readonly children: ComponentChildren;
}) {
  const { words } = useReading();
  const { report, assets, variant } = useAthlete();
  const { athlete, facility } = report;
  return (
    <Document
      title={words.text(props.title, { name: athlete.displayName, season: facility.season })}
      words={words}
      assets={assets}
      root={`../../${wayUp(variant)}`}
      kind={props.kind}
      notice={facility.notice}
      {...(props.kind === "family" && variant.part === "report" ? { script: assets.days } : {})}
    >
      {props.children}
    </Document>
  );
}
