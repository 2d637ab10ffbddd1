import { expect, test } from "vitest";
import { launch } from "../../src/cli/chromium.ts";
import { dated, type PdfJob, pdfPrinter } from "../../src/publish/pdf.ts";
import { printedPages } from "../../src/site/site.ts";
import { fixtureInput, renderFixtures } from "../site/fixture-site.ts";

const text = (body: string | Uint8Array | undefined): string => Buffer.from(body ?? "").toString("latin1");
const jobsOf = (part: string): PdfJob[] =>
  printedPages(fixtureInput)
    .filter(({ token }) => token.includes(part))
    .flatMap(({ page, reader, language }) =>
      (["A4", "Letter"] as const).map((paper) => ({ page, paper, path: `pdf/x-${reader}-${language}-${paper}.pdf` })),
    );

test("reports are printed as tagged PDF with title, language and outline, dated as told, the same bytes again", async () => {
  const site = await renderFixtures();
  const print = pdfPrinter(launch);
  const told: number[] = [];
  const made = await print(site, jobsOf("-full-"), "2026-02-20", (done) => told.push(done));
  expect(made.map(({ path }) => path)).toEqual(jobsOf("-full-").map(({ path }) => path));
  expect(told).toEqual(made.map((_, i) => i + 1));
  for (const { path, body } of made) {
    const pdf = text(body);
    expect(pdf, path).toMatch(/\/MarkInfo\s*<<[^>]*\/Marked true/);
    expect(pdf, path).toMatch(path.includes("-es-") ? /\/Lang \(es\)/ : /\/Lang \(en\)/);
    expect(pdf, path).toMatch(/\/Title /);
    expect(pdf, path).toMatch(/\/Outlines /);
    expect(pdf.match(/\/(?:CreationDate|ModDate) \(D:\d{14}/g)?.every((date) => date.endsWith("20260220000000"))).toBe(
      true,
    );
    if (path.includes("-club-")) expect(pdf.match(/\/Type\s*\/Page\b/g), path).toHaveLength(1);
  }
  const again = await print(site, jobsOf("-full-").slice(0, 2), "2026-02-20", () => {});
  for (const [i, { body }] of again.entries()) expect(text(body) === text(made[i]?.body)).toBe(true);
}, 120_000);

test("no page to print needs no browser, and a page that asks for what is not there is refused", async () => {
  const none = pdfPrinter(() => Promise.reject(new Error("a browser was asked for")));
  expect(await none([], [], "2026-02-20", () => {})).toEqual([]);
  const page = { path: "a.html", body: '<title>a</title><img src="gone.png" alt="">' };
  const print = pdfPrinter(launch);
  await expect(print([page], [{ page: "a.html", paper: "A4", path: "a.pdf" }], "2026-02-20", () => {})).rejects.toThrow(
    /gone\.png/,
  );
}, 60_000);

test("dates are written over in place", () => {
  const pdf = "/CreationDate (D:20261128125500+00'00')\n/ModDate (D:20261128125501+00'00')";
  const done = Buffer.from(dated(Buffer.from(pdf), "2026-02-20")).toString();
  expect(done).toBe("/CreationDate (D:20260220000000+00'00')\n/ModDate (D:20260220000000+00'00')");
});
