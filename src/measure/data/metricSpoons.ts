import type { MeasureSet } from "../measureSet.ts";

/**
 * Metric spoons and cup, as sold in Britain, Canada, New Zealand and South Africa.
 *
 * Source: common practice, named in US National Bureau of Standards Special Publication 430 (1975)
 * for teaspoon, tablespoon and cup (read as quoted at sizes.com); the dessertspoon of 10 ml as given
 * by the UK Metric Association (metricviews.uk, 14 July 2023).
 */
export const metricSpoons: MeasureSet = {
  name: "metric",
  source: "common practice; NBS Special Publication 430",
  ml: { tsp: "5", dessertspoon: "10", tbsp: "15", cup: "250" },
};
