/** An element of a drawn SVG, or a piece of text between tags (still escaped). */
export type SvgNode = SvgElement | string;
export interface SvgElement {
  tag: string;
  readonly attributes: Map<string, string>;
  readonly children: SvgNode[];
}

/**
 * Reads SVG as Vega writes it: every tag closed, every value in double quotes, no comments, no prologue.
 *
 * @throws {SyntaxError} anything else
 */
export function parseSvg(text: string): SvgElement {
  const root: SvgElement = { tag: "", attributes: new Map(), children: [] };
  const open: SvgElement[] = [root];
  let end = 0;
  for (const match of text.matchAll(/<(\/?)([A-Za-z][\w:-]*)((?:\s+[\w:-]+="[^"<]*")*)\s*(\/?)>/g)) {
    const [whole, closes, tag = "", attributes = "", empty] = match;
    addText(open.at(-1)!, text.slice(end, match.index));
    end = match.index + whole.length;
    if (closes) {
      if (open.pop()?.tag !== tag || open.length === 0) throw new SyntaxError(`</${tag}> closes nothing`);
      continue;
    }
    const element: SvgElement = { tag, attributes: readAttributes(attributes), children: [] };
    open.at(-1)!.children.push(element);
    if (!empty) open.push(element);
  }
  addText(open.at(-1)!, text.slice(end));
  const only = root.children[0];
  if (open.length !== 1 || root.children.length !== 1 || typeof only !== "object")
    throw new SyntaxError("not one whole SVG");
  return only;
}

/** The element as text; the inverse of {@link parseSvg}. */
export function writeSvg(node: SvgNode): string {
  if (typeof node === "string") return node;
  const attributes = [...node.attributes].map(([name, value]) => ` ${name}="${value}"`).join("");
  if (node.children.length === 0) return `<${node.tag}${attributes}/>`;
  return `<${node.tag}${attributes}>${node.children.map(writeSvg).join("")}</${node.tag}>`;
}

function readAttributes(text: string): Map<string, string> {
  return new Map([...text.matchAll(/([\w:-]+)="([^"]*)"/g)].map((m) => [m[1]!, m[2]!]));
}

function addText(parent: SvgElement, text: string): void {
  if (text.includes("<") || text.includes(">")) throw new SyntaxError(`stray markup: ${text.slice(0, 40)}`);
  if (text !== "") parent.children.push(text);
}
