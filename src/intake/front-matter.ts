/** A Markdown file cut into its front matter and its body. */
export type FrontMatter =
  | {
      readonly kind: "found";
      readonly yaml: string;
      /** Line of the file on which `yaml` starts, from 1. */
      readonly yamlLine: number;
      readonly body: string;
      /** Line of the file on which the body starts, from 1. */
      readonly bodyLine: number;
    }
  | { readonly kind: "none"; readonly body: string }
  | { readonly kind: "unclosed" };

const FENCE = /^---[ \t]*$/;

/**
 * Cuts off the YAML between a first line of `---` and the next line of `---`.
 *
 * @param text the file's text with `\n` line ends and no byte order mark
 */
export function splitFrontMatter(text: string): FrontMatter {
  const lines = text.split("\n");
  if (!FENCE.test(lines[0] ?? "")) return { kind: "none", body: text };
  const end = lines.findIndex((line, index) => index > 0 && FENCE.test(line));
  if (end === -1) return { kind: "unclosed" };
  return {
    kind: "found",
    yaml: lines.slice(1, end).join("\n"),
    yamlLine: 2,
    body: lines.slice(end + 1).join("\n"),
    bodyLine: end + 2,
  };
}
