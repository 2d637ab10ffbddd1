import { TOKEN_PATTERN } from "./token.ts";

/** A finished file: relative path with forward slashes, and what it holds. */
export interface Output {
  readonly path: string;
  readonly body: string | Uint8Array;
}

const NAME = "[A-Za-z0-9][A-Za-z0-9._-]*";
const IMAGE = "(?:png|jpe?g|gif|webp|avif)";
const ID = "[a-z0-9][a-z0-9-]*";

/** Every file that may stand in `_site/`. Nothing else is ever written there. */
export const SITE_PATTERNS: readonly RegExp[] = [
  /^(?:index|404)\.html$/,
  /^(?:robots\.txt|_headers)$/,
  new RegExp(`^assets/${NAME}\\.(?:css|woff2|svg|txt|${IMAGE})$`),
  /^assets\/(?:days|opener)\.[0-9a-f]{12}\.js$/,
  // Other languages and units lie beside the page, all the numbers behind a family's report in a folder of their own.
  new RegExp(`^[rc]/${TOKEN_PATTERN}/(?:[a-z]{2}/)?(?:metric/|imperial/)?index\\.html$`),
  new RegExp(`^r/${TOKEN_PATTERN}/(?:[a-z]{2}/)?(?:metric/|imperial/)?(?:numbers|card)/index\\.html$`),
  // Printed copies, where the facility wants them published.
  new RegExp(`^[rc]/${TOKEN_PATTERN}/(?:[a-z]{2}/)?report\\.pdf(?:\\.jwe)?$`),
  // Sealed ones have another ending. Pictures of notes lie beside the page that shows them, behind the same token.
  new RegExp(`^[rc]/${TOKEN_PATTERN}/${NAME}\\.${IMAGE}(?:\\.jwe)?$`),
];

/** Every file that a preview may hold: also the page that shows what pages are made of. */
export const PREVIEW_PATTERNS: readonly RegExp[] = [...SITE_PATTERNS, /^style\/index\.html$/];

/** Every file that may stand in `_desk/`. */
export const DESK_PATTERNS: readonly RegExp[] = [
  /^index\.html$/,
  /^links\.csv$/,
  /^ledger\.(?:csv|json)$/,
  new RegExp(`^assets/${NAME}\\.(?:css|js|woff2|svg|txt|${IMAGE})$`),
  new RegExp(`^pdf/${ID}-(?:family|club)-[a-z]{2}-(?:a4|letter)(?:-${ID})?\\.pdf$`),
  new RegExp(`^(?:pairs|links)/${ID}\\.html$`),
  new RegExp(`^reports/${ID}\\.json$`),
  new RegExp(`^reps/${ID}\\.csv$`),
];

/** Names that Windows keeps for devices, with any extension: https://learn.microsoft.com/windows/win32/fileio/naming-a-file */
const RESERVED = /^(?:con|prn|aux|nul|com[0-9¹²³]|lpt[0-9¹²³])(?:\.|$)/i;

/** Why `path` does not stay inside its folder on every kind of disk; null when it does. */
export function unsafePath(path: string): string | null {
  if (path === "") return "an empty path";
  // biome-ignore lint/suspicious/noControlCharactersInRegex: control characters are what is looked for
  if (/[\u0000-\u001f\u007f]/.test(path)) return "a control character";
  if (path.includes("\\")) return "a backslash";
  if (path.startsWith("/")) return "an absolute path";
  if (/[<>:"|?*]/.test(path)) return "a character that some disks do not know";
  for (const part of path.split("/")) {
    if (part === "" || part === "." || part === "..") return "a part that is empty or made of dots";
    if (/[. ]$/.test(part)) return "a name that ends in a dot or a space";
    if (RESERVED.test(part)) return "a name that Windows keeps for itself";
  }
  return null;
}

/**
 * Holds finished files against the rules of their folder.
 *
 * @param patterns what may stand in the folder
 * @throws when a path leaves the folder, fits no pattern, or is there twice (capitals do not tell paths apart)
 */
export function guard(files: readonly Output[], patterns: readonly RegExp[]): void {
  const seen = new Map<string, string>();
  for (const { path } of files) {
    const why = unsafePath(path);
    if (why !== null) throw new Error(`the file ${JSON.stringify(path)} is not written: ${why}`);
    if (!patterns.some((pattern) => pattern.test(path))) {
      throw new Error(`the file ${JSON.stringify(path)} is not written: it is none of the files that belong there`);
    }
    const folded = path.normalize("NFC").toLowerCase();
    const twin = seen.get(folded);
    if (twin !== undefined)
      throw new Error(`two pages on one path: ${JSON.stringify(twin)} and ${JSON.stringify(path)}`);
    seen.set(folded, path);
  }
}
