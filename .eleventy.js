import { mkdir, writeFile } from "node:fs/promises";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";
import { register } from "tsx/esm/api";

// Plain `npx @11ty/eleventy`: the same pages as the build's, unsealed, into .preview/ which is never published.
register({ tsconfig: fileURLToPath(new URL("./tsconfig.json", import.meta.url)) });
const { configure } = await import("./src/site/config.ts");
const { pageSet } = await import("./src/site/page-set.ts");
const { previewInput } = await import("./src/preview.ts");

export default function (eleventy) {
  let pages;
  const current = () => (pages ??= previewInput().then(pageSet));
  eleventy.on("eleventy.before", () => {
    pages = undefined;
  });
  eleventy.on("eleventy.after", async ({ directories }) => {
    for (const { path, body } of (await current()).files) {
      const target = join(directories.output, path);
      await mkdir(dirname(target), { recursive: true });
      await writeFile(target, body);
    }
  });
  configure(eleventy, current);
  for (const folder of ["content", "data"]) eleventy.addWatchTarget(folder);
}

export const config = { dir: { input: "src/site/pages", output: ".preview" } };
