import { describe, expect, test } from "vitest";
import { isolationCheck } from "../../src/publish/isolation.ts";

const ada = { id: "ada-lund", names: ["Ada Lund"], tokens: ["aaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaa"] };
const sean = { id: "sean-o", names: ["Seán O’Brae"], tokens: ["bbbbbbbbbbbbbbbbbbbbbbbbbbbbbbbb"] };
const mark = { id: "mark", names: ["Mark"], tokens: [] };
const names = isolationCheck([ada, sean, mark]);
const foundIn = (text: string, owner: string | null) =>
  names(text, owner).map(({ athlete, by }) => `${by} of ${athlete}`);

describe("a page names nobody but its own athlete", () => {
  test("and may name its own in every way", () => {
    expect(foundIn("<p>Ada Lund, ada-lund, /r/aaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaa/</p>", "ada-lund")).toEqual([]);
  });

  test.each([
    ["her full name", "<p>She hit with Ada Lund.</p>", "name of ada-lund"],
    ["it in other capitals", "<p>ADA LUND</p>", "name of ada-lund"],
    ["it over a line break", "<p>Ada\n  Lund</p>", "name of ada-lund"],
    ["it broken by tags", "<p>Ada <em>Lu</em>nd</p>", "name of ada-lund"],
    ["it in an attribute", '<img alt="Ada Lund at the tee">', "name of ada-lund"],
    ["it with references", "<p>Ada&#32;Lund</p>", "name of ada-lund"],
    ["her id", "<p>with ada-lund</p>", "id of ada-lund"],
    ["her token", '<a href="../aaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaa/">', "token of ada-lund"],
  ])("and is caught naming another by %s", (_, text, found) => {
    expect(foundIn(text, "sean-o")).toEqual([found]);
    expect(foundIn(text, null)).toEqual([found]);
  });

  test("whichever apostrophe and whichever way of writing the accent", () => {
    expect(foundIn("<p>Sea\u0301n O&#39;Brae</p>", "ada-lund")).toEqual(["name of sean-o"]);
  });

  test("and parts of words are no names", () => {
    expect(foundIn("<p>Granada Lundberg, ada-lundberg, x-ada-lund</p>", "sean-o")).toEqual([]);
  });

  test("and an id that is a plain word is none, but counts in an address", () => {
    expect(foundIn("<p>The mark is 66 mph.</p>", "ada-lund")).toEqual([]);
    expect(foundIn('<img src="content/athletes/mark/notes/stance.png">', "ada-lund")).toEqual(["id of mark"]);
  });

  test("and two athletes of one name do not shut each other out", () => {
    const twins = isolationCheck([ada, { id: "ada-lund-2", names: ["Ada Lund"], tokens: [] }]);
    expect(twins("<p>Ada Lund</p>", "ada-lund-2")).toEqual([]);
  });

  test.each([
    ["a longer first name", "Mary Ann Lee", "Ann Lee"],
    ["a second first name", "José Luis García", "Luis García"],
    ["a longer last name", "Ana Ruiz Soto", "Ana Ruiz"],
  ])("and a name inside the own name is the own: %s", (_, longer, shorter) => {
    const check = isolationCheck([
      { id: "one", names: [longer], tokens: [] },
      { id: "two", names: [shorter], tokens: [] },
    ]);
    const [first, ...rest] = longer.split(" ");
    for (const text of [
      `<h1>${longer}</h1>`,
      `**${first}** ${rest.join(" ")}`,
      `<b>${first}</b> ${rest.join(" ")}`,
      `<i>x</i><b>${longer}</b><i>x</i>`,
    ]) {
      expect(check(text, "one")).toEqual([]);
    }
    expect(check(`<p>${longer} beside ${shorter}</p>`, "one")).toMatchObject([{ athlete: "two", by: "name" }]);
    expect(check(`<p>beside ${longer}</p>`, "two")).toMatchObject([{ athlete: "one", by: "name" }]);
    expect(check(`<p>${longer}</p>`, null)).toHaveLength(2);
  });

  test("and a further name of the own hides nobody whose name goes on", () => {
    const check = isolationCheck([
      { id: "one", names: ["Mary Lee"], otherNames: ["Mary L.", "Ann"], tokens: [] },
      { id: "two", names: ["Mary L"], tokens: [] },
      { id: "three", names: ["Ann Ridge"], tokens: [] },
    ]);
    expect(check("<h1>Mary L.</h1>", "one")).toEqual([]);
    expect(check("<p>Ann, and Ann Ridge</p>", "one")).toMatchObject([{ athlete: "three" }]);
  });

  test("and an id that is a word of the season counts only in an address", () => {
    const check = isolationCheck([ada, { id: "front-toss", names: ["Fran Toss"], tokens: [], idIsWord: true }]);
    expect(check('<p class="front-toss">front-toss</p>', "ada-lund")).toEqual([]);
    expect(check('<img src="content/athletes/front-toss/notes/a.png">', "ada-lund")).toHaveLength(1);
    expect(check("<p>Fran Toss</p>", "ada-lund")).toHaveLength(1);
  });

  test("and public names may stand anywhere, and nobody alone by a part of them", () => {
    const check = isolationCheck([ada], ["Ada Lund Hitting"]);
    expect(check("<p>Ada Lund Hitting</p>", null)).toEqual([]);
    expect(check("<p>Ada Lund Hitting, Ada Lund</p>", null)).toHaveLength(1);
  });

  test("and signs in names are read as signs", () => {
    const check = isolationCheck([{ id: "x", names: ["A. (Tony) B+"], tokens: [] }]);
    expect(check("<p>with A. (Tony) B+ today</p>", null)).toHaveLength(1);
    expect(check("<p>AA (Tony) BB</p>", null)).toEqual([]);
  });
});

describe("a day of birth", () => {
  const born = isolationCheck([
    { id: "ada-lund", names: ["Ada Lund"], tokens: [], born: "2009-05-04" },
    { id: "ben-ridge", names: ["Ben Ridge"], tokens: [], born: null },
  ]);
  test.each([
    "2009-05-04",
    "May 4, 2009",
    "4 May 2009",
    "<b>4 de mayo de 2009</b>",
    "5/4/2009",
    "04/05/2009",
    "4.5.2009",
  ])("is found as %s on every page, the athlete's own too", (day) => {
    for (const owner of ["ben-ridge", "ada-lund", null])
      expect(born(`Born ${day}.`, owner)).toMatchObject([{ athlete: "ada-lund", by: "birth-date" }]);
  });
  test.each(["2009-05-05", "12009-05-04", "May 2009", "5/4/20091", "2009"])("is not found in %s", (text) => {
    expect(born(text, "ben-ridge")).toEqual([]);
  });
});
