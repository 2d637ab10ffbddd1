import { DAY_MS, dayOf } from "../calendar.ts";
import type { HittingReport } from "../hitting-schema.ts";
import type { AthleteReport, Series } from "../schema.ts";

type Growth = NonNullable<HittingReport["growth"]>;

/** Height and mass beside the change, and what peers of that age gain in the same time; for minors alone. */
export function growthReport(
  person: AthleteReport["athlete"],
  season: { readonly start: string; readonly end: string },
  series: readonly Series[],
): Growth | null {
  if (!person.minor) return null;
  const inside = <T extends { readonly date: string }>(list: readonly T[]): T[] => {
    const sorted = [...list].sort((a, b) => (a.date < b.date ? -1 : 1));
    return sorted.filter(({ date }) => date <= season.end);
  };
  const [heights, masses] = [inside(person.heights), inside(person.masses)];
  const span = (list: readonly { readonly date: string }[]) =>
    list.length < 2 ? null : (dayOf(list.at(-1)!.date) - dayOf(list[0]!.date)) / DAY_MS;
  const peers = series.flatMap((one, index): Growth["peers"] => {
    const { bands, bandsStart } = one.peers ?? {};
    if (one.measure === null || !bands || !bandsStart) return [];
    return [
      {
        series: index,
        metric: one.metric,
        unit: one.unit,
        decimals: one.decimals,
        condition: one.condition,
        change: one.change?.estimate ?? null,
        peersGain: bands.p50 - bandsStart.p50,
      },
    ];
  });
  const grown = { heightIn: span(heights) === null ? null : heights.at(-1)!.in - heights[0]!.in };
  const heavier = { massLb: span(masses) === null ? null : masses.at(-1)!.lb - masses[0]!.lb };
  if (grown.heightIn === null && heavier.massLb === null && peers.length === 0) return null;
  return { ...grown, ...heavier, days: span(heights) ?? span(masses), peers };
}
