import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { textTable } from "../../../src/intake/guess/dialect.ts";
import { findTable } from "../../../src/intake/guess/find-table.ts";

const bytes = (text: string) => new TextEncoder().encode(text);
const OPEN = { encoding: null, delimiter: null };
const ROWS = [
  ["Hitter", "Date", "Bat Speed"],
  ["Ana", "06.10.2025", "61.5"],
  ["Ben", "07.10.2025", "70.1"],
];

describe("the table in an export", () => {
  test("lies below a preamble, above it a row of units, without sums and repeated headers", () => {
    const found = findTable([
      ["Report", "lane 2"],
      ["Printed", "2025-10-08"],
      ["Hitter", "Date", "Bat Speed"],
      ["", "", "mph"],
      ["Ana", "06.10.2025", "61.5"],
      ["Hitter", "Date", "Bat Speed"],
      ["Ben", "07.10.2025", "70.1"],
      ["Average", "", "65.8"],
    ]);
    expect(found).toMatchObject({
      header: ["Hitter", "Date", "Bat Speed"],
      above: 2,
      unitsRow: ["", "", "mph"],
      rows: [ROWS[1], ROWS[2]],
      summaryWords: ["Average"],
    });
  });

  test("keeps the rows of an athlete who is called Max", () => {
    const rows = [...ROWS, ["Max", "07.10.2025", "66.0"], ["Max", "", "70.1"]];
    expect(findTable(rows)).toMatchObject({ summaryWords: [] });
    expect(findTable(rows)?.rows).toHaveLength(4);
  });

  test.each([
    [[]],
    [[["a"]]],
    [
      [
        ["1", "2"],
        ["3", "4"],
      ],
    ],
    [[["Hitter", "Speed"]]],
  ])("is not in %j", (rows) => {
    expect(findTable(rows)).toBeNull();
  });

  test("is found through every delimiter, encoding and decimal mark", () => {
    const cell = fc.stringMatching(/^[a-zé ]{1,8}$/).filter((text) => text.trim() !== "");
    fc.assert(
      fc.property(
        fc.constantFrom(",", ";", "\t", "|"),
        fc.constantFrom("utf-8", "windows-1252", "utf-16le"),
        fc.array(fc.tuple(cell, fc.integer({ min: 150, max: 1100 })), { minLength: 1, maxLength: 20 }),
        (delimiter, encoding, swings) => {
          const decimal = delimiter === "," ? "." : ",";
          const lines = swings.map(([name, speed]) =>
            [`é${name}`, "2025-10-06", `${speed}${decimal}5`].join(delimiter),
          );
          const text = `${[["Ñame", "Date", "Speed"].join(delimiter), ...lines].join("\r\n")}\r\n`;
          const file =
            encoding === "utf-8"
              ? bytes(text)
              : new Uint8Array(
                  Buffer.from(
                    encoding === "utf-16le" ? `\ufeff${text}` : text,
                    encoding === "utf-16le" ? "utf16le" : "latin1",
                  ),
                );
          const read = textTable(file, OPEN);
          expect(read?.dialect).toMatchObject({ delimiter, encoding });
          expect(read?.table.header).toEqual(["Ñame", "Date", "Speed"]);
          expect(read?.table.rows).toHaveLength(swings.length);
        },
      ),
    );
  });
});
