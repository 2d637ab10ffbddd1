import { createServer, type Server } from "node:http";
import { join } from "node:path";
import { EXIT, Stopped } from "../publish/stopped.ts";
import type { Disk } from "../schema/effects.ts";

const TYPES: Readonly<Record<string, string>> = {
  html: "text/html; charset=utf-8",
  css: "text/css; charset=utf-8",
  js: "text/javascript; charset=utf-8",
  svg: "image/svg+xml",
  txt: "text/plain; charset=utf-8",
  woff2: "font/woff2",
  png: "image/png",
  jpg: "image/jpeg",
  jpeg: "image/jpeg",
  gif: "image/gif",
  webp: "image/webp",
  avif: "image/avif",
};

/** Path of the file that an address asks for, relative to the site; null when the address leaves it. */
export function fileFor(address: string): string | null {
  let path: string;
  try {
    path = decodeURIComponent(address.replace(/[?#].*$/s, ""));
  } catch {
    return null;
  }
  if (!path.startsWith("/") || path.includes("\\") || path.includes("\0")) return null;
  const parts = path.slice(1).split("/");
  if (parts.slice(0, -1).some((part) => part === "" || part.startsWith(".")) || parts.at(-1)?.startsWith("."))
    return null;
  return path.endsWith("/") ? `${path.slice(1)}index.html` : path.slice(1);
}

/** Only this machine's own names: a page from elsewhere must not reach the preview through a name of its own. */
const isHere = (host: string | undefined) => /^(?:127\.0\.0\.1|localhost)(?::\d+)?$/.test(host ?? "");

/**
 * Serves a folder on 127.0.0.1, reading each file anew. Only GET and HEAD, nothing is kept by the browser.
 *
 * @param folder absolute
 * @param port   0 for a free one
 */
export function serve(
  folder: string,
  port: number,
  disk: Pick<Disk, "read">,
): Promise<{ server: Server; port: number }> {
  const read = (path: string) => disk.read(join(folder, path)).catch(() => null);
  const server = createServer(async (request, response) => {
    const headers = {
      "Cache-Control": "no-store",
      "X-Content-Type-Options": "nosniff",
      "Referrer-Policy": "no-referrer",
    };
    if (!isHere(request.headers.host)) return void response.writeHead(421, headers).end();
    if (request.method !== "GET" && request.method !== "HEAD") return void response.writeHead(405, headers).end();
    const path = fileFor(request.url ?? "/");
    const body = path === null ? null : await read(path);
    const answer = body ?? (await read("404.html"));
    const type = body === null ? TYPES.html : (TYPES[path?.split(".").at(-1) ?? ""] ?? "application/octet-stream");
    response.writeHead(body === null ? 404 : 200, { ...headers, "Content-Type": type });
    response.end(request.method === "HEAD" ? undefined : answer);
  });
  return new Promise((done, fail) => {
    server.once("error", (error: NodeJS.ErrnoException) => {
      const taken = error.code === "EADDRINUSE";
      fail(taken ? new Stopped(EXIT.usage, `port ${port} is taken`, "name another with --port, or none") : error);
    });
    server.listen(port, "127.0.0.1", () => {
      const address = server.address();
      done({ server, port: typeof address === "object" && address !== null ? address.port : port });
    });
  });
}
