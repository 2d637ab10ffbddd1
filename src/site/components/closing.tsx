import { useAthlete, useReading } from "../reading.ts";
import { wordsFor } from "../words.ts";
import { CoachText } from "./coach-text.tsx";
import { Day } from "./day.tsx";
import { Author } from "./notes.tsx";
import { Section } from "./section.tsx";

/** The coach's closing message in the reader's language, else in the one it was written in. */
export function Closing() {
  const { words } = useReading();
  const { report, reader } = useAthlete();
  const mine = report.closings
    .map((closing, index) => ({ closing, at: `/closings/${index}` }))
    .filter(({ closing }) => closing.readers.includes(reader));
  // An athlete whose language has no catalogue reads English pages, and still the message in that language.
  const own = wordsFor(report.athlete.language).language === words.language;
  const wanted = own ? report.athlete.language : words.language;
  const chosen =
    mine.find(({ closing }) => closing.language === wanted) ??
    mine.find(({ closing }) => closing.language === null) ??
    mine.find(({ closing }) => closing.language === words.language) ??
    mine[0];
  if (chosen === undefined) return null;
  const { closing, at } = chosen;
  return (
    <Section id="closing" head="closing.head">
      <div class="letter">
        <CoachText body={closing.body} under={2} language={closing.language} />
        <p class="by">
          {closing.by === null ? null : <Author author={closing.by} role={closing.role} />}
          {closing.date === null ? null : (
            <span class="about">
              <Day at={`${at}/date`} />
            </span>
          )}
        </p>
      </div>
    </Section>
  );
}
