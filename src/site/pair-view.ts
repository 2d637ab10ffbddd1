import { type PairStrip, pairStrips } from "../charts/pair-strips.ts";
import type { PairedRow, PairedSession } from "../schema/pairing.ts";

/** A row of one device as the desk lists it. */
export interface PairRow {
  readonly place: string;
  readonly mph: number | null;
}

/** A day with two devices as the desk shows it. */
export interface PairDay extends Pick<PairedSession, "date" | "outcome" | "clocks"> {
  readonly counts: { readonly bats: number; readonly balls: number; readonly pairs: number; readonly told: number };
  /** Parts of a million. */
  readonly driftPpm: number | null;
  readonly doubtful: readonly { readonly bat: PairRow; readonly ball: PairRow; readonly confidence: number }[];
  readonly noBall: readonly PairRow[];
  readonly noSwing: readonly PairRow[];
  readonly noBat: readonly PairRow[];
  readonly strips: readonly PairStrip[];
}

export interface PairedAthlete {
  readonly id: string;
  readonly name: string;
  readonly days: readonly PairDay[];
  readonly total: {
    readonly days: number;
    readonly paired: number;
    readonly pairs: number;
    readonly doubtful: number;
    readonly noBall: number;
    readonly noSwing: number;
    readonly noBat: number;
  };
}

const rowOf = ({ file, line, mph }: PairedRow): PairRow => ({ place: `${file}:${line}`, mph });

function dayOf(session: PairedSession): PairDay {
  const { date, outcome, clocks, bats, balls, pairs, doubtful, batPairing, ballPairing } = session;
  return {
    date,
    outcome,
    clocks,
    driftPpm: clocks === null ? null : clocks.drift * 1e6,
    counts: {
      bats: bats.length,
      balls: balls.length,
      pairs: pairs.length,
      told: pairs.filter(({ told }) => told).length,
    },
    doubtful: doubtful.map(({ a, b, confidence }) => ({ bat: rowOf(bats[a]!), ball: rowOf(balls[b]!), confidence })),
    noBall: bats.filter((_, i) => batPairing[i] === "ball-not-recorded").map(rowOf),
    noSwing: bats.filter((_, i) => batPairing[i] === "no-swing").map(rowOf),
    noBat: balls.filter((_, i) => ballPairing[i] === "bat-not-recorded").map(rowOf),
    strips: pairStrips(session),
  };
}

/** The pairings of a season by athlete, in the order in which names are given; athletes without any are left out. */
export function pairedAthletes(
  sessions: readonly PairedSession[],
  names: readonly { readonly id: string; readonly name: string }[],
): PairedAthlete[] {
  return names.flatMap(({ id, name }) => {
    const days = sessions.filter(({ athlete }) => athlete === id).map(dayOf);
    if (days.length === 0) return [];
    const sum = (of: (day: PairDay) => number) => days.reduce((total, day) => total + of(day), 0);
    const total = {
      days: days.length,
      paired: sum(({ outcome }) => (outcome === "paired" ? 1 : 0)),
      pairs: sum(({ counts }) => counts.pairs),
      doubtful: sum(({ doubtful }) => doubtful.length),
      noBall: sum(({ noBall }) => noBall.length),
      noSwing: sum(({ noSwing }) => noSwing.length),
      noBat: sum(({ noBat }) => noBat.length),
    };
    return [{ id, name, days, total }];
  });
}
