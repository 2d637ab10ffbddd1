import type { DeskInput } from "../../src/site/desk.ts";
import { full, sparse } from "./fixture-report.ts";

const withheld = {
  ...sparse,
  publication: {
    family: { publish: false as const, why: "needs-guardian" as const },
    club: { publish: false as const, why: "withdrawn" as const },
  },
};

/** A desk with something of everything on it. */
export const desk: DeskInput = {
  facility: full.facility,
  asOf: "2026-02-20",
  athletes: [
    {
      report: full,
      links: [
        { reader: "family", recipient: "Home", href: "../_site/r/token/index.html", published: true },
        { reader: "club", recipient: "New club", href: "javascript:alert(1)", published: true },
      ],
    },
    {
      report: withheld,
      links: [{ reader: "family", recipient: "family", href: "../_site/r/other/index.html", published: false }],
    },
  ],
  leftOut: ["broken-file"],
  ledger: {
    total: {
      read: 1364,
      counted: 1299,
      notCounted: { "under-mark": 32, take: 21 },
      setAside: { duplicate: 8, "out-of-range": 4 },
    },
    files: [
      {
        file: "data/swings/a.csv",
        read: 1364,
        counted: 1299,
        notCounted: { "under-mark": 32, take: 21 },
        setAside: { duplicate: 8, "out-of-range": 4 },
      },
    ],
  },
  rows: Array.from({ length: 12 }, (_, index) => ({
    file: "data/swings/a.csv",
    line: 10 + index,
    column: 3,
    field: "bat_speed_mph",
    value: "<b>6,5",
    reason: index < 4 ? ("out-of-range" as const) : ("duplicate" as const),
    athlete: "pip-larkwell",
  })),
  problems: [
    {
      code: "far-from-own-swings",
      place: "data/swings/a.csv:14",
      problem: "bat_speed 88 lies far",
      remedy: "look",
      level: "note",
    },
    {
      code: "out-of-range",
      place: "data/swings/a.csv:10:3",
      problem: "bat_speed_mph is 165",
      remedy: "look again",
      level: "row",
    },
    {
      code: "unknown-key",
      place: "content/x.md:2:1",
      problem: 'unknown key "heigths"',
      remedy: "did you mean heights",
      level: "error",
    },
  ],
};
