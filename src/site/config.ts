import { fileURLToPath } from "node:url";
import type { PageSet } from "./page-set.ts";

/** The little of Eleventy's configuration object that we use. */
export interface EleventyConfig {
  addExtension(names: readonly string[], options: { readonly key: string }): void;
  addTemplateFormats(names: readonly string[]): void;
  addGlobalData(name: string, data: unknown): void;
  setUseGitIgnore(use: boolean): void;
  setFreezeReservedData(freeze: boolean): void;
}

/** Eleventy's input: page entries alone. */
export const PAGES = fileURLToPath(new URL("./pages/", import.meta.url));

/**
 * Eleventy's configuration, for the build and for plain Eleventy alike.
 *
 * @param pages gives the pages; asked once for every run of Eleventy
 */
export function configure(eleventy: EleventyConfig, pages: () => Promise<PageSet>): void {
  eleventy.addExtension(["11ty.tsx"], { key: "11ty.js" });
  eleventy.addTemplateFormats(["11ty.tsx"]);
  eleventy.setUseGitIgnore(false);
  eleventy.addGlobalData("pages", pages);
  eleventy.addGlobalData("family", async () => (await pages()).of("family"));
  eleventy.addGlobalData("style", async () => (await pages()).style);
  eleventy.addGlobalData("club", async () => (await pages()).of("club"));
}
