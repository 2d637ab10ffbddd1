import type { PairedSession } from "../schema/pairing.ts";

/** Minutes of one strip, and its size in units of the drawing. */
const STRIP_S = 300;
export const STRIP = { width: 960, height: 64 } as const;
/** Heights of the two devices' ticks, and their length. */
const BAT_Y = 6;
const BALL_Y = 58;
const TICK = 14;
/** Seconds before the first row of a strip. */
const LEAD = 10;

/** A stretch of a session: two rows of ticks on one time axis, drawn as paths of an SVG. */
export interface PairStrip {
  /** Clock of the bat at its left end, `hh:mm`. */
  readonly clock: string;
  /** Ticks of the bat above, of the ball below; with a partner and without. */
  readonly bats: string;
  readonly lonelyBats: string;
  readonly balls: string;
  readonly lonelyBalls: string;
  /** Lines between partners: made and doubtful. */
  readonly links: string;
  readonly doubtful: string;
  /** One line a minute. */
  readonly minutes: string;
}

const one = (value: number): string => String(Math.round(value * 10) / 10);

/** Both sequences of a paired session side by side, cut into strips; the ball's clock is brought to the bat's. */
export function pairStrips({ bats, balls, pairs, doubtful, clocks }: PairedSession): PairStrip[] {
  const { offset, drift } = clocks ?? { offset: 0, drift: 0 };
  const centre = bats.length === 0 ? 0 : (bats[0]!.time + bats.at(-1)!.time) / 2;
  const batTimes = bats.map(({ time }) => time);
  // b = a + offset + drift (a - centre), so a = (b - offset + drift centre) / (1 + drift).
  const ballTimes = balls.map(({ time }) => (time - offset + drift * centre) / (1 + drift));
  const all = [...batTimes, ...ballTimes];
  if (all.length === 0) return [];
  const [first, last] = [Math.min(...all) - LEAD, Math.max(...all) + LEAD];
  const [withBall, withBat] = [new Set(pairs.map(({ a }) => a)), new Set(pairs.map(({ b }) => b))];
  const strips: PairStrip[] = [];
  for (let from = first; from < last; from += STRIP_S) {
    const to = from + STRIP_S;
    const x = (time: number) => one(((time - from) / STRIP_S) * STRIP.width);
    const inside = (time: number) => time >= from && time < to;
    const ticks = (times: readonly number[], y: number, wanted: (i: number) => boolean) =>
      times.flatMap((time, i) => (inside(time) && wanted(i) ? [`M${x(time)} ${y}v${TICK}`] : [])).join("");
    const lines = (list: PairedSession["doubtful"]) =>
      list
        .filter(({ a }) => inside(batTimes[a]!))
        .map(({ a, b }) => `M${x(batTimes[a]!)} ${BAT_Y + TICK}L${x(ballTimes[b]!)} ${BALL_Y - TICK}`)
        .join("");
    const strip = {
      clock: clockText(from),
      bats: ticks(batTimes, BAT_Y, (i) => withBall.has(i)),
      lonelyBats: ticks(batTimes, BAT_Y, (i) => !withBall.has(i)),
      balls: ticks(ballTimes, BALL_Y - TICK, (i) => withBat.has(i)),
      lonelyBalls: ticks(ballTimes, BALL_Y - TICK, (i) => !withBat.has(i)),
      links: lines(pairs),
      doubtful: lines(doubtful),
      minutes: minutesIn(from, to)
        .map((minute) => `M${x(minute)} 0V${STRIP.height}`)
        .join(""),
    };
    // A long pause has no strip.
    if ([strip.bats, strip.lonelyBats, strip.balls, strip.lonelyBalls].some((path) => path !== "")) strips.push(strip);
  }
  return strips;
}

function minutesIn(from: number, to: number): number[] {
  const first = Math.ceil(from / 60) * 60;
  return Array.from({ length: Math.ceil((to - first) / 60) }, (_, i) => first + 60 * i);
}

function clockText(seconds: number): string {
  const minutes = Math.floor((((seconds % 86_400) + 86_400) % 86_400) / 60);
  return `${String(Math.floor(minutes / 60)).padStart(2, "0")}:${String(minutes % 60).padStart(2, "0")}`;
}
