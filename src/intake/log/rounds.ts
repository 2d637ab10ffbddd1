/** A swing in its slot: what is known of its round. */
export interface InRound {
  readonly slot: number;
  /** Null where the pauses do not tell. */
  readonly round: number | null;
}

/** A round is told from its neighbours when nine ways of ten agree. */
export const SURE_ROUND = 0.9;

/**
 * Numbers of the swings inside their rounds, in the order in which they came; null where the round is not known.
 *
 * @param swings in order; null for a swing that has no slot
 */
export function repNumbers(swings: readonly (InRound | null)[]): (number | null)[] {
  const counts = new Map<string, number>();
  return swings.map((swing) => {
    if (swing === null || swing.round === null) return null;
    const key = `${swing.slot} ${swing.round}`;
    const rep = (counts.get(key) ?? 0) + 1;
    counts.set(key, rep);
    return rep;
  });
}
