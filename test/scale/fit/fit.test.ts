import { describe, expect, it } from "vitest";
import { foodTable } from "../../../src/food/table.ts";
import { starterFoods } from "../../../src/foods.ts";
import { exactText } from "../../../src/number/digits.ts";
import { fraction } from "../../../src/number/exact.ts";
import { referenceIntakes } from "../../../src/person/intakes/referenceIntakes.ts";
import { upperLimits } from "../../../src/person/intakes/upperLimits.ts";
import type { LineInput, RecipeInput } from "../../../src/recipe/document.ts";
import type { Demand } from "../../../src/scale/demand.ts";
import { type FitOptions, fit } from "../../../src/scale/fit.ts";
import { sheet } from "../../../src/sheet/build.ts";
import type { Sheet } from "../../../src/sheet/sheet.ts";
import { toText as show } from "../../../src/show/text.ts";
import { errorOf } from "../../number/errorOf.ts";
import { food } from "./worlds.ts";

/** Plain foods of round figures, so that answers can be worked out by hand. */
const foods = foodTable([
  food("rice", { energy: 100, protein: 2, fat: 0, sodium: 0, iron: 1 }),
  food("beans", { energy: 100, protein: 10, fat: 1, sodium: 200, iron: 2 }),
  food("sauce", { energy: 50, protein: 0, fat: 5, sodium: 1000, iron: 0 }),
  food("water", { energy: 0, protein: 0, fat: 0, sodium: 0, iron: 0 }),
  food("dose", { energy: 0, protein: 0, fat: 0, sodium: 5000, iron: 0 }),
  food("puzzle", { energy: 100, protein: 10, fat: 0, sodium: 0 }),
]);

type Lines = readonly (readonly [key: string, grams: number, more?: Partial<LineInput>])[];

function dish(lines: Lines, more: Partial<RecipeInput> = {}): Sheet {
  const written = lines.map(
    ([key, grams, rest]): LineInput => ({
      key,
      food: key.replace(/\d+$/, ""),
      amount: `${grams} g`,
      ...rest,
    }),
  );
  return sheet({ name: "A dish", portions: 1, ...more, lines: written }, foods);
}

const adjustable = { scaling: "adjustable" } as const;
const perPortion = { scaling: "per-portion" } as const;

function met(s: Sheet, demands: readonly Demand[], how?: FitOptions) {
  const fitted = fit(s, demands, how);
  if (fitted.status !== "met") throw new Error(fitted.text);
  return fitted;
}

function missed(s: Sheet, demands: readonly Demand[], how?: FitOptions) {
  const fitted = fit(s, demands, how);
  if (fitted.status === "met") throw new Error("met");
  return fitted;
}

const gramsOf = (s: Sheet): Record<string, string> =>
  Object.fromEntries(s.lines.map(({ key, grams }) => [key, exactText(grams)]));

describe("fit, worked by hand", () => {
  const bowl = dish([
    ["rice", 100],
    ["beans", 100, adjustable],
  ]);

  it("moves the adjustable line just as far as the demands need", () => {
    // c (100 + 100 r) = 300 kcal and c (2 + 10 r) = 22 g: c = 1, r = 2.
    const fitted = met(bowl, [
      { of: "energy", exactly: "300 kcal" },
      { of: "protein", least: "22 g" },
    ]);
    expect(gramsOf(fitted.sheet)).toEqual({ rice: "100", beans: "200" });
    expect(fitted.factor.toString()).toBe("1");
    expect(fitted.factors.map(({ name, factor }) => [name, factor.toString()])).toEqual([["beans", "2"]]);
    expect(fitted.departures.map(({ name, departure }) => [name, departure.toString()])).toEqual([
      ["beans", "1"],
    ]);
    expect(fitted.departure.toString()).toBe("1");
  });

  it("counts a fall twice: of two ways to a ratio it doubles one line and does not halve the other", () => {
    // Beans twice the rice: beans at 2, or, were rice adjustable too, rice at 1/2, cost the same;
    // the earlier key then keeps its ratio.
    const both = dish([
      ["water", 100],
      ["rice", 100, adjustable],
      ["beans", 100, adjustable],
    ]);
    const fitted = met(both, [{ ratioOf: ["protein", "energy"], exactly: "22/300" }]);
    expect(fitted.departure.toString()).toBe("1");
    expect(fitted.departures.map(({ name }) => name)).toEqual(["rice"]);
    const renamed = dish([
      ["water", 100],
      ["beans", 100, { ...adjustable, key: "a", food: "beans" }],
      ["rice", 100, { ...adjustable, key: "b", food: "rice" }],
    ]);
    const other = met(renamed, [{ ratioOf: ["protein", "energy"], exactly: "22/300" }]);
    expect(other.departures.map(({ name, departure }) => [name, departure.toString()])).toEqual([
      ["b", "-0.5"],
    ]);
  });

  it("takes the common factor nearest 1 among equal answers", () => {
    expect(met(bowl, [{ of: "energy", least: 100, most: 150 }]).factor.toString()).toBe("0.75");
    expect(met(bowl, [{ of: "energy", least: 300, most: 500 }]).factor.toString()).toBe("1.5");
    expect(met(bowl, [{ of: "energy", least: 100, most: 500 }]).factor.toString()).toBe("1");
    expect(met(bowl, []).factor.toString()).toBe("1");
  });

  it("reads figures as a cook writes them", () => {
    const asked: Demand[] = [
      { of: "energy", exactly: "1.2552 MJ" },
      { of: "sodium", most: "0.4 g" },
      { of: "mass", least: "1/5 kg" },
      { energyShareOf: "fat", most: "20 %" },
      { energyShareOf: "protein", least: "1/20" },
    ];
    const full = sheet(
      {
        name: "Rice and beans",
        portions: 1,
        lines: [
          { key: "rice", food: "rice-white-long-boiled", amount: "150 g" },
          { key: "beans", food: "kidney-beans-red-boiled", amount: "100 g", scaling: "adjustable" },
        ],
      },
      starterFoods,
    );
    const fitted = met(full, asked);
    expect(fitted.sheet.portion("energy").value.toString()).toBe("300");
  });

  it("keeps a bound of one portion in grams, whatever the common factor", () => {
    const s = dish([
      ["rice", 100],
      ["beans", 100, { ...adjustable, most: "120 g" }],
    ]);
    const fitted = met(s, [
      { of: "energy", exactly: 330 },
      { of: "protein", least: 14 },
    ]);
    // Both at 165 g would do, but for the 120 g.
    expect(gramsOf(fitted.sheet)).toEqual({ rice: "210", beans: "120" });
    expect(
      fit(s, [
        { of: "energy", exactly: 400 },
        { of: "protein", least: 20 },
      ]).status,
    ).toBe("out-of-reach");
  });

  it("lets a line vanish only where its least is 0", () => {
    const demands: Demand[] = [
      { of: "sodium", most: 0 },
      { of: "energy", exactly: 100 },
    ];
    expect(fit(bowl, demands).status).toBe("out-of-reach");
    const may = dish([
      ["rice", 100],
      ["beans", 100, { ...adjustable, least: "0 g" }],
    ]);
    expect(gramsOf(met(may, demands).sheet)).toEqual({ rice: "100", beans: "0" });
    const little = dish([
      ["rice", 100],
      ["beans", 100, { ...adjustable, least: "1 g" }],
    ]);
    expect(fit(little, demands).status).toBe("out-of-reach");
  });

  it("moves parts against each other, inside their range", () => {
    const s = dish([
      ["rice", 100],
      ["sauce", 50, { part: "top" }],
      ["beans", 20, { part: "top" }],
    ]);
    const demands: Demand[] = [
      { of: "energy", exactly: 100 },
      { of: "sodium", exactly: 216 },
    ];
    // c + 0.45 t = 1 and 5.4 t = 2.16: t = 0.4, c = 0.82; under half of the ratio.
    expect(fit(s, demands).status).toBe("out-of-reach");
    const fitted = met(s, demands, { parts: { top: { least: 0.4 } } });
    expect(fitted.factors.map(({ kind, name, factor }) => [kind, name, factor.toString()])).toEqual([
      ["part", "top", "0.4"],
    ]);
    expect(fitted.factor.toString()).toBe("0.82");
  });

  it("takes the first part by name as the base where no held line is without one", () => {
    const s = dish([
      ["sauce", 50, { part: "top" }],
      ["rice", 100, { part: "bottom" }],
    ]);
    const fitted = met(s, [
      { of: "energy", exactly: 140 },
      { of: "sodium", exactly: 400 },
    ]);
    expect(fitted.factors.map(({ name }) => name)).toEqual(["top"]);
    expect(fitted.factor.toString()).toBe("1.2");
  });

  it("keeps the yield factor where cooking was weighed, so that the mass follows", () => {
    const s = dish(
      [
        ["rice", 100],
        ["beans", 100, adjustable],
      ],
      { cookedMass: "150 g" },
    );
    const fitted = met(s, [
      { of: "mass", exactly: "225 g" },
      { of: "protein", exactly: "22 g" },
    ]);
    expect(fitted.sheet.mass.cooked.toString()).toBe("225");
    expect(gramsOf(fitted.sheet)).toEqual({ rice: "100", beans: "200" });
  });

  it("speaks of one portion, and gives back as many as there were", () => {
    const s = dish(
      [
        ["rice", 400],
        ["beans", 400, adjustable],
        ["dose", 8, perPortion],
      ],
      { portions: 4 },
    );
    const fitted = met(s, [
      { of: "energy", exactly: 300 },
      { of: "protein", exactly: 22 },
    ]);
    expect(fitted.sheet.portions.toString()).toBe("4");
    expect(gramsOf(fitted.sheet)).toEqual({ rice: "400", beans: "800", dose: "8" });
  });
});

describe("several sheets eaten together", () => {
  const pot = dish([["rice", 100]]);
  const side = dish([
    ["beans", 100],
    ["sauce", 20, adjustable],
  ]);

  it("share one common factor, beside which a further sheet has a factor of its own", () => {
    const fitted = fit({ pot, side }, [
      { of: "energy", exactly: 330 },
      { of: "protein", exactly: 22 },
    ]);
    if (fitted.status !== "met") throw new Error(fitted.text);
    const { sheets } = fitted;
    expect(Object.keys(sheets)).toEqual(["pot", "side"]);
    const total = (id: "energy" | "protein"): string =>
      exactText(
        Object.values(sheets)
          .map((s) => s.portion(id).value)
          .reduce((a, b) => fraction(a.n * b.d + b.n * a.d, a.d * b.d)),
      ).replace(/\/.*/, "");
    expect(fitted.factors.map(({ kind, name }) => [kind, name])).toEqual([
      ["sheet", "side"],
      ["line", "side/sauce"],
    ]);
    expect(fitted.outcomes.map(({ brings }) => brings?.toString())).toEqual(["330", "22"]);
    expect(Number(total("energy"))).toBeGreaterThan(0);
  });

  it("whose order does not matter, and whose base can be told", () => {
    const demands: Demand[] = [
      { of: "energy", exactly: 330 },
      { of: "protein", exactly: 22 },
    ];
    const [a, b] = [fit({ pot, side }, demands), fit({ side, pot }, demands)];
    expect(b.factors).toEqual(a.factors);
    const other = fit({ pot, side }, demands, { base: "side" });
    expect(other.factors.map(({ name }) => name)).toEqual(["pot", "side/sauce"]);
    expect(other.factor).not.toEqual(a.factor);
  });

  it("name their lines with the sheet's name before, also where something is not known", () => {
    const odd = dish([["puzzle", 50, adjustable]]);
    const fitted = fit({ pot, odd }, [{ of: "iron", least: 2 }]);
    expect(fitted.notProven.map(({ silent }) => silent)).toEqual([["odd/puzzle"]]);
    // It keeps to its dish, which is of whatever size the others are.
    expect(fitted.factors.map(({ name, factor, kept }) => [name, factor.toString(), kept])).toEqual([
      ["odd", "2", false],
      ["odd/puzzle", "2", true],
    ]);
  });

  it("come back by name where they miss, too", () => {
    const fitted = fit({ pot, side }, [
      { of: "energy", exactly: 330 },
      { of: "protein", exactly: 200 },
    ]);
    if (fitted.status !== "out-of-reach") throw new Error("met");
    expect(Object.keys(fitted.nearest ?? {})).toEqual(["pot", "side"]);
  });
});

describe("what is not known", () => {
  it("keeps its line at the common factor, its part too, and the demand is not proven", () => {
    const s = dish([
      ["rice", 100],
      ["puzzle", 50, { part: "top" }],
      ["sauce", 10, { part: "top" }],
      ["beans", 50, adjustable],
    ]);
    const fitted = met(s, [
      { of: "iron", least: "2.5 mg" },
      { of: "energy", exactly: 250 },
    ]);
    expect(
      fitted.factors.filter(({ kept }) => kept).map(({ name, departure }) => [name, departure.toString()]),
    ).toEqual([["top", "0"]]);
    expect(fitted.notProven).toHaveLength(1);
    expect(fitted.notProven[0]?.text).toBe("iron at least 2.5 mg is not proven: puzzle says nothing of it");
    expect(fitted.outcomes.find(({ demand }) => demand.of === "iron")?.bound).toBe("at-least");
    expect(show(fitted)).toContain("at least 2.5 mg");
  });

  it("moves as it may under a limit, which is then not proven", () => {
    const s = dish([
      ["rice", 100],
      ["puzzle", 50, adjustable],
    ]);
    // c (100 + 50 r) = 200 kcal and c (2 + 5 r) = 12 g: c = 1, r = 2.
    const asked: Demand[] = [
      { of: "energy", exactly: 200 },
      { of: "protein", exactly: 12 },
    ];
    const fitted = met(s, [...asked, { of: "iron", most: "1 mg", firm: true }]);
    expect(fitted.factors.map(({ name, factor, kept }) => [name, factor.toString(), kept])).toEqual([
      ["puzzle", "2", false],
    ]);
    expect(fitted.notProven.map(({ text }) => text)).toEqual([
      "iron at most 1 mg is not proven: puzzle says nothing of it",
    ]);
    // What is known keeps to the limit: the rice alone is over this one.
    expect(fit(s, [...asked, { of: "iron", most: "0.9 mg", firm: true }]).status).toBe("out-of-reach");
    // A figure to be reached is another matter.
    for (const ends of [{ least: "1 mg" }, { exactly: "1 mg" }, { least: "0.5 mg", most: "1 mg" }]) {
      expect(fit(s, [...asked, { of: "iron", ...ends }]).status).toBe("out-of-reach");
    }
  });

  it.each(["uk", "us", "eu"] as const)("does not stop a dish at the upper levels of %s", (authority) => {
    const person = { sex: "female", age: 30, mass: "60 kg", height: "1.70 m", activity: "active" } as const;
    const limits = upperLimits(referenceIntakes(authority, person));
    const written = {
      name: "Rice and tofu",
      portions: 1,
      lines: [
        { key: "rice", food: "rice-white-long-boiled", amount: "200 g" },
        { key: "tofu", food: "tofu-firm", amount: "100 g", scaling: "adjustable" },
      ],
    } as const;
    const fitted = met(sheet(written, starterFoods), [
      { of: "energy", exactly: "500 kcal" },
      { of: "protein", least: "30 g" },
      ...limits,
    ]);
    expect(fitted.factors.map(({ name, kept }) => [name, kept])).toEqual([["tofu", false]]);
    expect(fitted.departure.n).toBeGreaterThan(0n);
    // No starter food tells its molybdenum or chromium, of which the UK has guidance and no upper level.
    const unknown = fitted.notProven.map(({ demand }) => demand.of);
    expect(unknown.some((of) => of === "molybdenum" || of === "chromium")).toBe(authority !== "uk");
  });

  it("is not asked for by a least of 0: no line is kept, nothing is left unproven, nothing is out of reach", () => {
    const s = dish([
      ["rice", 100],
      ["puzzle", 50, adjustable],
    ]);
    const asked: Demand[] = [
      { of: "energy", exactly: 200 },
      { of: "protein", exactly: 12 },
    ];
    const plain = met(s, asked);
    for (const nothing of [
      { of: "iron", least: 0 },
      { of: "iron", least: "0 mg", firm: true },
      { ratioOf: ["iron", "sodium"], least: 0 },
      { energyShareOf: "saturatedFat", least: "0 %" },
    ] satisfies Demand[]) {
      const fitted = met(s, [...asked, nothing]);
      expect(gramsOf(fitted.sheet)).toEqual(gramsOf(plain.sheet));
      expect(fitted.notProven).toEqual([]);
      expect(fitted.outcomes.at(-1)?.met).toBe(true);
      expect(fitted.outcomes.map(({ text }) => text).join()).toMatch(/at least 0/);
      expect(fitted.binding.map(({ demand }) => demand)).not.toContain(nothing);
    }
    // A least of 0 beside a limit is that limit: counted with high ends where it is firm.
    const limit: Demand = { of: "iron", most: "1 mg", firm: true };
    const [a, b] = [met(s, [...asked, limit]), met(s, [...asked, { ...limit, least: 0 } as Demand])];
    expect(b.notProven.map(({ silent, text }) => [silent, text])).toEqual(
      a.notProven.map(({ silent, text }) => [silent, text]),
    );
    expect(gramsOf(b.sheet)).toEqual(gramsOf(a.sheet));
    // A figure of 0 is one that is asked.
    expect(fit(s, [...asked, { of: "sodium", exactly: 0 }]).notProven).toEqual([]);
    expect(fit(s, [...asked, { of: "iron", exactly: 0 }]).status).toBe("out-of-reach");
  });

  it("is not what only a trace, or a limit that it stays under, is told of: that may be more than is counted", () => {
    const oil = { energy: "100", protein: "10", carbohydrateByDifference: "10", fibre: "0", alcohol: "0" };
    const table = foodTable([
      food("slight", { ...oil, fat: "trace" }),
      food("under", { ...oil, fat: { below: "5" } }),
      food("plain", { ...oil, fat: "0" }),
    ]);
    const of = (...ids: string[]): Sheet => {
      const lines = ids.map((id) => ({ key: id, food: id, amount: "100 g" }));
      return sheet({ name: "Dish", portions: 1, lines }, table);
    };
    const told = (s: Sheet, demand: Demand) => {
      const fitted = met(s, [demand]);
      return [fitted.outcomes[0]?.bound, fitted.notProven.map(({ silent, loose }) => [silent, loose])];
    };
    // Truly up to 5 g in 100 g: neither 1 g nor a share of 5 % is kept for sure, and 0 g are reached.
    expect(told(of("under"), { of: "fat", most: "1 g" })).toEqual(["at-least", [[[], ["under"]]]]);
    expect(told(of("slight", "under"), { energyShareOf: "fat", most: "5 %" })).toEqual([
      "at-least",
      [[[], ["slight", "under"]]],
    ]);
    expect(told(of("under"), { of: "fat", least: 0 })).toEqual(["at-least", []]);
    // More fat is a smaller share of protein: a least is what it may break.
    expect(told(of("under"), { energyShareOf: "protein", least: "40 %" })).toEqual([
      "at-most",
      [[[], ["under"]]],
    ]);
    expect(told(of("under"), { energyShareOf: "protein", most: "60 %" })).toEqual(["at-most", []]);
    expect(told(of("under"), { ratioOf: ["protein", "fat"], least: "1/1000" })).toEqual([
      "unknown",
      [[[], ["under"]]],
    ]);
    expect(told(of("plain"), { energyShareOf: "fat", most: "5 %" })).toEqual(["point", []]);
    expect(met(of("under"), [{ of: "fat", most: "1 g" }]).notProven[0]?.text).toBe(
      "fat at most 1 g is not proven: under may bring more than is counted",
    );
  });

  it("says so where it is why nothing can move", () => {
    const s = dish([
      ["rice", 100],
      ["puzzle", 50, adjustable],
    ]);
    const fitted = missed(s, [
      { of: "iron", exactly: 1 },
      { of: "energy", exactly: 300 },
    ]);
    expect(fitted.text).toContain(
      "Only the size of the dish can change, since puzzle does not say all that is asked.",
    );
  });
});

describe("degenerate dishes", () => {
  it("a line that brings nothing keeps its ratio", () => {
    const s = dish([
      ["rice", 100],
      ["water", 100, adjustable],
      ["beans", 50, adjustable],
    ]);
    const fitted = met(s, [
      { of: "energy", exactly: 150 },
      { of: "protein", exactly: 9 },
    ]);
    expect(fitted.departures.map(({ name }) => name)).toEqual(["beans"]);
  });

  it("of two identical lines the earlier keeps its ratio", () => {
    for (const order of [
      ["beans1", "beans2"],
      ["beans2", "beans1"],
    ] as const) {
      const s = dish([
        ["rice", 100],
        [order[0], 50, adjustable],
        [order[1], 50, adjustable],
      ]);
      const fitted = met(s, [
        { of: "energy", exactly: 250 },
        { of: "protein", exactly: 17 },
      ]);
      expect(fitted.departures.map(({ name }) => name)).toEqual(["beans2"]);
    }
  });

  it("bounds that pin everything leave one answer, or none", () => {
    const pin = (grams: number): Partial<LineInput> => ({ least: `${grams} g`, most: `${grams} g` });
    const s = dish([
      ["rice", 100, pin(120)],
      ["beans", 100, { ...adjustable, ...pin(150) }],
    ]);
    const fitted = met(s, [{ of: "energy", exactly: 270 }]);
    expect(gramsOf(fitted.sheet)).toEqual({ rice: "120", beans: "150" });
    const none = missed(s, [{ of: "energy", exactly: 300 }]);
    expect(none.nearest && gramsOf(none.nearest)).toEqual({ rice: "120", beans: "150" });
    expect(none.misses.map(({ miss }) => miss.toString())).toEqual(["-30"]);
    expect(none.conflict.map(({ text }) => text)).toEqual([
      "energy exactly 300 kcal",
      "beans at most 150 g a portion",
      "rice at most 120 g a portion",
    ]);
  });

  it("targets of 0", () => {
    const s = dish([
      ["rice", 100],
      ["sauce", 10, { ...adjustable, least: "0 g" }],
    ]);
    expect(gramsOf(met(s, [{ of: "sodium", exactly: 0 }]).sheet)).toEqual({ rice: "100", sauce: "0" });
    expect(met(s, [{ of: "alcohol", least: 0 }]).notProven).toEqual([]);
    expect(met(s, [{ of: "alcohol", most: 1 }]).notProven).toHaveLength(1);
    const never = missed(dish([["rice", 100]]), [{ of: "energy", exactly: 0 }]);
    expect(never.nearest && gramsOf(never.nearest)).toEqual({ rice: "10" });
  });

  it("doses that alone break a limit are named, and have to change, or the limit", () => {
    const s = dish([
      ["beans", 100],
      ["dose", 20, perPortion],
    ]);
    const firm = missed(s, [
      { of: "sodium", most: "800 mg", firm: true },
      { of: "energy", exactly: 100 },
    ]);
    expect(firm.nearest).toBeUndefined();
    expect(firm.misses).toEqual([]);
    expect(firm.text).toContain(
      "dose alone brings 1000 mg of sodium to every portion, whatever its size: " +
        "its dose has to change, or the firm limit of 800 mg.",
    );
    expect(firm.conflict.map(({ kind, name, text }) => [kind, name, text])).toEqual([
      ["demand", undefined, "sodium at most 800 mg (firm)"],
      ["line", "dose", "dose 20 g a portion, the same for everyone"],
    ]);
    // 100 g of beans bring 200 mg of sodium, so 600 mg are left, 12 g of 5000 mg in 100 g.
    expect(firm.suggestions.map(({ change, names, to }) => [change, names, to])).toEqual([
      ["ease-demand", [], { n: 1200n, d: 1n }],
      ["change-dose", ["dose"], { n: 12n, d: 1n }],
    ]);
    expect(show(firm)).toContain("sodium at most 800 mg (firm)");
    // Two of them, of which neither is over by itself.
    const two = dish([
      ["beans", 100],
      ["dose1", 10, perPortion],
      ["dose2", 11, perPortion],
    ]);
    expect(missed(two, [{ of: "sodium", most: "800 mg" }]).text).toContain(
      "dose2 and dose1 together bring 1050 mg of sodium to every portion, whatever its size: " +
        "their doses have to change, or the limit of 800 mg.",
    );
    // A dose that leaves room for the rest is not to blame.
    const room = missed(s, [
      { of: "sodium", most: "1100 mg" },
      { of: "energy", exactly: 100 },
    ]);
    expect(room.text).not.toContain("alone brings");
    expect(room.conflict.map(({ name }) => name)).not.toContain("dose");
    const soft = missed(s, [
      { of: "sodium", most: "800 mg" },
      { of: "energy", exactly: 100 },
    ]);
    expect(soft.nearest && gramsOf(soft.nearest)).toEqual({ beans: "100", dose: "20" });
    expect(soft.misses.map(({ text }) => text)).toEqual([
      "sodium at most 800 mg: 400 mg over; the portion brings 1200 mg",
    ]);
  });

  it("a line of no grams: its most holds, its least cannot", () => {
    const none = (more: Partial<LineInput>): Sheet =>
      dish([
        ["rice", 100],
        ["beans", 0, { ...adjustable, ...more }],
      ]);
    expect(met(none({ most: "50 g" }), [{ of: "energy", exactly: 200 }]).factor.toString()).toBe("2");
    const fitted = missed(none({ least: "50 g" }), [{ of: "energy", exactly: 200 }]);
    expect(fitted.nearest).toBeUndefined();
    expect(fitted.conflict.map(({ text }) => text)).toEqual(["beans at least 50 g a portion"]);
  });

  it("nothing but doses, nothing but adjustable lines, no mass at all", () => {
    const doses = missed(dish([["dose", 10, perPortion]]), [{ of: "sodium", exactly: 600 }]);
    expect(doses.nearest && gramsOf(doses.nearest)).toEqual({ dose: "10" });
    expect(fit(dish([["dose", 10, perPortion]]), [{ of: "sodium", exactly: 500 }]).status).toBe("met");
    const free = dish([
      ["rice", 100, adjustable],
      ["beans", 100, adjustable],
    ]);
    const fitted = met(free, [{ of: "energy", exactly: 600 }]);
    expect(fitted.factor.toString()).toBe("3");
    expect(fitted.departures).toEqual([]);
    const empty = missed(dish([["rice", 0]]), [{ of: "energy", exactly: 600 }]);
    expect(empty.misses.map(({ miss }) => miss.toString())).toEqual(["-600"]);
  });

  it("a ratio of nothing to nothing is met, and shows no figure", () => {
    const fitted = met(dish([["water", 100]]), [{ ratioOf: ["sodium", "iron"], most: 4 }]);
    expect(fitted.outcomes.map(({ brings, met: holds }) => [brings, holds])).toEqual([[null, true]]);
    expect(show(fitted)).toContain("?");
    const broken = missed(dish([["sauce", 100]]), [{ ratioOf: ["sodium", "iron"], most: 4 }]);
    expect(broken.misses).toHaveLength(1);
  });

  it("200 adjustable lines", () => {
    const lines: Lines = [
      ["rice", 500],
      ...Array.from({ length: 200 }, (_, i): Lines[number] => [
        `${i % 3 === 0 ? "beans" : i % 3 === 1 ? "sauce" : "water"}${i + 1}`,
        5 + (i % 7),
        adjustable,
      ]),
    ];
    const s = dish(lines);
    const protein = s.portion("protein").value.times("1.3").toString();
    const sodium = s.portion("sodium").value.times("0.9").toString();
    const fitted = met(s, [
      { of: "energy", exactly: s.portion("energy").value.toString() },
      { of: "protein", least: protein },
      { of: "sodium", most: sodium },
    ]);
    expect(fitted.sheet.portion("energy").value.eq(s.portion("energy").value)).toBe(true);
    expect(fitted.sheet.portion("protein").value.gte(protein)).toBe(true);
    expect(fitted.sheet.portion("sodium").value.lte(sodium)).toBe(true);
  });
});

describe("the nearest that can be had", () => {
  const oily = dish([
    ["rice2", 200],
    ["beans", 100],
    ["sauce", 20, adjustable],
  ]);

  it("is not smaller for a share of energy that cannot be had", () => {
    const full = sheet(
      {
        name: "Rice",
        portions: 1,
        lines: [
          { key: "rice", food: "rice-white-long-boiled", amount: "200 g" },
          { key: "oil", food: "olive-oil", amount: "10 g", scaling: "adjustable" },
          { key: "tofu", food: "tofu-firm", amount: "100 g" },
        ],
      },
      starterFoods,
    );
    const energy = { of: "energy", exactly: "600 kcal" } as const;
    const share = missed(full, [{ energyShareOf: "fat", most: "5 %" }]).misses;
    const both = missed(full, [energy, { energyShareOf: "fat", most: "5 %" }]);
    expect(both.nearest?.portion("energy").value.toString()).toBe("600");
    // As much over as with nothing else asked.
    expect(both.misses.map(({ miss }) => miss)).toEqual(share.map(({ miss }) => miss));
  });

  it("nor for a ratio, nor for an amount of which none is asked", () => {
    const energy = { of: "energy", exactly: 300 } as const;
    for (const other of [
      { ratioOf: ["sodium", "energy"], most: "1/10" },
      { of: "sodium", exactly: 0 },
    ] as const) {
      const fitted = missed(oily, [energy, other]);
      expect(fitted.nearest?.portion("energy").value.toString()).toBe("300");
      // The sauce is at its least, half its ratio.
      expect(fitted.factors.map(({ departure }) => departure.toString())).toEqual(["-0.5"]);
    }
  });

  it("puts amounts before shares, and shares before ratios", () => {
    const fitted = missed(oily, [
      { ratioOf: ["sodium", "energy"], least: 2 },
      { energyShareOf: "fat", most: "1/100" },
    ]);
    expect(fitted.factors.map(({ departure }) => departure.toString())).toEqual(["-0.5"]);
  });

  it("of nothing to divide by, makes what is over the least", () => {
    const s = dish([
      ["water", 100],
      ["sauce", 20, adjustable],
    ]);
    const fitted = missed(s, [{ ratioOf: ["sodium", "iron"], most: 4 }]);
    expect(fitted.factors.map(({ departure }) => departure.toString())).toEqual(["-0.5"]);
  });
});

describe("the range of the common factor", () => {
  const rice = dish([["rice", 100]]);

  it("is a tenth to ten unless told", () => {
    expect(met(rice, [{ of: "energy", exactly: 1000 }]).factor.toString()).toBe("10");
    expect(met(rice, [{ of: "energy", exactly: 10 }]).factor.toString()).toBe("0.1");
    const over = missed(rice, [{ of: "energy", exactly: 1200 }]);
    expect(over.conflict.map(({ text }) => text)).toEqual([
      "energy exactly 1200 kcal",
      "the whole dish at most 10 times the recipe",
    ]);
    expect(over.suggestions.map(({ change, to }) => [change, to && exactText(to)])).toEqual([
      ["ease-demand", "1000"],
      ["ease-common", "12"],
    ]);
    expect(met(rice, [{ of: "energy", exactly: 1200 }], { common: { most: 12 } }).factor.toString()).toBe(
      "12",
    );
    const under = missed(rice, [{ of: "energy", exactly: 5 }]);
    expect(under.suggestions.map(({ text }) => text)).toEqual([
      "accept energy up to 10 kcal (asked: exactly 5 kcal)",
      "let the whole dish go down to 0.05 times the recipe (now at least 0.1)",
    ]);
  });

  it("may lie to one side of 1", () => {
    expect(met(rice, [], { common: { least: 2, most: 3 } }).factor.toString()).toBe("2");
    expect(met(rice, [], { common: { least: "1/4", most: "1/3" } }).factor).toEqual({ n: 1n, d: 3n });
    const s = dish([
      ["rice", 100],
      ["beans", 100, { part: "top" }],
    ]);
    const fitted = met(s, [], { parts: { top: { least: "1.25", most: 2 } } });
    expect(fitted.departures.map(({ departure }) => departure.toString())).toEqual(["0.25"]);
    const low = missed(
      s,
      [
        { of: "protein", exactly: 18 },
        { of: "energy", exactly: 200 },
      ],
      {
        parts: { top: { least: "1.25", most: 2 } },
      },
    );
    expect(low.conflict.map(({ text }) => text)).toEqual([
      "energy exactly 200 kcal",
      "protein exactly 18 g",
      "the top part at most twice the recipe's proportion",
    ]);
  });
});

describe("what a fit says", () => {
  const bowl = dish([
    ["rice", 100],
    ["beans", 100, adjustable],
    ["sauce", 20, adjustable],
  ]);

  it("in words that a cook understands, about what binds and what easing would buy", () => {
    const fitted = met(bowl, [
      { of: "energy", exactly: 300 },
      { of: "sodium", most: "420 mg" },
      { of: "protein", least: 10 },
    ]);
    const sodium = fitted.binding.find(({ demand }) => demand?.of === "sodium");
    expect(sodium?.price.gt(0)).toBe(true);
    expect(sodium?.unit).toBe("mg");
    expect(sodium?.easing?.by.toString()).toBe("20");
    expect(sodium?.text).toMatch(
      /^sodium at most 420 mg: easing it by 20 mg would bring (beans|sauce) (back to|to [\d.]+ times) the recipe's proportion \(now [\d.]+ times\)/,
    );
    const text = show(fitted);
    for (const words of ["every demand is met", "sodium at most 420 mg", "Factors", "the dish", "A dish"]) {
      expect(text).toContain(words);
    }
  });

  it("in percentage points about shares of energy", () => {
    // By the general factors 100 g of beans have 9 kcal of fat and 40 of protein, 20 g of sauce 9 of fat.
    const share = { energyShareOf: "fat", most: "20 %" } as const;
    const s = dish([
      ["beans", 100],
      ["sauce", 20, adjustable],
    ]);
    const [binding] = met(s, [{ ...share, most: "28 %" }]).binding;
    expect(binding?.text).toMatch(
      /^energy from fat at most 28%: easing it by 2 percentage points would bring sauce /,
    );
    const fitted = missed(s, [{ ...share, most: "10 %" }]);
    // At half the sauce, 13.5 of 53.5 kcal.
    expect(fitted.misses.map(({ text }) => text)).toEqual([
      "energy from fat at most 10%: 15.2 percentage points over; the portion brings 25.2% of what is known",
    ]);
    expect(show(fitted)).toContain("15.2 percentage points");
    expect(missed(s, [{ ...share, most: "24.3 %" }]).misses[0]?.text).toMatch(
      /: 0\.934 percentage points over/,
    );
  });

  it("plainly, where nothing can move and two figures are asked, with what each alone would give", () => {
    const stiff = dish([
      ["rice", 100],
      ["beans", 100],
    ]);
    const fitted = missed(stiff, [
      { of: "energy", exactly: 300 },
      { of: "protein", exactly: 24 },
    ]);
    expect(fitted.text).toBe(
      "No line is adjustable and there is no second part, so one factor has to meet every demand. " +
        "These cannot stand together: energy exactly 300 kcal; protein exactly 24 g.",
    );
    expect(fitted.alone.map(({ text }) => text)).toEqual([
      "energy exactly 300 kcal: 1.5 times the recipe, which brings protein to 18 g",
      "protein exactly 24 g: 2 times the recipe, which brings energy to 400 kcal",
    ]);
    // Neither line tells its iodine: that brings none that is known, and not none.
    const silent = missed(stiff, [
      { of: "energy", exactly: 300 },
      { of: "protein", exactly: 24 },
      { of: "iodine", most: "600 µg", firm: true },
    ]);
    expect(silent.alone[0]?.text).toContain("protein to 18 g and iodine to 0 µg of what is known");
    // c + b = 3 and 2 c + 10 b = 24 in hundreds of grams: beans at 9/4, rice at 3/4, three times its ratio.
    expect(fitted.suggestions.map(({ text }) => text)).toEqual([
      "make rice adjustable, down to 75 g a portion",
      "make beans adjustable, up to 225 g a portion",
      "accept energy up to 400 kcal (asked: exactly 300 kcal)",
      "accept protein down to 18 g (asked: exactly 24 g)",
    ]);
    expect(show(fitted)).toContain("What each demand alone would give");
    expect(bowl && missed(bowl, [{ of: "protein", least: 1000 }]).alone).toEqual([]);
  });

  it("about a demand that is firm: it never yields, and no one is told to ease it", () => {
    const fitted = missed(bowl, [
      { of: "energy", exactly: 300 },
      { of: "protein", least: 50 },
      { of: "sodium", most: 300, firm: true },
    ]);
    expect(fitted.nearest?.portion("sodium").value.lte(300)).toBe(true);
    expect(fitted.misses.every(({ demand }) => demand.firm !== true)).toBe(true);
    const firm = missed(bowl, [
      { of: "protein", least: 50, firm: true },
      { of: "energy", most: 300, firm: true },
    ]);
    expect(firm.nearest).toBeUndefined();
    const texts = firm.suggestions.filter(({ change }) => change === "ease-demand").map(({ text }) => text);
    expect(texts.length).toBeGreaterThan(0);
    for (const text of texts) expect(text).toMatch(/is firm; all else could be met with/);
  });

  it("about changes that are enough only together, where no single one is", () => {
    // 10 g of protein in 100 kcal at the most, and 1 g in 100 kcal of fat: each is out of reach by itself.
    const demands: Demand[] = [
      { of: "energy", exactly: 300 },
      { of: "protein", least: 60 },
      { of: "fat", least: 60 },
    ];
    const fitted = missed(bowl, demands);
    expect(fitted.suggestions.length).toBeGreaterThan(0);
    for (const { demand, also, text } of fitted.suggestions) {
      expect(also).toHaveLength(1);
      expect(demand).toBeDefined();
      expect(text).toContain(` and ${also[0]?.text}`);
    }
    expect(show(fitted)).toContain("No single change would open it; together, any one of these would");
    const firm: Demand = { of: "energy", exactly: 300, firm: true };
    const three = missed(bowl, [firm, ...demands.slice(1), { of: "iron", least: 100 }]);
    expect(three.suggestions.map(({ also }) => also.length)).toEqual([2]);
    // Not within the tries allowed: two single changes, and then pairs.
    const few = missed(bowl, demands, { tries: 3 });
    expect(few.untried).toBeGreaterThan(0);
  });

  it("about changes that were not tried, where tries run out", () => {
    const demands: Demand[] = [
      { of: "energy", exactly: 300 },
      { of: "protein", exactly: 50 },
    ];
    const all = missed(bowl, demands);
    expect(all.untried).toBe(0);
    const none = missed(bowl, demands, { tries: 0 });
    expect(none.suggestions).toEqual([]);
    expect(none.untried).toBe(2);
    expect(show(none)).toContain("were not tried");
  });

  it("and stops, saying so, where the steps allowed run out", () => {
    const many = dish([
      ["rice", 100],
      ...range(8).map((i): Lines[number] => [`beans${i}`, 10 + i, { ...adjustable, most: `${11 + i} g` }]),
    ]);
    const hard = (pivots: number) => () =>
      fit(
        many,
        [
          { of: "energy", exactly: 250 },
          { of: "protein", exactly: "14.3" },
        ],
        { pivots },
      );
    expect(hard(20_000)().status).toBe("met");
    expect(errorOf(hard(1)).code).toBe("fit-stopped");
  });
});

function range(n: number): number[] {
  return Array.from({ length: n }, (_, i) => i + 1);
}
