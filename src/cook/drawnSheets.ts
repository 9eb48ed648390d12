import { type Exact, over, plus, ZERO } from "../number/exact.ts";
import type { Sheet } from "../sheet/sheet.ts";
import { drawnBy } from "./drawn.ts";
import { partOf } from "./vessel.ts";

/** Gives the nested recipes that some lines of a sheet draw on, as much of each as is drawn, innermost first. */
export function drawnSheets(s: Sheet, isDrawn: (key: string) => boolean = () => true): readonly Sheet[] {
  const drawn = new Map<Sheet, Exact>();
  for (const { key, nested, grams } of drawnBy(s)) {
    if (isDrawn(key)) drawn.set(nested, plus(drawn.get(nested) ?? ZERO, grams));
  }
  return [...drawn].flatMap(([nested, grams]) => {
    const part = partOf(nested, over(grams, nested.masses.cooked));
    return [...drawnSheets(part), part];
  });
}
