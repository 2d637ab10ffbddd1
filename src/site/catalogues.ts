import { readdirSync } from "node:fs";
import type { Pages } from "./messages/en.ts";

/** A language is one file of `messages/`, named by its code, that gives a sentence for every key of the pages. */
export type Catalogue = Readonly<Record<keyof Pages, string>>;

const LANGUAGE_FILE = /^([a-z]{2})\.ts$/;

/** English first, which others fall back to, then by code. */
const codes = readdirSync(new URL("./messages/", import.meta.url))
  .flatMap((name) => LANGUAGE_FILE.exec(name)?.[1] ?? [])
  .sort((a, b) => Number(b === "en") - Number(a === "en") || (a < b ? -1 : 1));

async function load(code: string): Promise<Catalogue> {
  const file = (await import(`./messages/${code}.ts`)) as Record<string, Catalogue | undefined>;
  const catalogue = file[code];
  if (catalogue === undefined) throw new Error(`messages/${code}.ts does not export its sentences as \`${code}\``);
  return catalogue;
}

/** Every language that pages can be written in, with its sentences. */
export const CATALOGUES: ReadonlyMap<string, Catalogue> = new Map(
  await Promise.all(codes.map(async (code) => [code, await load(code)] as const)),
);

/** Languages in which pages have their sentences. What the trainer writes may be in any other. */
export const PAGE_LANGUAGES: readonly string[] = [...CATALOGUES.keys()];
