import { defineConfig } from "vitest/config";

export default defineConfig({
  test: {
    include: ["tests/**/*.test.ts", "tests/**/*.test.tsx"],
    exclude: ["**/node_modules/**", "**/.stryker-tmp*/**"],
    testTimeout: 60_000,
    hookTimeout: 120_000,
    // Two cores: more workers than that only swap places with each other.
    maxWorkers: 2,
  },
});
