import {
  battedDrag,
  battedLift,
  earlySpinDownTime,
  pitchedLift,
  spinAfter,
  spinFactor,
} from "../../src/hitting/aerodynamics.ts";
import {
  densityShare,
  moistDensity,
  standardDensity,
  standardPressure,
  weatherDensity,
} from "../../src/hitting/air.ts";
import { BASEBALL, type Ball, ballOf, dragPerMetre, SOFTBALL } from "../../src/hitting/ball.ts";
import { fieldThird, isHard, LEAGUE_HARD_HIT_MPH, launchClass } from "../../src/hitting/batted-ball.ts";
import {
  efficiencyFromRatio,
  efficiencyFromRestitution,
  efficiencyOf,
  exitSpeed,
  shareOfMost,
} from "../../src/hitting/collision.ts";
import { BATTED, type Flight, type FlightModel, fly, GRAVITY } from "../../src/hitting/flight.ts";
import { expectedSpeedShare, inertiaAtKnob, inertiaFromPeriod } from "../../src/hitting/inertia.ts";
import {
  axisToClock,
  equalTimeSpeed,
  flightTime,
  PITCH_DRAG,
  speedAfter,
  steadyArrival,
} from "../../src/hitting/pitch.ts";
import { CM_PER_INCH, converter, GRAMS_PER_OUNCE } from "../../src/schema/units.ts";
import { agreement } from "../../src/stats/agreement.ts";
import { smallestDetectable, standardError } from "../../src/stats/reliability.ts";
import { SHARE_OF_SPREAD } from "../../src/stats/smallest-worthwhile.ts";
import { convert } from "./units.ts";

/** Inputs of a check: `take` reads one in the unit that the code wants, `word` a text, `has` whether it is there. */
export interface Inputs {
  readonly take: (name: string, unit: string) => number;
  readonly word: (name: string) => string;
  readonly has: (name: string) => boolean;
  readonly names: readonly string[];
  /** UCUM unit that an input is written in, and that of what is expected. */
  readonly unitOf: (name: string) => string;
  readonly wanted: string;
  /** What the check says of itself: it names the model of a flight. */
  readonly formula: string;
}

/** A number with the UCUM unit it is in, or a word. */
type Found = readonly [value: number, unit: string] | string;

const MPS = "m/s";
const MPH = "[mi_i]/h";

/** `spreadsheet`: coefficients and spin decay of the spreadsheet whose output the checks hold; g = 32.174 ft/s2. */
const SPREADSHEET: FlightModel = {
  drag: (rpm) => battedDrag(rpm, 0.3008),
  lift: battedLift,
  spinTauS: 30,
  gravity: 32.174 * 0.3048,
};
const DRAG_ONLY: FlightModel = { drag: () => 0.35, lift: () => 0, spinTauS: null, gravity: GRAVITY };
const THREE_FEET = 3 * 0.3048;
const ROOM = 1.2;

function weather(i: Inputs, altitude: string): number {
  return weatherDensity({
    celsius: i.take("T", "Cel"),
    humidity: i.has("RH") ? i.take("RH", "1") : 0.5,
    seaLevelPa: i.has("p_sea_level") ? i.take("p_sea_level", "Pa") : 101_325,
    altitudeM: i.has(altitude) ? i.take(altitude, "m") : 0,
  });
}

/** Flight of a check: the model that its formula names, its own ball, air and start where it gives them. */
function flightIn(i: Inputs): Flight {
  const optional = (name: string, unit: string, otherwise: number) => (i.has(name) ? i.take(name, unit) : otherwise);
  const ball =
    i.has("mass") && i.has("circumference")
      ? ballOf(i.take("mass", "[oz_av]"), i.take("circumference", "[in_i]"))
      : BASEBALL;
  const density = i.has("rho") ? i.take("rho", "kg/m3") : weather(i, "z_field");
  return fly(
    {
      speed: i.take("v_exit", MPS),
      angle: i.take("launch", "deg"),
      backspin: optional("backspin", "{rev}/min", 0),
      sidespin: optional("sidespin", "{rev}/min", 0),
      height: optional("z0", "m", THREE_FEET),
    },
    density,
    i.formula.includes("nathan2017") ? BATTED : SPREADSHEET,
    ball,
  );
}

/** The spreadsheet counts distance from home plate, and its ball starts `y0` in front of it. */
const inFront = (i: Inputs): number => (i.has("y0") ? i.take("y0", "m") : 0);

function pointAt(i: Inputs) {
  const t = i.take("t", "s");
  const { path } = flightIn(i);
  return path.reduce((best, point) => (Math.abs(point.t - t) < Math.abs(best.t - t) ? point : best));
}

/** 100 mph, 28 deg, 2 000 rpm, 70 degF at sea level, as the checks state, with one of them moved by a step. */
function sensitivity(i: Inputs): Found {
  const far = (mph: number, altitudeM: number) =>
    fly(
      { speed: convert(mph, MPH, MPS), angle: 28, backspin: 2000, height: THREE_FEET },
      weatherDensity({ celsius: convert(70, "[degF]", "Cel"), humidity: 0.5, seaLevelPa: 101_325, altitudeM }),
    ).carry;
  if (i.has("v_exit")) {
    const [from, step] = [i.take("v_exit", MPH), i.take("step", MPH)];
    return [convert((far(from + step, 0) - far(from, 0)) / step, "m", "[ft_i]"), "[ft_i]/([mi_i]/h)"];
  }
  const [from, step] = [i.take("z", "m"), i.take("step", "m")];
  return [far(100, from + step) - far(100, from), "m"];
}

/** Bend by spin of a pitch, from its sideways acceleration along the straight flight with drag alone; of a 145 g ball of 36.4 mm. */
function deflection(i: Inputs): number {
  const ball: Ball = { massKg: 0.145, radiusM: 0.0364 };
  const [v0, distance, rpm] = [i.take("v", MPS), i.take("distance", "m"), i.take("omega", "{rev}/min")];
  const k = dragPerMetre(ball, 0.35, ROOM);
  const steps = 2000;
  const dt = flightTime(v0, distance, k) / steps;
  let [bend, across, x] = [0, 0, 0];
  for (let n = 0; n < steps; n += 1) {
    const v = speedAfter(v0, Math.max(x, 1e-9), k);
    const lift = dragPerMetre(ball, pitchedLift(spinFactor(rpm, v, ball.radiusM)), ROOM) * v ** 2;
    bend += across * dt + (lift * dt ** 2) / 2;
    across += lift * dt;
    x += v * dt;
  }
  return bend;
}

function steady(i: Inputs) {
  const found = steadyArrival({
    y0: i.take("y0", "m"),
    yPlate: i.take("y_plate", "m"),
    vy0: i.take("vy0", MPS),
    ay: i.take("ay", "[ft_i]/s2") * 0.3048,
  });
  if (found === null) throw new Error("the pitch never reaches the plate");
  return found;
}

/** What our own files call a UCUM unit. */
const OURS: Readonly<Record<string, string>> = {
  [MPS]: "m/s",
  "km/h": "km/h",
  [MPH]: "mph",
  "[ft_i]/s": "fps",
  "[ft_i]": "ft",
  m: "m",
  "[in_i]": "in",
  cm: "cm",
  mm: "mm",
  "[oz_av]": "oz",
  g: "g",
  "[lb_av]": "lb",
  kg: "kg",
  "[degF]": "degF",
  Cel: "degC",
};

/** The conversions of our own files: to the unit that they keep, or back from it. */
function ownConversion(i: Inputs): Found {
  const [from, to] = [i.unitOf("value"), i.wanted];
  const value = i.take("value", from);
  const [ours, theirs] = [OURS[from], OURS[to]];
  if (ours === undefined || theirs === undefined) throw new Error(`no unit of ours is "${from}" or "${to}"`);
  const there = converter(ours, theirs);
  if (there !== null) return [there(value), to];
  const back = converter(theirs, ours);
  if (back === null) throw new Error(`no conversion of ours from "${from}" to "${to}"`);
  const zero = back(0);
  // The exact constants stand behind both; a table that only knows the way in is turned round.
  const exact: Readonly<Record<string, number>> = { "[oz_av] g": GRAMS_PER_OUNCE, "[in_i] cm": CM_PER_INCH };
  const factor = exact[`${from} ${to}`] ?? 1 / (back(1) - zero);
  return [(value - zero) * factor, to];
}

function side(word: string): "left" | "right" {
  if (word !== "L" && word !== "R") throw new Error(`"${word}" is no side`);
  return word === "L" ? "left" : "right";
}

/** League's word for ours. */
const underscored = (name: string): string => name.replaceAll("-", "_");

/** How each kind of check is run. */
export const DOMAIN_CHECKS: ReadonlyMap<string, (inputs: Inputs) => Found> = new Map<string, (i: Inputs) => Found>([
  ["exit-speed", (i) => [exitSpeed(i.take("q", "1"), i.take("v_pitch", MPH), i.take("v_bat", MPH)), MPH]],
  [
    "exit-speed-besr",
    (i) => [exitSpeed(efficiencyFromRatio(i.take("BESR", "1")), i.take("v_pitch", MPH), i.take("v_bat", MPH)), MPH],
  ],
  ["q-from-besr", (i) => [efficiencyFromRatio(i.take("BESR", "1")), "1"]],
  [
    "q-from-speeds",
    (i) => [efficiencyOf(i.take("v_exit", MPH), i.take("v_pitch", MPH), i.take("v_bat", MPH)) ?? Number.NaN, "1"],
  ],
  [
    "q-from-cor",
    (i) => [efficiencyFromRestitution(i.take("e", "1"), i.take("m_ball", "kg"), i.take("M_eff", "kg")), "1"],
  ],
  [
    "speed-ratio-tee",
    (i) => [exitSpeed(i.take("q", "1"), i.take("v_pitch", MPH), i.take("v_bat", MPH)) / i.take("v_bat", MPH), "1"],
  ],
  ["squared-up-ratio", (i) => [shareOfMost(i.take("v_exit", MPH), 0, 0, i.take("v_exit_max", MPH)) ?? Number.NaN, "1"]],
  [
    "max-exit-speed",
    (i) => [
      exitSpeed(i.take("q", "1"), i.take("plate_fraction", "1") * i.take("v_release", MPH), i.take("v_bat", MPH)),
      MPH,
    ],
  ],
  ["air-density-isa", (i) => [standardDensity(i.take("z", "m")), "kg/m3"]],
  ["station-pressure", (i) => [standardPressure(i.take("z", "m")), "Pa"]],
  [
    "air-density-moist",
    (i) => [moistDensity(i.take("t", "Cel"), i.take("p", "Pa"), i.take("RH", "1"), i.take("xCO2", "1")), "kg/m3"],
  ],
  ["air-density-weather", (i) => [weather(i, "z"), "kg/m3"]],
  ["density-ratio-altitude", (i) => [densityShare(i.take("z", "m")), "1"]],
  [
    "density-ratio-humidity",
    (i) => {
      const at = (humidity: number) =>
        weatherDensity({ celsius: i.take("T", "Cel"), humidity, seaLevelPa: i.take("p", "Pa"), altitudeM: 0 });
      return [at(i.take("RH", "1")) / at(0), "1"];
    },
  ],
  ["drag-coefficient", (i) => [battedDrag(i.take("omega", "{rev}/min"), 0.3008), "1"]],
  ["spin-factor", (i) => [spinFactor(i.take("omega", "{rev}/min"), i.take("v", MPS), BASEBALL.radiusM), "1"]],
  ["lift-coefficient", (i) => [battedLift(i.take("S", "1")), "1"]],
  [
    "spin-decay",
    (i) => [
      spinAfter(i.take("omega0", "{rev}/min"), i.take("t", "s"), i.take("v", MPS), i.take("tau", "s")),
      "{rev}/min",
    ],
  ],
  ["spin-down-time", (i) => [earlySpinDownTime(i.take("k", "1"), i.take("v", MPS)), "s"]],
  ["carry", (i) => [flightIn(i).carry + inFront(i), "m"]],
  ["hang-time", (i) => [flightIn(i).hangTime, "s"]],
  ["apex", (i) => [flightIn(i).apex, "m"]],
  ["position-y", (i) => [pointAt(i).x + inFront(i), "m"]],
  ["position-z", (i) => [pointAt(i).z, "m"]],
  [
    "carry-drag-only",
    (i) => [
      fly(
        { speed: i.take("v_exit", MPS), angle: i.take("launch", "deg"), backspin: 0, height: THREE_FEET },
        ROOM * i.take("density_ratio", "1"),
        DRAG_ONLY,
      ).carry,
      "m",
    ],
  ],
  [
    "range-vacuum",
    (i) => [
      fly({ speed: i.take("v_exit", MPS), angle: i.take("launch", "deg"), backspin: 0, height: i.take("z0", "m") }, 0)
        .carry,
      "m",
    ],
  ],
  ["carry-sensitivity", sensitivity],
  ["carry-altitude-rule", (i) => [i.take("d0", "[ft_i]") + (2 * i.take("z", "[ft_i]")) / 275, "[ft_i]"]],
  ["spin-deflection", (i) => [deflection(i), "m"]],
  ["plate-velocity", (i) => [steady(i).vy, MPS]],
  ["flight-time", (i) => [steady(i).time, "s"]],
  ["speed-magnitude", (i) => [Math.hypot(i.take("vx0", MPS), i.take("vy0", MPS), i.take("vz0", MPS)), MPS]],
  [
    "plate-speed",
    (i) => {
      // The check states the cross-section, from which the ball's radius follows.
      const ball: Ball = { massKg: i.take("m", "kg"), radiusM: Math.sqrt(i.take("A", "m2") / Math.PI) };
      const k = dragPerMetre(ball, i.take("CD", "1"), i.take("rho", "kg/m3"));
      return [speedAfter(i.take("v0", MPS), i.take("x", "m"), k), MPS];
    },
  ],
  [
    "flight-time-drag",
    (i) => {
      const ball = ballOf(i.take("m", "[oz_av]"), i.take("circumference", "[in_i]"));
      const k = dragPerMetre(ball, PITCH_DRAG.baseball, ROOM);
      return [flightTime(i.take("v0", MPS), i.take("x", "m"), k), "s"];
    },
  ],
  [
    "softball-return-time",
    (i) => {
      const k = dragPerMetre(SOFTBALL, PITCH_DRAG.softball, ROOM);
      return [flightTime(i.take("v0", MPS), i.take("x", "m"), k), "s"];
    },
  ],
  ["equivalent-speed", (i) => [equalTimeSpeed(i.take("v", MPS), i.take("x", "m"), i.take("x_ref", "m")), MPS]],
  ["flight-time-no-drag", (i) => [flightTime(i.take("v", MPS), i.take("x", "m"), 0), "s"]],
  [
    "spin-axis-clock",
    (i) => {
      const { hour, minute } = axisToClock(i.take("axis", "deg"));
      return `${hour}:${String(minute).padStart(2, "0")}`;
    },
  ],
  [
    "moi-pendulum",
    (i) => [inertiaFromPeriod(i.take("W", "[oz_av]"), i.take("BP", "[in_i]"), i.take("T", "s")), "[oz_av].[in_i]2"],
  ],
  [
    "moi-parallel-axis",
    (i) => [
      inertiaAtKnob(i.take("I6", "[oz_av].[in_i]2"), i.take("W", "[oz_av]"), i.take("BP", "[in_i]")),
      "[oz_av].[in_i]2",
    ],
  ],
  ["swing-speed-vs-moi", (i) => [expectedSpeedShare(i.take("I2_over_I1", "1"), 1, i.take("n", "1")), "1"]],
  ["percent-change", (i) => [i.take("v2", MPH) / i.take("v1", MPH) - 1, "1"]],
  ["launch-class", (i) => underscored(launchClass(i.take("launch", "deg")))],
  ["hard-hit", (i) => (isHard(i.take("v_exit", MPH), LEAGUE_HARD_HIT_MPH) ? "hard" : "not_hard")],
  ["spray-third", (i) => fieldThird(i.take("spray", "deg"), side(i.word("bats")))],
  ["sem", (i) => [standardError(i.take("SD", MPH), i.take("ICC", "1")), MPH]],
  ["mdc95", (i) => [smallestDetectable(i.take("SEM", MPH)), MPH]],
  ["swc", (i) => [SHARE_OF_SPREAD * i.take("SD", MPH), MPH]],
  [
    "typical-error",
    (i) => [
      agreement(
        i.names.map((name) => [0, i.take(name, MPH)] as const),
        0.95,
      )?.typicalError ?? Number.NaN,
      MPH,
    ],
  ],
  ["unit-conversion", ownConversion],
]);
