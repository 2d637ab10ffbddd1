import type { CellContext } from "../../src/intake/cell-reader.ts";
import type { SwingFields } from "../../src/intake/swing-fields.ts";
import type { SwingSetup } from "../../src/intake/swing-file.ts";

const HEADER =
  "athlete_id,date,time,environment,implement,round,rep,side,bat_speed_mph,attack_angle_deg,exit_velocity_mph,launch_angle_deg";
const PIECE = 10_000;

const two = (value: number): string => String(value).padStart(2, "0");

/** A row without chance: every cell follows from its number. */
function rowOf(row: number): string {
  const date = `2025-${two(10 + (Math.floor(row / 40_000) % 3))}-${two(1 + (Math.floor(row / 1500) % 28))}`;
  const time = `${two(8 + (Math.floor(row / 3600) % 12))}:${two(Math.floor(row / 60) % 60)}:${two(row % 60)}`;
  const measured = [60 + (row % 97) / 10, -5 + (row % 31), 80 + (row % 1331) / 100, row % 45];
  const words = ["ana-l", date, time, "machine", "game", row % 6, row % 5000, row % 2 === 0 ? "left" : "right"];
  return [...words, ...measured].join(",");
}

/** An export of twelve of our own columns, piece by piece, so that making it needs no memory beside it. */
export function largeExport(rows: number): Uint8Array {
  const pieces: Buffer[] = [Buffer.from(`${HEADER}\n`)];
  for (let from = 0; from < rows; from += PIECE) {
    const length = Math.min(PIECE, rows - from);
    pieces.push(Buffer.from(`${Array.from({ length }, (_, index) => rowOf(from + index)).join("\n")}\n`));
  }
  return Buffer.concat(pieces);
}

/** One athlete, no lists: nothing is said against any name. */
export function plainSetup(fields: SwingFields): SwingSetup {
  const context: CellContext = {
    known: {
      staff: null,
      sites: null,
      drills: null,
      zones: null,
      metrics: null,
      environments: null,
      implements: null,
      bats: null,
      balls: null,
      languages: null,
      athletes: new Set(["ana-l"]),
    },
    names: {
      find: (text) => (text === "ana-l" ? { kind: "one", id: text } : { kind: "unknown", suggestion: null }),
      problems: [],
    },
    index: new Map([["ana-l", 0]]),
    timeZone: null,
  };
  return { fields, mappings: [], context, athletes: ["ana-l"] };
}
