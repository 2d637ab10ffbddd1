import { BATS } from "./bats.ts";
import { csvTable } from "./csv.ts";
import { DEVICES } from "./devices.ts";

/** Balls of the cage. */
export const BALLS = [
  {
    id: "bb-leather",
    label: "Leather baseball",
    kind: "baseball",
    mass_oz: 5.1,
    circumference_in: 9.1,
    flight: "full",
  },
  { id: "bb-dimple", label: "Machine ball", kind: "baseball", mass_oz: 5, circumference_in: 9.1, flight: "limited" },
  { id: "sb-twelve", label: "Softball, 12 in", kind: "softball", mass_oz: 6.6, circumference_in: 12, flight: "full" },
  {
    id: "sb-dimple",
    label: "Machine softball",
    kind: "softball",
    mass_oz: 6.5,
    circumference_in: 12,
    flight: "limited",
  },
  { id: "soft-nine", label: "Soft ball, small", kind: "soft", mass_oz: 4.2, circumference_in: 9.2, flight: "limited" },
  { id: "soft-twelve", label: "Soft ball, large", kind: "soft", mass_oz: 5.4, circumference_in: 12, flight: "limited" },
] as const;

/** What the table states as the best that bat and ball allow lies so much above a square hit of these swings, with their sensors' errors. */
const BEST_ABOVE_SQUARE = 0.05;

/** Collision efficiency on a square hit, by ball, that the swings are made with. */
export const Q_OF_BALL: Readonly<Record<string, number>> = {
  "bb-leather": 0.2,
  "bb-dimple": 0.19,
  "sb-twelve": 0.18,
  "sb-dimple": 0.17,
  "soft-nine": 0.13,
  "soft-twelve": 0.11,
};

/** A way of bringing the ball. Speeds in mph as set on the machine, distances and heights in feet. */
export interface Feed {
  id: string;
  kind: string;
  pitch_type?: string;
  pitch_speed_mph: number;
  pitch_speed_at: "set" | "release";
  pitch_distance_ft: number;
  release_height_ft: number;
  ball: string;
}

export const FEEDS: readonly Feed[] = [
  machine("wheel-hs", "fastball", 72, 48, 5.2, "bb-dimple"),
  machine("wheel-hs-bend", "curveball", 61, 48, 5.6, "bb-dimple"),
  machine("wheel-college", "fastball", 78, 49, 5.4, "bb-dimple"),
  machine("wheel-college-bend", "curveball", 67, 49, 5.8, "bb-dimple"),
  machine("wheel-pro", "fastball", 83, 51, 5.6, "bb-dimple"),
  machine("wheel-pro-bend", "curveball", 71, 51, 6, "bb-dimple"),
  machine("wheel-thirteen", "fastball", 56, 44, 4.8, "bb-dimple"),
  machine("arm-fastpitch", "fastball", 53, 37, 2.4, "sb-dimple"),
  machine("arm-fastpitch-change", "changeup", 43, 37, 2.4, "sb-dimple"),
  machine("arm-twelve", "fastball", 41, 33, 2.2, "sb-dimple"),
  {
    id: "toss-screen",
    kind: "front-toss",
    pitch_speed_mph: 23,
    pitch_speed_at: "release",
    pitch_distance_ft: 17,
    release_height_ft: 3,
    ball: "",
  },
];

function machine(id: string, pitch_type: string, mph: number, distance: number, height: number, ball: string): Feed {
  return {
    id,
    kind: "machine",
    pitch_type,
    pitch_speed_mph: mph,
    pitch_speed_at: "set",
    pitch_distance_ft: distance,
    release_height_ft: height,
    ball,
  };
}

/** The four equipment files, by path in the season folder. */
export function equipmentFiles(): Map<string, string> {
  const bats =
    "id,label,length_in,weight_oz,role,material,certification,barrel_in,balance_in,swing_period_s,balls,owner,from,to";
  const balls = "id,label,kind,mass_oz,circumference_in,flight,q";
  const feeds =
    "id,kind,pitch_type,pitcher_side,pitch_speed_mph,pitch_speed_at,pitch_distance_ft,release_height_ft,spin_rpm,spin_axis,ball,from,to,checked_on";
  const devices = "id,kind,measures,point_on_bat,site,lane,from,to,firmware,checked_on,comment";
  const rows = (records: readonly object[]): Record<string, string | number>[] =>
    records.map((record) => ({ ...record }));
  return new Map([
    ["data/implements.csv", csvTable(bats.split(","), rows(BATS))],
    [
      "data/balls.csv",
      csvTable(
        balls.split(","),
        rows(BALLS.map((ball) => ({ ...ball, q: Number(((Q_OF_BALL[ball.id] ?? 0) + BEST_ABOVE_SQUARE).toFixed(2)) }))),
      ),
    ],
    ["data/feeds.csv", csvTable(feeds.split(","), rows(FEEDS.map((feed) => ({ ...feed, checked_on: "2025-10-04" }))))],
    ["data/devices.csv", csvTable(devices.split(","), rows(DEVICES))],
  ]);
}
