import type { AthleteSeason } from "../schema/season.ts";
import { welch } from "../stats/welch.ts";
import { blockIndices } from "./blocks.ts";
import { elsewhere } from "./condition.ts";
import { feeds, type Judged } from "./gated.ts";
import { shareOf } from "./hitting/swings.ts";
import type { ReportInput } from "./input.ts";
import type { AthleteReport } from "./schema.ts";
import { inZone } from "./zones.ts";

type Aim = AthleteReport["aims"][number];
type Wanted = NonNullable<ReportInput["season"]["drills"][number]["aims"]>[number];

const totals = (days: readonly { readonly inside: number; readonly of: number }[]) =>
  days.reduce((sum, day) => ({ inside: sum.inside + day.inside, of: sum.of + day.of }), { inside: 0, of: 0 });

/** Is each rep inside the aim: yes, no, or null where it was not read. */
function insideOf(
  aim: Wanted,
  season: ReportInput["season"],
  { reps, profile }: Pick<AthleteSeason, "reps" | "profile">,
) {
  if ("zone" in aim) {
    const zone = season.zones.find(({ id }) => id === aim.zone);
    return zone === undefined ? null : inZone(zone, reps, profile.bats).map((one) => (one === null ? null : one === 1));
  }
  const column = reps.numbers[aim.metric];
  if (column === undefined) return null;
  return column.map((value) => {
    if (typeof value !== "number") return null;
    return "window" in aim ? value >= aim.window[0] && value <= aim.window[1] : value >= aim.at_least;
  });
}

/**
 * The share of a drill's reps inside each of the drill's own aims, day by day: full training swings made here whose values count. First and last
 * days are the blocks of every series, and the change between them is Welch's on the days' shares.
 *
 * @returns aims with at least one read rep, in the order of drills.md
 */
export function aimsOf(
  { season, athlete }: Pick<ReportInput, "season" | "athlete">,
  { conditions, judged }: Pick<Judged, "conditions" | "judged">,
): Aim[] {
  const { reps } = athlete;
  const { start, end } = season.facility.season;
  return season.drills.flatMap((drill) =>
    (drill.aims ?? []).flatMap((aim): Aim[] => {
      const inside = insideOf(aim, season, athlete);
      const metric = season.metrics.find(({ id }) => id === aim.metric);
      if (inside === null || metric === undefined) return [];
      const side = "zone" in aim ? "ball" : metric.side;
      const byDay = new Map<string, { inside: number; of: number }>();
      for (const [row, condition] of conditions.entries()) {
        const date = reps.date[row]!;
        const mine = reps.words.drill?.[row] === drill.id && date >= start && date <= end;
        const plain = condition.swing === undefined && condition.purpose !== "test" && elsewhere(condition) === null;
        if (!mine || !plain || !feeds(side, judged[row]!) || inside[row] == null) continue;
        const day = byDay.get(date) ?? { inside: 0, of: 0 };
        byDay.set(date, { inside: day.inside + Number(inside[row]), of: day.of + 1 });
      }
      const days = [...byDay]
        .sort(([a], [b]) => (a < b ? -1 : 1))
        .map(([date, day]) => ({ date, ...day, share: day.inside / day.of }));
      const all = totals(days);
      const share = shareOf(all.inside, all.of);
      if (share === null) return [];
      const blocks = blockIndices(days, season.facility.season);
      const pick = (which: "first" | "last") => (blocks?.[which] ?? []).map((index) => days[index]!);
      const part = (which: "first" | "last") => {
        const of = pick(which);
        const sum = totals(of);
        const found = shareOf(sum.inside, sum.of);
        return found && { from: of[0]!.date, to: of.at(-1)!.date, days: of.length, ...found };
      };
      const moved = welch(
        pick("first").map((day) => day.share),
        pick("last").map((day) => day.share),
      );
      const zone = "zone" in aim ? season.zones.find(({ id }) => id === aim.zone) : undefined;
      return [
        {
          drill: drill.id,
          label: drill.label,
          metric: zone === undefined ? metric.id : null,
          unit: metric.unit,
          decimals: metric.decimals,
          zone: zone === undefined ? null : zone.label,
          window: "window" in aim ? [...aim.window] : null,
          atLeast: "at_least" in aim ? aim.at_least : null,
          days,
          dayCount: days.length,
          all: share,
          first: part("first"),
          last: part("last"),
          change: moved?.interval ? { estimate: moved.difference, ci95: [...moved.interval] } : null,
        },
      ];
    }),
  );
}
