import { defineConfig } from "vitest/config";

export default defineConfig({
  test: {
    projects: [
      {
        test: {
          name: "unit",
          include: ["packages/**/*.test.ts", "apps/**/*.test.ts", "tests/**/*.test.ts", "tools/**/*.test.ts"],
          environment: "node",
          setupFiles: ["tests/depth.ts"],
          testTimeout: 120_000,
        },
      },
      {
        test: {
          name: "journeys",
          include: ["apps/field/journeys/**/*.journey.ts"],
          environment: "node",
          fileParallelism: false,
          testTimeout: 120_000,
          hookTimeout: 60_000,
          globalSetup: ["apps/field/journeys/serve.ts"],
        },
      },
      {
        test: {
          name: "shots",
          include: ["apps/field/shots/**/*.shots.ts"],
          environment: "node",
          fileParallelism: false,
          globalSetup: ["apps/field/journeys/serve.ts"],
        },
      },
    ],
  },
});
