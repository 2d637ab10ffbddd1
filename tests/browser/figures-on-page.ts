import type { Page } from "playwright-core";

export interface FoundFigure {
  readonly at: string | null;
  readonly value: string | null;
  readonly text: string;
  /** A share shown as so many of this number; 1 where the value is shown itself. */
  readonly per: number;
}

/** Every `<data>` of the page. */
export function figuresOn(page: Page): Promise<FoundFigure[]> {
  return page.evaluate(`[...document.querySelectorAll("data")].map((element) => ({
    at: element.getAttribute("data-at"),
    value: element.getAttribute("value"),
    text: element.textContent ?? "",
    per: Number(element.getAttribute("data-per") ?? "1"),
  }))`);
}

/**
 * Text that holds a digit and stands where none may: outside figures, days, the words of people, and pictures.
 * Folded details are looked through as well.
 */
export function strayDigits(page: Page): Promise<string[]> {
  return page.evaluate(`(() => {
    const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
    const found = [];
    for (let node = walker.nextNode(); node !== null; node = walker.nextNode()) {
      if (!/[0-9]/.test(node.data)) continue;
      if (node.parentElement.closest("data, time, [data-coach], [data-own], figure[role=img]") === null) found.push(node.data);
    }
    return found;
  })()`);
}
