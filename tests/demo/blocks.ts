import { FEEDS, type Feed } from "./equipment.ts";
import type { Story } from "./story.ts";

/** One drill of a session: what is swung at what, how often. */
export interface Drill {
  drill: string;
  environment: "dry" | "tee" | "side-toss" | "front-toss" | "machine";
  /** `game`, or the id of a bat on the rack. */
  implement: string;
  ball?: string;
  feed?: Feed;
  effort: "technical" | "game" | "max";
  purpose: "training" | "test";
  swingType: "full" | "slap";
  reps: number;
  round: number;
}

/** One bat of the ladder: loads and lengths take turns from session to session. */
function ladderBats(story: Story, session: number, date: string): string[] {
  const heavy = date < (story.heavyUntil ?? "9999") ? story.heavy : undefined;
  const loads = [heavy, story.light];
  const lengths = [story.short, story.long];
  const turn = session % 2 === 1 && story.short !== undefined ? lengths : loads;
  return turn.filter((id) => id !== undefined);
}

function feedOf(id: string): Feed {
  const found = FEEDS.find((feed) => feed.id === id);
  if (found === undefined) throw new Error(`no feed ${id}`);
  return found;
}

/**
 * What an athlete does on the day.
 *
 * @param session number of the session, from 0: blocks take turns so that their mix stays the same all season
 */
export function blocksOf(story: Story, session: number, date: string): Drill[] {
  const plain = {
    implement: "game",
    effort: "game",
    purpose: "training",
    swingType: "full",
    round: story.reps.round,
  } as const;
  const live = { ...plain, ball: story.balls.live };
  const blocks: Drill[] = [];
  if (session % 3 === 0) {
    blocks.push({ ...live, drill: "tee-low-away", environment: "tee", effort: "technical", reps: 5 });
  }
  blocks.push({ ...live, drill: "tee-middle", environment: "tee", reps: story.reps.tee });
  if (session % 3 === 1) {
    for (const implement of ladderBats(story, session, date)) {
      blocks.push({ ...live, drill: "bat-ladder", environment: "tee", implement, reps: 4, round: 4 });
    }
  } else if (story.light !== undefined && session % 3 === 2) {
    // Children swing the light bat at their usual effort.
    const effort = story.heavy === undefined ? "game" : "max";
    const dry = { ...plain, drill: "dry-thirds", environment: "dry", effort } as const;
    blocks.push({ ...dry, implement: story.light, reps: 5, round: 5 });
  }
  if (session % 2 === 1) {
    blocks.push({ ...plain, drill: "soft-side", environment: "side-toss", ball: story.balls.soft, reps: 6, round: 6 });
  }
  blocks.push({ ...live, drill: "toss-firm", environment: "front-toss", reps: story.reps.toss });
  if (story.slaps === true) {
    blocks.push({ ...live, drill: "slap-run", environment: "front-toss", swingType: "slap", reps: 5, round: 5 });
  }
  if (date >= (story.machineFrom ?? date)) {
    const off = { ...plain, environment: "machine", ball: story.balls.machine } as const;
    blocks.push({ ...off, drill: "machine-set", feed: feedOf(story.feed), reps: story.reps.machine });
    if (story.bend !== undefined && session % 3 === 1) {
      blocks.push({ ...off, drill: "machine-bend", feed: feedOf(story.bend), reps: 6, round: 6 });
    }
  }
  return blocks;
}

/** The tee test: ten swings as hard as the hitter can control. */
export function testBlock(story: Story): Drill {
  const swings = { implement: "game", effort: "max", swingType: "full", reps: 10, round: 5 } as const;
  return { ...swings, drill: "tee-middle", environment: "tee", ball: story.balls.live, purpose: "test" };
}
