import { stringify } from "yaml";

/**
 * A page of front matter: the keys that are filled in, and below them, as comments, those that are not.
 *
 * @param filled keys in order; one that is undefined is left out
 * @param open   lines that show how what is missing is written
 */
export function frontMatterPage(filled: Readonly<Record<string, unknown>>, open: readonly string[]): string {
  const present = Object.fromEntries(Object.entries(filled).filter(([, value]) => value !== undefined));
  // The very schema by which front matter is read: "14", "no" and "2010-05-14" come back as what they were.
  const yaml = stringify(present, { version: "1.2", schema: "core", lineWidth: 0 });
  const comments =
    open.length === 0
      ? ""
      : `# Still open. Take the # away and fill in:\n${open.map((line) => `# ${line}\n`).join("")}`;
  return `---\n${yaml}${comments}---\n`;
}
