import { parse } from "csv-parse/sync";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { csv } from "../../src/publish/csv.ts";

describe("a CSV file we write", () => {
  test("quotes commas, quotes, line breaks and outer spaces, and nothing else", () => {
    expect(
      csv(
        ["a", "b,c"],
        [
          ['say "up"', "two\nlines"],
          [" x", "plain text"],
        ],
        "data",
      ),
    ).toBe('a,"b,c"\n"say ""up""","two\nlines"\n" x",plain text\n');
  });

  test("leaves a missing value blank and never writes it as 0", () => {
    expect(csv(["bat_speed_mph", "round"], [[null, 0]], "data")).toBe("bat_speed_mph,round\n,0\n");
  });

  test.each(["=1+1", "+cmd", "-x", "@sum", "\tx", "=HYPERLINK(1)"])("does not let %j run in a spreadsheet", (text) => {
    const [row] = parse(csv(["value"], [[text]], "spreadsheet"), { from_line: 2 });
    expect(row).toEqual([`'${text}`]);
  });

  test.each(["-12.5", "+3", "-4,5", "61"])("leaves the number %j a number", (text) => {
    expect(parse(csv(["value"], [[text]], "spreadsheet"), { from_line: 2 })).toEqual([[text]]);
  });

  test("changes nothing in files for programs", () => {
    expect(csv(["comment"], [["=1+1"]], "data")).toBe("comment\n=1+1\n");
  });

  test("reads back as it was written, whatever stands in it", () => {
    fc.assert(
      fc.property(
        fc.array(fc.tuple(fc.string(), fc.string({ unit: "binary" })), { minLength: 1, maxLength: 4 }),
        (rows) => {
          const back = parse(csv(["a", "b"], rows, "data"), { from_line: 1, record_delimiter: "\n" });
          expect(back.slice(1)).toEqual(rows);
        },
      ),
    );
  });

  test("refuses a row that does not fit its header", () => {
    expect(() => csv(["a", "b"], [["1"]], "data")).toThrow(RangeError);
  });
});
