import { beforeAll, describe, expect, test } from "vitest";
import { renderSite, type SiteFile } from "../../src/site/site.ts";
import { empty, full, metric, series, sparse } from "./fixture-report.ts";
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
    /^_headers$/,
    /^[rc]\/[A-Za-z0-9_-]{20,}\/(es\/|en\/)?(metric\/|imperial\/)?index\.html$/,
    /^r\/[A-Za-z0-9_-]{20,}\/(es\/|en\/)?(metric\/|imperial\/)?(numbers|card)\/index\.html$/,
    /^[rc]\/[A-Za-z0-9_-]{20,}\/img-[0-9a-f]{12}\.png$/,
    /^assets\/winterbook\.[0-9a-f]{12}\.css$/,
    /^assets\/source-sans-3-(400|600)\.[0-9a-f]{12}\.woff2$/,
    /^assets\/logo\.[0-9a-f]{12}\.png$/,
    /^assets\/(days|opener)\.[0-9a-f]{12}\.js$/,
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
    // Two languages, two systems of units; a family's report has all its numbers on a page of their own.
    const cards = fixturePages.filter(({ reader, report }) => reader === "family" && report.program !== null).length;
    const families = fixturePages.filter(({ reader }) => reader === "family").length;
    expect(paths.filter((path) => path.endsWith(".html"))).toHaveLength(
      (fixturePages.length + families + cards) * 4 + 2,
    );
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

/** The family's report, whose pictures tell more where scripts run. */
const isReport = (path: string): boolean => path.startsWith("r/") && !/\/(?:numbers|card)\//.test(path);

describe("every page", () => {
  test("carries the policy, keeps out of indexes and gives no referrer", () => {
    const plain =
      "default-src 'none'; style-src 'self'; font-src 'self'; img-src 'self'; base-uri 'none'; form-action 'none'";
    for (const { path, body } of html()) {
      const policy = isReport(path) ? `${plain}; script-src 'self'; connect-src 'self'` : plain;
      expect(body).toContain(`http-equiv="Content-Security-Policy" content="${policy}"`);
      expect(body).toContain('<meta name="robots" content="noindex, nofollow"/>');
      expect(body).toContain('<meta name="referrer" content="no-referrer"/>');
    }
  });

  test("has no style, no handler and no script inside it; reports name one file of ours", () => {
    for (const { path, body } of html()) {
      const scripts = [...String(body).matchAll(/<script[^>]*>.*?<\/script>/gs)].map(([tag]) => tag);
      expect(scripts).toHaveLength(isReport(path) ? 1 : 0);
      for (const tag of scripts)
        expect(tag).toMatch(/^<script src="(?:\.\.\/)+assets\/days\.[0-9a-f]{12}\.js" defer><\/script>$/);
      expect(scripts.reduce((rest, tag) => rest.replace(tag, ""), String(body))).not.toMatch(
        /<script|<style|<iframe|<form|<base|\sstyle=|\son[a-z]+=|javascript:/i,
      );
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

  test("says how many measures were looked at, and how many had swings that count", () => {
    expect(plain(familyOf("sparse"))).toContain("Looked at for the season: 5 measures, of which 1 had swings");
    expect(familyOf("sparse")).toMatch(/data-at="\/measures">5<.*data-at="\/measuresWithSwings">1</);
  });

  test("does not say that there are no swings where only the measures of the season have none", async () => {
    const others = sparse.series.map((one) => ({ ...one, measure: null }));
    const text = plain(await familyWith({ ...sparse, series: others, measuresWithSwings: 0 }));
    expect(text).toContain("No measure of the season has swings that count");
    expect(text).not.toContain("No measured swings of the season");
    const numbers = await familyWith({ ...sparse, series: others, measuresWithSwings: 0 }, "numbers/");
    expect(plain(numbers)).toContain("Everything else that was measured");
    expect(plain(await familyWith(empty))).toContain("No measured swings of the season");
  });

  test("speaks of sessions where the trainer named them, and of training days nowhere", async () => {
    const course = { metric: "bat_speed", unit: "mph", decimals: 1, better: "higher", scatter: 1 } as const;
    const made = series({ ...course, from: 60, to: 63, days: 8, condition: { environment: "tee" }, measure: 0 });
    const named = { ...made, sessions: made.sessions.map((one) => ({ ...one, session: "evening" })) };
    const page = await familyWith({ ...sparse, series: [named], work: { ...sparse.work, days: 1 } });
    const text = plain(page);
    expect(text).toMatch(/Dots are sessions/);
    expect(text).toContain("Every figure is the average of a session");
    const numbers = await familyWith({ ...sparse, series: [named], work: { ...sparse.work, days: 1 } }, "numbers/");
    expect(plain(numbers)).toContain("All values, session by session");
    expect(page).toContain("one dot for each session from");
    expect(page.replaceAll(/data-at="\/work\/days"[^>]*>\d+<\/data> training day/g, "")).not.toContain("training day");
    expect(plain(familyOf("sparse"))).toContain("Every figure is the average of a training day");
  });

  test("gives the closing in the athlete's language where there is one, marked, else the plain one", async () => {
    const closing = { date: null, by: null, role: null, readers: ["family" as const], held: null };
    const own = { ...closing, language: "fr", body: "Bel hiver." };
    const plainOne = { ...closing, language: null, body: "A fine winter." };
    const both = await familyWith({ ...sparse, closings: [plainOne, own] });
    expect(both).toMatch(/lang="fr"[^>]*>\s*<p>Bel hiver/);
    expect(both).not.toContain("A fine winter.");
    expect(await familyWith({ ...sparse, closings: [plainOne] })).toContain("A fine winter.");
    expect(await familyWith({ ...sparse, closings: [own] })).toContain("Bel hiver.");
  });

  test("puts words of a trainer who has no role under the notes, not into the hitter's mouth", async () => {
    const words = {
      date: "2025-11-01",
      kind: "words" as const,
      about: [],
      readers: ["family" as const],
      held: null,
      images: {},
      series: [],
    };
    const jo = { ...words, author: "jo", role: null, body: "Kept at it." };
    const text = plain(await familyWith({ ...sparse, notes: [jo] }));
    expect(text).toContain("Kept at it.");
    expect(text).not.toContain("own words");
    const own = { ...jo, author: sparse.athlete.displayName };
    expect(plain(await familyWith({ ...sparse, notes: [own] }))).toContain("own words");
  });

  test("is there in the other language and the other units, and each leads to the others", () => {
    const at = (below: string) => pageAt(files, `r/token-of-the-fixture-full-family/${below}index.html`);
    expect(at("es/")).toContain('<html lang="es">');
    expect(plain(at("es/"))).toContain("Qué cambió");
    expect(plain(at("es/metric/"))).toMatch(/km\/h/);
    expect(at("")).toMatch(/<a href="es\/index.html" lang="es" hreflang="es">Español<\/a>/);
    expect(at("es/metric/numbers/")).toMatch(/<a href="\.\.\/\.\.\/\.\.\/metric\/numbers\/index.html" lang="en"/);
    expect(at("es/")).toMatch(/<img src="\.\.\/img-[0-9a-f]{12}\.png"/);
    for (const below of ["", "es/", "metric/", "es/metric/"]) {
      expect(at(below)).toContain('href="../../'.concat("../".repeat(below.split("/").length - 1), "assets/"));
      // The coach's words stay in the language they were written in, and say so.
      expect(at(below)).toContain("lifted &lt;b>too&lt;/b>.");
    }
  });

  test("shows the same figures of the report in every language and unit", () => {
    const figures = (below: string) =>
      [
        ...pageAt(files, `r/token-of-the-fixture-full-family/${below}index.html`).matchAll(
          /<data value="([^"]*)" data-at="([^"]*)"/g,
        ),
      ]
        .map(([, value, at]) => `${at} ${value}`)
        .sort();
    for (const below of ["es/", "metric/", "es/metric/"]) expect(figures(below)).toEqual(figures(""));
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

describe("the club's page", () => {
  test("explains the unit that it shows", () => {
    expect(plain(clubOf("full"))).toContain("mph: miles per hour");
    expect(plain(clubOf("metric"))).toContain("km/h: kilometres per hour");
    expect(plain(clubOf("metric"))).not.toContain("miles per hour");
    expect(metric.facility.units).toBe("metric");
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
  expect(told).toEqual([...[1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12].map((done): [number, number] => [done, 12])]);
});

test("a season that publishes nobody still has its front page", async () => {
  const made = await renderSite({ ...fixtureInput, pages: [] });
  expect(made.filter(({ path }) => path.endsWith(".html")).map(({ path }) => path)).toEqual(["404.html", "index.html"]);
});

/** A family page of a report: the report itself, or what lies below it. */
async function familyWith(report: typeof sparse, below = ""): Promise<string> {
  const token = "token-of-the-fixture-alone-family";
  const path = `r/${token}/index.html`;
  const page = { reader: "family" as const, recipient: "family", seal: null, token, path, report };
  return pageAt(await renderSite({ ...fixtureInput, pages: [page] }), path.replace("index.html", `${below}index.html`));
}

/** The words of a page, roughly as a reader sees them. */
function plain(page: string): string {
  return page
    .replaceAll(/<svg[\s\S]*?<\/svg>/g, "")
    .replaceAll(/<[^>]+>/g, "")
    .replaceAll("&nbsp;", " ")
    .replaceAll(/\s+/g, " ");
}
