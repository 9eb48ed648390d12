import { bench, describe } from "vitest";
import { starterFoods } from "../../src/foods.ts";
import type { PersonInput, PlanInput } from "../../src/plan/input.ts";
import { portionPlan } from "../../src/plan/plan.ts";
import type { LineInput } from "../../src/recipe/document.ts";
import type { Demand } from "../../src/scale/demand.ts";
import { sheet } from "../../src/sheet/build.ts";

/**
 * A pot of three parts, and people who need each their own ratios of them: as they are, then in the
 * fewest pots.
 */

const lines: readonly LineInput[] = [
  { key: "rice", food: "rice-white-long-boiled", amount: "200 g" },
  { key: "lentils", food: "lentils-boiled", amount: "150 g", part: "pulses" },
  { key: "tofu", food: "tofu-firm", amount: "80 g", part: "pulses" },
  { key: "oil", food: "olive-oil", amount: "12 g", part: "sauce" },
  { key: "tomato", food: "tomatoes-raw", amount: "120 g", part: "sauce" },
  { key: "spinach", food: "spinach-raw", amount: "60 g", scaling: "adjustable", added: "serving" },
  { key: "salt", food: "salt", amount: "1 g", scaling: "per-portion", added: "serving" },
];
const inTwo = lines.map(({ part, ...line }) => ({ ...line, ...(part === "pulses" && { part }) }));
const pot = (of: readonly LineInput[]) => sheet({ name: "Pot", portions: 1, lines: [...of] }, starterFoods);

/** `versions` sorts of athlete, each asking for so much energy, protein and fat. */
function athletes(count: number, versions: number): readonly PersonInput[] {
  return Array.from({ length: count }, (_, p) => {
    const kind = p % versions;
    const energy = 500 + 13 * p;
    const demands: Demand[] = [
      { of: "energy", exactly: energy },
      { of: "protein", exactly: Math.round(energy * (0.042 + (0.012 * kind) / versions)) },
      { of: "fat", least: Math.round(energy * (0.025 + (0.012 * ((kind * 3) % versions)) / versions)) },
    ];
    return { id: `athlete-${p}`, demands };
  });
}

const budget = { iterations: 3, time: 0, warmupIterations: 1, warmupTime: 0 };

for (const [name, of] of [
  ["two parts", inTwo],
  ["three parts", lines],
] as const) {
  for (const [count, versions] of [
    [20, 10],
    [100, 20],
  ] as const) {
    describe(`${name}, ${count} people of ${versions} sorts`, () => {
      const input = { meals: [{ id: "meal", dishes: pot(of) }], people: athletes(count, versions) };
      const ways: readonly PlanInput["pots"][] = [
        "exact",
        { tolerance: 0 },
        { tolerance: "2 %" },
        { tolerance: "5 %" },
      ];
      for (const pots of ways) {
        const plan = portionPlan({ ...input, ...(pots && { pots }) });
        const { sharing, pots: made } = plan.dish("meal");
        const found = `${made.length} pots, proven ${sharing?.proven ?? "-"}, tried ${sharing?.tried ?? 0}`;
        bench(
          `${JSON.stringify(pots)}: ${found}`,
          () => void portionPlan({ ...input, ...(pots && { pots }) }),
          budget,
        );
      }
    });
  }
}
