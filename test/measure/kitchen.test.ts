import * as fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type Amount, amount, gramsOf, millilitresOf, withExact } from "../../src/measure/amount.ts";
import { formatAmount } from "../../src/measure/format.ts";
import { type Kitchen, type KitchenName, kitchen, kitchens } from "../../src/measure/kitchen.ts";
import { measurable } from "../../src/measure/measurable.ts";
import { measureSet } from "../../src/measure/measures.ts";
import { exactText } from "../../src/number/digits.ts";
import { type Exact, exact, fraction, isZero, over, plus, times } from "../../src/number/exact.ts";
import { compareRatios } from "../../src/number/ratio.ts";
import { errorOf } from "../number/errorOf.ts";
import { runs } from "../runs.ts";

const own = ["medium", "cup, chopped", "tbsp, ground"];
const near = (place: KitchenName | Kitchen, text: string, each = 2): string[] => {
  const { measures } = typeof place === "string" ? kitchens[place] : place;
  return measurable(place, amount(text, { own, measures }), { each }).map((m) =>
    formatAmount(m.amount, { measures }),
  );
};

describe("kitchens", () => {
  it("are all well formed, and read once", () => {
    for (const name of ["metric", "us", "imperial", "australian"] as const) {
      const read = kitchen(kitchens[name]);
      expect(read).toEqual(kitchens[name]);
      expect(kitchen(name)).toBe(read);
      expect(kitchen(read)).toBe(read);
    }
  });

  const boathouse = {
    name: "boathouse",
    measures: "metric",
    drawer: { tsp: [0.5, "1/4"], tbsp: [] },
    scale: "5 g",
    jug: { step: "25 ml", least: "100 ml" },
    pieces: "whole",
  };

  it("of one's own are frozen plain data that reads back from JSON", () => {
    const mine = kitchen(boathouse);
    expect(mine.drawer).toEqual({ tbsp: [], tsp: ["1/4", "1/2"] });
    expect([mine, mine.drawer, mine.jug].every(Object.isFrozen)).toBe(true);
    expect(kitchen(JSON.parse(JSON.stringify(mine)))).toEqual(mine);
  });

  it("may have measures of their own", () => {
    const measures = measureSet({ name: "grandmother", ml: { cup: 200 } });
    const hers = kitchen({ name: "hers", measures, drawer: { cup: ["1/2"] }, pieces: "half" });
    expect(near(hers, "0.8 cup", 1)).toEqual(["1/2 cup", "1 cup"]);
    expect(measurable(hers, amount("5 g"))).toEqual([]);
  });

  const bad: [string, unknown, string[][]][] = [
    ["nothing", undefined, [[]]],
    ["null", null, [[]]],
    ["a list", [], [[]]],
    ["an unknown name", "metrik", [[]]],
    ["no name", { ...boathouse, name: " " }, [["name"]]],
    ["a field too many", { ...boathouse, oven: true }, [["oven"]]],
    ["no measures", { ...boathouse, measures: undefined }, [["measures"]]],
    ["unknown measures", { ...boathouse, measures: "metrik" }, [["measures"]]],
    ["pieces in thirds", { ...boathouse, pieces: "third" }, [["pieces"]]],
    ["no drawer", { ...boathouse, drawer: undefined }, [["drawer"]]],
    ["a spoon that the measures lack", { ...boathouse, drawer: { pint: [] } }, [["drawer", "pint"]]],
    [
      "__proto__ in the drawer",
      { ...boathouse, drawer: JSON.parse('{"__proto__": []}') },
      [["drawer", "__proto__"]],
    ],
    ["parts that are no list", { ...boathouse, drawer: { tsp: "1/2" } }, [["drawer", "tsp"]]],
    [
      "too many parts",
      { ...boathouse, drawer: { tsp: Array.from({ length: 13 }, () => "1/2") } },
      [["drawer", "tsp"]],
    ],
    [
      "parts out of range",
      { ...boathouse, drawer: { tsp: [0, 1, "1/2", -1, "1/1000"] } },
      [
        ["drawer", "tsp", "0"],
        ["drawer", "tsp", "1"],
        ["drawer", "tsp", "3"],
        ["drawer", "tsp", "4"],
      ],
    ],
    ["a part that is no number", { ...boathouse, drawer: { tsp: ["half"] } }, [["drawer", "tsp", "0"]]],
    ["a scale in millilitres", { ...boathouse, scale: "1 ml" }, [["scale"]]],
    ["a scale of 0", { ...boathouse, scale: "0 g" }, [["scale"]]],
    ["a scale that is no text", { ...boathouse, scale: 1 }, [["scale"]]],
    [
      "a jug without marks",
      { ...boathouse, jug: {} },
      [
        ["jug", "step"],
        ["jug", "least"],
      ],
    ],
    ["a jug that is text", { ...boathouse, jug: "10 ml" }, [["jug"]]],
    ["a jug in grams", { ...boathouse, jug: { step: "10 g", least: "50 ml" } }, [["jug", "step"]]],
    [
      "all at once",
      { name: "", pieces: 1, measures: "metric", drawer: { tsp: [2] }, scale: "x" },
      [["name"], ["drawer", "tsp", "0"], ["pieces"], ["scale"]],
    ],
  ];
  it.each(bad)("with %s are refused, each fault with its path and a hint", (_, input, paths) => {
    const { faults } = errorOf(() => kitchen(input));
    expect(faults.map((f) => f.path.map(String))).toEqual(paths);
    for (const f of faults) {
      expect(f.code).toMatch(/^(kitchen-malformed|measures-|amount-|number-)/);
      expect(f.hint.length).toBeGreaterThan(5);
    }
  });
});

describe("what a kitchen can measure", () => {
  it("weighs on the scale's step, in pounds and ounces where it shows ounces", () => {
    expect(near("metric", "333.3 g")).toEqual(["332 g", "333 g", "334 g", "335 g"]);
    expect(near("metric", "1/3 lb", 1)).toEqual(["151 g", "152 g"]); // 151.197…
    expect(near("us", "4.35 lb", 1)).toEqual(["4 lb 5 1/2 oz", "4 lb 5 3/4 oz"]);
    expect(near("us", "15.9 oz", 1)).toEqual(["15 3/4 oz", "1 lb"]);
  });

  it("AFRS No. 1(2), read: of the two neighbours on a scale of 1/4 oz, the nearer is what its rounding table gives", () => {
    const table: [number, string][] = [
      [12, "0"],
      [37, "0.25"],
      [62, "0.5"],
      [87, "0.75"],
      [99, "1"],
    ];
    for (let hundredths = 1; hundredths <= 99; hundredths++) {
      const part = exact(hundredths / 100);
      // Nothing is rounded to 0 here, so a whole ounce is added and taken off again.
      const [below, above] = measurable("us", withExact(amount("1 oz"), plus(part, exact(1))), {
        each: 1,
      }).map((m) => over(m.value, exact("28.349523125")));
      const wanted = table.find(([to]) => hundredths <= to)?.[1];
      if (below === undefined) throw new Error("no neighbour");
      const from = plus(part, exact(1));
      const nearer = above && compareRatios(plus(from, from), plus(below, above)) >= 0 ? above : below;
      const found = compareRatios(below, from) === 0 ? below : nearer;
      expect(exactText(plus(found, exact(-1))), `${hundredths}`).toBe(wanted);
    }
  });

  it("takes spoons and cups for what is written in them, in few scoops", () => {
    expect(near("us", "0.55 cup", 1)).toEqual(["1/2 cup + 2 1/4 tsp", "1/2 cup + 2 1/2 tsp"]);
    expect(near("us", "1.5 cup", 1)[1]).toBe("1 1/2 cups");
    expect(near("us", "5 tbsp", 1)[1]).toBe("1/4 cup + 1 tbsp");
    expect(near("us", "2 tsp", 1)[1]).toBe("2 tsp");
    expect(near("us", "1 1/2 tsp", 1)[1]).toBe("1/2 tbsp");
    expect(near("us", "12 tbsp", 1)[1]).toBe("3/4 cup");
    expect(near("us", "20.13 cups", 1)).toEqual(["20 cups", "20 1/4 cups"]);
    expect(near("us", "0.01 tsp")).toEqual(["1/4 tsp", "1/2 tsp"]);
    expect(near("australian", "1 cup", 1)[1]).toBe("1 cup");
  });

  it("pours what is written in litres, and spoons what lies below the jug's lowest mark", () => {
    expect(near("metric", "207 ml", 1)).toEqual(["200 ml", "210 ml"]);
    expect(near("metric", "0.2 l", 1)).toEqual(["190 ml", "200 ml", "210 ml"]);
    expect(near("metric", "52 ml")).toEqual(["50 ml", "60 ml", "70 ml"]);
    expect(near("metric", "7 ml", 1)).toEqual(["1 1/4 tsp", "1/2 tbsp"]);
    expect(near("us", "250 ml", 1)).toEqual(["8 fl oz", "9 fl oz"]);
    // Without cups, more than a few spoons goes into the jug.
    expect(near("imperial", "13 tbsp", 1)).toEqual(["6 1/2 fl oz", "7 fl oz"]);
    expect(near("imperial", "3 tbsp", 1)[1]).toBe("3 tbsp");
  });

  it("counts pieces, whole or in halves, and never down to none", () => {
    expect(near("metric", "2.3 medium")).toEqual(["1 1/2 medium", "2 medium", "2 1/2 medium", "3 medium"]);
    expect(near("metric", "0.2 medium", 1)).toEqual(["1/2 medium"]);
    expect(near({ ...kitchens.metric, pieces: "whole" }, "2.3 medium", 1)).toEqual(["2 medium", "3 medium"]);
  });

  it("takes a food's own cup in the parts that the drawer has, if it is the same cup", () => {
    expect(near("metric", "0.6 cup, chopped", 1)).toEqual(["1/2 cup, chopped", "2/3 cup, chopped"]);
    expect(near("metric", "0.6 tbsp, ground", 1)).toEqual(["1/2 tbsp, ground", "1 tbsp, ground"]);
    expect(near("imperial", "0.6 cup, chopped", 1)).toEqual([]);
    const chopped = amount("0.6 cup, chopped", { own });
    expect(measurable("metric", chopped, { measures: "us" })).toEqual([]);
    expect(measurable("metric", chopped, { measures: "australian" })).toHaveLength(4);
  });

  it("measures nothing exactly, and energy not at all", () => {
    expect(near("metric", "0 g")).toEqual(["0 g"]);
    expect(near("metric", "0 ml")).toEqual(["0 cups"]);
    expect(near("us", "0 cups")).toEqual(["0 cups"]);
    expect(near("us", "0 medium")).toEqual(["0 medium"]);
    expect(near("us", "5 kcal")).toEqual([]);
  });

  it("refuses a count of neighbours that is none", () => {
    for (const each of [0, -1, 1.5, Number.NaN, 51]) {
      expect(errorOf(() => measurable("us", amount("5 g"), { each })).code).toBe("format-malformed");
    }
  });

  it("copes with amounts beyond any kitchen", () => {
    const huge = amount({ value: `1${"0".repeat(300)}`, unit: "us cup" });
    expect(measurable("us", huge)).toHaveLength(5);
    const tiny = amount({ value: `1/1${"0".repeat(300)}`, unit: "us cup" });
    expect(near("us", formatAmount(tiny, { measures: "us" }), 1)).toEqual(["1/4 tsp"]);
  });
});

const figure: fc.Arbitrary<Exact> = fc
  .tuple(fc.integer({ min: 1, max: 20_000 }), fc.integer({ min: 1, max: 1000 }))
  .map(([n, d]) => fraction(BigInt(n), BigInt(d)));

describe("neighbours", () => {
  const places = fc.constantFrom<KitchenName>("metric", "us", "imperial", "australian");
  const unit = fc.constantFrom(
    "g",
    "oz",
    "kg",
    "ml",
    "l",
    "us cup",
    "us tbsp",
    "metric tsp",
    "imperial pint",
  );

  it("rise, close in on the amount from both sides, are what they say, and are theirs when asked again", () => {
    fc.assert(
      fc.property(places, unit, figure, fc.integer({ min: 1, max: 5 }), (place, of, f, each) => {
        const wanted = withExact(amount(`1 ${of}`), f);
        const base = (a: Amount): Exact => gramsOf(a) ?? millilitresOf(a) ?? exact(0);
        const found = measurable(place, wanted, { each });
        const sides = found.map((m) => compareRatios(m.value, base(wanted)));
        expect(sides).toEqual([...sides].sort());
        expect(sides.filter((side) => side > 0)).toHaveLength(each);
        expect(sides.filter((side) => side === 0).length).toBeLessThanOrEqual(1);
        found.forEach((m, i) => {
          expect(base(m.amount)).toEqual(m.value);
          expect(isZero(m.value)).toBe(false);
          const next = found[i + 1];
          if (next) expect(compareRatios(m.value, next.value)).toBe(-1);
          expect(m.amount.parts?.length ?? 1).toBeLessThanOrEqual(2);
        });
      }),
      { numRuns: runs(500) },
    );
  });

  /**
   * The US drawer laid out another way: every pair of figures, by plain counting in twelfths of a
   * quarter teaspoon (a cup is 48 teaspoons).
   */
  function bruteForce(upTo: number): number[] {
    const twelfths = (teaspoons: number, parts: number[]) => (whole: number) =>
      parts.map((p) => (whole + p) * teaspoons * 48);
    const cups = Array.from({ length: upTo }, (_, i) => i).flatMap(
      twelfths(48, [0, 1 / 4, 1 / 3, 1 / 2, 2 / 3, 3 / 4]),
    );
    const tablespoons = [0, 1, 2, 3].flatMap(twelfths(3, [0, 1 / 2]));
    const teaspoons = [0, 1, 2].flatMap(twelfths(1, [0, 1 / 4, 1 / 2, 3 / 4]));
    const all = new Set<number>();
    const add = (larger: number, smaller: number) => {
      if (larger === 0 || smaller === 0 || smaller * 50 >= larger + smaller)
        all.add(Math.round(larger + smaller));
    };
    for (const c of cups) for (const s of [...tablespoons, ...teaspoons]) add(c, s);
    for (const t of tablespoons) for (const s of teaspoons) add(t, s);
    all.delete(0);
    return [...all].sort((a, b) => a - b);
  }

  it("are all that a drawer can do, as plain counting finds them", () => {
    const grid = bruteForce(8);
    const step = over(exact("4.92892159375"), exact(48));
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 6 * 48 * 48 }), fc.integer({ min: 1, max: 6 }), (at, each) => {
        const wanted = amount({ value: exactText(fraction(BigInt(at), 2304n)), unit: "us cup" });
        const found = measurable("us", wanted, { each }).map((m) => exactText(over(m.value, step)));
        const below = grid.filter((g) => g < at).slice(-each);
        const same = grid.filter((g) => g === at);
        const above = grid.filter((g) => g > at).slice(0, each);
        expect(found).toEqual([...below, ...same, ...above].map(String));
      }),
      { numRuns: runs(500) },
    );
  });

  it("of a scale are multiples of its step, none left out", () => {
    fc.assert(
      fc.property(figure, fc.constantFrom("1 g", "5 g", "0.1 g", "1/4 oz"), (f, scale) => {
        const place = kitchen({ ...kitchens.metric, scale });
        const step = gramsOf(amount(scale)) ?? exact(1);
        const steps = measurable(place, withExact(amount("1 g"), f), { each: 3 }).map((m) =>
          over(m.value, step),
        );
        for (const s of steps) expect(s.d).toBe(1n);
        steps.slice(1).forEach((s, i) => {
          expect(s).toEqual(plus(steps[i] ?? exact(0), exact(1)));
        });
      }),
    );
  });

  it("are found quickly for many people", () => {
    const cup = amount("1 us cup");
    measurable("us", cup);
    const began = performance.now();
    for (let i = 1; i <= 2000; i++) measurable("us", withExact(cup, times(exact(i), exact("1/777"))));
    // Twenty lines, four candidates, twenty-five people; a tenth of this is usual.
    expect(performance.now() - began).toBeLessThan(10_000);
  });

  it("of a drawer at its fullest are found in bounded time", () => {
    const ml = {
      tsp: "1.01",
      dessertspoon: "3.03",
      tbsp: "7.07",
      "fl oz": "17.17",
      gill: "50.5",
      cup: "150.3",
      pint: "501.1",
      quart: "1503.7",
      gallon: "9999.999",
    };
    const parts = Array.from({ length: 12 }, (_, i) => `${i + 1}/97`);
    const full = {
      name: "full",
      measures: { name: "odd", ml },
      drawer: Object.fromEntries(Object.keys(ml).map((u) => [u, parts])),
      pieces: "half",
    };
    const began = performance.now();
    expect(measurable(kitchen(full), amount("1234.5 ml"))).toHaveLength(4);
    expect(performance.now() - began).toBeLessThan(10_000);
  });
});
