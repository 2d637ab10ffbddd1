/** A name of a header taken apart. */
export interface HeaderName {
  /** Lower-case words without accents, little words left out. */
  readonly words: readonly string[];
  /** The unit that stands in the name, as a key of `UNITS`; null when none does. */
  readonly unit: string | null;
}

/** Ways to write a unit -> the key that `UNITS` knows. English and Spanish. */
const SPELLINGS: Readonly<Record<string, string>> = {
  ...Object.fromEntries(["mph", "mi/h", "mi/hr", "mi-h", "miles/h", "millas/h"].map((text) => [text, "mph"])),
  ...Object.fromEntries(["km/h", "kmh", "kph", "km/hr", "kmph"].map((text) => [text, "km/h"])),
  ...Object.fromEntries(["m/s", "mps", "m/sec", "m/seg"].map((text) => [text, "m/s"])),
  ...Object.fromEntries(["ft/s", "fps", "ft/sec"].map((text) => [text, "fps"])),
  ...Object.fromEntries(["°", "º", "deg", "degs", "degree", "degrees", "grado", "grados"].map((text) => [text, "deg"])),
  ...Object.fromEntries(["rad", "radians", "radianes"].map((text) => [text, "rad"])),
  ...Object.fromEntries(["ms", "msec", "millisecond", "milliseconds", "milisegundos"].map((text) => [text, "ms"])),
  ...Object.fromEntries(["s", "sec", "secs", "second", "seconds", "seg", "segundos"].map((text) => [text, "s"])),
  ...Object.fromEntries(["ft", "feet", "foot", "'", "pie", "pies"].map((text) => [text, "ft"])),
  ...Object.fromEntries(["m", "meter", "meters", "metre", "metres", "metro", "metros"].map((text) => [text, "m"])),
  ...Object.fromEntries(["yd", "yds", "yard", "yards", "yardas"].map((text) => [text, "yd"])),
  ...Object.fromEntries(["in", "inch", "inches", '"', "pulgada", "pulgadas"].map((text) => [text, "in"])),
  ...Object.fromEntries(["cm", "centimeters", "centimetres", "centimetros"].map((text) => [text, "cm"])),
  ...Object.fromEntries(["mm", "millimeters", "millimetres", "milimetros"].map((text) => [text, "mm"])),
  ...Object.fromEntries(["rpm", "rev/min", "r/min"].map((text) => [text, "rpm"])),
};

const LITTLE = new Set(["de", "del", "el", "la", "los", "las", "al", "the", "of", "a", "y", "and"]);

/** Lower case, accents off: `Ángulo` -> `angulo`. */
export const unaccented = (text: string): string => text.normalize("NFD").replaceAll(/\p{M}/gu, "").toLowerCase();

/** A unit that stands alone, as in a row of units or in brackets. Null when it is none we know. */
export function unitOf(text: string): string | null {
  const bare = unaccented(text.trim().replace(/^[[({<]\s*|\s*[\])}>]$/g, "")).replaceAll(/\s*\/\s*/g, "/");
  return Object.hasOwn(SPELLINGS, bare) ? (SPELLINGS[bare] ?? null) : null;
}

/** `ExitVelo` is two words, `EV` is one. */
const spaced = (text: string): string => text.replaceAll(/(\p{Ll})(\p{Lu})/gu, "$1 $2").replaceAll(/[_\s-]+/g, " ");

/**
 * Words and unit of a header's name.
 *
 * @example headerName("Velocidad del bate (km/h)") // => { words: ["velocidad", "bate"], unit: "km/h" }
 */
export function headerName(name: string): HeaderName {
  let rest = name.trim();
  let unit: string | null = null;
  for (const [whole, inner] of rest.matchAll(/[[({]([^\])}]*)[\])}]/g)) {
    const found = unitOf(inner ?? "");
    if (found === null) continue;
    unit ??= found;
    rest = rest.replace(whole, " ");
  }
  const parts = unaccented(spaced(rest))
    .replaceAll("#", " # ")
    .split(/[\s,;:()[\]{}]+/)
    .filter((part) => part !== "");
  const last = parts.at(-1);
  if (unit === null && last !== undefined && parts.length > 1) {
    unit = unitOf(last);
    if (unit !== null) parts.pop();
  }
  if (unit === null && last !== undefined && last.length > 1 && /[°º]$/.test(last)) {
    unit = "deg";
    parts[parts.length - 1] = last.slice(0, -1);
  }
  const words = parts
    .map((part) => part.replaceAll(/^[^\p{L}\p{N}#]+|[^\p{L}\p{N}#]+$/gu, ""))
    .filter((part) => part !== "" && !(parts.length > 1 && LITTLE.has(part)));
  return { words, unit };
}
