import { render } from "preact-render-to-string";
import { renderMarkdown } from "../markdown.ts";
import { AthleteContext, ReadingContext, useAthlete, useReading } from "../reading.ts";
import { Living } from "./living.tsx";

export interface CoachTextProps {
  /** Markdown as the trainer or the athlete wrote it. */
  readonly body: string;
  /** Level of the heading above. */
  readonly under: number;
  /** Language of the text where it is said; else it is the one in which the facility writes. */
  readonly language?: string | null;
  /** Picture name -> path of the file in the season folder. */
  readonly images?: Readonly<Record<string, string>>;
}

/** Text of a person, set apart from the report's own words. Safe because the renderer has raw HTML off. */
export function CoachText({ body, under, language, images = {} }: CoachTextProps) {
  const reading = useReading();
  const { words } = reading;
  const page = useAthlete();
  const written = language ?? page.writtenIn;
  const image = (name: string) => {
    const path = Object.hasOwn(images, name) ? images[name] : undefined;
    return (path === undefined ? undefined : page.images.get(path)) ?? null;
  };
  const reference = (text: string) => {
    const found = page.report.references.find((one) => one.text === text);
    if (found === undefined) return null;
    // Figures inside a text are components too, so that they are checked and shown like all others.
    return render(
      <ReadingContext.Provider value={reading}>
        <AthleteContext.Provider value={page}>
          <Living reference={found} />
        </AthleteContext.Provider>
      </ReadingContext.Provider>,
    );
  };
  // A link may lead to film of the athlete: nobody can tell from its address.
  const links = page.report.recipients[page.recipient]?.film ?? false;
  return (
    <div
      class="voice"
      data-coach
      lang={written === words.language ? undefined : written}
      dangerouslySetInnerHTML={{ __html: renderMarkdown(body, { under, image, reference, links }) }}
    />
  );
}
