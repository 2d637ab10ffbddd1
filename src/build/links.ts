import { linkStateOf } from "../publish/link-state.ts";
import { type Link, linksOf } from "../publish/links.ts";
import { isSealedTo, withKeys } from "../publish/sealing.ts";
import { secretOf } from "../publish/secret.ts";
import type { Effects } from "../schema/effects.ts";
import type { Facility } from "../schema/facility.ts";
import type { LinkState } from "../schema/link-state.ts";
import { recipientsOf } from "../schema/profile.ts";
import type { Judgement } from "./judge.ts";
import type { Paths } from "./terms.ts";

type Told = Judgement["told"][number];

/** An athlete's recipients with what was said of them in all places. */
function subjectOf({ athlete: { id, profile }, report, receiving }: Told, facility: Facility) {
  const audiences = recipientsOf(profile).map((recipient) => {
    const { reader, label, until } = recipient;
    const word = report.recipients.find((one) => one.id === recipient.id)!.publication;
    return {
      recipient: recipient.id,
      reader,
      label: label ?? null,
      until: until ?? null,
      sealed: isSealedTo(recipient, profile, facility, report.athlete.minor),
      withheld: receiving.find((one) => one.recipient === recipient.id)!.withheld,
      agreedOn: word.publish ? word.agreedOn : null,
    };
  });
  return { id, audiences };
}

/** The season's links, what was done with them, and the secret they come from. */
export async function linksIn(
  { told, season, asOf }: Pick<Judgement, "told" | "season" | "asOf">,
  { state: folder }: Pick<Paths, "state">,
  effects: Effects,
): Promise<{ secret: Uint8Array<ArrayBuffer>; state: LinkState; links: readonly Link[] }> {
  const secret = await secretOf(folder, effects);
  const state = await linkStateOf(folder, effects);
  const subjects = told.map((one) => subjectOf(one, season.facility));
  return { secret, state, links: await withKeys(secret, linksOf(secret, state, subjects, asOf)) };
}
