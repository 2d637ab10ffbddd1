import type { NotCountedReason } from "../schema/reasons.ts";
import type { RepTable } from "../schema/season.ts";
import { aimsOf } from "./aims.ts";
import { contextFor } from "./athlete-context.ts";
import { bridgesIn } from "./bridges.ts";
import { allMeasuresCounted } from "./change/all-measures.ts";
import { checkInsOf } from "./check-ins.ts";
import { facilityOf } from "./facility-part.ts";
import { flagsOf } from "./flags.ts";
import { gateReport } from "./gate-report.ts";
import { judgeReps } from "./gated.ts";
import { goalsOf } from "./goals.ts";
import { strandsOf } from "./group.ts";
import { hittingReport } from "./hitting/hitting.ts";
import type { ReportInput } from "./input.ts";
import { interimOf } from "./interim.ts";
import { measuredBy } from "./measured-by.ts";
import { MEASURED_RATES } from "./measured-rates.ts";
import { measuresOf } from "./measures.ts";
import { measuringOf } from "./measuring.ts";
import { personOf } from "./person.ts";
import { prioritiesOf } from "./priorities.ts";
import { leftOutFor, publicationsOf } from "./publication.ts";
import { referencesOf } from "./references.ts";
import type { AthleteReport } from "./schema.ts";
import { allSeries } from "./series.ts";
import { suggestionsOf } from "./suggestions.ts";
import { testStrands } from "./test-strands.ts";
import { textsOf } from "./texts.ts";
import { assessmentOf, closingsOf, notesOf, programOf } from "./voices.ts";
import { unmeasuredByDay, workOf } from "./work.ts";
import { withZones } from "./zones.ts";

export interface Reported {
  readonly report: AthleteReport;
  /** For each rep of the athlete's table: why it does not count, or null where it does. */
  readonly judged: readonly (NotCountedReason | null)[];
}

/** Rows behind the reps and what became of them: a rep of two devices is two rows. */
function rowCounts(
  { partner }: Pick<RepTable, "partner">,
  judged: readonly (NotCountedReason | null)[],
): Pick<AthleteReport["ledger"], "read" | "counted" | "notCounted"> {
  const notCounted: Partial<Record<NotCountedReason, number>> = {};
  let [read, counted] = [0, 0];
  judged.forEach((reason, i) => {
    const rows = partner[i] == null ? 1 : 2;
    read += rows;
    if (reason === null) counted += rows;
    else notCounted[reason] = (notCounted[reason] ?? 0) + rows;
  });
  return { read, counted, notCounted };
}

/** Several series may belong to one measure; those without a session have nothing to show. */
function measuresWithSwings(series: AthleteReport["series"]): number {
  const held = series.filter(({ sessions }) => sessions.length > 0).flatMap(({ measure }) => measure ?? []);
  return new Set(held).size;
}

/**
 * One athlete's report: every figure that any page shows, for every reader. Pure: plain JSON in, plain JSON out, no clock.
 *
 * An athlete without a single readable rep has a report too: no series, and goals without figures.
 */
export function reportFor({ season, athlete, setAside, asOf, fileNames }: ReportInput): Reported {
  const { facility, metrics, implements: bats, balls, devices, drills } = season;
  const { profile, reps } = athlete;
  const { conditions, judged, ...gating } = judgeReps(athlete, season);
  const strands = strandsOf(reps, metrics, conditions, judged, measuredBy(reps, metrics, devices));
  const measures = measuresOf(facility, profile, metrics, reps);
  const flags = new Map(strands.map((strand) => [strand, flagsOf(strand, reps, fileNames)]));
  const bridges = season.bridges ?? bridgesIn([{ reps, strands }]);
  const context = contextFor({ season, athlete }, { conditions, judged, flags, bridges });
  const goals = profile.goals ?? [];
  const person = personOf(athlete.id, profile, bats, asOf, facility.season.start);
  const { publication, recipients } = publicationsOf(profile, person.minor, asOf);
  const rows = rowCounts(reps, judged);
  const aside = Object.values(setAside).reduce((sum, n) => sum + n, 0);

  const wanted = season.zones.filter(({ id }) => goals.some((goal) => "zone" in goal && goal.zone === id));
  const zoned = withZones(wanted, reps, profile.bats);
  const zoneStrands = strandsOf(
    zoned.reps,
    zoned.metrics,
    conditions,
    judged,
    measuredBy(zoned.reps, zoned.metrics, devices),
  );
  const told = [...strands, ...testStrands(athlete.tests, metrics, facility.season)];
  const series = allMeasuresCounted(allSeries(told, measures, context));

  const notes = notesOf(athlete, facility, person.displayName, series, person.minor);
  const report: AthleteReport = {
    schema: 1,
    edition: null,
    asOf,
    facility: facilityOf(facility),
    athlete: person,
    period: { start: facility.season.start, end: facility.season.end },
    publication,
    recipients: recipients.map((one) => ({ ...one, ...leftOutFor(one, person, series, notes) })),
    ledger: {
      ...rows,
      read: rows.read + aside,
      setAside: { ...setAside },
    },
    measures: measures.length,
    measuresWithSwings: measuresWithSwings(series),
    series,
    goals: goalsOf(goals, [...told, ...zoneStrands], {
      ...context,
      metrics: new Map([...metrics, ...zoned.metrics].map((metric) => [metric.id, metric])),
      zones: season.zones,
      asOf,
    }),
    method: MEASURED_RATES,
    checkIns: checkInsOf(strands, series, athlete, context),
    aims: aimsOf({ season, athlete }, { conditions, judged }),
    interim: interimOf(athlete, facility, asOf),
    gate: gateReport(athlete, { judged, conditions, ...gating }, { season, series, measures, context }),
    hitting: hittingReport({ season, athlete, conditions, judged }, series, person, asOf),
    work: workOf(reps, facility.season, unmeasuredByDay(athlete.log, reps)),
    measuring: measuringOf(reps, judged, conditions, profile, { implements: bats, balls, devices }),
    assessment: assessmentOf(athlete, facility, prioritiesOf(athlete, drills, facility.season, series)),
    notes,
    closings: closingsOf(athlete, facility, person.minor),
    program: programOf(athlete, facility, drills),
    suggestions: suggestionsOf(strands, context),
    references: referencesOf(
      textsOf(athlete).map(({ body }) => body),
      series,
    ),
    flags: [...flags.values()].flat(),
  };
  return { report, judged };
}
