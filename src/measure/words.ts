import type { UnitWords } from "../document/language.ts";

export type { PluralForms, UnitWords } from "../document/language.ts";

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
