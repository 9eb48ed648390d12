/**
 * Reads from the source which texts can reach a place: every text that `say` can be asked for. It
 * follows constants, conditions, parameters to their callers, fields to where objects are made, and
 * what functions return, all by the TypeScript compiler's own reading of the source.
 */
import { join } from "node:path";
import ts from "typescript";
import { root } from "../sources.ts";

export interface Flow {
  /** Texts as they stand in the source, each with the first file that holds it. */
  readonly texts: ReadonlyMap<string, string>;
  /** Where the text comes from outside the source: a name, a table of data, a caller. */
  readonly ends: readonly string[];
}

export interface Source {
  readonly program: ts.Program;
  readonly checker: ts.TypeChecker;
  /** All calls of a function, by its declaration. */
  readonly calls: ReadonlyMap<ts.Node, readonly (ts.CallExpression | ts.NewExpression)[]>;
  /** All that is given to a field, by its declaration; of what is spread, the fields it is taken from. */
  readonly given: ReadonlyMap<ts.Node, readonly ts.Node[]>;
}

/** The source of the library, read once. */
export function readSource(): Source {
  const config = ts.getParsedCommandLineOfConfigFile(
    join(root, "tsconfig.json"),
    { noEmit: true },
    {
      ...ts.sys,
      onUnRecoverableConfigFileDiagnostic: ({ messageText }) => {
        throw new Error(ts.flattenDiagnosticMessageText(messageText, "\n"));
      },
    },
  );
  if (!config) throw new Error("tsconfig.json cannot be read");
  const program = ts.createProgram(config.fileNames, config.options);
  const checker = program.getTypeChecker();
  const calls = new Map<ts.Node, (ts.CallExpression | ts.NewExpression)[]>();
  const given = new Map<ts.Node, ts.Node[]>();
  const give = (type: ts.Type, field: string, value: readonly ts.Node[]): void => {
    for (const each of type.isUnion() ? type.types : [type])
      for (const at of checker.getPropertyOfType(each, field)?.declarations ?? [])
        for (const one of value) if (one !== at) add(given, at, one);
  };
  /** What an object is to be; where a call around it leaves that open, what the call is to give. */
  const wanted = (node: ts.Expression): ts.Type | undefined => {
    const type = checker.getContextualType(node);
    if (type && (type.flags & ts.TypeFlags.TypeParameter) === 0 && type.getProperties().length > 0)
      return type;
    const { parent } = node;
    if (ts.isCallExpression(parent) && parent.arguments[0] === node)
      return checker.getContextualType(parent) ?? type;
    if (ts.isPropertyAssignment(parent) && ts.isObjectLiteralExpression(parent.parent)) {
      const around = wanted(parent.parent);
      const field = around && fieldOf(around, parent.name);
      return field ?? type;
    }
    return type;
  };
  const fieldOf = (type: ts.Type, name: ts.PropertyName): ts.Type | undefined => {
    const text = ts.isIdentifier(name) || ts.isStringLiteralLike(name) ? name.text : undefined;
    const own = text === undefined ? undefined : checker.getPropertyOfType(type, text);
    return own ? checker.getTypeOfSymbol(own) : type.getStringIndexType();
  };
  const visit = (node: ts.Node): void => {
    if (ts.isCallExpression(node) || ts.isNewExpression(node)) {
      const declared = checker.getResolvedSignature(node)?.declaration;
      if (declared) add(calls, declared, node);
      const called = ts.isCallExpression(node) ? nodeOf(node.expression, checker) : undefined;
      if (called && called !== declared) add(calls, called, node);
    }
    if (ts.isObjectLiteralExpression(node)) {
      const type = wanted(node);
      for (const property of type ? node.properties : []) {
        if (!type) continue;
        if (ts.isSpreadAssignment(property)) {
          const from = checker.getTypeAtLocation(property.expression);
          for (const { name, declarations = [] } of from.getProperties()) give(type, name, declarations);
        } else if (ts.isIdentifier(property.name) || ts.isStringLiteralLike(property.name)) {
          if (ts.isPropertyAssignment(property)) give(type, property.name.text, [property.initializer]);
          else if (ts.isShorthandPropertyAssignment(property))
            give(type, property.name.text, [property.name]);
        }
      }
    }
    ts.forEachChild(node, visit);
  };
  for (const file of program.getSourceFiles()) if (isOurs(file)) visit(file);
  return { program, checker, calls, given };
}

function isOurs({ fileName }: ts.SourceFile): boolean {
  return fileName.startsWith(join(root, "src/"));
}

function add<K, V>(to: Map<K, V[]>, key: K, value: V): void {
  const list = to.get(key);
  if (list) list.push(value);
  else to.set(key, [value]);
}

/** What a name stands for: a declaration, or what a constant holds. */
function nodeOf(name: ts.Node, checker: ts.TypeChecker): ts.Node | undefined {
  const at = symbolOf(name, checker)?.valueDeclaration;
  return at && ts.isVariableDeclaration(at) ? at.initializer : at;
}

function symbolOf(name: ts.Node, checker: ts.TypeChecker): ts.Symbol | undefined {
  const symbol = ts.isShorthandPropertyAssignment(name.parent)
    ? checker.getShorthandAssignmentValueSymbol(name.parent)
    : checker.getSymbolAtLocation(name);
  return symbol && symbol.flags & ts.SymbolFlags.Alias ? checker.getAliasedSymbol(symbol) : symbol;
}

/** Every text that can reach the argument of a function at a place in its list. */
export function textsReaching(source: Source, file: string, name: string, place: number): Flow {
  const tree = source.program.getSourceFile(join(root, "src", file));
  const declared = tree?.statements.find(
    (each) => ts.isFunctionDeclaration(each) && each.name?.text === name,
  );
  if (!declared) throw new Error(`${file} has no function ${name}`);
  const walk = new Walk(source);
  for (const call of source.calls.get(declared) ?? []) {
    const argument = call.arguments?.[place];
    if (argument) walk.follow(argument);
  }
  return { texts: walk.texts, ends: [...walk.ends].sort() };
}

const WRAPPED: readonly ((node: ts.Node) => boolean)[] = [
  ts.isParenthesizedExpression,
  ts.isAsExpression,
  ts.isSatisfiesExpression,
  ts.isNonNullExpression,
];

/** One walk against the flow, from where a text is used to where it stands. */
class Walk {
  readonly texts = new Map<string, string>();
  readonly ends = new Set<string>();
  readonly #seen: Set<ts.Node>;
  /** The templates that the walk stands in. */
  readonly #around: readonly ts.Node[];
  readonly #source: Source;

  constructor(source: Source, around: readonly ts.Node[] = []) {
    this.#source = source;
    this.#around = around;
    this.#seen = new Set(around);
  }

  follow(node: ts.Node): undefined {
    if (this.#seen.has(node)) return;
    this.#seen.add(node);
    const { checker } = this.#source;
    if (!ts.isExpression(node)) return this.#declared(node, node);
    if (this.#tookLiterals(node)) return;
    if (WRAPPED.some((is) => is(node))) return this.follow((node as ts.ParenthesizedExpression).expression);
    if (ts.isConditionalExpression(node)) return this.#all([node.whenTrue, node.whenFalse]);
    if (ts.isTemplateExpression(node)) return this.#template(node);
    if (ts.isBinaryExpression(node) && node.operatorToken.kind !== ts.SyntaxKind.PlusToken) {
      const isAnd = node.operatorToken.kind === ts.SyntaxKind.AmpersandAmpersandToken;
      return this.#all(isAnd ? [node.right] : [node.left, node.right]);
    }
    if (ts.isIdentifier(node)) {
      const at = symbolOf(node, checker)?.valueDeclaration;
      return at ? this.#declared(at, node) : this.#end(node);
    }
    if (ts.isPropertyAccessExpression(node)) {
      const at = checker.getSymbolAtLocation(node)?.declarations ?? [];
      for (const each of at) this.#declared(each, node);
      return at.length === 0 ? this.#table(node) : undefined;
    }
    if (ts.isElementAccessExpression(node)) return this.#table(node);
    if (ts.isCallExpression(node)) {
      const at = checker.getResolvedSignature(node)?.declaration;
      return at && isOurs(at.getSourceFile()) ? this.#returned(at, node) : this.#end(node);
    }
    this.#end(node);
  }

  #all(nodes: readonly ts.Node[]): undefined {
    for (const node of nodes) this.follow(node);
  }

  #end(node: ts.Node): undefined {
    const { fileName } = node.getSourceFile();
    const text = node.getText().replace(/\s+/g, " ");
    this.ends.add(`${fileName.slice(join(root, "src/").length)}: ${text.slice(0, 70)}`);
  }

  #take(text: string, { fileName }: ts.SourceFile): undefined {
    if (!this.texts.has(text)) this.texts.set(text, fileName.slice(join(root, "src/").length));
  }

  /** Texts that the type of an expression names one by one. */
  #tookLiterals(node: ts.Expression): boolean {
    const type = this.#source.checker.getTypeAtLocation(node);
    const all = type.isUnion() ? type.types : [type];
    const none = ts.TypeFlags.Undefined | ts.TypeFlags.Null;
    if (!all.every((each) => each.isStringLiteral() || (each.flags & none) !== 0)) return false;
    for (const each of all) if (each.isStringLiteral()) this.#take(each.value, node.getSourceFile());
    return true;
  }

  /** A text glued together of constants alone is each of the texts that they make. */
  #template(node: ts.TemplateExpression): undefined {
    let made = [node.head.text];
    for (const { expression, literal } of node.templateSpans) {
      const walk = new Walk(this.#source, [...this.#around, node]);
      walk.follow(expression);
      const isNamed = [...walk.texts.values()].some((file) => file.startsWith("food/"));
      if (walk.ends.size > 0 || walk.texts.size === 0 || isNamed) return this.#end(node);
      made = made.flatMap((text) => [...walk.texts.keys()].map((each) => `${text}${each}${literal.text}`));
    }
    for (const text of made) this.#take(text, node.getSourceFile());
  }

  /** All texts of the constant table that something is taken out of by a name known at run time alone. */
  #table(node: ts.PropertyAccessExpression | ts.ElementAccessExpression): undefined {
    let of: ts.Node | undefined = node;
    while (of && (ts.isPropertyAccessExpression(of) || ts.isElementAccessExpression(of))) {
      const inner: ts.Expression = of.expression;
      of = ts.isIdentifier(inner) ? nodeOf(inner, this.#source.checker) : inner;
    }
    if (of) this.#literals(of, node);
    else this.#end(node);
  }

  #literals(node: ts.Node, from: ts.Node): undefined {
    if (ts.isObjectLiteralExpression(node)) {
      for (const each of node.properties)
        this.#literals(ts.isPropertyAssignment(each) ? each.initializer : each, from);
    } else if (ts.isArrayLiteralExpression(node))
      for (const each of node.elements) this.#literals(each, from);
    else if (ts.isAsExpression(node) || ts.isSatisfiesExpression(node)) this.#literals(node.expression, from);
    else if (ts.isStringLiteralLike(node)) this.#take(node.text, node.getSourceFile());
    else if (ts.isIdentifier(node) && this.#tookLiterals(node)) return;
    else this.#end(from);
  }

  #returned(at: ts.Node, from: ts.Node): undefined {
    if (this.#seen.has(at)) return;
    this.#seen.add(at);
    if (ts.isArrowFunction(at) && !ts.isBlock(at.body)) return this.follow(at.body);
    let found = false;
    const visit = (node: ts.Node): void => {
      if (ts.isReturnStatement(node) && node.expression) {
        found = true;
        this.follow(node.expression);
      }
      if (!ts.isFunctionLike(node)) ts.forEachChild(node, visit);
    };
    if ("body" in at && at.body) ts.forEachChild(at.body as ts.Node, visit);
    if (!found) this.#end(from);
  }

  #declared(at: ts.Node, from: ts.Node): undefined {
    if (this.#seen.has(at) && at !== from) return;
    this.#seen.add(at);
    const { calls, given } = this.#source;
    if (ts.isParameter(at)) {
      const all = calls.get(at.parent) ?? [];
      const place = at.parent.parameters.indexOf(at);
      if (at.initializer) this.follow(at.initializer);
      if (all.length === 0) this.#end(from);
      this.#all(all.flatMap((each) => each.arguments?.[place] ?? []));
    } else if (ts.isVariableDeclaration(at) && at.initializer) this.follow(at.initializer);
    else if (ts.isVariableDeclaration(at) && ts.isForOfStatement(at.parent.parent))
      this.#element(at.parent.parent.expression, from);
    else if (ts.isBindingElement(at)) this.#bound(at, from);
    else if (ts.isPropertyAssignment(at)) this.follow(at.initializer);
    else if (ts.isGetAccessor(at)) this.#returned(at, from);
    else if (ts.isPropertySignature(at) || ts.isPropertyDeclaration(at)) {
      if (ts.isPropertyDeclaration(at) && at.initializer) this.follow(at.initializer);
      const all = given.get(at) ?? [];
      if (all.length === 0) this.#end(from);
      this.#all(all);
    } else this.#end(from);
  }

  #element(list: ts.Expression, from: ts.Node): undefined {
    const of = ts.isIdentifier(list) ? nodeOf(list, this.#source.checker) : list;
    if (of && (ts.isArrayLiteralExpression(of) || ts.isAsExpression(of))) this.#literals(of, from);
    else this.#end(from);
  }

  /** A name taken out of an object, by the field of the object's type. */
  #bound(at: ts.BindingElement, from: ts.Node): undefined {
    const { checker } = this.#source;
    const name = at.propertyName ?? at.name;
    if (!ts.isObjectBindingPattern(at.parent) || !ts.isIdentifier(name)) return this.#end(from);
    const type = checker.getTypeAtLocation(at.parent);
    const fields = (type.isUnion() ? type.types : [type]).flatMap(
      (each) => checker.getPropertyOfType(each, name.text)?.declarations ?? [],
    );
    if (fields.length === 0) this.#end(from);
    for (const each of fields) this.#declared(each, from);
  }
}
