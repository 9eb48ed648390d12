/**
 * How cooks write each unit, in lower case, without full stops and with spaces for hyphens. Common
 * practice, no source.
 */
export const spellings = {
  µg: ["µg", "μg", "ug", "mcg", "microgram", "micrograms", "microgramme", "microgrammes"],
  mg: ["mg", "mgs", "milligram", "milligrams", "milligramme", "milligrammes"],
  g: ["g", "gm", "gms", "gram", "grams", "gramme", "grammes"],
  kg: ["kg", "kgs", "kilo", "kilos", "kilogram", "kilograms", "kilogramme", "kilogrammes"],
  oz: ["oz", "ozs", "ounce", "ounces"],
  lb: ["lb", "lbs", "pound", "pounds"],
  st: ["st", "stone", "stones"],
  ml: [
    "ml",
    "mls",
    "cc",
    "cm3",
    "cm³",
    "millilitre",
    "millilitres",
    "milliliter",
    "milliliters",
    "cubic centimetre",
    "cubic centimetres",
    "cubic centimeter",
    "cubic centimeters",
  ],
  cl: ["cl", "centilitre", "centilitres", "centiliter", "centiliters"],
  dl: ["dl", "decilitre", "decilitres", "deciliter", "deciliters"],
  l: ["l", "litre", "litres", "liter", "liters"],
  in3: ["in3", "in³", "cu in", "cubic inch", "cubic inches"],
  ft3: ["ft3", "ft³", "cu ft", "cubic foot", "cubic feet"],
  krm: ["krm", "kryddmått"],
  tsk: ["tsk", "tesked", "teskedar"],
  msk: ["msk", "matsked", "matskedar"],
  kkp: ["kkp", "kaffekopp", "kaffekoppar"],
  mm: ["mm", "millimetre", "millimetres", "millimeter", "millimeters"],
  cm: ["cm", "centimetre", "centimetres", "centimeter", "centimeters"],
  m: ["m", "metre", "metres", "meter", "meters"],
  in: ["in", "inch", "inches"],
  ft: ["ft", "foot", "feet"],
  J: ["j", "joule", "joules"],
  kJ: ["kj", "kilojoule", "kilojoules"],
  MJ: ["megajoule", "megajoules"],
  kcal: ["kcal", "kcals", "kilocalorie", "kilocalories"],
  tsp: ["tsp", "tsps", "teaspoon", "teaspoons", "teaspoonful", "teaspoonfuls"],
  dessertspoon: ["dessertspoon", "dessertspoons", "dessertspoonful", "dessertspoonfuls", "dsp", "dstspn"],
  tbsp: [
    "tbsp",
    "tbsps",
    "tbs",
    "tbl",
    "tb",
    "tblsp",
    "tblsps",
    "tablespoon",
    "tablespoons",
    "tablespoonful",
    "tablespoonfuls",
  ],
  "fl oz": ["fl oz", "floz", "fl ozs", "fluid ounce", "fluid ounces", "fl ounce", "fl ounces", "fluid oz"],
  gill: ["gill", "gills"],
  cup: ["cup", "cups", "cupful", "cupfuls", "c"],
  pint: ["pint", "pints", "pt", "pts", "pnt"],
  quart: ["quart", "quarts", "qt", "qts"],
  gallon: ["gallon", "gallons", "gal", "gals"],
} as const;

/** How cooks say whose spoon or cup they mean. */
export const setSpellings = {
  metric: ["metric"],
  us: ["us", "american", "usa"],
  "us-label": ["us label"],
  imperial: ["imperial", "imp", "uk", "british", "gb"],
  australian: ["australian", "aus", "au"],
} as const;

/**
 * Spellings that two units share, with both readings and the way out. Those of `exact` are told by
 * their case; those of `any` in whatever case.
 */
export const ambiguous: {
  readonly [reading in "exact" | "any"]: { readonly [spelling: string]: readonly [string, string] };
} = {
  exact: {
    t: ["a teaspoon, a tablespoon or a tonne", 'write "tsp", "tbsp" or "kg"'],
    T: ["a tablespoon or a teaspoon", 'write "tbsp" or "tsp"'],
    Mg: ["a milligram or a megagram", 'write "mg"'],
    Ml: ["a millilitre or a megalitre", 'write "ml"'],
    mJ: ["a megajoule or a millijoule", 'write "MJ" or "kJ"'],
    mj: ["a megajoule or a millijoule", 'write "MJ" or "kJ"'],
    Mj: ["a megajoule or a millijoule", 'write "MJ" or "kJ"'],
  },
  any: {
    gr: ["a gram or a grain", 'write "g"'],
    cal: ["a calorie or a kilocalorie", 'write "kcal"'],
    cals: ["a calorie or a kilocalorie", 'write "kcal"'],
    calorie: ["a calorie or a kilocalorie", 'write "kcal"'],
    calories: ["a calorie or a kilocalorie", 'write "kcal"'],
    ton: ["a tonne, a short ton or a long ton", 'write "kg" or "lb"'],
    tons: ["a tonne, a short ton or a long ton", 'write "kg" or "lb"'],
    spoon: ["a teaspoon or a tablespoon", 'write "tsp" or "tbsp"'],
    spoons: ["a teaspoon or a tablespoon", 'write "tsp" or "tbsp"'],
    spoonful: ["a teaspoon or a tablespoon", 'write "tsp" or "tbsp"'],
  },
};

/** Words for amounts that nobody has published a size of. */
export const sizeless: readonly string[] = [
  "pinch",
  "pinches",
  "dash",
  "dashes",
  "smidgen",
  "smidgeon",
  "tad",
  "drop",
  "drops",
  "handful",
  "handfuls",
  "knob",
  "splash",
  "splashes",
  "drizzle",
  "sprinkle",
  "sprinkling",
  "dollop",
  "dollops",
  "glug",
  "glugs",
  "grind",
  "grinds",
  "touch",
  "some",
  "few",
  "to taste",
  "as needed",
  "as required",
  "as desired",
];

/** Words that change what a spoon or cup holds by an unknown share. */
export const unlevel: readonly string[] = [
  "heaped",
  "heaping",
  "rounded",
  "scant",
  "generous",
  "packed",
  "firmly packed",
  "lightly packed",
];
