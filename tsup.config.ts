import { cp, readFile } from "node:fs/promises";
import { resolve } from "node:path";
import type { Plugin } from "esbuild";
import { defineConfig } from "tsup";
import ts from "typescript";
import { entries } from "./entries.ts";

const faces = Object.fromEntries(entries.map(({ file }) => [file, `src/${file}.ts`]));

/**
 * Files that do nothing but hand on what another package exports. Each is built apart, so that a
 * program that has no use for it leaves the package behind.
 */
const doors: { readonly [name: string]: string } = {
  decimal: "src/number/decimal.ts",
  zod: "src/document/zod.ts",
  convertUnits: "src/cook/convertUnits.ts",
  fflate: "src/interchange/fflate.ts",
  miniSearch: "src/food/find/miniSearch.ts",
};

/**
 * One built file for each entry, and chunks for what entries share. A user's bundler takes from them
 * what is used and no more: `"sideEffects": false` lets it drop whole files, and no statement within
 * one does anything by itself.
 */
export default defineConfig({
  entry: { ...faces, ...doors },
  format: ["esm"],
  target: "es2022",
  platform: "neutral",
  splitting: true,
  dts: { entry: faces },
  noExternal: ["zod"],
  // Built code keeps its names and lines, so that a stack can be read as it is: maps would be a third of the package.
  sourcemap: false,
  clean: true,
  silent: true,
  esbuildPlugins: [keepDoorsApart(), quietZod(), nothingOnImport()],
  plugins: [{ name: "no indents", renderChunk: (code) => ({ code: withoutIndents(code) }) }],
  onSuccess: () => cp("node_modules/zod/LICENSE", "dist/zod.LICENSE"),
});

function keepDoorsApart(): Plugin {
  const byPath = new Map(Object.entries(doors).map(([name, path]) => [resolve(path), name]));
  return {
    name: "keep doors apart",
    setup({ onResolve }) {
      onResolve({ filter: /\.ts$/ }, ({ path, resolveDir, kind }) => {
        const name = kind === "entry-point" ? undefined : byPath.get(resolve(resolveDir, path));
        return name === undefined ? undefined : { path: `./${name}.js`, external: true, sideEffects: false };
      });
    },
  };
}

/** Our copy of zod keeps its settings to itself: as published it has one place for them in all the page. */
function quietZod(): Plugin {
  const shared = /\(_a = globalThis\)\.__zod_globalConfig \?\? \(_a\.__zod_globalConfig = \{\}\);\n/;
  const read = "export const globalConfig = globalThis.__zod_globalConfig;";
  return {
    name: "quiet zod",
    setup({ onLoad }) {
      onLoad({ filter: /zod[\\/]v4[\\/]core[\\/]core\.js$/ }, async ({ path }) => {
        const source = await readFile(path, "utf8");
        if (!shared.test(source) || !source.includes(read))
          throw new Error(`${path} keeps its settings otherwise: look again at quietZod`);
        return { contents: source.replace(shared, "").replace(read, "export const globalConfig = {};") };
      });
    },
  };
}

/**
 * Marks each constant of a module that a bundler could not tell to be free of effects: a spread, a
 * call, a property of another constant. A bundler then drops it with what uses it.
 */
function nothingOnImport(): Plugin {
  return {
    name: "nothing on import",
    setup({ onLoad }) {
      onLoad({ filter: /[\\/]src[\\/].*\.ts$/ }, async ({ path }) => {
        const source = await readFile(path, "utf8");
        const tree = ts.createSourceFile(path, source, ts.ScriptTarget.Latest, true);
        const contents = tree.statements
          .flatMap((each) => (ts.isVariableStatement(each) ? [...each.declarationList.declarations] : []))
          .flatMap(({ initializer }) => (initializer && !isPlain(initializer) ? [initializer] : []))
          .reduceRight(
            (text, { pos, end }) =>
              `${text.slice(0, pos)} /* @__PURE__ */ (() => (${text.slice(pos, end)}))()${text.slice(end)}`,
            source,
          );
        return { contents, loader: "ts" };
      });
    },
  };
}

/** Leaves lines where they are, but not the spaces before them, a thirtieth of the package; texts keep theirs. */
function withoutIndents(code: string): string {
  const tree = ts.createSourceFile("built.js", code, ts.ScriptTarget.Latest);
  const texts: { readonly from: number; readonly to: number }[] = [];
  const visit = (node: ts.Node): void => {
    if (ts.isTemplateLiteral(node)) texts.push({ from: node.getStart(tree), to: node.end });
    else ts.forEachChild(node, visit);
  };
  visit(tree);
  return code.replace(/^ +/gm, (spaces, at: number) =>
    texts.some(({ from, to }) => from < at && at < to) ? spaces : "",
  );
}

function isPlain(node: ts.Node): boolean {
  if (ts.isAsExpression(node) || ts.isSatisfiesExpression(node)) return isPlain(node.expression);
  if (ts.isArrayLiteralExpression(node)) return node.elements.every(isPlain);
  if (ts.isObjectLiteralExpression(node)) return node.properties.every(isPlain);
  if (ts.isPropertyAssignment(node))
    return !ts.isComputedPropertyName(node.name) && isPlain(node.initializer);
  if (ts.isPrefixUnaryExpression(node)) return ts.isLiteralExpression(node.operand);
  return (
    ts.isLiteralExpression(node) ||
    ts.isIdentifier(node) ||
    ts.isFunctionLike(node) ||
    ts.isShorthandPropertyAssignment(node) ||
    node.kind === ts.SyntaxKind.TrueKeyword ||
    node.kind === ts.SyntaxKind.FalseKeyword
  );
}
