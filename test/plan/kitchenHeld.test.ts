import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { starterFoods } from "../../src/foods.ts";
import { exactText } from "../../src/number/digits.ts";
import type { MealInput, PersonInput } from "../../src/plan/input.ts";
import { type Plan, portionPlan } from "../../src/plan/plan.ts";
import type { LineInput } from "../../src/recipe/document.ts";
import type { Demand } from "../../src/scale/demand.ts";
import { roundToKitchen } from "../../src/scale/round.ts";
import { sheet } from "../../src/sheet/build.ts";
import type { Sheet } from "../../src/sheet/sheet.ts";
import { met, runs, seedFor } from "../runs.ts";
import { type World, worlds } from "../scale/round/dishes.ts";

/** A plan's kitchens round by the rule of `roundToKitchen`: what held before is held, and nothing is given up for what did not. */

const energy: Demand = { of: "energy", exactly: 460 };
const protein: Demand = { of: "protein", least: 29 };

function bowl(added: NonNullable<LineInput["added"]>): Sheet {
  const lines: LineInput[] = [
    { key: "oats", food: "oats-rolled-dry", amount: "60 g" },
    { key: "drink", food: "soya-drink-unsweetened-fortified", amount: "250 ml" },
    { key: "banana", food: "bananas-raw", amount: "1/2 medium" },
  ];
  const recipe = { name: "Bowl", portions: 1, measures: "metric" as const };
  return sheet({ ...recipe, lines: lines.map((line) => ({ ...line, added })) }, starterFoods);
}

function planned(dishes: MealInput["dishes"], demands: readonly Demand[], rest = {}): Plan {
  const people: PersonInput[] = [{ id: "cox", demands }];
  return portionPlan({ meals: [{ id: "breakfast", dishes }], people, kitchen: "metric", ...rest });
}

const gramsIn = (plan: Plan): string[] | undefined =>
  [...plan.portion("cox", "breakfast").dishes.values()][0]?.values.grams.map(exactText);

describe.each(["cooking", "serving"] as const)("a portion of what is added at %s", (added) => {
  const both = planned(bowl(added), [energy, protein]);

  it("keeps the energy that it had, though its protein is out of reach", () => {
    const [first, second] = both.portion("cox", "breakfast").drift?.demands ?? [];
    expect([first?.of, first?.heldBefore, first?.holds]).toEqual(["energy", true, true]);
    expect([second?.of, second?.heldBefore, second?.holds]).toEqual(["protein", false, false]);
  });

  it("is measured as if that had not been asked", () => {
    expect(gramsIn(both)).toEqual(gramsIn(planned(bowl(added), [energy])));
  });
});

describe("a pot", () => {
  /** What has one way to be measured, and goes into the pot. */
  const plain = ({ recipe, place }: World): boolean =>
    place.scale !== undefined &&
    recipe.lines.every(
      ({ amount, food, added, scaling }) =>
        food !== undefined && added !== "serving" && scaling === undefined && !/medium/.test(String(amount)),
    );
  const shape = { lines: { min: 2, max: 4 }, demands: { min: 1, max: 3 }, off: 3 };

  it("of one eater is what rounding their portion by itself gives, whatever they ask", () => {
    let [compared, missed, quotients] = [0, 0, 0];
    const law = (world: World): void => {
      const { sheet: s, demands, place: kitchen, tolerance } = world;
      const exactly = planned(s, demands, { kitchen: undefined }).portion("cox", "breakfast");
      const portion = [...exactly.dishes.values()][0];
      if (!portion) return;
      const alone = roundToKitchen(portion, kitchen, { demands, tolerance });
      if (alone.status === "out-of-reach") return;
      compared += 1;
      if (alone.demands.some(({ heldBefore }) => !heldBefore)) missed += 1;
      if (alone.demands.some(({ demand, heldBefore }) => heldBefore && demand.of === undefined))
        quotients += 1;
      expect(gramsIn(planned(s, demands, { kitchen, tolerance }))).toEqual(
        alone.sheet.values.grams.map(exactText),
      );
    };
    fc.assert(fc.property(worlds(shape).filter(plain), law), {
      seed: seedFor("a pot of one", 71),
      numRuns: runs(150),
    });
    expect(Math.min(compared, missed, quotients)).toBeGreaterThan(met(10));
  });
});
