import type { AthleteSeason, Season } from "../schema/season.ts";
import { DAY_MS, dayOf, isoDay } from "./calendar.ts";
import type { AthleteReport } from "./schema.ts";
import { unmeasuredBlocks, workingRows } from "./work.ts";

type Interim = NonNullable<AthleteReport["interim"]>;

/** Days that the short look back takes in, the last one included. */
const LOOK_BACK_DAYS = 28;

/** As groups and profiles name the days of a week, from Sunday as calendars of computers count. */
const WEEKDAYS = ["sun", "mon", "tue", "wed", "thu", "fri", "sat"] as const;

const within = (date: string, { from, to }: { readonly from: string; readonly to: string }): boolean =>
  date >= from && date <= to;

/**
 * Days on which the athlete was to come: the weekdays of the profile, else of the athlete's groups, from the first day of the season or in the facility to
 * `asOf`, without days on which it was closed. Null where nobody has written down weekdays.
 */
function plannedDays(facility: Season["facility"], { id, profile }: AthleteSeason, asOf: string): string[] | null {
  const ofGroups = (facility.groups ?? []).flatMap(({ members, days }) => (members.includes(id) ? (days ?? []) : []));
  const weekdays = new Set<string>(profile.days ?? ofGroups);
  if (weekdays.size === 0) return null;
  const { start, end } = facility.season;
  const first = profile.joined !== undefined && profile.joined > start ? profile.joined : start;
  const last = asOf < end ? asOf : end;
  const days: string[] = [];
  for (let day = dayOf(first); day <= dayOf(last); day += DAY_MS) {
    const date = isoDay(day);
    const closed = (facility.closed ?? []).some((period) => within(date, period));
    if (!closed && weekdays.has(WEEKDAYS[new Date(day).getUTCDay()]!)) days.push(date);
  }
  return days;
}

/** How the season stands on the day `asOf`, while it lasts: who came, the work so far and of late, the phase, the next test day. */
export function interimOf(athlete: AthleteSeason, facility: Season["facility"], asOf: string): Interim {
  const { reps, log } = athlete;
  const { start, end, phases = [], test_days: testDays = [] } = facility.season;
  const until = asOf < end ? asOf : end;
  const inside = (from: string) => (date: string) => date >= from && date <= until;
  const swung = workingRows(reps, { start, end: until }).map((row) => reps.date[row]!);
  const logged = unmeasuredBlocks(log, reps).filter(({ date }) => inside(start)(date));
  const work = (from: string) => {
    const [measured, blocks] = [swung.filter(inside(from)), logged.filter(({ date }) => inside(from)(date))];
    return {
      days: new Set([...measured, ...blocks.map(({ date }) => date)]).size,
      swings: measured.length,
      logged: blocks.reduce((sum, { swings }) => sum + (swings ?? 0), 0),
    };
  };
  const came = new Set([...swung, ...logged.map(({ date }) => date)]);
  const planned = plannedDays(facility, athlete, asOf);
  const kept = planned?.filter((date) => came.has(date)).length ?? 0;
  const lookBack = isoDay(Math.max(dayOf(start), dayOf(until) - (LOOK_BACK_DAYS - 1) * DAY_MS));
  const place = (index: number) => (index < 0 ? null : index);
  return {
    came: planned && { planned: planned.length, kept, besides: came.size - kept },
    sofar: work(start),
    lately: { from: lookBack, ...work(lookBack) },
    phase: place(phases.findIndex((phase) => within(asOf, phase))),
    nextPhase: place(phases.findIndex(({ from }) => from > asOf)),
    nextTest: [...testDays].sort().find((day) => day > asOf) ?? null,
  };
}
