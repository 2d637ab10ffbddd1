import { describe, expect, test } from "vitest";
import { DESK_PATTERNS, guard, SITE_PATTERNS, unsafePath } from "../../src/publish/guard.ts";
import { checkOurs } from "../../src/publish/ours.ts";
import { MemoryDisk } from "./memory-disk.ts";

const token = "abcdefghijklmnopqrstuvwxyz234567";
const file = (path: string) => ({ path, body: "" });

describe("a path that is written", () => {
  test.each([
    "../index.html",
    "assets/../../x.css",
    "/etc/passwd",
    "C:/x.html",
    "assets\\x.css",
    "assets//x.css",
    "./index.html",
    "a\u0000.html",
    "con.html",
    "assets/NUL",
    "lpt1.txt",
    "assets/x.css.",
    "assets/x ",
    "",
    "x:stream",
  ])("is refused when it is %j", (path) => {
    expect(unsafePath(path)).not.toBeNull();
    expect(() => guard([file(path)], [/.*/])).toThrow("is not written");
  });

  test.each(["index.html", `r/${token}/index.html`, "assets/font-400.woff2", "reps/connor.csv"])(
    "may be %j",
    (path) => {
      expect(unsafePath(path)).toBeNull();
    },
  );
});

describe("the folder's rules", () => {
  test("let every page, style and picture of a site through", () => {
    const paths = ["index.html", "404.html", "robots.txt", "assets/style.abc123.css", "assets/sans-400.woff2"];
    const pages = [`r/${token}/index.html`, `c/${token}/index.html`, `r/${token}/stance.png`];
    expect(() => guard([...paths, ...pages].map(file), SITE_PATTERNS)).not.toThrow();
  });

  test.each([
    "ledger.json",
    "reports/ada-lund.json",
    `r/${token}/report.json`,
    "r/ada-lund/index.html",
    `r/${token.slice(1)}/index.html`,
    `x/${token}/index.html`,
    "assets/app.js",
    "links.csv",
    ".winterbook/secret",
  ])("keep %j out of the public site", (path) => {
    expect(() => guard([file(path)], SITE_PATTERNS)).toThrow("none of the files that belong there");
  });

  test("let the desk's own files through", () => {
    const paths = [
      "index.html",
      "links.csv",
      "ledger.csv",
      "ledger.json",
      "reports/ada-lund.json",
      "reps/ada-lund.csv",
    ];
    expect(() => guard(paths.map(file), DESK_PATTERNS)).not.toThrow();
  });

  test.each([
    ["index.html", "index.html"],
    ["assets/Sans.woff2", "assets/sans.woff2"],
  ])("stop the build when %j and %j would be one file", (a, b) => {
    expect(() => guard([file(a), file(b)], SITE_PATTERNS)).toThrow("two pages on one path");
  });
});

describe("a folder about to be replaced", () => {
  test("may be missing, empty or our own", async () => {
    await checkOurs("/s/_site", SITE_PATTERNS, new MemoryDisk());
    await checkOurs("/s/_site", SITE_PATTERNS, new MemoryDisk({ "/s/_site/.DS_Store": "" }));
    const ours = {
      "/s/_site/index.html": '<link rel="stylesheet" href="assets/winterbook.0123456789ab.css">',
      "/s/_site/assets/winterbook.0123456789ab.css": "",
      "/s/_site/.DS_Store": "",
    };
    await checkOurs("/s/_site", SITE_PATTERNS, new MemoryDisk(ours));
  });

  test.each([
    ["a front page of somebody else", { "index.html": "mine" }],
    ["no front page", { "robots.txt": "User-agent: *" }],
    [
      "somebody else's front page over our style sheet",
      { "index.html": "mine", "assets/winterbook.0123456789ab.css": "" },
    ],
    [
      "a page that names a style sheet which is not there",
      { "index.html": '<link href="assets/winterbook.0123456789ab.css">', "assets/winterbook.aaaaaaaaaaaa.css": "" },
    ],
  ])("is left alone when it holds names of ours and %s", async (_, files) => {
    const below = Object.fromEntries(Object.entries(files).map(([path, text]) => [`/home/me/junk/${path}`, text]));
    await expect(checkOurs("/home/me/junk", SITE_PATTERNS, new MemoryDisk(below))).rejects.toThrow("no build wrote");
  });

  test("is left alone when it holds anything else", async () => {
    const disk = new MemoryDisk({ "/home/me/thesis.docx": "years of work" });
    await expect(checkOurs("/home/me", SITE_PATTERNS, disk)).rejects.toThrow("thesis.docx");
  });
});
