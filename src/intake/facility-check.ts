import { BUILT_IN_METRICS } from "../schema/metric.ts";
import type { Problem } from "../schema/season.ts";
import type { Content } from "./content.ts";
import type { Known } from "./known.ts";
import { NameCheck } from "./name-check.ts";
import { fault, remark } from "./problem.ts";

/**
 * What the facility's own pages say against each other.
 *
 * @returns `facility`: faults without which no report can be made; `others`: the rest
 */
export function facilityProblems(content: Content, known: Known): { facility: Problem[]; others: Problem[] } {
  const { facility, others } = ofFacility(content, known);
  return { facility, others: [...others, ...ofMetrics(content, known), ...ofDrills(content, known)] };
}

/** What every report stands on, and what it does not: a wrong measure cannot be worked around, a group's member can. */
function ofFacility({ facility }: Content, known: Known): { facility: Problem[]; others: Problem[] } {
  if (!facility?.page) return { facility: [], others: [] };
  const { front } = facility.page;
  const firm = new NameCheck(facility, known, null);
  firm.measured(["measures"], front.measures);
  firm.measured(["tests"], front.tests);
  firm.unique(["staff"], front.staff);
  firm.unique(["sites"], front.sites);
  firm.unique(["tests"], front.tests);
  const loose = new NameCheck(facility, known, null);
  loose.unique(["groups"], front.groups);
  for (const [index, group] of (front.groups ?? []).entries()) {
    loose.names("athletes", ["groups", index, "members"], group.members);
  }
  const notes = front.measures ? [] : [remark("no-measures", facility.at([], "value"))];
  return { facility: firm.problems, others: [...loose.problems, ...notes] };
}

function ofMetrics({ metricsFile }: Content, known: Known): Problem[] {
  if (!metricsFile?.page) return [];
  const { metrics, zones } = metricsFile.page.front;
  const check = new NameCheck(metricsFile, known, null);
  check.unique(["metrics"], metrics);
  check.unique(["zones"], zones);
  const builtIn = new Set(BUILT_IN_METRICS.map((metric) => metric.id));
  for (const [index, entry] of (metrics ?? []).entries()) {
    const path = ["metrics", index, "id"];
    const args = { key: `metrics[${index}].id`, found: entry.id };
    if ("unit" in entry && builtIn.has(entry.id))
      check.problems.push(fault("repeated-id", metricsFile.at(path, "value"), args));
  }
  return check.problems;
}

function ofDrills({ drillsFile }: Content, known: Known): Problem[] {
  if (!drillsFile?.page) return [];
  const { drills } = drillsFile.page.front;
  const check = new NameCheck(drillsFile, known, null);
  check.unique(["drills"], drills);
  for (const [index, drill] of drills.entries()) {
    check.names("implements", ["drills", index, "implements"], drill.implements);
    check.names("balls", ["drills", index, "balls"], drill.balls);
    check.measured(["drills", index, "aims"], drill.aims);
  }
  return check.problems;
}
