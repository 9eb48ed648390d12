import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Demand } from "../../../src/scale/demand.ts";
import { fit } from "../../../src/scale/fit.ts";
import { met, runs, seedFor } from "../../runs.ts";
import { missModel, ratioModel, solved, tryTotals } from "./outside.ts";
import { type World, worlds } from "./worlds.ts";

/**
 * Against an independent method: HiGHS (registry package `highs`), given each fit written out once
 * more from the sheet's public figures. Floats against fractions, so to its tolerance.
 */

const near = (a: number, b: number): number => Math.abs(a - b) / (1 + Math.abs(b));

const tally = { met: 0, missed: 0, moved: 0 };

/** The same status, and the same least departure. */
function agrees({ recipe, sheet, demands }: World): void {
  const ours = fit(sheet, demands);
  const theirs = solved(ratioModel(recipe, sheet, demands).model);
  expect(theirs.status).toBe(ours.status === "met" ? "optimal" : "infeasible");
  if (ours.status !== "met") {
    tally.missed += 1;
    return;
  }
  tally.met += 1;
  if (ours.departure.n !== 0n) tally.moved += 1;
  expect(near(ours.departure.toNumber(), theirs.objective)).toBeLessThan(1e-6);
}

/** Among answers of the least departure, the same common factor, nearest 1. */
function agreesOnTheFactor({ recipe, sheet, demands }: World): void {
  const ours = fit(sheet, demands);
  if (ours.status !== "met") return;
  const { model, u } = ratioModel(recipe, sheet, demands);
  const costs = [...model.data.colCost];
  model.row(
    Number.NEGATIVE_INFINITY,
    ours.departure.toNumber() + 1e-9,
    ...costs.map((cost, j) => [j, cost] as const),
  );
  for (const j of costs.keys()) model.cost(j, 0);
  const away = model.column(1, 0, 100);
  model.row(-1, Number.POSITIVE_INFINITY, [away, 1], [u, -1]);
  model.row(1, Number.POSITIVE_INFINITY, [away, 1], [u, 1]);
  const theirs = solved(model);
  expect(theirs.status).toBe("optimal");
  // Nearest 1 of one over the factor is nearest 1 of the factor.
  expect(near(1 / ours.factor.toNumber(), theirs.x[u] ?? Number.NaN)).toBeLessThan(1e-4);
}

const reckoned = { amount: 0, share: 0, ratio: 0 };

/**
 * The same least totals of misses, each as a share of its own figure: of amounts, then of shares, then
 * of ratios, those to the same amount together.
 */
function agreesOnMisses({ recipe, sheet, demands }: World): void {
  const asked: Demand[] = [...demands, { ratioOf: ["protein", "mass"], least: "1/12" }];
  const ours = fit(sheet, asked);
  const model = missModel(recipe, sheet, asked);
  if (ours.status !== "met" && ours.nearest === undefined) {
    expect(solved(model.model).status).toBe("infeasible");
    return;
  }
  // Ratios in the order of the amounts that they are of.
  const totals = new Map(["amount", "nothing", "share", "mass", "omega3"].map((rank) => [rank, 0]));
  for (const { demand, miss, brings } of ours.outcomes) {
    const end = miss.lt(0) ? "least" : "most";
    const own = model.misses.find((each) => each.demand === demand && each.end === end);
    if (brings === null || !own) continue;
    totals.set(own.rank, (totals.get(own.rank) ?? 0) + miss.abs().toNumber() * own.weight);
  }
  for (const { rank, can, canLess } of tryTotals(model, [...totals], 1e-4)) {
    expect({ rank, can, canLess }).toEqual({ rank, can: true, canLess: false });
    if ((totals.get(rank) ?? 0) > 1e-3) reckoned[rank === "amount" || rank === "share" ? rank : "ratio"] += 1;
  }
}

describe("against HiGHS", () => {
  it.each([
    ["few lines", { adjustable: { min: 0, max: 3 }, demands: { min: 1, max: 4 }, wild: 8 }, 350],
    ["more lines", { adjustable: { min: 3, max: 8 }, demands: { min: 2, max: 6 }, wild: 10 }, 250],
    ["many lines", { adjustable: { min: 15, max: 25 }, demands: { min: 2, max: 6 }, wild: 10 }, 60],
  ] as const)("%s: the same status and the same least departure", (name, shape, quick) => {
    fc.assert(fc.property(worlds(shape), agrees), {
      seed: seedFor(`fits with ${name}`, 411),
      numRuns: runs(quick),
    });
  });

  it("which compared something: most were met, some were not, and ratios moved", () => {
    expect(tally.met).toBeGreaterThan(met(400));
    expect(tally.missed).toBeGreaterThan(met(30));
    expect(tally.moved).toBeGreaterThan(met(200));
  });

  const shape = { adjustable: { min: 1, max: 5 }, demands: { min: 1, max: 4 }, wild: 0 };
  it("the same common factor among equal answers", () => {
    const seed = seedFor("common factors", 412);
    fc.assert(fc.property(worlds(shape), agreesOnTheFactor), { seed, numRuns: runs(200) });
  });

  it("the same least totals of misses where not everything can be met", () => {
    const seed = seedFor("misses", 413);
    fc.assert(fc.property(worlds({ ...shape, wild: 2 }), agreesOnMisses), { seed, numRuns: runs(160) });
    expect(reckoned.amount).toBeGreaterThan(met(20));
    expect(reckoned.share).toBeGreaterThan(met(10));
    expect(reckoned.ratio).toBeGreaterThan(met(40));
  });
});
