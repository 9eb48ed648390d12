import { type Fault, SteelyardError } from "../number/error.ts";
import { compare, exact, type Fraction, sum, toDecimal } from "../number/fraction.ts";
import { type ComponentId, components } from "./components.ts";
import { read } from "./figure.ts";
import type { Figure } from "./food.ts";

/**
 * The most that the proximates of 100 g may come to, in grams. They are analysed one by one, so that
 * published ones overshoot: of the 8,789 foods of USDA SR28, 428 by more than 1 g, 7 by more than 3 g,
 * and none by more than 6.46 g (chinook salmon, cooked). Beyond 107 g a figure is of something else: another
 * mass, another state, another column.
 */
const MOST = "107";

const AROUND: readonly ComponentId[] = ["water", "protein", "fat", "ash", "alcohol"];

/** Refuses a food whose proximates are heavier than the food itself, each taken at the least it can be. */
export function checkProximates(food: unknown, faults: Fault[]): void {
  const figures = fieldsOf(fieldsOf(food)?.per100g);
  if (!figures) return;
  const carbohydrate: readonly ComponentId[] = Object.hasOwn(figures, "carbohydrateByDifference")
    ? ["carbohydrateByDifference"]
    : ["availableCarbohydrate", "fibre"];
  const given = [...AROUND, ...carbohydrate].flatMap((id): [ComponentId, Fraction][] => {
    const low = Object.hasOwn(figures, id) ? leastOf(figures[id]) : undefined;
    return low && low.n > 0n ? [[id, low]] : [];
  });
  const mass = sum(given.map(([, low]) => low));
  if (compare(mass, exact(MOST)) <= 0) return;
  const names = given.map(([id]) => components[id].name).join(", ");
  faults.push({
    code: "food-malformed",
    path: ["per100g"],
    message: `${names} come to ${toDecimal(mass).toSignificantDigits(6)} g in 100 g`,
    hint: "check that every figure is of 100 g of the edible portion, in the same state",
  });
}

type Fields = { readonly [field: string]: unknown };

function fieldsOf(value: unknown): Fields | undefined {
  return typeof value === "object" && value !== null && !Array.isArray(value) ? (value as Fields) : undefined;
}

/** The least that a figure can be; of one that cannot be read, nothing: its own fault is told elsewhere. */
function leastOf(figure: unknown): Fraction | undefined {
  if (figure === undefined || figure === null) return undefined;
  try {
    return read(figure as Figure).low;
  } catch (error) {
    if (error instanceof SteelyardError) return undefined;
    throw error;
  }
}
