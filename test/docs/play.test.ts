/** The checker of examples, checked: what is wrong must not pass. */
import { describe, expect, it } from "vitest";
import { docstringExamples, examplesIn } from "./extract.ts";
import { play } from "./play.ts";

const modules: Readonly<Record<string, Readonly<Record<string, unknown>>>> = {
  kitchen: { double: (n: number) => 2 * n, default: "oven" },
};
const load = async (name: string): Promise<Readonly<Record<string, unknown>>> => modules[name] ?? {};
const block = (code: string, output?: string): string =>
  ["```ts", code, "```", ...(output === undefined ? [] : ["", "```text", output, "```"])].join("\n");
const faultsOf = async (markdown: string, header = ""): Promise<string[]> => {
  const [example] = examplesIn(markdown, "page.md");
  return example ? play(example, header, load) : ["no example"];
};

describe("an example that does what it says", () => {
  it.each([
    ["prints a claim", 'console.log("two", 2); // => two 2'],
    ["has a value", "1 + 1; // => 2"],
    ["has a value of many lines", "Array.from({ length: 30 }, (_, i) => i).slice(28); // => [ 28, 29 ]"],
    ["keeps a value", "const n: number = 20 + 1; // => 21"],
    [
      "imports",
      'import { double as twice } from "kitchen";\nimport oven from "kitchen";\ntwice(4); // => 8\noven; // => oven',
    ],
    ["imports types", 'import type { Pan } from "kitchen";\nconst pan: Pan = 3;\npan; // => 3'],
    ["waits", "(await Promise.resolve(3)) + 1; // => 4"],
    ["claims inside a block", "for (const n of [7]) {\n  n; // => 7\n}"],
    ["has comments of its own", "// a comment\n1 + 1; // => 2\n// another"],
  ])("%s", async (_, code) => {
    expect(await faultsOf(block(code))).toEqual([]);
  });

  it("prints its text block", async () => {
    expect(await faultsOf(block('console.log("a  \\n b");\nconsole.log(3);', "a\n b\n3"))).toEqual([]);
  });

  it("goes on in a continued block", async () => {
    const page = ["```ts", 'const a = "x";', "console.log(a);", "```", "```text", "x", "```", "Then:"].join(
      "\n",
    );
    const more = ["```ts continued", "console.log(a + a);", "```", "", "```text", "xx", "```"].join("\n");
    expect(await faultsOf(`${page}\n${more}`)).toEqual([]);
    expect(await faultsOf(`${page}\n${more.replace("text\nxx", "text\nyy")}`)).toHaveLength(1);
  });

  it("is given names by its header", async () => {
    expect(await faultsOf(block("double(2); // => 4"), 'import { double } from "kitchen";\n')).toEqual([]);
  });
});

describe("an example that does not", () => {
  it.each([
    ["a value that differs", block("1 + 1; // => 3"), /line 2: gives 2, and not 3/],
    ["a second value that differs", block("1; // => 1\n2; // => 1"), /line 3: gives 2/],
    ["a kept value that differs", block("const n = 2; // => 3"), /gives 2/],
    ["a printed claim that differs", block('console.log("a"); // => b'), /gives a, and not b/],
    ["a print that is not shown", block("1; // => 1\nconsole.log(5);"), /does not show.*\n5/],
    ["a text block that differs", block("console.log(5);", "6"), /prints\n5\nand not\n6/],
    ["a text block without its print", block("const n = 5;", "5"), /prints\n\nand not\n5/],
    ["a claim without its arrow", block("1; // => 1\n1 + 1; // 2"), /line 3: begin the comment/],
    ["nothing to check", block("const n = 5;"), /nothing that can be checked/],
    [
      "a text block that is another's",
      `${block("const n = 5;")}\nsome words\n${"```text\n5\n```"}`,
      /nothing that/,
    ],
  ])("%s", async (_, page, fault) => {
    expect((await faultsOf(page)).join("\n")).toMatch(fault);
  });

  it.each([
    ["throws", 'throw new Error("burnt");', "burnt"],
    ["throws in a claim", "undefinedName; // => 3", "undefinedName is not defined"],
    ["does not parse", "const = 3;", "Unexpected token"],
  ])("%s", async (_, code, message) => {
    await expect(faultsOf(block(code))).rejects.toThrow(message);
  });

  it("is none where it stands inside a longer fence", () => {
    expect(
      examplesIn("````markdown\n```ts\n1; // => 2\n```\n````\n```ts\n1; // => 1\n```", "page.md"),
    ).toEqual([{ file: "page.md", line: 6, code: "1; // => 1" }]);
  });

  it("continues nothing", () => {
    expect(() => examplesIn("```ts continued\n1;\n```", "page.md")).toThrow(/page\.md:1: continues nothing/);
  });
});

describe("a docstring", () => {
  it("gives its examples with the lines they stand on", () => {
    const source = [
      "const a = 1;",
      "/**",
      " * Says so.",
      " * @example",
      " * ```ts",
      " * a; // => 1",
      " * ```",
      " */",
    ];
    expect(docstringExamples(source.join("\n"), "a.ts")).toEqual([
      { file: "a.ts", line: 5, code: "a; // => 1" },
    ]);
  });
});
