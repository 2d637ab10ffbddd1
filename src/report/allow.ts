import { READERS, type Reader } from "../schema/reasons.ts";

const BOTH = READERS;

/**
 * Who may read what, field by field. A field that is not here is emptied before any page sees it, so that a new field of the report is private until
 * somebody writes it down.
 *
 * Not for a club: the program card, the assessment, absences, goals or why they were set. Those are between the athlete and the facility.
 */
export const ALLOWED: Readonly<Record<string, readonly Reader[]>> = {
  schema: BOTH,
  edition: BOTH,
  asOf: BOTH,
  facility: BOTH,
  "athlete.id": BOTH,
  "athlete.displayName": BOTH,
  "athlete.language": BOTH,
  "athlete.sport": BOTH,
  "athlete.level": BOTH,
  "athlete.bats": BOTH,
  "athlete.throws": BOTH,
  "athlete.positions": BOTH,
  "athlete.age": BOTH,
  "athlete.minor": BOTH,
  "athlete.growing": ["family"],
  "athlete.heights": BOTH,
  "athlete.masses": BOTH,
  "athlete.gameBats": BOTH,
  "athlete.away": ["family"],
  period: BOTH,
  publication: BOTH,
  recipients: BOTH,
  ledger: BOTH,
  measures: BOTH,
  measuresWithSwings: BOTH,
  series: BOTH,
  method: BOTH,
  gate: BOTH,
  hitting: BOTH,
  goals: ["family"],
  checkIns: BOTH,
  aims: ["family"],
  interim: ["family"],
  work: BOTH,
  measuring: BOTH,
  assessment: ["family"],
  notes: BOTH,
  closings: BOTH,
  references: BOTH,
  program: ["family"],
};
