import { createServer } from "node:http";
import type { AddressInfo } from "node:net";
import { gzipSync } from "node:zlib";

export interface StaticServer {
  /** `http://127.0.0.1:<port>` */
  readonly origin: string;
  close(): Promise<void>;
}

const TYPES: Readonly<Record<string, string>> = {
  html: "text/html; charset=utf-8",
  css: "text/css; charset=utf-8",
  woff2: "font/woff2",
  txt: "text/plain; charset=utf-8",
  js: "text/javascript; charset=utf-8",
  png: "image/png",
};

/** Serves finished files from memory, as a plain host would (`packed`: as one that packs text): folders by their index.html, 404.html for what is not there. */
export async function serveFiles(
  files: readonly { readonly path: string; readonly body: string | Uint8Array }[],
  { packed = false }: { readonly packed?: boolean } = {},
): Promise<StaticServer> {
  const byPath = new Map(files.map((file) => [`/${file.path}`, file.body]));
  // A site may bring its headers along: those for every path, one a line below the first pattern.
  const [first = ""] = String(byPath.get("/_headers") ?? "").split("\n\n");
  const headers = [...first.matchAll(/^ {2}([\w-]+): (.*)$/gm)].map(
    ([, name = "", value = ""]) => [name, value] as const,
  );
  const server = createServer((request, response) => {
    const asked = new URL(request.url ?? "/", "http://localhost").pathname;
    const path = asked.endsWith("/") ? `${asked}index.html` : asked;
    const body = byPath.get(path);
    const type = TYPES[path.slice(path.lastIndexOf(".") + 1)] ?? "application/octet-stream";
    const shown = body === undefined ? TYPES.html : type;
    const sent = body ?? byPath.get("/404.html") ?? "";
    const pack = packed && /^text\//.test(shown ?? "");
    response.writeHead(body === undefined ? 404 : 200, {
      ...Object.fromEntries(headers),
      "content-type": shown,
      ...(pack ? { "content-encoding": "gzip" } : {}),
    });
    response.end(pack ? gzipSync(sent) : sent);
  });
  await new Promise<void>((done) => server.listen(0, "127.0.0.1", done));
  const { port } = server.address() as AddressInfo;
  return {
    origin: `http://127.0.0.1:${port}`,
    close: () => new Promise((done, fail) => server.close((error) => (error ? fail(error) : done()))),
  };
}
