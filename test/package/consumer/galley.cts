// A CommonJS program: the module is an ES module, which TypeScript lets nodenext require from 5.8 on.
import steelyard = require("steelyard");
import pantry = require("steelyard/foods");

// The types of the host are left out of the compilation: the package may not need them.
declare const console: { log(text: string): void };

const porridge: steelyard.Sheet = steelyard.sheet(
  { name: "Porridge", portions: 1, lines: [{ food: "oats-rolled-dry", amount: "100 g" }] },
  pantry.starterFoods,
);
const { factor } = steelyard.scale(porridge, { energy: "758 kcal" });

try {
  steelyard.amount("2-3 tbsp");
} catch (error) {
  const isRange = error instanceof steelyard.SteelyardError && error.code === "amount-range";
  if (isRange && factor.toString() === "2") console.log("as it should be");
}
