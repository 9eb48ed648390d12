import { type Fault, throwIfAny } from "../number/error.ts";
import { type Exact, exact, fraction, sum, ZERO } from "../number/exact.ts";
import { compareRatios } from "../number/ratio.ts";
import { type ComponentId, components } from "./components.ts";
import { figureAsRead } from "./figure.ts";
import type { FoodInput } from "./food.ts";

/** Each of these is part of the other. */
const parts: readonly (readonly [part: ComponentId, whole: ComponentId])[] = [
  ["saturatedFat", "fat"],
  ["monounsaturatedFat", "fat"],
  ["polyunsaturatedFat", "fat"],
  ["transFat", "fat"],
  ["sugars", "availableCarbohydrate"],
  ["polyols", "availableCarbohydrate"],
  ["starch", "availableCarbohydrate"],
  ["sugars", "carbohydrateByDifference"],
  ["polyols", "carbohydrateByDifference"],
  ["fibre", "carbohydrateByDifference"],
  ["solubleFibre", "fibre"],
  ["addedSugars", "sugars"],
];

/**
 * Refuses what no food can have, rounding allowed for: a part larger than its whole, or constituents
 * heavier than the food, the usual sign of a serving that is not the one printed.
 *
 * Throws `label-malformed`, all faults at once.
 */
export function refuseImpossible(per100g: FoodInput["per100g"], style: "us" | "eu"): void {
  const faults: Fault[] = [];
  const refuse = (key: string, message: string, hint: string): void => {
    faults.push({ code: "label-malformed", path: ["figures", key], message, hint });
  };
  for (const [part, whole] of parts) {
    const most = endOf(per100g, whole, "high");
    const least = endOf(per100g, part, "low");
    if (most && least && compareRatios(least, most) > 0)
      refuse(part, `more ${components[part].name} than ${components[whole].name}`, "check both figures");
  }
  const heavy: readonly ComponentId[] =
    style === "us"
      ? ["protein", "fat", "carbohydrateByDifference"]
      : ["protein", "fat", "availableCarbohydrate", "fibre", "salt"];
  const mass = sum(heavy.map((id) => endOf(per100g, id, "low") ?? ZERO));
  if (compareRatios(mass, HUNDRED) > 0)
    faults.push({
      code: "label-malformed",
      path: ["per"],
      message: `${heavy.map((id) => components[id].name).join(", ")} come to ${mass.toSignificantDigits(3)} g in 100 g`,
      hint: "check what the figures are for: the serving as printed, in g or ml",
    });
  const energy = endOf(per100g, "energy", "low");
  // Fat has the most energy of all that is eaten: 9 kcal a gram.
  if (energy && compareRatios(energy, exact(900)) > 0)
    refuse("energy", "more energy than pure fat has", "check the serving, and kcal against kJ");
  throwIfAny(faults);
}

const HUNDRED: Exact = /* @__PURE__ */ fraction(100n);

function endOf(per100g: FoodInput["per100g"], id: ComponentId, end: "low" | "high"): Exact | undefined {
  const figure = per100g[id];
  return figure === undefined ? undefined : figureAsRead(figure)[end];
}
