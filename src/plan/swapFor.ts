import { anyText, asWritten, thing } from "../document/leaves.ts";
import { read } from "../document/read.ts";
import { byName, fields, list, once, openFields, optional, type Schema } from "../document/schema.ts";
import type { Allergen } from "../food/allergens.ts";
import { exactText } from "../number/digits.ts";
import type { SubstitutesOptions } from "../scale/substitutes/options.ts";
import type { Substitutes } from "../scale/substitutes/result.ts";
import type { Substitute } from "../scale/substitutes/substitute.ts";
import { substitutes } from "../scale/substitutes.ts";
import { revise } from "../sheet/revise.ts";
import { Sheet } from "../sheet/sheet.ts";
import type { PersonInput } from "./input.ts";

/** A line of a dish that someone is to have another food for. */
export interface SwapOf {
  /** The dish by its name, `supper/stew` or `mon/supper/stew`, as `instead` takes it. */
  readonly dish: string;
  /** The dish as the plan has it. */
  readonly sheet: Sheet;
  readonly line: string;
}

/** Options of {@link swapFor}. */
export interface SwapOptions extends SubstitutesOptions {
  /** Which of the substitutes, by the food's id; the closest unless told. */
  readonly food?: string;
}

/** A person with their own version of a dish, and what it was chosen from. */
export interface Swapped {
  /** With the version in `instead`; as they were where nothing was found. */
  readonly person: PersonInput;
  readonly chosen: Substitute | undefined;
  readonly substitutes: Substitutes;
}

/** What is looked at here; the rest is read where it is used. */
const swap: () => Schema<{ readonly person: object; readonly of: SwapOf; readonly how: object }> =
  /* @__PURE__ */ once(() => {
    const sheet = thing("a sheet, made with sheet(recipe, foods)", (s): s is Sheet => s instanceof Sheet);
    const versions = optional(byName(sheet));
    const avoid = optional(list(asWritten()));
    const allergens = optional(list(asWritten()));
    return fields<{ readonly person: object; readonly of: SwapOf; readonly how: object }>({
      person: openFields({ instead: versions, avoid, person: optional(openFields({ allergens })) }),
      of: fields<SwapOf>({ dish: anyText(), sheet, line: anyText() }),
      how: openFields({ food: optional(anyText()), avoid }),
    });
  });

/**
 * Swaps one line of a dish for one person: the closest substitute that holds none of the allergens that they
 * avoid or declare, as a version of the dish whose name says so. Where they have a version already it
 * is changed on.
 *
 * Throws the codes of {@link substitutes} and {@link revise}.
 *
 * @example
 * ```ts
 * const bowl = sheet(
 *   { name: "Bowl", portions: 1, lines: [{ key: "beans", food: "kidney-beans-red-boiled", amount: "150 g" }] },
 *   starterFoods,
 * );
 * const { person, chosen } = swapFor({ id: "cox" }, { dish: "bowl", sheet: bowl, line: "beans" });
 * console.log(chosen?.name, person.instead?.bowl?.lines[0].food === chosen?.food); // => Black beans, boiled true
 * ```
 */
export function swapFor(person: PersonInput, of: SwapOf, how: SwapOptions = {}): Swapped {
  read(swap(), { person, of, how }, "plan-malformed");
  const { food, ...options } = how;
  const own = person.instead?.[of.dish] ?? of.sheet;
  const avoided = (person.avoid ?? []).flatMap((each): Allergen[] =>
    typeof each === "string" ? [each] : "allergen" in each ? [each.allergen] : [],
  );
  const avoid = [...new Set([...avoided, ...(person.person?.allergens ?? []), ...(options.avoid ?? [])])];
  const all = substitutes(own, of.line, { ...options, ...(avoid.length > 0 && { avoid }) });
  const chosen = food === undefined ? all.found[0] : all.found.find((each) => each.food === food);
  if (!chosen) return { person, chosen, substitutes: all };
  const version = revise(own, {
    swap: { [of.line]: chosen.food },
    amounts: { [of.line]: `${exactText(chosen.grams)} g` },
  });
  return {
    person: { ...person, instead: { ...person.instead, [of.dish]: version } },
    chosen,
    substitutes: all,
  };
}
