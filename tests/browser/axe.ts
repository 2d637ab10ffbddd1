import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import type { Page } from "playwright-core";

const AXE = readFileSync(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8");
const RULES = ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice"];

export interface Violation {
  readonly id: string;
  readonly nodes: readonly { readonly html: string; readonly failureSummary: string }[];
}

/** What axe complains of on a page: WCAG 2.2 at AA, and what is good practice. */
export async function violationsOn(page: Page): Promise<readonly Violation[]> {
  await page.evaluate(AXE);
  const { violations } = (await page.evaluate(`axe.run({ runOnly: ${JSON.stringify(RULES)} })`)) as {
    violations: Violation[];
  };
  return violations;
}
