import type { Series } from "../../report/schema.ts";
import { useReading } from "../reading.ts";
import { Figure } from "./figure.tsx";
import { Count, Say } from "./say.tsx";
import { SeriesFigure } from "./series-figure.tsx";
import { type Placed, sessionWord } from "./series-parts.ts";

/** What kind of answer a sentence is: its mark and its quiet style, never its colour alone. */
export type Answer = "better" | "worse" | "same" | "open" | "none";

const MARKS: Readonly<Record<Answer, string>> = { better: "+", worse: "−", same: "=", open: "?", none: "·" };

export function answerOf(id: string): Answer {
  if (id.includes("improvement")) return "better";
  if (id.includes("decline")) return "worse";
  if (id.endsWith("same")) return "same";
  return id.includes("cannot-tell") ? "open" : "none";
}

/** A verdict's mark: a sign in a ring, said by the sentence beside it or, where there is none, by `says`. */
export function Mark({ of, says }: { readonly of: Answer; readonly says?: string }) {
  const spoken =
    says === undefined ? { "aria-hidden": "true" as const } : { role: "img" as const, "aria-label": says, title: says };
  return (
    <span class={`mark ${of}`} {...spoken}>
      {MARKS[of]}
    </span>
  );
}

/** The sentence of a measure. Its numbers are the report's own, those of the sentence. */
export function Sentence({ placed }: { readonly placed: Placed }) {
  const { series, at } = placed;
  if (series.says === null) return null;
  const { id, args } = series.says;
  const figure = (name: string, signed = false) =>
    name in args ? <SeriesFigure of={at} at={`says/args/${name}`} signed={signed} /> : null;
  const bare = (name: string, signed = false) =>
    name in args ? <SeriesFigure of={at} at={`says/args/${name}`} signed={signed} bare /> : null;
  return (
    <Say
      k={`says.${id}`}
      with={{
        least: id.includes("clear") ? figure("least") : bare("least"),
        most: figure("most"),
        low: bare("low", true),
        high: figure("high", true),
        worth: figure("worth"),
        noise: figure("noise"),
        start: figure("outsideStart"),
        end: figure("outsideEnd"),
        from: series.window === null ? null : <SeriesFigure of={at} at="window/0" bare asWritten />,
        to: series.window === null ? null : <SeriesFigure of={at} at="window/1" asWritten />,
        days: "sessions" in args ? <Count k={sessionWord(series)} at={`${at}/says/args/sessions`} /> : null,
        needed: "needed" in args ? <Figure at={`${at}/says/args/needed`} /> : null,
      }}
    />
  );
}

/** A measure's verdict with its mark. */
export function Verdict({ placed }: { readonly placed: Placed }) {
  const { series } = placed;
  if (series.says === null) return null;
  const answer = answerOf(series.says.id);
  return (
    <p class={`verdict ${answer}`}>
      <Mark of={answer} />
      <span>
        <Sentence placed={placed} />
        {series.change?.method === "test-windows" || series.change?.method === "two-tests" ? (
          <>
            {" "}
            <Say k="says.byTests" />
          </>
        ) : null}
      </span>
    </p>
  );
}

/** Notes that a page says aloud; the others stand in the sentences already. */
const ALOUD = ["few-sessions", "short-span", "no-second-look", "worth-below-noise", "absence-inside"] as const;

/** What a reader should know beside a verdict: few days, much noise, what matters and who says so. */
export function BesideVerdict({ placed }: { readonly placed: Placed }) {
  const { series, at } = placed;
  const { words } = useReading();
  const notes = ALOUD.filter((note) => (series.notes as readonly string[]).includes(note));
  if (notes.length === 0 && series.worth === null) return null;
  return (
    <p class="aside">
      {series.worth === null ? null : <Worth series={series} at={at} />}{" "}
      {notes.map((note) => words.text(`note.${note}`)).join(" ")}
    </p>
  );
}

function Worth({ series, at }: { readonly series: Series; readonly at: string }) {
  if (series.worth === null) return null;
  const { source, athletes } = series.worth;
  return (
    <Say
      k={`worth.${source}`}
      with={{
        worth: <SeriesFigure of={at} at="worth/value" />,
        athletes: athletes === null ? null : <Figure at={`${at}/worth/athletes`} />,
      }}
    />
  );
}
