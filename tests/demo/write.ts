import { mkdirSync, readdirSync, rmSync, writeFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";
import { generateDemo } from "./generate.ts";

/** Writes the demo season over `content/` and `data/`, and takes away what it no longer holds. */
const root = fileURLToPath(new URL("../..", import.meta.url));
const files = generateDemo();
for (const folder of ["content", "data"]) {
  mkdirSync(join(root, folder), { recursive: true });
  for (const entry of readdirSync(join(root, folder), { recursive: true, withFileTypes: true })) {
    const path = join(entry.parentPath, entry.name).slice(root.length).replaceAll("\\", "/");
    if (entry.isFile() && !files.has(path)) rmSync(join(root, path));
  }
}
for (const [path, text] of files) {
  mkdirSync(dirname(join(root, path)), { recursive: true });
  writeFileSync(join(root, path), text);
}
process.stdout.write(`${files.size} files written\n`);
