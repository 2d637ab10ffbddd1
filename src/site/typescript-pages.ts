import { fileURLToPath } from "node:url";
import { register } from "tsx/esm/api";

const TSCONFIG = fileURLToPath(new URL("../../tsconfig.json", import.meta.url));

let registered = false;

/**
 * Lets Eleventy, which imports page entries itself, read TypeScript with JSX. The settings are named by their full path: tsx would
 * look for them in the folder where the process was started, and a test runner has none of its own.
 */
export function readTypeScriptPages(): void {
  if (registered) return;
  registered = true;
  register({ tsconfig: TSCONFIG });
}
