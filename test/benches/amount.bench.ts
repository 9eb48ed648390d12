import { bench, describe } from "vitest";
import { amount, timesAmount } from "../../src/measure/amount.ts";
import { formatAmount } from "../../src/measure/format.ts";
import { measurable } from "../../src/measure/measurable.ts";
import { exact } from "../../src/number/exact.ts";

const shapes = [
  "400 g",
  "1 1/2 tbsp",
  "½ cup",
  "2 medium",
  "1 lb 4 oz",
  "0.25 tsp",
  "1 can, drained",
  "250 ml",
  "3 US cups",
  "1 cup + 2 tbsp",
];
const how = { measures: "us", own: ["medium", "large", "can", "can, drained", "cup, chopped"] } as const;
const thousand = Array.from({ length: 1000 }, (_, i) => shapes[i % shapes.length] ?? "");
const amounts = thousand.map((text) => amount(text, how));
const factor = exact("37/41");

describe("1,000 amounts", () => {
  bench("read", () => {
    for (const text of thousand) amount(text, how);
  });

  bench("multiplied", () => {
    for (const a of amounts) timesAmount(a, factor);
  });

  bench("written", () => {
    for (const a of amounts) formatAmount(a, how);
  });

  bench("as a kitchen can measure them", () => {
    for (const a of amounts) measurable("us", timesAmount(a, factor));
  });
});
