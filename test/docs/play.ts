import { format } from "node:util";
import ts from "typescript";
import type { Example } from "./extract.ts";

/** One line of an example that says what it gives: `total.value; // => 12.5`. */
interface Claim {
  readonly line: number;
  readonly expected: string;
}

const MARK = /^\/\/\s*=>\s?(.*)$/;

/** Brings a module to an example by the name that the example imports it by. */
export type Load = (name: string) => Promise<Readonly<Record<string, unknown>>>;

/**
 * Runs an example and gives back what is wrong with it: a claim that does not hold, or something
 * printed that the page does not show. What the example throws is thrown.
 */
export async function play(
  { code, output, line: first }: Example,
  header: string,
  load: Load,
): Promise<string[]> {
  const { text, claims, unmarked } = withClaims(code, first);
  const wrong = unmarked.map((line) => `line ${line}: begin the comment with // => so that it is checked`);
  const shown: string[] = [];
  let claimed: string[] | undefined;
  const hooks = {
    begin: () => {
      claimed = [];
    },
    end: (i: number) => {
      const { line, expected } = claims[i] ?? { line: 0, expected: "" };
      const printed = plain((claimed ?? []).join("\n"));
      if (printed !== plain(expected)) wrong.push(`line ${line}: gives ${printed}, and not ${expected}`);
      claimed = undefined;
    },
  };
  const print = (...values: unknown[]): void => void (claimed ?? shown).push(format(...values));
  const AsyncFunction = (async () => {}).constructor as new (
    ...all: string[]
  ) => (...all: unknown[]) => Promise<void>;
  await new AsyncFunction("load", "hooks", "console", `{${runnable(header + text)}}`)(load, hooks, {
    log: print,
  });

  const printed = tidy(shown.join("\n"));
  if (output === undefined && printed !== "") {
    wrong.push(`prints what the page does not show; put it in a \`\`\`text block below:\n${printed}`);
  } else if (output !== undefined && printed !== tidy(output)) {
    wrong.push(`prints\n${printed}\nand not\n${tidy(output)}`);
  }
  if (claims.length === 0 && output === undefined) wrong.push("shows nothing that can be checked");
  return wrong;
}

/** The code with every claim turned into calls that compare it with what is printed. */
function withClaims(code: string, first: number): { text: string; claims: Claim[]; unmarked: number[] } {
  const tree = ts.createSourceFile("example.ts", code, ts.ScriptTarget.Latest, true);
  const claims: Claim[] = [];
  const unmarked: number[] = [];
  const edits: { at: number; insert: string }[] = [];
  const visit = (node: ts.Node): void => {
    if (ts.isExpressionStatement(node) || ts.isVariableStatement(node)) {
      const comment = trailingComment(code, node.end);
      const line = tree.getLineAndCharacterOfPosition(node.getStart()).line + first + 1;
      const expected = comment && MARK.exec(comment)?.[1];
      if (expected !== undefined) {
        const i = claims.push({ line, expected }) - 1;
        edits.push(...claimEdits(node, i));
      } else if (comment && ts.isExpressionStatement(node)) {
        unmarked.push(line);
      }
    }
    ts.forEachChild(node, visit);
  };
  visit(tree);
  const text = edits
    .map((edit, order) => ({ ...edit, order }))
    .sort((a, b) => b.at - a.at || b.order - a.order)
    .reduce((all, { at, insert }) => all.slice(0, at) + insert + all.slice(at), code);
  return { text, claims, unmarked };
}

function claimEdits(
  node: ts.ExpressionStatement | ts.VariableStatement,
  i: number,
): { at: number; insert: string }[] {
  const start = node.getStart();
  if (ts.isVariableStatement(node)) {
    const name = node.declarationList.declarations.at(-1)?.name.getText();
    return [{ at: node.end, insert: `;hooks.begin();console.log(${name});hooks.end(${i});` }];
  }
  const { expression } = node;
  const prints = ts.isCallExpression(expression) && expression.expression.getText() === "console.log";
  return [
    { at: start, insert: prints ? "hooks.begin();" : "hooks.begin();console.log(" },
    { at: expression.end, insert: prints ? "" : ")" },
    { at: node.end, insert: `;hooks.end(${i});` },
  ];
}

function trailingComment(code: string, end: number): string | undefined {
  const [range] = ts.getTrailingCommentRanges(code, end) ?? [];
  return range && code.slice(range.pos, range.end);
}

/** Script without types, whose imports are loaded by `load`. */
function runnable(code: string): string {
  const { outputText } = ts.transpileModule(code, {
    compilerOptions: { target: ts.ScriptTarget.ES2022, module: ts.ModuleKind.ESNext },
  });
  const tree = ts.createSourceFile("example.js", outputText, ts.ScriptTarget.Latest, true);
  let text = outputText;
  for (const node of [...tree.statements].reverse()) {
    if (ts.isExportDeclaration(node)) text = text.slice(0, node.pos) + text.slice(node.end);
    if (!ts.isImportDeclaration(node)) continue;
    const { name, namedBindings } = node.importClause ?? {};
    const from = `await load(${node.moduleSpecifier.getText()})`;
    const names = name ? [`default: ${name.text}`] : [];
    if (namedBindings && ts.isNamedImports(namedBindings)) {
      names.push(
        ...namedBindings.elements.map(
          (each) => (each.propertyName ? `${each.propertyName.text}: ` : "") + each.name.text,
        ),
      );
    }
    const all =
      namedBindings && ts.isNamespaceImport(namedBindings)
        ? `const ${namedBindings.name.text} = ${from};`
        : "";
    text = `${text.slice(0, node.pos)}\nconst { ${names.join(", ")} } = ${from};${all}${text.slice(node.end)}`;
  }
  return `${text}\n`;
}

/** As one line, since a claim has only one. */
const plain = (text: string): string => text.replace(/\s+/g, " ").trim();

/** Without the white space at line ends that editors take away. */
const tidy = (text: string): string => text.replace(/[ \t]+$/gm, "").replace(/\n+$/, "");
