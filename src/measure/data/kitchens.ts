import type { Kitchen } from "../kitchenCheck.ts";

/**
 * Four kitchens to start from. What lies in the drawer, the jugs' marks and the metric scale's step
 * are common practice, no source. The scale of 1/4 oz is that of the rounding table in US Armed
 * Forces Recipe Service, A. General Information No. 1(2).
 */
export const metricKitchen: Kitchen = {
  name: "metric",
  measures: "metric",
  drawer: { tsp: ["1/4", "1/2", "3/4"], tbsp: ["1/2"], cup: ["1/4", "1/3", "1/2", "2/3", "3/4"] },
  scale: "1 g",
  jug: { step: "10 ml", least: "50 ml" },
  pieces: "half",
};

export const usKitchen: Kitchen = {
  name: "us",
  measures: "us",
  drawer: { tsp: ["1/4", "1/2", "3/4"], tbsp: ["1/2"], cup: ["1/4", "1/3", "1/2", "2/3", "3/4"] },
  scale: "1/4 oz",
  jug: { step: "1 fl oz", least: "2 fl oz" },
  pieces: "half",
};

export const imperialKitchen: Kitchen = {
  name: "imperial",
  measures: "imperial",
  drawer: { tsp: ["1/4", "1/2", "3/4"], tbsp: ["1/2"] },
  scale: "1/4 oz",
  jug: { step: "1/2 fl oz", least: "2 fl oz" },
  pieces: "half",
};

export const australianKitchen: Kitchen = {
  name: "australian",
  measures: "australian",
  drawer: { tsp: ["1/4", "1/2", "3/4"], tbsp: ["1/2"], cup: ["1/4", "1/3", "1/2", "2/3", "3/4"] },
  scale: "1 g",
  jug: { step: "10 ml", least: "50 ml" },
  pieces: "half",
};
