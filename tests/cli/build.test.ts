import { readFile, writeFile } from "node:fs/promises";
import { join } from "node:path";
import { isDeepStrictEqual } from "node:util";
import { parse } from "csv-parse/sync";
import { afterEach, describe, expect, test } from "vitest";
import { type BuildEffects, build, check } from "../../src/build.ts";
import { DESK_PATTERNS, SITE_PATTERNS } from "../../src/publish/guard.ts";
import { AthleteReport } from "../../src/report/schema.ts";
import type { Disk } from "../../src/schema/effects.ts";
import { bytesOf, OPTIONS, pathsOf, quiet, removeFolder, SMALL, seasonFolder } from "./small-season.ts";

const made: string[] = [];
async function season(changes: Parameters<typeof seasonFolder>[0] = {}) {
  const root = await seasonFolder(changes);
  made.push(root);
  return { root, paths: pathsOf(root) };
}
afterEach(async () => {
  for (const root of made.splice(0)) await removeFolder(root);
});

const text = (path: string) => readFile(path, "utf8");

describe("a build", () => {
  test("writes a page for each reader who may have one, and a desk for the trainer", async () => {
    const { paths } = await season();
    const built = await build(paths, OPTIONS, quiet());
    expect(built.athletes.map(({ id, withheld }) => [id, withheld.family, withheld.club])).toEqual([
      ["ada-lund", null, null],
      ["ben-ridge", null, "no-consent"],
      ["cleo-vane", "needs-guardian", "needs-guardian"],
    ]);
    expect(built.missing).toEqual([]);
    const site = Object.keys(await bytesOf(paths.out));
    expect(site.filter((path) => /^r\/[^/]+\/index.html$/.test(path))).toHaveLength(2);
    expect(site.filter((path) => /^c\/[^/]+\/index.html$/.test(path))).toHaveLength(1);
    expect(site.filter((path) => !SITE_PATTERNS.some((pattern) => pattern.test(path)))).toEqual([]);
    const desk = Object.keys(await bytesOf(paths.desk));
    expect(desk.filter((path) => !DESK_PATTERNS.some((pattern) => pattern.test(path)))).toEqual([]);
    expect(desk).toEqual(expect.arrayContaining(["index.html", "links.csv", "ledger.csv", "ledger.json"]));
    expect(desk.filter((path) => path.startsWith("reports/"))).toHaveLength(3);
  });

  test("puts a note in place of a family's report while the season lasts, under the same link", async () => {
    const { paths } = await season();
    const { links } = await build(paths, OPTIONS, quiet());
    const path = links.find(({ athlete, reader }) => athlete === "ada-lund" && reader === "family")!.path;
    expect(await text(join(paths.out, path, "index.html"))).toContain("What changed");
    const again = await build(paths, { ...OPTIONS, interim: true }, quiet());
    expect(again.links).toEqual(links);
    const note = await text(join(paths.out, path, "index.html"));
    expect(note).toContain("Next test");
    expect(note).not.toContain("What changed");
    const site = Object.keys(await bytesOf(paths.out));
    expect(site.filter((one) => one.startsWith(path) && one.includes("numbers"))).toEqual([]);
    expect(site.filter((one) => /^c\/[^/]+\/index.html$/.test(one))).toHaveLength(1);
  });

  test("lays a PDF beside each page only where the facility wants it and PDFs are made", async () => {
    const facility = "name: Lantern Cage\nseason: { name: Winter, start: 2026-01-05, end: 2026-02-28 }\nunits: metric";
    const print: BuildEffects["print"] = async (site, jobs) =>
      jobs.map(({ path, page, paper }) => {
        expect(site.map((file) => file.path)).toContain(page);
        return { path, body: `${paper} of ${page}` };
      });
    const madeWith = async (more: string, effects: BuildEffects) => {
      const { paths } = await season({ "content/facility.md": `---\n${facility}\n${more}---\n` });
      const { links } = await build(paths, OPTIONS, effects);
      const { path } = links.find(({ withheld }) => withheld === null)!;
      const site = Object.keys(await bytesOf(paths.out)).filter((one) => /\.pdf(\.jwe)?$/.test(one));
      const desk = Object.keys(await bytesOf(paths.desk)).filter((one) => one.endsWith(".pdf"));
      const page = await text(join(paths.out, path, "index.html"));
      const beside = site.includes(`${path}report.pdf`) ? await text(join(paths.out, path, "report.pdf")) : null;
      return { path, site, desk, beside, link: page.includes('href="report.pdf"') };
    };
    const wanted = await madeWith("publish_pdf: true\n", { ...quiet(), print });
    expect([wanted.site.length, wanted.desk.length, wanted.link]).toEqual([3, 6, true]);
    expect(wanted.beside).toBe(`A4 of ${wanted.path}index.html`);
    expect(await madeWith("publish_pdf: true\n", quiet())).toMatchObject({ site: [], desk: [], link: false });
    const notWanted = await madeWith("", { ...quiet(), print });
    expect([notWanted.site, notWanted.desk.length, notWanted.link]).toEqual([[], 6, false]);
  });

  test("accounts for every row", async () => {
    const { paths } = await season();
    const { ledger } = await build(paths, OPTIONS, quiet());
    // 3 athletes × 24 days × 3 reps, and three rows with a fault each.
    expect(ledger.total).toEqual({
      read: 219,
      counted: 216,
      notCounted: {},
      setAside: { "unreadable-date": 1, "unreadable-number": 1, "unknown-athlete": 1 },
    });
    expect(JSON.parse(await text(join(paths.desk, "ledger.json")))).toEqual(ledger);
    expect(parse(await text(join(paths.desk, "ledger.csv")), { columns: true })).toMatchObject([
      { file: "data/swings/more.csv", line: "74", column: "1", value: "nobody", reason: "unknown-athlete" },
      { line: "75", column: "2", value: "13/02/26", reason: "unreadable-date", athlete_id: "ada-lund" },
      { line: "76", column: "4", value: "67,3", reason: "unreadable-number", athlete_id: "ada-lund" },
    ]);
    expect(parse(await text(join(paths.desk, "reps", "ada-lund.csv")), { columns: true })).toHaveLength(72);
  });

  test("prints each recipient's own page, and shares a file only where the pages are the same", async () => {
    const recipients = ["a", "b", "c"].map((id) => `{ id: home-${id}, reader: family }`).join(", ");
    const consent = [
      "{ by: self, as: self, on: 2026-01-02, readers: [family] }",
      "{ by: self, as: self, on: 2026-01-03, readers: [family], recipients: [home-c], covers: [numbers] }",
    ];
    const { paths } = await season({
      "content/facility.md": String(SMALL["content/facility.md"]).replace("measures:", "publish_pdf: true\nmeasures:"),
      "content/athletes/ada-lund/profile.md": `---\nname: Ada Lund\nborn: 2000\nrecipients: [${recipients}]\nconsent: [${consent.join(", ")}]\n---\n`,
      "content/athletes/ben-ridge/profile.md": null,
    });
    const print: BuildEffects["print"] = async (_, jobs) => jobs.map(({ path, page }) => ({ path, body: page }));
    const { links } = await build(paths, OPTIONS, { ...quiet(), print });
    const path = (recipient: string) => links.find((link) => link.recipient === recipient)!.path;
    const beside = (recipient: string) => text(join(paths.out, path(recipient), "report.pdf"));
    expect(await beside("home-a")).toBe(`${path("home-a")}index.html`);
    expect(await beside("home-b")).toBe(`${path("home-a")}index.html`);
    expect(await beside("home-c")).toBe(`${path("home-c")}index.html`);
    const desk = Object.keys(await bytesOf(paths.desk)).filter((one) => /^pdf\/.*letter/.test(one));
    expect(desk).toEqual(["pdf/ada-lund-family-en-letter-home-c.pdf", "pdf/ada-lund-family-en-letter.pdf"]);
  });

  test("writes reports that read back through their schema", async () => {
    const { paths } = await season();
    await build(paths, OPTIONS, quiet());
    const written = await text(join(paths.desk, "reports", "ada-lund.json"));
    const report = AthleteReport.parse(JSON.parse(written));
    expect(`${JSON.stringify(report, null, 1)}\n`).toBe(written);
    expect(report.asOf).toBe("2026-02-04");
  });

  test("of the same files is the same, byte for byte, in any time zone", async () => {
    const zone = process.env.TZ;
    const { paths } = await season();
    try {
      const built: unknown[] = [];
      for (const place of ["Pacific/Auckland", "America/Los_Angeles", "Asia/Kathmandu"]) {
        process.env.TZ = place;
        await build(paths, OPTIONS, quiet());
        built.push([await bytesOf(paths.out), await bytesOf(paths.desk)]);
      }
      expect(built[1]).toEqual(built[0]);
      expect(built[2]).toEqual(built[0]);
    } finally {
      if (zone === undefined) delete process.env.TZ;
      else process.env.TZ = zone;
    }
  });

  test("keeps its links from build to build, and lists them for the trainer", async () => {
    const { paths } = await season();
    const first = await build(paths, OPTIONS, quiet());
    const again = await build(paths, OPTIONS, { ...quiet(), randomBytes: (count) => new Uint8Array(count).fill(1) });
    expect(again.links).toEqual(first.links);
    const listed = parse(await text(join(paths.desk, "links.csv")), { columns: true }) as Record<string, string>[];
    expect(listed.map(({ athlete, reader, published }) => [athlete, reader, published])).toEqual([
      ["ada-lund", "family", "yes"],
      ["ada-lund", "club", "yes"],
      ["ben-ridge", "family", "yes"],
      ["ben-ridge", "club", "no: no-consent"],
      ["cleo-vane", "family", "no: needs-guardian"],
      ["cleo-vane", "club", "no: needs-guardian"],
    ]);
    for (const { athlete, link, published } of listed) {
      const [path = "", key] = (link ?? "").split("#");
      if (published === "yes") expect(await text(join(paths.out, path, "index.html"))).toContain("<html");
      else expect(link).toBe("");
      // The child's is sealed.
      expect(key !== undefined).toBe(published === "yes" && athlete === "ben-ridge");
    }
  });

  test("publishes the pictures that a page's own notes name, and no other", async () => {
    const { paths } = await season();
    const { links } = await build(paths, OPTIONS, quiet());
    const pictures = Object.keys(await bytesOf(paths.out)).filter((path) => path.endsWith(".png"));
    expect(pictures).toHaveLength(1);
    expect(pictures[0]).toContain(links[0]?.path);
  });

  test("does not move with the clock, and moves with the day it is told", async () => {
    const { paths } = await season();
    const { asOf } = await build(paths, { ...OPTIONS, asOf: "2026-02-20" }, quiet());
    expect(asOf).toBe("2026-02-20");
    expect(JSON.parse(await text(join(paths.desk, "reports", "ada-lund.json"))).asOf).toBe("2026-02-20");
  });
});

describe("nobody stands in another's page", () => {
  const NOTE = "content/athletes/ben-ridge/notes/2026-01-22.md";
  const note = (readers: string) =>
    `---\ndate: 2026-01-22\nauthor: athlete\nkind: words\n${readers}---\nGood day.\nAda *Lund* hit beside me.\n`;

  test("a page that would name another athlete is held back, and the place is said", async () => {
    const { paths } = await season({ [NOTE]: note("readers: [family]\n") });
    const built = await build(paths, OPTIONS, quiet());
    expect(built.missing).toEqual(["ben-ridge"]);
    expect(built.problems.filter(({ level }) => level === "error")).toMatchObject([
      { code: "names-other-athlete", athlete: "ben-ridge", at: { file: NOTE, line: 8 }, args: { other: "ada-lund" } },
    ]);
    expect(built.links.filter(({ athlete }) => athlete === "ben-ridge").map(({ withheld }) => withheld)).toEqual([
      "names-other-athlete",
      "no-consent",
    ]);
    expect(
      Object.keys(await bytesOf(paths.out)).filter((path) => /^(?:[rc]\/[^/]+\/)?index.html$/.test(path)),
    ).toHaveLength(3);
  });

  test("a note that stays on the desk may name anybody", async () => {
    const { paths } = await season({ [NOTE]: note("") });
    expect((await build(paths, OPTIONS, quiet())).missing).toEqual([]);
  });

  test("a name that shows only in the finished page stops everything", async () => {
    const { paths } = await season({ [NOTE]: note("readers: [family]\n").replace("Ada *Lund*", "Ada&nbsp;Lund") });
    await expect(build(paths, OPTIONS, quiet())).rejects.toThrow(/belongs to ben-ridge and holds the name of ada-lund/);
    expect(await bytesOf(paths.out)).toEqual({});
  });
});

describe("a build that cannot go on", () => {
  test("leaves the published site as it was", async () => {
    const { paths } = await season();
    await build(paths, OPTIONS, quiet());
    const before = [await bytesOf(paths.out), await bytesOf(paths.desk)];
    await writeFile(join(paths.content, "facility.md"), "no keys at all");
    await expect(build(paths, OPTIONS, quiet())).rejects.toThrow("facility.md");
    expect([await bytesOf(paths.out), await bytesOf(paths.desk)]).toEqual(before);
  });

  test("stopped after any step of writing and swapping, is finished by the next one, and the site is never half of each", async () => {
    const STEPS = ["write", "create", "makeFolder", "rename", "remove"] as const;
    /** The real disk that stops before its `fatal`-th step; `kinds` is told of each. */
    const stopping = (fatal: number, kinds: string[]): BuildEffects => {
      const real = quiet();
      const disk = { ...real.disk } as Record<string, unknown>;
      for (const step of STEPS) {
        disk[step] = (...args: unknown[]) => {
          if (kinds.length >= fatal) throw new Error("power cut");
          kinds.push(step);
          return (real.disk[step] as (...all: unknown[]) => unknown)(...args);
        };
      }
      return { ...real, disk: disk as unknown as Disk };
    };
    const madeOnce = async () => {
      const { root, paths } = await season({
        "content/athletes/ben-ridge/profile.md": null,
        "content/athletes/cleo-vane/profile.md": null,
      });
      await build(paths, { ...OPTIONS, asOf: "2026-02-10" }, quiet());
      return { root, paths, old: [await bytesOf(paths.out), await bytesOf(paths.desk)] };
    };
    const kinds: string[] = [];
    const whole = await madeOnce();
    await build(whole.paths, { ...OPTIONS, asOf: "2026-02-20" }, stopping(Number.POSITIVE_INFINITY, kinds));
    const now = [await bytesOf(whole.paths.out), await bytesOf(whole.paths.desk)];
    // Of the many files the first, one in the middle and the last; of all else every step.
    const writes = kinds.flatMap((kind, i) => (kind === "write" ? [i] : []));
    const some = new Set([writes[0], writes[Math.floor(writes.length / 2)], writes.at(-2), writes.at(-1)]);
    const steps = kinds.flatMap((kind, i) => (kind !== "write" || some.has(i) ? [i] : []));
    expect(steps.length).toBeGreaterThan(15);
    const outcomes = new Set<string>();
    for (const fatal of steps) {
      const { root, paths, old } = await madeOnce();
      await build(paths, { ...OPTIONS, asOf: "2026-02-20" }, stopping(fatal, [])).catch(() => {});
      // The next command fails before it publishes anything: what is seen then is what recovery made.
      await writeFile(join(paths.content, "facility.md"), "no keys at all");
      await expect(build(paths, OPTIONS, { ...quiet(), runner: { pid: 1, isAlive: () => false } })).rejects.toThrow(
        "facility.md",
      );
      const found = [await bytesOf(paths.out), await bytesOf(paths.desk)];
      const which = isDeepStrictEqual(found, old) ? "old" : isDeepStrictEqual(found, now) ? "new" : "neither";
      expect(which, `stopped before step ${fatal}, ${kinds[fatal]}`).not.toBe("neither");
      outcomes.add(which);
      expect(Object.keys(await bytesOf(root)).filter((path) => path.includes("winterbook-"))).toEqual([]);
    }
    expect([...outcomes].sort()).toEqual(["new", "old"]);
  }, 240_000);

  test("does not run beside another, and says which one", async () => {
    const { paths } = await season();
    await build(paths, OPTIONS, quiet());
    await writeFile(join(paths.state, "lock"), `pid ${process.ppid}\n`);
    await expect(build(paths, OPTIONS, quiet())).rejects.toThrow(`process ${process.ppid}`);
  });

  test("never replaces a folder that holds somebody else's files", async () => {
    const { root, paths } = await season({ "papers/thesis.txt": "years of work" });
    await expect(build({ ...paths, out: join(root, "papers") }, OPTIONS, quiet())).rejects.toThrow("thesis.txt");
    expect(await text(join(root, "papers", "thesis.txt"))).toBe("years of work");
  });
});

describe("a check", () => {
  test("writes nothing", async () => {
    const { root, paths } = await season();
    const before = await bytesOf(root);
    const writes = () => Promise.reject(new Error("a check wrote"));
    const { disk, ...rest } = quiet();
    const readOnly: Disk = {
      ...disk,
      write: writes,
      create: writes,
      makeFolder: writes,
      rename: writes,
      remove: writes,
    };
    const { problems } = await check(paths, {}, { ...rest, disk: readOnly });
    expect(problems.filter(({ level }) => level === "row")).toHaveLength(3);
    expect(await bytesOf(root)).toEqual(before);
  });

  test("finds a name in another's page before anything is built", async () => {
    const { paths } = await season({
      "content/athletes/ben-ridge/closing.md": "Well done, and greetings to Ada Lund.\n",
    });
    expect((await check(paths, {}, quiet())).missing).toEqual(["ben-ridge"]);
  });

  test("names an athlete whose files cannot be used, and goes on with the others", async () => {
    const { paths } = await season({
      "content/athletes/ben-ridge/profile.md": "---\nname: Ben Ridge\nborm: 2014\n---\n",
    });
    const { missing, athletes, problems } = await check(paths, {}, quiet());
    expect(missing).toEqual(["ben-ridge"]);
    expect(athletes.map(({ id }) => id)).toEqual(["ada-lund", "cleo-vane"]);
    expect(problems).toContainEqual(expect.objectContaining({ code: "unknown-key", level: "error" }));
  });
});
