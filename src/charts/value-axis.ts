/** A y or x axis of values: its ends, its ticks in rising order, and a d3 format that tells neighbouring ticks apart. */
export interface ValueAxis {
  readonly domain: readonly [number, number];
  readonly ticks: readonly number[];
  readonly format: string;
}

/**
 * Round step, 1, 2 or 5 times a power of ten, that cuts `span` into a number of pieces near `pieces`.
 *
 * @param span above 0
 * @example roundStep(9, 4) // => 2
 */
export function roundStep(span: number, pieces: number): number {
  const raw = span / pieces;
  const power = 10 ** Math.floor(Math.log10(raw));
  const rest = raw / power;
  // The geometric means between neighbouring steps part them.
  const factor = rest >= Math.sqrt(50) ? 10 : rest >= Math.sqrt(10) ? 5 : rest >= Math.sqrt(2) ? 2 : 1;
  return factor * power;
}

/**
 * Axis that holds all values with some air above and below. Values that are all alike get a span of their own, so that the axis
 * never collapses; no values at all give 0 to 1 without ticks.
 *
 * @param values   in one unit
 * @param decimals the measure is shown with; the span is never less than eight of its last digit
 * @param air      share of the values' span added below and above
 */
export function valueAxis(values: readonly number[], decimals: number, air = 0.08): ValueAxis {
  const low = values.length === 0 ? 0 : Math.min(...values);
  const high = values.length === 0 ? 1 : Math.max(...values);
  // Far from zero doubles have no room for tiny spans: 1e-9 of the size keeps neighbouring ticks apart.
  const least = Math.max(8 * 10 ** -decimals, Math.max(Math.abs(low), Math.abs(high)) * 1e-9);
  const span = Math.max(high - low, least);
  const middle = low / 2 + high / 2;
  const domain: [number, number] = [middle - span * (0.5 + air), middle + span * (0.5 + air)];
  return { domain, ...(values.length === 0 ? { ticks: [], format: "" } : ticksOf(domain, 4)) };
}

/** Axis from zero for counts, whole steps; a highest count of 0 gives 0 to 1 with a tick at 0 alone. */
export function countAxis(highest: number): ValueAxis {
  if (highest <= 0) return { domain: [0, 1], ticks: [0], format: ",d" };
  const step = Math.max(1, roundStep(highest, 3));
  const domain: [number, number] = [0, Math.ceil(highest / step) * step];
  const ticks = Array.from({ length: Math.round(domain[1] / step) + 1 }, (_, i) => i * step);
  return { domain, ticks, format: ",d" };
}

/** Multiples of a round step inside the domain, about `pieces` of them. */
export function ticksOf(domain: readonly [number, number], pieces: number): Pick<ValueAxis, "ticks" | "format"> {
  const step = roundStep(domain[1] - domain[0], pieces);
  const decimals = Math.min(12, Math.max(0, -Math.floor(Math.log10(step) + 1e-9)));
  const from = Math.ceil(domain[0] / step - 1e-9);
  const to = Math.floor(domain[1] / step + 1e-9);
  const ticks = Array.from({ length: Math.max(0, to - from) + 1 }, (_, i) =>
    Number(((from + i) * step).toFixed(decimals)),
  );
  return { ticks, format: `,.${decimals}f` };
}
