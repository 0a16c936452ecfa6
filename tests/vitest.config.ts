import { fileURLToPath } from "node:url";
import { defineConfig } from "vitest/config";

const root = fileURLToPath(new URL("..", import.meta.url));

/** these ask what a process of their own has: its memory, what it was asked before, its surroundings */
const APART = [
  "tests/addin/xlsx/read/open-workbook.test.ts",
  "tests/core/cutting/remembered-plan.test.ts",
  "tests/addin/workbench/keep-work.test.ts",
];

export default defineConfig({
  root,
  test: {
    projects: [
      {
        root,
        test: {
          name: "unit",
          include: ["tests/{core,addin,architecture,manifest,corpus,docs}/**/*.test.ts"],
          exclude: APART,
          environment: "node",
          // what is loaded once serves all files of a worker
          isolate: false,
          maxWorkers: "100%",
          setupFiles: ["tests/_support/one-seed.ts"],
          // a hang, and not a slow machine, ends a test
          testTimeout: 300_000,
        },
      },
      {
        root,
        test: {
          name: "apart",
          include: APART,
          environment: "node",
          setupFiles: ["tests/_support/one-seed.ts"],
          testTimeout: 300_000,
          sequence: { groupOrder: 1 },
        },
      },
      {
        root,
        test: {
          name: "browser",
          include: ["tests/browser/**/*.test.ts"],
          environment: "node",
          globalSetup: ["tests/_support/browser-setup.ts"],
          testTimeout: 180_000,
          // the page answers when it can: how fast is not what these tests ask
          expect: { poll: { timeout: 90_000, interval: 100 } },
          hookTimeout: 300_000,
          fileParallelism: false,
          sequence: { groupOrder: 2 },
        },
      },
    ],
  },
});
