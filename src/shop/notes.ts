import { type Language, say } from "../document/language.ts";
import { type Allergen, allergens } from "../food/allergens.ts";
import { showFigure, showPercent } from "../measure/showFigure.ts";
import { equals, ONE } from "../number/exact.ts";
import { inSentence } from "../sheet/names.ts";
import type { ShoppingLine } from "./line.ts";
import type { ShoppingList } from "./list.ts";

/** What a reader must know of a list: refuse, prices, and what to heed of foods. */
export function shoppingNotes(list: ShoppingList, language: Language): readonly string[] {
  const bought = list.lines.filter(({ bought: grams }) => grams.n !== 0n);
  const empty = list.lines.length === 0 ? "no dish takes anything" : "the cupboard has all that is needed";
  return [
    ...(bought.length === 0 ? [say(language, empty)] : []),
    ...weighedNotes(bought, language),
    ...tapNotes(list.lines, language),
    ...lateNotes(bought, list, language),
    ...refuseNotes(bought, language),
    ...priceNotes(list, language),
    ...unprovenNotes(bought, language),
    ...allergenNotes(list.lines, language),
    ...cautionNotes(list.lines, language),
  ];
}

/** A phrase that lists names, left out where there are none. */
function listing(phrase: string, names: readonly string[], language: Language): readonly string[] {
  const unique = [...new Set(names)];
  return unique.length === 0 ? [] : [say(language, phrase, { list: unique.join("; ") })];
}

const nameOf = (line: ShoppingLine, language: Language): string =>
  inSentence(say(language, line.name), language);

function weighedNotes(lines: readonly ShoppingLine[], language: Language): readonly string[] {
  const rounded = lines.some(({ weighOut, leftOver }) => weighOut && leftOver.n > 0n);
  return rounded ? [say(language, "weights to buy are rounded up to what a shop weighs out")] : [];
}

/** What comes out of the tap is needed, but not bought. */
function tapNotes(lines: readonly ShoppingLine[], language: Language): readonly string[] {
  const tap = lines.filter(({ isFromTheTap, bought }) => isFromTheTap && bought.n === 0n);
  return listing(
    "from the tap, not bought: {list}",
    tap.map((line) =>
      say(language, "{food} {grams}", {
        food: nameOf(line, language),
        grams: showFigure(line.needed, { places: 0, unit: "g", language }),
      }),
    ),
    language,
  );
}

/** What keeps too short a time, as the food itself says. */
function lateNotes(
  lines: readonly ShoppingLine[],
  { shopDay }: ShoppingList,
  language: Language,
): readonly string[] {
  return lines.flatMap((line) => {
    const { keepsDays, usedLate } = line;
    if (!shopDay || !keepsDays || usedLate.length === 0) return [];
    const one = equals(keepsDays, ONE);
    const phrase = one
      ? "{food}: keeps 1 day as bought, and is used on {late}: buy it later, or freeze it if its label allows"
      : "{food}: keeps {days} days as bought, and is used on {late}: buy it later, or freeze it if its label allows";
    const gaps = { food: say(language, line.name), late: usedLate.join(", ") };
    return [say(language, phrase, { ...gaps, days: showFigure(keepsDays, { language }) })];
  });
}

/** Packs say themselves what of them is eaten. */
function refuseNotes(lines: readonly ShoppingLine[], language: Language): readonly string[] {
  const weighed = lines.filter(({ asPurchased }) => asPurchased !== undefined);
  const peeled = weighed.filter(({ edibleShare }) => edibleShare && !equals(edibleShare, ONE));
  return [
    ...listing(
      "weight includes peel and trimmings: {list}",
      peeled.map((line) =>
        say(language, "{food} ({share} is eaten)", {
          food: nameOf(line, language),
          share: showPercent(line.edibleShare ?? ONE, { language }),
        }),
      ),
      language,
    ),
    ...listing(
      "no refuse known, bought as eaten: {list}",
      weighed.filter(({ edibleShare }) => edibleShare === undefined).map((line) => nameOf(line, language)),
      language,
    ),
  ];
}

function priceNotes({ lines, unpriced, totals }: ShoppingList, language: Language): readonly string[] {
  if (totals.length === 0) return [];
  const rounded = lines.some(({ cost }) => cost && !equals(cost.value, cost.unrounded));
  const rule =
    "costs are rounded so that they add up to the total: each down, then the largest remainders up";
  return [
    ...listing(
      "no price known of: {list}",
      unpriced.map((line) => nameOf(line, language)),
      language,
    ),
    ...(rounded ? [say(language, rule)] : []),
  ];
}

function unprovenNotes(lines: readonly ShoppingLine[], language: Language): readonly string[] {
  const unproven = lines.filter(({ proven }) => !proven).map((line) => nameOf(line, language));
  return listing(
    "covered by packs, but not proven to be the best choice of them: {list}",
    unproven,
    language,
  );
}

function allergenNotes(lines: readonly ShoppingLine[], language: Language): readonly string[] {
  const byAllergen = new Map<Allergen, string[]>();
  for (const line of lines) {
    for (const each of line.allergens ?? []) {
      byAllergen.set(each, [...(byAllergen.get(each) ?? []), nameOf(line, language)]);
    }
  }
  const held = (Object.keys(allergens) as Allergen[]).flatMap((each) => {
    const foods = byAllergen.get(each);
    return foods ? [`${say(language, allergens[each].name)} (${foods.join("; ")})`] : [];
  });
  const silent = lines.filter((line) => line.allergens === undefined).map((line) => nameOf(line, language));
  return [
    ...listing("Allergens: {list}", held, language),
    ...listing("Allergens are not known of {list}: unknown is not free from", silent, language),
  ];
}

function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}

/** Each caution once, with the foods that it speaks of and who says so. */
function cautionNotes(lines: readonly ShoppingLine[], language: Language): readonly string[] {
  const byText = new Map<
    string,
    { readonly text: string; readonly source: string; readonly foods: string[] }
  >();
  for (const line of lines) {
    for (const { text, source } of line.cautions) {
      const key = JSON.stringify([text, source]);
      const known = byText.get(key) ?? { text, source, foods: [] };
      byText.set(key, { ...known, foods: [...known.foods, nameOf(line, language)] });
    }
  }
  return [...byText.values()].map(({ text, source, foods }) =>
    say(language, "{foods}: {text} ({source})", {
      foods: capital(foods.join("; ")),
      text: say(language, text),
      source,
    }),
  );
}
