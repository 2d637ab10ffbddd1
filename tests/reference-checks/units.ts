/** UCUM codes that the domain checks use: dimension, factor to SI and offset. Exact where a definition exists. */
const INCH = 0.0254;
const FOOT = 12 * INCH;
const OUNCE = 0.45359237 / 16;

interface Unit {
  readonly of: string;
  readonly factor: number;
  readonly offset?: number;
}

const UNITS: Readonly<Record<string, Unit>> = {
  "1": { of: "number", factor: 1 },
  "%": { of: "number", factor: 0.01 },
  "mol/mol": { of: "number", factor: 1 },
  "m/s": { of: "speed", factor: 1 },
  "km/h": { of: "speed", factor: 1 / 3.6 },
  "[mi_i]/h": { of: "speed", factor: (5280 * FOOT) / 3600 },
  "[ft_i]/s": { of: "speed", factor: FOOT },
  "[ft_i]/s2": { of: "acceleration", factor: FOOT },
  m: { of: "length", factor: 1 },
  cm: { of: "length", factor: 0.01 },
  mm: { of: "length", factor: 0.001 },
  "[ft_i]": { of: "length", factor: FOOT },
  "[in_i]": { of: "length", factor: INCH },
  m2: { of: "area", factor: 1 },
  kg: { of: "mass", factor: 1 },
  g: { of: "mass", factor: 0.001 },
  "[lb_av]": { of: "mass", factor: 0.45359237 },
  "[oz_av]": { of: "mass", factor: OUNCE },
  "[oz_av].[in_i]2": { of: "inertia", factor: OUNCE * INCH ** 2 },
  s: { of: "time", factor: 1 },
  deg: { of: "angle", factor: 1 },
  "{rev}/min": { of: "spin", factor: 1 },
  Pa: { of: "pressure", factor: 1 },
  hPa: { of: "pressure", factor: 100 },
  kPa: { of: "pressure", factor: 1000 },
  "[psi]": { of: "pressure", factor: (0.45359237 * 9.80665) / INCH ** 2 },
  "[in_i'Hg]": { of: "pressure", factor: 25.4 * 133.322387415 },
  "kg/m3": { of: "density", factor: 1 },
  Cel: { of: "temperature", factor: 1 },
  K: { of: "temperature", factor: 1, offset: -273.15 },
  "[degF]": { of: "temperature", factor: 5 / 9, offset: -32 },
  "[ft_i]/([mi_i]/h)": { of: "length per speed", factor: FOOT / ((5280 * FOOT) / 3600) },
};

function unit(code: string): Unit {
  const known = UNITS[code];
  if (known === undefined) throw new Error(`the unit "${code}" is not known here`);
  return known;
}

/**
 * A value from one UCUM unit to another of the same dimension.
 *
 * @throws when a unit is not known or the two measure different things
 */
export function convert(value: number, from: string, to: string): number {
  if (from === to) return value;
  const [a, b] = [unit(from), unit(to)];
  if (a.of !== b.of) throw new Error(`"${from}" and "${to}" measure different things`);
  return ((value + (a.offset ?? 0)) * a.factor) / b.factor - (b.offset ?? 0);
}
