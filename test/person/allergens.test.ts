import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type Allergen, allergens } from "../../src/food/allergens.ts";
import type { FoodInput } from "../../src/food/food.ts";
import { foodTable } from "../../src/food/table.ts";
import { starterFoods } from "../../src/foods.ts";
import { SteelyardError } from "../../src/number/error.ts";
import type { Person } from "../../src/person/person.ts";
import { allergenCheck, allergensOf } from "../../src/person/portion/allergens.ts";
import { sheet } from "../../src/sheet/build.ts";
import type { Sheet } from "../../src/sheet/sheet.ts";
import { toText } from "../../src/show/text.ts";
import { errorOf } from "../number/errorOf.ts";
import { runs } from "../runs.ts";

const ids = Object.keys(allergens) as Allergen[];
const cox: Person = { sex: "female", age: 22, mass: "52 kg" };

const food = (id: string, said?: readonly Allergen[]): FoodInput => ({
  id,
  name: id,
  source: "made up for a test",
  per100g: { energy: 100 },
  ...(said && { allergens: said }),
});

function dish(foods: readonly FoodInput[]): Sheet {
  const lines = foods.map(({ id }) => ({ key: id, food: id, amount: "10 g" }));
  return sheet({ name: "Dish", portions: 2, lines }, foodTable(foods));
}

/** Foods f0, f1 … that hold, or say nothing of, random allergens. */
const someFoods = fc
  .array(fc.option(fc.subarray(ids), { nil: undefined }), { minLength: 1, maxLength: 6 })
  .map((all) => all.map((said, i) => food(`f${i}`, said)));

describe("the lists", () => {
  it("are the EU's fourteen and the United States' nine", () => {
    // Regulation (EU) No 1169/2011, Annex II, entries 1 to 14; US FDA on the FASTER Act: the nine.
    const eu = [
      "gluten crustaceans egg fish peanut soya milk nuts celery mustard sesame sulphites lupin molluscs",
      "milk egg fish crustaceans nuts peanut wheat soya sesame",
    ].map((list) => list.split(" ").sort());
    const of = (list: "eu" | "us"): string[] =>
      allergensOf(dish([food("x")]), { list })
        .unknown.flatMap(({ of: all }) => [...all])
        .sort();
    expect([of("eu"), of("us")]).toEqual(eu);
  });
});

describe("allergens of a dish", () => {
  it("are those of its foods, each with its lines, whatever the order of lines", () => {
    fc.assert(
      fc.property(someFoods, (foods) => {
        const { contains, unknown } = allergensOf(dish(foods));
        for (const id of ids) {
          const holding = foods.filter(
            (f) => f.allergens?.includes(id) || (id === "gluten" && f.allergens?.includes("wheat")),
          );
          expect(contains.find(({ allergen }) => allergen === id)?.lines ?? []).toEqual(
            holding.map((f) => f.id),
          );
        }
        const silent = foods.filter((f) => f.allergens === undefined).map((f) => f.id);
        const saysNothing = unknown.filter(({ why }) => why === "says nothing of allergens");
        expect(saysNothing.map(({ line }) => line)).toEqual(silent);
        for (const each of saysNothing) expect(each.of).toEqual(ids);
        const turned = allergensOf(dish([...foods].reverse()));
        expect(turned.contains.map((c) => [c.allergen, [...c.lines].sort()])).toEqual(
          contains.map((c) => [c.allergen, [...c.lines].sort()]),
        );
      }),
    );
  });

  it("are those of nested recipes too, and of every meal", () => {
    fc.assert(
      fc.property(someFoods, (foods) => {
        const plain = allergensOf(dish(foods));
        const lines = foods.map(({ id }) => ({ key: id, food: id, amount: "10 g" }));
        const nested = sheet(
          {
            name: "Outer",
            portions: 1,
            lines: [{ key: "in", recipe: { name: "In", portions: 1, lines }, amount: "5 g" }],
          },
          foodTable(foods),
        );
        const inner = allergensOf(nested);
        expect(inner.contains).toEqual(
          plain.contains.map((c) => ({ ...c, lines: c.lines.map((l) => `in/${l}`) })),
        );
        const day = allergensOf({ breakfast: dish(foods), supper: nested });
        expect(day.contains.map(({ allergen }) => allergen)).toEqual(
          plain.contains.map(({ allergen }) => allergen),
        );
        expect(day.unknown.length).toBe(2 * plain.unknown.length);
      }),
      { numRuns: runs(40) },
    );
  });

  it("leave out a line of no mass, which serves nothing", () => {
    const s = dish([food("a", ["milk"]), food("b", [])]).edit({ a: "0 g" });
    expect(allergensOf(s).contains).toEqual([]);
  });

  it("of gluten without a cereal leave wheat unknown; wheat is a cereal containing gluten", () => {
    // Regulation (EU) No 1169/2011, Annex II, entry 1, names wheat first among cereals containing gluten.
    const rye = allergensOf(dish([food("rye", ["gluten"])]));
    expect(rye.contains.map(({ allergen }) => allergen)).toEqual(["gluten"]);
    expect(rye.unknown).toEqual([
      { line: "rye", food: "rye", of: ["wheat"], why: "says gluten, but not of which cereal" },
    ]);
    const flour = allergensOf(dish([food("flour", ["wheat"])]), { list: "eu" });
    expect(flour.contains.map(({ allergen }) => allergen)).toEqual(["gluten"]);
  });

  it("show what is not known beside what is", () => {
    const text = toText(allergensOf(dish([food("cheese", ["milk"]), food("sauce")]), { list: "us" }));
    expect(text).toMatch(/milk +cheese +sauce/);
    expect(text).toMatch(/sesame +sauce/);
    expect(text).toContain("not a guarantee");
  });
});

describe("a declared allergen", () => {
  const wide: Person = { ...cox, allergens: ["milk", "sesame"] };

  it("is refused, all of them at once, with the lines", () => {
    const error = errorOf(() =>
      allergenCheck(dish([food("butter", ["milk"]), food("tahini", ["sesame"]), food("rice", [])]), wide),
    );
    expect(error.faults.map(({ code, path }) => [code, path])).toEqual([
      ["allergen-served", ["allergens", "milk"]],
      ["allergen-served", ["allergens", "sesame"]],
    ]);
    expect(error.message).toContain("butter");
    expect(error.hint).toContain("override");
  });

  it("passes only in writing, one by one", () => {
    const s = dish([food("butter", ["milk"]), food("tahini", ["sesame"])]);
    const milk = { override: { milk: "Clarified; agreed with her and her clinic, 3 March." } };
    expect(errorOf(() => allergenCheck(s, wide, milk)).faults.map(({ path }) => path[1])).toEqual(["sesame"]);
    expect(errorOf(() => allergenCheck(s, wide, { override: { milk: "  ", sesame: "ok" } })).code).toBe(
      "comparison-malformed",
    );
    const both = allergenCheck(s, wide, { override: { ...milk.override, sesame: "Refined oil only." } });
    expect(both.overridden.map(({ allergen, because }) => [allergen, because.slice(0, 7)])).toEqual([
      ["milk", "Clarifi"],
      ["sesame", "Refined"],
    ]);
  });

  it("lists the foods that say nothing, and only for those who declared one", () => {
    const s = dish([food("sauce"), food("rice", [])]);
    expect(allergenCheck(s, wide).unknown).toEqual([
      { line: "sauce", food: "sauce", of: ["milk", "sesame"], why: "says nothing of allergens" },
    ]);
    expect(allergenCheck(s, cox).unknown).toEqual([]);
  });

  it("never passes a dish that holds it: any foods, any declared", () => {
    fc.assert(
      fc.property(someFoods, fc.subarray(ids, { minLength: 1 }), (foods, declared) => {
        const served = declared.filter((id) =>
          foods.some((f) => f.allergens?.includes(id) || (id === "gluten" && f.allergens?.includes("wheat"))),
        );
        const check = (): unknown => allergenCheck(dish(foods), { ...cox, allergens: declared });
        if (served.length === 0) expect(check).not.toThrow();
        else
          expect(
            errorOf(check)
              .faults.map(({ path }) => path[1])
              .sort(),
          ).toEqual([...served].sort());
      }),
    );
  });

  it("of hostile shape is refused", () => {
    const s = dish([food("a", [])]);
    for (const eaten of [null, undefined, 5, {}, [], [null], { a: 1 }, "sheet", new Map()]) {
      expect(errorOf(() => allergensOf(eaten as unknown as Sheet)).code).toBe("comparison-malformed");
    }
    for (const list of ["uk", "__proto__", "constructor", null, 3]) {
      expect(() => allergensOf(s, { list: list as "eu" })).toThrow(SteelyardError);
    }
    for (const override of [{ mlik: "typo" }, { constructor: "x" }, { milk: 5 }] as object[]) {
      expect(errorOf(() => allergenCheck(s, cox, { override })).code).toBe("comparison-malformed");
    }
    expect(errorOf(() => allergenCheck(s, { ...cox, allergens: ["gluten2" as Allergen] })).code).toBe(
      "person-malformed",
    );
  });
});

describe("starter foods", () => {
  it("that hold milk are told from those that only sound like it", () => {
    // Common practice, no source: butter, milk and yoghurt hold milk; coconut milk and cocoa do not.
    const held = (id: string): readonly string[] =>
      allergensOf(
        sheet({ name: "x", portions: 1, lines: [{ food: id, amount: "10 g" }] }, starterFoods),
      ).contains.map(({ allergen }) => allergen);
    expect(held("milk-whole")).toEqual(["milk"]);
    expect(held("butter-salted")).toEqual(["milk"]);
    expect(held("oats-rolled-dry")).toEqual(["gluten"]);
  });
});
