import { z } from "zod";
import { Id, LocalText } from "./text.ts";

/** One thing that is measured on a rep, in one unit. */
export interface Metric {
  readonly id: string;
  readonly unit: string;
  readonly better: "higher" | "lower" | "window";
  /** Values outside are set aside as `out-of-range`. Canonical unit, both ends included. */
  readonly plausible: readonly [number, number];
  /** Decimals a reader sees. */
  readonly decimals: number;
  /** Which device sees it: the bat sensor, or the ball-flight screen. A metric without either is `own`. */
  readonly side: "bat" | "ball" | "own";
  readonly window?: readonly [number, number] | undefined;
  readonly typicalError?: number | undefined;
  readonly smallestWorthwhile?: number | undefined;
  readonly label?: z.infer<typeof LocalText> | undefined;
}

/** The metrics that every season knows, in the order of the canonical header. */
export const BUILT_IN_METRICS: readonly Metric[] = [
  { id: "bat_speed", unit: "mph", better: "higher", plausible: [15, 110], decimals: 1, side: "bat" },
  { id: "attack_angle", unit: "deg", better: "window", plausible: [-45, 60], decimals: 1, side: "bat" },
  { id: "swing_time", unit: "s", better: "lower", plausible: [0.08, 0.5], decimals: 3, side: "bat" },
  { id: "exit_velocity", unit: "mph", better: "higher", plausible: [10, 130], decimals: 1, side: "ball" },
  { id: "launch_angle", unit: "deg", better: "window", plausible: [-90, 90], decimals: 1, side: "ball" },
  { id: "spray_angle", unit: "deg", better: "window", plausible: [-180, 180], decimals: 1, side: "ball" },
  { id: "distance", unit: "ft", better: "higher", plausible: [0, 550], decimals: 0, side: "ball" },
  { id: "hit_spin", unit: "rpm", better: "window", plausible: [0, 8000], decimals: 0, side: "ball" },
];

const Pair = z
  .tuple([z.number(), z.number()])
  .refine(([lo, hi]) => lo < hi, "the first number must be below the second");

const OwnMetric = z.strictObject({
  id: z.string().regex(/^[a-z][a-z0-9_]*$/, "an id here is lower-case letters, digits and underscores"),
  label: LocalText,
  unit: z.string().min(1),
  better: z.enum(["higher", "lower", "window"]),
  window: Pair.optional(),
  plausible: Pair,
  decimals: z.int().min(0).max(4),
  typical_error: z.number().positive().optional(),
  smallest_worthwhile: z.number().positive().optional(),
});

const BUILT_IN_IDS: ReadonlySet<unknown> = new Set(BUILT_IN_METRICS.map(({ id }) => id));
const namesBuiltIn = (entry: unknown) =>
  typeof entry === "object" && entry !== null && "id" in entry && BUILT_IN_IDS.has(entry.id);

/** What a trainer may say of a metric that every season knows: nothing that would make it another one. */
const MetricSetting = z
  .unknown()
  .superRefine((entry, context) => {
    // As wrong as can be, so that an unfinished metric of the trainer's own is not taken for a setting.
    if (!namesBuiltIn(entry)) context.addIssue({ code: "invalid_type", expected: "object", input: entry });
  })
  .pipe(
    z.strictObject({
      id: z.string(),
      window: Pair.optional(),
      typical_error: z.number().positive().optional(),
      smallest_worthwhile: z.number().positive().optional(),
    }),
  );

/** `content/metrics.md`: the trainer's own metrics, settings of those that every season knows, and target zones. */
export const MetricsFile = z.strictObject({
  metrics: z.array(z.union([OwnMetric, MetricSetting])).optional(),
  zones: z
    .array(
      z.strictObject({
        id: Id,
        label: LocalText,
        exit_velocity: Pair.optional(),
        launch_angle: Pair.optional(),
        spray: Pair.optional(),
      }),
    )
    .optional(),
});
export type MetricsFile = z.infer<typeof MetricsFile>;
