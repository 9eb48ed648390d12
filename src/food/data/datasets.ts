/**
 * Data sets by how figures name them: what a paper has to cite. `source` is how the text of a figure's source
 * begins; what follows it is the number of a record.
 *
 * Licences: the USDA's data are works of the US government in the public domain, published under CC0 1.0
 * (FoodData Central, "Data Documentation"; from memory, unverified), and so are what its other offices write
 * (17 USC 105; from memory, unverified). Of books and papers, from which single figures are quoted, none is told.
 */
export const datasets: readonly {
  readonly source: string;
  readonly title: string;
  /** Nothing where records carry their own. */
  readonly release?: string;
  readonly licence: string;
}[] = [
  {
    source: "USDA SR28",
    title: "USDA National Nutrient Database for Standard Reference",
    release: "28 (September 2015, slightly revised May 2016)",
    licence: "public domain (CC0 1.0)",
  },
  {
    source: "USDA Table of Nutrient Retention Factors",
    title: "USDA Table of Nutrient Retention Factors",
    release: "6 (December 2007)",
    licence: "public domain",
  },
  {
    source: "retention factors estimated from foods analysed raw and cooked in USDA SR28",
    title: "retention factors estimated for this library from foods analysed raw and cooked in USDA SR28",
    release: "28 (September 2015, slightly revised May 2016)",
    licence: "public domain (CC0 1.0)",
  },
  {
    source: "median of yields by solids of foods that USDA SR28",
    title: "yields estimated for this library by the solids of foods raw and cooked in USDA SR28",
    release: "28 (September 2015, slightly revised May 2016)",
    licence: "public domain (CC0 1.0)",
  },
  { source: "USDA FoodData Central", title: "USDA FoodData Central", licence: "public domain (CC0 1.0)" },
  {
    source: "US National Institutes of Health, Office of Dietary Supplements, iodine fact sheet",
    title: "iodine fact sheet of the US National Institutes of Health, Office of Dietary Supplements",
    licence: "public domain",
  },
];
