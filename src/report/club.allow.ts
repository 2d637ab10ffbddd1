/**
 * What the new club's page may read, field by field. Not the program card, the assessment, absences, goals or why they were
 * set: those are between the athlete and the facility. A field that is not here is emptied before any page sees it.
 */
export const CLUB_FIELDS: readonly string[] = [
  "schema",
  "edition",
  "asOf",
  "facility",
  "athlete.id",
  "athlete.displayName",
  "athlete.language",
  "athlete.sport",
  "athlete.level",
  "athlete.bats",
  "athlete.throws",
  "athlete.positions",
  "athlete.age",
  "athlete.minor",
  "athlete.heights",
  "athlete.masses",
  "athlete.gameBats",
  "period",
  "publication",
  "ledger",
  "measures",
  "measuresWithSwings",
  "series",
  "method",
  "work",
  "measuring",
  "notes",
  "closings",
];
