import type { Export } from "./exports.ts";
import { HUB_FILES } from "./plan.ts";

/** Names by which the hub knows people and things: ours -> the hub's. */
const NICKNAMES = { "anselm-drovik": "DROV", "desmond-farrowick": "Farro" } as const;
const CAGES = { a: "Cage A", b: "Cage B" } as const;
const SENSORS = { "knob-2": "S2", "knob-6": "S6" } as const;
const RADARS = { "gate-1": "R1", "gate-2": "R2" } as const;
const KINDS = { full: "swing", practice: "loose", check: "held" } as const;
const OUTCOMES = { hit: "fair", foul: "foul", miss: "past", take: "let go" } as const;

/** Name and unit of a column of the hub, the canonical column of a metric tablet that it is, and how it is written. */
interface Column {
  name: string;
  unit: string;
  from: string;
  field: object;
  write(cell: string): string;
}

const words = (name: string, from: string, ours: Readonly<Record<string, string>>, field = from): Column => ({
  ...{ name, unit: "", from },
  field: { field, words: Object.fromEntries(Object.entries(ours).map(([id, word]) => [word, id])) },
  write: (cell) => (cell === "" ? "" : wordOf(ours, cell)),
});

const figure = (name: string, unit: string, from: string, field: string, ours: string): Column => ({
  ...{ name, unit, from, field: { field, unit: ours } },
  write: (cell) => cell.replace(".", ","),
});

function wordOf(ours: Readonly<Record<string, string>>, cell: string): string {
  const word = ours[cell];
  if (word === undefined) throw new Error(`the hub has no word for ${cell}`);
  return word;
}

const COLUMNS: readonly Column[] = [
  {
    name: "Hitter",
    unit: "",
    from: "athlete_id",
    field: { field: "athlete_id" },
    write: (id) => wordOf(NICKNAMES, id),
  },
  { name: "Day", unit: "", from: "date", field: { field: "date", form: "dd.MM.yyyy" }, write: dayFirst },
  { name: "Clock", unit: "", from: "time", field: { field: "time", form: "h:mm:ss a" }, write: twelveHours },
  words("Cage", "lane", CAGES),
  words("Knob", "device_bat", SENSORS),
  words("Dish", "device_ball", RADARS),
  words("Kind", "swing_type", KINDS),
  words("Outcome", "result", OUTCOMES),
  figure("Barrel", "km/h", "bat_speed_kmh", "bat_speed", "km/h"),
  figure("Path", "°", "attack_angle_deg", "attack_angle", "deg"),
  figure("To contact", "s", "swing_time_s", "swing_time", "s"),
  figure("Off the bat", "km/h", "exit_velocity_kmh", "exit_velocity", "km/h"),
  figure("Climb", "°", "launch_angle_deg", "launch_angle", "deg"),
  figure("Sideways", "°", "spray_angle_deg", "spray_angle", "deg"),
  figure("Carry", "m", "distance_m", "distance", "m"),
];
/** The hub numbers its rows; nobody needs the number. */
const NUMBER = "Nr";
/** Stands in the hitter's place of the last row of an export. */
const MEAN = "Everybody, mean";
const FOLDER = "data/swings/hub";

/** The hub's exports: last day -> first day. Its memory is cleared by hand, so the second of February repeats the first. */
export const HUB_EXPORTS = [
  { from: "2026-01-01", to: "2026-01-29" },
  { from: "2026-02-01", to: "2026-02-03" },
  { from: "2026-02-01", to: "2026-02-05" },
  { from: "2026-02-06", to: "2026-02-19" },
] as const;
export const hubFile = (to: string): string => `${FOLDER}/${to}.csv`;
/** Rows of every export that are no swings: units and the mean. */
export const ROWS_BESIDE_SWINGS = 2;

/** `data/mappings/barn-hub.json`, by which the exports are read. */
const MAPPING = {
  label: "Hub of the barn, all cages",
  header: [NUMBER, ...COLUMNS.map(({ name }) => name)],
  delimiter: ";",
  decimal: ",",
  units_row: ["", ...COLUMNS.map(({ unit }) => unit)],
  summary_rows: { column: "Hitter", words: [MEAN] },
  columns: Object.fromEntries(COLUMNS.map(({ name, field }) => [name, field])),
};

function dayFirst(date: string): string {
  return date.split("-").reverse().join(".");
}

function twelveHours(time: string): string {
  const [hour = 0] = time.split(":").map(Number);
  return `${hour % 12 === 0 ? 12 : hour % 12}${time.slice(2)} ${hour < 12 ? "AM" : "PM"}`;
}

/**
 * Turns the tablet's files of the hub's months into the hub's exports and their mapping: fewer columns, other words.
 *
 * @param files as the tablet would have written them; these are taken out
 * @returns path in the season folder -> text
 */
export function hubFiles(files: Map<string, Export>): Map<string, string> {
  const rows = HUB_FILES.flatMap((path) => {
    const { columns, rows } = files.get(path)!;
    files.delete(path);
    return rows.map((row) => new Map(columns.map((column, at) => [column, row[at]!])));
  });
  const texts = new Map<string, string>();
  for (const { from, to } of HUB_EXPORTS) {
    const own = rows.filter((row) => row.get("date")! >= from && row.get("date")! <= to);
    texts.set(hubFile(to), hubText(own, to));
  }
  return texts.set("data/mappings/barn-hub.json", `${JSON.stringify(MAPPING, null, 2)}\n`);
}

function hubText(rows: readonly ReadonlyMap<string, string>[], to: string): string {
  const speeds = rows.flatMap((row) => (row.get("bat_speed_kmh") ? [Number(row.get("bat_speed_kmh"))] : []));
  const mean = (speeds.reduce((sum, kmh) => sum + kmh, 0) / speeds.length).toFixed(1).replace(".", ",");
  const lines = [
    ["Barn hub", "all cages"],
    ["Written", dayFirst(to), "9:30:00 PM"],
    MAPPING.header,
    MAPPING.units_row,
    ...rows.map((row, at) => [String(at + 1), ...COLUMNS.map(({ from, write }) => write(row.get(from) ?? ""))]),
    ["", ...COLUMNS.map(({ name }) => (name === "Hitter" ? MEAN : name === "Barrel" ? mean : ""))],
  ];
  return lines.map((cells) => `${cells.join(";")}\n`).join("");
}
