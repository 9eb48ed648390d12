import { expect, test } from "vitest";
import { starterFoods } from "../../src/foods.ts";
import { type Demand, fit, sheet } from "../../src/index.ts";
import { portionPlan } from "../../src/plan.ts";

/** A list that counts how often its first demand is asked for. */
function counted(demands: readonly Demand[]): {
  readonly list: readonly Demand[];
  readonly count: () => number;
} {
  let count = 0;
  const list = new Proxy(demands, {
    get: (all, field) => {
      if (field === "0") count += 1;
      return Reflect.get(all, field);
    },
  });
  return { list, count: () => count };
}

const bowl = sheet(
  {
    name: "Rice and tofu",
    portions: 1,
    lines: [
      { key: "rice", food: "rice-white-long-boiled", amount: "200 g", part: "rice" },
      { key: "beans", food: "lentils-dry", amount: "40 g", part: "beans" },
      { key: "tofu", food: "tofu-firm", amount: "100 g", scaling: "adjustable" },
    ],
  },
  starterFoods,
);

const asked = (kcal: number): readonly Demand[] => [
  { of: "energy", exactly: kcal },
  { of: "protein", least: "20 g" },
];

test("a plan of four people and two meals reads each list of demands once", () => {
  const one = counted(asked(600));
  fit(bowl, one.list);
  expect(one.count()).toBeGreaterThan(0);
  // A plan keeps a copy of what it was handed in, to be stored with.
  JSON.stringify(one.list);

  const lists = [500, 600, 700, 800].map((kcal) => counted(asked(kcal)));
  const plan = portionPlan({
    meals: [
      { id: "lunch", dishes: bowl },
      { id: "supper", dishes: bowl },
    ],
    people: lists.map(({ list }, i) => ({ id: `rower-${i}`, demands: list })),
    kitchen: "metric",
    pots: { tolerance: "5 %" },
  });
  for (const { dishes } of plan.portions) expect(dishes.size).toBe(1);
  expect(lists.map(({ count }) => count())).toEqual(lists.map(() => one.count()));
});

test("a figure that is a clone of an exact one is asked of a shared pot like any other", () => {
  const cloned = structuredClone({ n: 600n, d: 1n }) as unknown as number;
  const plan = portionPlan({
    meals: [{ id: "supper", dishes: bowl }],
    people: [
      { id: "cox", demands: [{ of: "energy", exactly: "500 kcal" }] },
      { id: "bow", demands: [{ of: "energy", exactly: cloned }] },
      { id: "stroke", demands: asked(700) },
    ],
    pots: { tolerance: "5 %" },
  });
  expect(JSON.stringify(plan.toJSON().people[1]?.demands)).toContain('"600"');
  expect(plan.portion("bow", "supper").dishes.get("supper")?.portion("energy").value.toString()).toBe("600");
});
