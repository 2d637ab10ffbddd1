import type { Facility } from "../schema/facility.ts";
import type { Drill } from "../schema/pages.ts";
import type { AthleteSeason } from "../schema/season.ts";
import { heldClosing, heldNote } from "./held.ts";
import type { AthleteReport, Series } from "./schema.ts";

/** Name and role of a staff member by id; an id that is not on the staff list stands for itself. */
function staff(facility: Facility, id: string | undefined): { name: string | null; role: string | null } {
  const found = facility.staff?.find((one) => one.id === id);
  return { name: found?.name ?? id ?? null, role: found?.role ?? null };
}

/** The measures that a change of plan is about: by a metric, a priority, or a drill of a priority. */
function measuresAbout(about: readonly string[], athlete: AthleteSeason, series: readonly Series[]): number[] {
  const priorities = athlete.assessment?.front.priorities ?? [];
  const metrics = new Set([
    ...about,
    ...priorities.flatMap(({ id, drills = [], measures = [] }) =>
      about.some((topic) => topic === id || drills.includes(topic)) ? measures : [],
    ),
  ]);
  return series.flatMap(({ metric, measure }, index) => (measure !== null && metrics.has(metric) ? [index] : []));
}

/** Notes in order of date, then of file. */
export function notesOf(
  athlete: AthleteSeason,
  facility: Facility,
  displayName: string,
  series: readonly Series[],
  minor: boolean,
): AthleteReport["notes"] {
  const order = (a: AthleteSeason["notes"][number], b: AthleteSeason["notes"][number]) =>
    a.front.date === b.front.date ? (a.file < b.file ? -1 : 1) : a.front.date < b.front.date ? -1 : 1;
  return [...athlete.notes].sort(order).map((page) => {
    const { front, body, images } = page;
    const own = front.author === "athlete";
    const { name, role } = staff(facility, front.author);
    return {
      date: front.date,
      author: own ? displayName : (name ?? front.author),
      role: own ? null : role,
      kind: own ? "words" : (front.kind ?? "observation"),
      about: front.about ?? [],
      readers: front.readers ?? [],
      held: heldNote(page, facility, minor),
      body,
      images: { ...images },
      series: front.kind === "plan-change" ? measuresAbout(front.about ?? [], athlete, series) : [],
    };
  });
}

/** The closing message in each language it is written in, the one without a language mark first. */
export function closingsOf(athlete: AthleteSeason, facility: Facility, minor: boolean): AthleteReport["closings"] {
  return [...athlete.closings]
    .sort((a, b) => ((a.language ?? "") < (b.language ?? "") ? -1 : 1))
    .map((page) => {
      const { front, body, language } = page;
      const { name, role } = staff(facility, front.by);
      const held = heldClosing(page, facility, minor);
      return { language, date: front.date ?? null, by: name, role, readers: front.readers ?? ["family"], held, body };
    });
}

/** What was seen at the start, and what became of it. */
export function assessmentOf(
  athlete: AthleteSeason,
  facility: Facility,
  priorities: NonNullable<AthleteReport["assessment"]>["priorities"],
): AthleteReport["assessment"] {
  if (!athlete.assessment) return null;
  const { front, body } = athlete.assessment;
  return { date: front.date, by: staff(facility, front.by).name, body, priorities };
}

/** The program card, each item with the drill library's words where its own are missing. */
export function programOf(
  athlete: AthleteSeason,
  facility: Facility,
  drills: readonly Drill[],
): AthleteReport["program"] {
  if (!athlete.plan) return null;
  const { front, body } = athlete.plan;
  const items = (front.items ?? []).map((item) => {
    const drill = drills.find((one) => one.id === item.drill);
    return {
      drill: item.drill,
      label: drill?.label ?? item.drill,
      purpose: item.purpose,
      implement: item.implement ?? null,
      sets: item.sets,
      reps: item.reps,
      restS: item.rest_s ?? null,
      cue: item.cue ?? drill?.cue ?? null,
      goodRep: drill?.good_rep ?? null,
      caution: item.caution ?? drill?.caution ?? null,
      daysPerWeek: item.days_per_week ?? null,
      where: item.where ?? null,
    };
  });
  return {
    date: front.date ?? null,
    by: staff(facility, front.by).name,
    warmUp: front.warm_up ?? null,
    ownCue: front.own_cue ?? null,
    body,
    items,
  };
}
