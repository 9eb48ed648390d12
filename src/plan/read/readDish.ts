import { collect, type Path, quote } from "../../number/error.ts";
import { exact, type Fraction, type Value } from "../../number/fraction.ts";
import { Sheet } from "../../sheet/sheet.ts";
import type { DishInput } from "../input.ts";
import { kindOf, type PlanFaults } from "./planFaults.ts";

/** A dish, read. */
export interface ReadDish {
  /** As it was handed in, or as an answer changed it. */
  readonly written: Sheet;
  /** Grams per millilitre. */
  readonly density: Fraction | undefined;
}

const DISH: readonly string[] = ["sheet", "density"] satisfies (keyof DishInput)[];

/** A sheet, or one with what is to be known of how it is made. */
export function readDish(faults: PlanFaults, given: unknown, path: Path): ReadDish | undefined {
  if (given instanceof Sheet) return { written: given, density: undefined };
  const hint = "make a sheet with sheet(recipe, foods), or open a stored one with openSheet";
  const record = faults.record(given, path, "a dish", DISH, hint);
  if (!record) return undefined;
  if (!(record.sheet instanceof Sheet)) {
    const at = record.sheet === undefined ? path : [...path, "sheet"];
    return faults.refuse(at, `expected a sheet, got ${kindOf(record.sheet)}`, hint);
  }
  return { written: record.sheet, density: readDensity(faults, record.density, [...path, "density"]) };
}

function readDensity(faults: PlanFaults, given: unknown, path: Path): Fraction | undefined {
  if (given === undefined) return undefined;
  const density = collect(faults.all, path, () => exact(given as Value));
  if (!density || density.n > 0n) return density;
  return faults.refuse(path, `a density of ${quote(given)}`, "give grams per millilitre, above 0");
}
