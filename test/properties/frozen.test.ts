import { describe, expect, it } from "vitest";
import { starterFoods } from "../../src/foods.ts";
import * as face from "../everything.ts";

// "Nothing changes" is promised to programs that no compiler holds to it, too: what several readers
// share is frozen, and trying to change it throws in a module (ECMAScript, strict mode).

const bowl = face.sheet(
  {
    name: "Bowl",
    portions: 1,
    lines: [
      { key: "oats", food: "oats-rolled-dry", amount: "60 g" },
      { key: "honey", food: "honey", amount: "10 g" },
    ],
  },
  starterFoods,
);

/** Any list or object inside, as a program without types would see it. */
// biome-ignore lint/suspicious/noExplicitAny: the test stands for a program without types
const open = (value: unknown): any => value;

describe("what is shared", () => {
  it.each<[string, () => unknown]>([
    [
      "a starter food",
      () => {
        open(starterFoods.get("honey")).per100g.energy = 0;
      },
    ],
    [
      "a food of one's own table",
      () => {
        open(starterFoods.with([starterFoods.get("honey")]).get("honey")).per100g.energy = 0;
      },
    ],
    [
      "an energy system",
      () => {
        open(face.energySystems["atwater-general"]).parts.protein.factor = "99";
      },
    ],
    [
      "the list of energy systems",
      () => {
        open(face.energySystems)["atwater-own"] = undefined;
      },
    ],
    [
      "a kitchen",
      () => {
        open(face.kitchens.metric).drawer.tbsp = ["1/7"];
      },
    ],
    [
      "a component",
      () => {
        open(face.components.sodium).unit = "kg";
      },
    ],
    [
      "a set of spoons",
      () => {
        open(face.measureSets.metric).ml.tbsp = "20";
      },
    ],
    [
      "a range of energy shares",
      () => {
        open(face.energyRanges.us)[0].most = "1";
      },
    ],
    [
      "a caution's words",
      () => {
        open(face.cautionTexts.pregnant).text = "";
      },
    ],
    ["a sheet's lines", () => open(bowl.lines).reverse()],
    [
      "a line",
      () => {
        open(bowl.lines[0]).key = "rye";
      },
    ],
    [
      "a recipe",
      () => {
        open(face.toRecipe(bowl)).lines[0].amount = "1 g";
      },
    ],
  ])("%s cannot be changed", (_, change) => {
    expect(change).toThrow(TypeError);
  });

  it("is what it was after the attempts", () => {
    expect(bowl.lines.map(({ key }) => key)).toEqual(["oats", "honey"]);
    expect(starterFoods.get("honey").per100g.energy).not.toBe(0);
  });
});
