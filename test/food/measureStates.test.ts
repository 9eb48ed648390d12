import { describe, expect, it } from "vitest";
import type { FoodInput } from "../../src/food/food.ts";
import { starterFoodInputs } from "../../src/food/starter/index.ts";
import { exact } from "../../src/number/exact.ts";

/** US customary, in millilitres. */
const ML: Readonly<Record<string, number>> = {
  cup: 236.588,
  tbsp: 14.787,
  tsp: 4.929,
  "fl oz": 29.574,
  litre: 1000,
};
const number = (value: unknown): number => {
  const { n, d } = exact(value as string);
  return Number(n) / Number(d);
};
const waterOf = (food: FoodInput): number => {
  const water = food.per100g.water;
  return water === undefined
    ? 0
    : number(typeof water === "object" && "value" in water ? water.value : water);
};
const stem = ({ id }: FoodInput): string =>
  id
    .replace(/-(dry|dried|raw|boiled|cooked|roasted|baked|browned|braised|fresh|frozen|canned)/g, "")
    .replace(/-drained$/, "");

interface Piece {
  readonly food: FoodInput;
  readonly name: string;
  readonly grams: number;
}
const measures: readonly Piece[] = starterFoodInputs.flatMap((food) =>
  (food.measures ?? []).map(({ name, grams }) => ({ food, name, grams: number(grams) })),
);
const isVolume = (name: string): boolean => ML[name.split(",")[0] ?? ""] !== undefined;

/*
 * A measure belongs to a state: a sheet of nori weighs what a dry one weighs. The bounds here are common
 * practice, no source; each weight is held to SR28's own of that food in test/reference/sr28.test.ts.
 */
describe("measures of starter foods belong to the food's state", () => {
  it("by volume: nothing is heavier than it can be in a spoon, nor holds more dry matter", () => {
    for (const { food, name, grams } of measures) {
      if (!isVolume(name)) continue;
      const density = grams / (ML[name.split(",")[0] ?? ""] ?? 1);
      const dry = (density * (100 - waterOf(food))) / 100;
      expect([food.id, name, density > 0.05 && density < 1.45]).toEqual([food.id, name, true]);
      // Only fats, syrups, salt and sugar leave a spoon hardly any air or water.
      const dense = ["oils", "salt", "sweeteners", "dairy", "pulses", "seeds", "leavening", "grains"];
      if (!dense.includes(food.group ?? ""))
        expect([food.id, name, dry < 0.75]).toEqual([food.id, name, true]);
      if (waterOf(food) > 60) expect([food.id, name, dry < 0.45]).toEqual([food.id, name, true]);
    }
  });

  it("by the piece: what was cooked weighs between half and a third more than the same piece raw", () => {
    let compared = 0;
    for (const raw of measures) {
      if (isVolume(raw.name) || raw.food.state !== "raw") continue;
      for (const cooked of measures) {
        if (cooked.food.state !== "cooked" || cooked.name !== raw.name) continue;
        if (stem(cooked.food) !== stem(raw.food)) continue;
        const share = cooked.grams / raw.grams;
        const at = [raw.food.id, cooked.food.id, raw.name];
        expect([...at, share >= 0.5 && share <= 1.34]).toEqual([...at, true]);
        compared += 1;
      }
    }
    expect(compared).toBeGreaterThan(8);
  });

  it("by the sheet: of dry seaweed alone, and spoons of fresh seaweed hold more water than dry matter", () => {
    const sheets = measures.filter(({ name }) => name === "sheet");
    expect(sheets.map(({ food, grams }) => [food.id, food.state, grams])).toEqual([
      ["nori-dried", "dry", 2.6],
    ]);
    const spoons = measures.filter(({ food, name }) => food.group === "seaweed" && name === "tbsp");
    // SR28 weighs a quarter cup of a seaweed dry (NDB 31019) at 5 g and rehydrated (31020) at 25 g.
    for (const { food, grams } of spoons)
      if (food.state === "raw") expect([food.id, grams > 3 && grams < 8]).toEqual([food.id, true]);
  });

  it("by name: a cup whipped, melted or pureed differs from one that is not", () => {
    for (const food of starterFoodInputs) {
      const own = measures.filter((each) => each.food === food);
      const plain = own.find(({ name }) => name === "cup");
      const whipped = own.find(({ name }) => name === "cup, whipped");
      if (plain && whipped) expect([food.id, whipped.grams < plain.grams]).toEqual([food.id, true]);
    }
  });
});
