import { readFileSync } from "node:fs";
import * as z from "zod";
import type { ReferenceTest } from "./cases.ts";
import { DOMAIN_CHECKS, type Inputs } from "./domain.ts";
import { convert } from "./units.ts";

const Quantity = z.strictObject({ value: z.union([z.number(), z.string()]), unit: z.string().min(1) });

const DomainCheck = z.strictObject({
  id: z.string().min(1),
  kind: z.string().min(1),
  formula: z.string(),
  inputs: z.record(z.string(), Quantity),
  expected: Quantity,
  tolerance: z.number().nonnegative(),
  source: z.string().min(1),
  provenance: z.enum(["published", "derived"]),
  fromMemory: z.boolean(),
  verified: z.unknown(),
  note: z.string().optional(),
});
type DomainCheck = z.infer<typeof DomainCheck>;

const DomainFile = z.strictObject({
  schemaVersion: z.literal(1),
  about: z.string(),
  units: z.string(),
  models: z.record(z.string(), z.string()),
  checks: z.array(z.unknown()).min(1),
});

/** Every check of the file as a test; one failing test where the file is none. */
export function domainTests(fullPath: string): ReferenceTest[] {
  let file: z.infer<typeof DomainFile>;
  try {
    file = DomainFile.parse(JSON.parse(readFileSync(fullPath, "utf8")));
  } catch (cause) {
    const run = () => {
      throw new Error("domain-checks.json is not in its format", { cause });
    };
    return [{ title: "domain-checks.json", run }];
  }
  return file.checks.map((entry, index) => {
    const named = z.looseObject({ id: z.string().min(1) }).safeParse(entry);
    return {
      title: `domain/${named.success ? named.data.id : `check ${index + 1}`}`,
      run: () => runCheck(DomainCheck.parse(entry)),
    };
  });
}

function inputsOf({ inputs, expected, formula }: DomainCheck): Inputs {
  const read = (name: string) => {
    const found = inputs[name];
    if (found === undefined) throw new Error(`the check has no input "${name}"`);
    return found;
  };
  return {
    take: (name, unit) => {
      const { value, unit: written } = read(name);
      if (typeof value !== "number") throw new Error(`"${name}" is not a number`);
      return convert(value, written, unit);
    },
    word: (name) => String(read(name).value),
    has: (name) => name in inputs,
    names: Object.keys(inputs),
    unitOf: (name) => read(name).unit,
    wanted: expected.unit,
    formula,
  };
}

function runCheck(check: DomainCheck): void {
  const run = DOMAIN_CHECKS.get(check.kind);
  if (run === undefined) throw new Error(`no check is known for the kind "${check.kind}"`);
  const { value: wanted, unit } = check.expected;
  const found = run(inputsOf(check));
  if (typeof found === "string" || typeof wanted === "string") {
    if (found !== wanted) throw new Error(`expected ${wanted}, got ${String(found)}`);
    return;
  }
  const got = convert(found[0], found[1], unit);
  if (!(Math.abs(got - wanted) <= check.tolerance)) {
    throw new Error(`expected ${wanted} ${unit} within ${check.tolerance}, got ${got}`);
  }
}
