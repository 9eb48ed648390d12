import * as fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type ComponentId, componentIds } from "../../src/food/components.ts";
import { compose, readFigure } from "../../src/food/composition.ts";
import { formulas } from "../../src/food/data/formulas.ts";
import type { Figure, FoodInput } from "../../src/food/food.ts";
import { foodTable } from "../../src/food/table.ts";
import { exactText } from "../../src/number/digits.ts";
import { type Exact, exact, fraction, plus } from "../../src/number/exact.ts";
import { sheet } from "../../src/sheet/build.ts";
import { cooking } from "../../src/sheet/cooking.ts";
import { runs } from "../runs.ts";

function food(per100g: FoodInput["per100g"], more: Partial<FoodInput> = {}): FoodInput {
  return { id: "x", name: "X", source: "test", per100g, ...more };
}

const value = (f: FoodInput, id: ComponentId): string | undefined => {
  const figure = readFigure(f, id);
  return figure.kind === "missing" ? undefined : exactText(figure.value);
};

describe("derived figures", () => {
  // Each expectation is worked by hand from the formula's published text, named in data/formulas.ts.
  const cases: readonly [string, FoodInput["per100g"], ComponentId, string][] = [
    [
      "carbohydrate by difference",
      { water: 10, protein: 12, fat: 7, ash: 2, alcohol: 0 },
      "carbohydrateByDifference",
      "69",
    ],
    [
      "EU carbohydrate back to by difference",
      { availableCarbohydrate: 50, fibre: "8.5" },
      "carbohydrateByDifference",
      "58.5",
    ],
    [
      "available carbohydrate",
      { carbohydrateByDifference: "67.7", fibre: "10.1" },
      "availableCarbohydrate",
      "57.6",
    ],
    [
      "available carbohydrate the long way",
      { water: 10, protein: 12, fat: 7, ash: 2, alcohol: 1, fibre: 9 },
      "availableCarbohydrate",
      "59",
    ],
    // IOM 2001: 12 µg of beta-carotene and 24 of the others make 1 µg RAE.
    [
      "RAE",
      { retinol: 100, betaCarotene: 1200, alphaCarotene: 240, betaCryptoxanthin: 240 },
      "vitaminARae",
      "220",
    ],
    [
      "RE",
      { retinol: 100, betaCarotene: 1200, alphaCarotene: 240, betaCryptoxanthin: 240 },
      "vitaminARe",
      "340",
    ],
    ["RAE from RE", { retinol: 100, vitaminARe: 340 }, "vitaminARae", "220"],
    ["RE from RAE", { retinol: 100, vitaminARae: 220 }, "vitaminARe", "340"],
    ["DFE", { foodFolate: 40, folicAcid: 100 }, "folateDfe", "210"],
    ["DFE from the total", { folate: 140, folicAcid: 100 }, "folateDfe", "210"],
    ["total folate", { foodFolate: 40, folicAcid: 100 }, "folate", "140"],
    ["food folate", { folate: 140, folicAcid: 100 }, "foodFolate", "40"],
    // 60 mg of tryptophan make 1 mg of niacin (EFSA 2014).
    ["niacin equivalents", { niacin: 2, tryptophan: "0.12" }, "niacinEquivalents", "4"],
    ["salt", { sodium: 400 }, "salt", "1"],
    ["sodium", { salt: 1 }, "sodium", "400"],
    ["omega-3", { alphaLinolenicAcid: "0.5", epa: "0.1", dpa: "0.05", dha: "0.2" }, "omega3", "0.85"],
    // 4 × 10 + 9 × 5 + 4 × 20 + 7 × 2.
    [
      "energy by general factors",
      { protein: 10, fat: 5, carbohydrateByDifference: 20, alcohol: 2 },
      "energy",
      "179",
    ],
  ];
  it.each(cases)("%s", (_, per100g, id, expected) => {
    const made = readFigure(food(per100g), id);
    expect([made.kind, exactText(made.value)]).toEqual(["derived", expected]);
    expect(made.note).toBe(made.formula?.formula);
    for (const input of Object.keys(per100g) as ComponentId[]) {
      const { [input]: _, ...rest } = per100g;
      expect([input, value(food(rest), id)]).toEqual([input, undefined]);
    }
  });

  it("turn back into what they were made from, however the terms of a nutrient are counted", () => {
    const hundredths = fc.integer({ min: 0, max: 100_000 }).map((n) => `${n}/100`);
    fc.assert(
      fc.property(hundredths, hundredths, (retinol, more) => {
        // Activity equivalents are never less than the retinol among them.
        const vitaminARae = exactText(plus(exact(retinol), exact(more)));
        const vitaminARe = value(food({ vitaminARae, retinol }), "vitaminARe") ?? "none";
        expect(value(food({ vitaminARe, retinol }), "vitaminARae")).toBe(vitaminARae);
        const salt = value(food({ sodium: more }), "salt") ?? "none";
        expect(value(food({ salt }), "sodium")).toBe(exactText(exact(more)));
        const folate = value(food({ foodFolate: more, folicAcid: retinol }), "folate") ?? "none";
        expect(value(food({ folate, folicAcid: retinol }), "foodFolate")).toBe(exactText(exact(more)));
        // Both ways to dietary folate equivalents come to the same.
        expect(value(food({ folate, folicAcid: retinol }), "folateDfe")).toBe(
          value(food({ foodFolate: more, folicAcid: retinol }), "folateDfe"),
        );
      }),
    );
  });

  it("have a formula with a source, none of which reads what it gives", () => {
    for (const f of formulas) {
      expect(f.source).not.toBe("");
      expect(Object.keys(f.terms)).not.toContain(f.gives);
    }
  });

  it("never stand over a figure that the food gives, whatever it is", () => {
    for (const given of ["trace", { below: 1 }, 99] satisfies Figure[])
      expect(readFigure(food({ sodium: 400, salt: given }), "salt").kind).not.toBe("derived");
  });

  it("use a food's own Atwater factors where it has them", () => {
    // Rolled oats, SR28 08120: 13.15 × 3.46 + 6.52 × 8.37 + 67.7 × 4.12 = 379.0 (published 379).
    const oats = food(
      { protein: "13.15", fat: "6.52", carbohydrateByDifference: "67.7", alcohol: 0 },
      { energyFactors: { protein: "3.46", fat: "8.37", carbohydrate: "4.12" } },
    );
    expect(value(oats, "energy")).toBe("378.9954");
  });

  it("come before presumed zeros, where a food says more than its rounded total", () => {
    const traces = food({ fat: 0, alphaLinolenicAcid: "0.05", epa: 0, dpa: 0, dha: 0 });
    expect(value(traces, "omega3")).toBe("0.05");
    expect(readFigure(food({ fat: 0 }), "saturatedFat").kind).toBe("presumed");
  });

  it("take linoleic acid for all n-6 only in plants", () => {
    expect(value(food({ linoleicAcid: 3 }, { origin: "plant" }), "omega6")).toBe("3");
    expect(value(food({ linoleicAcid: 3 }, { origin: "animal" }), "omega6")).toBeUndefined();
    expect(value(food({ linoleicAcid: 3 }), "omega6")).toBeUndefined();
  });

  it("stop at 0 where rounded figures make a difference negative, and say so", () => {
    const made = readFigure(
      food({ carbohydrateByDifference: "10.0", fibre: "10.4" }),
      "availableCarbohydrate",
    );
    expect(exactText(made.value)).toBe("0");
    expect(made.note).toMatch(/below 0/);
  });
});

describe("what is uncertain of the inputs", () => {
  const kinds = (f: FoodInput, id: ComponentId): unknown => {
    const { kind, inputs, value: v, low, high } = readFigure(f, id);
    return { kind, inputs, value: exactText(v), low: low && exactText(low), high: high && exactText(high) };
  };

  it("stays: a trace or a limit that is added leaves the sum at least", () => {
    const carotenoids = { alphaCarotene: 0, betaCryptoxanthin: 0 };
    expect(kinds(food({ retinol: 50, betaCarotene: "trace", ...carotenoids }), "vitaminARae")).toEqual({
      kind: "derived",
      inputs: ["trace"],
      value: "50",
      low: "50",
      high: undefined,
    });
    expect(kinds(food({ retinol: 50, betaCarotene: { below: 12 }, ...carotenoids }), "vitaminARae")).toEqual({
      kind: "derived",
      inputs: ["below"],
      value: "50",
      low: "50",
      high: "51",
    });
  });

  it("stays: a limit that is taken off counts in full, a trace cannot be taken off", () => {
    const f = food({
      carbohydrateByDifference: { value: 24, low: "23.5", high: "24.5" },
      fibre: { below: "0.5" },
    });
    expect(kinds(f, "availableCarbohydrate")).toEqual({
      kind: "derived",
      inputs: ["below"],
      value: "23.5",
      low: "23",
      high: "24.5",
    });
    expect(
      value(food({ carbohydrateByDifference: 24, fibre: "trace" }), "availableCarbohydrate"),
    ).toBeUndefined();
  });

  it("is named: borrowed, presumed and derived inputs are told with the figure", () => {
    const f = food({
      niacin: { value: 2, borrowedFrom: "y" },
      protein: 0,
      foodFolate: { value: 3, presumed: true, source: "code 7" },
      folicAcid: 0,
    });
    expect(readFigure(f, "niacinEquivalents").inputs).toEqual(["borrowed", "presumed"]);
    expect(readFigure(f, "folate").inputs).toEqual(["presumed"]);
    const s = sheet({ name: "r", portions: 1, lines: [{ food: "x", amount: "100 g" }] }, foodTable([f]));
    const { derived, borrowed, presumed, bound } = s.total("niacinEquivalents");
    expect({ derived, borrowed, presumed, bound }).toEqual({
      derived: ["x"],
      borrowed: ["x"],
      presumed: ["x"],
      bound: "point",
    });
  });

  it("makes a sheet's total at least, and names the line", () => {
    const f = food({ retinol: 50, betaCarotene: "trace", alphaCarotene: 0, betaCryptoxanthin: 0 });
    const s = sheet({ name: "r", portions: 1, lines: [{ food: "x", amount: "200 g" }] }, foodTable([f]));
    const { bound, trace, derived } = s.total("vitaminARae");
    expect({ bound, trace, derived }).toEqual({ bound: "at-least", trace: ["x"], derived: ["x"] });
  });

  it("is not invented: what was added to a food is not presumed absent from it", () => {
    const plant = { origin: "plant" } as const;
    expect(readFigure(food({ protein: 0 }), "lysine").kind).toBe("presumed");
    for (const protein of ["trace", { below: 1 }] satisfies Figure[])
      expect(readFigure(food({ protein }), "lysine").kind).toBe("missing");
    expect(readFigure(food({}, plant), "vitaminB12").kind).toBe("presumed");
    expect(readFigure(food({}, { ...plant, fortifiedWith: ["vitaminB12"] }), "vitaminB12").kind).toBe(
      "missing",
    );
  });
});

/** Figures of all inputs of all formulas that are sums or differences of other figures. */
const linear = formulas.filter((f) => f.from === undefined);
const inputIds = [...new Set(linear.flatMap((f) => Object.keys(f.terms) as ComponentId[]))];
const hundredth = fc.integer({ min: 0, max: 5000 }).map((n) => (n / 100).toFixed(2));

describe("totals", () => {
  const randomFood = fc.record(
    Object.fromEntries(inputIds.map((id) => [id, hundredth])) as Record<ComponentId, fc.Arbitrary<string>>,
  );
  const share = fc.integer({ min: 0, max: 20 }).map((n) => (n / 20).toString());

  it.each(linear.map((f) => [`${f.gives} = ${f.formula}`, f] as const))(
    "%s of totals is the total of it, retention and all",
    (_, f) => {
      const ids = Object.keys(f.terms) as ComponentId[];
      const only = (all: Record<ComponentId, string>): FoodInput["per100g"] => {
        const figures = Object.fromEntries(ids.map((id) => [id, all[id]])) as { [C in ComponentId]?: string };
        // Differences are kept above 0, where the rule that nothing is below nothing does not bend the line.
        for (const id of ids) if ((f.terms[id] ?? "").startsWith("-")) figures[id] = "0.01";
        for (const id of ids)
          if (!(f.terms[id] ?? "").startsWith("-")) figures[id] = `${Number(all[id]) + 1}`;
        return figures;
      };
      fc.assert(
        fc.property(randomFood, randomFood, hundredth, hundredth, share, (a, b, x, y, left) => {
          const plant = { origin: "plant" } as const;
          const foods = foodTable([
            food(only(a), { id: "a", ...plant }),
            food(only(b), { id: "b", ...plant }),
          ]);
          const retention = Object.fromEntries(
            ids
              .filter((id) => !(f.terms[id] ?? "").startsWith("-"))
              .map((id) => [id, left === "0" ? "0.5" : left]),
          );
          const s = sheet(
            {
              name: "r",
              portions: 1,
              lines: [
                { food: "a", amount: `${Number(x) + 1} g`, retention },
                { food: "b", amount: `${y} g` },
              ],
            },
            foods,
          );
          const made = ids.reduce<Exact>((sofar, id) => {
            const w = exact(f.terms[id] ?? "0");
            const t = s.total(id).value;
            return fraction(sofar.n * w.d * t.d + w.n * t.n * sofar.d, sofar.d * w.d * t.d);
          }, fraction(0n));
          const total = s.total(f.gives).value;
          expect(total.n * made.d).toBe(made.n * total.d);
        }),
        { numRuns: runs(60) },
      );
    },
  );

  it("of carbohydrate by difference agree with the difference of the batch, water boiled off and all", () => {
    const parts = fc.tuple(hundredth, hundredth, hundredth, hundredth).map(([w, p, f, a]) => {
      const q = (text: string, most: number): string => ((Number(text) / 50) * most).toFixed(2);
      return { water: q(w, 50), protein: q(p, 20), fat: q(f, 20), ash: q(a, 5), alcohol: 0 };
    });
    fc.assert(
      fc.property(parts, parts, fc.constantFrom("0.7", "1", "1.4"), (a, b, yieldFactor) => {
        const foods = foodTable([food(a, { id: "a" }), food(b, { id: "b" })]);
        const lines = [
          { food: "a", amount: "130 g" },
          { food: "b", amount: "70 g" },
        ];
        const s = sheet({ name: "r", portions: 1, lines, yieldFactor }, foods);
        const of = (id: ComponentId): number => s.total(id).value.toNumber();
        // What a yield takes off beyond the water was something else, which its components still count.
        const mass = s.mass.cooked.plus(cooking(s).beyondWater).toNumber();
        const rest = mass - of("water") - of("protein") - of("fat") - of("ash") - of("alcohol");
        expect(of("carbohydrateByDifference")).toBeCloseTo(rest, 8);
      }),
      { numRuns: runs(60) },
    );
  });
});

describe("retention", () => {
  const carrot = food({ retinol: 0, betaCarotene: 8000, alphaCarotene: 3000, betaCryptoxanthin: 0 });
  const leaving = (shares: readonly (readonly [ComponentId, string])[]): ((id: ComponentId) => string) => {
    const left = new Map(shares.map(([id, share]) => [id, exact(share)]));
    const { figures } = compose(carrot, left);
    return (id) => exactText(figures[componentIds.indexOf(id)]?.value ?? fraction(-1n));
  };

  it("of an input carries over to what is computed from it, unless that has a share of its own", () => {
    // 8000/12 + 3000/24 = 791.66…; with half the beta-carotene 8000/24 + 3000/24.
    expect(leaving([["betaCarotene", "0.5"]])("vitaminARae")).toBe(exactText(exact("11000/24")));
    expect(
      leaving([
        ["betaCarotene", "0.5"],
        ["vitaminARae", "0.9"],
      ])("vitaminARae"),
    ).toBe("712.5");
  });

  it("never turns what cooking destroys into carbohydrate", () => {
    const wine = food({ water: 80, protein: 0, fat: 0, ash: 0, alcohol: 10 });
    const left = new Map<ComponentId, Exact>([["alcohol", exact("0.4")]]);
    const at = componentIds.indexOf("carbohydrateByDifference");
    expect(exactText(compose(wine, left).figures[at]?.value ?? exact(-1))).toBe("10");
  });
});
