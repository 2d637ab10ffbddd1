import { ENVIRONMENTS } from "../schema/columns.ts";
import type { Ball, Implement } from "../schema/tables.ts";
import { type Content, metricsOf } from "./content.ts";

/** Roles of a bat that may stand where an id may, whether or not any bat of the list has them. */
export const IMPLEMENT_ROLES = ["game", "overload", "underload", "short", "long", "training"] as const;

/**
 * Names that other files may refer to. A list is null when the file that would tell is not there or cannot be used:
 * then nothing is said against a name.
 */
export interface Known {
  readonly staff: ReadonlySet<string> | null;
  readonly sites: ReadonlySet<string> | null;
  readonly drills: ReadonlySet<string> | null;
  readonly zones: ReadonlySet<string> | null;
  readonly metrics: ReadonlySet<string> | null;
  readonly environments: ReadonlySet<string> | null;
  /** Ids and roles. */
  readonly implements: ReadonlySet<string> | null;
  /** Ids of bats alone. */
  readonly bats: ReadonlySet<string> | null;
  /** Ids and kinds. */
  readonly balls: ReadonlySet<string> | null;
  readonly athletes: ReadonlySet<string>;
  /** In which pages are written. */
  readonly languages: ReadonlySet<string> | null;
}

/** Ids of bats, the fixed roles, and roles that the list itself uses; null without a list. */
export function implementNames(list: readonly Implement[] | null): Set<string> | null {
  if (list === null) return null;
  return new Set([
    ...IMPLEMENT_ROLES,
    ...list.flatMap((bat) => (bat.role === undefined ? [bat.id] : [bat.id, bat.role])),
  ]);
}

/** Ids of balls, the kinds that the list uses, and `game`; null without a list. */
export function ballNames(list: readonly Ball[] | null): Set<string> | null {
  if (list === null) return null;
  return new Set(["game", ...list.flatMap((ball) => (ball.kind === undefined ? [ball.id] : [ball.id, ball.kind]))]);
}

/** What the season's own files declare. */
export function knownNames(
  content: Content,
  bats: readonly Implement[] | null,
  balls: readonly Ball[] | null,
  languages: readonly string[] | null = null,
): Known {
  const { facility, metricsFile, drillsFile } = content;
  const drills = drillsFile === null ? [] : (drillsFile.page?.front.drills ?? null);
  const metrics = metricsFile === null ? {} : (metricsFile.page?.front ?? null);
  const front = facility?.page?.front ?? null;
  const declared = drills?.flatMap((drill) => (drill.environment === undefined ? [] : [drill.environment]));
  return {
    staff: front && new Set((front.staff ?? []).map((person) => person.id)),
    sites: front?.sites ? new Set(front.sites.map((site) => site.id)) : null,
    drills: drills && new Set(drills.map((drill) => drill.id)),
    zones: metrics && new Set((metrics.zones ?? []).map((zone) => zone.id)),
    metrics: metrics && new Set(metricsOf(metrics).map((metric) => metric.id)),
    environments: declared ? new Set([...ENVIRONMENTS, ...declared]) : null,
    implements: implementNames(bats),
    bats: bats && new Set(bats.map((bat) => bat.id)),
    balls: ballNames(balls),
    athletes: new Set(content.folders.map((folder) => folder.id)),
    languages: languages && new Set(languages),
  };
}
