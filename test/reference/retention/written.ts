import type { ComponentId } from "../../../src/food/components.ts";
import { usdaRetention } from "../../../src/food/data/retentionUsdaR6.ts";
import { columns, usualYields } from "./estimate.ts";
import { observations, release6 } from "./pairs.ts";
import { ways } from "./ways.ts";

/** Components that keep one share: USDA's columns, and those that its table has not. */
const ADDED = ["manganese", "selenium", "pantothenicAcid", "vitaminE", "vitaminK", "ash"] as const;
const shared: readonly (readonly ComponentId[])[] = [
  ...usdaRetention.columns,
  ...ADDED.map((id): readonly ComponentId[] => [id]),
];

/** Where so few of a kingdom were analysed, Release 6 stands. */
const FEW = 10;

/** The data file of the analysed table, as the estimates make it. */
export function writtenTable(): string {
  const all = observations();
  const usual = usualYields(all);
  const made = columns(all);
  const of = (ids: readonly ComponentId[]): (typeof made)[number] | undefined =>
    made.find(({ component }) => ids.includes(component));
  const rows = ways.map(({ code, name, usda, kingdom }) => {
    const estimates = shared.map((ids) => {
      const column = of(ids);
      return (column?.pairs[kingdom] ?? 0) < FEW ? undefined : column?.estimates.get(code);
    });
    const percents = estimates.map((e, i) => e?.percent ?? release6(usda, shared[i]?.[0] ?? "iron"));
    const spread = estimates.map((e) => (e ? `${e.low}-${e.high}:${e.count}` : "-"));
    const at = usual.get(code);
    const row = [name, percents.join(" "), spread.join(" "), ...(at === undefined ? [] : [at.toFixed(2)])];
    return `    ${JSON.stringify(code)}: ${JSON.stringify(row)},`;
  });
  const slopes = shared.map((ids) => Math.round(100 * (of(ids)?.slope ?? 0))).join(" ");
  return `${OPENING}export const analysedRetention: RetentionTable = {
  source: "retention factors estimated from foods analysed raw and cooked in USDA SR28 (2016)",
  columns: [
${shared.map((ids) => `    [${ids.map((id) => JSON.stringify(id)).join(", ")}],`).join("\n")}
  ],
  follows: ${JSON.stringify(slopes)},
  // biome-ignore format: one way of cooking a line
  codes: {
${rows.join("\n")}
  },
  yields: [usualYields, weighedYields],
  beside: usdaRetention,
};
`;
}

const OPENING = `import type { RetentionTable } from "../retentionTable.ts";
import { usdaRetention } from "./retentionUsdaR6.ts";
import { usualYields, weighedYields } from "./yieldsSr28.ts";

/**
 * What cooking leaves, per cent, estimated from foods that were analysed raw and cooked: USDA National
 * Nutrient Database for Standard Reference, Release 28 (May 2016), a public-domain work of the US
 * government; pairs of foods matched by name, both figures analysed (source code 1, data points above 0),
 * the cooked mass by the solids that both hold. Computed by \`test/reference/retention/estimate.ts\`, which
 * writes this file (\`npx vitest run test/reference/analysed.test.ts -u\`); pairs whose cooked food has an NDB
 * number divisible by 3 were kept for judging, and nothing was estimated from them.
 *
 * Method: for each way of cooking the median of the logarithms of what is left, drawn towards the median of
 * its kind of food and heat, and that towards its kind's, and that towards all animal or plant foods: n raw
 * foods count n, the estimate above them counts 8. Medians, since single analyses are far off; drawn
 * together, since most ways have few pairs. Nothing is left beyond whole.
 *
 * \`follows\`: flesh that loses more juice loses more of what is dissolved in it. Rows that end in a yield are
 * told at that yield (cooked mass for each 1 of raw); for each 1 % less, the share falls by so many
 * hundredths of a per cent: one slope for each component, by least squares in which far points count little.
 *
 * Behind the shares stand, column by column, between which per cents nine analyses in ten of a like food
 * lay (from pairs left out, a tenth at a time; analyses scatter above 100), and how many pairs of this very
 * way there were. \`-\` stands where fewer than 30 pairs were analysed (10 of plants or of animals) or Release 6 did better: there its
 * figure is given.
 */
`;
