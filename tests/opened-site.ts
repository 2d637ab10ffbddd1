import { readdirSync, readFileSync } from "node:fs";
import { join, relative } from "node:path";
import { linkFolder } from "../src/publish/sealing.ts";
import { SEALED_ID } from "../src/schema/sealed.ts";
import { fromBase64url } from "../src/seal/base64url.ts";
import { opened } from "../src/seal/open.ts";

export interface SiteBytes {
  readonly path: string;
  readonly body: Buffer;
}

/** Every file below a folder. */
export const filesOf = (folder: string): SiteBytes[] =>
  readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => join(entry.parentPath, entry.name))
    .map((path) => ({ path: relative(folder, path).replaceAll("\\", "/"), body: readFileSync(path) }));

const ENVELOPE = new RegExp(`<script type="application/jose" id="${SEALED_ID}"[^>]*>([^<]*)</script>`);

/** Ciphertext that a page of a sealed link holds; null for a page that holds none. */
export const sealedIn = (page: string): string | null => ENVELOPE.exec(page)?.[1] ?? null;

/** A finished site as it is for those who hold its links: what is sealed is opened, under the name it had before. */
export async function openedSite(
  files: readonly SiteBytes[],
  links: readonly { readonly path: string; readonly key: string | null }[],
): Promise<SiteBytes[]> {
  const keys = new Map(links.map(({ path, key }) => [path, key]));
  return Promise.all(
    files.map(async ({ path, body }) => {
      const key = keys.get(linkFolder(path)) ?? null;
      if (key === null) return { path, body };
      const text = path.endsWith(".jwe") ? body.toString("latin1") : sealedIn(body.toString("utf8"));
      if (text === null) throw new Error(`${path} lies below a sealed link and is not sealed`);
      return { path: path.replace(/\.jwe$/, ""), body: Buffer.from(await opened(text, fromBase64url(key))) };
    }),
  );
}

/** Live links of a built season, from the trainer's own list: `path` below the site, and what stands behind `#` in each address. */
export function linksOnDesk(desk: string): { athlete: string; reader: string; path: string; key: string | null }[] {
  const [, ...lines] = readFileSync(join(desk, "links.csv"), "utf8").trim().split("\n");
  return lines.flatMap((line) => {
    const [athlete = "", , reader = "", link = ""] = line.split(",");
    const found = /([rc]\/[a-z2-7]{32}\/)(?:#(.+))?$/.exec(link);
    return found ? [{ athlete, reader, path: found[1]!, key: found[2] ?? null }] : [];
  });
}
