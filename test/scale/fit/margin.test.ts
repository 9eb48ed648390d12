import * as fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  type Demand,
  fit,
  foodTable,
  roundToKitchen,
  type Sheet,
  sheet,
  uncertainty,
} from "../../../src/index.ts";
import { exact } from "../../../src/number/exact.ts";
import { portionPlan } from "../../../src/plan.ts";
import { confidences, standardErrors } from "../../../src/scale/engine/margin.ts";
import { errorOf } from "../../number/errorOf.ts";
import { runs } from "../../runs.ts";

/** Made up: oats of 4 mg ± 0.3, greens of 2.5 mg ± 0.4, seeds of which nobody says how sure they are. */
const foods = foodTable([
  {
    id: "oats",
    name: "Oats",
    source: "made up",
    per100g: { energy: 380, iron: { value: "4", error: "0.3" } },
  },
  {
    id: "greens",
    name: "Greens",
    source: "made up",
    per100g: { energy: 25, iron: { value: "2.5", error: "0.4" } },
  },
  { id: "seeds", name: "Seeds", source: "made up", per100g: { energy: 500, iron: "6" } },
]);
const bowl = (...more: readonly string[]): Sheet =>
  sheet(
    {
      name: "Bowl",
      portions: 2,
      lines: ["oats", "greens", ...more].map((food) => ({ key: food, food, amount: "100 g" })),
    },
    foods,
  );
const iron = (asked: object): Demand => ({ of: "iron", ...asked }) as Demand;

describe("a demand with a confidence", () => {
  it("counts each line less its standard errors, all to the same side, exactly", () => {
    // A portion as written: 0.5·(4 − 1.2816·0.3) + 0.5·(2.5 − 1.2816·0.4) mg.
    const one = 0.5 * (4 - 1.2816 * 0.3) + 0.5 * (2.5 - 1.2816 * 0.4);
    const met = fit(bowl(), [iron({ least: "8 mg", confidence: "90 %" })]);
    if (met.status !== "met") throw new Error("out of reach");
    expect(met.sheet.portion("iron").value.toNumber()).toBeCloseTo((8 / one) * 3.25, 9);
    const [outcome] = met.outcomes;
    expect([outcome?.asked, outcome?.met, `${outcome?.brings}`, outcome?.bound]).toEqual([
      "iron at least 8 mg with 90%",
      true,
      "8",
      "at-least",
    ]);
    expect(met.notProven).toEqual([]);
    const limit = fit(bowl(), [iron({ most: "2 mg", confidence: "95 %" }), { of: "energy", least: 1 }]);
    if (limit.status !== "met") throw new Error("out of reach");
    const high = 0.5 * (4 + 1.6449 * 0.3) + 0.5 * (2.5 + 1.6449 * 0.4);
    expect(limit.sheet.portion("iron").value.toNumber()).toBeCloseTo((2 / high) * 3.25, 9);
  });

  it("is on the safe side of what draws would hold", () => {
    fc.assert(
      fc.property(fc.integer({ min: 4, max: 30 }), fc.constantFrom(...confidences), (least, confidence) => {
        const met = fit(bowl(), [iron({ least, confidence })], { common: { most: 100 } });
        if (met.status !== "met") return expect(least).toBeGreaterThan(100);
        const told = uncertainty(met.sheet, "iron", "portion", {
          coverage: standardErrors(exact(confidence.replace(" %", "")).div(100)) ?? 0,
        });
        expect(told.low.comparedTo(least)).toBeGreaterThanOrEqual(0);
        // Where both err to the same side it is the end itself, but for the root's rounding.
        expect(told.worstLow.toNumber()).toBeCloseTo(least, 3);
      }),
      { numRuns: runs(12) },
    );
  });

  it("names lines of which nobody says how sure they are", () => {
    const met = fit(bowl("seeds"), [iron({ least: "8 mg", confidence: "90 %" })]);
    if (met.status !== "met") throw new Error("out of reach");
    expect(met.notProven.map(({ unsure, text }) => [unsure, text])).toEqual([
      [["seeds"], "iron at least 8 mg with 90% is not proven: nobody says how sure seeds is"],
    ]);
  });

  it("is told apart from one without, in fits, rounding and plans", () => {
    const demands = [iron({ least: "8 mg", confidence: "90 %" }), iron({ least: "8 mg" })];
    const met = fit(bowl(), demands);
    if (met.status !== "met") throw new Error("out of reach");
    expect(met.outcomes.map(({ brings }) => `${brings?.toFixed(2)}`)).toEqual(["9.28", "8.00"]);
    const rounded = roundToKitchen(met.sheet, "metric", { demands });
    expect(rounded.status).toBe("met");
    const plan = portionPlan({
      meals: [{ id: "lunch", dishes: { bowl: bowl() } }],
      people: [{ id: "cox", byMeal: { lunch: demands } }],
    });
    expect(plan.portion("cox", "lunch").dishes.get("bowl")?.portion("iron").value.toFixed(2)).toBe("9.28");
  });

  it("refuses what it cannot count, at its place", () => {
    const told = (demand: object): readonly string[] =>
      errorOf(() => fit(bowl(), [demand as Demand])).faults.map(
        ({ path, message }) => `${path.join(".")}: ${message}`,
      );
    expect(told({ of: "mass", least: 1, confidence: "90 %" })).toEqual([
      "0.confidence: a confidence of what is no component of foods",
    ]);
    expect(told({ energyShareOf: "fat", least: "20 %", confidence: "90 %" })).toHaveLength(1);
    expect(told(iron({ exactly: 1, confidence: "90 %" }))).toEqual([
      "0.confidence: a confidence of more than one end",
    ]);
    expect(told(iron({ least: 1, most: 2, confidence: "90 %" }))).toHaveLength(1);
    expect(told(iron({ least: 1, confidence: "91 %" }))).toEqual([
      "0.confidence: a confidence that is not in the table",
    ]);
    expect(told(iron({ least: 1, confidence: 90 }))).toHaveLength(1);
  });

  it("takes its standard errors from the normal distribution, rounded up", () => {
    // The integral of the density, by Simpson's rule from 0 to z, beside one half.
    const below = (z: number): number => {
      const steps = 2000;
      const f = (x: number): number => Math.exp((-x * x) / 2) / Math.sqrt(2 * Math.PI);
      let sum = f(0) + f(z);
      for (let i = 1; i < steps; i++) sum += f((i * z) / steps) * (i % 2 ? 4 : 2);
      return 0.5 + (sum * z) / steps / 3;
    };
    for (const text of confidences) {
      const share = Number(text.replace(" %", "")) / 100;
      const z = standardErrors(exact(String(share)))?.toNumber() ?? 0;
      expect([text, below(z) >= share, below(z - 0.0001) < share]).toEqual([text, true, true]);
    }
  });
});
