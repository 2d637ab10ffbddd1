import { beforeAll, describe, expect, test } from "vitest";
import { renderSite, type SiteFile } from "../../src/site/site.ts";
import { full, sparse } from "./fixture-report.ts";
import { fixtureInput, fixturePages, PIXEL, pageAt, renderFixtures } from "./fixture-site.ts";

let files: SiteFile[];
beforeAll(async () => {
  files = await renderFixtures();
});

const html = () => files.filter(({ path }) => path.endsWith(".html"));
const familyOf = (name: string) => pageAt(files, `r/token-of-the-fixture-${name}-family/index.html`);
const clubOf = (name: string) => pageAt(files, `c/token-of-the-fixture-${name}-club/index.html`);

describe("the site's files", () => {
  const ALLOWED = [
    /^(index|404)\.html$/,
    /^robots\.txt$/,
    /^[rc]\/[A-Za-z0-9_-]{20,}\/index\.html$/,
    /^[rc]\/[A-Za-z0-9_-]{20,}\/img-[0-9a-f]{12}\.png$/,
    /^assets\/winterbook\.[0-9a-f]{12}\.css$/,
    /^assets\/source-sans-3-(400|600)\.[0-9a-f]{12}\.woff2$/,
    /^assets\/source-sans-3\.OFL\.txt$/,
  ];

  test("are of the known kinds only, in order of path, and no path stands twice", () => {
    const paths = files.map(({ path }) => path);
    for (const path of paths)
      expect(
        ALLOWED.some((pattern) => pattern.test(path)),
        path,
      ).toBe(true);
    expect(paths).toEqual([...new Set(paths)].sort());
    expect(paths.filter((path) => path.endsWith(".html"))).toHaveLength(fixturePages.length + 2);
  });

  test("are the same bytes when made again", async () => {
    expect(await renderFixtures()).toEqual(files);
  });

  test("hold at most two fonts of about 16 KB, with their licence beside them", () => {
    const fonts = files.filter(({ path }) => path.endsWith(".woff2"));
    expect(fonts).toHaveLength(2);
    for (const { body } of fonts) expect(body.length).toBeLessThan(17_000);
    expect(files.find(({ path }) => path.endsWith("OFL.txt"))?.body).toContain("SIL Open Font License");
  });

  test("tell every robot to stay away", () => {
    expect(files.find(({ path }) => path === "robots.txt")?.body).toBe("User-agent: *\nDisallow: /\n");
  });
});

describe("every page", () => {
  test("carries the policy, keeps out of indexes and gives no referrer", () => {
    for (const { body } of html()) {
      expect(body).toContain(
        `content="default-src 'none'; style-src 'self'; font-src 'self'; img-src 'self'; base-uri 'none'; form-action 'none'"`,
      );
      expect(body).toContain('<meta name="robots" content="noindex, nofollow"/>');
      expect(body).toContain('<meta name="referrer" content="no-referrer"/>');
    }
  });

  test("has no script, no style and no handler inside it", () => {
    for (const { body } of html()) {
      expect(body).not.toMatch(/<script|<style|<iframe|<form|<base|\sstyle=|\son[a-z]+=|javascript:/i);
    }
  });

  test("never shows a value that is none", () => {
    for (const { path, body } of html()) expect(body, path).not.toMatch(/NaN|undefined|Infinity|\[object|>null</);
  });

  test("carries the facility's notice, where there is one", () => {
    for (const { path, body } of html()) {
      if (!path.includes("metric")) expect(body, path).toContain("Everything here is invented");
    }
  });
});

describe("the public front", () => {
  test("names nobody and links to no report", () => {
    for (const page of ["index.html", "404.html"]) {
      const body = pageAt(files, page);
      expect(body).toContain("Hollow Creek Cages");
      for (const { report, token } of fixturePages) {
        expect(body).not.toContain(report.athlete.displayName);
        expect(body).not.toContain(token);
      }
      expect(body).not.toContain("Bram Ackerley");
    }
  });
});

describe("the family's report", () => {
  test("gives a change with its range in plain words and the days behind it", () => {
    const text = plain(familyOf("full"));
    expect(text).toContain("+2.9 mph over the season");
    expect(text).toContain("somewhere between +1.6 and +4.2 mph (95% range; the line of 21 training days)");
    expect(text).toContain("Zero, which would be no change, lies within this range.");
  });

  test("says plainly when there is too little", () => {
    expect(plain(familyOf("sparse"))).toContain("3 training days: too few to draw a line");
  });

  test("gives no change across a new bat sensor, and says why", () => {
    const text = plain(familyOf("full"));
    expect(text).toContain("From December 1, 2025 on, another bat sensor was used: knob-2.");
  });

  test("leaves no empty heading where a piece is missing", () => {
    const text = plain(familyOf("sparse"));
    for (const head of [
      "Goals",
      "Notes through the winter",
      "To close the season",
      "Program to take along",
      "Where we began",
    ]) {
      expect(text).not.toContain(head);
    }
    expect(plain(familyOf("empty"))).toContain("there is nothing to compare");
  });

  test("says who agreed, and when, and never by name", () => {
    expect(plain(familyOf("sparse"))).toContain("A guardian agreed on October 2, 2025");
    expect(plain(familyOf("full"))).toContain("The hitter agreed on October 1, 2025");
  });

  test("keeps the child's body mass to itself", () => {
    expect(plain(familyOf("sparse"))).toContain("57.3 in");
    expect(familyOf("sparse")).not.toContain("/athlete/masses/");
    expect(clubOf("sparse")).not.toMatch(/\/athlete\/(masses|heights)\//);
    expect(familyOf("full")).toContain("/athlete/masses/");
  });

  test("leaves out notes for other readers even when the report still holds them", () => {
    expect(familyOf("full")).not.toContain("Only for a club.");
  });

  test("says what a reader has to know about pain and growth", () => {
    const text = plain(familyOf("sparse"));
    expect(text).toContain(
      "Pain during or after swings is a reason to stop and to see a licensed health professional.",
    );
    expect(text).toContain("Children of one age differ in growth.");
    expect(plain(familyOf("full"))).not.toContain("Children of one age");
  });

  test("is in English, marked as such, for a language that has no catalogue", () => {
    expect(familyOf("sparse")).toContain('<html lang="en">');
  });

  test("shows the units of the facility and keeps the report's own number beside them", () => {
    expect(familyOf("metric")).toMatch(/<data value="62" data-at="\/goals\/0\/target">100<\/data>\s*km\/h/);
  });

  test("shows pictures from beside the note under a name that tells nothing", () => {
    expect(familyOf("full")).toMatch(/<img src="img-[0-9a-f]{12}\.png" alt="The new tee" loading="lazy">/);
    expect(files.filter(({ path }) => path.includes("/img-")).map(({ body }) => body)).toEqual([PIXEL, PIXEL]);
  });

  test("shows the coach's text as text", () => {
    expect(familyOf("full")).toContain("lifted &lt;b>too&lt;/b>.");
  });
});

describe("what is refused", () => {
  const page = fixturePages[0]!;
  const render = (change: object) => renderSite({ ...fixtureInput, pages: [{ ...page, ...change }] });

  test.each(["short", "../../../../etc/passwd-and-so-on", "token with spaces in it, long", "abcdefghijklmnopqrst/.."])(
    "the token %j",
    async (token) => {
      await expect(render({ token })).rejects.toThrow(/token/);
    },
  );

  test("a page whose reader has no consent", async () => {
    const publication = { ...sparse.publication, family: { publish: false as const, why: "withdrawn" as const } };
    await expect(render({ report: { ...sparse, publication } })).rejects.toThrow(/no consent/);
  });

  test("two pages under one token", async () => {
    await expect(renderSite({ ...fixtureInput, pages: [page, { ...page, reader: "club" }] })).rejects.toThrow(
      /share one token/,
    );
  });

  test("a figure that is no number", async () => {
    const report = { ...full, work: { ...full.work, swings: Number.NaN } };
    await expect(render({ report })).rejects.toThrow();
  });
});

test("progress is told once for each page", async () => {
  const told: [number, number][] = [];
  await renderSite({ ...fixtureInput, pages: fixturePages.slice(2, 4), progress: (done, of) => told.push([done, of]) });
  expect(told).toEqual([
    [1, 2],
    [2, 2],
  ]);
});

test("a season that publishes nobody still has its front page", async () => {
  const made = await renderSite({ ...fixtureInput, pages: [] });
  expect(made.filter(({ path }) => path.endsWith(".html")).map(({ path }) => path)).toEqual(["404.html", "index.html"]);
});

/** The words of a page, roughly as a reader sees them. */
function plain(page: string): string {
  return page
    .replaceAll(/<svg[\s\S]*?<\/svg>/g, "")
    .replaceAll(/<[^>]+>/g, "")
    .replaceAll("&nbsp;", " ")
    .replaceAll(/\s+/g, " ");
}
