import { afterEach, describe, expect, test } from "vitest";
import { build, check } from "../../src/build.ts";
import { bytesOf, OPTIONS, pathsOf, quiet, removeFolder, SMALL, seasonFolder } from "../cli/small-season.ts";

const made: string[] = [];
async function season(changes: Parameters<typeof seasonFolder>[0]) {
  const root = await seasonFolder(changes);
  made.push(root);
  return pathsOf(root);
}
afterEach(async () => {
  for (const root of made.splice(0)) await removeFolder(root);
});

const grown = (name: string, more = "") =>
  `---\nname: ${name}\nborn: 2000\n${more}consent: [{ by: self, as: self, on: 2026-01-02, readers: [family, club] }]\n---\n`;
const facility = (...lines: string[]) =>
  String(SMALL["content/facility.md"]).replace("name: Lantern Cage\n", `${lines.join("\n")}\n`);

/** Every page of the public site in one string. */
async function publicText(out: string): Promise<string> {
  const files = Object.entries(await bytesOf(out)).filter(([path]) => path.endsWith(".html"));
  return files.map(([, body]) => Buffer.from(body, "base64").toString("utf8")).join("\n");
}

/** What check finds, and that a build finds the same and publishes all but the missing. */
async function agreed(paths: Awaited<ReturnType<typeof season>>) {
  const checked = await check(paths, {}, quiet());
  const built = await build(paths, OPTIONS, quiet());
  expect(built.problems).toEqual(checked.problems);
  expect(built.missing).toEqual(checked.missing);
  return { ...built, errors: built.problems.filter(({ level }) => level === "error") };
}

describe("an athlete's own page is published", () => {
  test("although another's whole name stands inside the athlete's", async () => {
    const paths = await season({
      "content/athletes/ada-lund/profile.md": grown("Mary Ann Lee"),
      "content/athletes/ann-lee/profile.md": grown("Ann Lee"),
    });
    expect(await agreed(paths)).toMatchObject({ missing: [], errors: [] });
    expect(await publicText(paths.out)).toContain("Mary Ann Lee");
  });

  test.each([
    ["an environment", "front-toss"],
    ["a bat", "big-barrel"],
    ["a drill", "high-tee"],
  ])("although another's id is the word for %s", async (_, id) => {
    const paths = await season({
      [`content/athletes/${id}/profile.md`]: grown("Fran Tolliver"),
      "content/drills.md": "---\ndrills: [{ id: high-tee, label: High tee }]\n---\n",
      "data/implements.csv": "id,label,length_in,weight_oz,role\nbig-barrel,Big barrel,33,30,game\n",
      "content/athletes/ada-lund/plan.md":
        "---\nitems: [{ drill: high-tee, purpose: training, implement: big-barrel, sets: 3, reps: 5 }]\n---\n",
      "data/swings/toss.csv": `athlete_id,date,environment,implement,drill,bat_speed_mph\n${[20, 21, 22, 23, 24, 25]
        .flatMap((day) => [66.1, 66.9, 67.4].map((v) => `ada-lund,2026-01-${day},front-toss,big-barrel,high-tee,${v}`))
        .join("\n")}\n`,
    });
    expect(await agreed(paths)).toMatchObject({ missing: [], errors: [] });
    // The word was really there to be found.
    const report = Buffer.from((await bytesOf(paths.desk))["reports/ada-lund.json"] ?? "", "base64").toString("utf8");
    expect(report).toContain(`"${id}"`);
  });

  test("and held back, with the file said, when a drill is called by another's name", async () => {
    const paths = await season({
      "content/drills.md": "---\ndrills: [{ id: high-tee, label: The Ben Ridge }]\n---\n",
      "content/athletes/ada-lund/plan.md":
        "---\nitems: [{ drill: high-tee, purpose: training, sets: 3, reps: 5 }]\n---\n",
    });
    const { errors, missing } = await agreed(paths);
    expect(missing).toEqual(["ada-lund"]);
    expect(errors[0]).toMatchObject({ code: "names-other-athlete", at: { file: "content/drills.md" } });
  });
});

describe("the facility's own texts", () => {
  test("may carry an athlete's name in the facility's, which is the trainer's choice", async () => {
    const paths = await season({ "content/facility.md": facility("name: Ada Lund Hitting") });
    expect(await agreed(paths)).toMatchObject({ missing: [], errors: [] });
    expect(await publicText(paths.out)).toContain("Ada Lund Hitting");
  });

  test("are left out where they name an athlete, and everybody else's pages are published", async () => {
    const paths = await season({
      "content/facility.md": facility(
        "name: Lantern Cage",
        "contact: ask Cleo Vane's mother",
        "notice: { en: Well hit Cleo Vane, es: Bien }",
        "cautions: [Mind the net, Not behind Cleo Vane]",
      ).replace("name: Winter,", "name: Winter of Cleo Vane,"),
    });
    const { errors, missing, links } = await agreed(paths);
    expect(missing).toEqual([]);
    expect(errors.map(({ code, at, args }) => [code, at.file, args.key, args.other])).toEqual(
      ["season", "contact", "notice", "cautions"].map((key) => [
        "facility-names-athlete",
        "content/facility.md",
        key,
        "cleo-vane",
      ]),
    );
    expect(links.filter(({ withheld }) => withheld === null)).toHaveLength(3);
    const text = await publicText(paths.out);
    expect(text).not.toContain("Cleo");
    expect(text).toContain("Mind the net");
    expect(text).toContain("2026-01-05 – 2026-02-28");
  });

  test("may name the staff, though one of them hits too", async () => {
    const paths = await season({
      "content/facility.md": facility(
        "name: Lantern Cage",
        "contact: Ada Lund at the desk",
        "staff: [{ id: ada, name: Ada Lund }]",
      ),
    });
    expect(await agreed(paths)).toMatchObject({ missing: [], errors: [] });
  });
});

test("a folder whose only page is somebody else's is not replaced", async () => {
  const paths = await season({ "junk/index.html": "mine" });
  const out = paths.out.replace(/_site$/, "junk");
  await expect(build({ ...paths, out }, OPTIONS, quiet())).rejects.toMatchObject({ exit: 2 });
  expect(await publicText(out)).toBe("mine");
  await build(paths, OPTIONS, quiet());
  await build(paths, OPTIONS, quiet());
});
