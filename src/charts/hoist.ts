import type { SvgElement } from "./svg-tree.ts";

/** Presentation attributes that children inherit. */
const INHERITED = [
  "fill",
  "fill-opacity",
  "stroke",
  "stroke-opacity",
  "stroke-width",
  "stroke-dasharray",
  "stroke-linecap",
  "stroke-linejoin",
  "paint-order",
  "text-anchor",
  "font-family",
  "font-size",
  "font-weight",
] as const;
/** Of those, the ones that only texts heed: other elements neither need nor disturb them. */
const OF_TEXT = new Set<string>(["text-anchor", "font-family", "font-size", "font-weight", "paint-order"]);

/**
 * Moves an inherited attribute that all children of an element share up to the element, from the leaves on: shorter, and the same
 * picture. All that heed an attribute must share it, so what the element itself said of it was unheard.
 */
export function hoist(element: SvgElement): void {
  const children = element.children.filter((child): child is SvgElement => typeof child === "object");
  for (const child of children) hoist(child);
  if (element.tag === "text" || children.length === 0) return;
  for (const name of INHERITED) {
    const concerned = OF_TEXT.has(name) ? children.filter(holdsText) : children;
    const value = concerned[0]?.attributes.get(name);
    if (value === undefined || concerned.some((child) => child.attributes.get(name) !== value)) continue;
    element.attributes.set(name, value);
    for (const child of concerned) child.attributes.delete(name);
  }
}

function holdsText(element: SvgElement): boolean {
  return element.tag === "text" || element.children.some((child) => typeof child === "object" && holdsText(child));
}
