import { z } from "zod";
import { EFFORTS, PITCH_SPEED_PLACES, PURPOSES, SIDES } from "./columns.ts";
import { Profile } from "./profile.ts";
import { ClockTime, Id, IsoDate } from "./text.ts";

/**
 * The small tables the trainer keeps as CSV. Cells come in as text; a blank cell is absent, never 0.
 * (Swing files do not pass here: they are read column by column, see intake.)
 */
const blank = (value: unknown) => (value === "" ? undefined : value);
const cell = <T extends z.ZodType>(schema: T) => z.preprocess(blank, schema.optional());
const required = <T extends z.ZodType>(schema: T) => z.preprocess(blank, schema);
const asNumber = z
  .string()
  .regex(/^[-+]?\d+(\.\d+)?$/, "not a number (write it with a point, as 61.5)")
  .transform(Number);
const number = cell(asNumber);
const above0 = cell(asNumber.pipe(z.number().positive()));
const count = cell(asNumber.pipe(z.int().min(1)));
const age = cell(asNumber.pipe(z.number().min(0).max(120)));
const text = cell(z.string());
const id = cell(Id);
const date = cell(IsoDate);
const time = cell(ClockTime);
const words = <const T extends readonly [string, ...string[]]>(list: T) => cell(z.enum(list));
const axis = cell(z.string().regex(/^(\d{1,2}:\d{2}|\d{1,3}(\.\d+)?)$/, "an axis is a clock as 12:45 or degrees"));

export const ImplementRow = z.strictObject({
  id: required(Id),
  label: text,
  length_in: number,
  weight_oz: number,
  role: id,
  material: text,
  certification: text,
  barrel_in: number,
  balance_in: number,
  swing_period_s: number,
  balls: text,
  owner: text,
  from: date,
  to: date,
});
export const BallRow = z.strictObject({
  id: required(Id),
  label: text,
  kind: text,
  mass_oz: number,
  circumference_in: number,
  flight: words(["full", "limited", "none"]),
  q: number,
});
export const FeedRow = z.strictObject({
  id: required(Id),
  kind: text,
  pitch_type: text,
  pitcher_side: words(SIDES),
  pitch_speed_mph: number,
  pitch_speed_at: words(PITCH_SPEED_PLACES),
  pitch_distance_ft: number,
  release_height_ft: number,
  spin_rpm: number,
  spin_axis: axis,
  ball: text,
  from: date,
  to: date,
  checked_on: date,
});
export const DeviceRow = z.strictObject({
  id: required(Id),
  kind: text,
  measures: text,
  point_on_bat: text,
  site: id,
  lane: text,
  from: date,
  to: date,
  firmware: text,
  checked_on: date,
  comment: text,
});
export const CorrectionRow = z.strictObject({
  by: required(z.string()),
  on: required(IsoDate),
  reason: required(z.string()),
  file: text,
  line: number,
  athlete_id: text,
  date,
  session: text,
  block: text,
  first: number,
  last: number,
  action: required(z.enum(["set", "reassign", "void"])),
  field: text,
  from: text,
  to: text,
});
export const BlockRow = z.strictObject({
  date: required(IsoDate),
  session: text,
  group: id,
  athlete_id: text,
  block: text,
  part: text,
  environment: text,
  drill: id,
  implement: text,
  ball: text,
  side: words(SIDES),
  feed: id,
  aim: text,
  purpose: words(PURPOSES),
  effort: words(EFFORTS),
  feedback: text,
  ball_height_in: number,
  rounds: number,
  reps: number,
  rest_s: number,
  start: time,
  end: time,
  site: id,
  lane: text,
  trainer: id,
  measured: words(["speed", "flight", "both", "none"]),
  comment: text,
});
export const TestRow = z.strictObject({
  athlete_id: required(z.string()),
  date: required(IsoDate),
  time,
  test: required(Id),
  side: words(SIDES),
  attempt: number,
  value: required(asNumber),
  unit: required(z.string()),
  load: number,
  load_unit: text,
  protocol: text,
  tester: text,
  device: text,
  comment: text,
});
export type TestWritten = z.infer<typeof TestRow>;
/** One row of a reference sample: an athlete's value, or what a published table says of a kind of athlete. */
export const ReferenceRow = z.strictObject({
  metric: required(z.string()),
  unit: required(z.string()),
  point_on_bat: text,
  environment: text,
  implement: text,
  sport: cell(Profile.shape.sport),
  sex: cell(Profile.shape.sex),
  level: text,
  age_lo: age,
  age_hi: age,
  kind: required(z.enum(["value", "lms", "mean-sd", "line"])),
  value: number,
  l: number,
  m: above0,
  s: above0,
  mean: number,
  sd: above0,
  n: count,
  source: text,
  year: cell(asNumber.pipe(z.int().min(1900).max(2100))),
});

export type Implement = z.infer<typeof ImplementRow>;
export type Ball = z.infer<typeof BallRow>;
export type Feed = z.infer<typeof FeedRow>;
export type Device = z.infer<typeof DeviceRow>;
export type Block = z.infer<typeof BlockRow>;
export type CorrectionWritten = z.infer<typeof CorrectionRow>;
export type ReferenceWritten = z.infer<typeof ReferenceRow>;
