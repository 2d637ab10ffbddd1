import type { Page } from "playwright-core";

/**
 * How many sheets an address prints on. A page may be loaded before its fonts are, and a stand-in font is wider than ours: the
 * fonts are waited for, so that what is counted is what people print.
 */
export async function sheets(page: Page, address: string, format: "A4" | "Letter"): Promise<number> {
  await page.goto(address);
  await page.evaluate("Promise.all([...document.fonts].map((font) => font.load()))");
  const pdf = (await page.pdf({ format, printBackground: true })).toString("latin1");
  return pdf.match(/\/Type\s*\/Page\b/g)?.length ?? 0;
}
