import { blocksOf, type Drill } from "./blocks.ts";
import { trainingDays } from "./exports.ts";
import { changeOf, HUB } from "./plan.ts";
import { STORIES } from "./stories.ts";
import type { Story } from "./story.ts";

export type LogRow = Record<string, string | number | undefined>;

/** A block of one hitter's day. */
interface Planned {
  story: Story;
  cells: LogRow;
}

/** What the trainer writes down of a block, whoever swings it. The feed says which ball. */
function cellsOf(story: Story, block: Drill): LogRow {
  const { environment, drill, implement, feed, purpose, effort, reps } = block;
  const rounds = Math.ceil(reps / block.round);
  return {
    ...{ environment, drill, implement, feed: feed?.id, purpose, effort },
    ...{ ball: feed === undefined ? block.ball : undefined, rounds, reps: reps / rounds },
    // The hub knows the cage.
    ...{ site: story.site, trainer: "brandt" },
  };
}

/** The blocks of a day by their number. */
function dayOf(date: string): Map<number, Planned[]> {
  const blocks = new Map<number, Planned[]>();
  for (const story of STORIES.filter(({ group }) => group === HUB.group)) {
    const session = trainingDays(story).indexOf(date);
    if (session < 0) continue;
    for (const [at, block] of blocksOf(story, session, date).entries()) {
      blocks.set(at + 1, [...(blocks.get(at + 1) ?? []), { story, cells: cellsOf(story, block) }]);
    }
  }
  return blocks;
}

/** One line for everybody who was there, as far as they did the same; a line for each where they did not. */
function linesOf(date: string, block: number, planned: readonly Planned[], present: number): LogRow[] {
  const [first] = planned;
  if (first === undefined) return [];
  const common = Object.entries(first.cells).filter(([key, cell]) => planned.every(({ cells }) => cells[key] === cell));
  const shared: LogRow = Object.fromEntries(common);
  const together = planned.length === present && shared.drill !== undefined;
  const lines: LogRow[] = together ? [{ date, group: HUB.group, block, ...shared }] : [];
  for (const { story, cells } of planned) {
    const changed = changeOf(story.id, date, cells.drill);
    const asSwung = { ...cells, rounds: changed?.rounds ?? cells.rounds, comment: changed?.comment };
    const own = Object.entries(asSwung).filter(
      ([key, cell]) => cell !== undefined && !(together && cell === shared[key]),
    );
    if (own.length > 0) lines.push({ date, athlete_id: story.id, block, ...Object.fromEntries(own) });
  }
  return lines;
}

/** The log of the months in which the hub measured and somebody had to say what was swung. */
export function hubLog(): LogRow[] {
  const days = STORIES.filter(({ group }) => group === HUB.group).flatMap(trainingDays);
  const inHub = [...new Set(days)].filter((date) => HUB.months.some((month) => date.startsWith(month))).sort();
  return inHub.flatMap((date) => {
    const blocks = dayOf(date);
    const present = new Set([...blocks.values()].flat().map(({ story }) => story.id)).size;
    return [...blocks].flatMap(([block, planned]) => linesOf(date, block, planned, present));
  });
}
