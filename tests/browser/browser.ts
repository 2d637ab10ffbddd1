import { randomUUID } from "node:crypto";
import { createReadStream, createWriteStream, existsSync } from "node:fs";
import { chmod, mkdir, readFile, rename, rm } from "node:fs/promises";
import { createRequire } from "node:module";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import { pipeline } from "node:stream/promises";
import { createBrotliDecompress } from "node:zlib";
import { type Browser, chromium } from "playwright-core";

/** Folder of the package that carries a Chromium as a compressed file, so that no browser has to be installed. */
function packageFolder(): string {
  const { resolve } = createRequire(import.meta.url);
  return join(dirname(resolve("@sparticuz/chromium")), "../..");
}

/**
 * Path of an unpacked Chromium. It is unpacked once for each version: under another name first and then renamed, so that two test
 * processes which start together never see half a browser.
 */
async function browserPath(): Promise<string> {
  const folder = packageFolder();
  const { version } = JSON.parse(await readFile(join(folder, "package.json"), "utf8")) as { version: string };
  const home = join(tmpdir(), `winterbook-chromium-${version}`);
  const path = join(home, "chromium");
  if (existsSync(path)) return path;
  const making = `${home}.${randomUUID()}`;
  await mkdir(making, { recursive: true });
  const binary = join(making, "chromium");
  await pipeline(
    createReadStream(join(folder, "bin", "chromium.br")),
    createBrotliDecompress(),
    createWriteStream(binary),
  );
  await chmod(binary, 0o755);
  try {
    await rename(making, home);
  } catch (error) {
    // Another process was faster: its browser is the same.
    await rm(making, { recursive: true, force: true });
    if (!existsSync(path)) throw error;
  }
  return path;
}

/** A headless Chromium. The caller closes it. */
export async function launch(): Promise<Browser> {
  return chromium.launch({
    executablePath: await browserPath(),
    args: ["--no-sandbox", "--disable-gpu", "--disable-dev-shm-usage", "--font-render-hinting=none"],
    headless: true,
  });
}
