/**
 * Data sets by how figures name them: what a paper has to cite. `source` is how the text of a figure's source
 * begins; what follows it is the number of a record.
 *
 * Licences: the USDA's data are works of the US government in the public domain, published under CC0 1.0
 * (FoodData Central, "Data Documentation"; from memory, unverified).
 */
export const datasets: readonly {
  readonly source: string;
  readonly title: string;
  readonly release: string;
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
];
