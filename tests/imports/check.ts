import { readdirSync } from "node:fs";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { cruise, type ICruiseResult } from "dependency-cruiser";
import extractConfig from "dependency-cruiser/config-utl/extract-depcruise-config";
import extractTsConfig from "dependency-cruiser/config-utl/extract-ts-config";

export interface ImportCheck {
  readonly modules: number;
  readonly dependencies: number;
  /** One line for each import that breaks a rule, and one when files went unread. */
  readonly complaints: readonly string[];
}

const SOURCE = /\.(?:ts|tsx|mjs)$/;

/**
 * Holds the imports of `src/` against the project's rules.
 *
 * @param root folder that holds `src/` and a `tsconfig.json`
 * @param rules absolute path of the rules
 */
export async function checkImports(root: string, rules: string): Promise<ImportCheck> {
  const config = await extractConfig(rules);
  const { options, ...ruleSet } = config;
  const fileName = join(root, "tsconfig.json");
  const { output } = await cruise(
    ["src"],
    { ...options, baseDir: root, validate: true, ruleSet, tsConfig: { fileName } } as Parameters<typeof cruise>[1],
    undefined,
    { tsConfig: extractTsConfig(fileName) },
  );
  const { modules, summary } = output as ICruiseResult;
  const read = modules.filter(({ source }) => /^src\//.test(source)).length;
  const files = readdirSync(join(root, "src"), { recursive: true, encoding: "utf8" }).filter((f) => SOURCE.test(f));
  const complaints = summary.violations.map(({ rule, from, to }) => `${rule.name}: ${from} -> ${to}`);
  if (read < files.length) complaints.push(`only ${read} of ${files.length} files under src were read`);
  const dependencies = modules.reduce((sum, module) => sum + module.dependencies.length, 0);
  return { modules: read, dependencies, complaints };
}

if (process.argv[1] && import.meta.url === pathToFileURL(process.argv[1]).href) {
  const root = join(import.meta.dirname, "..", "..");
  const { modules, dependencies, complaints } = await checkImports(root, join(root, ".dependency-cruiser.mjs"));
  for (const complaint of complaints) process.stderr.write(`${complaint}\n`);
  process.stdout.write(`${modules} modules, ${dependencies} dependencies\n`);
  process.exitCode = complaints.length > 0 ? 1 : 0;
}
