/**
 * For the analyst: the same pot at many sizes, as tidy rows ready for a data frame. Doses do not
 * scale, so a nutrient that they bring thins out as the portion grows.
 */
import { scale, sheet } from "steelyard";
import { starterFoods } from "steelyard/foods";
import { type Cell, table, toCsv } from "steelyard/show";
import { oatPot, seedTopping } from "./recipes.ts";

const base = sheet(oatPot, starterFoods, { recipes: { "seed-topping": seedTopping } });
const rows: Cell[][] = [];
for (let energy = 300; energy <= 900; energy += 100) {
  const { sheet: s, factor } = scale(base, { energy });
  for (const id of ["protein", "fibre", "manganese", "iodine"] as const) {
    const tally = s.portion(id);
    rows.push([
      String(energy),
      factor.toFixed(4),
      id,
      tally.value.toFixed(3),
      tally.unit,
      tally.bound,
      tally.coverage.toFixed(2),
      tally.missing.join(" "),
    ]);
  }
}

const headings = ["kcal", "factor", "component", "amount", "unit", "bound", "coverage", "silent"];
console.log(toCsv(table({ columns: headings.map((key) => ({ key, heading: key })), rows })));
