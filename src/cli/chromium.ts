import { randomUUID } from "node:crypto";
import { createReadStream, createWriteStream, existsSync } from "node:fs";
import { chmod, mkdir, readFile, rename, rm } from "node:fs/promises";
import { createRequire } from "node:module";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import { pipeline } from "node:stream/promises";
import { createBrotliDecompress } from "node:zlib";
import { type Browser, chromium } from "playwright-core";
import { extract } from "tar-fs";

/** Folder of the package that carries a Chromium as a compressed file, so that no browser has to be installed. */
function packageFolder(): string {
  const { resolve } = createRequire(import.meta.url);
  return join(dirname(resolve("@sparticuz/chromium")), "../..");
}

/** An unpacked Chromium, and a folder of the few libraries it needs that a bare Linux may lack. */
interface Unpacked {
  readonly binary: string;
  readonly libraries: string;
}

/**
 * Unpacks Chromium once for each version: under another name first and then renamed, so that two test processes which start
 * together never see half a browser.
 */
async function unpacked(): Promise<Unpacked> {
  const folder = packageFolder();
  const { version } = JSON.parse(await readFile(join(folder, "package.json"), "utf8")) as { version: string };
  const home = join(tmpdir(), `winterbook-chromium-${version}-with-libraries`);
  const found = { binary: join(home, "chromium"), libraries: join(home, "lib") };
  if (existsSync(found.binary)) return found;
  const making = `${home}.${randomUUID()}`;
  await mkdir(making, { recursive: true });
  const packed = (name: string) => createReadStream(join(folder, "bin", name));
  const binary = join(making, "chromium");
  await pipeline(packed("chromium.br"), createBrotliDecompress(), createWriteStream(binary));
  await pipeline(packed("al2023.tar.br"), createBrotliDecompress(), extract(making));
  await chmod(binary, 0o755);
  try {
    await rename(making, home);
  } catch (error) {
    // Another process was faster: its browser is the same.
    await rm(making, { recursive: true, force: true });
    if (!existsSync(found.binary)) throw error;
  }
  return found;
}

/**
 * A headless Chromium. The caller closes it. The machine's own libraries are used, and the package's where it has none.
 *
 * @param more arguments beside our own
 */
export async function launch(more: readonly string[] = []): Promise<Browser> {
  const { binary, libraries } = await unpacked();
  const options = {
    executablePath: binary,
    args: ["--no-sandbox", "--font-render-hinting=none", ...more],
    headless: true,
  };
  try {
    return await chromium.launch(options);
  } catch (error) {
    if (!String(error).includes("error while loading shared libraries")) throw error;
    return chromium.launch({ ...options, env: { ...process.env, LD_LIBRARY_PATH: libraries } });
  }
}
