import { createHmac } from "node:crypto";
import { join } from "node:path";
import type { Effects } from "../schema/effects.ts";
import { LinkState } from "../schema/link-state.ts";
import { EXIT, Stopped } from "./stopped.ts";
import { base32 } from "./token.ts";

/** Name of the file beside the secret. */
export const LINKS_FILE = "links.json";

export const NOTHING: LinkState = { changes: [], handed: [], forgotten: [], passphrases: [] };

export const linkStateText = (state: LinkState): string => `${JSON.stringify(state, null, 1)}\n`;

/**
 * What was done with links so far; nothing where there is no file yet.
 *
 * @param stateFolder absolute path of `.winterbook/`
 * @throws {Stopped} the file is not one of ours any more
 */
export async function linkStateOf(stateFolder: string, { disk }: Pick<Effects, "disk">): Promise<LinkState> {
  const path = join(stateFolder, LINKS_FILE);
  if (!(await disk.exists(path))) return NOTHING;
  const text = Buffer.from(await disk.read(path)).toString("utf8");
  let written: unknown;
  try {
    written = JSON.parse(text);
  } catch {
    written = null;
  }
  const read = LinkState.safeParse(written);
  if (read.success) return read.data;
  throw new Stopped(
    EXIT.input,
    `${path} is damaged: ${read.error.issues[0]?.path.join("/") || "it"} cannot be read`,
    "put it back from a backup; without one, move it away: links that were replaced or revoked then open again under their old address",
  );
}

type Which = Pick<LinkState["changes"][number], "athlete" | "recipient">;
const isOf =
  ({ athlete, recipient }: Which) =>
  (one: Which) =>
    one.athlete === athlete && one.recipient === recipient;

/** How often a link was replaced, since when it is what it is, whether it is dead, who was given it since, and the words it asks for. */
export function historyOf(state: LinkState, which: Which) {
  const changes = state.changes.filter(isOf(which));
  const rotations = changes.filter(({ kind }) => kind === "rotated");
  return {
    rotation: rotations.length,
    since: rotations.at(-1)?.on ?? null,
    revoked: changes.at(-1)?.kind === "revoked",
    handed: state.handed.filter(isOf(which)).filter(({ rotation }) => rotation === rotations.length),
    passphrase: state.passphrases.find(isOf(which))?.words ?? null,
  };
}

/** Stands for an athlete who was forgotten: without the secret nobody can tell whom it means. */
export const markOf = (secret: Uint8Array, athlete: string): string =>
  base32(createHmac("sha256", secret).update(`forgotten ${athlete}`, "utf8").digest());

/** From which number an athlete's links count: above all that they had before they were forgotten. */
export const firstRotation = ({ forgotten }: LinkState, secret: Uint8Array, athlete: string): number =>
  forgotten.length === 0 ? 0 : (forgotten.find(({ mark }) => mark === markOf(secret, athlete))?.rotation ?? 0);

/** The state without anything of an athlete but their mark. */
export function forgottenBy(state: LinkState, secret: Uint8Array, athlete: string): LinkState {
  const others = <T extends { readonly athlete: string }>(list: readonly T[]) =>
    list.filter((one) => one.athlete !== athlete);
  const had = state.changes.filter((one) => one.athlete === athlete && one.kind === "rotated").length;
  const mark = markOf(secret, athlete);
  const rotation = firstRotation(state, secret, athlete) + had + 1;
  return {
    changes: others(state.changes),
    handed: others(state.handed),
    passphrases: others(state.passphrases),
    forgotten: [...state.forgotten.filter((one) => one.mark !== mark), { mark, rotation }],
  };
}
