import type { FoodInput, FoodTable } from "steelyard";
import { starterFoods } from "steelyard/foods";

/** How the camp's shop sells what meals take. Packs and prices are invented: put your own here. */
const sold: Readonly<Record<string, Pick<FoodInput, "packs" | "price" | "origin">>> = {
  "oats-rolled-dry": {
    packs: [
      { name: "500 g bag", edible: 500, price: "0.90" },
      { name: "1 kg bag", edible: 1000, price: "1.50" },
    ],
    price: { currency: "GBP" },
  },
  "milk-whole": {
    // Grams of a litre and of two, at 1.03 g/ml.
    packs: [
      { name: "1 l carton", edible: 1030, price: "1.10" },
      { name: "2 l carton", edible: 2060, price: "1.75" },
    ],
    price: { currency: "GBP" },
  },
  "yoghurt-greek-fat-free": {
    packs: [
      { name: "150 g pot", edible: 150, price: "0.85" },
      { name: "500 g tub", edible: 500, price: "1.95" },
    ],
    price: { currency: "GBP" },
  },
  // Its label says that nothing in it is of an animal.
  "bread-wholemeal": {
    origin: "plant",
    packs: [{ name: "800 g loaf", edible: 800, price: "1.40" }],
    price: { currency: "GBP" },
  },
  "tomatoes-canned": {
    packs: [{ name: "400 g tin", edible: 400, price: "0.60" }],
    price: { currency: "GBP" },
  },
  "egg-raw": {
    packs: [
      { name: "box of 6", edible: 300, price: "1.60" },
      { name: "box of 12", edible: 600, price: "2.90" },
    ],
    price: { currency: "GBP" },
  },
  "bananas-raw": { price: { currency: "GBP", per100g: "0.11" } },
  "pumpkin-seeds": {
    packs: [{ name: "200 g bag", edible: 200, price: "2.15" }],
    price: { currency: "GBP" },
  },
  "hemp-seeds-hulled": {
    packs: [{ name: "250 g bag", edible: 250, price: "4.40" }],
    price: { currency: "GBP" },
  },
  "lemon-juice-raw": {
    packs: [{ name: "250 ml bottle", edible: 255, price: "1.20" }],
    price: { currency: "GBP" },
  },
  "ginger-root-raw": { price: { currency: "GBP", per100g: "0.55" } },
};

/** The starter foods as that shop sells them. */
export const shopFoods: FoodTable = starterFoods.with(
  Object.entries(sold).map(([id, about]) => ({ ...starterFoods.get(id), ...about })),
);
