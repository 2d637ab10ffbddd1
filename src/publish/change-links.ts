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
} & (
  | { readonly kind: "rotated" | "revoked" }
  | { readonly kind: "handed"; readonly to: string }
  /** Words that the sealed page asks for; null for none any more. */
  | { readonly kind: "passphrase"; readonly words: string | null }
);

/** Shorter words could be tried out by whoever has the link. Common practice. */
export const LEAST_LETTERS = 10;

/**
 * The state after a change. Nothing of before is forgotten: a link that was dead once never opens again.
 *
 * @param links of the season as they are
 * @throws {Stopped} the season has no such link, or words do not go with it
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
  switch (change.kind) {
    case "handed": {
      const handed = of.map((one) => ({ ...one, to: change.to, on, rotation: historyOf(state, one).rotation }));
      return { ...state, handed: [...state.handed, ...handed] };
    }
    case "passphrase":
      return { ...state, passphrases: withPassphrase(state.passphrases, meant, change.words, on) };
    default:
      return { ...state, changes: [...state.changes, ...of.map((one) => ({ ...one, kind: change.kind, on }))] };
  }
}

/** @throws {Stopped} the words are too short, or a link is not sealed and cannot ask for any */
function withPassphrase(
  before: LinkState["passphrases"],
  links: readonly Link[],
  words: string | null,
  on: string,
): LinkState["passphrases"] {
  const isMeant = (one: { athlete: string; recipient: string }) =>
    links.some(({ athlete, recipient }) => one.athlete === athlete && one.recipient === recipient);
  const others = before.filter((one) => !isMeant(one));
  if (words === null) return others;
  const open = links.find(({ sealed }) => !sealed);
  if (open) {
    throw new Stopped(
      EXIT.usage,
      `the pages of ${open.athlete} for "${open.recipient}" are not sealed and cannot ask for words`,
      "write seal: true into the profile or facility.md first",
    );
  }
  if (words.trim().length < LEAST_LETTERS) {
    throw new Stopped(
      EXIT.usage,
      "these words are too short",
      `take at least ${LEAST_LETTERS} letters: four words do well`,
    );
  }
  return [...others, ...links.map(({ athlete, recipient }) => ({ athlete, recipient, words: words.trim(), on }))];
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
