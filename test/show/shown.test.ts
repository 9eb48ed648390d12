import { inspect } from "node:util";
import { describe, expect, it } from "vitest";
import { exact } from "../../src/number/exact.ts";
import { figureCell } from "../../src/show/figure.ts";
import { toHtml } from "../../src/show/html.ts";
import { toMarkdown } from "../../src/show/markdown.ts";
import { Shown } from "../../src/show/shown.ts";
import { type Table, table } from "../../src/show/table.ts";
import { toText } from "../../src/show/text.ts";

class Rota extends Shown {
  readonly crew: readonly string[];
  constructor(crew: readonly string[]) {
    super();
    this.crew = crew;
  }
  override toTables(): readonly Table[] {
    const rows = this.crew.map((who) => [who, figureCell(exact("1"))]);
    const columns = [
      { key: "who", heading: "Who" },
      { key: "n", heading: "Bowls", align: "end" },
    ] as const;
    return [table({ title: "Rota", columns, rows })];
  }
}

type Notebook = Record<symbol, () => Record<string, string>>;
const displayed = (x: object): Record<string, string> | undefined =>
  (x as Notebook)[Symbol.for("Jupyter.display")]?.();

describe("Shown", () => {
  const rota = new Rota(["Cox", "<b>Stroke</b>"]);

  it("shows a notebook the same tables three ways", () => {
    expect(displayed(rota)).toEqual({
      "text/plain": toText(rota),
      "text/markdown": toMarkdown(rota),
      "text/html": toHtml(rota),
    });
    expect(displayed(rota)?.["text/html"]).toContain("&lt;b&gt;Stroke&lt;/b&gt;");
  });

  it("prints as text in Node's console, alone and inside other things", () => {
    expect(inspect(rota)).toBe(toText(rota));
    expect(inspect([rota])).toContain("Who            Bowls");
    expect(() => inspect(Rota)).not.toThrow();
    expect(() => inspect(Rota.prototype)).not.toThrow();
  });

  it("shows of a long table the first rows, and says how many more there are", () => {
    const long = new Rota(Array.from({ length: 5000 }, (_, i) => `Rower ${i}`));
    expect(inspect(long).split("\n")).toHaveLength(1 + 2 + 200 + 1);
    for (const text of Object.values(displayed(long) ?? {}))
      expect(text).toContain("4800 more rows not shown");
  });

  it("adds to the object itself only what refuses a clone, and no name that a notebook takes for another kind of thing", () => {
    expect(Reflect.ownKeys(rota)).toEqual(["cloned", "crew"]);
    expect(JSON.parse(JSON.stringify(rota))).toEqual({ crew: ["Cox", "<b>Stroke</b>"] });
    // Deno's notebook kernel also looks for these names, each the mark of another library's value.
    for (const name of ["schema", "head", "toSpec", "outerHTML"]) expect(name in rota).toBe(false);
  });

  it("takes a subclass's own way to be displayed before the common one", () => {
    class Plain extends Rota {
      [Symbol.for("Jupyter.display")](): Record<string, string> {
        return { "text/plain": "own" };
      }
    }
    expect(displayed(new Plain([]))).toEqual({ "text/plain": "own" });
  });
});
