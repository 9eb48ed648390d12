import type { FoodInput } from "../food/food.ts";
import { type Measures, readyMeasures } from "../measure/measures.ts";
import { fixedUnit, householdUnits } from "../measure/units.ts";
import { spelled } from "../measure/unitText.ts";
import { type Exact, exact } from "../number/exact.ts";

/** A household measure of a food, read: `cup, chopped` is a cup in a form. */
export interface OwnMeasure {
  readonly name: string;
  readonly grams: Exact;
  /** What it holds where it is a cup or spoon, in ml. */
  readonly ml: Exact | undefined;
  readonly unit: string;
  readonly form: string;
}

/** A food's own measures, and the names among them that a written amount may use as its unit. */
export interface OwnMeasures {
  readonly measures: readonly OwnMeasure[];
  readonly names: readonly string[];
}

const read: WeakMap<FoodInput, OwnMeasures> = /* @__PURE__ */ new WeakMap();

/** Reads a food's own measures, once. */
export function ownMeasures(food: FoodInput): OwnMeasures {
  const known = read.get(food);
  if (known) return known;
  const measures = (food.measures ?? []).map((m): OwnMeasure => {
    const [head = "", ...rest] = m.name.split(",");
    const unit = head.trim();
    const ml = volumeOf(unit, food.measuredWith ?? "us");
    return {
      name: m.name,
      grams: exact(m.grams),
      ml,
      unit: spelled(unit.toLowerCase()) ?? unit,
      form: rest.join(",").trim(),
    };
  });
  // A plain cup or spoon is read by the recipe's measures, so only a form of one is a name.
  const names = measures.filter((m) => m.ml === undefined || m.form !== "").map((m) => m.name);
  const made = { measures, names };
  read.set(food, made);
  return made;
}

/** Millilitres of a cup, spoon or other unit of volume, or nothing where the word is none. */
export function volumeOf(unit: string, measures: Measures): Exact | undefined {
  const id = spelled(unit.toLowerCase());
  if (id === undefined) return undefined;
  const fixed = fixedUnit(id);
  if (fixed) return fixed.kind === "volume" ? fixed.size : undefined;
  const household = householdUnits.find((u) => u === id);
  return household && readyMeasures(measures).units.get(household)?.size;
}
