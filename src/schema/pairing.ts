import type { Ball } from "./tables.ts";

/** A row of a bat's sensor, ready to be paired: seconds of its own clock, mph. */
export interface BatReading {
  readonly time: number;
  readonly speed: number | null;
  /** It touched no ball: a miss, a take, a dry swing, or nobody watched the ball. */
  readonly noBall: boolean;
}

/** A row of a ball's screen, ready to be paired. */
export interface BallReading {
  readonly time: number;
  readonly exit: number | null;
  /** It met no bat. */
  readonly noBat: boolean;
  readonly environment: string | null;
  /** As written, where it is. */
  readonly pitch: { readonly mph: number; readonly at: string | null; readonly distanceFt: number | null } | null;
  /** Of balls.csv. */
  readonly ball: Ball | null;
}

/** One sensor's rows, in order of time, and which of them cannot be which ball. */
export interface SensorReadings {
  readonly bats: readonly BatReading[];
  apart(bat: number, ball: number): boolean;
}

/** Places of two rows that are one swing, and how sure that is, 0 to 1. */
export interface Pair {
  readonly a: number;
  readonly b: number;
  readonly confidence: number;
}

/** What was found of one sensor and the screen. */
export type SensorPairs =
  | {
      /** The ball's clock less the bat's, s; its drift in s per s; SD of the difference between two stamps of one swing, s. */
      readonly offset: number;
      readonly drift: number;
      readonly noise: number;
      readonly pairs: readonly Pair[];
      readonly doubtful: readonly Pair[];
    }
  | { readonly kind: "none"; readonly reason: "empty" | "cannot-tell" };

/** Pairs the sensors of one day with one screen; one entry a sensor. Physics is its business. */
export type PairSensors = (sensors: readonly SensorReadings[], balls: readonly BallReading[]) => readonly SensorPairs[];

/** How a row of a day with two devices stands: joined, or alone and why. A word of the rep table. */
export const PAIRINGS = ["paired", "ball-not-recorded", "no-swing", "bat-not-recorded"] as const;
export type Pairing = (typeof PAIRINGS)[number];

/** A row as the desk shows it: where it stands, its own clock in seconds of the day, what it reads. */
export interface PairedRow {
  readonly file: string;
  readonly line: number;
  readonly time: number;
  /** Bat speed or exit velocity, mph. */
  readonly mph: number | null;
}

/** One athlete's day with two devices, for the desk. Plain JSON. */
export interface PairedSession {
  readonly athlete: string;
  readonly date: string;
  /** `no-seconds`: a row's time is missing or has no seconds. */
  readonly outcome: "paired" | "cannot-tell" | "no-seconds";
  /** Null unless paired; units as in `SensorPairs`. */
  readonly clocks: { readonly offset: number; readonly drift: number; readonly noise: number } | null;
  readonly bats: readonly PairedRow[];
  /** Balls of this athlete, and of nobody. */
  readonly balls: readonly PairedRow[];
  /** `told`: a correction says so. */
  readonly pairs: readonly (Pair & { readonly told: boolean })[];
  readonly doubtful: readonly Pair[];
  /** How each bat's and each ball's row stands in the end; null for one that pairing says nothing of. */
  readonly batPairing: readonly (Pairing | null)[];
  readonly ballPairing: readonly (Pairing | null)[];
}
