import { expect, test } from "vitest";
import { balance } from "../../src/publish/balance.ts";
import { reassignedRows } from "../../src/publish/reassigned.ts";
import type { AppliedCorrection } from "../../src/schema/season.ts";

const moved = (
  action: AppliedCorrection["action"],
  rows: [number, string | null, string | null][],
): AppliedCorrection => ({
  at: { file: "data/corrections.csv", line: 2 },
  ...{ by: "kay", on: "2025-10-20", reason: "wrong tag", action, field: "athlete_id", from: null, to: null },
  rows: rows.map(([line, athlete, now]) => ({ file: "a.csv", line, athlete, now })),
  overruledBy: null,
});

test("a run that was moved shows at both athletes, from where it was first to where it is at last", () => {
  const corrections = [
    moved("reassign", [
      [2, "ana", "ben"],
      [3, "ana", "ben"],
      [4, null, "ben"],
    ]),
    moved("reassign", [[3, "ben", "cal"]]),
    moved("set", [[5, "ana", "ana"]]),
  ];
  const rows = reassignedRows(corrections);
  expect(Object.fromEntries(rows)).toEqual({
    ana: { to: { ben: 1, cal: 1 }, from: {} },
    ben: { to: {}, from: { ana: 1, nobody: 1 } },
    cal: { to: {}, from: { ana: 1 } },
  });
  const judged = [
    { athlete: "ana", reps: { file: [0], partner: [null] }, judged: [null] },
    { athlete: "ben", reps: { file: [0, 0], partner: [null, null] }, judged: [null, null] },
  ];
  const { athletes } = balance([{ file: "a.csv", rows: 3 }], [], judged, rows);
  expect(athletes.map(({ id, read, reassigned }) => [id, read, reassigned?.to])).toEqual([
    ["ana", 1, { ben: 1, cal: 1 }],
    ["ben", 2, {}],
  ]);
});

test("a run moved back was moved nowhere", () => {
  expect(reassignedRows([moved("reassign", [[2, "ana", "ben"]]), moved("reassign", [[2, "ben", "ana"]])]).size).toBe(0);
});
