import markdownIt, { type Env as MarkdownEnv, type MarkdownIt, type Token } from "markdown-it";
import { checkedAddress } from "./address.ts";

export interface MarkdownStyle {
  /** Level of the heading above the text, 1 to 6: the highest heading of the text becomes the next one below, whatever it was. */
  readonly under: number;
  /** Address of a picture by the name the text gives it, or null when no such file lies beside the text. */
  readonly image: (name: string) => string | null;
  /** HTML that stands for a reference `[[…]]`, or null where it leads nowhere: then its words stand. */
  readonly reference: (text: string) => string | null;
  /** Do links keep their addresses? Without them their words stand. */
  readonly links: boolean;
}

interface Env extends MarkdownEnv {
  readonly style: MarkdownStyle;
}

/**
 * The coach's text as HTML. Raw HTML is shown as the characters it is made of; a link keeps its words and loses its address when
 * the address is not one we let through; a picture that does not lie beside the text becomes its description.
 *
 * @param text Markdown; empty text gives an empty string
 */
export function renderMarkdown(text: string, style: MarkdownStyle): string {
  const env: Env = { style };
  return markdown.render(text, env).trim();
}

const markdown = build();

function build(): MarkdownIt {
  const made = markdownIt({ html: false, linkify: false, typographer: false });
  // What stays is decided below, in one place; markdown-it's own list would let unknown schemes through.
  made.validateLink = () => true;
  const { rules } = made.renderer;
  made.core.ruler.push("under-the-page", (state) => {
    const { under } = (state.env as Env).style;
    const headings = state.tokens.filter(({ type }) => type === "heading_open" || type === "heading_close");
    const top = Math.min(...headings.map(levelOf));
    for (const token of headings) token.tag = `h${Math.min(6, levelOf(token) - top + under + 1)}`;
  });
  rules.link_open = (tokens, index, options, env, self) => {
    const token = tokens[index]!;
    const address = (env as Env).style.links ? checkedAddress(String(token.attrGet("href") ?? "")) : null;
    if (address === null) {
      // The closing tag has to match: an unlinked span keeps the words where they are.
      token.tag = "span";
      closingOf(tokens, index).tag = "span";
      token.attrs = null;
    } else {
      token.attrs = [
        ["href", address],
        ["rel", "noreferrer noopener"],
      ];
    }
    return self.renderToken(tokens, index, options);
  };
  rules.image = (tokens, index, _options, env) => {
    const token = tokens[index]!;
    const { escapeHtml } = made.utils;
    const source = (env as Env).style.image(plainName(String(token.attrGet("src") ?? "")));
    if (source === null) return escapeHtml(token.content);
    return `<img src="${escapeHtml(source)}" alt="${escapeHtml(token.content)}" loading="lazy">`;
  };
  made.inline.ruler.before("link", "reference", (state, silent) => {
    const found = /^\[\[([^[\]\n]*)\]\]/.exec(state.src.slice(state.pos, state.posMax));
    if (found === null) return false;
    if (!silent) state.push("reference", "", 0).content = found[1]!.trim();
    state.pos += found[0].length;
    return true;
  });
  rules.reference = (tokens, index, _options, env) => {
    const { content } = tokens[index]!;
    return (env as Env).style.reference(content) ?? made.utils.escapeHtml(content);
  };
  // Tables of the coach's may be wider than a phone.
  rules.table_open = () => '<div class="scroll" tabindex="0" role="group"><table>';
  rules.table_close = () => "</table></div>";
  return made;
}

const levelOf = (heading: Token): number => Number(heading.tag.slice(1));

function closingOf(tokens: readonly Token[], open: number): Token {
  let depth = 0;
  for (let index = open; index < tokens.length; index += 1) {
    depth += tokens[index]!.nesting;
    if (depth === 0) return tokens[index]!;
  }
  throw new Error("a link of the coach's text does not close");
}

/** markdown-it percent-encodes what it reads; file names on disk are not. */
function plainName(source: string): string {
  try {
    return decodeURI(source);
  } catch {
    return source;
  }
}
