import { text, word } from "../../document/leaves.ts";
import { read } from "../../document/read.ts";
import { byName, fields, once, optional, type Refuse, type Schema } from "../../document/schema.ts";
import { type Allergen, allergens } from "../../food/allergens.ts";
import type { FoodInput } from "../../food/food.ts";
import { kitchenNameOf } from "../../food/kitchenName.ts";
import { quote, throwIfAny, together } from "../../number/error.ts";
import { didYouMean } from "../../number/near.ts";
import { Result } from "../../number/result.ts";
import type { Person } from "../person.ts";
import { personFacts } from "../readPerson.ts";
import { type Eaten, type EatenFood, type EatenPortion, readEaten } from "./eaten.ts";

/** The law whose list is read: the EU's fourteen, the United States' nine, or both. */
export type AllergenList = "eu" | "us";

/** A food that may hold an allergen, for all that is said of it. */
export interface AllergenUnknown {
  /** Its line: `dish/line` in a nested recipe. */
  readonly line: string;
  readonly food: string;
  /** The allergens that nothing rules out. */
  readonly of: readonly Allergen[];
  readonly why: "says nothing of allergens" | "says gluten, but not of which cereal";
}

/** An allergen, and the lines that hold it. */
export interface AllergenHeld {
  readonly allergen: Allergen;
  readonly name: string;
  readonly lines: readonly string[];
}

/** What a dish holds of the regulated allergens, and what cannot be told. */
export class Allergens extends Result {
  readonly is = "steelyard/allergens@1";
  readonly list: AllergenList | "both";
  readonly contains: readonly AllergenHeld[];
  /** Foods that say nothing. Nothing said is unknown, and never free from. */
  readonly unknown: readonly AllergenUnknown[];
  /** Of the dish or dishes. */
  readonly name: string;

  /** @internal Use {@link allergensOf}. */
  constructor(name: string, list: AllergenList | "both", held: Held) {
    super();
    this.name = name;
    this.list = list;
    this.contains = held.contains;
    this.unknown = held.unknown;
  }

  override toString(): string {
    const held = this.contains.map(({ allergen }) => allergen).join(", ") || "none said";
    const silent =
      this.unknown.length === 0 ? "" : `; not known of ${this.unknown.map(({ line }) => line).join(", ")}`;
    return `${this.name}: ${held}${silent}`;
  }
}

/**
 * What a dish, or all that is eaten in a day, holds of the regulated allergens: nested recipes
 * included, each with the lines that bring it. A food whose data say nothing of allergens is listed as
 * unknown for every one of them. Wheat counts as a cereal containing gluten; a food that says gluten
 * alone leaves wheat unknown.
 *
 * Lists: Regulation (EU) No 1169/2011, Annex II; US FD&C Act 201(qq) with the FASTER Act 2021.
 *
 * Throws `comparison-malformed`.
 *
 * @example
 * ```ts
 * const porridge = sheet(
 *   {
 *     name: "Porridge",
 *     portions: 1,
 *     lines: [{ key: "oats", food: "oats-rolled-dry", amount: "60 g" }, { key: "milk", food: "milk-whole", amount: "200 ml" }],
 *   },
 *   starterFoods,
 * );
 * allergensOf(porridge, { list: "us" }).contains.map(({ name, lines }) => `${name}: ${lines.join(", ")}`); // => [ 'milk: milk' ]
 * ```
 */
export function allergensOf(eaten: Eaten, how: { readonly list?: AllergenList | "both" } = {}): Allergens {
  const { portion, asked } = together({
    asked: () => read(allergensHow(), how, "comparison-malformed"),
    portion: () => readEaten(eaten, "comparison-malformed"),
  });
  const { list = "both" } = asked;
  return new Allergens(portion.name, list, heldOf(portion, idsOn(list)));
}

/** What someone declared, held against a dish. */
export interface AllergenCheck {
  /** Declared allergens that the dish holds, each with the words that allow it. */
  readonly overridden: readonly (AllergenHeld & { readonly because: string })[];
  /** Foods that say nothing of what was declared: ask the maker before serving. */
  readonly unknown: readonly AllergenUnknown[];
}

/** Written consent to serve a declared allergen: who says so, and why. */
export type AllergenOverride = { readonly [A in Allergen]?: string };

/**
 * Refuses a dish that holds an allergen which the person declared. `override` lets it pass, in writing,
 * for one allergen at a time. What comes back lists the foods that say nothing of a declared allergen:
 * that is for a person to find out, and no silence is taken for absence.
 *
 * Throws `allergen-served`, every allergen of every line at once; `person-malformed`,
 * `comparison-malformed`.
 *
 * @example
 * ```ts
 * const porridge = sheet(
 *   { name: "Porridge", portions: 1, lines: [{ key: "milk", food: "milk-whole", amount: "200 ml" }] },
 *   starterFoods,
 * );
 * const cox: Person = { sex: "female", age: 22, mass: "52 kg", allergens: ["milk"] };
 * try {
 *   allergenCheck(porridge, cox);
 * } catch (error) {
 *   if (error instanceof SteelyardError) console.log(error.code); // => allergen-served
 * }
 * ```
 */
export function allergenCheck(
  eaten: Eaten,
  person: Person,
  how: { readonly override?: AllergenOverride } = {},
): AllergenCheck {
  const { asked, portion, facts } = together({
    asked: () => read(checkHow(), how, "comparison-malformed"),
    portion: () => readEaten(eaten, "comparison-malformed"),
    facts: () => personFacts(person),
  });
  const { override = {} } = asked;
  const { contains, unknown } = heldOf(portion, facts.allergens);
  throwIfAny(
    contains
      .filter(({ allergen }) => override[allergen] === undefined)
      .map(({ allergen, name, lines }) => ({
        code: "allergen-served",
        path: ["allergens", allergen],
        message: `${name}, declared by this person, is in ${lines.join(", ")}`,
        hint: `leave it out or serve another dish; only override: { ${allergen}: "who allows it, and why" } lets it pass`,
      })),
  );
  const overridden = contains.map((held) => ({ ...held, because: (override[held.allergen] ?? "").trim() }));
  return { overridden, unknown };
}

const allergensHow: () => Schema<{ readonly list?: AllergenList | "both" }> = /* @__PURE__ */ once(() =>
  fields<{ readonly list?: AllergenList | "both" }>({ list: optional(word(["eu", "us", "both"])) }),
);

const checkHow: () => Schema<{ readonly override?: AllergenOverride }> = /* @__PURE__ */ once(() => {
  const ids = Object.keys(allergens);
  const check = (id: string, refuse: Refuse): void => {
    const hint = didYouMean(id, ids, `use one of ${ids.join(", ")}`);
    if (!ids.includes(id)) refuse(`${quote(id)} is no allergen`, hint);
  };
  const override = byName(text(), { check, names: ids, like: '{ milk: "who allows it, and why" }' });
  return fields<{ readonly override?: AllergenOverride }>({ override: optional(override) });
});

interface Held {
  readonly contains: readonly AllergenHeld[];
  readonly unknown: readonly AllergenUnknown[];
}

/** @internal */
export function idsOn(list: AllergenList | "both"): Allergen[] {
  const all = Object.keys(allergens) as Allergen[];
  return all.filter((id) => list === "both" || allergens[id].lists.some((each) => each === list));
}

function heldOf({ foods }: EatenPortion, ids: readonly Allergen[]): Held {
  return {
    contains: [...new Set(ids)].flatMap((allergen) => {
      const lines = foods.filter(({ food }) => holdsAllergen(food, allergen)).map(({ key }) => key);
      return lines.length > 0 ? [{ allergen, name: allergens[allergen].name, lines }] : [];
    }),
    unknown: foods.flatMap((each) => unknownOf(each, ids)),
  };
}

/** Whether a food is said to hold an allergen: one that says nothing is not, and is no less unknown. */
export function holdsAllergen({ allergens: said = [] }: FoodInput, id: Allergen): boolean {
  return said.includes(id) || (id === "gluten" && said.includes("wheat"));
}

/** What of some allergens a food leaves open. */
export function unknownOf(
  { key, food }: Pick<EatenFood, "key" | "food">,
  ids: readonly Allergen[],
): AllergenUnknown[] {
  const at = { line: key, food: kitchenNameOf(food) };
  const said = food.allergens;
  if (said === undefined) return ids.length > 0 ? [{ ...at, of: ids, why: "says nothing of allergens" }] : [];
  const which = ids.includes("wheat") && said.includes("gluten") && !said.includes("wheat");
  return which ? [{ ...at, of: ["wheat"], why: "says gluten, but not of which cereal" }] : [];
}
