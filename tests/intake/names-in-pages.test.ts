import { describe, expect, test } from "vitest";
import { BASE, coded, placed, seasonOf } from "./season-of.ts";

const ANA = "content/athletes/ana-l";
const page = (...lines: string[]): string => ["---", ...lines, "---", "Body", ""].join("\n");
const lists = async (files: Record<string, string>) => {
  const season = await seasonOf(files);
  return { season, found: coded(season, "not-in-list").map((p) => [placed(p).replace(" not-in-list", ""), p.args]) };
};
const DRILLS = { "content/drills.md": page("drills: [{ id: low-tee, label: Low tee, environment: pool-noodle }]") };

describe("names that must be declared somewhere", () => {
  test("a note's author is of the staff, or the athlete", async () => {
    const note = (author: string) => ({
      [`${ANA}/notes/a.md`]: page("date: 2025-11-01", `author: ${author}`, "kind: words"),
    });
    expect((await lists(note("athlete"))).found).toEqual([]);
    expect((await lists(note("coach-k"))).found).toEqual([]);
    const { season, found } = await lists(note("coach-j"));
    expect(found).toEqual([
      [`${ANA}/notes/a.md:3:9`, { key: "author", found: "coach-j", list: "staff", suggestion: "coach-k" }],
    ]);
    expect(season.problems.map(({ level }) => level)).toEqual(["note"]);
    expect(season.leftOut).toEqual([]);
    expect(season.athletes[0]?.notes[0]?.front.author).toBe("coach-j");
  });

  test("a name that is only shown is remarked on, and leaves nobody out", async () => {
    const { season, found } = await lists({
      [`${ANA}/closing.md`]: page("by: jo"),
      [`${ANA}/assessment.md`]: page("date: 2025-10-06", "by: jo"),
      [`${ANA}/plan.md`]: page("by: jo", "items: [{ drill: mirror, purpose: path, sets: 3, reps: 5 }]"),
    });
    expect(found.map(([, args]) => args)).toEqual([
      { key: "by", found: "jo", list: "staff" },
      { key: "by", found: "jo", list: "staff" },
      { key: "by", found: "jo", list: "staff" },
      { key: "items[0].drill", found: "mirror", list: "drills" },
    ]);
    expect(new Set(season.problems.map(({ level }) => level))).toEqual(new Set(["note"]));
    expect(season.athletes.map(({ id }) => id)).toEqual(["ana-l"]);
  });

  test("a goal that nothing can be computed for is an error all the same", async () => {
    const { season } = await lists({
      [`${ANA}/profile.md`]: page("name: Ana", "goals: [{ metric: bat_sped, target: 70, by: 2026-02-01 }]"),
    });
    expect(season.leftOut).toEqual(["ana-l"]);
  });

  test("a note needs no kind; one that is no kind is an error", async () => {
    const note = (...more: string[]) => ({
      [`${ANA}/notes/a.md`]: page("date: 2025-11-01", "author: coach-k", ...more),
    });
    const without = await seasonOf(note());
    expect([without.problems, without.athletes[0]?.notes.length]).toEqual([[], 1]);
    expect((await seasonOf(note("kind: praise"))).leftOut).toEqual(["ana-l"]);
  });

  test("a language without pages is remarked on", async () => {
    const language = (code: string) =>
      seasonOf({ [`${ANA}/profile.md`]: page("name: Ana", `language: ${code}`) }).then(({ problems }) => problems);
    expect(await language("en")).toEqual([]);
    expect((await language("fr")).map((p) => [placed(p), p.level, p.args])).toEqual([
      [`${ANA}/profile.md:3:11 no-pages-in-language`, "note", { language: "fr" }],
    ]);
  });

  test("the plan's drills stand in the drill library", async () => {
    const plan = (drill: string) => ({
      ...DRILLS,
      [`${ANA}/plan.md`]: page("by: coach-k", "items:", `  - { drill: ${drill}, purpose: path, sets: 3, reps: 5 }`),
    });
    expect((await lists(plan("low-tee"))).found).toEqual([]);
    expect((await lists(plan("low-te"))).found).toEqual([
      [`${ANA}/plan.md:4:14`, { key: "items[0].drill", found: "low-te", list: "drills", suggestion: "low-tee" }],
    ]);
  });

  test("priorities name metrics and drills that exist", async () => {
    const text = page(
      "date: 2025-10-06",
      "priorities:",
      "  - { id: path, text: Flatter, measures: [atack_angle], drills: [mirror] }",
    );
    const { found } = await lists({ ...DRILLS, [`${ANA}/assessment.md`]: text });
    expect(found.map(([place]) => place)).toEqual([`${ANA}/assessment.md:4:43`, `${ANA}/assessment.md:4:66`]);
    expect(found[0]?.[1]).toMatchObject({ list: "metrics", suggestion: "attack_angle" });
  });

  test("a goal's metric and environment are known ones; drills.md may declare an environment", async () => {
    const goal = (metric: string, environment: string) => ({
      ...DRILLS,
      [`${ANA}/profile.md`]: page(
        "name: Ana",
        `goals: [{ metric: ${metric}, condition: { environment: ${environment} }, target: 70, by: 2026-02-01 }]`,
      ),
    });
    expect((await lists(goal("bat_speed", "pool-noodle"))).found).toEqual([]);
    expect((await lists(goal("bat_sped", "machin"))).found.map(([, args]) => args)).toEqual([
      { key: "goals[0].metric", found: "bat_sped", list: "metrics", suggestion: "bat_speed" },
      { key: "goals[0].condition.environment", found: "machin", list: "environments", suggestion: "machine" },
    ]);
  });

  test("a goal's zone is one of metrics.md", async () => {
    const goal = (zone: string) => ({
      "content/metrics.md": page("zones: [{ id: middle-lines, label: Lines, launch_angle: [8, 20] }]"),
      [`${ANA}/profile.md`]: page("name: Ana", `goals: [{ zone: ${zone}, share: 0.4, by: 2026-02-01 }]`),
    });
    expect((await lists(goal("middle-lines"))).found).toEqual([]);
    const { season, found } = await lists(goal("midle-lines"));
    expect(found).toEqual([
      [
        `${ANA}/profile.md:3:17`,
        { key: "goals[0].zone", found: "midle-lines", list: "zones", suggestion: "middle-lines" },
      ],
    ]);
    expect(season.leftOut).toEqual(["ana-l"]);
  });

  test("without metrics.md there is no zone that a goal could name", async () => {
    const goals = "goals: [{ zone: middle-lines, share: 0.4, by: 2026-02-01 }]";
    const { found } = await lists({ [`${ANA}/profile.md`]: page("name: Ana", goals) });
    expect(found.map(([, args]) => args)).toEqual([{ key: "goals[0].zone", found: "middle-lines", list: "zones" }]);
  });

  test("the game bat is one of implements.csv, when there is one; a role is no bat", async () => {
    const profile = (bat: string) => ({ [`${ANA}/profile.md`]: page("name: Ana", `game_bat: ${bat}`) });
    const bats = { "data/implements.csv": "id,length_in,weight_oz,role\ngame-33,33,30,game\n" };
    expect((await lists(profile("game-32"))).found).toEqual([]);
    expect((await lists({ ...profile("game-33"), ...bats })).found).toEqual([]);
    expect((await lists({ ...profile("game-32"), ...bats })).found.map(([place]) => place)).toEqual([
      `${ANA}/profile.md:3:11`,
    ]);
    expect((await lists({ ...profile("game"), ...bats })).found).toHaveLength(1);
  });

  test("members of a group have a folder; one who has none does not stop the season", async () => {
    const facility = String(BASE["content/facility.md"]).replace(
      "measures:",
      "groups: [{ id: mon, members: [ana-l, ana-m] }]\nmeasures:",
    );
    const { season, found } = await lists({ "content/facility.md": facility });
    expect(found).toEqual([
      [
        "content/facility.md:5:38",
        { key: "groups[0].members[1]", found: "ana-m", list: "athletes", suggestion: "ana-l" },
      ],
    ]);
    expect(season.athletes).toHaveLength(1);
  });

  test("a measure of an unknown metric stops the season: every report stands on it", async () => {
    const facility = String(BASE["content/facility.md"]).replace("bat_speed", "bat_sped");
    await expect(seasonOf({ "content/facility.md": facility })).rejects.toMatchObject({
      problems: [{ code: "not-in-list", at: { line: 5, column: 22 }, args: { suggestion: "bat_speed" } }],
    });
  });

  test("what a note is about is only remarked on", async () => {
    const { season, found } = await lists({
      [`${ANA}/notes/a.md`]: page("date: 2025-11-01", "author: coach-k", "kind: words", "about: [bat_speed, hands]"),
    });
    expect(found.map(([place]) => place)).toEqual([`${ANA}/notes/a.md:5:20`]);
    expect(season.leftOut).toEqual([]);
  });

  test("an athlete's recipients are told apart by their ids", async () => {
    const list = "recipients: [{ id: home, reader: family }, { id: home, reader: club }]";
    const season = await seasonOf({ [`${ANA}/profile.md`]: page("name: Ana", list) });
    expect(season.problems.map(placed)).toEqual([`${ANA}/profile.md:3:50 repeated-id`]);
  });
});

describe("files", () => {
  test("pictures beside the notes are known by name", async () => {
    const season = await seasonOf({
      [`${ANA}/notes/a.md`]: page("date: 2025-11-01", "author: coach-k", "kind: words"),
      [`${ANA}/notes/feet.PNG`]: "x",
      [`${ANA}/notes/feet.txt`]: "x",
    });
    expect(season.athletes[0]?.notes[0]?.images).toEqual({ "feet.PNG": `${ANA}/notes/feet.PNG` });
    expect(season.problems.map(placed)).toEqual([`${ANA}/notes/feet.txt:-:- unknown-file`]);
  });

  test("a closing message in another language stands beside the first", async () => {
    const season = await seasonOf({ [`${ANA}/closing.md`]: "Well done.", [`${ANA}/closing.es.md`]: "Bien hecho." });
    expect(season.athletes[0]?.closings.map(({ language, body }) => [language, body])).toEqual([
      ["es", "Bien hecho."],
      [null, "Well done."],
    ]);
  });

  test("a file that nothing reads is named, with the name that may have been meant", async () => {
    const season = await seasonOf({ [`${ANA}/closng.md`]: "x", "data/swing/a.csv": "x", "data/implement.csv": "x" });
    expect(season.problems.map((p) => [placed(p), p.level, p.args])).toEqual([
      [`${ANA}/closng.md:-:- unknown-file`, "note", { suggestion: "closing.md" }],
      ["data/implement.csv:-:- unknown-file", "note", { suggestion: "implements.csv" }],
      ["data/swing/a.csv:-:- unknown-file", "note", { suggestion: "swings" }],
    ]);
  });

  test("links are refused, and one in an athlete's folder leaves the athlete out", async () => {
    const season = await seasonOf({ [`${ANA}/notes/a.md`]: { link: "x" }, "data/swings/b.csv": { link: "x" } });
    expect(season.problems.map((p) => [placed(p), p.athlete])).toEqual([
      [`${ANA}/notes/a.md:-:- not-a-plain-file`, "ana-l"],
      ["data/swings/b.csv:-:- not-a-plain-file", null],
    ]);
    expect(season.swingFiles).toEqual([]);
  });

  test("a folder that is no id leaves its athlete out and shows how to write it", async () => {
    const season = await seasonOf({ "content/athletes/Zoë K/profile.md": page("name: Zoë K") });
    expect(coded(season, "bad-folder-name").map(({ args }) => args)).toEqual([
      { folder: "Zoë K", suggestion: "zoe-k" },
    ]);
    expect(season.leftOut).toEqual(["Zoë K"]);
  });

  test("an athlete's folder without a profile is left out", async () => {
    const season = await seasonOf({ "content/athletes/ben-k/closing.md": "x" });
    expect(season.problems.map(placed)).toEqual(["content/athletes/ben-k/profile.md:-:- missing-file"]);
    expect(season.leftOut).toEqual(["ben-k"]);
  });

  test("hidden files of the system are nobody's business", async () => {
    const season = await seasonOf({ "content/.DS_Store": "x", "data/swings/.a.csv.swp": "x", "data/inbox/x.csv": "x" });
    expect(season.problems).toEqual([]);
  });
});
