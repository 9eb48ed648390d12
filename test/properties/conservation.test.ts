import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { foodTable } from "../../src/food/table.ts";
import { exactText } from "../../src/number/digits.ts";
import { type Exact, exact, ONE, over, sum, times } from "../../src/number/exact.ts";
import { compareRatios } from "../../src/number/ratio.ts";
import { portionPlan } from "../../src/plan/plan.ts";
import { scale } from "../../src/scale/scale.ts";
import { sheet } from "../../src/sheet/build.ts";
import { toRecipe } from "../../src/sheet/recipe.ts";
import type { Sheet } from "../../src/sheet/sheet.ts";
import { arbitraryFactor, arbitraryRecipe, watched } from "../arbitraries.ts";

/** Held literally, as exact fractions, never to so many digits. */

const text = (f: Exact): string => exactText(f);

/** Everything a sheet says, exactly. */
function said(s: Sheet): unknown {
  return {
    lines: s.lines.map((l) => [l.key, text(l.grams), l.scaling, l.added]),
    masses: [text(s.masses.raw), text(s.masses.cooked)],
    totals: watched.map((id) => s.total(id).toJSON()),
    portions: s.portions.toString(),
  };
}

describe("a sheet adds up", () => {
  it("lines sum to totals, and portions times their number to the batch, in mass and every component", () => {
    fc.assert(
      fc.property(arbitraryRecipe, ({ table, recipe }) => {
        const s = sheet(recipe, table);
        for (const id of watched) {
          const cells = sum(s.lines.map((l) => s.cell(l.key, id).value));
          const gained = id === "water" ? s.water.change : exact(0);
          expect(text(sum([cells, gained]))).toBe(text(s.total(id).value));
          expect(text(times(s.portion(id).value, s.values.portions))).toBe(text(s.total(id).value));
        }
        expect(text(sum(s.lines.map((l) => l.grams)))).toBe(text(s.masses.raw));
        expect(text(times(s.portionMass, s.values.portions))).toBe(text(s.masses.cooked));
        expect(text(sum([s.masses.raw, s.masses.change]))).toBe(text(s.masses.cooked));
      }),
    );
  });

  it("does not mind the order of lines", () => {
    fc.assert(
      fc.property(arbitraryRecipe, fc.infiniteStream(fc.nat()), ({ table, recipe }, order) => {
        const shuffled = recipe.lines
          .map((line) => ({ line, at: order.next().value }))
          .sort((a, b) => a.at - b.at)
          .map(({ line }) => line);
        const [a, b] = [sheet(recipe, table), sheet({ ...recipe, lines: shuffled }, table)];
        for (const id of watched) {
          expect(text(b.total(id).value)).toBe(text(a.total(id).value));
          expect(new Set(b.total(id).missing)).toEqual(new Set(a.total(id).missing));
          expect(b.total(id).coverage.toString()).toBe(a.total(id).coverage.toString());
        }
      }),
    );
  });

  it("knows no less when a figure becomes known", () => {
    fc.assert(
      fc.property(arbitraryRecipe, fc.constantFrom(...watched), fc.nat(), ({ table, recipe }, id, which) => {
        const food = table.get(table.ids[which % table.ids.length] ?? "food-0");
        const fuller = table.with([
          { ...food, per100g: { ...food.per100g, [id]: food.per100g[id] ?? "1.5" } },
        ]);
        const [before, after] = [sheet(recipe, table).total(id), sheet(recipe, fuller).total(id)];
        expect(after.coverage.gte(before.coverage)).toBe(true);
        expect(after.value.gte(before.value)).toBe(true);
        expect(after.missing.length).toBeLessThanOrEqual(before.missing.length);
      }),
    );
  });

  it("is the same after a JSON round trip", () => {
    fc.assert(
      fc.property(arbitraryRecipe, arbitraryFactor, ({ table, recipe }, factor) => {
        const s = scale(sheet(recipe, table), { factor }).sheet;
        const again = sheet(JSON.parse(JSON.stringify(toRecipe(s))), table);
        expect(said(again)).toEqual(said(s));
        expect(JSON.parse(JSON.stringify(toRecipe(again)))).toEqual(JSON.parse(JSON.stringify(toRecipe(s))));
      }),
    );
  });
});

describe("scaling", () => {
  it("there and back is where it was", () => {
    fc.assert(
      fc.property(arbitraryRecipe, arbitraryFactor, ({ table, recipe }, factor) => {
        const s = sheet(recipe, table);
        const back = scale(scale(s, { factor }).sheet, { factor: text(over(ONE, exact(factor))) }).sheet;
        expect(said(back)).toEqual(said(s));
      }),
    );
  });

  it("commutes with totals where nothing is per portion", () => {
    fc.assert(
      fc.property(arbitraryRecipe, arbitraryFactor, ({ table, recipe }, factor) => {
        const lines = recipe.lines.map((line) => ({ ...line, scaling: "held" as const }));
        const s = sheet({ ...recipe, lines }, table);
        const scaled = scale(s, { factor }).sheet;
        for (const id of watched)
          expect(text(scaled.total(id).value)).toBe(text(times(s.total(id).value, exact(factor))));
        expect(text(scaled.masses.cooked)).toBe(text(times(s.masses.cooked, exact(factor))));
      }),
    );
  });

  it("never changes a per-portion line, nor a ratio of the others", () => {
    fc.assert(
      fc.property(
        arbitraryRecipe,
        arbitraryFactor,
        fc.integer({ min: 1, max: 30 }),
        ({ table, recipe }, factor, portions) => {
          const s = sheet(recipe, table);
          const scaled = scale(s, { factor, portions }).sheet;
          const perPortion = (sheet: Sheet, i: number): Exact =>
            over(sheet.values.grams[i] ?? exact(0), sheet.values.portions);
          s.lines.forEach((line, i) => {
            const expected = line.scaling === "per-portion" ? ONE : exact(factor);
            expect(text(perPortion(scaled, i))).toBe(text(times(perPortion(s, i), expected)));
          });
        },
      ),
    );
  });

  it("meets the target exactly, or says what can be reached", () => {
    fc.assert(
      fc.property(
        arbitraryRecipe,
        fc.constantFrom(...watched),
        fc.integer({ min: 1, max: 900 }),
        ({ table, recipe }, id, target) => {
          const s = sheet(recipe, table);
          let scaled: Sheet;
          try {
            scaled = scale(s, { [id]: target }, { silent: "accept" }).sheet;
          } catch (error) {
            expect((error as { code: string }).code).toBe("target-unreachable");
            return;
          }
          expect(text(scaled.portion(id).value)).toBe(String(target));
        },
      ),
    );
  });
});

describe("a plan", () => {
  it("cooks what it serves: the batch is the sum of the portions", () => {
    fc.assert(
      fc.property(
        arbitraryRecipe,
        fc.array(arbitraryFactor, { minLength: 1, maxLength: 5 }),
        ({ table, recipe }, factors) => {
          const plan = portionPlan({
            meals: [{ id: "meal", dishes: { dish: sheet(recipe, table) } }],
            people: factors.map((factor, i) => ({ id: `p${i}`, demands: { factor } })),
          });
          for (const id of watched) {
            const portions = plan.people.map((p) => plan.brings(p.id, "meal", id).value);
            const [served, held] = [sum(portions), plan.holds("meal", id).value];
            // A portion that loses more than its water has an unknown amount left, counted as none: not less.
            if (id === "water" && plan.portions.some((p) => p.dishes.get("dish")?.water.beyond.n !== 0n))
              expect(compareRatios(served, held)).toBeGreaterThanOrEqual(0);
            else expect(text(served)).toBe(text(held));
          }
          const batch = plan.meals[0]?.batch.get("dish");
          batch?.lines.forEach((line, i) => {
            const served = plan.portions.map((p) => p.dishes.get("dish")?.lines[i]?.grams ?? exact(0));
            expect(text(sum(served))).toBe(text(line.grams));
          });
          const eaten = plan.portions.map((p) => p.dishes.get("dish")?.masses.cooked ?? exact(0));
          expect(text(sum(eaten))).toBe(text(batch?.masses.cooked ?? exact(-1)));
        },
      ),
    );
  });
});

describe("nesting", () => {
  it("a whole batch nested brings what it holds, gaps and all", () => {
    fc.assert(
      fc.property(arbitraryRecipe, ({ table, recipe }) => {
        const inner = sheet(recipe, table);
        if (inner.masses.cooked.n === 0n) return;
        const outer = sheet(
          { name: "Outer", portions: 1, lines: [{ key: "in", recipe, amount: "1 batch" }] },
          table,
        );
        for (const id of watched) {
          expect(text(outer.total(id).value)).toBe(text(inner.total(id).value));
          expect(outer.total(id).missing).toEqual(inner.total(id).missing.map((key) => `in/${key}`));
          expect(outer.total(id).coverage.toString()).toBe(inner.total(id).coverage.toString());
        }
        const halves = sheet(
          {
            name: "Outer",
            portions: 1,
            lines: [
              { recipe, amount: "1/2 batch" },
              { recipe, amount: "1/2 batch" },
            ],
          },
          table,
        );
        for (const id of watched) expect(text(halves.total(id).value)).toBe(text(inner.total(id).value));
      }),
    );
  });
});

describe("a food table", () => {
  it("gives back what it was given", () => {
    fc.assert(
      fc.property(arbitraryRecipe, ({ table }) => {
        const again = foodTable(table.ids.map((id) => table.get(id)));
        expect(again.ids.map((id) => again.get(id))).toEqual(table.ids.map((id) => table.get(id)));
      }),
    );
  });
});
