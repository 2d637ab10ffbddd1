import { expect, test } from "vitest";
import { type DeskInput, renderDesk } from "../../src/site/desk.ts";
import { desk } from "./fixture-desk.ts";

test("the desk is one page with its assets beside it, the same when made again", async () => {
  const files = await renderDesk(desk);
  expect(files.map(({ path }) => path.replace(/[0-9a-f]{12}/, "HASH"))).toEqual([
    "assets/source-sans-3-400.HASH.woff2",
    "assets/source-sans-3-600.HASH.woff2",
    "assets/source-sans-3.OFL.txt",
    "assets/winterbook.HASH.css",
    "index.html",
  ]);
  expect(await renderDesk(desk)).toEqual(files);
});

test("the desk shows links, why a page is not published, the balance, and what to put right first", async () => {
  const body = String((await renderDesk(desk)).at(-1)?.body);
  expect(body).toContain('<a href="../_site/r/token/index.html">Home</a>');
  expect(body).not.toContain("javascript:");
  expect(body).not.toContain("../_site/r/other/");
  expect(body).toContain("not published: a guardian has to agree");
  expect(body).toContain("not published: consent was withdrawn");
  expect(body).toContain("broken-file");
  expect(body).toMatch(
    /data-at="\/total\/read">1,364<.*data-at="\/total\/counted">1,299<.*data-at="\/total\/notCounted">53<.*data-at="\/total\/setAside">12</,
  );
  expect(body.indexOf("unknown key")).toBeLessThan(body.indexOf("bat_speed_mph is 165"));
  expect(body).toContain("&lt;b>6,5");
  expect(body).not.toMatch(/<script|<style|\sstyle=|NaN|undefined|\[object/);
});

test("an empty season has a desk that says so", async () => {
  const nothing: DeskInput = {
    ...desk,
    athletes: [],
    leftOut: [],
    ledger: { total: { read: 0, counted: 0, notCounted: {}, setAside: {} }, files: [] },
    rows: [],
    problems: [],
  };
  const body = String((await renderDesk(nothing)).at(-1)?.body);
  for (const sentence of [
    "No athlete is on file yet.",
    "Nothing to put right.",
    "Every row that was read was counted.",
  ]) {
    expect(body).toContain(sentence);
  }
});
