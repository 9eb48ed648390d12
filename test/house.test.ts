/** The rules of the house, as DEVELOPERS.md gives them, held against every file of `src`. */
import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import ts from "typescript";
import { describe, expect, it } from "vitest";
import { entries } from "../entries.ts";
import ledger from "./ledger.json" with { type: "json" };
import { folderOf } from "./reporter.ts";
import { root, type SourceFile, sourceFiles } from "./sources.ts";

/** From the top of the stairs to the bottom: a floor imports only from itself and from floors before it. */
const floors = [
  "number",
  "document",
  "measure",
  "food",
  "recipe",
  "sheet",
  "scale",
  "person",
  "plan",
  "cook",
  "shop",
  "show",
  "card",
  "interchange",
  "bulk",
];
const faces = entries.map(({ file }) => `${file}.ts`);
const longest = 400;

/** Globals that depend on the machine, the moment or the place. */
const impure = new Set([
  "Date",
  "Intl",
  "Temporal",
  "performance",
  "crypto",
  "process",
  "Buffer",
  "globalThis",
  "console",
]);

const files = sourceFiles();
const byPath = new Map(files.map((file) => [file.path, file]));
const floorOf = (path: string): number => floors.indexOf(path.split("/")[0] ?? "");

/** What a file declares and exports; nothing that it hands on. */
function exportedBy({ tree }: SourceFile): string[] {
  return tree.statements.flatMap((each) => {
    const isExported =
      ts.canHaveModifiers(each) && ts.getModifiers(each)?.some((m) => m.kind === ts.SyntaxKind.ExportKeyword);
    if (!isExported) return [];
    const declared = ts.isVariableStatement(each)
      ? each.declarationList.declarations
      : [each as ts.DeclarationStatement];
    return declared.flatMap(({ name }) => (name && ts.isIdentifier(name) ? [name.text] : []));
  });
}

/** The uses in a file of which `problem` says what is wrong, each with its line. */
function faultsIn(file: SourceFile, problem: (node: ts.Node) => string | undefined): string[] {
  const found: string[] = [];
  const visit = (node: ts.Node): void => {
    const wrong = problem(node);
    if (wrong) {
      const { line } = file.tree.getLineAndCharacterOfPosition(node.getStart());
      found.push(`src/${file.path}:${line + 1}: ${wrong}`);
    }
    ts.forEachChild(node, visit);
  };
  visit(file.tree);
  return found;
}

/** `Intl.Segmenter` told its language follows Unicode's rules wherever it runs; so does its type. */
function isFixedSegmenter(node: ts.Node): boolean {
  if (ts.isQualifiedName(node)) return node.right.text === "Segmenter";
  if (!ts.isPropertyAccessExpression(node) || node.name.text !== "Segmenter") return false;
  const [language] = ts.isNewExpression(node.parent) ? (node.parent.arguments ?? []) : [];
  return language !== undefined && ts.isStringLiteral(language);
}

/** Whether a file only lists facts: imports, types, and constants made of literals. */
function isData(file: SourceFile): boolean {
  return file.tree.statements.every(
    (statement) =>
      ts.isImportDeclaration(statement) ||
      ts.isTypeAliasDeclaration(statement) ||
      ts.isInterfaceDeclaration(statement) ||
      (ts.isVariableStatement(statement) &&
        statement.declarationList.declarations.every(
          ({ initializer }) => initializer && isLiteral(initializer),
        )),
  );
}

function isLiteral(node: ts.Expression): boolean {
  if (ts.isAsExpression(node) || ts.isSatisfiesExpression(node)) return isLiteral(node.expression);
  if (ts.isArrayLiteralExpression(node)) return node.elements.every(isLiteral);
  if (ts.isSpreadElement(node)) return isLiteral(node.expression);
  if (ts.isObjectLiteralExpression(node)) {
    return node.properties.every(
      (each) =>
        (ts.isPropertyAssignment(each) && isLiteral(each.initializer)) ||
        ts.isShorthandPropertyAssignment(each) ||
        (ts.isSpreadAssignment(each) && isLiteral(each.expression)),
    );
  }
  if (ts.isPrefixUnaryExpression(node)) return isLiteral(node.operand);
  if (ts.isPropertyAccessExpression(node)) return isLiteral(node.expression);
  return (
    ts.isLiteralExpression(node) ||
    ts.isIdentifier(node) ||
    [ts.SyntaxKind.TrueKeyword, ts.SyntaxKind.FalseKeyword].includes(node.kind)
  );
}

describe("src", () => {
  it("has files on known floors, and the faces that the package exports", () => {
    expect(files.length).toBeGreaterThan(20);
    expect(files.map((f) => f.path).filter((path) => floorOf(path) < 0 && !faces.includes(path))).toEqual([]);
  });

  it("names files in one casing, after the rule in them", () => {
    const odd = files
      .map(({ path }) => path)
      .filter((path) => /[-_ ]|\/[A-Z]/.test(path.replace("convert-units.d.ts", "")));
    expect(odd).toEqual([]);
  });

  it("has the files that DEVELOPERS.md gives rules and rooms by", () => {
    const page = readFileSync(join(root, "DEVELOPERS.md"), "utf8");
    const told = [...page.matchAll(/^\| .* \| `([\w/]+\.ts)` \|$|^\| `((?:scale|plan)\/\w+\/)` \|/gm)];
    expect(told.length).toBeGreaterThan(12);
    const paths = sourceFiles().map(({ path }) => path);
    const missing = told
      .map(([, file, room]) => file ?? room ?? "")
      .filter((p) => !paths.some((path) => path.startsWith(p)));
    expect(missing).toEqual([]);
  });

  it("runs one way, down the stairs", () => {
    const upward = files
      .filter(({ path }) => !faces.includes(path))
      .flatMap(({ path, imports }) =>
        imports
          .filter((to) => faces.includes(to) || floorOf(to) > floorOf(path))
          .map((to) => `src/${path} imports ${to}`),
      );
    expect(upward).toEqual([]);
  });

  it("exports no name from two of its files", () => {
    const homes = new Map<string, Set<string>>();
    for (const file of files.filter(({ path }) => !faces.includes(path)))
      for (const name of exportedBy(file)) homes.set(name, (homes.get(name) ?? new Set()).add(file.path));
    expect(homes.get("sheet")).toEqual(new Set(["sheet/build.ts"]));
    const shared = [...homes]
      .filter(([, at]) => at.size > 1)
      .map(([name, at]) => `${name}: ${[...at].join(", ")}`);
    expect(shared).toEqual([]);
  });

  it("names its own files by their full name", () => {
    const wrong = files.flatMap(({ path, imports }) =>
      imports.filter((to) => !byPath.has(to)).map((to) => `src/${path} imports ${to}`),
    );
    expect(wrong).toEqual([]);
  });

  it("has no cycle of imports at run time", () => {
    expect(cycles()).toEqual([]);
  });

  // Two are left from before, and no more may come: a sheet with what it is made of, and a cook's notes.
  it("has no more circles of types than those that are known", () => {
    expect(
      circles().map((each) =>
        each
          .split(" ")
          .map((path) => path.replace(/^(.*)\/(.*)\.ts$/, "$2"))
          .join(" "),
      ),
    ).toEqual([
      "keeping notes session steps",
      "bySource edit grid plan recipeNow scaled sheet source stored totals values water",
    ]);
  });

  it("imports packages that package.json lists as dependencies, and nothing of Node", () => {
    const manifest = JSON.parse(readFileSync(join(root, "package.json"), "utf8")) as { dependencies: object };
    // zod is built in.
    const allowed = [...Object.keys(manifest.dependencies), "zod"];
    const wrong = files.flatMap(({ path, packages }) =>
      packages
        .filter((name) => !allowed.some((each) => name === each || name.startsWith(`${each}/`)))
        .map((name) => `src/${path} imports ${name}`),
    );
    expect(wrong).toEqual([]);
  });

  it("takes values of another package through one file that hands them on, so that it falls away where unused", () => {
    const doors = [
      "number/decimal.ts",
      "document/zod.ts",
      "cook/convertUnits.ts",
      "food/find/miniSearch.ts",
      "interchange/fflate.ts",
    ];
    const wrong = files
      .filter(({ path }) => !doors.includes(path))
      .flatMap(({ path, text }) =>
        [...text.matchAll(/^(?:import|export) (?!type\b)[^;]*? from "([^."][^"]*)";/gm)].map(
          ([, name]) => `src/${path} imports ${name}`,
        ),
      )
      .filter((each) => !each.endsWith("zod/mini"));
    expect(wrong).toEqual([]);
  });

  it("imports decimal.js by name: its types have no default where a user's compiler resolves as Node does", () => {
    const wrong = files
      .filter(({ text }) => /import (type )?Decimal from/.test(text))
      .map(({ path }) => path);
    expect(wrong).toEqual([]);
  });

  it("heeds no clock, chance, locale or host", () => {
    const found = files.flatMap((file) =>
      faultsIn(file, (node) => {
        if (ts.isPropertyAccessExpression(node)) {
          if (node.getText() === "Math.random") return "chance";
          if (/^(toLocale|localeCompare$)/.test(node.name.text))
            return `${node.name.text}, which heeds the locale`;
        }
        if (!ts.isIdentifier(node) || !impure.has(node.text)) return undefined;
        const { parent } = node;
        const isName = "name" in parent && parent.name === node;
        return isName || isFixedSegmenter(parent) ? undefined : node.text;
      }),
    );
    expect(found).toEqual([]);
  });

  it("claims no more of a type than is known: no any, no silenced compiler", () => {
    const found = files.flatMap((file) => [
      ...faultsIn(file, (node) => (node.kind === ts.SyntaxKind.AnyKeyword ? "any" : undefined)),
      ...[...file.text.matchAll(/@ts-(ignore|expect-error|nocheck)/g)].map(
        (m) => `src/${file.path}: ${m[0]}`,
      ),
    ]);
    expect(found).toEqual([]);
  });

  it("raises every code that the list of codes has", () => {
    const listed = [...(byPath.get("number/codes.ts")?.text.matchAll(/\| "([a-z-]+)"/g) ?? [])];
    const raised = new Set<string>();
    // A code that is compared with, or that a type names, is not raised there.
    const collect = (node: ts.Node): void => {
      if (
        ts.isStringLiteral(node) &&
        !ts.isBinaryExpression(node.parent) &&
        !ts.isLiteralTypeNode(node.parent)
      )
        raised.add(node.text);
      ts.forEachChild(node, collect);
    };
    for (const file of files) collect(file.tree);
    const codes = listed.map(([, code = ""]) => code);
    expect(codes.length).toBeGreaterThan(60);
    expect(codes.filter((code) => !raised.has(code))).toEqual([]);
  });

  it(`has code files of at most ${longest} lines`, () => {
    const long = files
      .filter((file) => !isData(file))
      .map((file) => ({ path: file.path, lines: file.text.split("\n").length }))
      .filter(({ lines }) => lines > longest);
    expect(long).toEqual([]);
  });

  it("says at the top of each long table where its figures come from", () => {
    const silent = files
      .filter((file) => isData(file) && file.text.split("\n").length > 60)
      .filter((file) => !/\/\*\*|\/\//.test(file.text.slice(0, 400)))
      .map(({ path }) => path);
    expect(silent).toEqual([]);
  });
});

describe("the ledger of tests", () => {
  it("allows every folder its seconds, 200 in all", () => {
    const folders = readdirSync(join(root, "test"), { recursive: true, encoding: "utf8" })
      .filter((file) => file.endsWith(".test.ts"))
      .map((file) => folderOf(join(root, "test", file)));
    expect([...new Set(folders)].filter((folder) => !Object.hasOwn(ledger, folder))).toEqual([]);
    expect(Object.values(ledger).reduce((sum, each) => sum + each, 0)).toBeLessThanOrEqual(200);
  });
});

/** Sets of files that import each other, types too, each by its files' names in order. */
function circles(): string[] {
  const reach = (from: string): Set<string> => {
    const seen = new Set<string>();
    const next = [...(byPath.get(from)?.imports ?? [])];
    for (let path = next.pop(); path !== undefined; path = next.pop()) {
      if (seen.has(path)) continue;
      seen.add(path);
      next.push(...(byPath.get(path)?.imports ?? []));
    }
    return seen;
  };
  const reached = new Map(files.map(({ path }) => [path, reach(path)]));
  const inCircles = files.filter(({ path }) => reached.get(path)?.has(path)).map(({ path }) => path);
  const each = inCircles.map((path) =>
    inCircles.filter((other) => reached.get(path)?.has(other) && reached.get(other)?.has(path)),
  );
  return [...new Set(each.map((set) => set.sort().join(" ")))].sort();
}

/** Each cycle of run-time imports once, as the path round it; types are gone by then. */
function cycles(): string[] {
  const found: string[] = [];
  const done = new Set<string>();
  const walk = (path: string, above: readonly string[]): void => {
    const at = above.indexOf(path);
    if (at >= 0) found.push([...above.slice(at), path].join(" → "));
    if (at >= 0 || done.has(path)) return;
    for (const next of byPath.get(path)?.runtimeImports ?? []) walk(next, [...above, path]);
    done.add(path);
  };
  for (const { path } of files) walk(path, []);
  return found;
}
