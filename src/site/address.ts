const SAFE_SCHEMES = new Set(["http:", "https:", "mailto:"]);

// Browsers drop white space and control characters before they read the scheme, so "java\nscript:" would pass a naive check.
// biome-ignore lint/suspicious/noControlCharactersInRegex: control characters are exactly what is refused
const CONTROL = /[\u0000-\u0020\u007f-\u00a0\u2028\u2029]/;

/**
 * The one place where an address is judged before it may stand in a page.
 *
 * @returns the address unchanged when it is http, https, mailto or relative to the page; `null` when it is anything else
 *   (`javascript:`, `data:`, `file:`, `//host`, a back slash, a control character or white space inside)
 * @example checkedAddress("https://example.org/a") // => "https://example.org/a"
 * @example checkedAddress("javascript:alert(1)") // => null
 */
export function checkedAddress(address: string): string | null {
  const text = address.trim();
  if (text === "" || CONTROL.test(text) || text.includes("\\")) return null;
  const scheme = /^([a-z][a-z0-9+.-]*:)/i.exec(text)?.[1]?.toLowerCase();
  if (scheme !== undefined) return SAFE_SCHEMES.has(scheme) ? text : null;
  // "//host" leaves the site without naming a scheme; ":x" and "a:b" have none that we know.
  if (text.startsWith("//") || /^[^/?#]*:/.test(text)) return null;
  return text;
}
