import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { ComponentId } from "../../src/food/components.ts";
import { exactText } from "../../src/number/digits.ts";
import { SteelyardError } from "../../src/number/error.ts";
import { type Exact, exact, sum, times } from "../../src/number/exact.ts";
import type { RecipeInput, WrittenAmount } from "../../src/recipe/document.ts";
import { scale } from "../../src/scale/scale.ts";
import { sheet } from "../../src/sheet/build.ts";
import { cellValue, withColumn } from "../../src/sheet/columns.ts";
import { difference } from "../../src/sheet/difference.ts";
import { explain } from "../../src/sheet/explain.ts";
import type { ColumnFormula } from "../../src/sheet/grid.ts";
import type { CellValue, RowRef } from "../../src/sheet/own.ts";
import { toRecipe } from "../../src/sheet/recipe.ts";
import { revise } from "../../src/sheet/revise.ts";
import type { Sheet } from "../../src/sheet/sheet.ts";
import { arbitraryFactor, arbitraryRecipe, type Made, watched } from "../arbitraries.ts";
import { met, runs, seedFor } from "../runs.ts";

/** Any sequence of edits equals building afresh from the edited recipe. */

const text = (f: Exact): string => exactText(f);

const amounts = fc.oneof(
  fc.integer({ min: 0, max: 90 }).map((g) => `${g}.5 g`),
  fc.integer({ min: 1, max: 20 }).map((n) => `${n}/7 oz`),
  fc.constant("0 g"),
);

type Step =
  | { readonly kind: "edit"; readonly line: number; readonly amount: WrittenAmount }
  | { readonly kind: "scale"; readonly factor: string }
  | { readonly kind: "portions"; readonly portions: number }
  | { readonly kind: "swap"; readonly line: number; readonly food: number }
  | { readonly kind: "remove"; readonly line: number }
  | { readonly kind: "add"; readonly food: number; readonly amount: string }
  | { readonly kind: "order"; readonly by: number }
  | { readonly kind: "yield"; readonly factor: string }
  | { readonly kind: "column"; readonly which: number };

const step: fc.Arbitrary<Step> = fc.oneof(
  {
    weight: 4,
    arbitrary: fc.record({ kind: fc.constant("edit" as const), line: fc.nat(9), amount: amounts }),
  },
  fc.record({ kind: fc.constant("scale" as const), factor: arbitraryFactor }),
  fc.record({ kind: fc.constant("portions" as const), portions: fc.integer({ min: 1, max: 9 }) }),
  fc.record({ kind: fc.constant("swap" as const), line: fc.nat(9), food: fc.nat(5) }),
  fc.record({ kind: fc.constant("remove" as const), line: fc.nat(9) }),
  fc.record({ kind: fc.constant("add" as const), food: fc.nat(5), amount: amounts }),
  fc.record({ kind: fc.constant("order" as const), by: fc.nat(9) }),
  fc.record({ kind: fc.constant("yield" as const), factor: arbitraryFactor }),
  { weight: 4, arbitrary: fc.record({ kind: fc.constant("column" as const), which: fc.nat(7) }) },
);

/** Formulas that read cells, sums, each other, things that fail, and, together, in a circle. */
const formulas: readonly (readonly [string, ColumnFormula])[] = [
  ["ratio", (at) => at.get("protein").times(100).over(at.get("energy"))],
  ["less", (at) => at.get("iron").minus(at.total("iron"))],
  ["chain", (at) => at.get("ratio").plus(1)],
  ["summed", (at) => (at.line ? at.get("grams").times(2) : at.sum("summed"))],
  ["broken", (at) => (at.get("fat").value.n > 0n ? at.get("nowhere") : at.get("fat"))],
  ["round", (at) => (at.total("grams").value.n % 3n === 0n ? at.get("about") : at.get("grams"))],
  ["about", (at) => at.get("round")],
  ["looked", (at) => at.line?.amount.value.n.toString() ?? "0"],
];

function take(s: Sheet, { table }: Made, { ...step }: Step, fresh: number): Sheet {
  const key = "line" in step ? (s.lines[step.line % s.lines.length]?.key ?? "") : "";
  switch (step.kind) {
    case "edit":
      return s.edit({ [key]: step.amount });
    case "scale":
      return scale(s, { factor: step.factor }).sheet;
    case "portions":
      return revise(s, { portions: step.portions });
    case "swap":
      return revise(s, { swap: { [key]: table.ids[step.food % table.ids.length] ?? "" } });
    case "remove":
      return s.lines.length > 1 ? revise(s, { remove: [key] }) : s;
    case "add":
      return revise(s, {
        add: [
          { key: `new-${fresh}`, food: table.ids[step.food % table.ids.length] ?? "", amount: step.amount },
        ],
      });
    case "order":
      return revise(s, {
        order: [...s.lines]
          .map((l) => l.key)
          .sort((a, b) => ((a.length * 7 + step.by) % 5) - ((b.length * 7) % 5)),
      });
    case "yield":
      return revise(s, { yieldFactor: step.factor });
    case "column": {
      const [name, formula] = formulas[step.which] ?? formulas[0]!;
      return withColumn(s, name, formula);
    }
  }
}

const said = (value: CellValue): unknown => ("toJSON" in value ? value.toJSON() : value);

/** Everything that a sheet says, own cells and failures included. */
function everything(s: Sheet): { readonly own: unknown; readonly [part: string]: unknown } {
  const rows: RowRef[] = [...s.lines.map((l) => ({ line: l.key })), "total", "portion", "per100g"];
  return {
    lines: s.lines.map((l) => [l.key, l.food, text(l.grams)]),
    masses: [text(s.masses.raw), text(s.masses.cooked), s.portions.toString()],
    totals: watched.map((id) => s.total(id).toJSON()),
    cells: s.lines.map((l) => watched.map((id) => s.cell(l.key, id).toJSON())),
    own: formulas.map(([name]) => rows.map((row) => said(cellValue(s, name, row)))),
  };
}

/** A sheet with columns, or why it may not have them. */
function defined(s: Sheet, columns: ReadonlyMap<string, ColumnFormula>): Sheet | "column-cycle" {
  try {
    return [...columns].reduce((all, [name, formula]) => withColumn(all, name, formula), s);
  } catch (error) {
    if (error instanceof SteelyardError && error.code === "column-cycle") return "column-cycle";
    throw error;
  }
}

describe("a live sheet", () => {
  it("after any steps is what the recipe it stands for gives afresh", () => {
    const circles = { refused: 0, closed: 0 };
    fc.assert(
      fc.property(arbitraryRecipe, fc.array(step, { maxLength: 8 }), (made, steps) => {
        let s = sheet(made.recipe, made.table);
        const columns = new Map<string, ColumnFormula>();
        steps.forEach((each, i) => {
          // Reading between steps fills what later versions carry over.
          if (i % 2 === 0) everything(s);
          const was = s;
          try {
            s = take(s, made, each, i);
            if (each.kind === "column") columns.set(...(formulas[each.which] ?? formulas[0]!));
          } catch (error) {
            if (!(error instanceof SteelyardError)) throw error;
            expect(error.code).toBe(each.kind === "column" ? "column-cycle" : "recipe-malformed");
            if (each.kind === "column") {
              // A definition is refused only where the same columns, defined afresh, close a circle.
              circles.refused += 1;
              const all = new Map([...columns, formulas[each.which] ?? formulas[0]!]);
              expect(defined(sheet(toRecipe(was), made.table), all)).toBe("column-cycle");
            }
            s = was;
          }
        });
        const plain = sheet(JSON.parse(JSON.stringify(toRecipe(s))), made.table);
        const afresh = defined(plain, columns);
        if (afresh === "column-cycle") {
          // A circle that an edit closed is refused to a new definition, and fails cells in an old one.
          circles.closed += 1;
          const { own, ...rest } = everything(s);
          expect(JSON.stringify(own)).toContain('"column-cycle"');
          const { own: _, ...restAfresh } = everything(plain);
          expect(rest).toEqual(restAfresh);
        } else {
          expect(everything(s)).toEqual(everything(afresh));
        }
      }),
      { numRuns: runs(200), seed: seedFor("live sheets", 11) },
    );
    // Both ways to a circle were taken.
    expect(Math.min(circles.refused, circles.closed)).toBeGreaterThanOrEqual(met(1));
  });

  it("leaves every earlier version as it was", () => {
    fc.assert(
      fc.property(arbitraryRecipe, fc.array(step, { minLength: 1, maxLength: 6 }), (made, steps) => {
        const versions: { sheet: Sheet; said: string }[] = [];
        let s = sheet(made.recipe, made.table);
        for (const [i, each] of steps.entries()) {
          versions.push({ sheet: s, said: JSON.stringify(everything(s)) });
          try {
            s = take(s, made, each, i);
          } catch (error) {
            if (!(error instanceof SteelyardError)) throw error;
          }
          everything(s);
        }
        for (const v of versions) expect(JSON.stringify(everything(v.sheet))).toBe(v.said);
      }),
    );
  });

  it("works out again only what an edit reaches", () => {
    fc.assert(
      fc.property(arbitraryRecipe, amounts, ({ table, recipe }, amount) => {
        const calls = new Map<string, number>();
        const counted =
          (name: string, formula: ColumnFormula): ColumnFormula =>
          (at) => {
            const key = `${name} ${JSON.stringify(at.row)}`;
            calls.set(key, (calls.get(key) ?? 0) + 1);
            return formula(at);
          };
        const base = withColumn(
          withColumn(
            sheet(recipe, table),
            "own",
            counted("own", (at) => at.get("protein").times(2)),
          ),
          "next",
          counted("next", (at) => at.get("own").plus("1/3")),
        );
        calls.clear();
        const edited = base.edit({ "line-0": amount });
        for (const line of edited.lines) {
          cellValue(edited, "own", { line: line.key });
          cellValue(edited, "next", { line: line.key });
        }
        for (const key of calls.keys()) expect(key).toContain('"line-0"');
        // An edit that changes nothing reaches nothing.
        cellValue(edited, "next", "total");
        calls.clear();
        const same = edited.edit({ "line-0": amount });
        for (const line of same.lines) cellValue(same, "next", { line: line.key });
        cellValue(same, "next", "total");
        expect([...calls.keys()]).toEqual([]);
      }),
    );
  });
});

describe("an explanation", () => {
  it("has leaves that add up to its root, literally, nested recipes and cooking included", () => {
    fc.assert(
      fc.property(
        arbitraryRecipe,
        arbitraryFactor,
        fc.constantFrom(...watched),
        ({ table, recipe }, factor, id: ComponentId) => {
          const inner: RecipeInput = { ...recipe, name: "Inner" };
          const outer: RecipeInput = {
            name: "Outer",
            portions: 3,
            yieldFactor: "9/10",
            lines: [{ key: "inner", recipe: inner, amount: "2/3 batch" }, ...recipe.lines],
          };
          const s = scale(sheet(outer, table), { factor }).sheet;
          for (const where of ["portion", "total"] as const) {
            const why = explain(s, id, where);
            expect(text(why.value)).toBe(text((where === "portion" ? s.portion(id) : s.total(id)).value));
            expect(text(sum(why.leaves.map((leaf) => leaf.value)))).toBe(text(why.value));
          }
          const line = explain(s, id, { line: "inner" });
          expect(text(sum(line.leaves.map((leaf) => leaf.value)))).toBe(text(s.cell("inner", id).value));
        },
      ),
    );
  });
});

describe("a difference", () => {
  it("is none of a sheet with itself, turns round, and adds up", () => {
    fc.assert(
      fc.property(arbitraryRecipe, arbitraryFactor, amounts, ({ table, recipe }, factor, amount) => {
        const a = sheet(recipe, table);
        const b = scale(a, { factor }).sheet.edit({ "line-0": amount });
        expect(difference(a, a).none).toBe(true);
        const [there, back] = [difference(a, b), difference(b, a)];
        expect(there.lines.map((l) => text(l.by))).toEqual(
          back.lines.map((l) => text(times(l.by, exact(-1)))),
        );
        for (const { component, change } of there.components) {
          expect(text(sum([a.portion(component).value, change.value]))).toBe(
            text(b.portion(component).value),
          );
        }
      }),
    );
  });
});
