import { BRIDGED, UNBRIDGED } from "./devices.ts";
import type { Story } from "./story.ts";

const baseball = { live: "bb-leather", machine: "bb-dimple", soft: "soft-nine" };
const softball = { live: "sb-twelve", machine: "sb-dimple", soft: "soft-twelve" };
const rack = { heavy: "bb-over", light: "bb-under", short: "bb-short", long: "bb-long" };
const fastpitchRack = { heavy: "fp-over", light: "fp-under", short: "fp-short" };
const laneA = { site: "barn", lane: "a", deviceBat: "knob-1", deviceBall: "gate-1" };
const laneB = { site: "barn", lane: "b", deviceBat: "knob-2", deviceBall: "gate-2" };
const laneC = { site: "shed", lane: "c", deviceBat: UNBRIDGED.before, deviceBall: "gate-3" };
const steady = { fade: 0.08, daySd: 0.9, repSd: 1.7, miss: 0.1, foul: 0.18, missed: 0.11, tests: true };
const START = "2025-10-06";

export const STORIES: readonly Story[] = [
  // A clear gain, everywhere, also off the machine.
  {
    ...{
      id: "corwin-tallowby",
      alias: "C. Tallowby",
      group: "diamond",
      ...laneA,
      hour: 16,
      weekdays: [1, 3, 5],
      ...steady,
      ...rack,
    },
    ...{ gameBat: [{ id: "bb-33", from: START }], balls: baseball, feed: "wheel-hs", bend: "wheel-hs-bend" },
    ...{ speed: { tee: [65.5, 70], toss: [64.8, 69.2], machine: [62.5, 66.9] }, side: "right", attack: [3.5, 8.5] },
    ...{ swingTime: [0.172, 0.161], reps: { tee: 9, toss: 9, machine: 11, round: 5 } },
  },
  // Better in tosses; off the machine the same as before.
  {
    ...{
      id: "juniper-brackwell",
      alias: "Brackwell, J.",
      group: "fastpitch",
      ...laneB,
      hour: 16,
      weekdays: [2, 4, 6],
      ...steady,
      ...fastpitchRack,
    },
    ...{
      gameBat: [{ id: "fp-33", from: START }],
      balls: softball,
      feed: "arm-fastpitch",
      bend: "arm-fastpitch-change",
    },
    ...{ speed: { tee: [57.5, 60.4], toss: [56.6, 60.4], machine: [54.6, 54.7] }, side: "right", attack: [6, 7] },
    ...{ swingTime: [0.181, 0.176], miss: 0.15, reps: { tee: 8, toss: 11, machine: 11, round: 6 } },
  },
  // No clear change, though a new sensor reads higher: an evening with both tells by how much.
  {
    ...{
      id: "desmond-farrowick",
      alias: "Des F.",
      group: "grown",
      ...{ ...laneA, deviceBat: BRIDGED.before },
      hour: 19,
      weekdays: [1, 4],
      ...steady,
      ...rack,
    },
    ...{ gameBat: [{ id: "bb-33h", from: START }], balls: baseball, feed: "wheel-college", bend: "wheel-college-bend" },
    ...{ speed: { tee: [74.6, 74.7], toss: [73.8, 73.7], machine: [71.9, 71.9] }, side: "right", attack: [7, 7] },
    ...{ swingTime: [0.157, 0.157], daySd: 0.7, reps: { tee: 10, toss: 15, machine: 15, round: 5 } },
  },
  // A real drop after weeks away.
  {
    ...{
      id: "wrenna-stillbourne",
      alias: "W. Stillbourne",
      group: "fastpitch",
      ...laneB,
      hour: 19,
      weekdays: [1, 3, 5],
      ...steady,
      ...fastpitchRack,
    },
    ...{
      gameBat: [{ id: "fp-32", from: START }],
      balls: softball,
      feed: "arm-fastpitch",
      bend: "arm-fastpitch-change",
    },
    ...{ speed: { tee: [61.8, 62.4], toss: [61, 61.6], machine: [59.4, 60] }, side: "left", attack: [5, 5] },
    ...{
      steps: [{ from: "2025-12-12", mph: -5.2, regainPerWeek: 0.18 }],
      away: [["2025-12-12", "2026-01-18"]],
      heavyUntil: "2026-01-19",
    },
    ...{ swingTime: [0.172, 0.178], slaps: true, bunts: true, reps: { tee: 9, toss: 9, machine: 12, round: 6 } },
  },
  // Twelve years old: growth, and a longer, heavier bat in mid-season.
  {
    ...{
      id: "marisol-quintalba",
      alias: "Mari Q.",
      group: "fastpitch",
      ...laneB,
      hour: 14,
      weekdays: [3, 6],
      ...steady,
      light: "fp-light-12u",
    },
    ...{
      gameBat: [
        { id: "fp-29", from: START },
        { id: "fp-30", from: "2026-01-05" },
      ],
      newBatQ: 0.03,
    },
    ...{ balls: softball, feed: "arm-twelve", machineFrom: "2026-02-11", attack: [8, 9], swingTime: [0.205, 0.192] },
    ...{ speed: { tee: [43.2, 47.6], toss: [42, 46.4], machine: [40, 44] }, side: "right", repSd: 1.5 },
    ...{ reps: { tee: 14, toss: 14, machine: 8, round: 5 } },
  },
  // Left-handed, for pay; long rounds cost him speed.
  {
    ...{
      id: "anselm-drovik",
      alias: "Drovik",
      group: "grown",
      ...laneB,
      hour: 10,
      weekdays: [2, 4],
      ...steady,
      ...rack,
      tests: true,
    },
    ...{ gameBat: [{ id: "maple-34", from: START }], balls: baseball, feed: "wheel-pro", bend: "wheel-pro-bend" },
    ...{ speed: { tee: [78.6, 80], toss: [78, 79.4], machine: [76.2, 77.7] }, side: "left", attack: [9, 10] },
    ...{
      swingTime: [0.149, 0.147],
      fade: 0.55,
      miss: 0.07,
      daySd: 0.8,
      reps: { tee: 9, toss: 10, machine: 20, round: 10 },
    },
  },
  // Both sides: the right one moves, the left one hardly.
  {
    ...{
      id: "thaddeus-marchbane",
      alias: "Thad M.",
      group: "diamond",
      ...laneB,
      hour: 17,
      weekdays: [2, 4, 6],
      ...steady,
      light: "bb-under",
    },
    ...{ gameBat: [{ id: "bb-32s", from: START }], balls: baseball, feed: "wheel-hs", side: "right", attack: [6, 7] },
    ...{ speed: { tee: [69, 72.2], toss: [68.3, 71.4], machine: [66.8, 69.9] }, swingTime: [0.164, 0.16] },
    ...{ leftSpeed: { tee: [64.8, 64.7], toss: [64, 63.9], machine: [62, 61.8] } },
    ...{ reps: { tee: 10, toss: 10, machine: 20, round: 5 } },
  },
  // Four sessions: too few to say.
  {
    ...{
      id: "rufus-ellingthorpe",
      alias: "Rufus E.",
      group: "diamond",
      ...laneA,
      hour: 15,
      weekdays: [2],
      ...steady,
      tests: false,
    },
    ...{ onlyDays: ["2026-01-27", "2026-02-03", "2026-02-10", "2026-02-17"] },
    ...{ gameBat: [{ id: "bb-31y", from: "2026-01-27" }], balls: baseball, feed: "wheel-thirteen", side: "right" },
    ...{ speed: { tee: [54, 55], toss: [53, 54], machine: [51, 52] }, attack: [4, 5], swingTime: [0.188, 0.186] },
    ...{ reps: { tee: 10, toss: 10, machine: 8, round: 5 } },
  },
  // True speed stays; the new sensor reads higher.
  {
    ...{
      id: "bastian-oakhollow",
      alias: "B. Oakhollow",
      group: "diamond",
      ...laneC,
      hour: 16,
      weekdays: [1, 3, 6],
      ...steady,
      ...rack,
    },
    ...{ gameBat: [{ id: "bb-32", from: START }], balls: baseball, feed: "wheel-hs", bend: "wheel-hs-bend" },
    ...{ speed: { tee: [66, 65.7], toss: [65.2, 64.9], machine: [63.4, 63] }, side: "right", attack: [5, 6] },
    ...{ swingTime: [0.168, 0.167], daySd: 0.8, reps: { tee: 9, toss: 9, machine: 11, round: 5 } },
  },
];
