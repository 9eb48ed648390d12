import { describe, expect, it } from "vitest";
import { foodTable } from "../../src/food/table.ts";
import { errorOf } from "../number/errorOf.ts";

const beans = { id: "beans", name: "Beans", source: "made up", per100g: {} };
const faultsOf = (about: object): string[] =>
  errorOf(() => foodTable([{ ...beans, ...about } as never])).faults.map(
    ({ code, path, message }) => `${code} ${path.join(".")}: ${message}`,
  );

describe("packs and prices of a food", () => {
  it("are kept as written", () => {
    const sold = {
      packs: [{ name: "tin", edible: 240, price: "0.85" }],
      price: { currency: "GBP" },
      aisle: "tins",
    };
    expect(foodTable([{ ...beans, ...sold }]).get("beans")).toMatchObject(sold);
    const loose = { price: { currency: "GBP", per100g: "0.12" } };
    expect(foodTable([{ ...beans, ...loose }]).get("beans")).toMatchObject(loose);
  });

  it("want a currency, said once for the food", () => {
    const packs = [
      { name: "tin", edible: 240, price: "0.85" },
      { name: "bag", edible: 500 },
      { name: "sack", edible: 5000, price: 9 },
    ];
    expect(faultsOf({ packs })).toEqual([
      "food-malformed 0.packs.0.price: a price without a currency",
      "food-malformed 0.packs.2.price: a price without a currency",
    ]);
  });

  it("are refused where no shop could mean them, with every fault at once", () => {
    expect(
      faultsOf({
        packs: [
          { name: "", edible: 240 },
          { name: "tin", edible: 0 },
          { name: "bag", edible: "1/2", price: -1 },
        ],
        price: { currency: "pounds", per100g: Number.NaN },
      }),
    ).toEqual([
      "food-malformed 0.packs.0.name: expected text, got none",
      'food-malformed 0.packs.1.edible: "0" is not above 0',
      'food-malformed 0.packs.2.price: "-1" is below 0',
      "food-malformed 0.price.currency: not a currency code",
      "number-not-finite 0.price.per100g: NaN is not a finite number",
    ]);
    expect(faultsOf({ packs: 5 })).toEqual(["food-malformed 0.packs: expected a list, got 5"]);
    expect(faultsOf({ price: "1 GBP" })).toEqual(['food-malformed 0.price: expected an object, got "1 GBP"']);
  });
});
