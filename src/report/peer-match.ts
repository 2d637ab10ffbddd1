import type { Metric } from "../schema/metric.ts";
import type { Reference } from "../schema/season.ts";
import type { Condition } from "./schema.ts";

/** A series that is to be held against others, without its values. */
export interface PeerQuestion {
  readonly metric: Metric;
  readonly condition: Condition;
  /** Where on the bat it was read (`pointOnBatOf`). */
  readonly pointOnBat: string | null;
  readonly sport: string | null;
  readonly sex: string | null;
  readonly level: string | null;
}

/** Rows of one kind, from one source and year, about one level (null: told apart by age alone). At least one. */
export interface PeerGroup {
  readonly kind: Reference["kind"];
  readonly source: string;
  readonly year: number | null;
  readonly level: string | null;
  readonly rows: readonly Reference[];
}

/** How good a kind is as a yardstick: athletes' own values first. */
const KINDS: readonly Reference["kind"][] = ["value", "lms", "mean-sd", "line"];

/** Words that a person writes twice: neither case nor spaces tell two of them apart. */
const folded = (text: string | null): string | null =>
  text === null ? null : text.normalize("NFKC").trim().replace(/\s+/gu, " ").toLowerCase();

type How = readonly (string | null)[];

/** How a row's athletes were measured, and of which sport and sex they are: all that must be the same for both. */
const howOf = (row: Reference, isBatSide: boolean): How => [
  row.metric,
  row.environment,
  row.implement,
  isBatSide ? folded(row.pointOnBat) : null,
  row.sport,
  row.sex,
];

/**
 * May a series have peers at all? Slaps, bat fittings, games and swings elsewhere have none; nor has a series of one ball or of one band of
 * pitch speeds, since no row can say that it was measured with the same.
 */
function mayHavePeers({ condition, sport, sex }: PeerQuestion): boolean {
  const { swing, ball, pitchSpeed, purpose = "training", place = "facility" } = condition;
  const plain = swing === undefined && ball === undefined && pitchSpeed === undefined;
  return plain && ["training", "test"].includes(purpose) && place === "facility" && sport !== null && sex !== null;
}

/** Rows by how they were measured, each list in groups. */
type Index = ReadonlyMap<string, readonly PeerGroup[]>;

/** One index for the bat's metrics and one for all others: only the first tell points on the bat apart. */
const INDEXES = [new WeakMap<readonly Reference[], Index>(), new WeakMap<readonly Reference[], Index>()] as const;

function groupsOf(rows: readonly Reference[]): PeerGroup[] {
  const groups = new Map<string, { readonly first: Reference; readonly rows: Reference[] }>();
  for (const row of rows) {
    const key = JSON.stringify([row.kind, row.source, row.year, folded(row.level)]);
    const found = groups.get(key) ?? { first: row, rows: [] };
    groups.set(key, found);
    found.rows.push(row);
  }
  return [...groups.values()].map(({ first: { kind, source, year, level }, rows: own }) => ({
    kind,
    source,
    year,
    level,
    rows: own,
  }));
}

function indexOf(reference: readonly Reference[], isBatSide: boolean): Index {
  const indexes = INDEXES[isBatSide ? 0 : 1];
  const known = indexes.get(reference);
  if (known) return known;
  const lists = new Map<string, Reference[]>();
  for (const row of reference) {
    const key = JSON.stringify(howOf(row, isBatSide));
    const list = lists.get(key) ?? [];
    lists.set(key, list);
    list.push(row);
  }
  const index = new Map([...lists].map(([key, rows]) => [key, groupsOf(rows)]));
  indexes.set(reference, index);
  return index;
}

/** Athletes behind a group, as far as it says: its values, or the largest n of its rows. */
const sizeOf = ({ kind, rows }: PeerGroup): number =>
  kind === "value" ? rows.length : rows.reduce((most, { n }) => Math.max(most, n ?? 0), 0);

/** By kind; a group of the athlete's own level before one that only ages tell; then the larger, the newer, the first by name. */
function inOrder(a: PeerGroup, b: PeerGroup): number {
  return (
    KINDS.indexOf(a.kind) - KINDS.indexOf(b.kind) ||
    Number(a.level === null) - Number(b.level === null) ||
    sizeOf(b) - sizeOf(a) ||
    (b.year ?? 0) - (a.year ?? 0) ||
    (a.source < b.source ? -1 : a.source > b.source ? 1 : 0)
  );
}

/**
 * Groups of others who were measured the same way: the same metric, environment, bat, sport and sex, for what a bat sensor reads the
 * same point on the bat, and the same level where a group names one. What a row leaves blank fits only a series that does not say it
 * either. Whether the ages of a group without a level hold the athlete is not asked here.
 *
 * The rows are looked through once for each list of them, which therefore must not change afterwards.
 *
 * @returns the best yardstick first; groups are never mixed
 */
export function peerGroups(question: PeerQuestion, reference: readonly Reference[]): PeerGroup[] {
  if (!mayHavePeers(question)) return [];
  const { metric, condition, pointOnBat, sport, sex, level } = question;
  const isBatSide = metric.side === "bat";
  const point = isBatSide ? folded(pointOnBat) : null;
  const how: How = [metric.id, condition.environment ?? null, condition.implement ?? null, point, sport, sex];
  const found = indexOf(reference, isBatSide).get(JSON.stringify(how)) ?? [];
  return found.filter((group) => group.level === null || folded(group.level) === folded(level)).sort(inOrder);
}
