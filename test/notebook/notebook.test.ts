/**
 * Runs the example notebook in Deno's own kernel, cell by cell as a reader would, and holds what it
 * shows against what the file records. After a change that is meant: `npm run notebook`.
 */
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { parseFragment } from "parse5";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { elements } from "../show/markup.ts";
import { root } from "../sources.ts";
import { Kernel, missing, type Output } from "./kernel.ts";

const folder = join(root, "examples");
const file = join(folder, "camp.ipynb");

/** A cell as a notebook file has it (nbformat 4.5). */
interface Cell {
  readonly cell_type: "markdown" | "code";
  readonly id: string;
  readonly source: readonly string[];
}

interface Notebook {
  readonly cells: readonly Cell[];
  readonly nbformat: number;
}

const notebook = JSON.parse(readFileSync(file, "utf8")) as Notebook;
const cells = notebook.cells.filter(({ cell_type }) => cell_type === "code");

describe.skipIf(missing !== undefined)(missing ? `camp.ipynb (${missing})` : "camp.ipynb", () => {
  const outputs = new Map<string, readonly Output[]>();
  let kernel: Kernel;

  beforeAll(async () => {
    kernel = await Kernel.start(folder);
    for (const { id, source } of cells) outputs.set(id, await kernel.run(source.join("")));
  }, 180_000);
  afterAll(() => kernel?.stop());

  const shown = (id: string): Readonly<Record<string, unknown>> => {
    const found = outputs.get(id)?.find((output) => output.output_type === "execute_result");
    return found?.output_type === "execute_result" ? found.data : {};
  };

  it("runs to its end without an error", () => {
    expect([...outputs.values()].flat().filter(({ output_type }) => output_type === "error")).toEqual([]);
    expect(outputs.size).toBeGreaterThan(5);
  });

  it.each([
    ...["sheet", "difference", "explanation", "plan", "comparison"],
    ...["tally", "influence", "sweep", "portion", "citations", "ranking", "columns"],
  ])("shows a %s as tables, in the three forms that a notebook chooses from", (id) => {
    const data = shown(id);
    expect(Object.keys(data).sort()).toEqual(["text/html", "text/markdown", "text/plain"]);
    const page = parseFragment(String(data["text/html"]));
    const tables = elements(page, "table");
    expect(tables.length).toBeGreaterThan(0);
    // A row of dashes under the headings, in GitHub Flavored Markdown, for every table of the page.
    const headed = String(data["text/markdown"]).match(/^\|(?: :?-+:? \|)+$/gm) ?? [];
    expect(headed).toHaveLength(tables.length);
    expect(String(data["text/plain"])).toContain("───");
  });

  it.each([
    ["figure", /<rect/g, 12],
    ["lines", /<path/g, 2],
  ])("draws the %s", (id, mark, least) => {
    expect(String(shown(id)["image/svg+xml"]).match(mark)?.length).toBeGreaterThanOrEqual(least);
  });

  it("shows what its file records", async () => {
    let count = 0;
    const now = notebook.cells.map((cell) =>
      cell.cell_type === "code" ? recorded(cell, outputs.get(cell.id) ?? [], ++count) : cell,
    );
    const text = `${JSON.stringify({ ...notebook, cells: now }, null, 1)}\n`;
    await expect(text).toMatchFileSnapshot(file);
  });

  it("would notice a cell that fails", async () => {
    const [first] = await kernel.run("explain(pot, 'unobtainium', 'portion')");
    expect(first).toMatchObject({ output_type: "error", ename: "SteelyardError" });
  });
});

/** A cell with its outputs as the file holds them: texts as lists of lines. */
function recorded(cell: Cell, outputs: readonly Output[], count: number): object {
  const lines = (text: string): string[] => text.split(/(?<=\n)/);
  return {
    ...cell,
    execution_count: count,
    outputs: outputs.map((output) => {
      if (output.output_type === "stream") return { ...output, text: lines(output.text) };
      if (output.output_type === "error") return output;
      const data = Object.entries(output.data).map(([kind, text]) => [kind, lines(String(text))]);
      return { ...output, data: Object.fromEntries(data), metadata: {}, execution_count: count };
    }),
  };
}
