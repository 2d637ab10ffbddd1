/** A colour as `#rrggbb`. */
export type Hex = string;

/** Grounds of the pages, by day and by night: those of the style sheet's roles (a test holds them together). */
export const PAPER = { day: "#f7f2e7", night: "#161c1a" } as const;

/** Text on its ground, WCAG 2.2 level AA. */
export const TEXT_CONTRAST = 4.5;

const channels = (hex: Hex): number[] => [1, 3, 5].map((at) => Number.parseInt(hex.slice(at, at + 2), 16));

/** Relative luminance, 0 to 1, as WCAG 2.2 defines it. */
export function luminance(hex: Hex): number {
  const [r, g, b] = channels(hex).map((value) => {
    const c = value / 255;
    return c <= 0.04045 ? c / 12.92 : ((c + 0.055) / 1.055) ** 2.4;
  }) as [number, number, number];
  return 0.2126 * r + 0.7152 * g + 0.0722 * b;
}

/** Contrast ratio, 1 to 21, as WCAG 2.2 defines it. */
export function contrast(a: Hex, b: Hex): number {
  const [high, low] = [luminance(a), luminance(b)].sort((x, y) => y - x) as [number, number];
  return (high + 0.05) / (low + 0.05);
}

/** So many steps lead from a colour to black or white. */
const STEPS = 50;

/**
 * The colour itself where it can be read on the ground, else the first mixture with black (on a light ground) or white that can.
 *
 * @param least contrast wanted, at most what black or white has there
 */
export function readableOn(hex: Hex, ground: Hex, least: number): Hex {
  const end = luminance(ground) > 0.18 ? 0 : 255;
  for (let step = 0; step <= STEPS; step += 1) {
    const mixed = `#${channels(hex)
      .map((value) => Math.round(value + ((end - value) * step) / STEPS))
      .map((value) => value.toString(16).padStart(2, "0"))
      .join("")}`;
    if (contrast(mixed, ground) >= least) return mixed;
  }
  return end === 0 ? "#000000" : "#ffffff";
}
