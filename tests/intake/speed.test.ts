import { parse } from "csv-parse/sync";
import { expect, test } from "vitest";
import { readSeason } from "../../src/intake/season.ts";
import { memoryEffects } from "./memory-disk.ts";
import { BASE } from "./season-of.ts";

const ROWS = 100_000;
const HEADER =
  "athlete_id,date,time,block,environment,drill,implement,ball,round,rep,side,swing_type,result,purpose,pitch_speed_mph,bat_speed_mph,attack_angle_deg,swing_time_s,exit_velocity_mph,launch_angle_deg,spray_angle_deg";

/** Rows without chance: every cell follows from the number of the row. */
function bigExport(): string {
  const two = (value: number): string => String(value).padStart(2, "0");
  const lines = Array.from({ length: ROWS }, (_, row) => {
    const day = `2025-${two(10 + (Math.floor(row / 40_000) % 3))}-${two(1 + (Math.floor(row / 1500) % 28))}`;
    const time = `${two(8 + Math.floor((row % 36_000) / 3600))}:${two(Math.floor((row % 3600) / 60))}:${two(row % 60)}`;
    const measured = [
      45,
      60 + (row % 97) / 10,
      -5 + (row % 31),
      0.15,
      80 + (row % 133) / 10,
      row % 45,
      (row % 61) - 30,
    ];
    return [
      "ana-l",
      day,
      time,
      "A",
      "machine",
      "gap",
      "game",
      "baseball",
      row % 5,
      row,
      "left",
      "full",
      "hit",
      "training",
      ...measured,
    ].join(",");
  });
  return `${HEADER}\n${lines.join("\n")}\n`;
}

test("reading a large export costs little more than cutting it into cells", async () => {
  const bytes = new TextEncoder().encode(bigExport());
  const effects = memoryEffects(
    new Map([
      ...Object.entries(BASE).map(([name, entry]) => [`/s/${name}`, entry] as const),
      ["/s/data/swings/a.csv", bytes],
    ]),
  );
  const timed = async (work: () => unknown): Promise<number> => {
    const start = performance.now();
    await work();
    return performance.now() - start;
  };
  const cut: number[] = [];
  const whole: number[] = [];
  // Turn by turn, so that a busy machine slows both.
  for (let turn = 0; turn < 3; turn++) {
    cut.push(await timed(() => parse(bytes, { bom: true })));
    whole.push(
      await timed(async () => {
        const season = await readSeason({ content: "/s/content", data: "/s/data" }, effects, null);
        expect(season.athletes[0]?.reps.n).toBe(ROWS);
      }),
    );
  }
  const ratio = Math.min(...whole) / Math.min(...cut);
  process.stdout.write(
    `reading ${ROWS} rows: ${Math.min(...whole).toFixed(0)} ms, ${ratio.toFixed(2)} times cutting alone\n`,
  );
  // Far above what is measured (see the printed ratio): it catches a schema call per row, not a busy machine.
  expect(ratio).toBeLessThan(4);
});
