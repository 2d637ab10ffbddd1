import type { AthleteReport } from "../../report/schema.ts";
import { useAthlete, useReading } from "../reading.ts";
import { CoachText } from "./coach-text.tsx";
import { Day } from "./day.tsx";
import { Named } from "./names.tsx";
import { Say } from "./say.tsx";
import { Section } from "./section.tsx";

type NoteReport = AthleteReport["notes"][number];

interface PlacedNote {
  readonly note: NoteReport;
  readonly at: string;
}

/** Notes this page's reader may see, in order of date. A note without the reader stays away even if the report still holds it. */
function useNotes(mine: (note: NoteReport) => boolean): PlacedNote[] {
  const { report, reader } = useAthlete();
  return report.notes
    .map((note, index) => ({ note, at: `/notes/${index}` }))
    .filter(({ note }) => note.readers.includes(reader) && mine(note))
    .sort((a, b) => (a.note.date < b.note.date ? -1 : a.note.date > b.note.date ? 1 : 0));
}

/** Staff whom facility.md does not list, or gives no role, have none here either: the name tells them apart. */
const isHitters = (note: NoteReport, hitter: string) =>
  note.role === null && note.kind === "words" && note.author === hitter;

/** Did the staff write it? */
export const isStaffs = (note: NoteReport, hitter: string): boolean => !isHitters(note, hitter);

/** What the staff wrote down through the winter. */
export function Notes() {
  const { displayName } = useAthlete().report.athlete;
  const notes = useNotes((note) => isStaffs(note, displayName));
  if (notes.length === 0) return null;
  return (
    <Section id="notes" head="notes.head">
      <ol class="notes">
        {notes.map((placed) => (
          <li key={placed.at}>
            <Note placed={placed} />
          </li>
        ))}
      </ol>
    </Section>
  );
}

/** The athlete's own words have a place of their own. */
export function OwnWords() {
  const { report } = useAthlete();
  const notes = useNotes((note) => isHitters(note, report.athlete.displayName));
  if (notes.length === 0) return null;
  return (
    <Section id="own-words" head="words.head">
      <ol class="notes own">
        {notes.map(({ note, at }) => (
          <li key={at}>
            <p class="when">
              <Day at={`${at}/date`} />
            </p>
            <blockquote>
              <CoachText body={note.body} under={2} images={note.images} />
            </blockquote>
            <p class="by" data-own>
              {report.athlete.displayName}
            </p>
          </li>
        ))}
      </ol>
    </Section>
  );
}

function Note({ placed }: { readonly placed: PlacedNote }) {
  const { note, at } = placed;
  return (
    <>
      <p class="when">
        <Day at={`${at}/date`} />{" "}
        <span class="kind">
          <Named kind="notes.kind" id={note.kind} />
        </span>
      </p>
      <CoachText body={note.body} under={2} images={note.images} />
      <p class="by">
        <Author author={note.author} role={note.role} />
        <About about={note.about} />
      </p>
    </>
  );
}

export function Author({ author, role }: { readonly author: string; readonly role: string | null }) {
  const name = <span data-own>{author}</span>;
  return role === null ? name : <Say k="notes.byRole" with={{ author: name, role: <span data-own>{role}</span> }} />;
}

/** Metrics are named in the reader's language; drills and priorities by the trainer's own words. */
function About({ about }: { readonly about: readonly string[] }) {
  const { words } = useReading();
  const { report } = useAthlete();
  if (about.length === 0) return null;
  const things = about.map((id, index) => {
    const priority = report.assessment?.priorities.find((candidate) => candidate.id === id);
    return (
      <span key={id}>
        {index === 0 ? "" : ", "}
        {words.has(`metric.${id}`) ? (
          <Named kind="metric" id={id} />
        ) : (
          <span data-own>{priority?.text ?? id.replaceAll(/[-_]/g, " ")}</span>
        )}
      </span>
    );
  });
  return (
    <span class="about">
      <Say k="notes.about" with={{ things: <>{things}</> }} />
    </span>
  );
}
