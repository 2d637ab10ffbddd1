import { BUILT_IN_METRICS } from "./metric.ts";

/** Kinds of swings' surroundings that every season knows; drills.md may declare more. */
export const ENVIRONMENTS = ["dry", "tee", "side-toss", "front-toss", "overhand", "machine", "live", "game"] as const;
/** Environments whose pitch speed is part of the condition. */
export const PITCHED_ENVIRONMENTS: readonly string[] = ["overhand", "machine", "live", "game"];
export const SIDES = ["left", "right"] as const;
export const SWING_TYPES = ["full", "slap", "bunt", "check", "practice"] as const;
export const RESULTS = ["hit", "foul", "miss", "take"] as const;
export const PURPOSES = ["training", "test", "fitting", "game"] as const;
export const EFFORTS = ["technical", "game", "max"] as const;
export const PITCH_SPEED_PLACES = ["set", "release", "plate"] as const;
export const PLACES = ["facility", "home", "club", "game"] as const;

/** What the cells of a canonical column hold. */
export type ColumnKind =
  | { readonly kind: "athlete" | "date" | "time" | "date-time" | "text" | "implement" | "ball" | "id" | "axis" }
  | { readonly kind: "words"; readonly words: readonly string[]; readonly open?: true }
  | { readonly kind: "count" }
  | { readonly kind: "number"; readonly unit: string; readonly plausible: readonly [number, number] };

export interface Column {
  /** Field name without unit: `pitch_speed`. */
  readonly field: string;
  readonly is: ColumnKind;
  /** Canonical header name: `pitch_speed_mph`. */
  readonly header: string;
}

const text = (field: string, is: ColumnKind): Column => ({ field, is, header: field });
const words = (field: string, list: readonly string[], open?: true): Column =>
  text(field, open ? { kind: "words", words: list, open } : { kind: "words", words: list });
const number = (field: string, unit: string, lo: number, hi: number): Column => ({
  field,
  is: { kind: "number", unit, plausible: [lo, hi] },
  header: `${field}_${unit}`,
});
const metric = (id: string): Column => {
  const found = BUILT_IN_METRICS.find((m) => m.id === id);
  if (!found) throw new Error(`no built-in metric ${id}`);
  return number(id, found.unit, found.plausible[0], found.plausible[1]);
};

/**
 * The canonical swing table, in the order of its header. Plausible ranges of the metrics are theirs; those of
 * pitch speed, distance and spin are wide bounds that only catch misreads (common practice).
 */
export const SWING_COLUMNS: readonly Column[] = [
  text("athlete_id", { kind: "athlete" }),
  text("date", { kind: "date" }),
  text("time", { kind: "time" }),
  text("session", { kind: "text" }),
  text("block", { kind: "text" }),
  words("environment", ENVIRONMENTS, true),
  text("drill", { kind: "id" }),
  text("implement", { kind: "implement" }),
  text("ball", { kind: "ball" }),
  text("round", { kind: "count" }),
  text("rep", { kind: "count" }),
  words("side", SIDES),
  words("swing_type", SWING_TYPES),
  words("result", RESULTS),
  words("purpose", PURPOSES),
  words("effort", EFFORTS),
  text("pitch_type", { kind: "text" }),
  words("pitcher_side", SIDES),
  number("pitch_speed", "mph", 5, 115),
  words("pitch_speed_at", PITCH_SPEED_PLACES),
  number("pitch_distance", "ft", 5, 70),
  number("spin", "rpm", 0, 4500),
  text("spin_axis", { kind: "axis" }),
  number("ball_height", "in", -12, 90),
  number("ball_across", "in", -60, 60),
  number("contact_depth", "in", -60, 60),
  metric("bat_speed"),
  metric("attack_angle"),
  metric("swing_time"),
  metric("exit_velocity"),
  metric("launch_angle"),
  metric("spray_angle"),
  metric("distance"),
  metric("hit_spin"),
  text("hit_spin_axis", { kind: "axis" }),
  text("site", { kind: "id" }),
  text("lane", { kind: "text" }),
  text("device_bat", { kind: "id" }),
  text("device_ball", { kind: "id" }),
  words("place", PLACES),
  text("comment", { kind: "text" }),
];

/** Day and clock in one cell, as exports have them; a mapping may name it, the canonical table has none. */
export const MOMENT_COLUMN: Column = text("date_time", { kind: "date-time" });

/** Header names of the canonical table, in order. */
export const CANONICAL_HEADER: readonly string[] = SWING_COLUMNS.map((column) => column.header);
