import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { build } from "../../src/build.ts";
import { realEffects, thisProcess } from "../../src/cli/effects.ts";
import { sayProblem } from "../../src/cli/messages.ts";
import type { AthleteReport } from "../../src/report/schema.ts";

/**
 * lme4's `sleepstudy` (Belenky et al. 2003, J Sleep Res 12:1-12; lme4 data, GPL >= 2): 18 people, ten days, reaction times in
 * milliseconds, lower is better. It goes the whole way: own metric in metrics.md, one swing CSV, the reports on the desk.
 *
 * Expected: R 4.2.2, person by person. `lm` and `confint` for slope and interval; Theil-Sen as the median of all pairwise slopes, Sen's
 * interval at the exact ranks of Kendall's null distribution (the slopes with k + 1 from either end, k the largest count of
 * discordant pairs with a tail of at most 0.025); `cor.test(method = "kendall", exact = TRUE)` for p; S, and its variance without ties.
 */
const folder = mkdtempSync(join(tmpdir(), "winterbook-sleepstudy-"));
const rows = (name: string) =>
  readFileSync(join("tests", "reference", "report", name), "utf8")
    .trim()
    .split("\n")
    .slice(1)
    .map((line) => line.split(","));
const dayOf = (days: string) => new Date(Date.UTC(2025, 9, 6 + Number(days))).toISOString().slice(0, 10);

beforeAll(async () => {
  const put = (path: string, text: string) => {
    const full = join(folder, path);
    mkdirSync(join(full, ".."), { recursive: true });
    writeFileSync(full, text);
  };
  put(
    "content/facility.md",
    "---\nname: Sleep laboratory of an open data set\nseason: { name: Ten days, start: 2025-10-06, end: 2025-10-15 }\nmeasures: [{ metric: reaction }]\n---\n",
  );
  put(
    "content/metrics.md",
    "---\nmetrics:\n  - { id: reaction, label: Reaction time, unit: ms, better: lower, plausible: [50, 900], decimals: 1, smallest_worthwhile: 10 }\n---\n",
  );
  const data = rows("sleepstudy.csv");
  for (const subject of new Set(data.map(([one]) => one))) {
    put(`content/athletes/s${subject}/profile.md`, `---\nname: Subject ${subject}\n---\n`);
  }
  const lines = data.map(([subject, days, reaction]) => `s${subject},${dayOf(days!)},${reaction}`);
  put("data/swings/sleepstudy.csv", `athlete_id,date,reaction_ms\n${lines.join("\n")}\n`);
  const state = join(folder, ".winterbook");
  const paths = {
    content: join(folder, "content"),
    data: join(folder, "data"),
    out: join(folder, "_site"),
    desk: join(folder, "_desk"),
    state,
    hold: state,
  };
  const effects = { ...realEffects(() => {}, process.stderr), progress: () => {}, runner: thisProcess };
  await build(paths, { say: sayProblem }, effects);
});

afterAll(() => rmSync(folder, { recursive: true, force: true }));

const seriesOf = (subject: string) => {
  const path = join(folder, "_desk", "reports", `s${subject}.json`);
  const report = JSON.parse(readFileSync(path, "utf8")) as AthleteReport;
  expect(report.series).toHaveLength(1);
  return report.series[0]!;
};

/** Slopes are per week in the report and per day in R. */
const near = (got: number | null | undefined, expected: string | undefined, factor = 7) => {
  const wanted = Number(expected) * factor;
  expect(got).not.toBeNull();
  expect(Math.abs((got as number) - wanted)).toBeLessThanOrEqual(1e-9 * Math.abs(wanted) + 1e-9);
};

describe("ten days without enough sleep", () => {
  test.each(rows("sleepstudy-r.csv"))("subject %s changes as R says", (...row) => {
    const [subject, slope, , lower, upper, theilSen, senLower, senUpper, s, varS, z, p] = row;
    const { trend, change, sessionCount, n } = seriesOf(subject!);
    expect([sessionCount, n]).toEqual([10, 10]);
    near(trend.ols?.perWeek, slope);
    near(trend.ols?.ci95[0], lower);
    near(trend.ols?.ci95[1], upper);
    near(trend.sessionLine?.perWeek, slope);
    near(trend.theilSen?.perWeek, theilSen);
    near(trend.theilSen?.ci95[0], senLower);
    near(trend.theilSen?.ci95[1], senUpper);
    near(trend.mannKendall?.s, s, 1);
    near(trend.mannKendall?.varS, varS, 1);
    near(trend.mannKendall?.z, z, 1);
    near(trend.mannKendall?.p, p, 1);
    near(change?.estimate, slope, 9);
    expect(change?.method).toBe("session-line");
    expect(trend.mixed).toBeNull();
  });

  test("lower is better: several are said to have slowed down, and nobody to have improved", () => {
    const verdicts = rows("sleepstudy-r.csv").map(([subject]) => seriesOf(subject!).change?.verdict);
    const count = (list: readonly (string | null | undefined)[]) =>
      verdicts.filter((verdict) => list.includes(verdict)).length;
    expect(count(["clear-improvement", "improvement", "small-improvement"])).toBe(0);
    expect(count(["clear-decline", "decline", "small-decline"])).toBeGreaterThanOrEqual(5);
    // Subject 335 alone got faster, and not surely: R's interval holds 0.
    expect(seriesOf("335").change?.verdict).toBe("cannot-tell");
  });
});
