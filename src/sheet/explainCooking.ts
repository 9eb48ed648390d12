import { type ComponentId, components } from "../food/components.ts";
import { readFigure, type Shares } from "../food/composition.ts";
import { componentsOf, likelySystem } from "../food/energy.ts";
import type { ReadFigure } from "../food/figure.ts";
import { findRow, type RetentionInput, retentionCode } from "../food/retention.ts";
import type { FoodTable } from "../food/table.ts";
import { lostBesideWater } from "../food/waterLeft.ts";
import { foundYield, isYieldCode } from "../food/yield.ts";
import { showFigure, showPercent } from "../measure/showFigure.ts";
import { exactText } from "../number/digits.ts";
import { equals, isZero, ONE } from "../number/exact.ts";
import type { Sheet } from "./sheet.ts";
import type { Source } from "./source.ts";

/**
 * What each cooking leaves of a food's component, and who says so: by the share that is named for it, or
 * by those of what it is computed from. `told` is what stands behind the source's cookings, one for each.
 */
export function cookingSteps(
  { food: of, cookings }: Source,
  id: ComponentId,
  told: readonly RetentionInput[],
  foods: FoodTable,
): string[] {
  const food = of?.input;
  if (!food) return [];
  return cookings.flatMap((shares, k) => {
    const before = (each: ComponentId): ReadFigure => readFigure(food, each, ...cookings.slice(0, k));
    const after = readFigure(food, id, ...cookings.slice(0, k + 1));
    if (equals(after.value, before(id).value)) return [];
    const again = k > 0 ? " again" : "";
    const own = shares.get(id);
    const isOverride = own !== undefined && typeof told[k] === "object" && Object.hasOwn(told[k], id);
    const said = `${isOverride ? ", as the recipe says" : saidBy(told[k], foods)}${shares.presumed ? ", presumed: it was said of another food in this place" : ""}`;
    const spread = shares.spread?.get(id);
    const lay = spread
      ? ` (nine analyses in ten lay from ${showPercent(spread.low)} to ${showPercent(spread.high)})`
      : "";
    if (own) return [`${showPercent(own)} left after cooking${again}${lay}${said}`];
    if (id === "water") {
      const then = (each: ComponentId): ReadFigure => readFigure(food, each, ...cookings.slice(0, k + 1));
      const gone = lostBesideWater({ before, after: then }).map(
        ([each, grams]) => `${showFigure(grams, { significant: 3, unit: "g" })} of ${components[each].name}`,
      );
      return [`in 100 g it takes the place of ${gone.join(", ")} lost in cooking${again}${said}`];
    }
    const isGiven = id === "energy" && after.formula === undefined;
    const { system } = likelySystem(food);
    const causes = isGiven ? componentsOf(system) : termsOf(after);
    const left = [...new Set(causes.flatMap((each) => named(each, shares, before)))];
    const of = left.map((each) => `${showPercent(shares.get(each) ?? ONE)} of ${components[each].name}`);
    const least = after.inputs?.includes("below") ? "at least " : "";
    const figure = showFigure(after.value, { significant: 6, unit: components[id].unit });
    const by = isGiven ? `, by ${system.name}` : "";
    return [`${least}${figure} left after cooking${again}, since ${of.join(", ")} is left${by}${said}`];
  });
}

/** The components that shares are named for among what another is computed from. */
function named(
  id: ComponentId,
  shares: Shares,
  before: (id: ComponentId) => ReadFigure,
): readonly ComponentId[] {
  const own = shares.get(id);
  const { kind, value } = before(id);
  if (own) return equals(own, ONE) || (kind === "known" && isZero(value)) ? [] : [id];
  return termsOf(before(id)).flatMap((input) => named(input, shares, before));
}

function termsOf({ formula }: ReadFigure): readonly ComponentId[] {
  return Object.keys(formula?.terms ?? {}) as ComponentId[];
}

/** Code and name of a published factor, or the recipe. */
function saidBy(told: RetentionInput | undefined, { retention: table }: FoodTable): string {
  const code = retentionCode(told);
  if (code === undefined || !table) return ", as the recipe says";
  const found = findRow(code, table);
  return `: code ${code}${found ? `, ${found.row[0]}` : ""}, ${(found?.table ?? table).source}`;
}

/** Published yields that a recipe or its lines name, each with whose it is. */
export function yieldSteps({ plan, values, origin }: Sheet): string[] {
  const told =
    values.cooking.by === "lines"
      ? plan.lines.map(({ line, source }) => [`${source.name}: `, line.yieldFactor] as const)
      : values.cooking.by === "factor"
        ? [["", origin.yieldFactor] as const]
        : [];
  return told.flatMap(([of, yieldFactor]) => {
    if (!isYieldCode(yieldFactor)) return [];
    const {
      code,
      name,
      source,
      yieldFactor: figure,
      spread,
    } = foundYield(yieldFactor.code, plan.foods.retention);
    const between = spread ? `, most from ${exactText(spread.low)} to ${exactText(spread.high)}` : "";
    return [
      `${of}yield factor ${showFigure(figure, { significant: 3 })}${between}: code ${code}, ${name}, ${source}`,
    ];
  });
}
