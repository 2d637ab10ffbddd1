/** Attributes whose numbers are places and lengths in px. */
const LENGTHS = /^(d|points|transform|[xy][12]?|c[xy]|r[xy]?|width|height|viewBox|stroke-width|dy|dx)$/;

/**
 * An attribute's value with its numbers rounded: px to a tenth, opacities to a hundredth, everything else as it was. A number is
 * written the shortest way, and never as −0.
 *
 * @example roundNumbers("transform", "translate(58.97,149)") // => "translate(59,149)"
 */
export function roundNumbers(name: string, value: string): string {
  if (LENGTHS.test(name)) return replaceNumbers(value, 10);
  if (name.endsWith("opacity")) return replaceNumbers(value, 100);
  return value;
}

function replaceNumbers(text: string, parts: number): string {
  return text.replace(/-?(\d+\.?\d*|\.\d+)(e[-+]?\d+)?/gi, (number) => {
    const rounded = Math.round(Number(number) * parts) / parts;
    return String(rounded === 0 ? 0 : rounded);
  });
}
