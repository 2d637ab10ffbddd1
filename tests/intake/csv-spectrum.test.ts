import { readdirSync, readFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";
import { describe, expect, test } from "vitest";
import { readRecords } from "../../src/intake/csv-records.ts";

/** Source: the package csv-spectrum 2.0.0, CSV files beside what they hold as JSON. */
const folder = dirname(fileURLToPath(import.meta.resolve("csv-spectrum")));
const names = readdirSync(join(folder, "csvs")).map((file) => file.replace(/\.csv$/, ""));

describe("every file of csv-spectrum", () => {
  test("there are twelve of them", () => expect(names.length).toBe(12));

  test.each(names)("%s", (name) => {
    const { header, rows } = readRecords(readFileSync(join(folder, "csvs", `${name}.csv`)), ",");
    const expected: unknown = JSON.parse(readFileSync(join(folder, "json", `${name}.json`), "utf8"));
    const objects = rows.map((cells) => Object.fromEntries((header ?? []).map((key, index) => [key, cells?.[index]])));
    // A file of one row stands there as that row alone, and its telephone number is another one than in the CSV.
    const own = name === "location_coordinates" ? { "Contact Phone Number": "2095257564" } : null;
    expect(objects).toEqual(Array.isArray(expected) ? expected : [{ ...(expected as object), ...own }]);
  });
});
