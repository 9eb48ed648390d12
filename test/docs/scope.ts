import { dirname, join, resolve } from "node:path";
import ts from "typescript";
import { root, type SourceFile } from "../sources.ts";

/** How a name comes into an example: the module's path or package, and the name it has there. */
interface Origin {
  readonly module: string;
  readonly name: string;
  readonly typeOnly: boolean;
}

type Scope = ReadonlyMap<string, Origin>;

const src = join(root, "src");

/**
 * The names that an example in a docstring of `file` may use without importing them: all that `src`
 * exports. Where two files export one name, the file's own comes first, then what the file imports,
 * then the public one.
 */
export function scopeOf(file: SourceFile, all: readonly SourceFile[], faces: readonly SourceFile[]): Scope {
  return new Map([...all, ...faces].flatMap(exportsOf).concat(importsOf(file), exportsOf(file)));
}

/** The import declarations that bring the names used in `code` and known in `scope` into it. */
export function headerFor(code: string, scope: Scope): string {
  const tree = ts.createSourceFile("example.ts", code, ts.ScriptTarget.Latest, true);
  const used = new Set<string>();
  const declared = new Set<string>();
  const visit = (node: ts.Node): void => {
    if (ts.isIdentifier(node)) {
      const { parent } = node;
      const isMember = ts.isPropertyAccessExpression(parent) && parent.name === node;
      if (!isMember && !(ts.isPropertyAssignment(parent) && parent.name === node)) used.add(node.text);
      if ("name" in parent && parent.name === node && parent.parent === undefined) declared.add(node.text);
    }
    if (ts.isImportClause(node) || ts.isImportSpecifier(node)) declared.add(node.name?.text ?? "");
    if ((ts.isVariableDeclaration(node) || ts.isBindingElement(node)) && ts.isIdentifier(node.name))
      declared.add(node.name.text);
    if (ts.isClassDeclaration(node) || ts.isFunctionDeclaration(node)) declared.add(node.name?.text ?? "");
    ts.forEachChild(node, visit);
  };
  visit(tree);
  return [...used]
    .filter((name) => !declared.has(name))
    .flatMap((name) => {
      const origin = scope.get(name);
      if (!origin) return [];
      const kind = origin.typeOnly ? "import type" : "import";
      return `${kind} { ${origin.name} as ${name} } from ${JSON.stringify(origin.module)};\n`;
    })
    .join("");
}

function exportsOf(file: SourceFile): [string, Origin][] {
  const module = join(src, file.path);
  return file.tree.statements.flatMap((statement): [string, Origin][] => {
    if (
      ts.isExportDeclaration(statement) &&
      statement.exportClause &&
      ts.isNamedExports(statement.exportClause)
    ) {
      return statement.exportClause.elements.map((each) => {
        const typeOnly = statement.isTypeOnly || each.isTypeOnly;
        return [each.name.text, { module, name: each.name.text, typeOnly }];
      });
    }
    const modifiers = ts.canHaveModifiers(statement) ? (ts.getModifiers(statement) ?? []) : [];
    if (!modifiers.some(({ kind }) => kind === ts.SyntaxKind.ExportKeyword)) return [];
    const typeOnly = ts.isInterfaceDeclaration(statement) || ts.isTypeAliasDeclaration(statement);
    const names = ts.isVariableStatement(statement)
      ? statement.declarationList.declarations.map(({ name }) => name.getText())
      : "name" in statement && statement.name
        ? [(statement.name as ts.Identifier).text]
        : [];
    return names.map((name) => [name, { module, name, typeOnly }]);
  });
}

function importsOf(file: SourceFile): [string, Origin][] {
  return file.tree.statements.filter(ts.isImportDeclaration).flatMap(({ importClause, moduleSpecifier }) => {
    if (!importClause || !ts.isStringLiteral(moduleSpecifier)) return [];
    const written = moduleSpecifier.text;
    const module = written.startsWith(".") ? resolve(src, dirname(file.path), written) : written;
    const found: [string, Origin][] = [];
    const { name, namedBindings } = importClause;
    if (name) found.push([name.text, { module, name: "default", typeOnly: importClause.isTypeOnly }]);
    if (namedBindings && ts.isNamedImports(namedBindings)) {
      for (const each of namedBindings.elements) {
        const typeOnly = importClause.isTypeOnly || each.isTypeOnly;
        found.push([each.name.text, { module, name: (each.propertyName ?? each.name).text, typeOnly }]);
      }
    }
    return found;
  });
}
