import { describe, expect, it } from "vitest";
import { cookingSchedule } from "../../src/cook/cookingSchedule.ts";
import { starterFoods } from "../../src/foods.ts";
import type { PlanInput } from "../../src/plan/input.ts";
import { portionPlan, portionPlanSteps } from "../../src/plan/plan.ts";
import { sheet } from "../../src/sheet/build.ts";
import { revise } from "../../src/sheet/revise.ts";
import { toText } from "../../src/show/text.ts";
import { errorOf } from "../number/errorOf.ts";

const oats = sheet(
  { name: "Oats", portions: 1, lines: [{ key: "oats", food: "oats-rolled-dry", amount: "60 g" }] },
  starterFoods,
);
const meals = [
  { id: "breakfast", dishes: oats },
  { id: "tea", dishes: oats },
];
const people = [1, 2, 3].map((n) => ({ id: `p${n}`, demands: { factor: n } }));

describe("a plan in steps", () => {
  it("tells of each person in turn, and ends in the same plan", () => {
    const steps = portionPlanSteps({ meals, people });
    const told: unknown[] = [];
    let step = steps.next();
    for (; !step.done; step = steps.next()) told.push(step.value);
    expect(told).toEqual([
      { person: "p1", done: 1, of: 3 },
      { person: "p2", done: 2, of: 3 },
      { person: "p3", done: 3, of: 3 },
    ]);
    expect(toText(step.value)).toBe(toText(portionPlan({ meals, people })));
  });

  it("stops between people, and does no more", () => {
    let looked = 0;
    const watched = people.map(
      (person) =>
        new Proxy(person, {
          get: (of, field) => {
            if (field === "demands") looked += 1;
            return Reflect.get(of, field);
          },
        }),
    );
    const steps = portionPlanSteps({ meals, people: watched });
    expect(steps.next().done).toBe(false);
    const before = looked;
    expect(before).toBeGreaterThan(0);
    expect(steps.return(undefined as never).done).toBe(true);
    expect(steps.next()).toEqual({ done: true, value: undefined });
    expect(looked).toBe(before);
  });

  it("refuses what it is handed before the first step, and what cannot be reached after the last", () => {
    expect(errorOf(() => portionPlanSteps({} as PlanInput)).code).toBe("plan-malformed");
    const steps = portionPlanSteps({
      meals,
      people: [{ id: "p0", demands: { caffeine: "1 mg" } }, ...people.slice(0, 1)],
      silent: "accept",
    });
    expect([steps.next().done, steps.next().done]).toEqual([false, false]);
    const { faults } = errorOf(() => steps.next());
    expect(faults.map(({ code }) => code)).toEqual(["target-unreachable", "target-unreachable"]);
  });
});

describe("the steps of a version of a dish", () => {
  const porridge = sheet(
    {
      name: "Porridge",
      portions: 1,
      lines: [
        { key: "oats", food: "oats-rolled-dry", amount: "60 g" },
        { key: "milk", food: "milk-whole", amount: "250 g" },
        { key: "honey", food: "honey", amount: "10 g", added: "serving" },
      ],
      method: ["Simmer {oats} in {milk}.", "Serve with {honey}."],
    },
    starterFoods,
  );
  const soya = revise(porridge, {
    swap: { milk: "soya-drink-unsweetened-fortified" },
    name: "Soya porridge",
  });

  it("speak of its own lines, and of nothing that only others have", () => {
    const plan = portionPlan({
      days: ["mon", "tue"].map((id) => ({ id, meals: [{ id: "breakfast", dishes: { porridge } }] })),
      people: [
        { id: "cox", instead: { porridge: soya } },
        { id: "bow", leaveOut: ["porridge/honey"] },
      ],
    });
    for (const how of [{}, { cook: { porridge: ["mon"] } }]) {
      const { sessions } = cookingSchedule(plan, how);
      const told = sessions[0]?.pots.map((pot) => pot.steps());
      const g = "cook" in how ? [120, 500] : [60, 250];
      expect(told).toEqual([
        {
          by: "recipe",
          steps: [`Simmer ${g[0]} g oats in ${g[1]} g soya drink.`, "Serve with honey."],
          unnamed: [],
          atServing: ["honey"],
          apart: [],
        },
        {
          by: "recipe",
          steps: [`Simmer ${g[0]} g oats in ${g[1]} g milk.`],
          unnamed: [],
          atServing: [],
          apart: [],
        },
      ]);
    }
  });
});
