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
    biscuit: "biscuits",
    block: "blocks",
    bottle: "bottles",
    bowl: "bowls",
    bulb: "bulbs",
    bun: "buns",
    bunch: "bunches",
    burger: "burgers",
    cake: "cakes",
    can: "cans",
    carton: "cartons",
    clove: "cloves",
    cube: "cubes",
    cup: "cups",
    dumpling: "dumplings",
    ear: "ears",
    egg: "eggs",
    falafel: "falafels",
    fillet: "fillets",
    flapjack: "flapjacks",
    floret: "florets",
    fruit: "fruits",
    glass: "glasses",
    half: "halves",
    head: "heads",
    jar: "jars",
    leaf: "leaves",
    loaf: "loaves",
    muffin: "muffins",
    omelette: "omelettes",
    pack: "packs",
    package: "packages",
    packet: "packets",
    pancake: "pancakes",
    pasty: "pasties",
    pat: "pats",
    patty: "patties",
    pie: "pies",
    piece: "pieces",
    portion: "portions",
    pouch: "pouches",
    roll: "rolls",
    scone: "scones",
    scoop: "scoops",
    serving: "servings",
    sheet: "sheets",
    slice: "slices",
    spear: "spears",
    sprig: "sprigs",
    square: "squares",
    stalk: "stalks",
    stick: "sticks",
    strip: "strips",
    tart: "tarts",
    tin: "tins",
    wedge: "wedges",
    wrap: "wraps",
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
