import type { MeasureSet } from "../measureSet.ts";

/**
 * Australian spoons and cup: the one place where a tablespoon is four teaspoons.
 *
 * Source: New South Wales Government, kitchen measures chart, after the Standards Association of
 * Australia (healthykids.nsw.gov.au/recipes/conversion-chart). The dessertspoon of 10 ml is from
 * memory.
 */
export const australian: MeasureSet = {
  name: "australian",
  source: "NSW Government kitchen measures chart, after Standards Australia",
  ml: { tsp: "5", dessertspoon: "10", tbsp: "20", cup: "250" },
};
