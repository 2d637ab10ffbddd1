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
        {
          reader: "family",
          recipient: "Home",
          href: "../_site/r/token/index.html",
          address: "https://cage.example/r/token/",
          ...{ withheld: null, until: "2026-06-30", sealed: true, asks: true },
        },
        {
          reader: "club",
          recipient: "New club",
          href: "javascript:alert(1)",
          address: null,
          ...{ withheld: null, until: null, sealed: false, asks: false },
        },
      ],
    },
    {
      report: withheld,
      links: [
        {
          reader: "family",
          recipient: "family",
          href: "../_site/r/other/index.html",
          address: "https://cage.example/r/other/",
          ...{ withheld: "link-revoked", until: null, sealed: false, asks: false },
        },
      ],
    },
  ],
  leftOut: ["broken-file"],
  pairings: [
    {
      ...{ athlete: full.athlete.id, date: "2026-01-12", outcome: "paired" },
      clocks: { offset: 74.25, drift: 0.00004, noise: 0.61 },
      bats: [0, 11, 24, 33, 39, 47].map((after, i) => ({
        ...{ file: "data/swings/knob/a.csv", line: i + 2 },
        ...{ time: 57_600 + after, mph: i === 4 ? 24.3 : i === 3 ? null : 61 + i },
      })),
      balls: [0, 11, 24.5, 47.5, 60].map((after, i) => ({
        ...{ file: "data/swings/screen/a.csv", line: i + 2 },
        ...{ time: 57_674.25 + after, mph: 71.5 + i },
      })),
      pairs: [
        { a: 0, b: 0, confidence: 0.99, told: false },
        { a: 1, b: 1, confidence: 1, told: true },
        { a: 5, b: 3, confidence: 0.97, told: false },
      ],
      doubtful: [{ a: 2, b: 2, confidence: 0.72 }],
      batPairing: ["paired", "paired", "ball-not-recorded", "ball-not-recorded", "no-swing", "paired"],
      ballPairing: ["paired", "paired", "bat-not-recorded", "paired", "bat-not-recorded"],
    },
    {
      ...{ athlete: full.athlete.id, date: "2026-01-14", outcome: "cannot-tell", clocks: null },
      bats: [{ file: "data/swings/knob/a.csv", line: 40, time: 57_600, mph: 60 }],
      balls: [{ file: "data/swings/screen/a.csv", line: 40, time: 58_600, mph: 70 }],
      ...{ pairs: [], doubtful: [], batPairing: [null], ballPairing: [null] },
    },
  ],
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
