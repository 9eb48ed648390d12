import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { foodTable } from "../../../src/food/table.ts";
import { exactText } from "../../../src/number/digits.ts";
import { equals, exact, fraction, ONE, over, sum, times, ZERO } from "../../../src/number/exact.ts";
import { compareRatios } from "../../../src/number/ratio.ts";
import type { LineInput } from "../../../src/recipe/document.ts";
import type { Demand } from "../../../src/scale/demand.ts";
import { type FitOptions, fit } from "../../../src/scale/fit.ts";
import { sheet } from "../../../src/sheet/build.ts";
import type { Sheet } from "../../../src/sheet/sheet.ts";
import { toText as show } from "../../../src/show/text.ts";
import { runs, seedFor } from "../../runs.ts";
import { solved } from "./outside.ts";
import { type Meal, meals, sheetsOf, together, togetherModel } from "./together.ts";
import { food } from "./worlds.ts";

/** Sheets fitted together: each has a factor of its own, and its lines depart from that. */

const foods = foodTable([
  food("egg", { energy: 140, protein: 12, fat: 10, sodium: 100, iron: 2 }),
  food("bread", { energy: 250, protein: 10, fat: 2, sodium: 400, iron: 2 }),
  food("rice", { energy: 130, protein: 3, fat: 0, sodium: 0, iron: 1 }),
  food("tofu", { energy: 150, protein: 16, fat: 9, sodium: 10, iron: 3 }),
  food("greens", { energy: 30, protein: 3, fat: 0, sodium: 50 }),
]);

type Lines = readonly (readonly [key: string, grams: number, more?: Partial<LineInput>])[];

const dish = (lines: Lines): Sheet =>
  sheet(
    {
      name: "A dish",
      portions: 1,
      lines: lines.map(([key, grams, more]) => ({ key, food: key, amount: `${grams} g`, ...more })),
    },
    foods,
  );

const adjustable = { scaling: "adjustable" } as const;
/** Kept as written, by its own bounds. */
const breakfast = dish([
  ["egg", 100, { least: "100 g", most: "100 g" }],
  ["bread", 60],
]);
const supper = dish([
  ["rice", 150],
  ["tofu", 100, adjustable],
]);

/** What both bring, the supper `times` over. */
const wanted = (of: "energy" | "protein", n: bigint, d = 1n): string =>
  exactText(sum([breakfast.portion(of).value, times(supper.portion(of).value, fraction(n, d))]));

const met = (s: Record<string, Sheet>, demands: readonly Demand[], how?: FitOptions) => {
  const fitted = fit(s, demands, how);
  if (fitted.status !== "met") throw new Error(fitted.text);
  return fitted;
};

const grams = (s: Sheet | undefined): Record<string, string> =>
  Object.fromEntries((s?.lines ?? []).map((line) => [line.key, exactText(line.grams)]));

describe("sheets fitted together, worked by hand", () => {
  it.each([
    ["1.6", 8n, 5n],
    ["3", 3n, 1n],
    ["0.4", 2n, 5n],
  ] as const)("breakfast as written beside a supper at %s times, each in its own ratios", (text, n, d) => {
    for (const demands of [
      [{ of: "energy", exactly: wanted("energy", n, d) }],
      [
        { of: "energy", exactly: wanted("energy", n, d) },
        { of: "protein", exactly: wanted("protein", n, d) },
      ],
    ] satisfies Demand[][]) {
      const fitted = met({ breakfast, supper }, demands);
      expect(fitted.factor.toString()).toBe("1");
      expect(
        fitted.factors.map(({ name, factor, ratio }) => [name, factor.toString(), exactText(ratio)]),
      ).toEqual([
        ["supper", text, text],
        ["supper/tofu", text, "1"],
      ]);
      // A fall of the dish as a whole counts twice.
      const away = over(fraction(n - d), fraction(d));
      expect(fitted.departures.map(({ name }) => name)).toEqual(["supper"]);
      expect(exactText(fitted.departure)).toBe(exactText(n < d ? times(away, exact(-2)) : away));
      expect(grams(fitted.sheets.breakfast)).toEqual({ egg: "100", bread: "60" });
      expect(grams(fitted.sheets.supper)).toEqual({
        rice: exactText(fraction(150n * n, d)),
        tofu: exactText(fraction(100n * n, d)),
      });
    }
  });

  it("keep to one factor where nothing asks them apart", () => {
    const both = { bread: dish([["bread", 100]]), supper };
    const energy = exactText(times(sum([exact(250), supper.portion("energy").value]), fraction(3n, 2n)));
    const fitted = met(both, [{ of: "energy", exactly: energy }]);
    expect(fitted.factor.toString()).toBe("1.5");
    expect(fitted.factors.map(({ name, factor }) => [name, factor.toString()])).toEqual([
      ["supper", "1.5"],
      ["supper/tofu", "1.5"],
    ]);
  });

  it("measure a line by its own dish: from there, within half to double of that, over the common factor", () => {
    const more = sum([
      breakfast.portion("protein").value,
      times(supper.portion("protein").value, exact(3)),
      exact(8),
    ]);
    const demands: Demand[] = [
      { of: "energy", exactly: exactText(sum([exact(wanted("energy", 3n)), ZERO])) },
      { of: "protein", exactly: exactText(more) },
    ];
    // 195 f + 150 g = 1035 and 4.5 f + 16 g = 69.5 (kcal and g of supper): more tofu for less rice.
    const fitted = met({ breakfast, supper }, demands);
    const [size, tofu] = fitted.factors;
    const [f, g] = [size?.factor ?? ZERO, tofu?.factor ?? ZERO];
    expect(exactText(f)).toBe(exactText(over(exact(16 * 1035 - 150 * 69.5), exact(16 * 195 - 150 * 4.5))));
    expect(exactText(sum([times(f, exact(195)), times(g, exact(150))]))).toBe("1035");
    expect(exactText(tofu?.ratio ?? ZERO)).toBe(exactText(over(g, f)));
    expect(exactText(tofu?.departure ?? ZERO)).toBe(exactText(sum([g, times(f, exact(-1))])));
    // The supper's own, from 1, and the tofu's.
    expect(exactText(fitted.departure)).toBe(exactText(sum([f, exact(-1), tofu?.departure ?? ZERO])));
    // Twice its dish's factor is the most, however large the dish.
    const far = fit({ breakfast, supper }, [
      { of: "mass", exactly: 160 + 750 },
      { of: "protein", least: 120 },
    ]);
    expect(far.status).toBe("out-of-reach");
    if (far.status === "met") return;
    expect(far.conflict.map(({ text }) => text)).toContain(
      "supper/tofu at most twice the recipe's proportion",
    );
    const near = Object.values(far.nearest ?? {})[1];
    expect(exactText(over(exact(grams(near).tofu ?? 0), exact(grams(near).rice ?? 1)))).toBe("4/3");
  });

  it("never stand still for a silent line: it keeps to its own dish, of whatever size", () => {
    const green = dish([
      ["rice", 150],
      ["tofu", 100],
      ["greens", 50],
    ]);
    const loose = dish([
      ["rice", 150],
      ["greens", 50, adjustable],
    ]);
    for (const [name, other] of [
      ["green", green],
      ["loose", loose],
    ] as const) {
      const twice = (of: "energy" | "iron") =>
        exactText(sum([breakfast.portion(of).value, times(other.portion(of).value, exact(2))]));
      const fitted = met({ breakfast, [name]: other }, [
        { of: "energy", exactly: twice("energy") },
        { of: "iron", least: twice("iron") },
      ]);
      expect(fitted.factors.map((each) => [each.name, each.factor.toString(), each.kept])).toEqual([
        [name, "2", false],
        ...(name === "loose" ? [["loose/greens", "2", true]] : []),
      ]);
      expect(fitted.notProven.map(({ silent }) => silent)).toEqual([[`${name}/greens`]]);
    }
  });

  it("take the common factor of the first by name that has held lines, or of the one that is told", () => {
    const free = dish([["tofu", 100, adjustable]]);
    const demands: Demand[] = [{ of: "energy", exactly: wanted("energy", 2n) }];
    const fitted = met({ aside: free, breakfast, supper }, demands);
    expect(fitted.factors.map(({ kind, name }) => [kind, name])).toEqual([
      ["sheet", "aside"],
      ["line", "aside/tofu"],
      ["sheet", "supper"],
      ["line", "supper/tofu"],
    ]);
    const told = met({ breakfast, supper }, demands, { base: "supper" });
    expect(told.factor.toString()).toBe("2");
    expect(told.factors.map(({ name, factor }) => [name, factor.toString()])).toEqual([
      ["breakfast", "1"],
      ["supper/tofu", "2"],
    ]);
  });

  it("leave no dish out: a sheet is a tenth to ten times its recipe, unless told beside the common factor", () => {
    const plain = dish([["rice", 150]]);
    const demands: Demand[] = [{ of: "energy", exactly: wanted("energy", 0n) }];
    const missed = fit({ breakfast, plain }, demands);
    if (missed.status === "met") throw new Error("met");
    expect(missed.conflict.map(({ kind, name, text }) => [kind, name, text])).toContainEqual([
      "common",
      "plain",
      "the plain sheet at least 0.1 times its recipe",
    ]);
    expect(missed.suggestions.map(({ text }) => text)).toContain(
      "let the plain sheet go down to 0 times its recipe (now at least 0.1)",
    );
    expect(show(missed)).toContain("the plain sheet");
    const none = met({ breakfast, plain }, demands, { parts: { plain: { least: 0 } } });
    expect(grams(none.sheets.plain)).toEqual({ rice: "0" });
    const far: Demand[] = [{ of: "energy", exactly: wanted("energy", 20n) }];
    expect(fit({ breakfast, supper }, far).status).toBe("out-of-reach");
    expect(fit({ breakfast, supper }, far, { parts: { supper: { most: 30 } } }).status).toBe("met");
    // Told narrower, it is held to that, in words.
    const held = fit({ breakfast, supper }, [{ of: "energy", exactly: wanted("energy", 3n) }], {
      parts: { supper: { most: 2 } },
    });
    if (held.status === "met") throw new Error("met");
    expect(held.conflict.map(({ text }) => text)).toContain(
      "the supper sheet at most 2 times the common factor",
    );
    // Of 1035 kcal, with its tofu at twice its ratio: 1035 ÷ 495.
    expect(held.suggestions.map(({ text }) => text)).toContain(
      "let the supper sheet go up to 2.1 times the common factor (now at most 2 times the common factor)",
    );
  });
});

const any = meals({ dishes: { min: 2, max: 4 }, demands: { min: 1, max: 4 }, wild: 6 });
const reachable = meals({ dishes: { min: 2, max: 4 }, demands: { min: 1, max: 4 }, wild: 0 });
const near = (a: number, b: number): number => Math.abs(a - b) / (1 + Math.abs(b));

describe("sheets fitted together, against HiGHS", () => {
  const tally = { met: 0, missed: 0, moved: 0, apart: 0 };

  it("the same status, the same least departure, and the same common factor nearest 1", () => {
    const agrees = (meal: Meal): void => {
      const ours = fit(sheetsOf(meal), meal.demands);
      const { model, u } = togetherModel(meal);
      const theirs = solved(model);
      expect(theirs.status).toBe(ours.status === "met" ? "optimal" : "infeasible");
      if (ours.status !== "met") {
        tally.missed += 1;
        return;
      }
      tally.met += 1;
      const least = ours.departure.toNumber();
      if (least > 1e-9) tally.moved += 1;
      expect(near(least, theirs.objective)).toBeLessThan(1e-6);
      if (ours.factors.some(({ kind, ratio }) => kind === "sheet" && !equals(ratio, ONE))) tally.apart += 1;
      // Among those, the common factor nearest 1.
      const costs = [...model.data.colCost];
      model.row(Number.NEGATIVE_INFINITY, least + 1e-8, ...costs.map((cost, j) => [j, cost] as const));
      for (const j of costs.keys()) model.cost(j, 0);
      const away = model.column(1, 0, 100);
      model.row(-1, Number.POSITIVE_INFINITY, [away, 1], [u, -1]);
      model.row(1, Number.POSITIVE_INFINITY, [away, 1], [u, 1]);
      const common = solved(model).x[u] ?? Number.NaN;
      const [own, other] = [1 / ours.factor.toNumber(), common].map((at) => Math.abs(at - 1));
      expect(near(own ?? 0, other ?? 0)).toBeLessThan(1e-3);
    };
    const numRuns = runs(200);
    fc.assert(fc.property(any, agrees), { seed: seedFor("fits of several sheets", 421), numRuns });
    expect(tally.met).toBeGreaterThan(numRuns / 2);
    expect(tally.missed).toBeGreaterThan(numRuns / 15);
    expect(tally.moved).toBeGreaterThan(numRuns / 15);
    expect(tally.apart).toBeGreaterThan(numRuns / 4);
  });
});

describe("sheets fitted together, in fractions", () => {
  it("are met wherever some factors meet the demands, and exactly", () => {
    const law = (meal: Meal): void => {
      const fitted = met(sheetsOf(meal), meal.demands);
      const all = Object.values(fitted.sheets);
      for (const { of, energyShareOf, exactly, least, most } of meal.demands) {
        const about = energyShareOf === undefined ? ((of ?? "ratio") as "energy") : "share";
        const { value } = together(about, all);
        if (about !== "energy" && exactText(value) === "1" && of === undefined) continue;
        if (exactly !== undefined) expect(exactText(value)).toBe(exactText(exact(exactly)));
        if (least !== undefined) expect(compareRatios(value, exact(least))).toBeGreaterThanOrEqual(0);
        if (most !== undefined) expect(compareRatios(value, exact(most))).toBeLessThanOrEqual(0);
      }
    };
    fc.assert(fc.property(reachable, law), { seed: seedFor("several met", 422), numRuns: runs(100) });
  });

  it("do not mind in which order they are handed in", () => {
    const law = (meal: Meal): void => {
      const turned = Object.fromEntries(Object.entries(sheetsOf(meal)).reverse());
      const [a, b] = [fit(sheetsOf(meal), meal.demands), fit(turned, [...meal.demands].reverse())];
      expect(b.factors).toEqual(a.factors);
      expect(b.factor).toEqual(a.factor);
    };
    fc.assert(fc.property(any, law), { seed: seedFor("several in any order", 423), numRuns: runs(40) });
  });

  it("change nothing but a dish's factor where its recipe is written larger, sizes and departures told", () => {
    // Every dish's size is told by a bound of a held line, and the lines of one dish may depart.
    const pinned = (size: number) =>
      dish([
        ["bread", 30 * size, { least: "30 g", most: "30 g" }],
        ["egg", 100 * size],
      ]);
    const moving = (size: number) =>
      dish([
        ["rice", 150 * size, { least: "300 g", most: "300 g" }],
        ["tofu", 100 * size, adjustable],
        ["greens", 40 * size, adjustable],
      ]);
    const demands: Demand[] = [
      { of: "protein", least: 70 },
      { of: "mass", most: 760 },
    ];
    const plain = met({ pinned: pinned(1), supper: moving(1) }, demands);
    expect(plain.departures.length).toBeGreaterThan(0);
    for (const [a, b] of [
      [3, 1],
      [1, 3],
      [7, 5],
    ] as const) {
      const other = met({ pinned: pinned(a), supper: moving(b) }, demands);
      expect(grams(other.sheets.pinned)).toEqual(grams(plain.sheets.pinned));
      expect(grams(other.sheets.supper)).toEqual(grams(plain.sheets.supper));
      expect(other.factors.map(({ ratio }) => exactText(ratio)).slice(1)).toEqual(
        plain.factors.map(({ ratio }) => exactText(ratio)).slice(1),
      );
      expect(equals(other.factor, over(plain.factor, exact(a)))).toBe(true);
    }
  });
});
