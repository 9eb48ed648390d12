import * as fc from "fast-check";
import { describe, expect, it } from "vitest";
import { starterFoods } from "../../src/foods.ts";
import { energyShares, type FoodTable, foodTable, scale, sheet, uncertainty } from "../../src/index.ts";
import { exact } from "../../src/number/exact.ts";
import { rootUp } from "../../src/number/root.ts";
import { errorOf } from "../number/errorOf.ts";

/** Made up: the arithmetic is held, against draws and against formulas of JCGM 100:2008. */
const foods: FoodTable = foodTable([
  {
    id: "oats",
    name: "Oats",
    source: "made up",
    per100g: {
      iron: { value: "4", error: "0.3", count: 6 },
      zinc: { value: "3", error: "0.2" },
      retinol: { value: "20", error: "2" },
      betaCarotene: { value: "120", error: "24" },
      protein: 13,
    },
  },
  {
    id: "greens",
    name: "Greens",
    source: "made up",
    per100g: {
      iron: { value: "2.5", error: "0.4" },
      zinc: { value: "0.6", low: "0.3", high: "0.9" },
      protein: "2.5",
    },
  },
]).withRetention({
  source: "made up",
  columns: [["iron"], ["zinc"]],
  codes: { boiled: ["greens, boiled", "80 90", "60-100:9 -"] },
});

const bowl = sheet(
  {
    name: "Bowl",
    portions: 2,
    lines: [
      { key: "a", food: "oats", amount: "80 g" },
      { key: "b", food: "oats", amount: "20 g" },
      { key: "c", food: "greens", amount: "150 g" },
    ],
  },
  foods,
);

describe("uncertainty", () => {
  it("lets lines of one food move together, and different foods apart", () => {
    // JCGM 100:2008, 5.2.2, equation 16 for r = 1: (0.8·0.3 + 0.2·0.3)² + (1.5·0.4)² = 0.09 + 0.36.
    const iron = uncertainty(bowl, "iron", "total");
    expect([iron.value, iron.variance, iron.standard].map(String)).toEqual(["7.75", "0.45", "0.670821"]);
    expect([iron.low, iron.high].map(String)).toEqual(["6.408358", "9.091642"]);
    // All to one side: 0.3 + 0.6.
    expect([iron.worstLow, iron.worstHigh].map(String)).toEqual(["5.95", "9.55"]);
    expect(iron.by.map(({ line, variance, share }) => [line, `${variance}`, `${share}`])).toEqual([
      ["c", "0.36", "0.8"],
      ["a", "0.072", "0.16"],
      ["b", "0.018", "0.04"],
    ]);
    expect(`${uncertainty(bowl, "iron", "portion").variance}`).toBe("0.1125");
    expect(`${uncertainty(bowl, "iron", { line: "a" }).variance}`).toBe("0.0576");
    const worst = uncertainty(bowl, "iron", "total", { worst: true, coverage: 1 });
    expect([worst.standard, worst.low, worst.high].map(String)).toEqual(["0.9", "6.85", "8.65"]);
  });

  it("takes a published range for a rectangle, and names lines of which nobody says how sure they are", () => {
    // JCGM 100:2008, 4.3.7: (0.9 − 0.3)²/12 = 0.03; times 1.5², and oats' (1 · 0.2)².
    const zinc = uncertainty(bowl, "zinc", "total");
    expect([`${zinc.variance}`, zinc.unsaid]).toEqual(["0.1075", []]);
    const protein = uncertainty(bowl, "protein", "total");
    expect([`${protein.variance}`, protein.unsaid, protein.by]).toEqual(["0", ["a", "b", "c"], []]);
    expect(`${protein}`).toMatch(/nobody says how sure a, b, c is/);
  });

  it("cancels what stands above and below a ratio, and what two sheets share", () => {
    const only = sheet(
      {
        name: "Oats twice",
        portions: 1,
        lines: [
          { key: "a", food: "oats", amount: "30 g" },
          { key: "b", food: "oats", amount: "10 g" },
        ],
      },
      foods,
    );
    const share = uncertainty(only, "iron", { line: "a", shareOf: "total" });
    expect([share.value, share.variance, share.unit].map(String)).toEqual(["0.75", "0", ""]);
    // JCGM 100:2008, 5.1.6, equation 12: relative variances of a quotient add up: (0.3/4)² + (0.2/3)².
    const ratio = uncertainty(only, { ratioOf: ["iron", "zinc"] }, "portion");
    const relative = (0.3 / 4) ** 2 + (0.2 / 3) ** 2;
    expect(ratio.variance.toNumber()).toBeCloseTo(relative * (4 / 3) ** 2, 12);
    // Of a difference only the 20 g more of oats are left: (0.2·0.3)².
    const more = sheet(
      {
        name: "More",
        portions: 2,
        lines: [
          { key: "a", food: "oats", amount: "120 g" },
          { key: "c", food: "greens", amount: "150 g" },
        ],
      },
      foods,
    );
    const apart = uncertainty(more, "iron", "total", { less: bowl });
    expect([apart.value, apart.variance].map(String)).toEqual(["0.8", "0.0036"]);
    expect(`${uncertainty(bowl, "iron", "portion", { less: bowl }).variance}`).toBe("0");
    expect(`${apart.low}`).toBe("0.68");
  });

  it("follows formulas, cooking and nested recipes", () => {
    // Vitamin A (RAE) = retinol + β-carotene/12: 2² + (24/12)².
    const oats = (amount: string): Parameters<typeof sheet>[0] => ({
      name: "Oats",
      portions: 1,
      lines: [{ key: "oats", food: "oats", amount }],
    });
    const given = foods.with([
      {
        ...foods.get("oats"),
        per100g: { ...foods.get("oats").per100g, alphaCarotene: 0, betaCryptoxanthin: 0 },
      },
    ]);
    expect(`${uncertainty(sheet(oats("100 g"), given), "vitaminARae", "total").variance}`).toBe("8");
    // Kept 0.8 ± (1.00 − 0.60)/2/1.645 of 2.5 ± 0.4: (0.8·0.4)² + (2.5·0.2/1.645)².
    const cooked = sheet(
      { name: "C", portions: 1, lines: [{ key: "c", food: "greens", amount: "100 g", retention: "boiled" }] },
      foods,
    );
    const expected = (0.8 * 0.4) ** 2 + ((2.5 * 0.2) / 1.645) ** 2;
    expect(uncertainty(cooked, "iron", "total").variance.toNumber()).toBeCloseTo(expected, 12);
    // 50 g of a batch of 100 g beside 50 g of the same food: one food, in all 100 g of it.
    const nested = sheet(
      {
        name: "N",
        portions: 1,
        lines: [
          { key: "pot", recipe: oats("100 g"), amount: "50 g" },
          { key: "more", food: "oats", amount: "50 g" },
        ],
      },
      foods,
    );
    const iron = uncertainty(nested, "iron", "total");
    expect([`${iron.variance}`, iron.by.map(({ line }) => line)]).toEqual(["0.09", ["pot/oats", "more"]]);
  });

  it("counts how amounts err where that is told", () => {
    // A scale's step of 10 g: 10²/12 g², times (4 mg/100 g)². A spoon's tenth of 150 g: 15² g² · (2.5/100)².
    const by = (weighing: NonNullable<Parameters<typeof uncertainty>[3]>["weighing"]): number =>
      uncertainty(bowl, "iron", "total", weighing === undefined ? {} : { weighing }).variance.toNumber();
    const step = (100 / 12) * 0.04 ** 2;
    expect(by({ a: { step: 10 } })).toBeCloseTo(0.45 + step, 12);
    expect(by({ c: { spread: "0.1" } })).toBeCloseTo(0.45 + 15 ** 2 * 0.025 ** 2, 12);
    expect(by({ step: 10 })).toBeCloseTo(0.45 + 2 * step + (100 / 12) * 0.025 ** 2, 12);
  });

  /** 20,000 draws of each figure of a food from a normal distribution, made by a generator of their own. */
  it("agrees with what draws come to within 3 %", () => {
    let state = 12345;
    const uniform = (): number => {
      state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
      return (state + 0.5) / 2 ** 32;
    };
    const normal = (): number => Math.sqrt(-2 * Math.log(uniform())) * Math.cos(2 * Math.PI * uniform());
    const totals: number[] = [];
    const shares: number[] = [];
    const ratios: number[] = [];
    for (let i = 0; i < 20_000; i++) {
      const [oats, greens] = [4 + 0.3 * normal(), 2.5 + 0.4 * normal()];
      const [oatZinc, greenZinc] = [3 + 0.2 * normal(), 0.6 + 0.6 * (uniform() - 0.5)];
      const iron = 0.8 * oats + 0.2 * oats + 1.5 * greens;
      totals.push(iron);
      shares.push((0.8 * oats) / iron);
      ratios.push(iron / (oatZinc + 1.5 * greenZinc));
    }
    const near = (drawn: readonly number[], standard: number): void => {
      const mean = drawn.reduce((a, b) => a + b, 0) / drawn.length;
      const deviation = Math.sqrt(drawn.reduce((a, b) => a + (b - mean) ** 2, 0) / (drawn.length - 1));
      expect(Math.abs(standard / deviation - 1)).toBeLessThan(0.03);
    };
    near(totals, uncertainty(bowl, "iron", "total").standard.toNumber());
    near(shares, uncertainty(bowl, "iron", { line: "a", shareOf: "total" }).standard.toNumber());
    near(ratios, uncertainty(bowl, { ratioOf: ["iron", "zinc"] }, "total").standard.toNumber());
    const { low, high } = uncertainty(bowl, "iron", "total");
    const within = totals.filter((x) => x >= low.toNumber() && x <= high.toNumber()).length / totals.length;
    expect(within).toBeGreaterThan(0.945);
    expect(within).toBeLessThan(0.965);
  });

  it("has lines add up to the variance, literally, and scales with its square", () => {
    const { by, variance } = uncertainty(bowl, "iron", "total", { weighing: { step: 5 } });
    const all = by.reduce((sum, each) => sum.plus(each.variance), exact(0));
    expect(all.eq(variance)).toBe(true);
    const twice = uncertainty(scale(bowl, { factor: 3 }).sheet, "iron", "total");
    expect(twice.variance.eq(uncertainty(bowl, "iron", "total").variance.times(9))).toBe(true);
  });

  it("rounds roots up, to six digits", () => {
    fc.assert(
      fc.property(fc.bigInt(1n, 10n ** 30n), fc.bigInt(1n, 10n ** 30n), (n, d) => {
        const x = exact({ n, d });
        const root = rootUp(x);
        expect(root.times(root).comparedTo(x)).toBeGreaterThanOrEqual(0);
        expect(root.toNumber() / Math.sqrt(Number(n) / Number(d))).toBeLessThan(1.0000101);
        expect(root.toSignificantDigits(6).eq(root)).toBe(true);
      }),
    );
    expect([rootUp(exact(4)), rootUp(exact("0.25")), rootUp(exact(0)), rootUp(exact(2))].map(String)).toEqual(
      ["2", "0.5", "0", "1.41422"],
    );
  });

  it("refuses what it cannot answer", () => {
    const told = (...[of, where, how]: readonly unknown[]): string =>
      errorOf(() => uncertainty(bowl, of as never, where as never, how as never)).code;
    expect(told("ironn", "total")).toBe("component-unknown");
    expect(told("iron", "pot")).toBe("line-unknown");
    expect(told("iron", { line: "x" })).toBe("line-unknown");
    expect(told("iron", { line: "x", shareOf: "total" })).toBe("line-unknown");
    expect(told({ ratioOf: ["iron", "iodine"] }, "total")).toBe("uncertainty-of-nothing");
    expect(told({ ratioOf: ["iron"] }, "total")).toBe("component-unknown");
    expect(told("iron", "total", { coverage: 0 })).toBe("sheet-malformed");
    expect(told("iron", "total", { weighing: { step: -1 } })).toBe("sheet-malformed");
    expect(told("iron", "total", { weighing: { x: { step: 1 } } })).toBe("line-unknown");
    expect(told("iron", "total", { less: {} })).toBe("sheet-malformed");
    expect(errorOf(() => uncertainty({} as never, "iron", "total")).code).toBe("sheet-malformed");
    expect(
      `${uncertainty(sheet({ name: "Oats", portions: 1, lines: [{ food: "oats-rolled-dry", amount: "1 g" }] }, starterFoods), "iron", "total")}`,
    ).toMatch(/about/);
  });

  it("of energy by factors and of a share of it follows from the constituents", () => {
    const macros = foodTable([
      {
        id: "oats",
        name: "Oats",
        source: "made up",
        per100g: {
          protein: { value: "13", error: "0.5" },
          fat: { value: "7", error: "0.4" },
          carbohydrateByDifference: { value: "68", error: "1" },
        },
      },
      {
        id: "milk",
        name: "Milk",
        source: "made up",
        per100g: {
          protein: { value: "3", error: "0.1" },
          fat: "4",
          carbohydrateByDifference: "5",
          alcohol: 0,
        },
      },
    ]);
    const s = sheet(
      {
        name: "Porridge",
        portions: 2,
        lines: [
          { key: "oats", food: "oats", amount: "100 g" },
          { key: "milk", food: "milk", amount: "200 g" },
        ],
      },
      macros,
    );
    // General factors 4, 9, 4: protein 19 g, fat 15 g, carbohydrate 78 g of the batch. First order by hand.
    const energy = uncertainty(s, { energyBy: "atwater-general" }, "portion");
    expect(energy.value.eq(energyShares(s).energy.value.div(2))).toBe(true);
    expect(energy.unit).toBe("kcal");
    const variance = ((4 * 0.5) ** 2 + (9 * 0.4) ** 2 + (4 * 1) ** 2 + (4 * 2 * 0.1) ** 2) / 4;
    expect(energy.variance.toNumber()).toBeCloseTo(variance, 12);
    const share = uncertainty(s, { energyShareOf: "protein" }, "portion");
    expect(share.value.eq(energyShares(s).shares.find(({ of }) => of === "protein")?.share ?? 0)).toBe(true);
    const all = 4 * 19 + 9 * 15 + 4 * 78;
    const [byProtein, byOther] = [(4 * (all - 4 * 19)) / all ** 2, (4 * 19) / all ** 2];
    const expected =
      (byProtein * 0.5) ** 2 + (byProtein * 0.2) ** 2 + (byOther * 9 * 0.4) ** 2 + (byOther * 4) ** 2;
    expect(share.variance.toNumber()).toBeCloseTo(expected, 15);
    expect([share.unit, share.unsaid]).toEqual(["", ["milk"]]);
    expect(share.by[0]?.line).toBe("oats");
    // An amount that errs moves the mixture.
    const own = uncertainty(s, { energyShareOf: "fat" }, "total", { weighing: { milk: { spread: "0.1" } } });
    expect(own.variance.gt(uncertainty(s, { energyShareOf: "fat" }, "total").variance)).toBe(true);
    expect(errorOf(() => uncertainty(s, { energyBy: "atwater-own" }, "total")).code).toBe(
      "energy-system-unknown",
    );
    expect(errorOf(() => uncertainty(s, { energyShareOf: "fats" as "fat" }, "total")).code).toBe(
      "sheet-malformed",
    );
  });
});
