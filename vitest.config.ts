import { defineConfig } from "vitest/config";

const conditions = ["source", "module", "node", "development|production"];
const node = (name: string, include: string[]) => ({
  resolve: { conditions },
  ssr: { resolve: { conditions } },
  test: { name, include, environment: "node", setupFiles: ["tests/setup.ts"], testTimeout: 60_000 },
});

export default defineConfig({
  test: {
    reporters: ["default", "./tests/tally.ts"],
    projects: [
      node("units", ["tests/units/**/*.test.ts"]),
      node("reference", ["tests/reference/**/*.test.ts"]),
      node("laws", ["tests/laws/**/*.test.ts"]),
      {
        resolve: { conditions },
        ssr: { resolve: { conditions } },
        test: {
          name: "browser",
          include: ["tests/browser/**/*.test.ts"],
          environment: "node",
          testTimeout: 60_000,
          hookTimeout: 180_000,
          fileParallelism: false,
          retry: 1, // a real browser on a busy machine: the report tells which needed the second try
        },
      },
    ],
    coverage: {
      provider: "v8",
      include: ["packages/*/src/**/*.ts", "apps/cli/src/**/*.ts"],
      reporter: ["text-summary", "html"],
      // measured 91, 84, 90, 92 when they were set: raise them with the measure, never lower them
      thresholds: { statements: 90, branches: 83, functions: 88, lines: 91 },
    },
  },
});
