import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { ComponentId } from "../../src/food/components.ts";
import type { Figure, FoodInput } from "../../src/food/food.ts";
import { foodTable } from "../../src/food/table.ts";
import { starterFoods } from "../../src/foods.ts";
import { exactText as fractionText } from "../../src/number/digits.ts";
import { type Exact, exact, fraction } from "../../src/number/exact.ts";
import { compareRatios } from "../../src/number/ratio.ts";
import { compare as comparison } from "../../src/person/compare/compare.ts";
import { referenceIntakes } from "../../src/person/intakes/referenceIntakes.ts";
import { fit } from "../../src/scale/fit.ts";
import { between } from "../../src/sheet/between.ts";
import { sheet } from "../../src/sheet/build.ts";
import { difference } from "../../src/sheet/difference.ts";
import { explain } from "../../src/sheet/explain.ts";
import type { Sheet } from "../../src/sheet/sheet.ts";
import type { Tally } from "../../src/sheet/tally.ts";
import { toRecords } from "../../src/show/records.ts";
import { tallyFigure } from "../../src/show/tallyFigure.ts";
import { toText } from "../../src/show/text.ts";
import { runs } from "../runs.ts";

/** A figure in thousandths, as it truly is and as it is told: a point, a range, a limit, a trace or nothing. */
interface Hidden {
  readonly truth: Figure;
  readonly told: Figure | undefined;
}

const hidden: fc.Arbitrary<Hidden> = fc
  .tuple(
    fc.array(fc.integer({ min: 0, max: 9000 }), { minLength: 3, maxLength: 3 }),
    fc.constantFrom("told", "range", "range", "below", "trace", "missing"),
    fc.integer({ min: 0, max: 1000 }),
  )
  .map(([three, way, share]): Hidden => {
    const [low = 0, middle = 0, high = 0] = [...three].sort((a, b) => a - b);
    const text = (n: number): string => `${n}/1000`;
    // Anywhere between the ends, the middle figure's side being no matter.
    const truth = `${low * 1000 + (high - low) * share}/1000000`;
    if (way === "range") return { truth, told: { value: text(middle), low: text(low), high: text(high) } };
    if (way === "below") return { truth: `${high * share}/1000000`, told: { below: text(high + 1) } };
    if (way === "trace") return { truth: text(middle), told: "trace" };
    return { truth: text(middle), told: way === "told" ? text(middle) : undefined };
  });

const food = (id: string, iodine: Figure | undefined): FoodInput => ({
  id,
  name: id,
  source: "made up for a test",
  per100g: { energy: 100, protein: 10, ...(iodine !== undefined && { iodine }) },
});

function dish(figures: readonly (Figure | undefined)[], nested: boolean, kept?: string): Sheet {
  const foods = foodTable(figures.map((each, i) => food(`f${i}`, each)));
  const lines = figures.map((_, i) => ({ key: `f${i}`, food: `f${i}`, amount: `${20 + 7 * i} g` }));
  if (!nested) return sheet({ name: "Dish", portions: 2, lines }, foods);
  const inner = { name: "In", portions: 1, lines };
  const retention = kept === undefined ? {} : { retention: { iodine: kept } };
  const outer = [
    { key: "in", recipe: inner, amount: "50 g", ...retention },
    { key: "own", food: "f0", amount: "10 g" },
  ];
  return sheet({ name: "Out", portions: 2, lines: outer }, foods);
}

const dishes = fc.tuple(
  fc.array(hidden, { minLength: 1, maxLength: 4 }),
  fc.boolean(),
  fc.option(fc.constantFrom("0.5", "1"), { nil: undefined }),
);

const text = (f: Exact | undefined): string | undefined => f && fractionText(f);

function holds(tally: Tally, truth: Exact, what: string): void {
  const { least: low, most: high, bound, value } = tally;
  if (low) expect(compareRatios(low, truth), what).toBeLessThanOrEqual(0);
  if (high) expect(compareRatios(truth, high), what).toBeLessThanOrEqual(0);
  if (bound === "at-least") expect(compareRatios(value, truth), what).toBeLessThanOrEqual(0);
  if (bound === "at-most") expect(compareRatios(truth, value), what).toBeLessThanOrEqual(0);
}

/** The ends that a cell of a table shows. */
function shownEnds(shown: string): { readonly low?: Exact; readonly high?: Exact } {
  const [, low, high] = /^([\d.]+) to ([\d.]+)$/.exec(shown) ?? [];
  if (low !== undefined && high !== undefined) return { low: exact(low), high: exact(high) };
  const [, least] = /^at least ([\d.]+)$/.exec(shown) ?? [];
  return least === undefined ? {} : { low: exact(least) };
}

describe("a total of ranged figures", () => {
  it("holds the truth wherever each figure lies in its range, nested or not", () => {
    const seen = new Set<string>();
    fc.assert(
      fc.property(dishes, ([figures, nested, kept]) => {
        const told = dish(
          figures.map((f) => f.told),
          nested,
          kept,
        );
        const truth = dish(
          figures.map((f) => f.truth),
          nested,
          kept,
        );
        const pairs: [Tally, Tally][] = [
          [told.portion("iodine"), truth.portion("iodine")],
          [told.per100g("iodine"), truth.per100g("iodine")],
          [told.total("iodine"), truth.total("iodine")],
          ...told.lines.map(({ key }): [Tally, Tally] => [
            told.cell(key, "iodine"),
            truth.cell(key, "iodine"),
          ]),
        ];
        for (const [of, is] of pairs) {
          holds(of, is.value, "tally");
          seen.add(of.bound);
          const { text: shown } = tallyFigure(of);
          const { low, high } = shownEnds(shown);
          if (low) expect(compareRatios(low, is.value), shown).toBeLessThanOrEqual(0);
          if (high) expect(compareRatios(is.value, high), shown).toBeLessThanOrEqual(0);
          // A middle figure is never shown for what it is not.
          if (of.bound === "between") expect(low ?? high, shown).toBeDefined();
        }
      }),
      { numRuns: runs(150) },
    );
    expect([...seen].sort()).toEqual(["at-least", "between", "point", "unknown"]);
  });

  it("has the ends that the sum of its lines' ends makes, and those that `between` tells without like foods", () => {
    fc.assert(
      fc.property(dishes, ([figures, nested, kept]) => {
        const told = dish(
          figures.map((f) => f.told),
          nested,
          kept,
        );
        const [first, ...rest] = told.lines.map(({ key }) => told.cell(key, "iodine"));
        const added = rest.reduce((all, each) => all.plus(each), first as Tally);
        const total = told.total("iodine");
        const range = between(told, "iodine", { like: () => [] });
        expect([text(total.least), text(total.most)]).toEqual([text(range.least), text(range.most)]);
        if (added.bound !== "unknown")
          expect([text(added.least), text(added.most)]).toEqual([text(range.least), text(range.most)]);
      }),
      { numRuns: runs(80) },
    );
  });

  it("keeps the truth through plus, minus, times and over", () => {
    fc.assert(
      fc.property(
        fc.array(hidden, { minLength: 2, maxLength: 2 }),
        fc.integer({ min: 0, max: 40 }),
        ([a, b], k) => {
          if (!a || !b) return;
          const of = (figure: Figure | undefined): Tally => dish([figure], false).total("iodine");
          const [x, y, tx, ty] = [of(a.told), of(b.told), of(a.truth), of(b.truth)];
          holds(x.plus(y), tx.plus(ty).value, "plus");
          holds(x.minus(y), tx.minus(ty).value, "minus");
          holds(x.times(y), tx.times(ty).value, "times");
          holds(x.times(k).minus(k), tx.times(k).minus(k).value, "linear");
          if (y.value.n > 0n && ty.value.n > 0n) holds(x.over(y), tx.over(ty).value, "over");
        },
      ),
      { numRuns: runs(150) },
    );
  });

  it("gives its ends to what an edit changes, and to the next version", () => {
    fc.assert(
      fc.property(dishes, fc.integer({ min: 1, max: 90 }), ([figures], grams) => {
        const [told, truth] = [figures.map((f) => f.told), figures.map((f) => f.truth)].map((each) =>
          dish(each, false),
        ) as [Sheet, Sheet];
        told.total("iodine");
        const [a, b] = [told.edit({ f0: `${grams} g` }), truth.edit({ f0: `${grams} g` })];
        holds(a.total("iodine"), b.total("iodine").value, "edited");
        const change = (from: Sheet, to: Sheet): Tally | undefined =>
          difference(from, to).components.find(({ component }) => component === "iodine")?.change;
        const [is, was] = [change(told, a), change(truth, b)];
        if (is && was) holds(is, was.value, "change");
      }),
      { numRuns: runs(80) },
    );
  });
});

describe("ends under arithmetic", () => {
  const tallyOf = (iodine: Figure | undefined): Tally => dish([iodine, "1"], false).cell("f0", "iodine");

  it.each<[string, Figure | undefined]>([
    ["a trace", "trace"],
    ["a limit", { below: "3" }],
    ["a range", { value: "2", low: "1", high: "9" }],
    ["a figure", "2"],
  ])("of %s, times nothing, are nothing, and times less than nothing change places", (_, told) => {
    const tally = tallyOf(told);
    const none = tally.times(0);
    expect([none.least, none.most]).toEqual([exact(0), exact(0)]);
    const turned = tally.times(-1);
    const minus = (f: Exact | undefined): Exact | undefined => f && fraction(-f.n, f.d);
    expect([turned.least, turned.most]).toEqual([minus(tally.most), minus(tally.least)]);
  });

  it("of a part are not those of a whole that its own figure is above: such data bound nothing", () => {
    // Retinol is a part of retinol activity equivalents; these figures contradict that.
    const foods = foodTable([
      {
        ...food("a", "0"),
        per100g: { retinol: { value: "400", low: "290", high: "420" }, vitaminARae: "295" },
      },
      { ...food("b", "0"), per100g: { vitaminARae: "1" } },
    ]);
    const lines = [
      { key: "a", food: "a", amount: "1 kg" },
      { key: "b", food: "b", amount: "100 g" },
    ];
    const s = sheet({ name: "Dish", portions: 1, lines }, foods);
    const woman = { sex: "female", age: 30, mass: "60 kg" } as const;
    const [upper] = comparison(s, referenceIntakes("eu", woman)).get("retinol")?.uppers ?? [];
    // 3,000 µg (EFSA); 4,000 are told, and from 2,900 up there may be.
    expect(upper?.verdict).not.toBe("under");
  });

  it("of several sheets are those of one with all their lines", () => {
    const near: Figure = { value: "100", low: "95", high: "104" };
    const foods = foodTable([food("a", near), food("b", "trace")]);
    const [a, b] = ["a", "b"].map((id) => ({ key: id, food: id, amount: "100 g" }));
    const of = (...lines: (typeof a)[]): Sheet =>
      sheet({ name: "Dish", portions: 1, lines: lines.flatMap((line) => line ?? []) }, foods);
    const demand = { of: "iodine", least: "50 µg" } as const;
    const together = fit({ first: of(a), second: of(b) }, [demand]).outcomes[0];
    expect(together?.bound).toBe(fit(of(a, b), [demand]).outcomes[0]?.bound);
    expect(together?.bound).toBe("between");
  });
});

describe("the range of seaweed", () => {
  // Surveys (Yeh 2014, Smyth 2021, Teas 2004): 241 to 10,000 µg of iodine in 1 g dry; SR28: 81.58 g water in 100 g raw.
  const kelp = { key: "kelp", food: "kelp-raw", amount: "10 g" };
  const [least, most] = [(241 * 18.42) / 10, (10_000 * 18.42) / 10];
  const alone = sheet({ name: "Kelp", portions: 1, lines: [kelp] }, starterFoods);
  const silent = sheet(
    {
      name: "Kelp and rice",
      portions: 1,
      lines: [kelp, { key: "rice", food: "rice-white-long-boiled", amount: "200 g" }],
    },
    starterFoods,
  );

  it("is told by the tally, its JSON, the tables, the records and the explanation", () => {
    const tally = alone.portion("iodine");
    expect([tally.bound, tally.ranged]).toEqual(["between", ["kelp"]]);
    expect(Number(tally.least)).toBeCloseTo(least, 0);
    expect(Number(tally.most)).toBeCloseTo(most, 0);
    expect(tally.toJSON()).toMatchObject({ bound: "between", least: "443.9", most: "18420" });
    expect(toText(alone)).toMatch(/iodine +µg +443 to 18420/);
    expect(toText(alone)).toContain("published as a range, and shown from end to end: iodine of kelp");
    const [record] = toRecords(alone, { components: ["iodine"] });
    expect(record).toMatchObject({ bound: "between", least: 443.9, most: 18420 });
    expect(toText(explain(alone, "iodine", "portion"))).toMatch(
      /443 to 18420 µg: the figure is a middle one/,
    );
  });

  it("beside a silent line has a least and no most, and no middle figure for a bound", () => {
    const tally = silent.portion("iodine");
    expect([tally.bound, tally.most]).toEqual(["between", undefined]);
    expect(tallyFigure(tally, { unit: "µg" }).text).toBe("at least 443 µg");
    expect(toText(silent)).not.toContain("4648");
  });

  it("is no matter where rounding alone widens a figure", () => {
    const foods = foodTable([food("packet", { value: 50, low: "49.5", high: "50.5" })]);
    const s = sheet({ name: "S", portions: 1, lines: [{ food: "packet", amount: "100 g" }] }, foods);
    const { bound, least: low, most: high } = s.total("iodine");
    expect([bound, `${low}`, `${high}`]).toEqual(["point", "49.5", "50.5"]);
  });
});

describe("a firm limit", () => {
  const foods = foodTable([
    food("weed", { value: 2000, low: 200, high: 8000 }),
    food("rice", 0),
    food("mute", undefined),
  ]);
  const bowl = sheet(
    {
      name: "Bowl",
      portions: 1,
      lines: [
        { key: "rice", food: "rice", amount: "200 g" },
        { key: "weed", food: "weed", amount: "5 g", scaling: "adjustable", least: "0 g" },
      ],
    },
    foods,
  );
  const of: ComponentId = "iodine";

  it("is kept by the high ends of ranged figures: what can be served is what they can hold", () => {
    const found = fit(bowl, [
      { of: "energy", exactly: 205 },
      { of, most: 160, firm: true },
    ]);
    if (found.status !== "met") throw new Error("not met");
    // 80 µg in 1 g at most: 2 g of it.
    expect(`${found.sheet.portion(of).most}`).toBe("160");
    const outcome = found.outcomes.find(({ demand }) => demand.of === of);
    expect(outcome).toMatchObject({ bound: "at-most", met: true });
    expect(`${outcome?.brings}`).toBe("160");
    expect(found.notProven).toEqual([]);
  });

  it("that is soft, or a figure to be met, goes by the middle; a firm figure is then not proven", () => {
    const soft = fit(bowl, [{ of, most: 160 }]);
    const firm = fit(bowl, [{ of, exactly: 100, firm: true }]);
    if (soft.status !== "met" || firm.status !== "met") throw new Error("not met");
    expect(soft.sheet.portion(of).value.n).toBeGreaterThan(0n);
    expect(soft.notProven).toEqual([]);
    expect(firm.notProven).toMatchObject([{ ranged: ["weed"], silent: [] }]);
    expect(firm.notProven[0]?.text).toContain("of weed a range is published");
  });

  it("on a share of the energy says that a middle figure stands in it", () => {
    const wide: FoodInput = {
      ...food("wide", 0),
      per100g: { protein: { value: 10, low: 4, high: 20 }, fat: 5, carbohydrateByDifference: 10, alcohol: 0 },
    };
    const table = foodTable([wide]);
    const s = sheet({ name: "S", portions: 1, lines: [{ key: "w", food: "wide", amount: "100 g" }] }, table);
    const found = fit(s, [{ energyShareOf: "protein", most: "40 %", firm: true }]);
    if (found.status !== "met") throw new Error("not met");
    expect(found.outcomes.map(({ bound }) => bound)).toEqual(["between"]);
    expect(found.notProven.map(({ ranged }) => ranged)).toEqual([["w"]]);
  });
});
