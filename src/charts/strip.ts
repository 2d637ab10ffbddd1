import { ChartError } from "./chart.ts";
import { hoist } from "./hoist.ts";
import { roundNumbers } from "./round-numbers.ts";
import { parseSvg, type SvgElement, type SvgNode, writeSvg } from "./svg-tree.ts";

/** Attributes of Vega's that a page does not need: its own English for screen readers, class names, pointers, sizes, style. */
const DROPPED = /^(role|aria-.*|class|style|pointer-events|href|xlink:href|xmlns:xlink|version)$/;
/** Values that are what SVG assumes anyway where Vega writes them. */
const ASSUMED: Readonly<Record<string, string>> = {
  opacity: "1",
  "stroke-miterlimit": "4",
  transform: "translate(0,0)",
};
/** Faults that would reach a reader as text or as a broken shape. */
const BROKEN = /\b(NaN|Infinity|undefined)\b/;

/**
 * A Vega drawing made fit for a page: no English of Vega's own (role, aria-*), no classes, no style, no links, no fixed size,
 * no empty or invisible elements, no groups without effect, every number to a tenth of a px, ids renumbered and starting with
 * the chart's id. What is left draws the same picture.
 *
 * @param id  of the chart: letters, digits, hyphens
 * @param svg as Vega's SVG renderer writes it
 * @throws {ChartError} a value that is not a number in the drawing
 */
export function stripSvg(id: string, svg: string): string {
  const root = parseSvg(svg);
  const found = BROKEN.exec(svg);
  if (found) throw new ChartError(id, `the drawing holds ${found[0]}`);
  const ids = new Map<string, string>();
  clean(root, id, ids);
  root.attributes.delete("width");
  root.attributes.delete("height");
  root.attributes.set("text-rendering", "geometricPrecision");
  hoist(root);
  unwrap(root);
  return writeSvg(root);
}

function clean(element: SvgElement, id: string, ids: Map<string, string>): void {
  for (const [name, value] of [...element.attributes]) {
    if (DROPPED.test(name) || ASSUMED[name] === value) element.attributes.delete(name);
    else element.attributes.set(name, cleanValue(name, value, id, ids));
  }
  if (element.attributes.get("stroke") === undefined) element.attributes.delete("stroke-width");
  asCircle(element);
  foldTranslate(element);
  if (element.tag === "text" && element.attributes.has("stroke")) element.attributes.set("paint-order", "stroke");
  const kept = element.children.flatMap((child) => cleanChild(child, id, ids));
  element.children.splice(0, element.children.length, ...kept);
}

/** A child without its needless parts, or nothing. */
function cleanChild(child: SvgNode, id: string, ids: Map<string, string>): SvgNode[] {
  if (typeof child === "string") return [child];
  if (child.attributes.get("display") === "none" || isFrame(child)) return [];
  clean(child, id, ids);
  return child.tag === "g" && child.children.length === 0 ? [] : [child];
}

/** Puts what a group without attributes holds in its place. */
function unwrap(element: SvgElement): void {
  const flat = element.children.flatMap((child) => {
    if (typeof child === "string") return [child];
    unwrap(child);
    return child.tag === "g" && child.attributes.size === 0 ? child.children : [child];
  });
  element.children.splice(0, element.children.length, ...flat);
}

/** The rectangle that Vega puts behind a group, when nothing colours it. */
function isFrame(element: SvgElement): boolean {
  return (
    /^(background|foreground)$/.test(element.attributes.get("class") ?? "") &&
    !element.attributes.has("fill") &&
    !element.attributes.has("stroke")
  );
}

function cleanValue(name: string, value: string, id: string, ids: Map<string, string>): string {
  const own = (old: string) => {
    if (!ids.has(old)) ids.set(old, `${id}-${ids.size + 1}`);
    return ids.get(old)!;
  };
  if (name === "id") return own(value);
  if (value.includes("url(#")) return value.replace(/url\(#([^)]*)\)/g, (_, old: string) => `url(#${own(old)})`);
  if (name === "font-size") return value.replace(/px$/, "");
  return roundNumbers(name, value);
}

/** Vega draws a circle as four numbers an arc; SVG has a shorter word for it. */
function asCircle(element: SvgElement): void {
  const arc = /^M([\d.]+),0A\1,\1,0,1,1,-\1,0A\1,\1,0,1,1,\1,0Z?$/.exec(element.attributes.get("d") ?? "");
  const [x, y] = translation(element) ?? [];
  if (element.tag !== "path" || !arc || x === undefined || y === undefined) return;
  const rest = [...element.attributes].filter(([name]) => name !== "d" && name !== "transform");
  element.attributes.clear();
  for (const [name, value] of [["cx", x], ["cy", y], ["r", arc[1]!], ...rest] as const)
    element.attributes.set(name, value);
  element.tag = "circle";
}

/** A shift of a line or a text becomes its coordinates. */
function foldTranslate(element: SvgElement): void {
  const shift = translation(element);
  if (shift === null) return;
  const [x, y] = shift;
  const a = element.attributes;
  if (element.tag === "text" && !a.has("x") && !a.has("y")) {
    a.delete("transform");
    a.set("x", x);
    a.set("y", y);
  }
  if (element.tag === "line") {
    const plus = (from: string, by: string | undefined) => roundNumbers("x", String(Number(from) + Number(by ?? 0)));
    const ends = { x1: x, y1: y, x2: plus(x, a.get("x2")), y2: plus(y, a.get("y2")) };
    const rest = [...a].filter(([name]) => name !== "transform" && !(name in ends));
    a.clear();
    for (const [name, value] of [...Object.entries(ends), ...rest]) a.set(name, value);
  }
}

function translation(element: SvgElement): [string, string] | null {
  const found = /^translate\((-?[\d.]+),(-?[\d.]+)\)$/.exec(element.attributes.get("transform") ?? "");
  return found ? [found[1]!, found[2]!] : null;
}
