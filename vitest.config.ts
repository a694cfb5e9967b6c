import { availableParallelism } from "node:os";
import { defineConfig } from "vitest/config";

export default defineConfig({
  test: {
    projects: [
      {
        test: {
          name: "unit",
          include: ["tests/{reference,contract,property,golden,types,hostile}/**/*.test.ts"],
          testTimeout: 180_000,
          hookTimeout: 180_000,
          // The usual number leaves one core idle, which on two is half of them.
          maxWorkers: availableParallelism(),
          sequence: { groupOrder: 0 },
        },
      },
      {
        test: {
          name: "browser",
          include: ["tests/browser/**/*.test.ts"],
          globalSetup: ["tests/browser/support/buildOnce.ts"],
          testTimeout: 240_000,
          hookTimeout: 240_000,
          fileParallelism: false,
          sequence: { groupOrder: 1 },
        },
      },
    ],
  },
});
