import { describe, expect, test } from "vitest";
import { ALLOWED } from "../../src/report/allow.ts";
import { forReader } from "../../src/report/reader.ts";
import { reportFor } from "../../src/report/report.ts";
import type { AthleteReport } from "../../src/report/schema.ts";
import { input, weekLater } from "./season.ts";

const note = (name: string, readers: ("family" | "club")[] | undefined) => ({
  file: `content/athletes/invented-one/notes/${name}.md`,
  front: { date: "2025-11-03", author: "coach-a", kind: "observation" as const, ...(readers ? { readers } : {}) },
  body: name,
  bodyLine: 6,
  images: {},
});

const { report } = reportFor(
  input(
    [0, 1, 2].map((week) => ({ date: weekLater(week), bat_speed: 60 + week })),
    {
      athlete: {
        profile: {
          name: "Ada Brook",
          born: "2012-05-14",
          sex: "female",
          masses: [{ date: "2025-10-06", lb: 100 }],
          heights: [{ date: "2025-10-06", in: 60 }],
          goals: [{ metric: "bat_speed", target: 66, by: "2026-02-20" }],
        },
        notes: [note("desk-only", undefined), note("for-family", ["family"]), note("for-both", ["family", "club"])],
      },
    },
  ),
);

test("a note without readers never leaves the desk, others go to their readers only", () => {
  expect(report.notes.map((one) => one.body)).toEqual(["desk-only", "for-both", "for-family"]);
  expect(forReader(report, "family").notes.map((one) => one.body)).toEqual(["for-both", "for-family"]);
  expect(forReader(report, "club").notes.map((one) => one.body)).toEqual(["for-both"]);
});

test("a minor's body mass stays on the desk", () => {
  expect(report.athlete.masses).toHaveLength(1);
  expect(forReader(report, "family").athlete.masses).toEqual([]);
  expect(forReader(report, "family").athlete.heights).toHaveLength(1);
});

test("a field that is on no list is emptied", () => {
  expect(report.athlete.sex).toBe("female");
  expect(forReader(report, "family").athlete.sex).toBeNull();
});

test("the club reads no goals, and the series keep their places", () => {
  const club = forReader(report, "club");
  expect(club.goals).toEqual([]);
  expect(club.series).toEqual(report.series);
});

test("every field on the list of what readers may read exists in the report", () => {
  for (const field of Object.keys(ALLOWED)) {
    const found = field.split(".").reduce<unknown>((value, key) => (value as Record<string, unknown>)[key], report);
    expect(found, field).not.toBeUndefined();
  }
});

describe("peers", () => {
  const standing = { value: 62, age: 13.7, percentile: 60, ci95: [40, 78] as [number, number] };
  const bands = { p10: 55, p25: 57, p50: 60, p75: 63, p90: 66 };
  const peers = {
    group: { sport: "softball", sex: "female", level: "14u", ages: [12, 15] as [number, number] },
    source: "Invented league",
    year: 2024,
    n: 40,
    kind: "value" as const,
    start: { ...standing, age: 13.3 },
    end: standing,
    bands,
    bandsStart: bands,
  };
  const peerLines = [{ value: 61, label: "14u", n: null, source: "Invented league", year: null }];
  const agreed = (covers: string[] | null): AthleteReport => ({
    ...report,
    publication: {
      family: { publish: true, as: "guardian", agreedOn: "2025-10-01", covers },
      club: { publish: true, as: "guardian", agreedOn: "2025-10-01", covers: ["numbers", "peers"] },
    },
    series: report.series.map((series) => ({ ...series, peers, peerLines, peersTooFew: 7 })),
  });

  test("are left out for a reader whose consent lists what it covers and not them", () => {
    const seen = forReader(agreed(["numbers"]), "family").series;
    expect(seen.length).toBeGreaterThan(0);
    for (const series of seen) expect(series).toMatchObject({ peers: null, peerLines: [], peersTooFew: null });
    for (const series of forReader(agreed(["numbers"]), "club").series) {
      expect(series).toMatchObject({ peers: { n: 40 }, peerLines, peersTooFew: 7 });
    }
  });

  const shown = { ...peers, start: { ...standing, age: 13 }, end: { ...standing, age: 13 } };
  test("are shown where the consent names them, with ages in whole years", () => {
    expect(forReader(agreed(["numbers", "peers"]), "family").series[0]?.peers).toEqual(shown);
  });

  test("are shown of a consent that lists nothing from fourteen years on; not below, nor where the age is not known", () => {
    const aged = (age: number | null, minor: boolean) => {
      const all = agreed(null);
      return forReader({ ...all, athlete: { ...all.athlete, age, minor } }, "family").series[0]?.peers;
    };
    expect(aged(13, true)).toBeNull();
    expect(aged(null, true)).toBeNull();
    expect(aged(14, true)).toEqual(shown);
    expect(aged(null, false)).toEqual(shown);
  });

  test("take along what a start would come back by, and what others gained while growing; a minor's mass stays away", () => {
    const rebound = { estimate: 0.4, icc: 0.8, middle: 60, athletes: 40, source: "reference" as const };
    const gain = { series: 0, metric: "bat_speed", unit: "mph", decimals: 1, condition: {}, change: 2, peersGain: 1.5 };
    const seen = (covers: string[]) => {
      const all = agreed(covers);
      const growth = { heightIn: 1, massLb: 5, days: 90, peers: [gain] };
      const series = all.series.map((one) => ({ ...one, rebound }));
      return forReader({ ...all, hitting: { ...all.hitting, growth }, series }, "family");
    };
    const [without, together] = [seen(["numbers"]), seen(["numbers", "peers"])];
    expect([without.series[0]?.rebound, together.series[0]?.rebound]).toEqual([null, rebound]);
    expect(without.hitting.growth).toEqual({ heightIn: 1, massLb: null, days: 90, peers: [] });
    expect(together.hitting.growth).toEqual({ heightIn: 1, massLb: null, days: 90, peers: [gain] });
  });
});
