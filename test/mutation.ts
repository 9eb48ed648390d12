/**
 * Breaks the code on purpose, one small change at a time, and counts how many changes the tests of the same
 * floor notice: `npm run test:mutation -- number measure`, all floors unless some are named. A floor has
 * thousands of such changes, so each nth line is tried: `STEELYARD_LINES=1` tries all. Works on a copy.
 */
import { spawnSync } from "node:child_process";
import { mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { join } from "node:path";

/** The floors whose tests have to bite, the folders of tests that hold each, and of how many lines one is tried. */
const floors: { readonly [floor: string]: { readonly tests: readonly string[]; readonly each: number } } = {
  number: { tests: ["number"], each: 2 },
  measure: { tests: ["measure", "number"], each: 4 },
  sheet: { tests: ["sheet", "properties"], each: 16 },
  scale: { tests: ["scale", "properties"], each: 24 },
  person: { tests: ["person"], each: 8 },
  plan: { tests: ["plan", "properties"], each: 32 },
};

interface Report {
  readonly files: { readonly [path: string]: { readonly mutants: readonly Mutant[] } };
}

interface Mutant {
  readonly status:
    | "Killed"
    | "Survived"
    | "NoCoverage"
    | "Timeout"
    | "CompileError"
    | "RuntimeError"
    | "Ignored";
  readonly mutatorName: string;
  readonly replacement?: string;
  readonly location: { readonly start: { readonly line: number } };
}

const folder = ".mutation";
const asked = process.argv.slice(2);
mkdirSync(folder, { recursive: true });
for (const floor of asked.length > 0 ? asked : Object.keys(floors)) {
  const { tests, each } = floors[floor] ?? { tests: [floor], each: 8 };
  const every = Number(process.env.STEELYARD_LINES ?? each);
  const config = join(folder, `${floor}.config.json`);
  const report = join(folder, `${floor}.json`);
  writeFileSync(
    config,
    JSON.stringify({
      mutate: linesOf(join("src", floor), every),
      testRunner: "vitest",
      plugins: ["@stryker-mutator/vitest-runner"],
      vitest: { related: false },
      coverageAnalysis: "perTest",
      ignoreStatic: true,
      concurrency: Number(process.env.STEELYARD_WORKERS ?? 2),
      ignorePatterns: [folder, "dist", "docs"],
      tempDirName: join(folder, "copy"),
      reporters: ["progress-append-only", "json"],
      jsonReporter: { fileName: report },
      timeoutMS: 20_000,
    }),
  );
  const { status } = spawnSync("npx", ["stryker", "run", config], {
    stdio: "inherit",
    env: { ...process.env, STEELYARD_TESTS: tests.join(",") },
  });
  if (status !== 0) process.exit(status ?? 1);
  tell(floor, every, JSON.parse(readFileSync(report, "utf8")));
}
rmSync(join(folder, "copy"), { recursive: true, force: true });

/** Each nth line of the files of a folder, counted through all of them. */
function linesOf(root: string, every: number): string[] {
  let n = 0;
  return readdirSync(root, { recursive: true, encoding: "utf8" })
    .filter((name) => name.endsWith(".ts"))
    .sort()
    .flatMap((name) => {
      const path = join(root, name).replaceAll("\\", "/");
      return readFileSync(path, "utf8")
        .split("\n")
        .flatMap((_, i) => {
          n += 1;
          return n % every === 0 ? [`${path}:${i + 1}-${i + 1}`] : [];
        });
    });
}

/** Prints what was noticed, and each change that was not. */
function tell(floor: string, every: number, { files }: Report): void {
  const all = Object.entries(files).flatMap(([path, { mutants }]) => mutants.map((m) => ({ path, ...m })));
  const of = (...states: readonly Mutant["status"][]) => all.filter(({ status }) => states.includes(status));
  const noticed = of("Killed", "Timeout").length;
  const missed = of("Survived", "NoCoverage");
  for (const { path, status, mutatorName, replacement, location } of missed)
    console.log(`${status} ${path}:${location.start.line} ${mutatorName} ${replacement ?? ""}`);
  const share = ((100 * noticed) / (noticed + missed.length)).toFixed(1);
  console.log(
    `${floor}: ${noticed} of ${noticed + missed.length} changes noticed, ${share} %, one line in ${every}`,
  );
}
