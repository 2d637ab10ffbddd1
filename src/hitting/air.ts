/** Air in which a ball flies. Altitudes in m, temperatures in degrees Celsius, pressures in Pa, densities in kg/m3, humidity 0 to 1. */

const SEA_LEVEL_PA = 101_325;
const SEA_LEVEL_KELVIN = 288.15;
const LAPSE = 0.0065;
/** g / (R lapse). */
const EXPONENT = 5.255876;
const GAS_CONSTANT_DRY = 287.05287;
const ZERO_CELSIUS = 273.15;
const PA_PER_MMHG = 133.322387415;
/** Share of pressure lost per metre, of the weather form below. */
const DECAY_PER_METRE = 1.217e-4;

function checkAltitude(metres: number): void {
  if (!(metres >= -500 && metres <= 11_000)) {
    throw new RangeError(`an altitude lies between -500 and 11000 m, got ${metres}`);
  }
}

function checkHumidity(share: number): void {
  if (!(share >= 0 && share <= 1)) throw new RangeError(`relative humidity lies from 0 to 1, got ${share}`);
}

/**
 * Pressure of the standard atmosphere, Pa.
 *
 * @param metres altitude, -500 to 11000
 * @see US Standard Atmosphere 1976
 */
export function standardPressure(metres: number): number {
  checkAltitude(metres);
  return SEA_LEVEL_PA * (1 - (LAPSE * metres) / SEA_LEVEL_KELVIN) ** EXPONENT;
}

/** Density of the standard atmosphere, dry, kg/m3. Errors as `standardPressure`. */
export function standardDensity(metres: number): number {
  return standardPressure(metres) / (GAS_CONSTANT_DRY * (SEA_LEVEL_KELVIN - LAPSE * metres));
}

/** Weather as a forecast gives it: its barometer is reduced to sea level, so the altitude counts once, here. */
export interface Weather {
  readonly celsius: number;
  readonly humidity: number;
  readonly seaLevelPa: number;
  readonly altitudeM: number;
}

/**
 * Density of moist air from a weather report, kg/m3.
 *
 * @throws {RangeError} an altitude or humidity out of range, a temperature outside -40 to 60, a barometer outside 85 to 110 kPa
 * @see Nathan (2017), Analysis of Baseball Trajectories, eqs. 9-11; within 0.1 % of CIPM-2007
 */
export function weatherDensity({ celsius, humidity, seaLevelPa, altitudeM }: Weather): number {
  checkAltitude(altitudeM);
  checkHumidity(humidity);
  if (!(celsius >= -40 && celsius <= 60)) throw new RangeError(`air is between -40 and 60 degrees, got ${celsius}`);
  if (!(seaLevelPa >= 85_000 && seaLevelPa <= 110_000)) {
    throw new RangeError(`a barometer at sea level shows 85 to 110 kPa, got ${seaLevelPa} Pa`);
  }
  const vapour = 4.5841 * Math.exp(((18.687 - celsius / 234.5) * celsius) / (257.14 + celsius));
  const pressure = (seaLevelPa / PA_PER_MMHG) * Math.exp(-DECAY_PER_METRE * altitudeM);
  return (1.2929 * (273 / (celsius + 273)) * (pressure - 0.3783 * humidity * vapour)) / 760;
}

/** Density at an altitude as a share of that at sea level, at equal temperature. */
export function densityShare(metres: number): number {
  checkAltitude(metres);
  return Math.exp(-DECAY_PER_METRE * metres);
}

/**
 * Density of moist air by the equation of state that mass laboratories use, kg/m3; for checking the forms above.
 *
 * @param celsius  15 to 27 is its stated range; beyond it the result drifts slowly
 * @param pascal   at the place itself
 * @param humidity 0 to 1
 * @param carbonDioxide mole fraction, about 0.0004
 * @see Picard, Davis, Glaser & Fujii (2008), Metrologia 45:149-155 (CIPM-2007)
 */
export function moistDensity(celsius: number, pascal: number, humidity: number, carbonDioxide: number): number {
  checkHumidity(humidity);
  if (!(pascal > 0 && Number.isFinite(pascal))) throw new RangeError(`a pressure must be above 0, got ${pascal}`);
  const kelvin = celsius + ZERO_CELSIUS;
  const saturation = Math.exp(1.2378847e-5 * kelvin ** 2 - 1.9121316e-2 * kelvin + 33.93711047 - 6.3431645e3 / kelvin);
  const enhancement = 1.00062 + 3.14e-8 * pascal + 5.6e-7 * celsius ** 2;
  const vapour = (humidity * enhancement * saturation) / pascal;
  const a = 1.58123e-6 - 2.9331e-8 * celsius + 1.1043e-10 * celsius ** 2;
  const b = 5.707e-6 - 2.051e-8 * celsius;
  const c = 1.9898e-4 - 2.376e-6 * celsius;
  const ratio = pascal / kelvin;
  const compressibility =
    1 - ratio * (a + b * vapour + c * vapour ** 2) + ratio ** 2 * (1.83e-11 - 0.765e-8 * vapour ** 2);
  const molarDry = (28.96546 + 12.011 * (carbonDioxide - 0.0004)) * 1e-3;
  return ((pascal * molarDry) / (compressibility * 8.314472 * kelvin)) * (1 - vapour * (1 - 18.01528e-3 / molarDry));
}
