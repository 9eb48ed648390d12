/**
 * Holds that `phrases()` lists all that can be said: by the texts that `say` is called with as they stand in the
 * source, by what is said while the library is at work, and, in a long run, by all that the compiler sees flow there.
 */
import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import ts from "typescript";
import { expect, it } from "vitest";
import { phrases } from "../../src/phrases.ts";
import { isLong } from "../runs.ts";
import { root } from "../sources.ts";
import { stumbles } from "../words.ts";
import { collected, dataFile } from "./collected.ts";

const said = new Set(phrases().notes.map(({ phrase }) => phrase));

it("has no phrase twice, and tells each one's gaps", () => {
  const { notes } = phrases();
  expect(new Set(notes.map(({ phrase }) => phrase)).size).toBe(notes.length);
  expect(notes.find(({ phrase }) => phrase === "{low} to {high}")?.gaps).toEqual(["low", "high"]);
});

it("says nothing that readers stumbled on", () => {
  const readme = readFileSync(join(root, "README.md"), "utf8");
  for (const words of stumbles) {
    // How a food was bought and what a figure is are words of their own, which a translation needs.
    expect([...said].filter((each) => words.test(each) && !/^(?:as sold|presumed)$/.test(each))).toEqual([]);
    expect(readme).not.toMatch(words);
  }
});

it("has every text that say is called with", () => {
  const src = join(root, "src");
  const called = readdirSync(src, { recursive: true, encoding: "utf8" }).flatMap((path) => {
    const source = path.endsWith(".ts") ? readFileSync(join(src, path), "utf8") : "";
    if (!source.includes("say(")) return [];
    const tree = ts.createSourceFile(path, source, ts.ScriptTarget.Latest, true);
    return textsSaid(tree).map((text) => ({ path, text }));
  });
  expect(called.length).toBeGreaterThan(200);
  expect(called.filter(({ text }) => text !== "" && !said.has(text))).toEqual([]);
});

it.runIf(isLong)(
  "is made from all that flows to say, and nothing said is finished English",
  { timeout: 300_000 },
  async () => {
    const found = collected();
    await expect(dataFile(found)).toMatchFileSnapshot("../../src/show/data/phraseList.ts");
    expect(found.ends.filter((end) => !glued.some((known) => end.startsWith(known)))).toEqual([]);
  },
);

/** Notes that are still glued together in English before they are said. */
const glued = ["cook/notes.ts", "plan/measure/sharedPot.ts", "scale/fit/words.ts", "scale/move.ts"];

/** The texts that stand in calls of `say` themselves, both sides of a condition among them. */
function textsSaid(tree: ts.SourceFile): string[] {
  const texts: string[] = [];
  const take = (node: ts.Node | undefined): void => {
    if (!node) return;
    if (ts.isStringLiteralLike(node)) texts.push(node.text);
    if (ts.isConditionalExpression(node)) [node.whenTrue, node.whenFalse].forEach(take);
  };
  const visit = (node: ts.Node): void => {
    if (ts.isCallExpression(node) && node.expression.getText(tree) === "say") take(node.arguments[1]);
    ts.forEachChild(node, visit);
  };
  visit(tree);
  return texts;
}
