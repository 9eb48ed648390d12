import { cpSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import ts from "typescript";
import { entries } from "../../entries.ts";
import type { Scratch } from "./install.ts";
import { Failed, run, runTool } from "./run.ts";

const here = (name: string): string => fileURLToPath(new URL(name, import.meta.url));

/** Imports each subpath of the exports map by its public name. */
export function checkImports({ folder, manifest }: Scratch): string {
  const entries = Object.keys(manifest.exports);
  for (const entry of entries) {
    const name = `${manifest.name}${entry.slice(1)}`;
    const how = entry.endsWith(".json") ? ', { with: { type: "json" } }' : "";
    const script = `const face = await import("${name}"${how}); if (Object.keys(face).length === 0) throw new Error("exports nothing");`;
    run(process.execPath, ["--no-warnings", "--input-type=module", "--eval", script], folder);
  }
  return entries.join(" ");
}

/** What the types call a value has to be one: `import { Sheet }` may not compile and then fail. */
export function checkValues({ folder, manifest }: Scratch): string {
  const entries = Object.keys(manifest.exports).filter((entry) => !entry.endsWith(".json"));
  const checked = entries.map((entry) => {
    const base = join(
      folder,
      "node_modules",
      manifest.name,
      "dist",
      entry === "." ? "index" : entry.slice(2),
    );
    const program = ts.createProgram([`${base}.d.ts`], { skipLibCheck: true });
    const source = program.getSourceFile(`${base}.d.ts`);
    const face = source && program.getTypeChecker().getSymbolAtLocation(source);
    if (!face) throw new Failed(`${base}.d.ts declares nothing`);
    const checker = program.getTypeChecker();
    const declared = checker.getExportsOfModule(face).flatMap((symbol) => {
      const origin = symbol.flags & ts.SymbolFlags.Alias ? checker.getAliasedSymbol(symbol) : symbol;
      return origin.flags & ts.SymbolFlags.Value ? symbol.name : [];
    });
    const script = `console.log(Object.keys(await import("${manifest.name}${entry.slice(1)}")).join())`;
    const there = run(process.execPath, ["--no-warnings", "--input-type=module", "--eval", script], folder);
    const missing = declared.filter((name) => !there.trim().split(",").includes(name));
    if (missing.length > 0) throw new Failed(`declared, but not exported: ${missing.join(", ")}`);
    return declared.length;
  });
  return `${checked.join(" and ")} values`;
}

/** CommonJS users load the same module through `require`, which Node does from 20.19 on. */
export function checkRequire({ folder, manifest }: Scratch): string {
  const { name } = manifest;
  const script = `
    const counts = ${JSON.stringify(entries.map((entry) => entry.name))}.map((name) => Object.keys(require(name)).length);
    import("${name}").then((imported) => {
      if (imported.SteelyardError !== require("${name}").SteelyardError) throw new Error("two copies of one class");
      console.log(counts.join(" and "), "exports");
    });`;
  return run(process.execPath, ["--no-warnings", "--input-type=commonjs", "--eval", script], folder);
}

const strict = {
  strict: true,
  exactOptionalPropertyTypes: true,
  noUncheckedIndexedAccess: true,
  noPropertyAccessFromIndexSignature: true,
  verbatimModuleSyntax: true,
  skipLibCheck: false,
  target: "ES2022",
  lib: ["ES2022"],
  types: [],
};

const settings: readonly (readonly [module: string, resolution: string])[] = [
  ["node16", "node16"],
  ["nodenext", "nodenext"],
  ["esnext", "bundler"],
];

/**
 * Compiles a CommonJS program with `import … = require(…)` and runs it. Only under nodenext: node16
 * stands for Node 16, which could not require an ES module (TypeScript's reference for `module`).
 */
export function checkRequiringConsumer({ folder }: Scratch): string {
  cpSync(here("consumer/galley.cts"), join(folder, "galley.cts"));
  const compilerOptions = { ...strict, module: "nodenext", moduleResolution: "nodenext", outDir: "out/cts" };
  writeFileSync(
    join(folder, "tsconfig.cts.json"),
    JSON.stringify({ compilerOptions, files: ["galley.cts"] }),
  );
  runTool("typescript", "tsc", ["--project", "tsconfig.cts.json"], folder);
  return printedAsItShould("out/cts/galley.cjs", folder);
}

function printedAsItShould(program: string, folder: string): string {
  const printed = run(process.execPath, ["--no-warnings", program], folder).trim();
  if (printed !== "as it should be")
    throw new Failed(`${program}: the program printed ${JSON.stringify(printed)}`);
  return program;
}

/** Compiles a program written against the installed types, declarations checked too, and runs it. */
export function checkConsumer({ folder }: Scratch): string {
  cpSync(here("consumer/camp.ts"), join(folder, "camp.ts"));
  for (const [module, moduleResolution] of settings) {
    const config = `tsconfig.${moduleResolution}.json`;
    const compilerOptions = { ...strict, module, moduleResolution, outDir: `out/${moduleResolution}` };
    writeFileSync(join(folder, config), JSON.stringify({ compilerOptions, files: ["camp.ts"] }));
    runTool("typescript", "tsc", ["--project", config], folder);
    printedAsItShould(`out/${moduleResolution}/camp.js`, folder);
  }
  return settings.map(([, resolution]) => resolution).join(" ");
}
