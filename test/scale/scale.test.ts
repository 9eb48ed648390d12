import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { foodTable } from "../../src/food/table.ts";
import { exactText } from "../../src/number/digits.ts";
import { SteelyardError } from "../../src/number/error.ts";
import { exact } from "../../src/number/exact.ts";
import { fit } from "../../src/scale/fit.ts";
import { reach } from "../../src/scale/reach.ts";
import { scale } from "../../src/scale/scale.ts";
import { substitutes } from "../../src/scale/substitutes.ts";
import { sweep } from "../../src/scale/sweep.ts";
import { sheet } from "../../src/sheet/build.ts";
import { arbitraryFactor, arbitraryRecipe, watched } from "../arbitraries.ts";
import { errorOf } from "../number/errorOf.ts";

const foods = foodTable([
  { id: "oats", name: "Oats", source: "made up", per100g: { energy: 400, protein: 10, iodine: 1 } },
  { id: "kelp", name: "Kelp", source: "made up", per100g: { energy: 40, iodine: 5000 } },
  { id: "milk", name: "Milk", source: "made up", per100g: { energy: 60, protein: 3 } },
]);

const bowl = sheet(
  {
    name: "Bowl",
    portions: 2,
    lines: [
      { key: "oats", food: "oats", amount: "100 g", most: "120 g" },
      { key: "milk", food: "milk", amount: "200 g", least: "60 g" },
      { key: "kelp", food: "kelp", amount: "4 g", scaling: "per-portion" },
    ],
  },
  foods,
);

describe("one target", () => {
  it("is (target − per-portion lines) ÷ the rest: worked by hand", () => {
    // One portion: 50 g oats 200 kcal, 100 g milk 60 kcal, 2 g kelp 0.8 kcal. (520.8 − 0.8) ÷ 260 = 2.
    const { sheet: s, factor } = scale(bowl, { energy: "520.8 kcal" });
    expect(exactText(factor)).toBe("2");
    expect(s.lines.map((l) => l.grams.toString())).toEqual(["200", "400", "4"]);
    expect(s.portions.toString()).toBe("2");
  });

  it("in kilojoules is the same target (1 kcal = 4.184 kJ, the thermochemical calorie)", () => {
    const kilojoules = scale(bowl, { energy: `${520.8 * 4.184} kJ` }).factor;
    expect(exactText(kilojoules)).toBe("2");
  });

  it("with portions follows both: held lines by factor and portions, doses by portions alone", () => {
    const { sheet: s } = scale(bowl, { energy: "520.8 kcal", portions: 6 });
    expect(s.lines.map((l) => l.grams.toString())).toEqual(["600", "1200", "12"]);
    expect(s.portion("energy").value.toString()).toBe("520.8");
  });

  it("of a mass counts every line", () => {
    // 152 g a portion now, 2 of them kelp: (302 − 2) ÷ 150 = 2.
    expect(exactText(scale(bowl, { mass: "302 g" }).factor)).toBe("2");
  });

  it("that lines are silent on is refused, naming them, unless told otherwise", () => {
    const error = errorOf(() => scale(bowl, { protein: 20 }));
    expect(error.code).toBe("target-silent");
    expect(error.message).toContain("kelp");
    expect(scale(bowl, { protein: 20 }, { silent: "accept" }).sheet.portion("protein").value.toString()).toBe(
      "20",
    );
  });

  it("below what the doses bring is refused with what can be reached", () => {
    const error = errorOf(() => scale(bowl, { iodine: 90 }, { silent: "accept" }));
    expect(error.code).toBe("target-unreachable");
    expect(error.path).toEqual(["iodine"]);
    expect(error.hint).toContain("100 µg"); // 2 g of 5,000 µg per 100 g
  });

  it.each([
    ["nothing that the recipe has", { alcohol: 5 }, "target-silent"],
    ["two targets", { energy: 500, protein: 20 }, "target-malformed"],
    ["nothing", {}, "target-malformed"],
    ["an unknown component", { protien: 20 }, "target-malformed"],
    ["a factor of 0", { factor: 0 }, "target-malformed"],
    ["a factor below 0", { factor: -1 }, "target-malformed"],
    ["no portions", { portions: 0 }, "target-malformed"],
    ["NaN", { energy: Number.NaN }, "number-not-finite"],
    ["grams of energy", { energy: "500 g" }, "unit-kinds-differ"],
    ["a __proto__", JSON.parse('{"__proto__": 1}'), "target-malformed"],
  ])("%s is refused", (_, target, code) => {
    expect(errorOf(() => scale(bowl, target as never)).code).toBe(code);
  });
});

describe("a target in words", () => {
  it.each([
    ["energy", "kcal"],
    ["iron", "mg"],
    ["iodine", "µg"],
    ["protein", "g"],
    ["mass", "g"],
  ])("of %s is told to be a figure in %s", (of, unit) => {
    for (const words of ["much", "", "a pinch", "5 blobs", "two cups"]) {
      const { path, hint } = errorOf(() => scale(bowl, { [of]: words } as never));
      expect([path, hint]).toEqual([[of], `write a figure in ${unit}: "100 ${unit}"`]);
    }
  });
});

describe("silence", () => {
  it.each([false, true, null, "yes", "", "Accept", 1, {}])("opens for no other word: %j", (silent) => {
    const error = errorOf(() => scale(bowl, { protein: 20 }, { silent } as never));
    expect([error.code, error.path]).toEqual(["target-malformed", ["how", "silent"]]);
    expect(error.hint).toContain("accept");
  });

  it.each([
    [{ silnet: "accept" }, ["how", "silnet"], "silent"],
    [null, ["how"], "silent"],
    ["accept", ["how"], "silent"],
  ])("is no other option: %j", (how, path, hint) => {
    const error = errorOf(() => scale(bowl, { energy: 500 }, how as never));
    expect([error.code, error.path]).toEqual(["target-malformed", path]);
    expect(error.hint).toContain(hint);
  });

  it("is not absence, nor is a trace or less than a limit", () => {
    const traces = foodTable([
      { id: "a", name: "A", source: "made up", per100g: { iron: "trace", zinc: 0, iodine: { below: 5 } } },
      { id: "b", name: "B", source: "made up", per100g: { iron: "trace", zinc: 0 } },
    ]);
    const lines = ["a", "b"].map((food) => ({ key: food, food, amount: "100 g" }));
    const s = sheet({ name: "S", portions: 1, lines }, traces);
    const said = (target: object): string =>
      errorOf(() => scale(s, target, { silent: "accept" })).message.replace(/, so no .*/s, "");
    expect(said({ iron: 1 })).toBe("iron: only traces, or less than a stated limit, of iron in a, b");
    expect(said({ iodine: 1 })).toBe(
      "iodine: only traces, or less than a stated limit, of iodine in a and nothing is known of it in b",
    );
    expect(said({ selenium: 1 })).toBe("selenium: nothing is known of the selenium in a, b");
    expect(said({ zinc: 1 })).toBe("zinc: the recipe has no zinc");
  });
});

describe("what is no sheet", () => {
  it.each([null, undefined, {}, "bowl", 1, [bowl], { plan: {} }])("is refused: %o", (given) => {
    const wrong = given as never;
    for (const step of [
      () => scale(wrong, { energy: 500 }),
      () => reach(wrong, "energy"),
      () => substitutes(wrong, "oats"),
      () => sweep(wrong, [{ target: "factor", values: [1] }]),
    ])
      expect(errorOf(step).code).toBe("sheet-malformed");
  });

  it("nor is a quantity that there is not, or a line's key that is none", () => {
    expect(errorOf(() => reach(bowl, null as never)).code).toBe("component-unknown");
    expect(errorOf(() => reach(bowl, "enregy" as never)).code).toBe("component-unknown");
    expect(errorOf(() => substitutes(bowl, null as never)).code).toBe("line-unknown");
    expect(errorOf(() => fit(bowl, [], null as never)).code).toBe("fit-malformed");
  });
});

describe("notes", () => {
  it("report lines past their bounds, which never move with the factor", () => {
    const codes = (factor: string): string[] =>
      scale(bowl, { factor }).notes.map((n) => `${n.code} ${n.line ?? ""}`);
    expect(codes("1")).toEqual([]);
    expect(codes("2.5")).toEqual(["above-most oats", "large-factor "]);
    expect(codes("0.5")).toEqual(["below-least milk"]);
    expect(codes("0.4")).toEqual(["below-least milk", "large-factor "]);
  });

  it("report a dose that moved inside a nested recipe", () => {
    const outer = sheet(
      { name: "Outer", portions: 2, lines: [{ key: "bowl", recipe: bowl.origin, amount: "2 portions" }] },
      foods,
    );
    expect(scale(outer, { factor: "3/2" }).notes.map((n) => n.line)).toEqual(["bowl/kelp"]);
    expect(scale(outer, { portions: 3 }).notes).toEqual([]);
  });
});

/** Water is left out: a random yield can take more than there is, and then more food is less water. */
const reached = watched.filter((id) => id !== "water");

describe("reach", () => {
  it("is what the doses bring, upward without end, and the bounds where lines have them", () => {
    const r = reach(bowl, "energy");
    expect([r.least.toString(), r.most]).toEqual(["0.8", null]);
    // Oats at most 120 g: factor 2.4; milk at least 60 g: factor 0.6.
    expect([r.withinBounds?.least.toString(), r.withinBounds?.most?.toString()]).toEqual(["156.8", "624.8"]);
    expect(reach(bowl, "protein").missing).toEqual(["kelp"]);
  });

  it("agrees with scaling: every target above its least is met exactly, at or below it none is", () => {
    fc.assert(
      fc.property(
        arbitraryRecipe,
        fc.constantFrom(...reached),
        arbitraryFactor,
        ({ table, recipe }, id, over) => {
          const s = sheet(recipe, table);
          const { least, most } = reach(s, id);
          if (most !== null) return;
          const target = least.plus(exact(over).n.toString());
          expect(
            scale(s, { [id]: target }, { silent: "accept" })
              .sheet.portion(id)
              .value.eq(target),
          ).toBe(true);
          expect(() => scale(s, { [id]: least }, { silent: "accept" })).toThrow(SteelyardError);
        },
      ),
    );
  });
});
