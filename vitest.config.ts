import { fileURLToPath } from "node:url";
import { defineConfig } from "vitest/config";

const at = (path: string): string => fileURLToPath(new URL(path, import.meta.url));

export default defineConfig({
  resolve: {
    alias: [
      { find: /^steelyard\/(.+)$/, replacement: at("src/$1.ts") },
      { find: /^steelyard$/, replacement: at("src/index.ts") },
    ],
  },
  test: {
    // A run of mutations names the folders that it needs.
    include: (process.env.STEELYARD_TESTS ?? "**").split(",").map((folder) => `test/${folder}/**/*.test.ts`),
    benchmark: { include: ["test/benches/**/*.bench.ts"] },
    reporters: ["default", at("test/reporter.ts")],
    setupFiles: [at("test/setup.ts")],
    testTimeout: process.env.STEELYARD_RUNS === undefined ? 60_000 : 600_000,
    pool: "threads",
    maxWorkers: 2,
    // Files share what a worker has loaded: nothing in src or test keeps state between tests.
    isolate: false,
  },
});
