import { expect, test } from "vitest";
import { readNumber, readPointer, readText } from "../../src/site/pointer.ts";

// The document and answers of RFC 6901, section 5.
const document = { foo: ["bar", "baz"], "": 0, "a/b": 1, "c%d": 2, "m~n": 8 };

test.each([
  ["", document],
  ["/foo", ["bar", "baz"]],
  ["/foo/0", "bar"],
  ["/", 0],
  ["/a~1b", 1],
  ["/c%d", 2],
  ["/m~0n", 8],
] as const)("the pointer %j leads where RFC 6901 says", (pointer, value) => {
  expect(readPointer(document, pointer)).toEqual(value);
});

test("a pointer that leads to nothing throws, so that no page shows a figure that the report does not hold", () => {
  expect(() => readPointer(document, "/foo/2")).toThrow(/leads to nothing/);
  expect(() => readPointer({ change: null }, "/change/estimate")).toThrow(/leads to nothing/);
  expect(() => readPointer(document, "/toString")).toThrow(/leads to nothing/);
});

test("only finite numbers are figures and only text is a day", () => {
  expect(() => readNumber({ n: null }, "/n")).toThrow(/not to a finite number/);
  expect(() => readNumber({ n: Number.NaN }, "/n")).toThrow(/not to a finite number/);
  expect(() => readNumber({ n: "5" }, "/n")).toThrow(/not to a finite number/);
  expect(() => readText({ n: 5 }, "/n")).toThrow(/not to text/);
});
