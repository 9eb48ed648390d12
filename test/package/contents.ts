import { existsSync, readdirSync, readFileSync, statSync } from "node:fs";
import { builtinModules } from "node:module";
import { join } from "node:path";
import markdownIt, { type Token } from "markdown-it";
import ts from "typescript";
import { entries } from "../../entries.ts";
import type { Scratch } from "./install.ts";
import { Failed } from "./run.ts";

/** What only some hosts have. `console` too: a library does not print. */
const hostNames = new Set([
  ...["Buffer", "process", "global", "require", "module", "exports", "__dirname", "__filename", "console"],
  ...["window", "document", "navigator", "location", "localStorage", "fetch", "XMLHttpRequest"],
  ...["setTimeout", "setInterval", "setImmediate", "queueMicrotask", "requestAnimationFrame"],
]);

/** Bytes that the package may come to as it travels. */
const MOST_PACKED = 750_000;

const kilobytes = (bytes: number): string => (bytes / 1000).toFixed(0);

/** Built files import only declared dependencies, and use nothing that only some hosts have. */
export function checkContents({ installed, manifest, tarball }: Scratch): string {
  const { size } = statSync(tarball);
  if (size > MOST_PACKED)
    throw new Failed(`the tarball holds ${kilobytes(size)} kB, over ${kilobytes(MOST_PACKED)}`);
  const files = readdirSync(join(installed, "dist"), { recursive: true, encoding: "utf8" });
  const scripts = files.filter((file) => file.endsWith(".js"));
  const allowed = Object.keys(manifest.dependencies ?? {});
  for (const file of scripts) {
    const source = ts.createSourceFile(
      file,
      readFileSync(join(installed, "dist", file), "utf8"),
      ts.ScriptTarget.Latest,
      true,
    );
    for (const name of importsOf(source)) {
      if (name.startsWith(".")) continue;
      if (name.startsWith("node:") || builtinModules.includes(name))
        throw new Failed(`dist/${file} imports ${name}, which is Node's`);
      if (!allowed.some((each) => name === each || name.startsWith(`${each}/`))) {
        throw new Failed(`dist/${file} imports ${name}, which package.json does not list under dependencies`);
      }
    }
    const host = hostNameIn(source);
    if (host) throw new Failed(`dist/${file} uses ${host}`);
  }
  for (const needed of [...entries.map(({ file }) => `${file}.d.ts`), "zod.LICENSE"]) {
    if (!files.includes(needed)) throw new Failed(`dist/${needed} is missing from the tarball`);
  }
  for (const needed of ["README.md", "LICENSE", "CHANGELOG.md"]) {
    if (!readdirSync(installed).includes(needed)) throw new Failed(`${needed} is missing from the tarball`);
  }
  for (const page of ["README.md", "CHANGELOG.md"]) {
    const broken = linksOf(readFileSync(join(installed, page), "utf8")).find(
      (link) => !existsSync(join(installed, decodeURIComponent(link))),
    );
    if (broken !== undefined) throw new Failed(`${page} links to ${broken}, which the tarball does not hold`);
  }
  return `${files.length} files, ${kilobytes(size)} kB packed (ceiling ${kilobytes(MOST_PACKED)}, aim 600)`;
}

/** Relative links of a page, without their anchors. */
function linksOf(page: string): string[] {
  const links = new Set<string>();
  const visit = (token: Token): void => {
    const href = token.attrGet(token.type === "image" ? "src" : "href");
    const path = href === null ? undefined : String(href).split("#")[0];
    if (path && !/^(?:[a-z][a-z0-9+.-]*:|\/\/)/i.test(path)) links.add(path);
    token.children?.forEach(visit);
  };
  markdownIt({ html: true }).parse(page, {}).forEach(visit);
  return [...links];
}

function importsOf(source: ts.SourceFile): string[] {
  const { importedFiles } = ts.preProcessFile(source.text, true, true);
  return importedFiles.map((each) => each.fileName);
}

/** The first use of a host's global as a free name, not as a property or a key. */
function hostNameIn(node: ts.Node): string | undefined {
  if (ts.isIdentifier(node) && hostNames.has(node.text)) {
    const { parent } = node;
    const isName =
      (ts.isPropertyAccessExpression(parent) && parent.name === node) ||
      ((ts.isPropertyAssignment(parent) || ts.isMethodDeclaration(parent)) && parent.name === node) ||
      (ts.isPropertyDeclaration(parent) && parent.name === node);
    if (!isName) return node.text;
  }
  return ts.forEachChild(node, hostNameIn);
}
