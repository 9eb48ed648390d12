import { type Kitchen, type KitchenName, kitchen as readKitchen } from "../measure/kitchen.ts";
import {
  absolute,
  compare,
  type Fraction,
  minus,
  ONE,
  over,
  times,
  toDecimal,
  ZERO,
} from "../number/fraction.ts";
import { Sheet } from "../sheet/sheet.ts";
import { demandText } from "./fit/words.ts";
import { moveLines } from "./move.ts";
import { type LineOffers, lineOffers, type Offer } from "./round/candidates.ts";
import { type Asked, askedOf, missOf, problemOf, subjectAt } from "./round/problem.ts";
import { type RoundHow, type RoundTask, readRounding } from "./round/read.ts";
import {
  type Drift,
  Rounded,
  type RoundedDemand,
  type RoundedLine,
  RoundingOutOfReach,
  type Sheets,
} from "./round/result.ts";
import type { AmountsProblem, Choice } from "./solve/amounts.ts";
import { chooseAmounts } from "./solve/choose.ts";

export type { RoundHow } from "./round/read.ts";
export {
  type Drift,
  Rounded,
  type RoundedDemand,
  type RoundedLine,
  RoundingOutOfReach,
} from "./round/result.ts";

/**
 * Brings every amount to one that the kitchen can measure, all lines chosen together. What counts,
 * in this order: firm demands hold; the worst excess of a target over its tolerance is least (none,
 * where that can be); the drift of the ratios, Σ |grams ÷ (exact grams × common) − 1|, is least, the
 * common factor being free where there are demands to hold it and 1 where there are none; amounts
 * stay nearest to the exact ones.
 *
 * The batch as the sheet stands is what is measured; for one person's portion, scale to one portion
 * first. A line keeps to its own family of units: what was weighed is weighed, what was spooned is
 * spooned, pieces are counted; a wish (`lines`) wins. Nested recipes are weighed. Per-portion lines
 * are never touched; one that cannot be measured is reported. A line's own `least` and `most` hold.
 *
 * Where no measurable amounts keep the firm demands the answer is `out-of-reach`, not an error.
 * The search is proven to its end, or says how far from proven it stopped.
 *
 * Throws one error with every fault: `rounding-malformed`, `demand-malformed`, `kitchen-malformed`,
 * `line-unknown`, and the codes of amounts for units that were wished for.
 *
 * @example
 * ```ts
 * const bowl = sheet(
 *   {
 *     name: "Bowl",
 *     portions: 1,
 *     measures: "metric",
 *     lines: [
 *       { key: "oats", food: "oats-rolled-dry", amount: "53.3 g" },
 *       { key: "honey", food: "honey", amount: "1.84 tsp" },
 *     ],
 *   },
 *   starterFoods,
 * );
 * const rounded = roundToKitchen(bowl, "metric", { demands: [{ of: "energy", exactly: 244 }] });
 * if (rounded.status !== "out-of-reach") {
 *   console.log(rounded.sheet.lines.map((line) => formatAmount(line.amount, { measures: "metric" }))); // => [ '54 g', '1 3/4 tsp' ]
 * }
 * ```
 */
export function roundToKitchen(
  s: Sheet,
  kitchen: Kitchen | KitchenName,
  how?: RoundHow,
): Rounded<Sheet> | RoundingOutOfReach;
export function roundToKitchen(
  s: Sheets,
  kitchen: Kitchen | KitchenName,
  how?: RoundHow,
): Rounded<Sheets> | RoundingOutOfReach;
export function roundToKitchen(
  s: Sheet | Sheets,
  kitchen: Kitchen | KitchenName,
  how: RoundHow = {},
): Rounded<Sheet> | Rounded<Sheets> | RoundingOutOfReach {
  const task = readRounding(s, kitchen, how);
  const lines = lineOffers(task);
  const asked = askedOf(task);
  const problem = problemOf(task, lines, asked);
  const found = chooseAmounts(problem, task.nodes === undefined ? {} : { nodes: task.nodes });
  const choice =
    found.status === "met" || found.status === "nearest"
      ? found
      : found.status === "stopped"
        ? found.best
        : undefined;
  if (!choice) return new RoundingOutOfReach(task.demands.filter((d) => d.firm).map(demandText));
  const status = found.status === "infeasible" ? "stopped" : found.status;
  const bound = found.status === "stopped" ? found.bound : undefined;
  const chosen = chosenOffers(lines, choice.chosen);
  const nearest = nearestChoice(problem);
  const figures = {
    lines: lines.map((line) => roundedLine(line, chosen.get(line))),
    demands: asked.map((each) =>
      roundedDemand(each, task, lines, chosen, chosenOffers(lines, nearest.chosen)),
    ),
    drift: driftOf(choice, nearest),
    nodes: found.nodes,
    measures: readKitchen(task.kitchen).measures,
  };
  const sheets = task.dishes.map(({ sheet }, d) =>
    measured(
      sheet,
      lines.filter((line) => line.dish === d),
      chosen,
    ),
  );
  const [first] = sheets;
  if (s instanceof Sheet && first) return new Rounded<Sheet>(status, first, figures, bound);
  const named = Object.fromEntries(
    task.dishes.map(({ name }, d) => [name ?? "", sheets[d] ?? first]),
  ) as Sheets;
  return new Rounded<Sheets>(status, named, figures, bound);
}

type Chosen = ReadonlyMap<LineOffers, Offer>;

function chosenOffers(lines: readonly LineOffers[], chosen: readonly number[]): Chosen {
  const moving = lines.filter((line) => line.offers.length > 0);
  return new Map(
    moving.flatMap((line, i): [LineOffers, Offer][] => {
      const offer = line.offers[chosen[i] ?? 0];
      return offer ? [[line, offer]] : [];
    }),
  );
}

/** What a cook does who rounds every line for itself: the nearest measure, the smaller of two. */
function nearestChoice({ lines, demands, common }: AmountsProblem): Choice {
  const places = lines.map(({ exact: aim, candidates }) => {
    const distance = (i: number): Fraction => absolute(minus(candidates[i]?.quantity ?? ZERO, aim));
    return candidates.reduce((best, _, i) => (compare(distance(i), distance(best)) < 0 ? i : best), 0);
  });
  const only = lines.map((line, i) => ({
    ...line,
    candidates: line.candidates.slice(places[i], (places[i] ?? 0) + 1),
  }));
  const yielding = demands.map((demand) => ({ ...demand, firm: false }));
  const found = chooseAmounts({ lines: only, demands: yielding, ...(common ? { common } : {}) });
  const none = { chosen: places, common: ONE, drift: ZERO, excess: ZERO, totals: [] };
  return found.status === "met" || found.status === "nearest" ? { ...found, chosen: places } : none;
}

function roundedLine(line: LineOffers, offer: Offer | undefined): RoundedLine {
  const by = offer ? minus(over(offer.grams, line.grams), ONE) : ZERO;
  return {
    line: line.name,
    exact: line.exact,
    rounded: offer?.amount ?? line.exact,
    by: toDecimal(by),
    kept: line.kept,
    measurable: line.measurable,
  };
}

function roundedDemand(
  { demand, brought }: Asked,
  { tolerance }: RoundTask,
  lines: readonly LineOffers[],
  chosen: Chosen,
  nearest: Chosen,
): RoundedDemand {
  const at = (choice: Chosen | undefined): Fraction | null =>
    subjectAt(brought, lines, (line) => {
      const offer = choice?.get(line);
      return offer ? over(offer.grams, line.grams) : ONE;
    });
  const [before, after, byLine] = [at(undefined), at(chosen), at(nearest)];
  const miss = after ? missOf(demand, after) : ZERO;
  const end = miss.n < 0n ? demand.least : demand.most;
  const slack = demand.firm ? ZERO : times(end ?? ZERO, tolerance);
  const face = (f: Fraction | null) => f && toDecimal(f);
  return {
    demand: demandText(demand),
    exact: face(before),
    rounded: face(after),
    miss: toDecimal(miss),
    withinTolerance: after !== null && compare(absolute(miss), slack) <= 0,
    lineByLine: face(byLine),
    silent: brought.silent.map(({ name }) => name),
  };
}

function driftOf(choice: Choice, nearest: Choice): Drift {
  return {
    ratios: toDecimal(choice.drift),
    common: toDecimal(choice.common),
    excess: toDecimal(choice.excess),
    lineByLine: { ratios: toDecimal(nearest.drift), excess: toDecimal(nearest.excess) },
  };
}

/** The sheet with the chosen amounts, in the kitchen's own units. */
function measured(s: Sheet, lines: readonly LineOffers[], chosen: Chosen): Sheet {
  const offers = lines.map((line) => chosen.get(line));
  const factors = lines.map((line, i) => {
    const offer = offers[i];
    return offer ? over(offer.grams, line.grams) : ONE;
  });
  const moved = moveLines(s, factors, s.values.portions);
  const amounts = moved.values.amounts.map((a, i) => offers[i]?.amount ?? a);
  return moved.version({ ...moved.values, amounts });
}
