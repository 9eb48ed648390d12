/**
 * How SR28 came by a figure that nobody measured in the food itself, by the letter that stands after the
 * figure in a row. What a digit follows was taken from another food, the so-manieth among the row's
 * lenders.
 *
 * Source: USDA National Nutrient Database for Standard Reference, Release 28 (2015, revised May 2016),
 * files SRC_CD and DERIV_CD: source codes 4, 8 and 11 of NUT_DATA, and whatever names a food that it was
 * taken from (Ref_NDB_No). The words are our own.
 */
export interface Derivation {
  /** Its code in DERIV_CD, empty where none is given. */
  readonly code: string;
  /** The source codes that it stands beside. */
  readonly sources: readonly string[];
  /** How the source reckoned it; or how it brought over a figure of another food, where it is one. */
  readonly calculated?: string;
  readonly borrowed?: string;
}

export const derivations: { readonly [letter: string]: Derivation } = {
  n: { code: "NC", sources: ["4"], calculated: "from other figures of the food" },
  r: { code: "NR", sources: ["4"], calculated: "another figure of the food, as it stands" },
  i: { code: "", sources: ["4"], calculated: "the source does not say how" },
  j: { code: "JO", sources: ["11"], calculated: "a mean of figures of which some are not measured" },
  k: { code: "RA", sources: ["4"], calculated: "by recipe, of approximate proportions" },
  l: { code: "FLA", sources: ["4"], calculated: "by a list of ingredients, their proportions estimated" },
  m: { code: "FLM", sources: ["4"], calculated: "by a list of ingredients and its maker's figures" },
  q: { code: "FLC", sources: ["4"], calculated: "by a list of ingredients and what a label claims" },
  o: { code: "O", sources: ["4"], calculated: "by a procedure of its own" },
  a: { code: "CAZN", sources: ["4"], calculated: "the mean of foods of its kind" },
  s: { code: "CASN", sources: ["4"], calculated: "the mean of foods of its kind, by solids" },
  p: { code: "S", sources: ["4"], calculated: "the level that a standard sets" },
  h: { code: "LC", sources: ["8"], calculated: "from a label" },
  z: { code: "BFZN", sources: ["4"], borrowed: "" },
  C: { code: "BFCN", sources: ["4"], borrowed: "by carbohydrate" },
  F: { code: "BFFN", sources: ["4"], borrowed: "by fat" },
  N: { code: "BFNN", sources: ["4"], borrowed: "by solids but fat" },
  P: { code: "BFPN", sources: ["4"], borrowed: "by protein" },
  S: { code: "BFSN", sources: ["4"], borrowed: "by solids" },
  R: { code: "BFSY", sources: ["4"], borrowed: "by solids and retention factors" },
  Y: { code: "BFYN", sources: ["4"], borrowed: "by yield" },
  V: { code: "BNA", sources: ["4"], borrowed: "its share of vitamin A" },
  T: { code: "T", sources: ["4"], borrowed: "as another table prints it" },
  D: { code: "DA", sources: ["1"], borrowed: "by a factor" },
  B: { code: "A", sources: ["1"], borrowed: "as analysed there" },
  U: { code: "AS", sources: ["1"], borrowed: "summed there" },
  W: { code: "", sources: ["1"], borrowed: "as analysed there" },
};
