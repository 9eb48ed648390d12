import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { ComponentId } from "../../src/food/components.ts";
import type { Figure, FoodInput } from "../../src/food/food.ts";
import { foodTable } from "../../src/food/table.ts";
import { starterFoods } from "../../src/foods.ts";
import { exactText as toFractionText } from "../../src/number/digits.ts";
import { exact, sum } from "../../src/number/exact.ts";
import { compare } from "../../src/person/compare/compare.ts";
import { type DemandsOptions, demandsFor } from "../../src/person/demandsFor.ts";
import { referenceIntakes } from "../../src/person/intakes/referenceIntakes.ts";
import { upperLimits } from "../../src/person/intakes/upperLimits.ts";
import type { Person } from "../../src/person/person.ts";
import { type DoseRow, doseCheck } from "../../src/person/portion/doses.ts";
import { fit } from "../../src/scale/fit.ts";
import { scale } from "../../src/scale/scale.ts";
import { sheet } from "../../src/sheet/build.ts";
import type { Sheet } from "../../src/sheet/sheet.ts";
import { toText } from "../../src/show/text.ts";
import { errorOf } from "../number/errorOf.ts";
import { runs } from "../runs.ts";

const cox: Person = { sex: "female", age: 15, mass: "46 kg", height: "1.58 m", activity: "active" };
const lightweight: Person = { sex: "female", age: 24, mass: "59 kg", height: "1.72 m", activity: "vigorous" };
const heavyweight: Person = { sex: "male", age: 27, mass: "94 kg", height: "1.95 m", activity: "vigorous" };
const crew = {
  heavyweight: referenceIntakes("eu", heavyweight),
  cox: referenceIntakes("eu", cox),
  lightweight: referenceIntakes("eu", lightweight),
};

type Figures = { readonly [C in ComponentId]?: Figure };
const food = (id: string, per100g: Figures): FoodInput => ({
  id,
  name: id,
  source: "made up for a test",
  per100g,
});

/** 10 g of each food the same for everyone, in 100 g of rice. */
function bowl(...foods: readonly FoodInput[]): Sheet {
  const lines = foods.map(({ id }) => ({
    key: id,
    food: id,
    amount: "20 g",
    scaling: "per-portion" as const,
  }));
  return sheet(
    { name: "Bowl", portions: 2, lines: [{ key: "rice", food: "rice", amount: "200 g" }, ...lines] },
    foodTable([...foods, food("rice", { energy: 130, iodine: 900 })]),
  );
}

function row(s: Sheet, of: ComponentId, who: Parameters<typeof doseCheck>[1] = crew): DoseRow {
  const found = doseCheck(s, who).rows.find((each) => each.of === of);
  if (!found) throw new Error(`no row of ${of}`);
  return found;
}

describe("a dose", () => {
  it("of copper is held against EFSA's upper level, whatever the body: the acceptable intake is of a life's mean", () => {
    // SCF 2003: UL of 5 mg for adults. EFSA Scientific Committee 2023: acceptable 0.07 mg per kg, 3.5 mg at 50 kg.
    const at = (mass: string) => referenceIntakes("eu", { sex: "female", age: 30, mass });
    const liver = bowl(food("liver", { copper: 45 }));
    const { people } = row(liver, "copper", { small: at("50 kg"), large: at("90 kg") });
    expect(people.map(({ who, level, verdict }) => [who, level.kind, `${level.value}`, verdict])).toEqual([
      ["small", "UL", "5", "under"],
      ["large", "UL", "5", "under"],
    ]);
    expect(at("50 kg").get("copper").upper?.kind).toBe("UL");
  });

  it("weighs most on the smallest: iodine, against EFSA's levels by age", () => {
    // SCF and EFSA 2018: iodine 500 µg a day at 15 to 17 years, 600 µg for adults.
    const { people, riskiest, amount, grams } = row(bowl(food("kelp", { iodine: 4500 })), "iodine");
    expect(grams.toString()).toBe("10");
    expect(amount.value.toString()).toBe("450");
    expect(riskiest).toBe("cox");
    expect(people.map(({ who, share }) => [who, share?.toString()])).toEqual([
      ["cox", "0.9"],
      ["lightweight", "0.75"],
      ["heavyweight", "0.75"],
    ]);
    expect(people.map(({ perKg }) => perKg?.toFixed(2))).toEqual(["9.78", "7.63", "4.79"]);
  });

  it("is held by itself: what moves with the portion is no dose", () => {
    expect(doseCheck(bowl(food("pepper", { iron: 10 })), crew).rows.map(({ line }) => line)).not.toContain(
      "rice",
    );
    expect(row(bowl(food("pepper", { iodine: 10 })), "iodine").amount.value.toString()).toBe("1");
  });

  it("is no adjustable line, which a fit moves for each", () => {
    const lines = [{ key: "kelp", food: "kelp", amount: "20 g", scaling: "adjustable" as const }];
    const s = sheet({ name: "Bowl", portions: 1, lines }, foodTable([food("kelp", { iodine: 4500 })]));
    expect(doseCheck(s, crew).rows).toEqual([]);
  });

  it("is past where it is proven past, and of unknown content comes first", () => {
    const s = bowl(
      food("kelp", { iodine: 7000 }),
      food("spice", {}),
      food("liver", { retinol: 26500, iodine: 3 }),
    );
    const check = doseCheck(s, crew);
    expect(check.past.map(({ line, of }) => [line, of])).toEqual([
      ["kelp", "iodine"],
      ["liver", "retinol"],
    ]);
    // 2,650 µg is past 2,600 µg at 15 to 17, under 3,000 µg for adults (EFSA 2024).
    const liver = check.rows.find(({ line, of }) => line === "liver" && of === "retinol");
    expect(liver?.people.map(({ who, verdict }) => [who, verdict])).toEqual([
      ["cox", "past"],
      ["lightweight", "under"],
      ["heavyweight", "under"],
    ]);
    expect(check.rows[0]?.people[0].verdict).toBe("not-proven");
    expect(check.notProven.some(({ line, of }) => line === "spice" && of === "iodine")).toBe(true);
  });

  it("heeds intervals, limits and traces", () => {
    const verdict = (iodine: Figure): unknown => row(bowl(food("x", { iodine })), "iodine").people[0].verdict;
    expect(verdict({ value: 4900, low: 4800, high: 5100 })).toBe("may-be-past");
    expect(verdict({ value: 5100, low: 4900, high: 5300 })).toBe("may-be-past");
    expect(verdict({ value: 5200, low: 5100, high: 5300 })).toBe("past");
    expect(verdict({ below: 4000 })).toBe("under");
    expect(verdict({ below: 6000 })).toBe("may-be-past");
    expect(verdict("trace")).toBe("not-proven");
  });

  it("stays what it is however the dish is scaled", () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 50 }), fc.integer({ min: 1, max: 6 }), (factor, portions) => {
        const s = bowl(food("kelp", { iodine: 4500 }));
        const moved = scale(s, { factor: `${factor}/7`, portions }).sheet;
        expect(row(moved, "iodine").people.map((p) => p.share?.toString())).toEqual(
          row(s, "iodine").people.map((p) => p.share?.toString()),
        );
      }),
      { numRuns: runs(30) },
    );
  });

  it("of several meals is named by its meal", () => {
    const s = bowl(food("kelp", { iodine: 4500 }));
    expect(doseCheck({ lunch: s, supper: s }, crew).rows.map(({ line }) => line)).toContain("supper/kelp");
  });

  it("of caffeine is held against 3 mg per kg of the young (EFSA 2015)", () => {
    const { people } = row(bowl(food("coffee", { caffeine: 600 })), "caffeine");
    expect(people.map(({ who, level }) => [who, level.value.toString()])).toEqual([
      ["cox", "138"],
      ["lightweight", "400"],
      ["heavyweight", "400"],
    ]);
  });

  it("stands in a table with people as columns", () => {
    const text = toText(doseCheck(bowl(food("kelp", { iodine: 4500 }), food("salt", { zinc: 1 })), crew), {
      width: 140,
    });
    expect(text).toMatch(/kelp +iodine +450 µg +75% of 600 µg +90% of 500 µg +75% of 600 µg +cox/);
    expect(text).toMatch(/\d+ more, under a twentieth/);
    expect(toText(doseCheck(bowl(food("kelp", { iodine: 4500 })), crew.cox))).not.toContain(
      "Closest to the limit",
    );
  });

  it("of hostile shape is refused", () => {
    const s = bowl(food("kelp", { iodine: 1 }));
    for (const who of [null, {}, [], 5, { cox: 5 }, { cox: {} }, { cox: null }]) {
      expect(errorOf(() => doseCheck(s, who as never)).code).toBe("comparison-malformed");
    }
    expect(errorOf(() => doseCheck(null as never, crew)).code).toBe("comparison-malformed");
  });
});

describe("a dose where an authority has no level at someone's age", () => {
  // EVM 2003 has guidance for adults alone: iodine 940 µg a day. SCF 2002: 500 µg at 15 to 17 years. IOM 2001: 900 µg at 14 to 18.
  const who = {
    cox: referenceIntakes("uk", { ...cox, age: 17 }),
    heavyweight: referenceIntakes("uk", heavyweight),
  };
  const lines = [{ key: "kelp", food: "kelp-raw", amount: "1 metric tsp", scaling: "per-portion" as const }];
  const broth = sheet({ name: "Broth", portions: 1, lines }, starterFoods);

  it("is held against the lowest that another publishes for the age, and says whose that is", () => {
    const { people, riskiest } = row(broth, "iodine", who);
    expect(
      people.map(({ who, level, authority, noLevelBy, verdict }) => [
        who,
        level.value.toString(),
        authority,
        noLevelBy,
        verdict,
      ]),
    ).toEqual([
      ["cox", "500", "eu", "uk", "may-be-past"],
      ["heavyweight", "940", "uk", undefined, "may-be-past"],
    ]);
    expect(riskiest).toBe("cox");
    const check = doseCheck(broth, who);
    expect(check.mayBePast.map(({ of }) => of)).toEqual(["iodine"]);
    expect(check.notProven.map(({ of }) => of)).toContain("iodine");
    // 5 ml of 5 g in 14.787 ml: 1.691 g; 241 to 10,000 µg in 1 g dry, 18.42 g dry in 100 g: 75 to 3,115 µg.
    const text = toText(check, { width: 200 });
    expect(text).toContain("75 to 3115 µg");
    expect(text).toContain("15 to 623% of 500 µg (EU level: no UK level at this age)");
    expect(text).toContain("7 to 332% of 940 µg");
    expect(text).toContain("and no leave to serve up to it");
  });

  it("is past where it is past that level at the least", () => {
    const { past } = doseCheck(bowl(food("kelp", { iodine: 6000 })), who.cox);
    expect(past.map(({ of, people: [{ authority }] }) => [of, authority])).toEqual([["iodine", "eu"]]);
  });

  it("has the level of its own authority alone where there is one", () => {
    const own = row(broth, "iodine").people;
    expect(own.map(({ authority, noLevelBy }) => [authority, noLevelBy])).toEqual(
      own.map(() => ["eu", undefined]),
    );
  });
});

describe("cassia", () => {
  // EFSA 2008: 0.1 mg of coumarin per kg a day. BfR 2012: 0.5 g of cassia for a child of 15 kg, 2 g for 60 kg.
  const porridge = (grams: string): Sheet => {
    const cinnamon = {
      key: "cinnamon",
      food: "cinnamon-ground",
      amount: grams,
      scaling: "per-portion",
    } as const;
    const oats = { key: "oats", food: "oats-rolled-dry", amount: "40 g" };
    return sheet({ name: "Porridge", portions: 1, lines: [oats, cinnamon] }, starterFoods);
  };
  const child: Person = { sex: "female", age: 4, mass: "15 kg" };
  const adult: Person = { sex: "female", age: 24, mass: "60 kg" };

  it("is held against each person's mass, under every authority", () => {
    for (const authority of ["uk", "us", "eu"] as const) {
      const who = { child: referenceIntakes(authority, child), adult: referenceIntakes(authority, adult) };
      const shares = (grams: string): (string | undefined)[][] =>
        row(porridge(grams), "coumarin", who).people.map(({ who: id, share, verdict }) => [
          id,
          share?.toString(),
          verdict,
        ]);
      expect(shares("0.5 g")).toEqual([
        ["child", "1", "may-be-past"],
        ["adult", "0.25", "under"],
      ]);
      expect(shares("2 g")).toEqual([
        ["child", "4", "past"],
        ["adult", "1", "may-be-past"],
      ]);
      expect(shares("3 g")[1]).toEqual(["adult", "1.5", "past"]);
    }
  });

  it("stands in a comparison, and what brings none does not", () => {
    const held = compare(porridge("2 g"), referenceIntakes("eu", child)).get("coumarin")?.upper;
    expect([held?.verdict, held?.figure.kind, held?.figure.value.toString()]).toEqual(["past", "TDI", "1.5"]);
    const plain = sheet(
      { name: "Oats", portions: 1, lines: [{ food: "oats-rolled-dry", amount: "40 g" }] },
      starterFoods,
    );
    expect(compare(plain, referenceIntakes("eu", child)).get("coumarin")).toBeUndefined();
  });

  it("is no limit that a fit has to keep, since a level of a life's mean is none of one meal", () => {
    expect(
      upperLimits(referenceIntakes("eu", child), 1, { guidance: "limit" }).map(({ of }) => of),
    ).not.toContain("coumarin");
  });

  it("is not proven of what its name tells of, and says nothing of coumarin", () => {
    const verdict = (name: string): string | undefined =>
      doseCheck(bowl({ ...food("x", {}), name }), { adult: referenceIntakes("eu", adult) }).rows.find(
        ({ of }) => of === "coumarin",
      )?.people[0].verdict;
    expect(["Zimt, gemahlen", "Tonka bean", "Garam masala", "Speculoos"].map(verdict)).toEqual(
      Array(4).fill("not-proven"),
    );
    expect(["Turmeric", "Black pepper"].map(verdict)).toEqual([undefined, undefined]);
  });
});

describe("demands from a person", () => {
  const aim = { weight: "hold", protein: { perKg: "1.6" }, fibre: { per1000kcal: 14 } } as const;

  it("are the aim's, for the meal, and upper levels that are firm", () => {
    const { demands, energy, cautions } = demandsFor(lightweight, "eu", { aim, share: "1/4" });
    expect(demands.filter((d) => d.firm).every((d) => d.most !== undefined)).toBe(true);
    // 1.6 g x 59 kg / 4.
    expect(demands.find((d) => d.of === "protein")).toEqual({ of: "protein", exactly: "23.6" });
    // EFSA 2023: 255 µg of selenium a day, of which a quarter.
    expect(demands.find((d) => d.of === "selenium")).toEqual({ of: "selenium", most: "63.75", firm: true });
    expect(energy?.target.toNumber()).toBeGreaterThan(2000);
    expect(cautions.map(({ code }) => code)).toEqual(["guidance-level"]);
    expect(demandsFor(lightweight, "eu").demands.every((d) => d.firm === true)).toBe(true);
    expect(
      demandsFor({ ...lightweight, conditions: ["warfarin"] }, "eu").cautions.map((c) => c.code),
    ).toEqual(["warfarin", "guidance-level"]);
  });

  it("let a meal have the part of each level that it has of the day, or the part that is asked", () => {
    const selenium = (how: DemandsOptions): unknown =>
      demandsFor(lightweight, "eu", how).demands.find((d) => d.of === "selenium")?.most;
    expect(selenium({})).toBe("255");
    expect(selenium({ share: "1/3" })).toBe("85");
    expect(selenium({ limits: "1/3" })).toBe("85");
    expect(selenium({ share: "20 %", limits: "1/2" })).toBe("127.5");
    expect(selenium({ share: "20 %", limits: 1 })).toBe("255");
    expect(errorOf(() => demandsFor(lightweight, "eu", { limits: 2 })).code).toBe("shares-impossible");
  });

  it("of meals that make up a day let all of them together reach a level, and no further", () => {
    const day = upperLimits(referenceIntakes("eu", cox));
    fc.assert(
      fc.property(fc.array(fc.integer({ min: 1, max: 97 }), { minLength: 1, maxLength: 5 }), (weights) => {
        const whole = weights.reduce((a, b) => a + b, 0);
        const meals = weights.map((w) => demandsFor(cox, "eu", { aim, share: `${w}/${whole}` }).demands);
        for (const { of, most } of day) {
          const parts = meals.map((demands) => exact(demands.find((d) => d.of === of && d.firm)?.most ?? 0));
          expect(toFractionText(sum(parts)), of).toBe(toFractionText(exact(most ?? 0)));
        }
      }),
      { numRuns: runs(20) },
    );
  });

  it("reckon figures per megajoule by the energy that is aimed at", () => {
    const { intakes, energy } = demandsFor(lightweight, "eu", { aim });
    expect(intakes.get("energy").reference?.value.toString()).toBe(energy?.target.toString());
  });

  it("keep fit from fitting any portion past a level", () => {
    // Brazil nuts and liver: rich in selenium, retinol and copper; enough energy is asked to tempt it.
    const dish = sheet(
      {
        name: "Rich",
        portions: 1,
        lines: [
          { key: "rice", food: "rice-white-long-boiled", amount: "200 g" },
          { key: "nuts", food: "brazil-nuts", amount: "15 g", scaling: "adjustable" },
          { key: "liver", food: "chicken-liver-raw", amount: "30 g", scaling: "adjustable" },
        ],
      },
      starterFoods,
    );
    fc.assert(
      fc.property(fc.integer({ min: 200, max: 1500 }), fc.integer({ min: 5, max: 60 }), (energy, grams) => {
        const limits = demandsFor(cox, "eu").demands;
        const fitted = fit(dish, [
          { of: "energy", exactly: energy },
          { of: "protein", least: grams },
          ...limits,
        ]);
        const made = fitted.status === "met" ? fitted.sheet : fitted.nearest;
        if (!made) return;
        for (const { of, most } of limits) {
          if (of === undefined || of === "mass" || most === undefined) continue;
          expect(exact(most).gte(made.portion(of).value), of).toBe(true);
        }
      }),
      { numRuns: runs(25) },
    );
  });
});

describe("a verdict on a dose", () => {
  it("is under by the high end alone, and past by the low end alone", () => {
    fc.assert(
      fc.property(fc.array(fc.integer({ min: 0, max: 9000 }), { minLength: 3, maxLength: 3 }), (three) => {
        const [low = 0, value = 0, high = 0] = [...three].sort((a, b) => a - b);
        const check = doseCheck(bowl(food("x", { iodine: { value, low, high } })), crew);
        for (const { people } of check.rows.filter(({ of }) => of === "iodine")) {
          for (const { level, verdict, least, most } of people) {
            // 10 g of it in a portion: a tenth of what 100 g hold.
            const past = (end: number): boolean => level.value.lt(end / 10);
            expect(verdict).toBe(past(low) ? "past" : past(high) ? "may-be-past" : "under");
            expect(least.times(level.value).toNumber()).toBeCloseTo(low / 10, 6);
            expect(most?.times(level.value).toNumber()).toBeCloseTo(high / 10, 6);
          }
        }
      }),
      { numRuns: runs(60) },
    );
  });
});

describe("what the foods of a dose say to heed", () => {
  const heed = { code: "made-up", text: "Too much of it harms.", source: "a body made up for a test" };
  const silent = food("kelp", { iron: 1 });

  it("stands with every row of theirs, known or not", () => {
    const s = bowl({ ...silent, cautions: [heed] }, food("pepper", { iodine: 10 }));
    const { rows } = doseCheck(s, crew);
    for (const { line, cautions } of rows) expect(cautions).toEqual(line === "kelp" ? [heed] : []);
    const text = toText(doseCheck(s, crew));
    expect(text).toMatch(/kelp +iodine +\? +\? of 600 µg/);
    expect(text).toContain("kelp: Too much of it harms. (a body made up for a test)");
    expect(text.split("Too much of it harms").length).toBe(2);
    expect(toText(doseCheck(bowl(silent), crew))).not.toContain("harms");
  });

  it("comes from within a nested recipe, and from each meal", () => {
    const foods = foodTable([{ ...silent, cautions: [heed] }, food("rice", { energy: 130 })]);
    const recipes = {
      sprinkle: { name: "Sprinkle", portions: 1, lines: [{ key: "kelp", food: "kelp", amount: "5 g" }] },
    };
    const line = { key: "mix", recipe: "sprinkle", amount: "1 portion", scaling: "per-portion" as const };
    const s = sheet({ name: "Rice", portions: 1, lines: [line] }, foods, { recipes });
    const { rows } = doseCheck({ lunch: s, supper: s }, crew);
    expect(new Set(rows.map((each) => each.line))).toEqual(new Set(["lunch/mix", "supper/mix"]));
    expect(rows.every(({ cautions }) => cautions.length === 1)).toBe(true);
  });

  it("stands by seaweed's iodine, which is shown from its least to its most", () => {
    // Surveys: 241 to 10,000 µg in 1 g of dry kelp; EFSA: 600 µg a day for adults, 500 µg at 15 to 17.
    const lines = [{ key: "kelp", food: "kelp-raw", amount: "10 g", scaling: "per-portion" as const }];
    const s = sheet({ name: "Broth", portions: 1, lines }, starterFoods);
    const iodine = row(s, "iodine");
    const [first] = iodine.people;
    expect(first.verdict).toBe("may-be-past");
    expect([first.least.toFixed(2), first.most?.toFixed(2)]).toEqual(["0.89", "36.84"]);
    expect(first.share?.toFixed(2)).toBe("9.30");
    const text = toText(doseCheck(s, crew));
    expect(text).toMatch(/88 to 3684% of 500 µg/);
    expect(text).toMatch(/kelp: Seaweed can hold more iodine/);
    // 443.9 to 18,420 µg: the middle figure, 4,648 µg, is no bound and is not shown.
    expect(text).toMatch(/443 to 18420 µg/);
    expect(text).not.toContain("4648");
    expect(text).not.toMatch(/\d d%/);
    const wakame = [{ ...lines[0], key: "wakame", food: "wakame-raw", amount: "5 g" }];
    const little = sheet({ name: "Broth", portions: 1, lines: wakame }, starterFoods);
    expect(toText(doseCheck(little, crew))).toMatch(/30 to 186 µg +5 to 31% of 600 µg/);
  });
});
