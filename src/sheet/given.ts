import { fault, kindOf } from "../number/error.ts";
import { Sheet } from "./sheet.ts";

/** Refuses what is no sheet. Throws `sheet-malformed`, at the argument that it was handed in as. */
export function checkSheet(given: unknown, argument = "sheet"): void {
  if (given instanceof Sheet) return;
  const hint = "make one with sheet(recipe, foods), or open a stored one with openSheet";
  throw fault("sheet-malformed", `expected a sheet, got ${kindOf(given)}`, hint, [argument]);
}
