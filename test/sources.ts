import { readdirSync, readFileSync } from "node:fs";
import { dirname, join, relative, resolve, sep } from "node:path";
import { fileURLToPath } from "node:url";
import ts from "typescript";

/** The repository's root folder. */
export const root: string = fileURLToPath(new URL("..", import.meta.url));

/** One file of `src`, parsed. */
export interface SourceFile {
  /** From `src`, with forward slashes: `number/error.ts`. */
  readonly path: string;
  readonly text: string;
  readonly tree: ts.SourceFile;
  /** What it imports or re-exports from `src`, types included, as paths. */
  readonly imports: readonly string[];
  /** Those of them that are there at run time. */
  readonly runtimeImports: readonly string[];
  /** What it imports from packages. */
  readonly packages: readonly string[];
}

/** Every file of `src`. */
export function sourceFiles(): SourceFile[] {
  const src = join(root, "src");
  return readdirSync(src, { recursive: true, encoding: "utf8" })
    .filter((path) => path.endsWith(".ts"))
    .sort()
    .map((path) => {
      const text = readFileSync(join(src, path), "utf8");
      const tree = ts.createSourceFile(path, text, ts.ScriptTarget.Latest, true);
      const all = importsOf(tree);
      const own = all.filter(({ name }) => name.startsWith("."));
      const pathTo = ({ name }: Import): string => slashed(relative(src, resolve(src, dirname(path), name)));
      return {
        path: slashed(path),
        text,
        tree,
        imports: own.map(pathTo),
        runtimeImports: own.filter(({ typeOnly }) => !typeOnly).map(pathTo),
        packages: all.map(({ name }) => name).filter((name) => !name.startsWith(".")),
      };
    });
}

function slashed(path: string): string {
  return path.split(sep).join("/");
}

interface Import {
  readonly name: string;
  readonly typeOnly: boolean;
}

/** All that a file names in `import … from`, `export … from`, `import()` and `import("…").Type`. */
function importsOf(tree: ts.SourceFile): Import[] {
  const found: Import[] = [];
  const add = (named: ts.Node | undefined, typeOnly: boolean): void => {
    if (named && ts.isStringLiteralLike(named)) found.push({ name: named.text, typeOnly });
  };
  const visit = (node: ts.Node): void => {
    if (ts.isImportDeclaration(node)) add(node.moduleSpecifier, node.importClause?.isTypeOnly === true);
    if (ts.isExportDeclaration(node)) add(node.moduleSpecifier, node.isTypeOnly);
    if (ts.isCallExpression(node) && node.expression.kind === ts.SyntaxKind.ImportKeyword)
      add(node.arguments[0], false);
    if (ts.isImportTypeNode(node) && ts.isLiteralTypeNode(node.argument)) add(node.argument.literal, true);
    ts.forEachChild(node, visit);
  };
  visit(tree);
  return found;
}
