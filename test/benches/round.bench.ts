import { bench, describe } from "vitest";
import { starterFoods } from "../../src/foods.ts";
import type { Demand } from "../../src/scale/demand.ts";
import { findRounding } from "../../src/scale/round/choose.ts";
import { readRounding } from "../../src/scale/round/read.ts";
import { roundToKitchen } from "../../src/scale/round.ts";
import { sheet } from "../../src/sheet/build.ts";
import { asNumber } from "../scale/solve/outside.ts";
import { roundOutside } from "../scale/solve/outsideRounding.ts";

/**
 * A whole rounding, from a sheet to amounts proven best, beside HiGHS, a mixed-integer solver in
 * floats. HiGHS is given the candidates and the demands ready made, and the least excess, so that it
 * reads no sheet and solves once what is solved twice here.
 */

/** 20 lines × 4 candidates × 3 demands: the whole rounding, from sheets to amounts, common factor free. */
const dishes = Array.from({ length: 16 }, (_, d) => {
  const s = sheet(
    {
      name: "Twenty lines",
      portions: 4,
      lines: starterFoods.ids
        .filter((_, i) => i % 11 === d % 11)
        .slice(0, 20)
        .map((food, i) => ({ key: `line-${i}`, food, amount: `${41 + ((i * 37 + d * 13) % 200)}.37 g` })),
    },
    starterFoods,
  );
  const demands: Demand[] = [
    { of: "energy", exactly: s.portion("energy").value.toSignificantDigits(6) },
    { of: "protein", exactly: s.portion("protein").value.toSignificantDigits(6) },
    { of: "fat", least: s.portion("fat").value.toSignificantDigits(6) },
  ];
  return { s, demands };
});

/** What each dish asks of a solver: candidates and demands, with the least excess. */
const known = dishes.map(({ s, demands }) => {
  const { problem, best } = findRounding(readRounding(s, "metric", { demands }));
  return { problem, excess: (best ? asNumber(best.excess) : 0) + 1e-9 };
});

describe("rounding 20 lines × 4 candidates × 3 demands to a kitchen", () => {
  let [ours, theirs] = [0, 0];
  bench("roundToKitchen, proven", () => {
    const { s, demands } = dishes[ours % dishes.length] as (typeof dishes)[number];
    ours += 1;
    roundToKitchen(s, "metric", { demands });
  });
  // It takes seconds over each.
  const budget = { iterations: 4, time: 1, warmupIterations: 1, warmupTime: 1 };
  bench(
    "HiGHS in floats, its problem ready made",
    () => {
      const { problem, excess } = known[theirs % known.length] as (typeof known)[number];
      theirs += 1;
      roundOutside(problem, { excess });
    },
    budget,
  );
});
