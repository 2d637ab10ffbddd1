import { readFileSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import { POLICY, SCRIPT_POLICY } from "../../src/site/components/document.tsx";
import { HEADERS, headersFile } from "../../src/site/headers.ts";

const header = (wanted: string) => HEADERS.find(([name]) => name === wanted)?.[1] ?? "";
/** A policy as directive -> sources. */
const directives = (policy: string) =>
  new Map(
    policy.split(";").map((part) => {
      const [name = "", ...sources] = part.trim().split(/\s+/);
      return [name, new Set(sources)] as const;
    }),
  );

test("the header's policy lets pages do what their own lets them, runs nothing inline and is framed by nobody", () => {
  const host = directives(header("Content-Security-Policy"));
  for (const policy of [POLICY, SCRIPT_POLICY])
    for (const [name, sources] of directives(policy))
      for (const source of sources) expect(host.get(name), `${name} ${source}`).toContain(source);
  expect(header("Content-Security-Policy")).not.toMatch(/unsafe|https?:|\*/);
  expect(host.get("frame-ancestors")).toEqual(new Set(["'none'"]));
});

test("the file names every header once for all paths, and how long files may be kept", () => {
  const [all = "", ...caching] = headersFile().split("\n\n");
  expect(all.split("\n")).toEqual(["/*", ...HEADERS.map(([name, value]) => `  ${name}: ${value}`)]);
  expect(caching.join("\n")).toMatch(
    /\/assets\/\*\n {2}Cache-Control: public[\s\S]*\/r\/\*\n {2}Cache-Control: private, no-cache/,
  );
});

test("the guide for one's own server names the same headers with the same values", () => {
  const guide = readFileSync(join(import.meta.dirname, "../../README.md"), "utf8");
  for (const [name, value] of HEADERS) {
    const line = guide.split("\n").find((one) => one.trim().startsWith(`add_header ${name} `)) ?? "";
    expect(line, name).toContain(value);
  }
});
