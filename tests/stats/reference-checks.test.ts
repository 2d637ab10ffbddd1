import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";
import { afterEach, beforeEach, describe, expect, test } from "vitest";
import { disagreements } from "../reference-checks/agreement.ts";
import { referenceTests } from "../reference-checks/cases.ts";

describe("what counts as agreement with an outside value", () => {
  const tolerance = { rel: 1e-3, abs: 0.1, perField: { p: { rel: 0, abs: 0 }, loose: { abs: 5 } } };

  test("a number agrees up to abs + rel x expected, and not beyond", () => {
    expect(disagreements(1001.09, 1000, tolerance)).toEqual([]);
    expect(disagreements(1001.11, 1000, tolerance)).toHaveLength(1);
  });

  test("an override by field name holds for that field and everything below it", () => {
    expect(disagreements({ loose: { deep: [4] }, p: 1 }, { loose: { deep: [0] }, p: 1 }, tolerance)).toEqual([]);
    expect(disagreements({ p: 1.00001 }, { p: 1 }, tolerance)).toHaveLength(1);
  });

  test.each([
    ["NaN", Number.NaN, 1],
    ["NaN for a value that does not exist", Number.NaN, null],
    ["nothing for a value that does not exist", undefined, null],
    ["0 for a value that does not exist", 0, null],
    ["no such value where there is one", null, 0],
    ["text for a number", "1", 1],
    ["a missing field", { a: 1 }, { a: 1, b: null }],
    ["a shorter list", [1], [1, 2]],
    ["a longer list", [1, 2, 3], [1, 2]],
    ["a list that should be empty", [1], []],
    ["a number for an object", 1, { a: 1 }],
    ["another word", "A", "B"],
    ["true for false", true, false],
  ])("disagreement: %s", (_, got, expected) => {
    expect(disagreements(got, expected, tolerance).length).toBeGreaterThan(0);
  });

  test("more fields than expected do no harm, and no such value agrees with itself", () => {
    expect(disagreements({ a: null, extra: 2 }, { a: null }, tolerance)).toEqual([]);
  });
});

describe("a folder of outside cases", () => {
  let folder = "";
  beforeEach(() => {
    folder = mkdtempSync(path.join(tmpdir(), "winterbook-reference-"));
    mkdirSync(path.join(folder, "stats"));
  });
  afterEach(() => rmSync(folder, { recursive: true }));

  const ok = {
    id: "small",
    inputs: { x: [1, 2, 3] },
    expected: { n: 3, mean: 2, sd: 1, lag1: 0 },
    tolerance: { rel: 1e-12, abs: 0 },
    source: "worked by hand",
    computedWith: [],
  };
  const put = (name: string, id: string, cases: unknown[]) =>
    writeFileSync(path.join(folder, name), JSON.stringify({ id, title: "", checks: "", conventions: [], cases }));
  const titles = () => referenceTests(folder).map(({ title }) => title);
  const failures = () =>
    referenceTests(folder).filter(({ run }) => {
      try {
        run();
        return false;
      } catch {
        return true;
      }
    });

  test("a case that agrees passes under its own title", () => {
    put("stats/nist-univariate.json", "nist-univariate", [ok]);
    expect(titles()).toEqual(["stats/nist-univariate/small"]);
    expect(failures()).toEqual([]);
  });

  test.each([
    ["another value", { ...ok, expected: { ...ok.expected, sd: 1.1 } }],
    ["a field we do not give", { ...ok, expected: { ...ok.expected, skewness: 0 } }],
    ["inputs we do not know", { ...ok, inputs: { x: [1, 2, 3], weights: [1, 1, 1] } }],
    ["a tolerance rule we do not know", { ...ok, tolerance: { ...ok.tolerance, ulps: 4 } }],
    ["a tolerance for a field that is not expected", { ...ok, tolerance: { ...ok.tolerance, appliesTo: ["skew"] } }],
    ["nothing expected", { ...ok, expected: {} }],
    ["no source", { ...ok, source: undefined }],
  ])("a case with %s fails", (_, entry) => {
    put("stats/nist-univariate.json", "nist-univariate", [entry]);
    expect(failures()).toHaveLength(1);
  });

  test("with fields named that the tolerance is for, the others are Monte Carlo: only accepted ranges count", () => {
    const inputs = { statistic: "mean", confLevel: 0.95, x: [1, 2, 3, 4, 5] };
    const tolerance = { abs: 1e-12, appliesTo: ["estimate"] };
    const expected = {
      estimate: 3,
      bias: 99,
      acceptAtB10000: { percentile: { lower: [1.5, 2.1], upper: [3.9, 4.5] } },
    };
    put("stats/bootstrap.json", "bootstrap", [{ ...ok, inputs, tolerance, expected }]);
    expect(failures()).toEqual([]);
    for (const lower of [
      [2.2, 3],
      [0, 1.3],
    ]) {
      const moved = { ...expected, acceptAtB10000: { percentile: { lower, upper: [3.9, 4.5] } } };
      put("stats/bootstrap.json", "bootstrap", [{ ...ok, inputs, tolerance, expected: moved }]);
      expect(failures()).toHaveLength(1);
    }
  });

  test("a file id nobody knows fails case by case", () => {
    put("stats/omens.json", "omens", [ok, { ...ok, id: "other" }]);
    expect(failures().map(({ title }) => title)).toEqual(["stats/omens/small", "stats/omens/other"]);
  });

  test("a JSON file elsewhere in the folder, a broken one and one without cases fail", () => {
    writeFileSync(path.join(folder, "domain-checks.json"), "{}");
    writeFileSync(path.join(folder, "stats", "broken.json"), "{");
    put("stats/ols.json", "ols", []);
    expect(failures()).toHaveLength(3);
  });

  test("two cases of one name fail, and so do an empty and a missing folder", () => {
    put("stats/nist-univariate.json", "nist-univariate", [ok, ok]);
    expect(failures()).toHaveLength(1);
    rmSync(path.join(folder, "stats", "nist-univariate.json"));
    expect(failures()).toHaveLength(1);
    expect(() => referenceTests(path.join(folder, "nowhere"))[0]!.run()).toThrow("no such folder");
  });
});
