import { expect, test } from "vitest";
import { type DeskInput, renderDesk } from "../../src/site/desk.ts";
import { desk } from "./fixture-desk.ts";

const indexOf = async (input: DeskInput): Promise<string> =>
  String((await renderDesk(input)).find(({ path }) => path === "index.html")?.body);

test("the desk is a page with its assets beside it, a page of pairs for whom two devices saw, the same when made again", async () => {
  const files = await renderDesk(desk);
  expect(files.map(({ path }) => path.replace(/[0-9a-f]{12}/, "HASH"))).toEqual([
    "assets/source-sans-3-400.HASH.woff2",
    "assets/source-sans-3-600.HASH.woff2",
    "assets/source-sans-3.OFL.txt",
    "assets/winterbook.HASH.css",
    "index.html",
    "links/ottilie-fernmoor.html",
    "pairs/ottilie-fernmoor.html",
  ]);
  expect(await renderDesk(desk)).toEqual(files);
});

test("the desk shows links, why a page is not published, the balance, and what to put right first", async () => {
  const body = await indexOf(desk);
  expect(body).toMatch(
    /<a href="..\/_site\/r\/token\/index.html" data-own[^>]*>Home<\/a><small> sealed, asks for words<\/small>/,
  );
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
    pairings: [],
    problems: [],
  };
  const body = await indexOf(nothing);
  for (const sentence of [
    "No athlete is on file yet.",
    "Nothing to put right.",
    "Every row that was read was counted.",
  ]) {
    expect(body).toContain(sentence);
  }
});

test("a page of pairs shows both clocks, draws made and doubtful pairs, and lists every row without a partner", async () => {
  const files = await renderDesk(desk);
  const body = String(files.find(({ path }) => path.startsWith("pairs/"))?.body);
  expect(body).toMatch(/data-at="\/paired\/0\/days\/0\/clocks\/offset">\+74.3</);
  expect(body.match(/class="link" d="(M[^"]*)"/)?.[1]?.match(/M/g)).toHaveLength(3);
  expect(body.match(/class="doubt" d="(M[^"]*)"/)?.[1]?.match(/M/g)).toHaveLength(1);
  for (const place of ["knob/a.csv:5", "knob/a.csv:6", "screen/a.csv:6"]) expect(body).toContain(place);
  expect(body).toContain("their times do not tell which belong together");
  expect(body).not.toMatch(/<script|<style|\sstyle=|NaN|undefined|\[object/);
  const index = await indexOf(desk);
  expect(index).toContain('<a href="pairs/');
  expect(index).toMatch(/data-at="\/paired\/0\/total\/doubtful">1</);
});
