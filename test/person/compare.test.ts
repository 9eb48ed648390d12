import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { ComponentId } from "../../src/food/components.ts";
import type { Figure, FoodInput } from "../../src/food/food.ts";
import { foodFromLabel } from "../../src/food/label.ts";
import { foodTable } from "../../src/food/table.ts";
import { starterFoods } from "../../src/foods.ts";
import { compare } from "../../src/person/compare/compare.ts";
import type { Comparison, ComparisonRow } from "../../src/person/compare/comparison.ts";
import { labelReference } from "../../src/person/intakes/labelReference.ts";
import { type ReferenceIntakes, referenceIntakes } from "../../src/person/intakes/referenceIntakes.ts";
import type { Person } from "../../src/person/person.ts";
import { sheet } from "../../src/sheet/build.ts";
import type { Sheet } from "../../src/sheet/sheet.ts";
import { toCsv } from "../../src/show/csv.ts";
import { toRecords } from "../../src/show/records.ts";
import { toText } from "../../src/show/text.ts";
import { errorOf } from "../number/errorOf.ts";
import { runs } from "../runs.ts";

const woman: Person = { sex: "female", age: 30, mass: "60 kg", height: "1.70 m", activity: "active" };
const man: Person = { sex: "male", age: 30, mass: "80 kg", height: "1.80 m", activity: "active" };

type Figures = { readonly [C in ComponentId]?: Figure };

const food = (id: string, per100g: Figures, more: Partial<FoodInput> = {}): FoodInput => ({
  id,
  name: id,
  source: "made up for a test",
  per100g,
  ...more,
});

/** 100 g of each food, one portion. */
function dish(...foods: readonly FoodInput[]): Sheet {
  const lines = foods.map(({ id }) => ({ key: id, food: id, amount: "100 g" }));
  return sheet({ name: "Dish", portions: 1, lines }, foodTable(foods));
}

function row(s: Sheet, intakes: ReferenceIntakes, id: ComponentId): ComparisonRow {
  const found = compare(s, intakes).get(id);
  if (!found) throw new Error(`no row for ${id}`);
  return found;
}

/** Share and verdict of a reference, the share as exact text. */
function reference(s: Sheet, intakes: ReferenceIntakes, id: ComponentId): unknown {
  const held = row(s, intakes, id).reference;
  return held && [held.share?.toString(), held.bound, held.verdict];
}

function upper(s: Sheet, intakes: ReferenceIntakes, id: ComponentId): unknown {
  const held = row(s, intakes, id).upper;
  return held && [held.share?.toString(), held.bound, held.verdict];
}

describe("a portion's share of a day", () => {
  it("is its amount over the figure, worked by hand", () => {
    // UK RNI for women of 19 to 50: iron 14.8 mg, calcium 700 mg, vitamin C 40 mg (COMA 1991).
    const s = dish(food("a", { iron: "3.7", calcium: 700, vitaminC: "50" }));
    const uk = referenceIntakes("uk", woman);
    expect(reference(s, uk, "iron")).toEqual(["0.25", "point", "part"]);
    expect(reference(s, uk, "calcium")).toEqual(["1", "point", "whole"]);
    expect(reference(s, uk, "vitaminC")).toEqual(["1.25", "point", "whole"]);
  });

  it("of a man and a woman is of their own figures: vitamin A 900 and 700 µg, UK vitamin E 4 and 3 mg", () => {
    // Institute of Medicine 2001; COMA 1991.
    const s = dish(food("a", { vitaminARae: 630, vitaminE: "1.2" }));
    const shares = (p: Person): unknown[] => [
      reference(s, referenceIntakes("us", p), "vitaminARae"),
      reference(s, referenceIntakes("uk", p), "vitaminE"),
    ];
    expect(shares(man)).toEqual([
      ["0.7", "point", "part"],
      ["0.3", "at-least", "not-proven"],
    ]);
    expect(shares(woman)).toEqual([
      ["0.9", "point", "part"],
      ["0.4", "at-least", "not-proven"],
    ]);
  });

  it("of one meal can be a whole day's of a B vitamin, and is a share all the same", () => {
    // A fact of the trade: one meal can bring a third to all of a day's B vitamins.
    const s = sheet(
      {
        name: "Salmon and lentils",
        portions: 1,
        lines: [
          { food: "salmon-farmed-baked", amount: "180 g" },
          { food: "lentils-boiled", amount: "150 g" },
        ],
      },
      starterFoods,
    );
    const c = compare(s, referenceIntakes("us", woman));
    const b12 = c.get("vitaminB12")?.reference;
    expect(b12?.verdict).toBe("whole");
    expect(Number(b12?.share)).toBeGreaterThan(1);
    expect(toText(c)).not.toMatch(/\b(?:pass|fail|ok|good|bad|deficien|adequate\b(?! intake))/i);
  });
});

describe("like is held against like", () => {
  it("vitamin A: activity equivalents in the US, retinol equivalents in the UK and EU", () => {
    // Retinol 300 µg and beta-carotene 4,800 µg: RAE 300 + 4800/12 = 700, RE 300 + 4800/6 = 1100.
    const s = dish(food("a", { retinol: 300, betaCarotene: 4800, alphaCarotene: 0, betaCryptoxanthin: 0 }));
    expect(reference(s, referenceIntakes("us", woman), "vitaminARae")).toEqual(["1", "point", "whole"]);
    const uk = row(s, referenceIntakes("uk", woman), "vitaminARe").reference;
    expect([uk?.amount.value.toString(), uk?.figure.value.toString()]).toEqual(["1100", "600"]);
  });

  it("folate: plain in the UK, dietary folate equivalents in the US and EU", () => {
    // 100 µg of food folate and 100 µg of folic acid: 200 µg plain, 100 + 1.7 x 100 = 270 µg DFE.
    const s = dish(food("a", { foodFolate: 100, folicAcid: 100 }));
    expect(reference(s, referenceIntakes("uk", woman), "folate")).toEqual(["1", "point", "whole"]);
    // 270 over 330 µg DFE (EFSA 2014).
    const eu = row(s, referenceIntakes("eu", woman), "folateDfe").reference;
    expect([eu?.amount.value.toString(), eu?.share?.toFixed(4)]).toEqual(["270", "0.8182"]);
  });

  it("niacin: with a sixtieth of tryptophan", () => {
    // 5 mg of niacin and 0.24 g of tryptophan: 5 + 240/60 = 9 mg; the UK's 13 mg for women.
    const s = dish(food("a", { niacin: 5, tryptophan: "0.24", protein: 20 }));
    const held = row(s, referenceIntakes("uk", woman), "niacinEquivalents").reference;
    expect([held?.amount.value.toString(), held?.share?.toFixed(6)]).toEqual(["9", "0.692308"]);
  });

  it("thiamin of the EU per megajoule, protein per kilogram", () => {
    // 0.1 mg per MJ at 2,390.057 kcal (10 MJ) is 1 mg; 0.83 g x 60 kg = 49.8 g.
    const eu = referenceIntakes("eu", woman, { energy: "2390.0573613766730401529636711281" });
    const s = dish(food("a", { thiamin: "0.25", protein: "24.9", energy: 500 }));
    const thiamin = row(s, eu, "thiamin").reference;
    expect(thiamin?.share?.toFixed(8)).toBe("0.25000000");
    expect(reference(s, eu, "protein")).toEqual(["0.5", "point", "part"]);
  });

  it("EPA and DHA together", () => {
    // EFSA 2010: 250 mg a day of the two.
    const eu = referenceIntakes("eu", woman);
    expect(reference(dish(food("a", { epa: "0.05", dha: "0.15", fat: 5 })), eu, "epa")).toEqual([
      "0.8",
      "point",
      "part",
    ]);
    const dhaOnly = reference(dish(food("a", { dha: "0.15", fat: 5 })), eu, "dha");
    expect(dhaOnly).toEqual(["0.6", "at-least", "not-proven"]);
  });

  it("energy against the person's own need", () => {
    const energy = row(
      dish(food("a", { energy: 600 })),
      referenceIntakes("uk", woman, { energy: 2400 }),
      "energy",
    );
    expect([energy.reference?.figure.kind, energy.reference?.share?.toString()]).toEqual([
      "energy need",
      "0.25",
    ]);
    const none = compare(
      dish(food("a", { energy: 600 })),
      referenceIntakes("uk", { ...woman, activity: undefined as never }),
    );
    expect(none).toBeDefined();
  });

  it("with label values, for those who write labels", () => {
    // Regulation (EU) No 1169/2011, Annex XIII: vitamin C 80 mg, salt 6 g.
    const c = compare(dish(food("a", { vitaminC: 20, sodium: 600 })), labelReference("eu"));
    expect(c.get("vitaminC")?.reference?.share?.toString()).toBe("0.25");
    expect(c.get("salt")?.reference?.share?.toString()).toBe("0.25");
    expect(c.balance.every(({ range }) => range === undefined)).toBe(true);
    expect(toText(c)).toContain("label reference values");
  });
});

describe("upper levels", () => {
  const eu = referenceIntakes("eu", woman);

  it("of vitamin A are held against retinol alone, of folate against folic acid alone", () => {
    // A carrot's worth of carotene, and folate of greens, come nowhere near.
    const greens = dish(
      food("a", {
        retinol: 0,
        betaCarotene: 50000,
        alphaCarotene: 0,
        betaCryptoxanthin: 0,
        folate: 5000,
        folicAcid: 0,
      }),
    );
    expect(upper(greens, eu, "retinol")).toEqual(["0", "point", "under"]);
    expect(upper(greens, eu, "folicAcid")).toEqual(["0", "point", "under"]);
    expect(row(greens, eu, "vitaminARe").upper).toBeUndefined();
    // 3,000 µg: liver passes it.
    expect(upper(dish(food("a", { retinol: 9000 })), eu, "retinol")).toEqual(["3", "point", "past"]);
  });

  it("of supplements are not held against food: magnesium of food above the US level is no alarm", () => {
    const us = referenceIntakes("us", man);
    const s = dish(food("a", { magnesium: 600 }));
    const held = row(s, us, "magnesium").upper;
    expect([held?.verdict, held?.share, held?.figure.value.toString()]).toEqual([
      "other-sources",
      undefined,
      "350",
    ]);
    expect(compare(s, us).past).toEqual([]);
  });

  it("of fortified food are held against what the fortified lines hold at most", () => {
    // US UL for niacin, 35 mg, from supplements and fortified food.
    const us = referenceIntakes("us", man);
    const flakes = (niacin: number): FoodInput => food("flakes", { niacin }, { fortifiedWith: ["niacin"] });
    expect(upper(dish(flakes(20), food("tuna", { niacin: 90 })), us, "niacin")).toEqual([
      "0.57142857142857142857",
      "at-most",
      "under",
    ]);
    const rounded = { value: 34, low: 33, high: 36 };
    expect(
      upper(dish(food("f", { niacin: rounded }, { fortifiedWith: ["niacin"] })), us, "niacin"),
    ).toMatchObject([expect.any(String), "between", "may-be-past"]);
    expect(upper(dish(flakes(40)), us, "niacin")).toMatchObject([
      expect.any(String),
      "at-most",
      "may-be-past",
    ]);
    expect(upper(dish(food("flakes", {}, { fortifiedWith: ["niacin"] })), us, "niacin")).toEqual([
      undefined,
      "unknown",
      "not-proven",
    ]);
    expect(upper(dish(food("tuna", { niacin: 90 })), us, "niacin")).toEqual([
      undefined,
      "unknown",
      "other-sources",
    ]);
  });

  it("are past where what is known is past, silent lines or not; and under only where all is known", () => {
    // EFSA 2023: selenium 255 µg.
    const rich = food("rich", { selenium: 300 });
    const poor = food("poor", { selenium: 100 });
    const silent = food("silent", {});
    expect(upper(dish(rich), eu, "selenium")).toMatchObject([expect.any(String), "point", "past"]);
    expect(upper(dish(rich, silent), eu, "selenium")).toMatchObject([expect.any(String), "at-least", "past"]);
    expect(upper(dish(poor), eu, "selenium")).toMatchObject([expect.any(String), "point", "under"]);
    expect(upper(dish(poor, silent), eu, "selenium")).toMatchObject([
      expect.any(String),
      "at-least",
      "not-proven",
    ]);
    expect(upper(dish(silent), eu, "selenium")).toEqual([undefined, "unknown", "not-proven"]);
    expect(upper(dish(poor, food("t", { selenium: "trace" })), eu, "selenium")).toMatchObject([
      expect.any(String),
      "at-least",
      "not-proven",
    ]);
  });

  it("exactly met are not past: a level is the most that is safe, itself included", () => {
    expect(upper(dish(food("a", { selenium: 255 })), eu, "selenium")).toEqual(["1", "point", "under"]);
    expect(upper(dish(food("a", { selenium: "255.0001" })), eu, "selenium")).toMatchObject([
      expect.any(String),
      "point",
      "past",
    ]);
  });

  it("heed limits of detection and rounding", () => {
    const most = (selenium: Figure): unknown => upper(dish(food("a", { selenium })), eu, "selenium");
    expect(most({ below: 200 })).toMatchObject([expect.any(String), "at-least", "under"]);
    expect(most({ below: 300 })).toMatchObject([expect.any(String), "at-least", "may-be-past"]);
    expect(most({ value: 260, low: 250, high: 270 })).toMatchObject([
      expect.any(String),
      "point",
      "may-be-past",
    ]);
    expect(most({ value: 280, low: 270, high: 290 })).toMatchObject([expect.any(String), "point", "past"]);
    expect(most({ value: 240, low: 230, high: 250 })).toMatchObject([expect.any(String), "point", "under"]);
  });

  it("are shown beside both ends of a range, and the words go with the figures", () => {
    // SCF 2002: iodine 600 µg. Surveys: 4,439 to 184,200 µg of iodine in 100 g of raw kelp.
    const kelp = { key: "kelp", food: "kelp-raw", amount: "1.7 g" };
    const rice = { key: "rice", food: "rice-white-long-boiled", amount: "200 g" };
    const of = (...lines: (typeof kelp)[]): Comparison =>
      compare(sheet({ name: "Dinner", portions: 1, lines }, starterFoods), eu, { components: ["iodine"] });
    const [told, silent] = [of(kelp), of(kelp, rice)];
    expect([told, silent].map((c) => c.get("iodine")?.upper?.verdict)).toEqual([
      "may-be-past",
      "may-be-past",
    ]);
    expect(told.mayBePast.length).toBe(1);
    expect(toText(told, { width: 120 })).toMatch(
      /75\.4 to 3132 µg +600 µg, UL +12 to 522 +may be past the level/,
    );
    expect(toText(silent, { width: 120 })).toMatch(
      /at least 75\.4 µg +600 µg, UL +at least 12 +may be past the level/,
    );
    expect(toText(silent)).toContain("what is told makes 75.4 to 3132 µg, and what is not told comes on top");
    const [record] = toRecords(silent).filter(
      ({ against, what }) => against === "upper-level" && what === "eaten",
    );
    // A middle figure, so that amounts add up; what it lies between stands beside it.
    expect(record).toMatchObject({ amount: 790.211, bound: "between", least: 75.463, most: null });
  });

  it("past by the low end of a range are past, and under by its high end are under", () => {
    fc.assert(
      fc.property(fc.array(fc.integer({ min: 0, max: 700 }), { minLength: 3, maxLength: 3 }), (three) => {
        const [low = 0, value = 0, high = 0] = [...three].sort((a, b) => a - b);
        const s = dish(food("a", { selenium: { value, low, high } }));
        const verdict = low > 255 ? "past" : high <= 255 ? "under" : "may-be-past";
        expect(compare(s, eu).get("selenium")?.upper?.verdict).toBe(verdict);
      }),
      { numRuns: runs(60) },
    );
  });

  it("take a silent part for no more than its whole", () => {
    // Retinol is part of retinol activity equivalents, folic acid of folate.
    const s = dish(food("a", { vitaminARae: 500, folate: 300 }));
    expect(upper(s, eu, "retinol")).toEqual([undefined, "unknown", "under"]);
    expect(upper(s, eu, "folicAcid")).toEqual([undefined, "unknown", "under"]);
    expect(upper(dish(food("a", { vitaminARae: 5000 })), eu, "retinol")).toEqual([
      undefined,
      "unknown",
      "may-be-past",
    ]);
  });

  it("of caffeine are per kilogram for the young: 3 mg for each (EFSA 2015)", () => {
    const s = dish(food("coffee", { caffeine: 95 }));
    const of = (p: Person): string | undefined =>
      row(s, referenceIntakes("eu", p), "caffeine").upper?.figure.value.toString();
    expect([woman, { ...woman, pregnant: 2 as const }, { ...woman, age: 16, mass: "50 kg" }].map(of)).toEqual(
      ["400", "200", "150"],
    );
  });
});

describe("a packet's figures", () => {
  it("count with the interval that their rounding allows", () => {
    // 21 CFR 101.9(c)(4): sodium above 140 mg is rounded to 10 mg, so that 2,300 may be 2,295 to 2,305;
    // National Academies 2019: 2,300 mg a day.
    const us = referenceIntakes("us", man);
    const verdict = (sodium: string): unknown => {
      const soup = foodFromLabel({
        id: "soup",
        name: "Soup",
        style: "us",
        per: "100 g",
        figures: { sodium },
      });
      return upper(dish(soup), us, "sodium");
    };
    expect(verdict("2300 mg")).toEqual(["1", "point", "may-be-past"]);
    expect(verdict("2290 mg")).toMatchObject([expect.any(String), "point", "under"]);
    expect(verdict("2310 mg")).toMatchObject([expect.any(String), "point", "past"]);
    expect(verdict("0 mg")).toEqual(["0", "at-least", "under"]);
  });
});

describe("several meals", () => {
  const breakfast = dish(food("a", { iron: "3.7" }));
  const supper = dish(food("b", { iron: "7.4" }), food("c", {}));
  const uk = referenceIntakes("uk", woman);

  it("are added up, their silent lines named by meal", () => {
    const c = compare({ breakfast, supper }, uk);
    const iron = c.get("iron")?.reference;
    expect([iron?.share?.toString(), iron?.bound, iron?.verdict]).toEqual(["0.75", "at-least", "not-proven"]);
    expect(iron?.amount.missing).toEqual(["supper/c"]);
    expect(toText(c)).toContain("breakfast, supper: together");
  });

  it("may come as a list, a map or one by one", () => {
    const asMap = compare(
      new Map([
        ["breakfast", breakfast],
        ["supper", supper],
      ]),
      uk,
    );
    const asList = compare([breakfast, supper], uk);
    expect(asMap.get("iron")?.reference?.share?.toString()).toBe("0.75");
    expect(asList.get("iron")?.reference?.share?.toString()).toBe("0.75");
    expect(asList.get("iron")?.reference?.amount.missing).toEqual(["Dish (2)/c"]);
    expect(compare([breakfast], uk).get("iron")?.reference?.share?.toString()).toBe("0.25");
  });

  it("count one portion each", () => {
    const four = sheet(
      { name: "For four", portions: 4, lines: [{ key: "a", food: "a", amount: "400 g" }] },
      foodTable([food("a", { iron: "3.7" })]),
    );
    expect(compare({ four, breakfast }, uk).get("iron")?.reference?.share?.toString()).toBe("0.5");
  });
});

describe("the balance of energy", () => {
  // Protein 25 g, fat 20 g, carbohydrate 55 g: 100 + 180 + 220 = 500 kcal by 4, 9 and 4.
  const plate = food("plate", {
    energy: 500,
    protein: 25,
    fat: 20,
    carbohydrateByDifference: 55,
    alcohol: 0,
    saturatedFat: 5,
    fibre: 7,
    addedSugars: 10,
    linoleicAcid: 2,
    alphaLinolenicAcid: "0.5",
    omega6: 2,
    omega3: "0.5",
    sodium: 230,
    potassium: 391,
  });

  it("is worked by hand, beside the ranges of each authority", () => {
    const c = compare(dish(plate), referenceIntakes("us", woman));
    const of = (name: string): unknown => {
      const found = c.balance.find((each) => each.of === name);
      return found && [found.share?.toString(), found.verdict];
    };
    // Ranges of the Institute of Medicine 2002/2005: 10-35, 20-35, 45-65 %, 5-10 %, 0.6-1.2 %; guidelines: under 10 %.
    expect(of("protein")).toEqual(["0.2", "within"]);
    expect(of("fat")).toEqual(["0.36", "over"]);
    expect(of("carbohydrate")).toEqual(["0.44", "under"]);
    expect(of("saturatedFat")).toEqual(["0.09", "within"]);
    expect(of("addedSugars")).toEqual(["0.08", "within"]);
    expect(of("linoleicAcid")).toEqual(["0.036", "under"]);
    expect(of("alphaLinolenicAcid")).toEqual(["0.009", "within"]);
  });

  it("never takes added sugars for all free sugars", () => {
    const of = (addedSugars: number): unknown => {
      const c = compare(dish(food("p", { ...plate.per100g, addedSugars })), referenceIntakes("uk", woman));
      const found = c.balance.find((each) => each.of === "freeSugars");
      return found && [found.bound, found.verdict];
    };
    // SACN 2015: at most 5 %; 10 g of 500 kcal is 8 %.
    expect(of(10)).toEqual(["at-least", "over"]);
    expect(of(2)).toEqual(["at-least", "not-proven"]);
  });

  it("has ratios, worked by hand", () => {
    const ratios = compare(dish(plate), referenceIntakes("eu", woman)).ratios;
    const of = (id: string): string | undefined => ratios.find((each) => each.id === id)?.value?.toFixed(3);
    expect(of("n6-to-n3")).toBe("4.000");
    // 230 mg of sodium and 391 mg of potassium: 10.004 and 10.001 mmol.
    expect(of("sodium-to-potassium")).toBe("1.000");
    expect(of("fibre-per-1000-kcal")).toBe("14.000");
  });

  it("proves nothing of what is silent, and divides by nothing", () => {
    const c = compare(dish(plate, food("silent", {})), referenceIntakes("us", woman));
    expect(c.balance.find(({ of }) => of === "protein")?.verdict).toBe("not-proven");
    expect(c.ratios.every(({ value }) => value === undefined)).toBe(true);
    const water = compare(
      dish(food("water", { energy: 0, protein: 0, fat: 0, carbohydrateByDifference: 0, alcohol: 0 })),
      referenceIntakes("us", woman),
    );
    expect(water.balance).toEqual([]);
  });
});

describe("a comparison shown", () => {
  const s = sheet(
    {
      name: "Lentils, kale and rice",
      portions: 2,
      lines: [
        { key: "lentils", food: "lentils-boiled", amount: "300 g" },
        { key: "kale", food: "kale-raw", amount: "100 g" },
        { key: "rice", food: "rice-white-long-boiled", amount: "300 g" },
      ],
    },
    starterFoods,
  );
  const coach: Person = { ...man, conditions: ["warfarin", "kidney-disease"] };
  const c = compare(s, referenceIntakes("uk", coach));

  it("says what is known, what is not, and never a verdict on a person", () => {
    const text = toText(c, { width: 110 });
    expect(text).toMatch(/iron +[\d.]+ mg +8\.7 mg, RNI +\d+ +part of a day's/);
    // A figure that was not read at its source is marked, one that was is not, and the mark is explained once.
    expect(text).toMatch(/linoleic acid .* g, population goal u +\d/);
    expect(text.match(/u: unverified/g)).toHaveLength(2);
    expect(text).toMatch(/iodine +\? +140 µg, RNI +\? +not proven/);
    expect(text).toMatch(/no .*iodine.* data: lentils, kale, rice/);
    expect(text).toContain("licensed practitioner");
    expect(text).toMatch(/only supplements or what is added count towards the level of [\s\S]*zinc/);
    expect(text).toMatch(/kale +warfarin +On warfarin/);
    expect(text).toMatch(/kidney disease +Kidney disease/);
  });

  it("is records of what was eaten, each figure of a day, and the share of it", () => {
    const records = toRecords(c);
    const of = (component: string, what: string): (typeof records)[number] | undefined =>
      records.find((r) => r.component === component && r.against === "reference" && r.what === what);
    expect(new Set(records.map((r) => r.against))).toEqual(new Set(["reference", "upper-level", null]));
    expect(of("iron", "reference")).toMatchObject({ amount: 8.7, unit: "mg", kind: "RNI", bound: "point" });
    expect(of("iron", "eaten")).toMatchObject({ bound: "point", verdict: "part", coverage: 1 });
    expect(Number(of("iron", "share")?.amount)).toBeCloseTo(Number(of("iron", "eaten")?.amount) / 8.7, 12);
    expect(of("iodine", "share")).toMatchObject({ amount: null, verdict: "not-proven", coverage: 0 });
    expect(of("iodine", "eaten")).toMatchObject({ amount: null, bound: "unknown" });
    for (const { what, source, bound } of records)
      if ((what === "reference" || what === "upper-level") && bound !== "unknown")
        expect(String(source).length).toBeGreaterThan(10);
  });

  it("looks at only what it is asked for", () => {
    const two = compare(s, referenceIntakes("uk", woman), { components: ["iron", "fibre"] });
    expect(two.rows.map(({ of }) => of[0])).toEqual(["fibre", "iron"]);
    expect(toText(two)).not.toContain("upper levels");
  });

  it("says which figures want the day's energy", () => {
    const eu = compare(s, referenceIntakes("eu", { sex: "female", age: 30, mass: 60 }));
    expect(eu.needEnergy).toContain("thiamin");
    expect(toText(eu)).toContain("no figure without the day's energy: thiamin");
  });

  it("keeps hostile names inert", () => {
    const named = sheet(
      { name: "=cmd|' /C calc'!A0", portions: 1, lines: [{ food: "kale-raw", amount: "10 g" }] },
      starterFoods,
    );
    const csv = toCsv(compare(named, referenceIntakes("uk", woman)), { notes: true });
    expect(csv.split(/\r\n/).every((line) => !/^["']?[=+@]/.test(line))).toBe(true);
  });
});

describe("what is compared", () => {
  it("must be sheets, intakes and components", () => {
    const uk = referenceIntakes("uk", woman);
    const s = dish(food("a", {}));
    for (const eaten of [null, undefined, 5, "s", {}, [], [1], { a: null }, JSON.parse('{"__proto__": 1}')]) {
      expect(errorOf(() => compare(eaten as unknown as Sheet, uk)).code).toBe("comparison-malformed");
    }
    for (const intakes of [null, undefined, {}, "uk", 3]) {
      expect(errorOf(() => compare(s, intakes as unknown as ReferenceIntakes)).code).toBe(
        "comparison-malformed",
      );
    }
    const wrong = errorOf(() =>
      compare(s, uk, { components: ["iorn", "fiber"] as unknown as ComponentId[] }),
    );
    expect(wrong.faults.map(({ code, path }) => [code, path])).toEqual([
      ["component-unknown", ["components", 0]],
      ["component-unknown", ["components", 1]],
    ]);
    expect(errorOf(() => compare(s, uk, { components: "iron" as unknown as ComponentId[] })).code).toBe(
      "comparison-malformed",
    );
    expect(errorOf(() => compare(s, uk).get("iorn" as ComponentId)).code).toBe("component-unknown");
  });
});

describe("pregnancy and breastfeeding", () => {
  const porridge = dish(food("oats", { energy: 380, zinc: 3, vitaminARe: 0, copper: 0.4 }));

  it("that a figure leaves out are named beneath the table", () => {
    const girl = referenceIntakes("eu", { ...woman, age: 17, pregnant: 1 });
    const text = toText(compare(porridge, girl, { components: ["zinc", "copper"] }));
    const said = text.replaceAll(/\s+/g, " ");
    expect(said).toContain(
      "no figure for pregnancy is published here, and what stands leaves it out: zinc, copper",
    );
    // Once with the references, once with the levels.
    expect(said.split("no figure for pregnancy").length).toBe(3);
    const usual = toText(compare(porridge, referenceIntakes("eu", { ...woman, age: 17 })));
    expect(usual).not.toContain("no figure for pregnancy");
  });
});

describe("what no upper level limits", () => {
  const oats = dish(food("oats", { energy: 380, copper: 0.4, vitaminC: 2 }));

  it("is named beneath the levels, or beneath the references where there are none", () => {
    // EVM 2003: copper 10 mg for adults; no level of vitamin C that counts food in the UK.
    const only = { components: ["copper", "vitaminC"] } as const;
    const note = (age: number): string =>
      toText(compare(oats, referenceIntakes("uk", { ...woman, age }), only)).replaceAll(/\s+/g, " ");
    expect(note(30)).toContain("no upper level applies to vitamin C");
    expect(note(15)).toContain("no upper level applies to copper, vitamin C");
    expect(compare(oats, referenceIntakes("uk", { ...woman, age: 15 }), only).withoutUpper).toEqual([
      { of: "copper", forOthers: true },
      { of: "vitaminC", forOthers: false },
    ]);
    expect(compare(oats, labelReference("eu")).withoutUpper).toEqual([]);
  });
});
