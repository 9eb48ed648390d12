import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { starterFoods } from "../../src/foods.ts";
import { type LineInput, type Sheet, sheet } from "../../src/index.ts";
import type { DayInput } from "../../src/plan/input.ts";
import { portionPlan } from "../../src/plan.ts";
import { runs } from "../runs.ts";

const of = (name: string, lines: readonly LineInput[]): Sheet =>
  sheet({ name, portions: 1, lines }, starterFoods);
const porridge = of("Porridge", [
  { key: "oats", food: "oats-rolled-dry", amount: "60 g" },
  { key: "milk", food: "milk-whole", amount: "150 g" },
  { key: "seeds", food: "pumpkin-seeds", amount: "15 g", scaling: "adjustable", added: "serving" },
]);
const stew = of("Stew", [
  { key: "lentils", food: "lentils-boiled", amount: "150 g" },
  { key: "kale", food: "kale-raw", amount: "80 g" },
  { key: "oil", food: "olive-oil", amount: "10 g", scaling: "adjustable", added: "serving" },
]);
const egg = of("Egg", [{ key: "egg", food: "egg-hard-boiled", amount: "1 large" }]);
const days: readonly DayInput[] = ["mon", "tue"].map((id) => ({
  id,
  meals: [
    { id: "breakfast", dishes: { porridge, egg } },
    { id: "supper", dishes: stew },
  ],
}));

describe("a day in amounts that kitchens can measure", () => {
  it("is judged over the day at the end, each plate making up for those before it", () => {
    const people = fc.array(fc.integer({ min: 1200, max: 3200 }), { minLength: 1, maxLength: 4 });
    fc.assert(
      fc.property(people, (energies) => {
        const plan = portionPlan({
          days,
          kitchen: "metric",
          people: energies.map((kcal, i) => ({
            id: `rower ${i}`,
            daily: [
              { of: "energy", exactly: kcal },
              { of: "fat", most: kcal / 20, firm: true },
            ],
            shares: { breakfast: "45 %", supper: "55 %" },
          })),
        });
        for (const { id } of plan.people) {
          for (const day of ["mon", "tue"]) {
            const { drift, fit, status, dishes } = plan.day(id, day);
            if (status !== "met" || !drift) continue;
            const brought = [...dishes.values()].map((s) => s.portion("energy").value);
            const energy = brought.reduce((a, b) => a.plus(b));
            expect(drift.demands[0]?.brings?.toString()).toBe(energy.toString());
            expect(drift.demands.find(({ demand }) => demand.firm)?.holds).toBe(true);
            expect(drift.demands[0]?.before?.toString()).toBe(fit?.outcomes[0]?.brings?.toString());
            expect(drift.status).toBe("met");
          }
        }
        for (const { batch, id } of plan.meals) {
          for (const [dish, whole] of batch) {
            const served = plan.portions
              .filter(({ meal }) => meal === id)
              .flatMap(({ dishes }) => dishes.get(dish) ?? []);
            const mass = served.map((s) => s.mass.raw).reduce((a, b) => a.plus(b));
            expect(mass.toString()).toBe(whole.mass.raw.toString());
          }
        }
      }),
      { numRuns: runs(6), endOnFailure: true },
    );
  });
});
