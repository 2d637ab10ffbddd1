import type { Reference } from "../schema/season.ts";
import { type Bands, ELSEWHERE, type PeerCurve, type PeersAtAge } from "./peer-curve.ts";
import { peerLines } from "./peer-lines.ts";
import { type PeerGroup, type PeerQuestion, peerGroups } from "./peer-match.ts";
import { sampleAt } from "./peer-sample.ts";
import { lmsAt, meanSdAt } from "./peer-table.ts";
import type { Series } from "./schema.ts";

/** A value at one end of a series and the athlete's age then, in years (`ageBetween`). */
export interface End {
  readonly value: number;
  readonly age: number | null;
}

/** A series that is to be held against others. */
export interface PeerAsked extends PeerQuestion {
  /** Null where the series has no such end. */
  readonly start: End | null;
  readonly end: End | null;
}

type Peers = NonNullable<Series["peers"]>;
type Answer = Pick<Series, "peers" | "peerLines" | "peersTooFew">;

/** A group at one age, whatever its kind. */
function atAge(group: PeerGroup, age: number | null): PeersAtAge {
  if (group.kind === "value") return sampleAt(group, age);
  if (group.kind === "lms") return lmsAt(group, age);
  return group.kind === "mean-sd" ? meanSdAt(group, age) : ELSEWHERE;
}

function standing(end: End | null, curve: PeerCurve | null): Peers["start"] {
  if (end === null || curve === null) return null;
  const place = curve.place(end.value);
  return place && { ...end, percentile: place.percentile, ci95: place.ci95 && [...place.ci95] };
}

const same = (a: Bands, b: Bands): boolean =>
  Object.keys(a).every((key) => a[key as keyof Bands] === b[key as keyof Bands]);

type Who = Pick<Peers["group"], "sport" | "sex">;

function peersFrom(
  group: PeerGroup,
  kind: Peers["kind"],
  curve: PeerCurve,
  { sport, sex, start, end }: Who & Pick<PeerAsked, "start" | "end">,
): Peers {
  const { source, year, level } = group;
  const atStart = start && atAge(group, start.age);
  const before = atStart?.kind === "curve" ? atStart : null;
  return {
    group: { sport, sex, level, ages: [...curve.ages] },
    source,
    year,
    n: curve.n,
    kind,
    start: standing(start, before),
    end: standing(end, curve),
    bands: curve.bands,
    bandsStart: before === null || same(before.bands, curve.bands) ? null : before.bands,
  };
}

/**
 * Where an athlete stands among others of the same kind who were measured the same way: bands and percentiles at both ends of a series,
 * each at the athlete's age then, from one group (`peerGroups`) and never from several. The best group with an answer is taken. Nothing
 * of a single other athlete comes back.
 *
 * @returns `peers` is null where no group fits, holds the athlete's age or is large enough; `peersTooFew` then is the number of athletes in
 * the best of those that are too small. A series without either end has no peers; that a group is too small is still said.
 * @see Wilson (1927) for the intervals; Koenker and Bassett (1978) for the regression quantiles
 */
export function peersOf(asked: PeerAsked, reference: readonly Reference[]): Answer {
  const { sport, sex, start, end } = asked;
  const at = end ?? start;
  const age = at?.age ?? null;
  const lines = peerLines(asked, age, reference);
  const none: Answer = { peers: null, peerLines: lines, peersTooFew: null };
  if (sport === null || sex === null) return none;
  let tooFew: number | null = null;
  for (const group of peerGroups(asked, reference)) {
    const { kind } = group;
    if (kind === "line") continue;
    const found = atAge(group, age);
    if (found.kind === "too-few") tooFew ??= found.n;
    if (found.kind !== "curve") continue;
    return at === null ? none : { ...none, peers: peersFrom(group, kind, found, { sport, sex, start, end }) };
  }
  return { ...none, peersTooFew: tooFew };
}
