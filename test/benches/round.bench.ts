import { bench, describe } from "vitest";
import { starterFoods } from "../../src/foods.ts";
import type { Demand } from "../../src/scale/demand.ts";
import { roundToKitchen } from "../../src/scale/round.ts";
import { sheet } from "../../src/sheet/build.ts";

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

describe("rounding 20 lines × 4 candidates × 3 demands to a kitchen", () => {
  let at = 0;
  bench("roundToKitchen, proven", () => {
    const { s, demands } = dishes[at % dishes.length] as (typeof dishes)[number];
    at += 1;
    roundToKitchen(s, "metric", { demands });
  });
});
