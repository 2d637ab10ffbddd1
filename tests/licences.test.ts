import { readFileSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";

const root = join(import.meta.dirname, "..");
interface Entry {
  readonly version: string;
  readonly license?: string;
  readonly dev?: boolean;
  readonly devOptional?: boolean;
}
const { packages } = JSON.parse(readFileSync(join(root, "package-lock.json"), "utf8")) as {
  packages: Record<string, Entry>;
};

/** Licences, by their SPDX names, that ask for nothing but to be named: what a facility may use and hand on without a thought. */
const PLAIN = new Set([
  ...["MIT", "ISC", "BSD-2-Clause", "BSD-3-Clause", "0BSD", "Apache-2.0", "BlueOak-1.0.0", "Unlicense", "CC0-1.0"],
  ...["BSL-1.0", "Python-2.0", "PSF-2.0", "OFL-1.1"],
]);
const allowed = (licence: string): boolean =>
  licence
    .replaceAll(/[()]/g, "")
    .split(" AND ")
    .every((part) => part.split(" OR ").some((one) => PLAIN.has(one.trim())));

/** All that runs where Winterbook runs; what only its developers need is theirs to judge. */
const shipped = Object.entries(packages).filter(([path, { dev, devOptional }]) => path !== "" && !dev && !devOptional);

test("everything that runs has a licence, and a plain one", () => {
  expect(shipped.length).toBeGreaterThan(100);
  const others = shipped.flatMap(([path, { license = "none" }]) => (allowed(license) ? [] : [`${path}: ${license}`]));
  expect(others).toEqual([]);
});

test("a licence that binds is not taken for a plain one", () => {
  expect(["GPL-3.0", "MIT AND GPL-3.0", "none"].filter(allowed)).toEqual([]);
  expect(["MIT OR GPL-3.0", "(MIT OR Apache-2.0)", "Apache-2.0 AND BSL-1.0"].every(allowed)).toBe(true);
});

test("what runs is listed for contributors with the reason why", () => {
  const guide = readFileSync(join(root, "DEVELOPERS.md"), "utf8");
  const { dependencies } = JSON.parse(readFileSync(join(root, "package.json"), "utf8")) as {
    dependencies: Record<string, string>;
  };
  const unlisted = Object.keys(dependencies).filter(
    (name) =>
      !guide.includes(`\`${name}\``) &&
      !(name.startsWith("@stdlib/stats-base-dists-") && guide.includes("`@stdlib/stats-base-dists-*`")),
  );
  expect(unlisted).toEqual([]);
});

test("beside each stands its licence as it was installed, its size and its last release", () => {
  const rows = readFileSync(join(root, "DEVELOPERS.md"), "utf8")
    .split("\n")
    .filter((line) => line.startsWith("| `"))
    .map((line) => line.split("|").map((part) => part.trim()));
  const { dependencies } = JSON.parse(readFileSync(join(root, "package.json"), "utf8")) as {
    dependencies: Record<string, string>;
  };
  for (const name of Object.keys(dependencies)) {
    const listed = name.replace(/^(@stdlib\/stats-base-dists-).*/, "$1*");
    const row = rows.find(([, names = "", , licence]) => names.includes(`\`${listed}\``) && licence !== undefined);
    const { license } = JSON.parse(readFileSync(join(root, "node_modules", name, "package.json"), "utf8"));
    expect(row?.[3]?.split(", "), name).toContain(license);
    expect(row?.[2], name).toMatch(/^[\d.]+ MB$/);
    expect(row?.[4], name).toMatch(/^20\d\d-\d\d$/);
  }
});
