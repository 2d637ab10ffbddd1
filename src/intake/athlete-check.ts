import { COVERED_PARTS, coveredPart, recipientsOf } from "../schema/profile.ts";
import type { Problem } from "../schema/season.ts";
import type { AthleteFolder } from "./athlete-folder.ts";
import { repeatedGoals } from "./goal-check.ts";
import type { Known } from "./known.ts";
import { NameCheck } from "./name-check.ts";
import { near } from "./near.ts";
import { fault, remark, withSuggestion } from "./problem.ts";

/**
 * Names in an athlete's files that nothing declares. What a figure hangs on is an error; a name that a page only shows costs its
 * full name or its description, and is a note.
 */
export function athleteProblems(folder: AthleteFolder, known: Known): Problem[] {
  return [
    ...ofProfile(folder, known),
    ...ofAssessment(folder, known),
    ...ofPlan(folder, known),
    ...ofWords(folder, known),
  ];
}

function ofProfile({ id, profile }: AthleteFolder, known: Known): Problem[] {
  if (!profile?.page) return [];
  const { front } = profile.page;
  const check = new NameCheck(profile, known, id);
  const bat = front.game_bat;
  if (typeof bat === "string") check.name("implements", ["game_bat"], bat, known.bats);
  else
    for (const [index, { id: name }] of (bat ?? []).entries())
      check.name("implements", ["game_bat", index, "id"], name, known.bats);
  check.measured(["goals"], front.goals);
  check.measured(["measures"], front.measures);
  check.unique(["recipients"], front.recipients);
  for (const [index, gate] of (front.gates ?? []).entries()) check.condition(["gates", index, "applies"], gate.applies);
  return [
    ...check.problems,
    ...repeatedGoals(profile, front.goals),
    ...ofConsent(profile, id),
    ...ofLanguage(front.language, known.languages, profile),
  ];
}

/**
 * A word about a recipient whom nobody knows would be no word at all, and one that takes something back may not get lost: an error. What it covers
 * under a name that we do not know is not shown: a note.
 */
function ofConsent(profile: NonNullable<AthleteFolder["profile"]>, id: string): Problem[] {
  const { consent = [], ...front } = profile.page!.front;
  const known = new Set(recipientsOf(front).map((one) => one.id));
  return consent.flatMap(({ recipients = [], covers = [] }, index) => [
    ...recipients.flatMap((found, i) => {
      if (known.has(found)) return [];
      const key = `consent[${index}].recipients[${i}]`;
      const args = withSuggestion({ key, found, list: "recipients" }, near(found, known));
      return [fault("not-in-list", profile.at(["consent", index, "recipients", i], "value"), args, id)];
    }),
    ...covers.flatMap((found, i) => {
      if (coveredPart(found) !== null) return [];
      const key = `consent[${index}].covers[${i}]`;
      const parts = new Set(["numbers", ...COVERED_PARTS]);
      const args = withSuggestion({ key, found, list: "parts of a report" }, near(found, parts));
      return [remark("not-in-list", profile.at(["consent", index, "covers", i], "value"), args)];
    }),
  ]);
}

/** Pages are written in few languages; what the trainer writes may be in any. */
function ofLanguage(
  language: string | undefined,
  languages: Known["languages"],
  profile: NonNullable<AthleteFolder["profile"]>,
): Problem[] {
  if (language === undefined || languages === null || languages.has(language)) return [];
  return [remark("no-pages-in-language", profile.at(["language"], "value"), { language })];
}

function ofAssessment({ id, assessment }: AthleteFolder, known: Known): Problem[] {
  if (!assessment?.page) return [];
  const { front } = assessment.page;
  const check = new NameCheck(assessment, known, id);
  check.mention("staff", ["by"], front.by);
  check.unique(["priorities"], front.priorities);
  for (const [index, priority] of (front.priorities ?? []).entries()) {
    check.mentions("metrics", ["priorities", index, "measures"], priority.measures);
    check.mentions("drills", ["priorities", index, "drills"], priority.drills);
  }
  return check.problems;
}

function ofPlan({ id, plan }: AthleteFolder, known: Known): Problem[] {
  if (!plan?.page) return [];
  const { front } = plan.page;
  const check = new NameCheck(plan, known, id);
  check.mention("staff", ["by"], front.by);
  for (const [index, item] of (front.items ?? []).entries()) {
    check.mention("drills", ["items", index, "drill"], item.drill);
    check.mention("implements", ["items", index, "implement"], item.implement);
  }
  return check.problems;
}

function ofWords({ id, closings, notes, assessment }: AthleteFolder, known: Known): Problem[] {
  const priorities = assessment?.page?.front.priorities?.map((priority) => priority.id) ?? [];
  const topics = known.metrics && known.drills && new Set([...known.metrics, ...known.drills, ...priorities]);
  const ofClosings = closings.flatMap(({ read }) => {
    const check = new NameCheck(read, known, id);
    check.mention("staff", ["by"], read.page?.front.by);
    check.mention("staff", ["read_by"], read.page?.front.read_by);
    return check.problems;
  });
  const ofNotes = notes.flatMap((note) => {
    const check = new NameCheck(note, known, id);
    const author = note.page?.front.author;
    if (author !== "athlete") check.mention("staff", ["author"], author);
    check.mention("staff", ["read_by"], note.page?.front.read_by);
    const about = (note.page?.front.about ?? []).flatMap((topic, index) => {
      if (topics === null || topics.has(topic)) return [];
      const args = { key: `about[${index}]`, found: topic, list: "measures, drills or priorities" };
      return [remark("not-in-list", note.at(["about", index], "value"), withSuggestion(args, near(topic, topics)))];
    });
    return [...check.problems, ...about];
  });
  return [...ofClosings, ...ofNotes];
}
