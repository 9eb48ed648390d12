/**
 * Runs every `ts` block of the pages and every example of the docstrings, and holds what they print
 * against what they say they print. The convention is in DEVELOPERS.md, "Examples in the docs".
 */
import { existsSync, readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import ts from "typescript";
import { describe, expect, it } from "vitest";
import { entries } from "../../entries.ts";
import { root, sourceFiles } from "../sources.ts";
import { docstringExamples, examplesIn } from "./extract.ts";
import { type Load, play } from "./play.ts";
import { headerFor, scopeOf } from "./scope.ts";

const guides = readdirSync(join(root, "examples/guides")).map((name) => `examples/guides/${name}`);
const pages = ["README.md", "DEVELOPERS.md", ...guides];
const publicNames = new Map(entries.map(({ name, file }) => [name, join(root, `src/${file}.ts`)]));

const load: Load = (name) => {
  const path = publicNames.get(name) ?? name;
  return import(/* @vite-ignore */ path.startsWith("/") ? pathToFileURL(path).href : path);
};

const files = sourceFiles();
const faces = files.filter(({ path }) => entries.some(({ file }) => path === `${file}.ts`));

const ofPages = pages
  .filter((page) => existsSync(join(root, page)))
  .flatMap((page) => examplesIn(readFileSync(join(root, page), "utf8"), page));
const ofDocstrings = files.flatMap((file) => docstringExamples(file.text, `src/${file.path}`));

const scopes = new Map(files.map((file) => [`src/${file.path}`, scopeOf(file, files, faces)]));
const examples = [...ofPages, ...ofDocstrings].map((example) => {
  const scope = scopes.get(example.file); // a page has none: what it uses it imports
  return {
    name: `${example.file}:${example.line}`,
    example,
    header: scope ? headerFor(example.code, scope) : "",
  };
});

describe("examples", () => {
  it("are found on the pages and in the source", () => {
    expect(ofPages.length).toBeGreaterThan(0);
    expect(ofDocstrings.length).toBeGreaterThan(10);
  });

  it.each(examples)("$name does what it says", async ({ example, header }) => {
    expect(await play(example, header, load)).toEqual([]);
  });

  it("compile in strict mode", () => {
    expect(typeErrors(examples)).toEqual([]);
  });
});

/** What the compiler says of the examples, each taken as a module of its own in `test/docs`. */
function typeErrors(all: typeof examples): string[] {
  const modules = new Map(all.map((example, i) => [join(root, `test/docs/example-${i}.ts`), example]));
  const config = ts.getParsedCommandLineOfConfigFile(
    join(root, "test/tsconfig.json"),
    { noUnusedLocals: false, noUncheckedIndexedAccess: false },
    {
      ...ts.sys,
      onUnRecoverableConfigFileDiagnostic: (problem) => {
        throw new Error(ts.flattenDiagnosticMessageText(problem.messageText, "\n"));
      },
    },
  );
  if (!config) throw new Error("test/tsconfig.json cannot be read");
  const host = ts.createCompilerHost(config.options);
  const { fileExists, getSourceFile } = host;
  host.fileExists = (name) => modules.has(name) || fileExists(name);
  host.getSourceFile = (name, ...rest) => {
    const example = modules.get(name);
    return example
      ? ts.createSourceFile(
          name,
          `${example.header}${example.example.code}\nexport {};\n`,
          ts.ScriptTarget.ES2022,
          true,
        )
      : getSourceFile(name, ...rest);
  };
  const program = ts.createProgram([...modules.keys()], config.options, host);
  return [...modules].flatMap(([name, example]) =>
    ts
      .getPreEmitDiagnostics(program, program.getSourceFile(name))
      .map(({ messageText }) => `${example.name}: ${ts.flattenDiagnosticMessageText(messageText, "\n")}`),
  );
}
