/**
 * What SR28 says of how it came by a figure that nobody measured in the food itself, by the code of its
 * derivation (DERIV_CD), in our own words. `borrowed` were taken over from another form of the food or
 * from a like food, `calculated` were worked out; other codes stand beside figures that were analysed.
 *
 * Source: USDA National Nutrient Database for Standard Reference, Release 28 (2016), files DERIV_CD and
 * SRC_CD, read.
 */
// biome-ignore format: a table
export const srBorrowed: { readonly [code: string]: string } = {
  BD: "as drained of its liquid, or with it",
  BFAN: "by ash", BFCN: "by carbohydrate", BFFN: "by fat", BFFY: "by fat and retention factors",
  BFNN: "by solids but fat", BFNY: "by solids but fat and retention factors", BFPN: "by protein",
  BFPY: "by protein and retention factors", BFSN: "by solids", BFSY: "by solids and retention factors",
  BFYN: "by yield", BFYY: "by yield and retention factors", BFZN: "as it stands", BFZY: "by retention factors",
  BNA: "its share of vitamin A", T: "as another table prints it",
};

// biome-ignore format: a table
export const srCalculated: { readonly [code: string]: string } = {
  CAAN: "the mean of foods of its kind, by ash", CAFN: "the mean of foods of its kind, by fat",
  CASN: "the mean of foods of its kind, by solids", CAZN: "the mean of foods of its kind",
  DI: "by a factor from an imputed figure",
  FLA: "by a list of ingredients, their proportions estimated", FLC: "by a list of ingredients and its label's claims",
  FLM: "by a list of ingredients and its maker's figures",
  JO: "a mean of figures of which some are not measured", LC: "from a label",
  MC: "by its maker", ML: "by its maker, who added it",
  NC: "from other figures of the food", NP: "as a difference or a sum of other figures of the food",
  NR: "another figure of the food, as it stands", O: "by a procedure of its own",
  PAE: "by what the food is made up of, estimated", PAK: "by what the food is made up of",
  PIE: "by what the food is made up of, estimated, from imputed figures", PIK: "by what the food is made up of, from imputed figures",
  RA: "by recipe, of approximate proportions", RC: "by recipe, of a cookbook", RF: "by recipe, of a standard product",
  RK: "by recipe, its proportions known", RP: "by recipe, as its packet says",
  S: "the level that a standard sets",
};

/** Source codes of figures that were analysed: 6 joins 1 and 12, which is a maker's, and 13 is from the literature. */
export const srAnalysed: ReadonlySet<string> = /* @__PURE__ */ new Set(["1", "6", "12", "13"]);

/** Source code of figures that are assumed to be zero. */
export const SR_ASSUMED_ZERO = "7";

/** By source code, what is said where no derivation is given. */
// biome-ignore format: a table
export const srSource: { readonly [code: string]: string } = {
  "4": "the source does not say how", "5": "by its maker, who added it", "8": "from a label", "9": "by its maker",
  "11": "a mean of figures of which some are not measured",
};
