import { describe, expect, test } from "vitest";
import { healthWord, heldBack } from "../../src/report/held.ts";
import { covers, leftOutFor, publicationFor, publicationsOf } from "../../src/report/publication.ts";
import { forReader } from "../../src/report/reader.ts";
import { reportFor } from "../../src/report/report.ts";
import { heldTexts } from "../../src/report/texts.ts";
import type { Facility } from "../../src/schema/facility.ts";
import { type Consent, coveredPart, type Profile } from "../../src/schema/profile.ts";
import { input, weekLater } from "./season.ts";

const LINE = { value: 61, label: "14u", n: null, source: "Invented league", year: null };
const asOf = "2026-02-22";
const word: Consent = { by: "self", as: "self", on: "2025-10-01", readers: ["family", "club"] };
const recipients: Profile["recipients"] = [
  { id: "home", reader: "family" },
  { id: "other-home", reader: "family" },
  { id: "club-1", reader: "club" },
  { id: "club-2", reader: "club" },
];
const wordsOf = (consent: Consent[]) =>
  publicationsOf({ name: "Ada Brook", consent, recipients }, false, asOf).recipients.map(({ id, publication }) => [
    id,
    publication.publish ? "open" : publication.why,
  ]);

describe("several recipients", () => {
  test("of one kind share a word that names none of them", () => {
    expect(wordsOf([word])).toEqual([
      ["home", "open"],
      ["other-home", "open"],
      ["club-1", "open"],
      ["club-2", "open"],
    ]);
  });

  test("one withdrawal stops that recipient only", () => {
    const back = { ...word, readers: ["club" as const], recipients: ["club-2"], withdrawn: "2026-01-10" };
    expect(wordsOf([word, back])).toEqual([
      ["home", "open"],
      ["other-home", "open"],
      ["club-1", "open"],
      ["club-2", "withdrawn"],
    ]);
  });

  test("a word about one says nothing of the others", () => {
    expect(wordsOf([{ ...word, recipients: ["other-home", "club-1"] }])).toEqual([
      ["home", "no-consent"],
      ["other-home", "open"],
      ["club-1", "open"],
      ["club-2", "no-consent"],
    ]);
  });

  test("each kind of reader has the first word that lets one of it have the report", () => {
    const { publication } = publicationsOf(
      { name: "Ada Brook", consent: [{ ...word, recipients: ["club-2"] }], recipients },
      false,
      asOf,
    );
    expect(publication).toMatchObject({ family: { publish: false }, club: { publish: true } });
  });

  test("a guardian's word ends with the athlete's minority for each of them: by year, on the last day of it", () => {
    const guardian = { ...word, as: "guardian" as const };
    const on = (day: string) => {
      const made = reportFor({
        ...input([], { athlete: { profile: { name: "Ada Brook", born: 2008, consent: [guardian] } } }),
        asOf: day,
      });
      return made.report.recipients.map(({ publication }) => (publication.publish ? "open" : publication.why));
    };
    expect(on("2026-12-31")).toEqual(["open", "open"]);
    expect(on("2027-01-01")).toEqual(["needs-own", "needs-own"]);
  });
});

describe("what a word covers", () => {
  test("is everything where it lists nothing, else what it lists, however it is written", () => {
    const of = (list?: string[]) => publicationFor([{ ...word, ...(list && { covers: list }) }], false, "family", asOf);
    expect(covers(of(), "video")).toBe(true);
    expect(covers(of(["numbers"]), "video")).toBe(false);
    expect(covers(of(["Numbers", "Body_Mass"]), "body-mass")).toBe(true);
    expect(covers({ publish: false, why: "no-consent" }, "peers")).toBe(false);
    expect(["numbers", " Peers", "body mass", "weight"].map(coveredPart)).toEqual([
      "numbers",
      "peers",
      "body-mass",
      null,
    ]);
  });

  const made = (born: number, list: string[] | undefined) =>
    reportFor(
      input(
        [0, 1, 2].map((week) => ({ date: weekLater(week), bat_speed: 60 + week })),
        {
          athlete: {
            profile: {
              name: "Ada Brook",
              born,
              masses: [{ date: "2025-10-06", lb: 150 }],
              consent: [{ ...word, as: born < 2005 ? "self" : "guardian", ...(list && { covers: list }) }],
            },
            notes: [
              {
                file: "content/athletes/invented-one/notes/tee.md",
                front: { date: "2025-11-03", author: "coach-a", kind: "observation", readers: ["family", "club"] },
                body: "![Tee](tee.png)",
                bodyLine: 6,
                images: { "tee.png": "content/athletes/invented-one/notes/tee.png" },
              },
            ],
          },
        },
      ),
    ).report;

  test("an adult's body mass and pictures are shown only where it covers them, and what is kept is counted", () => {
    const kept = made(1999, ["numbers"]);
    expect(kept.recipients.map(({ kept: parts, keptCount, film }) => [parts, keptCount, film])).toEqual([
      [["body-mass", "video"], 2, false],
      [["body-mass", "video"], 2, false],
    ]);
    const seen = forReader(kept, "club", "club");
    expect([seen.athlete.masses, seen.notes[0]?.images]).toEqual([[], {}]);
    const all = forReader(made(1999, ["numbers", "body-mass", "video"]), "club", "club");
    expect(all.athlete.masses).toHaveLength(1);
    expect(Object.keys(all.notes[0]!.images)).toEqual(["tee.png"]);
    expect(all.recipients.map(({ keptCount }) => keptCount)).toEqual([0, 0]);
  });

  test("what is kept is counted only where it is on file, and meant for that reader", () => {
    const report = made(1999, ["numbers"]);
    const [club] = report.recipients.slice(1);
    const peered = report.series.map((one) => ({ ...one, measure: 0, peerLines: [LINE] }));
    const kept = (person: typeof report.athlete, series: typeof report.series, notes: typeof report.notes) =>
      leftOutFor(club!, person, series, notes).kept;
    const light = { ...report.athlete, masses: [] };
    expect(kept(light, report.series, [])).toEqual([]);
    expect(kept(report.athlete, report.series, [])).toEqual(["body-mass"]);
    expect(kept(light, peered, [])).toEqual(["peers"]);
    expect(kept(light, [...report.series, ...peered], [])).toEqual(["peers"]);
    expect(
      kept(
        light,
        peered.map((one) => ({ ...one, measure: null })),
        [],
      ),
    ).toEqual([]);
    expect(kept(light, report.series, report.notes)).toEqual(["video"]);
    const notes = report.notes.map((note) => ({ ...note, readers: ["family" as const] }));
    expect(kept(light, report.series, notes)).toEqual([]);
    expect(
      kept(
        light,
        report.series,
        report.notes.map((note) => ({ ...note, images: {} })),
      ),
    ).toEqual([]);
    expect(leftOutFor({ ...club!, publication: { publish: false, why: "ended" } }, light, peered, []).kept).toEqual([]);
    const all = { publish: true, as: "self", agreedOn: "2025-10-01", covers: ["numbers", "video"] } as const;
    expect(leftOutFor({ reader: "club", publication: { ...all, covers: [...all.covers] } }, light, [], []).film).toBe(
      true,
    );
  });

  test("a minor's body mass stays off shared pages whatever a word covers, and that is nothing the athlete keeps", () => {
    const child = made(2012, ["numbers", "body-mass"]);
    expect(forReader(child, "family", "family").athlete.masses).toEqual([]);
    expect(child.recipients.map(({ kept }) => kept)).toEqual([[], []]);
    expect(leftOutFor({ reader: "family", publication: child.publication.family }, child.athlete, [], []).film).toBe(
      false,
    );
  });

  test("of other recipients a page holds nothing but their place", () => {
    const seen = forReader(made(1999, undefined), "club", "club");
    expect(seen.recipients.map(({ id }) => id)).toEqual(["", "club"]);
    expect(seen.publication.family).toEqual({ publish: false, why: "no-consent" });
  });
});

describe("texts that stay on the desk", () => {
  test.each([
    "Her wrist was sprained in January.",
    "No pain since",
    "concussion protocol",
    "back from SURGERY",
    "Tuvo una lesión en el hombro.",
    "Sin dolor desde enero",
    "an x-ray",
    "physical therapy twice a week",
  ])("tell of health: %s", (text) => {
    expect(healthWord(text)).not.toBeNull();
  });

  test.each([
    "She paints the line.",
    "Still working on the path",
    "Painted corners",
    "A healthy swing",
    "Strained for the outside pitch",
    "Illinois in spring",
    "Llegó al campo",
  ])("or do not: %s", (text) => {
    expect(healthWord(text)).toBeNull();
  });

  test("or have been read by their author alone, where the facility wants two readers for a minor's", () => {
    const twice = { second_reader: true } as Facility;
    const text = { body: "A fine winter.", by: "kay", readBy: undefined };
    expect(heldBack(text, twice, true)).toBe("second-reader");
    expect(heldBack({ ...text, readBy: "kay" }, twice, true)).toBe("second-reader");
    expect(heldBack({ ...text, readBy: "lou" }, twice, true)).toBeNull();
    expect(heldBack(text, twice, false)).toBeNull();
    expect(heldBack({ ...text, by: null }, twice, true)).toBeNull();
    expect(heldBack(text, {} as Facility, true)).toBeNull();
    expect(heldBack({ ...text, body: "A sprained wrist.", readBy: "lou" }, twice, true)).toBe("health-word");
  });

  test("are told one by one, even where two say the same", () => {
    const note = (name: string, read_by?: string) => ({
      file: `content/athletes/invented-one/notes/${name}.md`,
      front: { date: "2025-11-03", author: "kay", readers: ["family" as const], ...(read_by && { read_by }) },
      body: "A fine day.",
      bodyLine: 5,
      images: {},
    });
    const { athlete } = input([], { athlete: { notes: [note("read-once"), note("read-twice", "lou")] } });
    const held = heldTexts(athlete, { second_reader: true } as Facility, true);
    expect(held.map(({ file, why }) => [file.split("/").at(-1), why])).toEqual([["read-once.md", "second-reader"]]);
  });

  test("reach no reader: note, closing, assessment, reason of a goal, wording of an absence", () => {
    const { report } = reportFor(
      input([{ date: weekLater(0), bat_speed: 60 }], {
        athlete: {
          profile: {
            name: "Ada Brook",
            born: 1999,
            consent: [word],
            away: [{ from: "2025-11-01", to: "2025-11-09", kind: "wrist", say: "a sprained wrist" }],
            goals: [{ metric: "bat_speed", target: 66, by: "2026-02-20", why: "Back to where she was before surgery" }],
          },
          assessment: {
            file: "content/athletes/invented-one/assessment.md",
            front: { date: "2025-10-06", priorities: [{ id: "path", text: "Path, without pain" }] },
            body: "Came with a sprained wrist.",
            bodyLine: 5,
          },
          notes: [
            {
              file: "content/athletes/invented-one/notes/a.md",
              front: { date: "2025-11-03", author: "coach-a", readers: ["family", "club"] },
              body: "The sprained wrist is better.",
              bodyLine: 5,
              images: {},
            },
          ],
          closings: [
            {
              file: "content/athletes/invented-one/closing.md",
              language: null,
              front: { by: "coach-a", readers: ["family", "club"] },
              body: "Look after that sprained wrist.",
              bodyLine: 4,
            },
          ],
        },
      }),
    );
    expect(JSON.stringify(report)).toMatch(/sprained.*surgery|surgery.*sprained/s);
    for (const reader of ["family", "club"] as const)
      expect(JSON.stringify(forReader(report, reader, reader))).not.toMatch(/sprain|surgery|pain|wrist/);
  });
});
