import { ONE } from "../../number/exact.ts";
import type { Sheet } from "../../sheet/sheet.ts";
import type { DayFit } from "../find/dayFit.ts";
import type { ServedPortion } from "../portion.ts";
import type { LineFactors } from "../share/lineFactors.ts";
import { PortionDrift } from "./drift.ts";
import { MealFigures } from "./figures.ts";

/** Tells what measurable amounts cost a day that was fitted as one; nothing where nobody measures. */
export function dayDrift(
  fit: DayFit,
  portions: readonly ServedPortion[],
  sheets: () => readonly Sheet[],
): PortionDrift | undefined {
  const found = portions.map((portion) => ({ meal: portion.meal, ...portion.found() }));
  const tolerance = found.find(({ measured }) => measured)?.measured?.tolerance;
  if (!tolerance) return undefined;
  const { dishes, system } = fit.day();
  const of = (pick: (each: (typeof found)[number]) => LineFactors): LineFactors => {
    const all = new Map(found.map((each) => [each.meal, pick(each)]));
    return new Map(
      dishes.flatMap(({ name, meal = "", own, sheet }) => {
        // What is eaten besides stays as it is.
        const factors = own === undefined ? sheet.plan.lines.map(() => ONE) : all.get(meal)?.get(own);
        return factors ? [[name, factors] as const] : [];
      }),
    );
  };
  return new PortionDrift(
    {
      figures: new MealFigures(
        dishes.map(({ name, sheet }) => ({ name, sheet })),
        system,
      ),
      demands: fit.asked(),
      tolerance,
      exact: of(({ exact }) => exact),
      measured: of(({ exact, measured }) => measured?.factors ?? exact),
      lineByLine: of(({ exact, measured }) => measured?.lineByLine ?? exact),
      unrounded: found.some(({ measured }) => measured?.unrounded),
    },
    sheets,
  );
}
