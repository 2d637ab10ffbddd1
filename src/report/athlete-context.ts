import type { NotCountedReason } from "../schema/reasons.ts";
import type { Bridge } from "./bridges.ts";
import { groupOf } from "./change/group-of.ts";
import { windowOf } from "./change/window-of.ts";
import { worthOf } from "./change/yardsticks.ts";
import { deviceLines } from "./device-lines.ts";
import { outcomesByCondition, type Strand } from "./group.ts";
import { factKey, groupFacts } from "./group-facts.ts";
import type { ReportInput } from "./input.ts";
import type { Match } from "./match.ts";
import { ageBetween } from "./peer-age.ts";
import type { PeerQuestion } from "./peer-match.ts";
import { pointOnBatOf } from "./peer-point.ts";
import { peerSpread } from "./peer-spread.ts";
import { peersOf } from "./peers.ts";
import type { AthleteReport, Condition } from "./schema.ts";
import type { SeriesContext } from "./series.ts";

/** What was worked out of an athlete's reps before any series. */
interface Sorted {
  readonly conditions: readonly Condition[];
  readonly judged: readonly (NotCountedReason | null)[];
  readonly flags: ReadonlyMap<Strand, AthleteReport["flags"]>;
  readonly bridges: readonly Bridge[];
}

/** What every series of one athlete is made and judged with. */
export function contextFor(
  { season, athlete }: Pick<ReportInput, "season" | "athlete">,
  sorted: Sorted,
): SeriesContext {
  const { facility, metrics, devices, reference } = season;
  const { profile, reps } = athlete;
  const { conditions, judged, flags, bridges } = sorted;
  const lines = deviceLines(devices);
  const setUps = { lines, gameBats: profile.game_bat };
  const facts = new Map(
    (season.group ?? groupFacts({ ...season, athletes: [athlete] }, bridges)).map((fact) => [fact.key, fact]),
  );
  const kind = { sport: profile.sport ?? null, sex: profile.sex ?? null, level: profile.level ?? null };
  const question = ({ condition, parts }: Match): PeerQuestion => ({
    metric: parts[0]!.metric,
    condition,
    pointOnBat: pointOnBatOf(parts, reps, lines, metrics),
    ...kind,
  });
  const age = ageBetween(profile.born, facility.season.start, facility.season.end);
  return {
    judging: (found) => {
      const { metric } = found.parts[0]!;
      const fact = facts.get(factKey(metric.id, found.condition));
      const group = groupOf(fact, kind, peerSpread({ ...question(found), age }, reference));
      return {
        season: facility.season,
        lines: { setUps, bridges },
        fact,
        group,
        worth: worthOf(metric, group),
        window: windowOf(metric, found.condition, profile.goals ?? []),
      };
    },
    standing: (found, { first, last }) => {
      const end = (block: typeof first) =>
        block && { value: block.mean, age: ageBetween(profile.born, block.from, block.to) };
      return peersOf({ ...question(found), start: end(first), end: end(last) }, reference);
    },
    season: facility.season,
    away: profile.away ?? [],
    implements: season.implements,
    outcomes: outcomesByCondition(reps, conditions, judged),
    setUps,
    bridges,
    flagged: new Map([...flags].map(([strand, list]) => [strand, list.length])),
  };
}
