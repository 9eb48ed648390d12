import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { foodTable } from "../../../src/food/table.ts";
import { amount, gramsOf, millilitresOf } from "../../../src/measure/amount.ts";
import { formatAmount } from "../../../src/measure/format.ts";
import { kitchen } from "../../../src/measure/kitchen.ts";
import { measurable } from "../../../src/measure/measurable.ts";
import { exactText } from "../../../src/number/digits.ts";
import {
  absolute,
  type Exact,
  equals,
  exact,
  fraction,
  isZero,
  minus,
  ONE,
  over,
  plus,
  sum,
  times,
  ZERO,
} from "../../../src/number/exact.ts";
import { compareRatios } from "../../../src/number/ratio.ts";
import type { LineInput, RecipeInput } from "../../../src/recipe/document.ts";
import type { Demand } from "../../../src/scale/demand.ts";
import { Rounded, RoundedTogether, RoundingOutOfReach, roundToKitchen } from "../../../src/scale/round.ts";
import { sheet } from "../../../src/sheet/build.ts";
import type { Sheet } from "../../../src/sheet/sheet.ts";
import { toText as show } from "../../../src/show/text.ts";
import { errorOf } from "../../number/errorOf.ts";
import { runs } from "../../runs.ts";
import { type End, endsOf, isSizeHeld, judged, standing } from "./judge.ts";

const foods = foodTable([
  { id: "flour", name: "Flour", source: "made up", density: "0.53", per100g: { energy: 360, protein: 10 } },
  { id: "oil", name: "Oil", source: "made up", density: "0.92", per100g: { energy: 884, protein: 0 } },
  {
    id: "egg",
    name: "Egg",
    source: "made up",
    measures: [{ name: "medium", grams: 50 }],
    per100g: { energy: 140, protein: 12.5 },
  },
  { id: "salt", name: "Salt", source: "made up", density: "1.2", per100g: { energy: 0, sodium: 39000 } },
]);

const camp = kitchen({
  name: "camp",
  measures: "metric",
  drawer: { cup: ["1/4", "1/3", "1/2"], tbsp: ["1/2"], tsp: ["1/4", "1/2"] },
  scale: "5 g",
  jug: { step: "10 ml", least: "50 ml" },
  pieces: "half",
});

const amounts: fc.Arbitrary<Pick<LineInput, "food" | "amount">> = fc.oneof(
  fc.integer({ min: 30, max: 4000 }).map((n) => ({ food: "flour", amount: `${n}/10 g` })),
  fc.integer({ min: 5, max: 300 }).map((n) => ({ food: "oil", amount: `${n}/20 tbsp` })),
  fc.integer({ min: 20, max: 300 }).map((n) => ({ food: "flour", amount: `${n}/100 cup` })),
  fc.integer({ min: 3, max: 50 }).map((n) => ({ food: "egg", amount: `${n}/10 medium` })),
  fc.integer({ min: 60, max: 900 }).map((n) => ({ food: "oil", amount: `${n}.3 ml` })),
);

interface Case {
  readonly recipe: RecipeInput;
  readonly demands: readonly Demand[];
}

const cases: fc.Arbitrary<Case> = fc
  .record({
    lines: fc.array(amounts, { minLength: 1, maxLength: 4 }),
    dose: fc.boolean(),
    portions: fc.integer({ min: 1, max: 4 }),
    yieldFactor: fc.constantFrom("1", "9/10"),
    energy: fc.integer({ min: 90, max: 110 }),
    limit: fc.option(fc.integer({ min: 95, max: 130 })),
  })
  .map(({ lines, dose, portions, yieldFactor, energy, limit }) => {
    const recipe: RecipeInput = {
      name: "Dish",
      portions,
      measures: "metric",
      yieldFactor,
      lines: [
        ...lines.map((line, i): LineInput => ({ ...line, key: `line-${i}` })),
        ...(dose ? [{ key: "dose", food: "salt", amount: "0.7 g", scaling: "per-portion" as const }] : []),
      ],
    };
    const s = sheet(recipe, foods);
    const demands: Demand[] = [
      { of: "energy", exactly: exactText(times(s.portion("energy").value, fraction(BigInt(energy), 100n))) },
    ];
    if (limit !== null)
      demands.push({
        of: "protein",
        most: exactText(times(plus(s.portion("protein").value, exact("0.1")), fraction(BigInt(limit), 100n))),
        firm: true,
      });
    return { recipe, demands };
  });

/** What each line may become, read from the kitchen alone. */
function choices(s: Sheet): { readonly grams: Exact; readonly exact: Exact }[][] {
  return s.lines
    .filter((line) => line.scaling !== "per-portion")
    .map((line) => {
      const size = gramsOf(line.amount) ?? millilitresOf(line.amount) ?? line.amount.value;
      return measurable(camp, line.amount, { measures: "metric" }).map((m) => ({
        grams: times(line.grams, over(m.value, size)),
        exact: line.grams,
      }));
    });
}

function* products<T>(lists: readonly (readonly T[])[]): Generator<T[]> {
  const [first, ...rest] = lists;
  if (!first) yield [];
  else for (const each of first) for (const more of products(rest)) yield [each, ...more];
}

/** The worst excess and the drift of a choice, worked out from the public figures of an edited sheet. */
function judgedAt(
  s: Sheet,
  chosen: readonly { readonly grams: Exact; readonly exact: Exact }[],
  ends: readonly End[],
) {
  const moving = s.lines.filter((line) => line.scaling !== "per-portion");
  const edited = s.edit(
    Object.fromEntries(moving.map((line, i) => [line.key, `${exactText(chosen[i]?.grams ?? ZERO)} g`])),
  );
  const { excess, firm } = judged(edited, ends, "1/50");
  if (!firm) return undefined;
  const drift = chosen
    .map((c) => (isSizeHeld(ends) ? over(c.grams, c.exact) : ONE))
    .map((common) => sum(chosen.map((c) => absolute(minus(over(c.grams, times(c.exact, common)), ONE)))))
    .reduce((a, b) => (compareRatios(a, b) <= 0 ? a : b));
  return { excess, drift };
}

describe("rounding to a kitchen", () => {
  it("is the best of all choices, tried one by one from the sheet's public figures", () => {
    fc.assert(
      fc.property(cases, ({ recipe, demands }) => {
        const s = sheet(recipe, foods);
        const found = roundToKitchen(s, camp, { demands });
        const ends = standing(s, demands, "1/50");
        let best: { excess: Exact; drift: Exact } | undefined;
        for (const choice of products(choices(s))) {
          const each = judgedAt(s, choice, ends);
          if (!each) continue;
          const order = best
            ? compareRatios(each.excess, best.excess) || compareRatios(each.drift, best.drift)
            : -1;
          if (order < 0) best = each;
        }
        if (!best) {
          expect(found).toBeInstanceOf(RoundingOutOfReach);
          return;
        }
        if (!(found instanceof Rounded)) throw new Error("there is a choice");
        expect(found.proven).toBe(true);
        const own = judgedAt(
          s,
          found.sheet.lines
            .filter((l) => l.scaling !== "per-portion")
            .map((l, i) => ({ grams: l.grams, exact: s.lines[i]?.grams ?? ONE })),
          ends,
        );
        expect([own && exactText(own.excess), own && exactText(own.drift)]).toEqual([
          exactText(best.excess),
          exactText(best.drift),
        ]);
        const all = judged(found.sheet, endsOf(demands), "1/50");
        expect(found.status).toBe(isZero(all.excess) ? "met" : "nearest");
      }),
      { numRuns: runs(250) },
    );
  });

  it("never does worse than line by line, keeps limits, touches no dose, and lets no line vanish", () => {
    fc.assert(
      fc.property(cases, ({ recipe, demands }) => {
        const s = sheet(recipe, foods);
        const found = roundToKitchen(s, camp, { demands });
        if (!(found instanceof Rounded)) return;
        const { drift, lineByLine } = found;
        expect(found.demands.every((d) => d.demand.firm !== true || d.holds)).toBe(true);
        expect(drift.limitsHold).toBe(true);
        if (lineByLine.limitsHold) {
          const order = compareRatios(drift.excess, lineByLine.excess);
          expect(order).toBeLessThanOrEqual(0);
          if (order === 0) expect(compareRatios(drift.ratios, lineByLine.ratios)).toBeLessThanOrEqual(0);
        }
        found.sheet.lines.forEach((line, i) => {
          const was = s.lines[i];
          if (line.scaling === "per-portion")
            expect(exactText(line.grams)).toBe(exactText(was?.grams ?? ZERO));
          else expect(line.grams.n > 0n).toBe(true);
        });
      }),
      { numRuns: runs(200) },
    );
  });

  it("gives amounts that are in the kitchen's set, told apart by arithmetic alone", () => {
    const isMultiple = (f: Exact, step: string): boolean => over(f, exact(step)).d === 1n;
    fc.assert(
      fc.property(cases, ({ recipe, demands }) => {
        const found = roundToKitchen(sheet(recipe, foods), camp, { demands });
        if (!(found instanceof Rounded)) return;
        for (const line of found.sheet.lines) {
          if (line.scaling === "per-portion") continue;
          const a = line.amount;
          const [grams, ml] = [gramsOf(a), millilitresOf(a)];
          if (grams) expect(isMultiple(grams, "5")).toBe(true);
          // Quarter teaspoons, and thirds of a cup, are 1/12 of 15 ml at the finest; the jug has tens.
          else if (ml) expect(isMultiple(ml, "5/12")).toBe(true);
          else expect(isMultiple(a.value, "1/2")).toBe(true);
          // What is printed reads back as the same amount.
          const text = formatAmount(a, { measures: "metric" });
          expect(equals(amount(text, { measures: "metric", own: ["medium"] }).value, a.value)).toBe(true);
        }
      }),
      { numRuns: runs(200) },
    );
  });
});

describe("armed-forces ounce rounding (US DoD, Armed Forces Recipe Service, A. General Information No. 1(2); read in the published text)", () => {
  const quarterOunce = kitchen({
    name: "galley",
    measures: "us",
    scale: "1/4 oz",
    drawer: {},
    pieces: "whole",
  });

  // .00 to .12 is 0, .13 to .37 is 1/4, .38 to .62 is 1/2, .63 to .87 is 3/4, .88 to .99 is 1.
  const table: [from: number, to: number, quarters: number][] = [
    [0, 12, 0],
    [13, 37, 1],
    [38, 62, 2],
    [63, 87, 3],
    [88, 99, 4],
  ];
  it.each(table)("hundredths from %i to %i are %i quarters", (from, to, quarters) => {
    for (let h = from; h <= to; h++) {
      const s = sheet(
        {
          name: "Card",
          portions: 100,
          lines: [{ food: "flour", amount: `5.${String(h).padStart(2, "0")} oz` }],
        },
        foods,
      );
      const rounded = roundToKitchen(s, quarterOunce);
      if (!(rounded instanceof Rounded)) throw new Error("it can be weighed");
      expect(exactText(rounded.sheet.lines[0]?.amount.value ?? ZERO)).toBe(
        exactText(exact(5 + quarters / 4)),
      );
    }
  });
});

describe("what a cook is told", () => {
  const dish: RecipeInput = {
    name: "Dish",
    portions: 2,
    measures: "australian",
    lines: [
      { key: "flour", food: "flour", amount: "1.9 tbsp" },
      { key: "egg", food: "egg", amount: "1.7 medium" },
      { key: "salt", food: "salt", amount: "0.13 tsp", scaling: "per-portion" },
    ],
  };

  it("states spoon sizes where the reader's kitchen differs from the author's measures, and what cannot be measured", () => {
    const rounded = roundToKitchen(sheet(dish, foods), "metric");
    const text = show(rounded);
    expect(text).toContain("1 Australian tbsp is 20 ml");
    expect(text).toContain("1 metric tbsp is 15 ml");
    expect(text).toContain("the same for everyone; cannot be measured here");
    expect(text).not.toMatch(/NaN|undefined|\[object/);
  });

  it("lets a wish win: weighed, spooned, counted, left", () => {
    const s = sheet(
      {
        ...dish,
        measures: "metric",
        lines: [
          { key: "flour", food: "flour", amount: "207 g" },
          { key: "egg", food: "egg", amount: "103 g" },
          { key: "oil", food: "oil", amount: "13 g" },
        ],
      },
      foods,
    );
    const rounded = roundToKitchen(s, camp, { lines: { flour: "cup", egg: "medium", oil: "as-written" } });
    if (!(rounded instanceof Rounded)) throw new Error("it can be measured");
    expect(rounded.lines.map((l) => l.after.unit)).toEqual(["cup", "medium", "g"]);
    expect(rounded.lines[1]?.after.value).toEqual(exact(2));
    expect(rounded.lines[2]).toMatchObject({ kept: "as-written", measurable: false });
  });

  it("rounds several sheets together, and weighs nested recipes", () => {
    const inner: RecipeInput = { name: "Mix", portions: 3, lines: [{ food: "flour", amount: "100 g" }] };
    const outer = sheet(
      { name: "Outer", portions: 1, lines: [{ key: "mix", recipe: inner, amount: "0.7 portions" }] },
      foods,
    );
    const rounded = roundToKitchen({ outer, dish: sheet(dish, foods) }, camp, {
      demands: [{ of: "energy", least: 50 }],
    });
    if (!(rounded instanceof RoundedTogether)) throw new Error("it can be measured");
    expect(Object.keys(rounded.sheets).sort()).toEqual(["dish", "outer"]);
    // 23.3 g: whichever of the two keeps the whole together.
    expect(["20 g", "25 g"]).toContain(formatAmount(rounded.sheets.outer?.lines[0]?.amount ?? amount("0 g")));
    expect(rounded.lines.map((l) => l.line)).toContain("dish/flour");
  });

  it("says that no measurable amounts keep a limit, rather than breaking it", () => {
    const s = sheet({ name: "X", portions: 1, lines: [{ food: "egg", amount: "1 medium" }] }, foods);
    const whole = kitchen({ name: "whole", measures: "metric", drawer: {}, scale: "100 g", pieces: "whole" });
    const found = roundToKitchen(s, whole, { demands: [{ of: "energy", exactly: 77, firm: true }] });
    expect(found.status).toBe("out-of-reach");
    expect(show(found)).toContain("energy exactly 77 kcal");
  });

  // The nearest steps of 5 g are 100 and 105: of 101 g the lower is nearer, of 104 g the upper.
  it.each([
    [{ amount: "101 g" }, 1, "100"],
    [{ amount: "101 g", least: "101 g", most: "120 g" }, 1, "105"],
    [{ amount: "104 g" }, 1, "105"],
    [{ amount: "104 g", least: "50 g", most: "104 g" }, 1, "100"],
    [{ amount: "208 g", most: "104 g" }, 2, "205"],
    // What is over its bound already goes no further, and need not come back.
    [{ amount: "104 g", most: "90 g" }, 1, "100"],
    [{ amount: "104 g", most: "105 g" }, 1, "105"],
  ])("holds a line's own least and most, one portion's: %j for %d", (line, portions, grams) => {
    const s = sheet({ name: "X", portions, lines: [{ key: "f", food: "flour", ...line }] }, foods);
    const rounded = roundToKitchen(s, camp);
    if (!(rounded instanceof Rounded)) throw new Error("it can be measured");
    expect(exactText(rounded.sheet.lines[0]?.grams ?? ZERO)).toBe(grams);
  });

  it("says where the search stopped, and how far from proven", () => {
    const lines = Array.from(
      { length: 14 },
      (_, i): LineInput => ({
        key: `l${i}`,
        food: ["flour", "egg", "oil"][i % 3] ?? "flour",
        amount: `${33 + i * 7}.7 g`,
      }),
    );
    const s = sheet({ name: "Many", portions: 1, lines }, foods);
    const found = roundToKitchen(s, camp, {
      demands: [
        { of: "energy", exactly: s.portion("energy").value },
        { of: "protein", exactly: s.portion("protein").value },
      ],
      tolerance: "1/10000",
      nodes: 3,
    });
    if (found.status === "stopped") {
      expect(found.bound).toBeDefined();
      expect(found.proven).toBe(false);
    } else expect(found.status).toMatch(/met|nearest|out-of-reach/);
    expect(
      roundToKitchen(s, camp, { demands: [{ of: "energy", exactly: s.portion("energy").value }] }).status,
    ).toBe("met");
  });
});

describe("bad options", () => {
  const s = sheet({ name: "X", portions: 1, lines: [{ key: "f", food: "flour", amount: "101 g" }] }, foods);
  const bad: [string, unknown, string][] = [
    ["an option that is none", { demand: [] }, "rounding-malformed"],
    ["a tolerance of 1", { tolerance: 1 }, "rounding-malformed"],
    ["a tolerance below 0", { tolerance: -0.1 }, "rounding-malformed"],
    ["a tolerance of 2", { tolerance: 2 }, "rounding-malformed"],
    ["a tolerance that is no number", { tolerance: "little" }, "amount-no-number"],
    ["NaN", { tolerance: Number.NaN }, "number-not-finite"],
    ["no neighbours", { each: 0 }, "rounding-malformed"],
    ["half a neighbour", { each: 1.5 }, "rounding-malformed"],
    ["many neighbours", { each: 100 }, "rounding-malformed"],
    ["no nodes", { nodes: 0 }, "rounding-malformed"],
    ["endless nodes", { nodes: Number.POSITIVE_INFINITY }, "rounding-malformed"],
    ["a wish for no line", { lines: { g: "weigh" } }, "line-unknown"],
    ["an empty wish", { lines: { f: " " } }, "rounding-malformed"],
    ["a wish that is no text", { lines: { f: 3 } }, "rounding-malformed"],
    ["a wish for no unit", { lines: { f: "bucket" } }, "amount-unknown-unit"],
    ["wishes in a list", { lines: 3 }, "rounding-malformed"],
    ["a demand that is none", { demands: [{ of: "protien", least: 3 }] }, "demand-malformed"],
    ["demands that are no list", { demands: { of: "energy" } }, "demand-malformed"],
    ["a system that is none", { system: "guess" }, "energy-system-unknown"],
    ["options that are no object", 3, "rounding-malformed"],
  ];
  it.each(bad)("%s is refused", (_, how, code) => {
    const error = errorOf(() => roundToKitchen(s, camp, how as never));
    expect(error.faults.map((f) => f.code)).toContain(code);
    expect(error.hint.length).toBeGreaterThan(3);
  });
  it("a kitchen or a sheet that is none is refused", () => {
    expect(errorOf(() => roundToKitchen(s, "mess" as never)).code).toBe("kitchen-malformed");
    expect(errorOf(() => roundToKitchen({}, camp)).code).toBe("fit-malformed");
    expect(errorOf(() => roundToKitchen({ a: 3 } as never, camp)).code).toBe("fit-malformed");
  });
  it("all faults are told at once", () => {
    expect(
      errorOf(() => roundToKitchen(s, camp, { tolerance: 9, each: 0, lines: { q: "weigh" } })).faults.length,
    ).toBe(3);
  });
});
