import { SEALED_POLICY } from "./components/document.tsx";

/** Where hosts look for headers that a site brings along. */
export const HEADERS_FILE = "_headers";

/**
 * What every answer of the host should carry. A page's own policy is at least as narrow; what a page cannot say of itself (nobody may frame it, no
 * other site may load its files) stands here alone.
 */
export const HEADERS: readonly (readonly [name: string, value: string])[] = [
  ["Content-Security-Policy", `${SEALED_POLICY}; frame-ancestors 'none'`],
  ["Referrer-Policy", "no-referrer"],
  ["X-Robots-Tag", "noindex, nofollow"],
  ["X-Content-Type-Options", "nosniff"],
  ["Strict-Transport-Security", "max-age=31536000"],
  ["Cross-Origin-Opener-Policy", "same-origin"],
  ["Cross-Origin-Resource-Policy", "same-origin"],
  ["Permissions-Policy", "camera=(), microphone=(), geolocation=()"],
];

/** Reports may change or be taken back any day; the names of assets change with what is in them. */
const CACHING: readonly (readonly [path: string, value: string])[] = [
  ["/assets/*", "public, max-age=31536000, immutable"],
  ["/r/*", "private, no-cache"],
  ["/c/*", "private, no-cache"],
];

/** The file as several static hosts read it: a path pattern, and below it one header a line. */
export function headersFile(): string {
  const blocks = [
    ["/*", ...HEADERS.map(([name, value]) => `  ${name}: ${value}`)],
    ...CACHING.map(([path, value]) => [path, `  Cache-Control: ${value}`]),
  ];
  return `${blocks.map((lines) => lines.join("\n")).join("\n\n")}\n`;
}
