/**
 * Runs all tests with many more random cases and every slow one: `npm run test:long`. The seed is new for every
 * commit, and printed; `STEELYARD_SEED` and `STEELYARD_RUNS` set it and the number of times as many.
 */
import { execFileSync, spawnSync } from "node:child_process";

function seedOfCommit(): string {
  try {
    const commit = execFileSync("git", ["rev-parse", "--short=7", "HEAD"], { encoding: "utf8" });
    return String(Number.parseInt(commit, 16));
  } catch {
    // Where there is no repository, one seed is as good as another.
    return "1";
  }
}

const { STEELYARD_SEED = seedOfCommit(), STEELYARD_RUNS = "4" } = process.env;
console.log(`long run: ${STEELYARD_RUNS} times as many random cases, seed ${STEELYARD_SEED}`);
const { status } = spawnSync("npx", ["vitest", "run"], {
  stdio: "inherit",
  env: { ...process.env, STEELYARD_SEED, STEELYARD_RUNS },
});
console.log(`long run: seed ${STEELYARD_SEED}`);
process.exitCode = status ?? 1;
