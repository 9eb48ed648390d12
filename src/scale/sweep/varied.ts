import { anyText, value } from "../../document/leaves.ts";
import { coded, fields, list, once, type Schema } from "../../document/schema.ts";
import { componentId } from "../../food/componentSchema.ts";
import { type ComponentId, components } from "../../food/components.ts";
import type { FoodInput } from "../../food/food.ts";
import { exactText } from "../../number/digits.ts";
import { fault, within } from "../../number/error.ts";
import { type Exact, exact, type Value } from "../../number/exact.ts";
import { sheet } from "../../sheet/build.ts";
import { toRecipe } from "../../sheet/recipe.ts";
import { revise } from "../../sheet/revise.ts";
import type { Sheet } from "../../sheet/sheet.ts";
import type { ReadAxis } from "./axis.ts";

/** What is known, varied: of cooking, or of a food wherever it stands. */
export type VariedAxis =
  | { readonly yieldFactor: readonly Value[] }
  | { readonly retentionIn: string; readonly of: ComponentId; readonly shares: readonly Value[] }
  | { readonly food: string; readonly of: ComponentId; readonly figures: readonly Value[] }
  | { readonly food: string; readonly prices: readonly Value[] };

/** The schema of an axis of this kind, told by the field that holds its values; undefined for another kind. */
export function variedSchema(given: { readonly [field: string]: unknown }): Schema<VariedAxis> | undefined {
  const [yields, shares, figures, prices] = variedSchemas();
  if (given.yieldFactor !== undefined) return yields;
  if (given.shares !== undefined || given.retentionIn !== undefined) return shares;
  if (given.prices !== undefined) return prices;
  return given.figures !== undefined || given.food !== undefined ? figures : undefined;
}

export function variedSchemas(): readonly Schema<VariedAxis>[] {
  return [yieldAxis(), retentionAxis(), figureAxis(), priceAxis()] as readonly Schema<VariedAxis>[];
}

type Of<F extends string> = Extract<VariedAxis, { readonly [K in F]: unknown }>;

const yieldAxis: () => Schema<Of<"yieldFactor">> = /* @__PURE__ */ once(() =>
  fields<Of<"yieldFactor">>({ yieldFactor: list(value({ above: 0 }), { least: 1 }) }),
);

const retentionAxis: () => Schema<Of<"shares">> = /* @__PURE__ */ once(() =>
  fields<Of<"shares">>({
    retentionIn: anyText(),
    of: coded("component-unknown", componentId()),
    shares: list(value({ from: 0, to: 1 }), { least: 1 }),
  }),
);

const figureAxis: () => Schema<Of<"figures">> = /* @__PURE__ */ once(() =>
  fields<Of<"figures">>({
    food: anyText(),
    of: coded("component-unknown", componentId()),
    figures: list(value({ from: 0 }), { least: 1 }),
  }),
);

const priceAxis: () => Schema<Of<"prices">> = /* @__PURE__ */ once(() =>
  fields<Of<"prices">>({ food: anyText(), prices: list(value({ from: 0 }), { least: 1 }) }),
);

/** Throws `line-unknown`, `food-unknown`, and `sweep-malformed` for the price of a food that has no currency. */
export function variedAxis(s: Sheet, axis: VariedAxis): ReadAxis {
  if ("yieldFactor" in axis)
    return settled(
      "yield",
      "",
      axis.yieldFactor,
      (factor) => (from) => revise(from, { yieldFactor: exactText(factor) }),
    );
  if ("shares" in axis) {
    const { retentionIn: key, of } = axis;
    within(["retentionIn"], () => s.plan.indexOf(key));
    return settled(`${key} ${of} kept`, "", axis.shares, (share) => (from) => {
      const own = Object.fromEntries(from.plan.lines[from.plan.indexOf(key)]?.source.left ?? []);
      return revise(from, { lines: { [key]: { retention: { ...own, [of]: share } } } });
    });
  }
  const food = within(["food"], () => s.plan.foods.get(axis.food));
  if ("figures" in axis) {
    const { of } = axis;
    return settled(`${axis.food} ${of}`, components[of].unit, axis.figures, (figure) =>
      withFood({ ...food, per100g: { ...food.per100g, [of]: figure } }),
    );
  }
  const { price } = food;
  if (price === undefined)
    throw fault(
      "sweep-malformed",
      "the food has no price",
      'give it one: price: { currency: "GBP", per100g: 0.2 }',
      ["food"],
    );
  return settled(`${axis.food} price`, price.currency, axis.prices, (per100g) =>
    withFood({ ...food, price: { ...price, per100g } }),
  );
}

/** The sheet with a food told otherwise, wherever it stands: in nested recipes too. */
function withFood(food: FoodInput): (s: Sheet) => Sheet {
  return (s) => {
    const { foods, recipes } = s.plan;
    return s.rebuilt(sheet(toRecipe(s), foods.with([food]), { recipes }));
  };
}

function settled(
  name: string,
  unit: string,
  values: readonly Value[],
  vary: (figure: Exact) => (s: Sheet) => Sheet,
): ReadAxis {
  const settings = values.map((given) => {
    const figure = exact(given);
    const shown = typeof given === "number" ? exactText(figure) : String(given);
    return { name, shown, figure, line: undefined, target: undefined, vary: vary(figure) };
  });
  return { name, unit: unit === "" ? undefined : unit, settings };
}
