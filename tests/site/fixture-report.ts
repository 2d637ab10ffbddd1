import { AthleteReport } from "../../src/report/schema.ts";
import { GATE, HITTING } from "./fixture-hitting.ts";

/*
 * Season reports of invented hitters, typed by hand. Their figures only have to hang together well enough to be shown; whether they are
 * right is tested where they are computed.
 */
type Report = ReturnType<typeof AthleteReport.parse>;
type Series = Report["series"][number];
type Session = Series["sessions"][number];
type Condition = Series["condition"];

const addDays = (start: string, days: number): string =>
  new Date(Date.parse(`${start}T00:00:00Z`) + days * 86_400_000).toISOString().slice(0, 10);

/** A repeatable wobble between −1 and 1. */
const wobble = (index: number): number => Math.sin(index * 12.9898 + 4.1414);

interface Course {
  readonly metric: string;
  readonly unit: string;
  readonly decimals: number;
  readonly better: Series["better"];
  readonly from: number;
  readonly to: number;
  readonly scatter: number;
  readonly days: number;
  readonly condition: Condition;
  readonly measure: number | null;
  readonly pooled?: boolean;
  readonly of?: Series["of"];
  readonly breaks?: Series["breaks"];
}

const START = "2025-10-06";
const round = (value: number, decimals = 4): number => Number(value.toFixed(decimals));

function sessionsOf(course: Course): Session[] {
  return Array.from({ length: course.days }, (_, index) => {
    const share = course.days === 1 ? 0 : index / (course.days - 1);
    const mean = round(course.from + (course.to - course.from) * share + wobble(index) * course.scatter);
    const { scatter } = course;
    return {
      date: addDays(START, Math.round(share * 130)),
      session: null,
      n: 12 + (index % 5) * 3,
      mean,
      sd: round(scatter * 1.6),
      median: round(mean + scatter * 0.1),
      p90: round(mean + scatter * 1.9),
      max: round(mean + scatter * 2.6),
      shift: 0,
    };
  });
}

function blockOf(sessions: readonly Session[]): Series["first"] {
  const first = sessions[0];
  const last = sessions.at(-1);
  if (!first || !last) return null;
  const n = sessions.reduce((total, session) => total + session.n, 0);
  const mean = sessions.reduce((total, session) => total + session.mean, 0) / sessions.length;
  return { from: first.date, to: last.date, sessions: sessions.length, n, mean: round(mean) };
}

export function series(course: Course): Series {
  const sessions = sessionsOf(course);
  const enough = course.days >= 6 && (course.breaks ?? []).length === 0;
  const third = Math.floor(course.days / 3);
  const gain = course.to - course.from;
  const half = course.scatter * 1.4;
  const perWeek = round(gain / 18.6);
  return {
    metric: course.metric,
    unit: course.unit,
    better: course.better,
    decimals: course.decimals,
    measure: course.measure,
    pooled: course.pooled ?? false,
    parts: course.pooled ? 3 : 1,
    condition: course.condition,
    of: course.of ?? null,
    sessions,
    sessionCount: sessions.length,
    first: enough ? blockOf(sessions.slice(0, third)) : null,
    last: enough ? blockOf(sessions.slice(-third)) : null,
    n: sessions.reduce((total, session) => total + session.n, 0),
    spanDays: 130,
    flagged: 0,
    breaks: course.breaks ?? [],
    stretches:
      course.breaks === undefined
        ? [blockOf(sessions)!]
        : [blockOf(sessions.slice(0, third))!, blockOf(sessions.slice(third))!],
    joined: false,
    change: enough
      ? {
          estimate: round(gain),
          ci95: [round(gain - half), round(gain + half)],
          ci90: [round(gain - half * 0.8), round(gain + half * 0.8)],
          df: course.days - 2,
          method: "session-line",
          smallestWorthwhile: 0.75,
          verdict: "improvement",
          outside: null,
          p: 0.021,
          pHolm: 0.0628,
          holds: false,
          beyondNoise: null,
        }
      : null,
    trend: {
      sessionLine: enough
        ? {
            perWeek,
            se: 0.05,
            df: course.days - 2,
            ci95: [round(perWeek - 0.1), round(perWeek + 0.1)],
            lag1: 0.1,
            inflation: 1.1,
            start: course.from,
            end: course.to,
          }
        : null,
      mixed: null,
      theilSen: enough ? { perWeek: round(perWeek * 0.96), ci95: [round(perWeek - 0.12), null] } : null,
      ols: enough ? { perWeek, ci95: [round(perWeek - 0.1), round(perWeek + 0.1)] } : null,
      mannKendall: enough ? { s: 61, varS: 817, z: 2.1, p: 0.0357 } : null,
    },
    earlyLate: enough ? { estimate: round(gain * 0.8), ci95: [round(gain - half), round(gain + half)], df: 9.4 } : null,
    sessionSd: enough ? 0.81 : null,
    repSd: enough ? 2.37 : null,
    window: null,
    noise: enough
      ? { typicalError: 1.13, ci95: [0.98, 1.33], df: 91, athletes: 7, mdc95: 3.13, source: "own-lines" }
      : null,
    worth: enough ? { value: 0.75, source: "reference", athletes: 64 } : null,
    sessionsNeeded: enough ? 41 : null,
    notes: enough ? ["worth-below-noise"] : ["few-sessions"],
    says:
      course.measure === null
        ? null
        : enough
          ? { id: "improvement", args: { least: 0.4, most: 3.1, worth: 0.75, sessions: course.days, needed: 41 } }
          : { id: (course.breaks ?? []).length > 0 ? "broken" : "too-few", args: { sessions: course.days } },
    rebound: enough ? { estimate: 0.4, icc: 0.88, middle: course.from + 3.4, athletes: 64, source: "reference" } : null,
    phases: enough ? [{ phase: 1, estimate: 0.9, ci95: [-0.6, 2.4], df: 7.2, before: 4, since: 6 }] : [],
    peers:
      enough && course.metric === "bat_speed"
        ? {
            group: { sport: "softball", sex: "female", level: "high-school", ages: [14.1, 18.2] },
            source: "Invented earlier seasons",
            year: 2025,
            n: 64,
            kind: "value",
            start: { value: course.from, age: 15, percentile: 38.2, ci95: [27.1, 50.4] },
            end: { value: course.to, age: 15, percentile: 61.7, ci95: [49.3, 72.8] },
            bands: {
              p10: course.from - 6,
              p25: course.from - 3,
              p50: course.from + 1,
              p75: course.from + 4,
              p90: course.from + 8,
            },
            bandsStart: null,
          }
        : null,
    peerLines: [],
    peersTooFew: enough ? null : 7,
  };
}

const machine: Condition = { environment: "machine", implement: "oak-33" };
const LONG_NOTE = `She kept the **front shoulder** closed for longer. Still to do:

- let the *low* pitch travel
- finish the round as it began

The drill is written up [here](https://example.org/drill) and not [here](javascript:alert(1)).`;

/** A full season of an adult: every section has something to show. */
export const full: Report = AthleteReport.parse({
  schema: 1,
  edition: null,
  asOf: "2026-02-20",
  facility: {
    name: "Hollow Creek Cages",
    season: "Winter 2025–26",
    contact: "desk@hollow-creek.example",
    notice: "Everything here is invented: people, places and numbers.",
    units: "imperial",
    cautions: ["Ice on the steps: use the rail."],
    phases: [
      { id: "look", label: { en: "Look and measure", es: "Mirar y medir" }, from: "2025-10-06", to: "2025-11-02" },
      { id: "build", label: "Build", from: "2025-11-03", to: "2026-02-22" },
    ],
  },
  athlete: {
    id: "ottilie-fernmoor",
    displayName: "Ottilie Fernmoor",
    language: "en",
    sport: "softball",
    level: "college",
    sex: "female",
    bats: "switch",
    throws: "right",
    positions: ["outfield", "pinch-runner"],
    age: 20,
    minor: false,
    growing: false,
    heights: [
      { date: "2025-10-06", in: 66.5 },
      { date: "2026-02-16", in: 66.5 },
    ],
    masses: [{ date: "2025-10-06", lb: 148 }],
    gameBats: [{ id: "oak-33", label: "Oak 33", lengthIn: 33, weightOz: 23.5, from: "2025-10-06" }],
    away: [
      { from: "2025-12-20", to: "2026-01-05", say: "family travel" },
      { from: "2026-01-20", to: "2026-01-22", say: null },
    ],
  },
  period: { start: START, end: "2026-02-20" },
  publication: {
    family: { publish: true, as: "self", agreedOn: "2025-10-01", covers: null },
    club: { publish: true, as: "self", agreedOn: "2025-10-01", covers: ["numbers"] },
  },
  recipients: [
    {
      ...{ id: "family", reader: "family", film: true, kept: [], keptCount: 0 },
      publication: { publish: true, as: "self", agreedOn: "2025-10-01", covers: null },
    },
    {
      ...{ id: "club", reader: "club", film: false, kept: ["peers", "body-mass"], keptCount: 2 },
      publication: { publish: true, as: "self", agreedOn: "2025-10-01", covers: ["numbers"] },
    },
  ],
  ledger: {
    read: 1320,
    counted: 1255,
    notCounted: { "under-mark": 32, take: 21 },
    setAside: { duplicate: 8, "out-of-range": 4 },
  },
  measures: 5,
  measuresWithSwings: 5,
  series: [
    series({
      metric: "exit_velocity",
      unit: "mph",
      decimals: 1,
      better: "higher",
      from: 64.2,
      to: 66.1,
      scatter: 1.9,
      days: 16,
      condition: { environment: "front-toss" },
      measure: null,
      of: { swings: 300, hit: 260, foul: 20, miss: 12, notKnown: 8 },
    }),
    series({
      metric: "bat_speed",
      unit: "mph",
      decimals: 1,
      better: "higher",
      from: 58.2,
      to: 61.1,
      scatter: 0.9,
      days: 21,
      condition: machine,
      measure: 0,
    }),
    series({
      metric: "exit_velocity",
      unit: "mph",
      decimals: 1,
      better: "higher",
      from: 66.3,
      to: 67.0,
      scatter: 1.7,
      days: 20,
      condition: { ...machine, ball: "hide-12", pitchSpeed: [55, 60], pitchSpeedAt: "set" },
      measure: 1,
      of: { swings: 420, hit: 361, foul: 31, miss: 28, notKnown: 0 },
    }),
    series({
      metric: "attack_angle",
      unit: "deg",
      decimals: 1,
      better: "window",
      from: 3.4,
      to: 7.9,
      scatter: 1.5,
      days: 19,
      condition: { environment: "machine", side: "left" },
      measure: 2,
      pooled: true,
    }),
    series({
      metric: "attack_angle",
      unit: "deg",
      decimals: 1,
      better: "window",
      from: -1.6,
      to: 1.2,
      scatter: 1.5,
      days: 4,
      condition: { environment: "machine", side: "right" },
      measure: 2,
    }),
    series({
      metric: "swing_time",
      unit: "s",
      decimals: 3,
      better: "lower",
      from: 0.171,
      to: 0.158,
      scatter: 0.003,
      days: 18,
      condition: machine,
      measure: 3,
      breaks: [{ date: "2025-12-01", kind: "bat-sensor", to: "knob-2", bridge: null, bat: null }],
    }),
    series({
      metric: "hand_tempo",
      unit: "g",
      decimals: 2,
      better: "higher",
      from: 12.1,
      to: 12.4,
      scatter: 0.3,
      days: 1,
      condition: {},
      measure: 4,
    }),
  ],
  goals: [
    goal({
      metric: "bat_speed",
      kind: "target",
      target: 62,
      condition: machine,
      baseline: 58.4,
      current: 60.9,
      progress: 0.694,
    }),
    goal({
      ...{ metric: "bat_speed", kind: "target", target: 60, condition: machine, baseline: 58.4, current: 60.9 },
      replacedOn: "2025-12-01",
    }),
    goal({
      metric: "attack_angle",
      unit: "deg",
      kind: "window",
      better: "window",
      window: [4, 11],
      share: 0.6,
      condition: { environment: "machine", side: "left" },
      baseline: 0.31,
      current: 0.66,
      progress: 1.207,
      why: "So that the *low* pitch can be lifted <b>too</b>.",
    }),
    goal({
      metric: "exit_velocity",
      kind: "at-least",
      atLeast: 70,
      share: 0.5,
      condition: {},
      baseline: 0.2,
      current: 0.18,
      progress: -0.067,
    }),
    goal({
      metric: "swing_time",
      unit: "s",
      decimals: 3,
      kind: "target",
      target: 0.15,
      condition: machine,
      better: "lower",
    }),
  ],
  work: {
    weeks: Array.from({ length: 20 }, (_, index) => ({
      start: addDays(START, index * 7),
      days: index === 11 ? 0 : 1 + (index % 3),
      swings: index === 11 ? 0 : 40 + (index % 4) * 15,
      byEnvironment:
        index === 11
          ? []
          : [
              { environment: "machine", swings: 30 },
              { environment: "tee", swings: 10 + (index % 4) * 15 },
            ],
      loggedUnmeasured: index % 6 === 0 ? 24 : 0,
    })),
    days: 41,
    swings: 1290,
    loggedUnmeasured: 96,
    busiestWeek: 85,
  },
  checkIns: [
    {
      ...{ place: "home", metric: "bat_speed", unit: "mph", decimals: 1, series: 0, here: 0 },
      condition: { environment: "tee", implement: "game", place: "home" },
      there: { from: "2026-01-20", to: "2026-02-10", sessions: 4, n: 40, mean: 61.2 },
      difference: { estimate: -0.4, ci95: [-1.6, 0.8], ci90: [-1.4, 0.6], df: 6.2 },
      ...{ worth: 1.5, answer: "held" as const, why: null },
    },
    {
      ...{ place: "club", metric: "bat_speed", unit: "mph", decimals: 1, series: 0, here: null },
      condition: { environment: "live", implement: "game", place: "club" },
      there: { from: "2026-02-01", to: "2026-02-01", sessions: 1, n: 8, mean: 58 },
      ...{ difference: null, worth: null, answer: null, why: "not-here" as const },
    },
  ],
  aims: [
    {
      ...{
        drill: "low-tee",
        label: { en: "Low tee", es: "Tee bajo" },
        metric: "launch_angle",
        unit: "deg",
        decimals: 1,
      },
      ...{ zone: null, window: [5, 25] as [number, number], atLeast: null },
      days: ["2025-10-08", "2025-11-05", "2025-12-10", "2026-01-14", "2026-02-11"].map((date, i) => ({
        ...{ date, inside: 4 + i, of: 10, share: (4 + i) / 10 },
      })),
      dayCount: 5,
      all: { count: 30, of: 50, share: 0.6, ci95: [0.46, 0.72] as [number, number] },
      first: {
        from: "2025-10-08",
        to: "2025-11-05",
        days: 3,
        count: 14,
        of: 30,
        share: 14 / 30,
        ci95: [0.3, 0.64] as [number, number],
      },
      last: {
        from: "2025-12-10",
        to: "2026-02-11",
        days: 3,
        count: 21,
        of: 30,
        share: 0.7,
        ci95: [0.52, 0.83] as [number, number],
      },
      change: { estimate: 0.24, ci95: [0.05, 0.43] as [number, number] },
    },
    {
      ...{ drill: "mirror", label: "Mirror turns", metric: "bat_speed", unit: "mph", decimals: 1, zone: null },
      ...{ window: null, atLeast: 50, days: [{ date: "2025-11-05", inside: 2, of: 4, share: 0.5 }], dayCount: 1 },
      all: { count: 2, of: 4, share: 0.5, ci95: [0.15, 0.85] as [number, number] },
      ...{ first: null, last: null, change: null },
    },
  ],
  interim: {
    came: { planned: 54, kept: 41, besides: 2 },
    sofar: { days: 43, swings: 1290, logged: 96 },
    lately: { from: "2026-01-24", days: 9, swings: 240, logged: 0 },
    ...{ phase: 0, nextPhase: 1, nextTest: "2026-02-16" },
  },
  measuring: {
    devices: [
      {
        id: "knob-1",
        kind: "bat-sensor",
        measures: "speed",
        pointOnBat: "sweet-spot",
        from: START,
        to: "2025-11-30",
        swings: 400,
      },
      {
        id: "knob-2",
        kind: "bat-sensor",
        measures: "speed",
        pointOnBat: "6 in from the tip",
        from: "2025-12-01",
        to: null,
        swings: 700,
      },
      { id: "screen-a", kind: "optical", measures: "flight", pointOnBat: null, from: null, to: null, swings: 800 },
    ],
    bats: [{ id: "oak-33", label: "Oak 33", lengthIn: 33, weightOz: 23.5, from: null, role: "game", swings: 1200 }],
    balls: [{ id: "hide-12", label: "Hide ball, 12 in", kind: "softball", swings: 900 }],
    pitchSpeeds: [{ environment: "machine", pitchSpeed: [55, 60], at: "set", distanceFt: 40, swings: 420 }],
    places: [{ place: "facility", swings: 1255 }],
  },
  assessment: {
    date: START,
    by: "Bram Ackerley",
    body: "Strong from the ground up; the barrel came in *flat*.",
    priorities: [
      {
        ...{ id: "plane", text: "Meet the pitch on its plane", moved: [0], next: [0] },
        did: [
          { drill: "low-tee", label: { en: "Low tee", es: "Tee bajo" }, swings: 412, logged: 0, days: 21 },
          { drill: "mirror", label: "Mirror turns", swings: 0, logged: 60, days: 5 },
          { drill: "never", label: "Never done", swings: 0, logged: 0, days: 0 },
        ],
      },
      { id: "tempo", text: "Start a little sooner", did: [], moved: [], next: [] },
    ],
  },
  notes: [
    note({ date: "2025-11-03", kind: "observation", about: ["attack_angle", "plane"], body: LONG_NOTE }),
    note({
      date: "2025-12-15",
      kind: "plan-change",
      about: ["tee-high"],
      series: [0],
      body: "### Heavier bat\n\nTwo rounds a week.",
    }),
    note({
      date: "2026-01-12",
      kind: "milestone",
      body: "Back from travel. ![The new tee](tee.png)",
      images: { "tee.png": "content/athletes/ottilie-fernmoor/notes/tee.png" },
    }),
    note({
      date: "2026-02-01",
      kind: "words",
      author: "Ottilie",
      role: null,
      body: "It feels *slower* and goes further. 7 out of 10.",
    }),
    note({ date: "2025-10-20", kind: "observation", readers: ["club"], body: "Only for a club." }),
  ],
  closings: [
    {
      language: null,
      date: "2026-02-20",
      by: "Bram Ackerley",
      role: "hitting coach",
      ...{ readers: ["family"], held: null },
      body: [
        "You came in with 58 and leave with more: [[bat_speed machine: change]], [[bat_speed machine: range]].",
        "[[bat_speed machine: chart]] Keep the rounds short, as [[as written: <b>68</b>]].",
      ].join("\n"),
    },
    {
      language: "es",
      date: "2026-02-20",
      by: "Bram Ackerley",
      role: "hitting coach",
      ...{ readers: ["family"], held: null },
      body: [
        "Hasta pronto. [[bat_speed machine: change]], [[bat_speed machine: range]].",
        "[[bat_speed machine: chart]] [[as written: <b>68</b>]]",
      ].join("\n"),
    },
  ],
  program: {
    date: "2026-02-20",
    by: "Bram Ackerley",
    warmUp: { en: "Ten easy swings off the tee", es: "Diez swings suaves en el tee" },
    ownCue: "Turn, then throw the barrel",
    body: "Three days a week until the first game.",
    items: [
      {
        drill: "tee-low",
        label: { en: "Low tee", es: "Tee bajo" },
        purpose: "Lift the low pitch",
        implement: "oak-33",
        sets: 3,
        reps: 8,
        restS: 60,
        cue: "Chest over the plate",
        goodRep: { en: "The ball leaves on a line", es: "La pelota sale en línea" },
        caution: null,
        daysPerWeek: 3,
        where: "home",
      },
      {
        drill: "heavy",
        label: "Heavy bat, dry",
        purpose: "Strength in the turn",
        implement: "overload",
        sets: 2,
        reps: 6,
        restS: null,
        goodRep: null,
        cue: null,
        caution: "Stop when the speed drops.",
        daysPerWeek: 1,
        where: "supervised",
      },
    ],
  },
  gate: GATE,
  hitting: HITTING,
  method: { falseAlarm: { independent: 0.033, alike: 0.081, tests: 0.078 }, seasons: 4000 },
  suggestions: [],
  references: [
    {
      ...{
        text: "bat_speed machine: change",
        kind: "figure",
        words: null,
        series: 0,
        at: ["/series/0/change/estimate"],
      },
      ...{ unit: "mph", decimals: 1, signed: true },
    },
    {
      ...{ text: "bat_speed machine: range", kind: "range", words: null, series: 0 },
      ...{ at: ["/series/0/change/ci95/0", "/series/0/change/ci95/1"], unit: "mph", decimals: 1, signed: true },
    },
    {
      ...{ text: "bat_speed machine: chart", kind: "chart", words: null, series: 0, at: ["/series/0"] },
      ...{ unit: "mph", decimals: 1, signed: false },
    },
    {
      ...{ text: "as written: <b>68</b>", kind: "words", words: "<b>68</b>", series: null, at: [] },
      ...{ unit: null, decimals: 0, signed: false },
    },
  ],
  flags: [],
} satisfies Record<keyof Report, unknown>);

const NO_HITTING: Report["hitting"] = {
  load: { weeks: [], lastMax: null, daysSinceMax: null, weeksWithWork: 0, weeksInSeason: 0 },
  rounds: [],
  recovery: null,
  carryOver: [],
  contactShares: [],
  implements: [],
  fittings: [],
  plane: [],
  flight: [],
  contact: [],
  worth: null,
  machine: [],
  unseen: [],
  growth: null,
};

/** A child with three training days: little to say, and most sections have nothing. */
export const sparse: Report = AthleteReport.parse({
  ...full,
  gate: null,
  hitting: NO_HITTING,
  athlete: {
    ...full.athlete,
    id: "pip-larkwell",
    displayName: "Pip L.",
    language: "fr",
    sport: "baseball",
    level: null,
    bats: "left",
    throws: null,
    positions: [],
    age: 11,
    minor: true,
    growing: true,
    heights: [{ date: START, in: 57.25 }],
    masses: [{ date: START, lb: 84 }],
    gameBats: [],
    away: [],
  },
  publication: {
    family: { publish: true, as: "guardian", agreedOn: "2025-10-02", covers: null },
    club: { publish: true, as: "guardian", agreedOn: "2025-10-02", covers: null },
  },
  recipients: (["family", "club"] as const).map((reader) => ({
    ...{ id: reader, reader, film: true, kept: [], keptCount: 0 },
    publication: { publish: true, as: "guardian", agreedOn: "2025-10-02", covers: null },
  })),
  checkIns: [],
  aims: [],
  interim: {
    came: null,
    sofar: { days: 3, swings: 44, logged: 0 },
    lately: { from: "2026-01-24", days: 0, swings: 0, logged: 0 },
    ...{ phase: null, nextPhase: null, nextTest: null },
  },
  measuresWithSwings: 1,
  ledger: { read: 44, counted: 44, notCounted: {}, setAside: {} },
  series: [
    series({
      metric: "bat_speed",
      unit: "mph",
      decimals: 1,
      better: "higher",
      from: 41,
      to: 42,
      scatter: 1.2,
      days: 3,
      condition: { environment: "tee", implement: "game" },
      measure: 0,
    }),
  ],
  goals: [],
  work: { weeks: [], days: 3, swings: 44, loggedUnmeasured: 0, busiestWeek: 18 },
  measuring: { devices: [], bats: [], balls: [], pitchSpeeds: [], places: [] },
  assessment: null,
  notes: [],
  closings: [],
  program: null,
});

/** The same season at a facility that shows metric units. */
export const metric: Report = AthleteReport.parse({
  ...full,
  facility: { ...full.facility, units: "metric", notice: null, contact: null, cautions: [] },
  athlete: { ...full.athlete, id: "metric-hitter" },
});

/** Nothing was measured at all. */
export const empty: Report = AthleteReport.parse({
  ...sparse,
  athlete: { ...sparse.athlete, id: "no-swings", heights: [], masses: [], age: null },
  measuresWithSwings: 0,
  ledger: { read: 0, counted: 0, notCounted: {}, setAside: {} },
  series: [],
  work: { weeks: [], days: 0, swings: 0, loggedUnmeasured: 0, busiestWeek: 0 },
});

type Goal = Report["goals"][number];
type Note = Report["notes"][number];

function goal(part: Partial<Goal>): Goal {
  return {
    metric: "bat_speed",
    unit: "mph",
    decimals: 1,
    better: "higher",
    condition: {},
    kind: "target",
    zone: null,
    target: null,
    window: null,
    atLeast: null,
    share: null,
    by: "2026-02-20",
    set: START,
    why: null,
    baseline: null,
    current: null,
    progress: null,
    ci95: null,
    currentCi95: null,
    status: null,
    probabilityByDate: null,
    replacedOn: null,
    baselineN: { sessions: 6, n: 96 },
    currentN: { sessions: 6, n: 104 },
    ...part,
  };
}

function note(part: Partial<Note>): Note {
  return {
    date: START,
    author: "Bram Ackerley",
    role: "hitting coach",
    kind: "observation",
    about: [],
    readers: ["family"],
    held: null,
    body: "",
    images: {},
    series: [],
    ...part,
  };
}
