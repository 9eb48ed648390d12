import * as fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type BorrowOptions, borrow } from "../../src/food/borrow.ts";
import { type ComponentId, componentIds, components } from "../../src/food/components.ts";
import { readFigure } from "../../src/food/composition.ts";
import { figureMarks } from "../../src/food/figure.ts";
import type { FoodInput } from "../../src/food/food.ts";
import { lenders } from "../../src/food/lend.ts";
import { foodTable } from "../../src/food/table.ts";
import { starterFoods } from "../../src/foods.ts";
import { exactText } from "../../src/number/digits.ts";
import { type Exact, exact, fraction, minus, times } from "../../src/number/exact.ts";
import { compareRatios } from "../../src/number/ratio.ts";
import { sheet } from "../../src/sheet/build.ts";
import { errorOf } from "../number/errorOf.ts";
import { runs } from "../runs.ts";

const food = (id: string, per100g: FoodInput["per100g"], more: Partial<FoodInput> = {}): FoodInput => ({
  id,
  name: id,
  state: "raw",
  source: "test",
  per100g,
  ...more,
});
const value = (f: FoodInput, id: ComponentId): Exact => readFigure(f, id).value;
const inGrams = (f: FoodInput, id: ComponentId): string => exactText(value(f, id));

/** A lender as complete as SR28 has it, and a food of half its protein, a quarter of its fat and twice its solids. */
const lender = food("lender", {
  water: 90,
  protein: 8,
  fat: 4,
  leucine: "0.6",
  lysine: { value: "0.4", low: "0.3", high: "0.5" },
  omega3: 1,
  iron: 2,
  fibre: { value: 3, derived: "by difference" },
  vitaminC: "trace",
  zinc: { below: 1 },
  copper: { value: "0.2", borrowedFrom: "elsewhere" },
  starch: { value: 0, presumed: true, source: "code 7" },
  folate: 30,
  foodFolate: 30,
  folicAcid: 0,
  folateDfe: 30,
  energy: 60,
});
const silent = food("silent", { water: 80, protein: 4, fat: 1, potassium: 300 });
const table = foodTable([lender, silent]);
const how = { into: "silent", from: "lender" } as const;

describe("borrow", () => {
  const full = borrow(table, how).get("silent");

  it("brings amino acids over by protein, fatty acids by fat, the rest by dry matter", () => {
    // Protein 4/8, fat 1/4, dry matter (100 − 80)/(100 − 90): FAO/INFOODS 2012, unverified.
    expect(inGrams(full, "leucine")).toBe("0.3");
    expect(inGrams(full, "omega3")).toBe("0.25");
    expect(inGrams(full, "iron")).toBe("4");
    expect(inGrams(borrow(table, { ...how, basis: "weight" }).get("silent"), "iron")).toBe("2");
    // Neither water nor fat: 19 g against 6 g.
    expect(inGrams(borrow(table, { ...how, basis: "fat-free-dry-matter" }).get("silent"), "iron")).toBe(
      exactText(exact("19/3")),
    );
    expect(inGrams(borrow(table, { ...how, basis: "weight" }).get("silent"), "leucine")).toBe("0.3");
  });

  it("goes by weight where a water is not known, and says so", () => {
    const dry = foodTable([lender, food("silent", { protein: 4 })]);
    const { value: iron, note } = readFigure(borrow(dry, how).get("silent"), "iron");
    expect([exactText(iron), note]).toEqual(["2", "lender: by weight, × 1; test"]);
    expect(
      errorOf(() => borrow(dry, { ...how, components: ["iron"], basis: "dry-matter" })).faults[0]?.message,
    ).toMatch(/dry matter of silent is not known/);
  });

  it("keeps intervals, and says lender, ratio and what the lender said", () => {
    const { kind, low, high, note } = readFigure(full, "lysine");
    expect([kind, low && exactText(low), high && exactText(high), note]).toEqual([
      "borrowed",
      "0.15",
      "0.25",
      "lender: by protein, × 0.5; test",
    ]);
    expect(readFigure(full, "fibre").note).toBe("lender: by dry matter, × 2; test, there by difference");
    expect(readFigure(full, "starch").note).toMatch(/code 7/);
  });

  it("takes nothing that is a limit, borrowed, added or follows from the rest", () => {
    const taken = Object.keys(full.per100g).filter((id) => silent.per100g[id as ComponentId] === undefined);
    expect(taken.sort()).toEqual(
      ["fibre", "foodFolate", "folate", "folateDfe", "iron", "leucine", "lysine", "omega3", "starch"].sort(),
    );
  });

  it("marks every borrowed figure on a sheet", () => {
    const s = sheet(
      { name: "r", portions: 1, lines: [{ food: "silent", amount: "100 g" }] },
      borrow(table, how),
    );
    const { borrowed, bound, complete } = s.total("iron");
    expect([borrowed, bound, complete]).toEqual([["silent"], "point", true]);
    expect(s.total("potassium").borrowed).toEqual([]);
  });

  it("leaves the table it was given as it was", () => {
    borrow(table, how);
    expect(table.get("silent").per100g.iron).toBeUndefined();
  });
});

describe("what was added to a food", () => {
  const plain = {
    water: 50,
    protein: 5,
    calcium: 100,
    vitaminARae: 60,
    retinol: 60,
    niacin: 2,
    niacinEquivalents: 3,
  } as const;
  const pair = (from: Partial<FoodInput>, into: Partial<FoodInput> = {}): ReturnType<typeof foodTable> =>
    foodTable([
      food("lender", { ...plain, ...from.per100g }, { ...from, per100g: { ...plain, ...from.per100g } }),
      food("silent", { water: 50, protein: 5 }, into),
    ]);

  it("is never lent, nor what is computed from it", () => {
    const got = (t: ReturnType<typeof foodTable>): string[] =>
      Object.keys(borrow(t, how).get("silent").per100g).sort();
    expect(got(pair({}))).toEqual([
      "calcium",
      "niacin",
      "niacinEquivalents",
      "protein",
      "retinol",
      "vitaminARae",
      "water",
    ]);
    expect(got(pair({ fortifiedWith: ["calcium", "niacin"] }))).toEqual([
      "protein",
      "retinol",
      "vitaminARae",
      "water",
    ]);
    expect(got(pair({ fortifiedWith: ["vitaminARae"] }))).toEqual([
      "calcium",
      "niacin",
      "niacinEquivalents",
      "protein",
      "water",
    ]);
  });

  it("is never borrowed into a food that has it added", () => {
    expect(
      Object.keys(borrow(pair({}, { fortifiedWith: ["calcium"] }), how).get("silent").per100g),
    ).not.toContain("calcium");
  });

  it("is told by folic acid, which only ever is added: total folate is then not lent, food folate is", () => {
    const enriched = pair({ per100g: { folicAcid: 100, folate: 130, foodFolate: 30, folateDfe: 200 } });
    const got = Object.keys(borrow(enriched, how).get("silent").per100g);
    expect(got).toContain("foodFolate");
    for (const id of ["folicAcid", "folate", "folateDfe"]) expect(got).not.toContain(id);
  });

  it("is told of the starter foods whose names say it, and of drinks of almonds and rice", () => {
    const added = starterFoods.ids.filter((id) => starterFoods.get(id).fortifiedWith);
    expect(added.sort()).toEqual([
      "almond-drink-unsweetened",
      "milk-whole-vitamin-d",
      "rice-drink-unsweetened",
      "soya-drink-unsweetened-fortified",
    ]);
    for (const id of starterFoods.ids)
      if (
        /with added|fortified/.test(starterFoods.get(id).name) &&
        !/not fortified/.test(starterFoods.get(id).name)
      )
        expect(added).toContain(id);
    expect(
      errorOf(() =>
        borrow(starterFoods.with([food("milk", {}, { state: "as sold" })]), {
          into: "milk",
          from: "milk-whole-vitamin-d",
          components: ["vitaminD"],
        }),
      ).faults[0]?.message,
    ).toMatch(/added/);
  });
});

describe("borrow refuses", () => {
  const faults = (input: Partial<BorrowOptions>): string[] =>
    errorOf(() => borrow(table, { ...how, ...input })).faults.map(
      (f) => `${f.code} ${f.path.join(".")}: ${f.message}`,
    );

  it("what may not be borrowed, all at once and each with its reason", () => {
    const asked = [
      "potassium",
      "copper",
      "vitaminC",
      "zinc",
      "selenium",
      "folicAcid",
      "water",
      "energy",
      "iron",
      "vitamin-x" as ComponentId,
    ] as const;
    expect(faults({ components: asked })).toEqual([
      expect.stringMatching(/^component-unknown components.9/),
      "borrow-refused components.0: potassium: silent has a figure of its own",
      "borrow-refused components.1: copper: lender has borrowed it itself",
      "borrow-refused components.2: vitaminC: lender has no more than a limit of it",
      "borrow-refused components.3: zinc: lender has no more than a limit of it",
      "borrow-refused components.4: selenium: lender does not give it either",
      "borrow-refused components.5: folicAcid: folic acid is only ever added, by maker and country",
      "borrow-refused components.6: water: water follows from the rest and is not borrowed",
      "borrow-refused components.7: energy: energy follows from the rest and is not borrowed",
    ]);
  });

  it("what would go by a figure that is itself borrowed or a limit, or by nothing", () => {
    const asked = { ...how, components: ["leucine"] } as const;
    for (const protein of [{ value: 4, borrowedFrom: "elsewhere" }, { below: 4 }, "trace"] as const)
      expect(
        errorOf(() => borrow(foodTable([lender, { ...silent, per100g: { protein } }]), asked)).message,
      ).toMatch(/the protein of silent is not known/);
    const none = { ...lender, per100g: { ...lender.per100g, protein: 0 } };
    expect(errorOf(() => borrow(foodTable([none, silent]), asked)).message).toMatch(
      /lender has no protein to go by/,
    );
  });

  it("other states, unless told, and states that are not stated", () => {
    const cooked = foodTable([lender, { ...silent, state: "cooked" }]);
    expect(errorOf(() => borrow(cooked, how))).toMatchObject({ code: "borrow-refused", path: ["from"] });
    expect(inGrams(borrow(cooked, { ...how, acrossStates: true }).get("silent"), "leucine")).toBe("0.3");
    const { state: _, ...unstated } = silent;
    expect(errorOf(() => borrow(foodTable([lender, unstated]), how)).message).toMatch(/of none/);
    const { state: __, ...lenderUnstated } = lender;
    expect(errorOf(() => borrow(foodTable([lenderUnstated, unstated]), how)).path).toEqual(["from"]);
  });

  it.each([
    ["an unknown food", { from: "nobody" }, "food-unknown from"],
    ["itself", { from: "silent" }, "borrow-refused from"],
    ["a basis that is none", { basis: "volume" as "weight" }, "borrow-refused basis"],
  ])("%s", (_, input, expected) => {
    expect(faults(input as Partial<BorrowOptions>)[0]?.startsWith(expected)).toBe(true);
  });

  it("a lender with nothing to lend, and says how to find one", () => {
    const bare = foodTable([silent, food("bare", { water: 1 })]);
    expect(errorOf(() => borrow(bare, { into: "silent", from: "bare" }))).toMatchObject({
      code: "borrow-refused",
      hint: expect.stringMatching(/lenders/),
    });
  });

  it("what is no request", () => {
    for (const bad of [undefined, null, 3, { into: "silent", from: "lender", components: "iron" }])
      expect(errorOf(() => borrow(table, bad as unknown as BorrowOptions)).code).toBe("borrow-refused");
  });
});

describe("borrowing, as a property", () => {
  const raw = starterFoods.ids.filter((id) => starterFoods.get(id).state === "raw");
  const pairs = fc.tuple(fc.constantFrom(...raw), fc.constantFrom(...raw)).filter(([a, b]) => a !== b);
  const hidden = fc.uniqueArray(fc.constantFrom(...componentIds), { minLength: 1, maxLength: 20 });
  const without = (id: string, ids: readonly ComponentId[]): FoodInput => {
    const per100g = { ...starterFoods.get(id).per100g };
    for (const each of ids) delete per100g[each];
    return { ...starterFoods.get(id), per100g };
  };

  it("keeps what amino acids are to protein, fatty acids to fat, and the rest to dry matter; known figures stay", () => {
    fc.assert(
      fc.property(pairs, hidden, ([a, b], ids) => {
        const into = without(a, ids);
        const before = starterFoods.with([into]);
        let after: FoodInput;
        try {
          after = borrow(before, { into: a, from: b }).get(a);
        } catch (error) {
          expect(error).toMatchObject({ code: "borrow-refused" });
          return;
        }
        const from = starterFoods.get(b);
        for (const id of componentIds) {
          const figure = readFigure(after, id);
          if (into.per100g[id] !== undefined) {
            expect(after.per100g[id]).toEqual(into.per100g[id]);
            continue;
          }
          if (figure.kind !== "borrowed") continue;
          // What the lender has borrowed itself, here or in its source, goes no further.
          expect(figureMarks(readFigure(from, id))).not.toContain("borrowed");
          expect(ids.includes(id) || starterFoods.get(a).per100g[id] === undefined).toBe(true);
          const { group } = components[id];
          const base = (f: FoodInput): Exact =>
            group === "aminoAcid"
              ? value(f, "protein")
              : group === "fattyAcid"
                ? value(f, "fat")
                : minus(fraction(100n), value(f, "water"));
          const weighed = into.per100g.water === undefined && group !== "aminoAcid" && group !== "fattyAcid";
          const [mine, theirs] = weighed
            ? [figure.value, value(from, id)]
            : [times(figure.value, base(from)), times(value(from, id), base(into))];
          expect([id, compareRatios(mine, theirs)]).toEqual([id, 0]);
        }
      }),
      { numRuns: runs(150) },
    );
  });

  it("brings figures back unchanged from a food's own double", () => {
    fc.assert(
      fc.property(fc.constantFrom(...raw), hidden, (id, ids) => {
        const kept = ids.filter((each) => !["protein", "fat", "water", "energy", "folicAcid"].includes(each));
        const twin = { ...starterFoods.get(id), id: "twin" };
        const lends = (each: ComponentId): boolean =>
          !figureMarks(readFigure(twin, each)).includes("borrowed");
        const given = kept.filter((each) => twin.per100g[each] !== undefined && lends(each));
        if (given.length === 0) return;
        const back = borrow(starterFoods.with([without(id, given), twin]), { into: id, from: "twin" }).get(
          id,
        );
        for (const each of given) {
          // Amino acids of a food with no protein have nothing to go by, and are presumed zero anyway.
          const read = readFigure(back, each);
          expect([each, exactText(read.value)]).toEqual([each, inGrams(twin, each)]);
        }
      }),
      { numRuns: runs(150) },
    );
  });

  it("never passes on what a food's own source has borrowed", () => {
    // SR28, NDB 16069: amino acids by protein from lentils boiled (BFPN, Ref_NDB_No 16070).
    const mine = food("mine", { water: 8, protein: 25, fat: 1 });
    const table = starterFoods.with([{ ...mine, state: "dry" }]);
    const asked = { into: "mine", from: "lentils-dry", components: ["lysine"] } as const;
    expect(errorOf(() => borrow(table, asked)).message).toMatch(/lentils-dry has borrowed it itself/);
    expect(lenders(table, "mine", { components: ["lysine"] }).map(({ id }) => id)).not.toContain(
      "lentils-dry",
    );
  });

  it("never passes a figure on twice", () => {
    const once = borrow(foodTable([lender, silent, food("third", { water: 80, protein: 4, fat: 1 })]), how);
    expect(
      errorOf(() => borrow(once, { into: "third", from: "silent", components: ["iron"] })).message,
    ).toMatch(/borrowed it itself/);
    expect(Object.keys(borrow(once, { into: "third", from: "silent" }).get("third").per100g)).not.toContain(
      "iron",
    );
  });
});

describe("lenders", () => {
  const ids = (...args: Parameters<typeof lenders>): string[] => lenders(...args).map((l) => l.id);
  const farm = food(
    "farm-oats",
    { protein: 12, fat: "7.1", fibre: 10, ash: "1.9", water: 11 },
    { state: "dry", group: "grains" },
  );
  const mine = starterFoods.with([farm]);

  it("puts the food's own kind first", () => {
    expect(ids(mine, "farm-oats", { most: 1 })).toEqual(["oats-rolled-dry"]);
    expect(ids(mine, "farm-oats").length).toBe(5);
  });

  it("keeps to the state unless told, and puts the same group first", () => {
    const all = lenders(mine, "farm-oats", { most: 500 });
    expect(new Set(all.map((l) => l.state))).toEqual(new Set(["dry"]));
    const flags = all.map((l) => l.sameGroup);
    expect(flags).toEqual([...flags].sort((a, b) => Number(b) - Number(a)));
    expect(lenders(mine, "farm-oats", { most: 500, acrossStates: true }).length).toBeGreaterThan(all.length);
  });

  it("ranks by distance within a group, says what was compared, and lists only what borrow would take", () => {
    const all = lenders(mine, "farm-oats", { most: 500 });
    for (const flag of [true, false]) {
      const distances = all.filter((l) => l.sameGroup === flag).map((l) => l.distance.toNumber());
      expect(distances).toEqual([...distances].sort((a, b) => a - b));
    }
    expect(all[0]?.compared).toEqual(["protein", "fat", "fibre", "ash"]);
    for (const { id, lends } of all.slice(0, 8)) {
      const after = borrow(mine, { into: "farm-oats", from: id }).get("farm-oats");
      const got = componentIds.filter((c) => readFigure(after, c).kind === "borrowed");
      expect(got).toEqual(lends);
    }
  });

  it("is the same in whatever order the foods stand", () => {
    const twins = mine.with([
      { ...mine.get("oats-rolled-dry"), id: "a-twin" },
      { ...mine.get("oats-rolled-dry"), id: "z-twin" },
    ]);
    const turned = foodTable([...twins.ids].reverse().map((id) => twins.get(id)));
    expect(ids(turned, "farm-oats", { most: 3 })).toEqual(["a-twin", "oats-rolled-dry", "z-twin"]);
    expect(ids(twins, "farm-oats", { most: 3 })).toEqual(["a-twin", "oats-rolled-dry", "z-twin"]);
    const back = foodTable([...mine.ids].reverse().map((id) => mine.get(id)));
    expect(ids(back, "farm-oats", { most: 50 })).toEqual(ids(mine, "farm-oats", { most: 50 }));
  });

  it("compares what both know, not limits, traces or what was borrowed", () => {
    const unsure = {
      protein: 12,
      fat: "7.1",
      fibre: 10,
      ash: { below: 2 },
      sugars: "trace",
      starch: { value: 50, borrowedFrom: "x" },
      water: 11,
    } as const;
    const table = starterFoods.with([food("farm-oats", unsure, { state: "dry" })]);
    expect(lenders(table, "farm-oats")[0]?.compared).toEqual(["protein", "fat", "fibre"]);
  });

  it("finds none for a food of which too little is known, and names a food that is not there", () => {
    expect(lenders(starterFoods.with([food("x", { protein: 1 })]), "x")).toEqual([]);
    expect(errorOf(() => lenders(starterFoods, "nobody")).code).toBe("food-unknown");
    expect(errorOf(() => lenders(mine, "farm-oats", { components: ["mithril" as ComponentId] })).code).toBe(
      "component-unknown",
    );
  });

  it("measures as the mean difference of dry matter, by hand", () => {
    // Of 50 g and 20 g of solids: protein 20 and 25, fat 10 and 10, ash 4 and 7.5 per 100 g of solids: (5 + 0 + 3.5) / 3.
    const pair = foodTable([
      food("a", { water: 50, protein: 10, fat: 5, ash: 2 }),
      food("b", { water: 80, protein: 5, fat: 2, ash: "1.5", iron: 1 }),
    ]);
    const [only] = lenders(pair, "a");
    expect(only?.distance.toFixed(4)).toBe("2.8333");
    expect(only).toMatchObject({ by: "dry matter", lends: ["iron"] });
  });
});
