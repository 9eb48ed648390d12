import { anyText, count, word } from "../../document/leaves.ts";
import { readFar } from "../../document/read.ts";
import { coded, fields, list, once, optional, type Schema } from "../../document/schema.ts";
import type { Allergen } from "../../food/allergens.ts";
import { allergens } from "../../food/allergens.ts";
import { componentId } from "../../food/componentSchema.ts";
import { type ComponentId, component } from "../../food/components.ts";
import type { FoodInput } from "../../food/food.ts";
import type { FoodTable } from "../../food/table.ts";
import { collect, type Fault, quote, throwIfAny } from "../../number/error.ts";
import { isZero, ZERO } from "../../number/exact.ts";
import type { Sheet } from "../../sheet/sheet.ts";
import type { Quantity } from "../demand.ts";
import { quantity } from "../quantity.ts";
import { matchName, usualMatch } from "./match.ts";
import type { SubstitutesOptions } from "./options.ts";

const substitutesHow: () => Schema<SubstitutesOptions> = /* @__PURE__ */ once(() =>
  fields<SubstitutesOptions>({
    match: optional(coded("component-unknown", quantity())),
    components: optional(list(componentId())),
    avoid: optional(list(word(Object.keys(allergens) as Allergen[]))),
    among: optional(list(anyText())),
    most: optional(count(1)),
  }),
);

const USUAL: readonly ComponentId[] = ["energy", "protein", "fat", "carbohydrateByDifference", "fibre"];

/** What a search for substitutes is handed, read. */
export interface ReadSubstitutes {
  /** What a substitute brings as much of as the line. */
  readonly match: Quantity;
  /** What is to stay close. */
  readonly ids: readonly ComponentId[];
  /** What was to stay close, had the line said how much it brings. */
  readonly untold: readonly ComponentId[];
  readonly candidates: readonly FoodInput[];
  /** Whether the caller named the candidates. */
  readonly isNamed: boolean;
  readonly avoid: readonly Allergen[];
  readonly most: number;
}

/** Reads what to look for in the place of a line. Throws every fault at once. */
export function readSubstitutes(s: Sheet, i: number, how: SubstitutesOptions): ReadSubstitutes {
  const { line, source } = s.plan.lines[i] ?? {};
  const food = source?.food?.input;
  const faults: Fault[] = [];
  const refuse = (path: (string | number)[], message: string, hint: string): void => {
    faults.push({ code: "substitutes-malformed", path, message, hint });
  };
  if (!food)
    refuse([], `${quote(line?.key)} is a recipe, not a food`, "ask for substitutes inside the nested recipe");
  else if (isZero(s.values.grams[i] ?? ZERO))
    refuse([], `${quote(line?.key)} has no mass to replace`, "give it an amount above 0");
  const given = readFar(faults, substitutesHow(), how, "substitutes-malformed") ?? {};
  const { match: told, components: close = USUAL, avoid = [], among, most = 5 } = given;
  const named = close.filter((id) => id !== undefined);
  const others =
    among?.flatMap((id, k) => collect(faults, ["among", k], () => s.plan.foods.get(id)) ?? []) ??
    like(s.plan.foods, food);
  const untold = food ? named.filter((id) => s.cell(line?.key ?? "", id).bound === "unknown") : [];
  const ids = named.filter((id) => !untold.includes(id) && !isZero(s.portion(id).value));
  if (faults.length === 0 && ids.length === 0) {
    const message =
      untold.length > 0
        ? `${quote(line?.key)} says nothing of ${untold.map((id) => component(id).name).join(", ")}`
        : "the portion holds none of what is to stay close";
    refuse(["components"], message, "name components that it is known to hold");
  }
  if (faults.length === 0 && told !== undefined && told !== "mass") {
    const cell = s.cell(line?.key ?? "", told);
    if (cell.bound === "unknown" || isZero(cell.value)) {
      const why = cell.bound === "unknown" ? "says nothing of" : "brings no";
      const hint = `match ${matchName(usualMatch(s, i))}, or leave it out`;
      refuse(["match"], `${quote(line?.key)} ${why} ${matchName(told)} to match`, hint);
    }
  }
  throwIfAny(faults);
  const match = told ?? usualMatch(s, i);
  const candidates = others.filter((each) => each.id !== food?.id);
  return { match, ids, untold, candidates, isNamed: among !== undefined, avoid, most };
}

function like(foods: FoodTable, food: FoodInput | undefined): readonly FoodInput[] {
  return foods.ids
    .map((id) => foods.get(id))
    .filter((each) => each.group !== undefined && each.group === food?.group && each.state === food?.state);
}
