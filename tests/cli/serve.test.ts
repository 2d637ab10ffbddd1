import { appendFile, mkdtemp, rm, writeFile } from "node:fs/promises";
import { request } from "node:http";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, describe, expect, test } from "vitest";
import { fileFor, serve } from "../../src/cli/serve.ts";
import { watch } from "../../src/cli/watch.ts";
import { MemoryDisk } from "../publish/memory-disk.ts";

const closing: (() => unknown)[] = [];
afterEach(async () => {
  for (const close of closing.splice(0)) await close();
});

async function served() {
  const disk = new MemoryDisk({
    "/p/index.html": "front",
    "/p/404.html": "lost",
    "/p/r/abc/index.html": "page",
    "/p/a.css": "x",
  });
  const { server, port } = await serve("/p", 0, disk);
  closing.push(() => server.close());
  return (path: string, headers: Record<string, string> = {}, method = "GET") =>
    new Promise<{ status: number | undefined; type: string | undefined; body: string }>((done, fail) => {
      const asked = request({ host: "127.0.0.1", port, path, method, headers, agent: false }, (answer) => {
        let body = "";
        answer.on("data", (text) => {
          body += text;
        });
        answer.on("end", () => done({ status: answer.statusCode, type: answer.headers["content-type"], body }));
      });
      asked.on("error", fail);
      asked.end();
    });
}

describe("the preview's address", () => {
  test.each([
    ["/", "index.html"],
    ["/r/abc/", "r/abc/index.html"],
    ["/a.css?v=1", "a.css"],
    ["/a%20b.png", "a b.png"],
  ])("%j means %j", (address, path) => {
    expect(fileFor(address)).toBe(path);
  });

  test.each([
    "/../secret",
    "/%2e%2e/secret",
    "/r/..%2f..%2fsecret",
    "//etc/passwd",
    "/.winterbook/secret",
    "/a%00",
    "/a%5cb",
    "x",
    "/%",
  ])("%j leads nowhere", (address) => {
    expect(fileFor(address)).toBeNull();
  });
});

describe("the preview's server", () => {
  test("gives pages, styles, and its own page for what is not there", async () => {
    const get = await served();
    expect(await get("/")).toEqual({ status: 200, type: "text/html; charset=utf-8", body: "front" });
    expect(await get("/r/abc/")).toMatchObject({ status: 200, body: "page" });
    expect(await get("/a.css")).toMatchObject({ status: 200, type: "text/css; charset=utf-8" });
    expect(await get("/gone/")).toEqual({ status: 404, type: "text/html; charset=utf-8", body: "lost" });
  });

  test("answers this machine alone, and changes nothing", async () => {
    const get = await served();
    expect((await get("/", { Host: "evil.example" })).status).toBe(421);
    expect((await get("/", {}, "POST")).status).toBe(405);
    expect((await get("/", {}, "HEAD")).body).toBe("");
  });

  test("says when its port is taken", async () => {
    const first = await serve("/p", 0, new MemoryDisk());
    closing.push(() => first.server.close());
    await expect(serve("/p", first.port, new MemoryDisk())).rejects.toThrow(`port ${first.port} is taken`);
  });
});

test("a change is noticed once it has come to rest, and nothing is noticed without one", async () => {
  const folder = await mkdtemp(join(tmpdir(), "watch-"));
  closing.push(() => rm(folder, { recursive: true, force: true }));
  await writeFile(join(folder, "a.md"), "one");
  let calls = 0;
  closing.push(
    watch([folder, join(folder, "gone")], 30, async () => {
      calls++;
    }),
  );
  const rest = () => new Promise((done) => setTimeout(done, 400));
  await rest();
  expect(calls).toBe(0);
  await appendFile(join(folder, "a.md"), ", two");
  await rest();
  expect(calls).toBe(1);
  await rm(join(folder, "a.md"));
  await rest();
  expect(calls).toBe(2);
});
