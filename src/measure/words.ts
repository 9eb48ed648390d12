import type { Decimal } from "decimal.js";

/** A word with its number forms, by CLDR plural category; `other` is used where a form is missing. */
export type PluralForms = { readonly [category: string]: string } & { readonly other: string };

/**
 * How units are written in a language. A unit that the table leaves out is written by its canonical
 * name. Amounts written with a table are read back with the same table.
 */
export interface UnitWords {
  /** By canonical name (`tbsp`, `cup`); a symbol that never changes, or a word with its forms. */
  readonly units: { readonly [unit: string]: string | PluralForms };
  /** Whose measure it is, set before the unit where it has to be said: `1 US cup`. */
  readonly sets?: { readonly [set: string]: string };
  /** First words of foods' own measures, with their plural: `{ can: "cans" }`. */
  readonly nouns?: { readonly [one: string]: string };
  /** Between the parts of a compound mass (`1 lb 4 oz`) and of any other amount (`1 cup + 2 tbsp`), spaces and all. */
  readonly joins?: { readonly mass: string; readonly other: string };
  /** The CLDR plural category of a figure; `Intl.PluralRules` has them for every language. */
  readonly category?: (figure: Decimal) => string;
}

/** British English. A half cup is a cup; symbols take no plural. */
export const englishWords: UnitWords = {
  units: {
    cup: { one: "cup", other: "cups" },
    dessertspoon: { one: "dessertspoon", other: "dessertspoons" },
    gill: { one: "gill", other: "gills" },
    pint: { one: "pint", other: "pints" },
    quart: { one: "quart", other: "quarts" },
    gallon: { one: "gallon", other: "gallons" },
  },
  sets: {
    metric: "metric",
    us: "US",
    "us-label": "US label",
    imperial: "imperial",
    australian: "Australian",
  },
  nouns: {
    bag: "bags",
    ball: "balls",
    bar: "bars",
    batch: "batches",
    bottle: "bottles",
    bowl: "bowls",
    bulb: "bulbs",
    bunch: "bunches",
    can: "cans",
    carton: "cartons",
    clove: "cloves",
    cube: "cubes",
    cup: "cups",
    ear: "ears",
    egg: "eggs",
    fillet: "fillets",
    floret: "florets",
    fruit: "fruits",
    glass: "glasses",
    half: "halves",
    head: "heads",
    jar: "jars",
    leaf: "leaves",
    loaf: "loaves",
    pack: "packs",
    package: "packages",
    packet: "packets",
    pat: "pats",
    piece: "pieces",
    portion: "portions",
    pouch: "pouches",
    scoop: "scoops",
    serving: "servings",
    sheet: "sheets",
    slice: "slices",
    spear: "spears",
    sprig: "sprigs",
    stalk: "stalks",
    stick: "sticks",
    strip: "strips",
    tin: "tins",
    wedge: "wedges",
  },
  joins: { mass: " ", other: " + " },
  category: (figure) => (figure.gt(0) && figure.lte(1) ? "one" : "other"),
};

/** The canonical name of the unit that a table writes in this way, in whatever form. */
export function unitInWords(text: string, words: UnitWords): string | undefined {
  const wanted = plainWord(text);
  for (const [unit, word] of Object.entries(words.units)) {
    const forms = typeof word === "string" ? [word] : Object.values(word);
    if (forms.some((form) => plainWord(form) === wanted)) return unit;
  }
  return undefined;
}

/** Lower case, without full stops, one space for hyphens and the like. */
export function plainWord(text: string): string {
  return text
    .toLowerCase()
    .replaceAll(".", "")
    .replace(/[-_\s]+/g, " ")
    .trim();
}
