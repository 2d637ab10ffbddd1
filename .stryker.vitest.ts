import { defineConfig } from "vitest/config";

/** Tests of the statistics alone, for mutation testing; simulations are left out. */
export default defineConfig({
  test: {
    include: ["tests/stats/**/*.test.ts", "tests/reference.test.ts"],
    exclude: ["tests/stats/reference-checks.test.ts"],
    testTimeout: 60_000,
  },
});
