import { join } from "node:path";
import type { Effects } from "../schema/effects.ts";
import type { LinkState } from "../schema/link-state.ts";
import { historyOf, LINKS_FILE, linkStateText } from "./link-state.ts";
import type { Link } from "./links.ts";
import { EXIT, Stopped } from "./stopped.ts";

/** What is done with the links of an athlete, or with one of them. */
export type LinkChange = {
  readonly athlete: string;
  /** Null for all of the athlete's. */
  readonly recipient: string | null;
  readonly on: string;
} & ({ readonly kind: "rotated" | "revoked" } | { readonly kind: "handed"; readonly to: string });

/**
 * The state after a change. Nothing of before is forgotten: a link that was dead once never opens again.
 *
 * @param links of the season as they are
 * @throws {Stopped} the season has no such link
 */
export function changedLinks(state: LinkState, links: readonly Link[], change: LinkChange): LinkState {
  const { athlete, recipient, on } = change;
  const mine = links.filter((link) => link.athlete === athlete);
  const meant = mine.filter((link) => recipient === null || link.recipient === recipient);
  if (meant.length === 0) {
    const known =
      mine.length > 0 ? mine.map((link) => link.recipient) : [...new Set(links.map((link) => link.athlete))];
    throw new Stopped(
      EXIT.usage,
      mine.length > 0 ? `${athlete} has no link for "${recipient}"` : `there is no link of "${athlete}"`,
      `known: ${known.join(", ")}`,
    );
  }
  const of = meant.map((link) => ({ athlete, recipient: link.recipient }));
  return change.kind === "handed"
    ? {
        ...state,
        handed: [
          ...state.handed,
          ...of.map((one) => ({ ...one, to: change.to, on, rotation: historyOf(state, one).rotation })),
        ],
      }
    : { ...state, changes: [...state.changes, ...of.map((one) => ({ ...one, kind: change.kind, on }))] };
}

/** Writes the state beside the secret, whole or not at all. */
export async function keepLinkState(
  stateFolder: string,
  state: LinkState,
  { disk }: Pick<Effects, "disk">,
): Promise<void> {
  const path = join(stateFolder, LINKS_FILE);
  await disk.write(`${path}.next`, linkStateText(state), 0o600);
  await disk.rename(`${path}.next`, path);
}
