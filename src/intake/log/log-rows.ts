import { basename } from "node:path/posix";
import type { Facility } from "../../schema/facility.ts";
import type { LineOf, Problem } from "../../schema/season.ts";
import type { Block, Feed } from "../../schema/tables.ts";
import type { CellContext } from "../cell-reader.ts";
import { readValue } from "../corrections/cell-value.ts";
import { near } from "../near.ts";
import { remark, rowFault, withSuggestion } from "../problem.ts";
import type { SwingFields } from "../swing-fields.ts";

/** A value of the log and the row that says it. */
export interface Told {
  readonly value: number | string;
  readonly at: LineOf;
}

/** What the log is read against. */
export interface LogSetup {
  readonly fields: SwingFields;
  readonly context: CellContext;
  /** Athletes by the index that stands for them. */
  readonly athletes: readonly string[];
  readonly groups: NonNullable<Facility["groups"]>;
  /** Null without feeds.csv. */
  readonly feeds: readonly Feed[] | null;
  /** Drill -> environment that it declares. */
  readonly drills: ReadonlyMap<string, string | undefined>;
}

/** A row of the session log whose names are known. */
export interface LogRow {
  readonly at: LineOf;
  readonly block: Block;
  /** Who swings, in order of turns: one athlete, or a group's members. */
  readonly owner: { readonly athlete: string } | { readonly group: string; readonly members: readonly string[] };
  /** Number of the block in words; counted in order of the day's rows where the row does not say. */
  readonly label: string;
  /** Cells that a rep inherits, in canonical units: what the row itself says. */
  readonly own: ReadonlyMap<string, Told>;
  /** What the row's feed says. */
  readonly feed: ReadonlyMap<string, Told>;
}

/** Columns of the log that are columns of a swing. */
const INHERITED = ["environment", "drill", "implement", "ball", "side", "purpose", "effort", "site", "lane"] as const;
/** Columns of a feed that are columns of a swing: column -> field. */
const FED = {
  pitch_type: "pitch_type",
  pitcher_side: "pitcher_side",
  pitch_speed_mph: "pitch_speed",
  pitch_speed_at: "pitch_speed_at",
  pitch_distance_ft: "pitch_distance",
  spin_rpm: "spin",
  spin_axis: "spin_axis",
  ball: "ball",
} as const satisfies Partial<Record<keyof Feed, string>>;

/** Rows of the log with their names looked up. A row that names nobody we know is left out; a name that is not known is no value. */
export function logRows(
  blocks: readonly (Block & { readonly at: LineOf })[],
  setup: LogSetup,
): { rows: LogRow[]; problems: Problem[] } {
  const problems: Problem[] = [];
  const rows: LogRow[] = [];
  const labels = new Labels();
  for (const { at, ...block } of blocks) {
    const owner = ownerOf(block, at, setup, problems);
    if (owner === null) continue;
    const own = new Map<string, Told>();
    const tell = (into: Map<string, Told>, key: string, field: string, value: string | number | undefined): void => {
      if (value === undefined) return;
      const column = setup.fields.byField.get(field);
      const read = column && readValue(String(value), { column, unit: null }, setup.context);
      if (read && "value" in read && read.value !== null) into.set(field, { value: read.value, at });
      else problems.push(remark("log-value", { ...at, column: null }, { key, found: value }));
    };
    for (const field of INHERITED) tell(own, field, field, block[field]);
    tell(own, "ball_height_in", "ball_height", block.ball_height_in);
    if (block.drill !== undefined && setup.drills.size > 0 && !setup.drills.has(block.drill)) {
      const args = { key: "drill", found: block.drill, list: "drills" };
      problems.push(
        remark("not-in-list", { ...at, column: null }, withSuggestion(args, near(block.drill, setup.drills.keys()))),
      );
    }
    const feed = new Map<string, Told>();
    const preset = feedOf(block, at, setup, problems);
    if (preset)
      for (const [key, field] of Object.entries(FED))
        tell(feed, `${preset.id}: ${key}`, field, preset[key as keyof typeof FED]);
    rows.push({ at, block, owner, label: block.block ?? labels.next(block), own, feed });
  }
  return { rows, problems };
}

/** Numbers of blocks that nobody numbered: counted for each day and owner, the bats of one round together. */
class Labels {
  readonly #last = new Map<string, { n: number; part: string | undefined }>();

  next({ date, session, group, athlete_id, part }: Block): string {
    const key = JSON.stringify([date, session, group, athlete_id]);
    const last = this.#last.get(key);
    const goesOn = last?.part !== undefined && part !== undefined && part > last.part;
    const n = (last?.n ?? 0) + (goesOn ? 0 : 1);
    this.#last.set(key, { n, part });
    return String(n);
  }
}

function ownerOf(block: Block, at: LineOf, setup: LogSetup, problems: Problem[]): LogRow["owner"] | null {
  const place = { ...at, column: null };
  if (block.athlete_id !== undefined) {
    const whom = setup.context.names.find(block.athlete_id);
    if (whom.kind === "one") return { athlete: whom.id };
    const args = { field: "athlete_id", value: block.athlete_id };
    problems.push(
      whom.kind === "ambiguous"
        ? rowFault("ambiguous-name", place, { ...args, athletes: whom.ids.join(", ") })
        : rowFault("unknown-athlete", place, withSuggestion(args, whom.suggestion)),
    );
    return null;
  }
  if (block.group === undefined) {
    problems.push(rowFault("missing-key", place, { key: "group or athlete_id", in: basename(at.file) }));
    return null;
  }
  const group = setup.groups.find(({ id }) => id === block.group);
  if (group) return { group: group.id, members: group.members.filter((id) => setup.context.index.has(id)) };
  const args = { key: "group", found: block.group, list: "groups" };
  const known = setup.groups.map(({ id }) => id);
  problems.push(rowFault("not-in-list", place, withSuggestion(args, near(block.group, known))));
  return null;
}

/** The feed's preset that holds on the day. */
function feedOf({ feed, date }: Block, at: LineOf, { feeds }: LogSetup, problems: Problem[]): Feed | null {
  if (feed === undefined) return null;
  const named = (feeds ?? []).filter(({ id }) => id === feed);
  const valid = named.findLast(
    ({ from, to }) => (from === undefined || from <= date) && (to === undefined || date <= to),
  );
  if (valid) return valid;
  const args = { key: "feed", found: feed, list: "feeds" };
  const place = { ...at, column: null };
  if (named.length > 0) problems.push(remark("feed-not-valid", place, { feed, date }));
  else
    problems.push(
      remark(
        "not-in-list",
        place,
        withSuggestion(
          args,
          near(
            feed,
            (feeds ?? []).map(({ id }) => id),
          ),
        ),
      ),
    );
  return null;
}
