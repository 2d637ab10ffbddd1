import type { Output } from "./guard.ts";

/** A place where a page would make the reader's browser ask another machine for something. */
export interface ForeignRequest {
  readonly path: string;
  /** Tag and attribute, or `css`. */
  readonly where: string;
  readonly address: string;
}

/** Attributes that hold text, never an address that is fetched. Every other attribute is looked at. */
const TEXT_ATTRIBUTES =
  /^(?:alt|title|content|value|id|class|name|label|placeholder|cite|lang|role|aria-.*|data-.*|xmlns(?::.*)?)$/;
const TAG = /<([a-z][a-z0-9:-]*)((?:[^>"']|"[^"]*"|'[^']*')*)>/gi;
const ATTRIBUTE = /([^\s"'>/=]+)(?:\s*=\s*(?:"([^"]*)"|'([^']*)'|([^\s"'>]+)))?/g;
const STYLE_ELEMENT = /<style\b[^>]*>([\s\S]*?)<\/style\s*>/gi;
const URL_CALL = /url\(\s*(?:"([^"]*)"|'([^']*)'|([^)]*))\s*\)/gi;
const CSS_IMPORT = /@import\s+(?:"([^"]*)"|'([^']*)')/gi;

const NAMED: Readonly<Record<string, string>> = {
  amp: "&",
  lt: "<",
  gt: ">",
  quot: '"',
  apos: "'",
  sol: "/",
  colon: ":",
};

/** Character references of HTML as far as they can hide a letter of an address. */
export function decodeReferences(text: string): string {
  return text.replace(/&(?:#(\d+)|#x([0-9a-f]+)|([a-z]+));?/gi, (whole, decimal, hex, name) => {
    if (name) return NAMED[name.toLowerCase()] ?? whole;
    const code = decimal ? Number(decimal) : Number.parseInt(hex, 16);
    return code > 0 && code <= 0x10ffff ? String.fromCodePoint(code) : whole;
  });
}

/** As a browser reads an address: white space and control characters inside it do not count, a backslash is a slash. */
function asBrowser(address: string): string {
  return [...address]
    .filter((letter) => letter > " ")
    .join("")
    .replaceAll("\\", "/")
    .toLowerCase();
}

/** True for an address on another machine, or one that runs as a script. `data:` and `#…` stay on the page. */
export function isForeign(address: string): boolean {
  const seen = asBrowser(address);
  return seen.startsWith("//") || (/^[a-z][a-z0-9+.-]*:/.test(seen) && !seen.startsWith("data:"));
}

/** Addresses in a piece of CSS, escapes such as `\68` read. */
function cssAddresses(css: string): string[] {
  const plain = css
    .replace(/\/\*[\s\S]*?\*\//g, "")
    .replace(/\\([0-9a-f]{1,6})\s?/gi, (_, hex: string) =>
      String.fromCodePoint(Math.min(Number.parseInt(hex, 16), 0xfffd)),
    );
  return [...plain.matchAll(URL_CALL), ...plain.matchAll(CSS_IMPORT)].map((m) => m[1] ?? m[2] ?? m[3] ?? "");
}

function inMarkup(text: string): { where: string; address: string }[] {
  const found: { where: string; address: string }[] = [];
  const plain = text.replace(/<!--[\s\S]*?-->/g, "");
  for (const [, name = "", rest = ""] of plain.matchAll(TAG)) {
    const tag = name.toLowerCase();
    const attributes = new Map<string, string>();
    for (const [, key = "", a, b, c] of rest.matchAll(ATTRIBUTE)) {
      attributes.set(key.toLowerCase(), decodeReferences(a ?? b ?? c ?? ""));
    }
    for (const [key, value] of attributes) {
      for (const address of attributeAddresses(tag, key, value, attributes)) {
        if (isForeign(address)) found.push({ where: `${tag} ${key}`, address });
      }
    }
    if (tag === "base") found.push({ where: "base", address: attributes.get("href") ?? "" });
  }
  for (const [, css = ""] of plain.matchAll(STYLE_ELEMENT)) {
    for (const address of cssAddresses(css)) if (isForeign(address)) found.push({ where: "style", address });
  }
  return found;
}

/** What an attribute could make a browser ask for. A link that a reader has to press may lead outside. */
function attributeAddresses(tag: string, key: string, value: string, all: ReadonlyMap<string, string>): string[] {
  if ((tag === "a" || tag === "area") && (key === "href" || key === "xlink:href")) {
    return /^(?:https?|mailto|tel):/.test(asBrowser(value)) ? [] : [value];
  }
  if (tag === "meta" && key === "content" && all.has("http-equiv")) {
    const refresh = all.get("http-equiv")?.toLowerCase() === "refresh";
    return refresh ? [`refresh:${value}`] : [];
  }
  if (TEXT_ATTRIBUTES.test(key)) return [];
  if (key.endsWith("srcset")) return value.split(",").map((candidate) => candidate.trim());
  return [value, ...cssAddresses(value)];
}

/**
 * Everything that the finished files would fetch from another machine. Looked at: every tag of HTML and SVG, CSS in files,
 * elements and attributes, and any address at all in a script. Links to be pressed (`a href`) may lead outside.
 *
 * @returns in the order of the files; empty when no file asks for anything foreign
 */
export function foreignRequests(files: readonly Output[]): ForeignRequest[] {
  return files.flatMap(({ path, body }) => {
    if (!/\.(?:html|svg|css|js)$/.test(path)) return [];
    const text = typeof body === "string" ? body : Buffer.from(body).toString("utf8");
    if (path.endsWith(".css")) {
      return cssAddresses(text)
        .filter(isForeign)
        .map((address) => ({ path, where: "css", address }));
    }
    if (path.endsWith(".js")) {
      return [...text.matchAll(/(?:https?|wss?):\/\/[^\s"'`]*/g)].map(([address]) => ({
        path,
        where: "script",
        address,
      }));
    }
    return inMarkup(text).map((hit) => ({ path, ...hit }));
  });
}
