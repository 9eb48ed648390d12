import { describe, expect, it } from "vitest";
import { starterFoods } from "../../../src/foods.ts";
import { formatAmount } from "../../../src/measure/format.ts";
import { kitchen } from "../../../src/measure/kitchen.ts";
import type { RecipeInput } from "../../../src/recipe/document.ts";
import type { Demand } from "../../../src/scale/demand.ts";
import { fit } from "../../../src/scale/fit.ts";
import { Rounded, roundToKitchen } from "../../../src/scale/round.ts";
import { sheet } from "../../../src/sheet/build.ts";
import type { Sheet } from "../../../src/sheet/sheet.ts";
import { toText as show } from "../../../src/show/text.ts";

const bowl: RecipeInput = {
  name: "Cox's bowl",
  portions: 1,
  measures: "metric",
  lines: [
    { key: "oats", food: "oats-rolled-dry", amount: "60 g" },
    { key: "drink", food: "soya-drink-unsweetened-fortified", amount: "250 ml" },
    { key: "banana", food: "bananas-raw", amount: "1/2 medium" },
  ],
};

const honeyed = sheet(
  {
    name: "Lightweight's bowl",
    portions: 1,
    measures: "metric",
    lines: [
      { key: "oats", food: "oats-rolled-dry", amount: "60 g" },
      { key: "almonds", food: "almonds", amount: "20 g" },
      { key: "honey", food: "honey", amount: "1 tbsp" },
    ],
  },
  starterFoods,
);

function rounded(s: Sheet, demands: readonly Demand[], tolerance?: string): Rounded {
  const found = roundToKitchen(s, "metric", tolerance === undefined ? { demands } : { demands, tolerance });
  if (!(found instanceof Rounded)) throw new Error("it can be measured");
  return found;
}

const measuredIn = (found: Rounded): string[] =>
  found.sheet.lines.map((line) => formatAmount(line.amount, { measures: "metric" }));

describe("what held before rounding", () => {
  const demands: readonly Demand[] = [
    { of: "energy", exactly: 460 },
    { of: "protein", least: 29 },
  ];
  const fitted = fit(sheet(bowl, starterFoods), demands);
  const nearest = fitted.status === "out-of-reach" ? fitted.nearest : undefined;
  if (!nearest) throw new Error("energy can be had, protein cannot");

  it("is not given up for a demand that cannot be met", () => {
    const found = rounded(nearest, demands);
    const [energy, protein] = found.demands;
    expect([energy?.heldBefore, energy?.holds]).toEqual([true, true]);
    expect([protein?.heldBefore, protein?.holds]).toEqual([false, false]);
    // Two hundredths of 460 kcal are 9.2.
    expect(Math.abs((energy?.brings?.toNumber() ?? 0) - 460)).toBeLessThan(9.2);
    expect(found.drift.excess.toString()).toBe("0");
    expect(measuredIn(found)[2]).toBe("1/2 medium");
  });

  it("is told apart from what was missed already", () => {
    const found = rounded(nearest, demands);
    expect(found.status).toBe("nearest");
    expect(show(found)).toContain("protein at least 29 g: missed before rounding, and still");
    expect(show(found)).not.toContain("off by more than its tolerance");
  });

  it("leaves the amounts as they would be without the demand that was missed", () => {
    expect(measuredIn(rounded(nearest, demands))).toEqual(measuredIn(rounded(nearest, demands.slice(0, 1))));
  });

  it("counts by the end: of a band, the one that held", () => {
    const eggs = sheet(
      { name: "Eggs", portions: 1, lines: [{ key: "egg", food: "egg-raw", amount: "1.55 large" }] },
      starterFoods,
    );
    const one = eggs.portion("energy").value.div("1.55");
    const whole = kitchen({ name: "hut", measures: "metric", drawer: {}, scale: "100 g", pieces: "whole" });
    const countedFor = (demands: readonly Demand[]): string | undefined => {
      const found = roundToKitchen(eggs, whole, { demands });
      return found instanceof Rounded ? found.lines[0]?.after.value.n.toString() : undefined;
    };
    // Two are nearer, but more than is asked at most; too little it was before.
    expect(countedFor([])).toBe("2");
    expect(countedFor([{ of: "energy", least: one.times("1.7"), most: one.times("1.9") }])).toBe("1");
    expect(countedFor([{ of: "energy", least: one.times("1.7"), most: one.times("2.1") }])).toBe("2");
  });
});

describe("a share or ratio out of reach", () => {
  it("changes no size, and no line for nothing", () => {
    const found = rounded(honeyed, [{ energyShareOf: "protein", least: "30 %" }]);
    expect(measuredIn(found)).toEqual(["60 g", "20 g", "1 tbsp"]);
    expect(found.drift.ratios.toString()).toBe("0");
    expect(found.status).toBe("nearest");
  });

  it("is off by a share of what is asked where it held before, whatever the size", () => {
    const s = honeyed.edit({ oats: "60.4 g", almonds: "20.3 g", honey: "14.2 g" });
    const [protein, fat] = [s.portion("protein").value, s.portion("fat").value];
    const exactly = `${protein.n * fat.d}/${protein.d * fat.n}`;
    const found = rounded(s, [{ ratioOf: ["protein", "fat"], exactly }], "0");
    const [ratio] = found.demands;
    const off = ratio?.miss.div(ratio.before ?? 1).abs();
    expect(off?.isZero()).toBe(false);
    expect(found.drift.excess.toFixed(9)).toBe(off?.toFixed(9));
  });
});
