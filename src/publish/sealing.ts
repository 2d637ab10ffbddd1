import { compactDecrypt } from "jose";
import type { Facility } from "../schema/facility.ts";
import type { Profile } from "../schema/profile.ts";
import type { Reader } from "../schema/reasons.ts";
import { SEALED_HERE } from "../schema/sealed.ts";
import { toBase64url } from "../seal/base64url.ts";
import type { Bytes } from "../seal/bytes.ts";
import { withPassphrase } from "../seal/passphrase.ts";
import { type SealKeys, sealed, sealKeys } from "../seal/seal.ts";
import type { Output } from "./guard.ts";
import type { Link } from "./links.ts";
import { holderText } from "./token.ts";

/** What was said about sealing, from the widest word to the narrowest. */
export interface SealWords {
  readonly facility: boolean | readonly Reader[] | undefined;
  readonly athlete: boolean | undefined;
  readonly recipient: boolean | undefined;
}

/**
 * Are a link's pages sealed? The narrowest word counts: the link's, the athlete's, the facility's. Without any, a minor's are. A facility that names
 * readers says nothing of the others.
 */
export function isSealed({ facility, athlete, recipient }: SealWords, reader: Reader, minor: boolean): boolean {
  const house = typeof facility === "boolean" ? facility : facility?.includes(reader) ? true : undefined;
  return recipient ?? athlete ?? house ?? minor;
}

/** The same for a recipient of an athlete, from what is written of both and of the facility. */
export const isSealedTo = (
  { seal, reader }: NonNullable<Profile["recipients"]>[number],
  athlete: Pick<Profile, "seal">,
  facility: Pick<Facility, "seal">,
  minor: boolean,
): boolean => isSealed({ facility: facility.seal, athlete: athlete.seal, recipient: seal }, reader, minor);

/** Links with the key that each sealed one's address carries. */
export async function withKeys(secret: Bytes, links: readonly Link[]): Promise<Link[]> {
  const keyed = async (link: Link): Promise<Link> => {
    const { content } = await sealKeys(secret, holderText(link));
    return { ...link, key: toBase64url(content) };
  };
  return Promise.all(links.map((link) => (link.sealed ? keyed(link) : link)));
}

/** Keys by which a link's pages are sealed: where it asks for words, they are mixed in. */
async function keysOf(secret: Bytes, link: Link): Promise<SealKeys> {
  const keys = await sealKeys(secret, holderText(link));
  if (link.passphrase === null) return keys;
  return { ...keys, content: await withPassphrase(keys.content, link.passphrase, link.token) };
}

/** A finished file, and for a page of a sealed link the page that stands in its place and opens it. */
export interface Framed extends Output {
  readonly frame?: string;
}

/** A second hand opens what ours has sealed, before anybody is given it. */
async function tried(text: string, { content }: SealKeys, body: Output["body"], path: string): Promise<string> {
  const { plaintext } = await compactDecrypt(text, content, { maxDecompressedLength: Number.POSITIVE_INFINITY });
  if (!Buffer.from(plaintext).equals(Buffer.from(body))) throw new Error(`${path} does not open to what was sealed`);
  return text;
}

/**
 * The files as they are published: those below a sealed link as ciphertext, everything else as it is. Pages keep their path and become the page
 * that opens them; all other files have `.jwe` behind their name.
 *
 * @throws when a page of a sealed link has no page to stand in its place, or a sealed file does not open again
 */
export async function sealFiles(secret: Bytes, site: readonly Framed[], links: readonly Link[]): Promise<Output[]> {
  const keys = new Map<string, SealKeys>();
  for (const link of links) {
    if (link.sealed && link.withheld === null) keys.set(link.path, await keysOf(secret, link));
  }
  const made: Output[] = [];
  for (const { path, body, frame } of site) {
    const own = keys.get(linkFolder(path));
    if (own === undefined) {
      made.push({ path, body });
      continue;
    }
    const text = await tried(
      await sealed(typeof body === "string" ? body : new Uint8Array(body), own),
      own,
      body,
      path,
    );
    if (!path.endsWith(".html")) made.push({ path: `${path}.jwe`, body: text });
    else made.push({ path, body: around(text, frame, path) });
  }
  return made;
}

/** `r/<token>/`, wherever below it a file lies. */
export const linkFolder = (path: string): string => `${path.split("/", 2).join("/")}/`;

function around(text: string, frame: string | undefined, path: string): string {
  const [before, after, ...more] = frame?.split(SEALED_HERE) ?? [];
  if (before === undefined || after === undefined || more.length > 0)
    throw new Error(`${path} has no page that opens it`);
  return before + text + after;
}
