/**
 * Checks the package as a stranger gets it: packs it, installs the tarball in a project of its own,
 * and tries it there. Run after the build, by `npm run package`.
 */
import { existsSync, rmSync } from "node:fs";
import { join } from "node:path";
import { checkBuilt, timeImports } from "./built.ts";
import { checkBrowser, checkFixtures, checkFoodsStayOut, checkNoSideEffects } from "./bundles.ts";
import {
  checkConsumer,
  checkImports,
  checkRequire,
  checkRequiringConsumer,
  checkValues,
} from "./consumer.ts";
import { checkContents } from "./contents.ts";
import { installTarball, type Scratch } from "./install.ts";
import { Failed, root, runTool } from "./run.ts";

/** What a check has to say: a word or two beside its name, or lines below it. */
type Said = string | readonly string[];

const checks: readonly (readonly [string, (scratch: Scratch) => Said | Promise<Said>])[] = [
  [
    "publint finds nothing, in strict mode",
    ({ tarball, folder }) => runTool("publint", "publint", ["run", tarball, "--strict"], folder),
  ],
  ["the types resolve for ES module users (are-the-types-wrong)", arethetypeswrong],
  ["dist holds what it should and nothing else", checkContents],
  ["every entry can be imported", checkImports],
  ["what the types call a value is one", checkValues],
  ["the main entry can be required", checkRequire],
  ["a strict consumer compiles, and runs", checkConsumer],
  ["a strict CommonJS consumer compiles, and runs", checkRequiringConsumer],
  ["small programs stay small, and run without Node's names", checkFixtures],
  ["they run in Chromium, in a page and in a worker under a strict policy", checkBrowser],
  ["what is taken from a built entry is no larger than from single files", checkBuilt],
  ["importing takes a known time", timeImports],
  ["starter foods stay out of the main entry", checkFoodsStayOut],
  ["nothing happens on import", checkNoSideEffects],
];

function arethetypeswrong({ tarball, folder }: Scratch): string {
  const options = [
    "--profile",
    "esm-only",
    "--no-definitely-typed",
    "--format",
    "ascii",
    "--no-color",
    "--no-emoji",
  ];
  return runTool("@arethetypeswrong/cli", "attw", [tarball, ...options], folder);
}

async function main(): Promise<void> {
  if (!existsSync(join(root, "dist/index.js")))
    throw new Failed("dist is missing: run `npm run build` first");
  const scratch = installTarball();
  try {
    for (const [name, check] of checks) {
      try {
        const said = await check(scratch);
        const beside = typeof said === "string" ? said.trim() : "";
        console.log(`ok  ${name}${beside && !beside.includes("\n") ? ` (${beside})` : ""}`);
        if (typeof said !== "string") for (const line of said) console.log(`      ${line}`);
      } catch (error) {
        process.exitCode = 1;
        console.error(
          `NOT OK  ${name}\n${error instanceof Failed ? error.message : (error as Error).stack}\n`,
        );
      }
    }
  } finally {
    rmSync(scratch.folder, { recursive: true, force: true });
  }
}

main().catch((error: unknown) => {
  process.exitCode = 1;
  console.error(`NOT OK  ${error instanceof Failed ? error.message : (error as Error).stack}`);
});
