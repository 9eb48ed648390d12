import ts from "typescript";
import { entries } from "../../entries.ts";
import { root } from "../sources.ts";

let program: ts.Program | undefined;
/** By file, since entries share most of theirs. */
const declared = new Map<string, ReadonlyMap<string, string>>();

function programOf(files: readonly string[]): ts.Program {
  const config = ts.getParsedCommandLineOfConfigFile(
    `${root}tsconfig.json`,
    {},
    { ...ts.sys, onUnRecoverableConfigFileDiagnostic: () => {} },
  );
  return ts.createProgram(files, config?.options ?? {});
}

/**
 * The declarations behind every name that an entry exports, sorted by name and without comments: what
 * a user's compiler sees. Names that a declaration mentions but the entry does not export are listed
 * at the end.
 */
export function declarationsOf(entry: string): string {
  program ??= programOf(entries.map(({ file }) => `${root}src/${file}.ts`));
  const checker = program.getTypeChecker();
  const source = program.getSourceFile(`${root}src/${entry}`);
  const face = source && checker.getSymbolAtLocation(source);
  if (!face) throw new Error(`src/${entry} is no module`);
  const exported = checker.getExportsOfModule(face).map((symbol) => {
    const origin = symbol.flags & ts.SymbolFlags.Alias ? checker.getAliasedSymbol(symbol) : symbol;
    const texts = (origin.declarations ?? []).map((node) => {
      const file = node.getSourceFile();
      const known = declared.get(file.fileName) ?? declarationsIn(file);
      declared.set(file.fileName, known);
      return (
        known.get(origin.name) ?? `// ${origin.name}: no declaration in ${file.fileName.slice(root.length)}`
      );
    });
    const renamed = origin.name === symbol.name ? "" : `// exported as ${symbol.name}\n`;
    return { name: symbol.name, origin: origin.name, text: renamed + [...new Set(texts)].join("\n") };
  });
  const texts = exported.sort((a, b) => (a.name < b.name ? -1 : 1)).map(({ text }) => text);
  const names = new Set(exported.map(({ origin }) => origin));
  const others = program.getSourceFiles().filter(({ fileName }) => fileName.startsWith(`${root}src/`));
  const ours = new Set(others.flatMap((file) => file.statements.flatMap(namesOf)));
  const hidden = [...mentionedIn(texts.join("\n"))]
    .filter((name) => ours.has(name) && !names.has(name))
    .sort();
  if (hidden.length > 0) texts.push(`// mentioned above but not exported: ${hidden.join(", ")}`);
  return texts.join("\n\n");
}

/** The names of types, and of values that a type is taken from, in declarations. */
function mentionedIn(declarations: string): ReadonlySet<string> {
  const found = new Set<string>();
  const visit = (node: ts.Node): void => {
    if (ts.isTypeReferenceNode(node)) found.add(node.typeName.getText());
    if (ts.isTypeQueryNode(node)) found.add(node.exprName.getText());
    if (ts.isExpressionWithTypeArguments(node)) found.add(node.expression.getText());
    ts.forEachChild(node, visit);
  };
  visit(ts.createSourceFile("face.d.ts", declarations, ts.ScriptTarget.Latest, true));
  return found;
}

function namesOf(statement: ts.Statement): string[] {
  if (ts.isVariableStatement(statement))
    return statement.declarationList.declarations.map(({ name }) => name.getText());
  return "name" in statement && statement.name ? [(statement.name as ts.Identifier).text] : [];
}

/** A file's declarations by name, as `isolatedDeclarations` lets them be written from that file alone. */
function declarationsIn(file: ts.SourceFile): ReadonlyMap<string, string> {
  const options = {
    target: ts.ScriptTarget.ES2022,
    module: ts.ModuleKind.ESNext,
    isolatedDeclarations: true,
  };
  const { outputText } = ts.transpileDeclaration(file.text, {
    fileName: file.fileName,
    compilerOptions: { ...options, removeComments: true, stripInternal: true },
  });
  const tree = ts.createSourceFile("face.d.ts", outputText, ts.ScriptTarget.Latest, true);
  return new Map(
    tree.statements.flatMap((statement) =>
      namesOf(statement).map((name) => [name, statement.getText()] as const),
    ),
  );
}
