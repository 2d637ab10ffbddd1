import { fileURLToPath } from "node:url";
import { test } from "vitest";
import { referenceTests } from "./reference-checks/cases.ts";

// Values from outside programs and standards, each with its source in the file. Another folder can be put in their place.
const folder = process.env.WINTERBOOK_REFERENCE ?? fileURLToPath(new URL("./reference", import.meta.url));

for (const { title, run } of referenceTests(folder)) test(title, run);
