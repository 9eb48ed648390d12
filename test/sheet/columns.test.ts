import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { foodTable } from "../../src/food/table.ts";
import { starterFoods } from "../../src/foods.ts";
import { exactText } from "../../src/number/digits.ts";
import { type Exact, exact, fraction, minus, over, plus, times } from "../../src/number/exact.ts";
import { compareRatios } from "../../src/number/ratio.ts";
import { scale } from "../../src/scale/scale.ts";
import { sheet } from "../../src/sheet/build.ts";
import {
  cellFeeds,
  cellReads,
  cellValue,
  withColumn,
  withConstant,
  withRow,
} from "../../src/sheet/columns.ts";
import { type CellValue, cellLabel, isFailure, type RowRef } from "../../src/sheet/own.ts";
import { revise } from "../../src/sheet/revise.ts";
import type { Sheet } from "../../src/sheet/sheet.ts";
import { type Bound, constantTally, makeMarks, Tally } from "../../src/sheet/tally.ts";
import { tablesOf } from "../../src/show/tabular.ts";
import { toText as show } from "../../src/show/text.ts";
import { errorOf } from "../number/errorOf.ts";
import { runs } from "../runs.ts";

const foods = foodTable([
  {
    id: "oats",
    name: "Oats",
    source: "made up",
    per100g: { energy: 400, protein: 12, fibre: 10, sodium: 2, potassium: 360, omega3: "0.1", omega6: "2.4" },
    price: { per100g: "0.24", currency: "GBP" },
  },
  {
    id: "milk",
    name: "Milk",
    source: "made up",
    per100g: { energy: 60, protein: 3, fibre: 0, sodium: 40, potassium: 150, omega3: "0.1" },
    price: { per100g: "0.11", currency: "GBP" },
  },
]);
const bowl = sheet(
  {
    name: "Bowl",
    portions: 2,
    lines: [
      { key: "oats", food: "oats", amount: "100 g" },
      { key: "milk", food: "milk", amount: "300 g" },
    ],
  },
  foods,
);

function tally(value: CellValue): Tally {
  if (isFailure(value)) throw new Error(`${value.code}: ${value.message}`);
  return value;
}

describe("columns of one's own", () => {
  it("say protein per 100 kcal, for a line, the batch and a portion", () => {
    // A figure of 100 kcal is a mass of protein: bare 100 would call it grams a kilocalorie.
    const s = withColumn(withConstant(bowl, "100 kcal", 100, "kcal"), "per 100 kcal", (at) =>
      at.get("protein").times(at.constant("100 kcal")).over(at.get("energy")),
    );
    expect(tally(cellValue(s, "per 100 kcal", { line: "oats" })).value.toString()).toBe("3"); // 12 ÷ 400 × 100
    expect(tally(cellValue(s, "per 100 kcal", { line: "milk" })).value.toString()).toBe("5"); // 9 ÷ 180 × 100
    expect(tally(cellValue(s, "per 100 kcal")).value.toFixed(4)).toBe("3.6207"); // 21 ÷ 580 × 100
    expect(tally(cellValue(s, "per 100 kcal", "portion")).unit).toBe("g");
    const ratio = withColumn(bowl, "per kcal", (at) => at.get("protein").over(at.get("energy")));
    expect(tally(cellValue(ratio, "per kcal", { line: "oats" })).unit).toBe("g/kcal");
    expect(tally(cellValue(ratio, "per kcal", { line: "oats" })).value.toString()).toBe("0.03"); // 12 ÷ 400
  });

  it("say cost per portion, added up over the lines", () => {
    const s = withColumn(
      withColumn(withConstant(bowl, "per gram", "1/100", "GBP/g"), "cost", (at) =>
        at.line
          ? at
              .get("grams")
              .times(at.constant("per gram"))
              .times(at.food?.price?.per100g ?? 0)
          : at.sum("cost"),
      ),
      "by hand",
      (at) => at.total("cost").over(at.portions),
    );
    const said = (of: Sheet, row: RowRef, column = "cost"): string => {
      const { value, unit } = tally(cellValue(of, column, row));
      return `${value} ${unit}`;
    };
    expect(said(s, { line: "oats" })).toBe("0.24 GBP");
    expect(said(s, "total")).toBe("0.57 GBP"); // 0.24 + 3 × 0.11
    expect(said(s, "portion")).toBe("0.285 GBP"); // of two
    expect(said(s, "per100g")).toBe("0.1425 GBP"); // of 400 g as eaten
    expect(said(s, "portion", "by hand")).toBe("0.285 GBP");
    // Three portions cost as much as before, each a third of it; evaporation makes 100 g dearer.
    const more = revise(s, { portions: 3 });
    expect([said(more, "total"), said(more, "portion")]).toEqual(["0.57 GBP", "0.19 GBP"]);
    expect(said(revise(s, { cookedMass: "200 g" }), "per100g")).toBe("0.285 GBP");
    // A sheet scaled to other portions keeps no cell of the old ones.
    const scaled = scale(s, { mass: "200 g", portions: 4 }).sheet;
    expect([said(scaled, "total"), said(scaled, "portion")]).toEqual(["1.14 GBP", "0.285 GBP"]);
  });

  it("say where lines count as weighed in and the batch as eaten, wherever a column reads grams", () => {
    // 400 g at 0.01 a gram cost 4; of the 600 g as eaten the same formula makes 6.
    const made = (yieldFactor: string): Sheet =>
      withColumn(
        withColumn(
          withColumn(revise(bowl, { yieldFactor }), "cost", (at) => at.get("grams").times("0.01")),
          "fair",
          (at) => at.sum("cost"),
        ),
        "share",
        (at) => at.get("protein").times(2),
      );
    const boiled = made("1.5");
    const of = (column: string): string => tally(cellValue(boiled, column)).value.toString();
    expect([of("cost"), of("fair")]).toEqual(["6", "4"]);
    const [, , own] = tablesOf(boiled);
    expect(own?.notes).toEqual([
      expect.stringMatching(
        /^cost: lines count by their grams as weighed in, 400 g in all, .* 600 g as eaten/,
      ),
    ]);
    expect(tablesOf(made("1"))[2]?.notes).toEqual([]);
  });

  it("say n-6 to n-3 and potassium to sodium, bounds and all", () => {
    const s = withColumn(
      withColumn(bowl, "n-6:n-3", (at) => at.get("omega6").over(at.get("omega3"))),
      "K:Na",
      (at) => at.get("potassium").over(at.get("sodium")),
    );
    const ratio = tally(cellValue(s, "n-6:n-3", "portion"));
    // Milk is silent on n-6: 2.4 at least, over 0.1 + 0.3.
    expect([ratio.value.toString(), ratio.bound, ratio.missing, ratio.unit]).toEqual([
      "6",
      "at-least",
      ["milk"],
      "",
    ]);
    expect(tally(cellValue(s, "K:Na")).value.toFixed(3)).toBe("6.639"); // 810 ÷ 122
  });

  it("share a day's fibre as a row over every column, from constants", () => {
    const s = withRow(withConstant(bowl, "day's fibre", 30, "g"), "of a day", (at) =>
      at.column === "fibre" ? at.portion().over(at.constant("day's fibre")) : at.portion().over(at.portion()),
    );
    expect(tally(cellValue(s, "fibre", { row: "of a day" })).value.toFixed(6)).toBe("0.166667"); // 5 ÷ 30
    const none = cellValue(s, "iron", { row: "of a day" });
    expect(isFailure(none) && none.code).toBe("number-zero-denominator");
  });

  it("fail alone: a formula that throws spoils only what reads it, and says where it began", () => {
    const s = withColumn(
      withColumn(
        withColumn(bowl, "bad", (at) => {
          if (at.row === "portion") throw new Error("no such thing");
          return at.get("energy");
        }),
        "reader",
        (at) => at.get("bad").times(2),
      ),
      "catcher",
      (at) => {
        try {
          return at.get("bad");
        } catch {
          return 0;
        }
      },
    );
    for (const name of ["bad", "reader", "catcher"]) {
      expect(cellValue(s, name, "portion")).toEqual({
        failed: true,
        code: "formula-threw",
        message: "no such thing",
        cell: "bad of the portion",
      });
    }
    expect(tally(cellValue(s, "reader")).value.toString()).toBe("1160");
    expect(s.portion("energy").value.toString()).toBe("290");
    expect(show(s)).toContain("failed: no such thing");
    expect(show(s)).not.toMatch(/NaN|undefined|\[object/);
  });

  it("name what is not there, with a near name", () => {
    const s = withColumn(bowl, "x", (at) => at.get("protien"));
    const cell = cellValue(s, "x");
    expect(isFailure(cell) && [cell.code, cell.message]).toEqual([
      "column-unknown",
      'nothing is called "protien": did you mean protein or proline?',
    ]);
    const later = withColumn(s, "protien", (at) => at.get("protein"));
    expect(tally(cellValue(later, "x")).value.toString()).toBe("21");
  });

  it("refuse a circle when it is defined, and print the way round", () => {
    const s = withColumn(
      withColumn(bowl, "b", (at) => at.get("c")),
      "c",
      (at) => at.get("a"),
    );
    const error = errorOf(() => withColumn(s, "a", (at) => at.get("b").plus(1)));
    expect(error.code).toBe("column-cycle");
    expect(error.message).toContain("a of oats → b of oats → c of oats → a of oats");
    expect(errorOf(() => withColumn(bowl, "self", (at) => at.get("self"))).message).toContain(
      "self of oats → self of oats",
    );
    // The refused definition left nothing behind.
    expect(isFailure(cellValue(s, "b"))).toBe(true);
    expect(
      tally(
        cellValue(
          withColumn(s, "a", () => 7),
          "b",
        ),
      ).value.toString(),
    ).toBe("7");
  });

  it("refuse names that every sheet has, and stand in each other's place otherwise", () => {
    for (const name of ["energy", "grams", "amount", "portions", ""])
      expect(errorOf(() => withColumn(bowl, name, () => 1)).code).toBe("column-name-taken");
    const s = withColumn(
      withColumn(bowl, "x", () => 1),
      "y",
      (at) => at.get("x").plus(1),
    );
    expect(
      tally(
        cellValue(
          withColumn(s, "x", () => 5),
          "y",
        ),
      ).value.toString(),
    ).toBe("6");
    expect(tally(cellValue(s, "y")).value.toString()).toBe("2");
  });

  it("survive hostile names", () => {
    const names = ["__proto__", "constructor", "toString", "\u202Ename", "=1+1", "<b>", "9".repeat(500)];
    let s = bowl;
    for (const name of names) s = withColumn(s, name, (at) => at.get("protein"));
    for (const name of names) expect(tally(cellValue(s, name)).value.toString()).toBe("21");
    expect(isFailure(cellValue(bowl, "__proto__"))).toBe(true);
  });

  it("tell what a cell reads and feeds", () => {
    const s = withColumn(
      withColumn(bowl, "x", (at) => at.get("protein").over(at.total("energy"))),
      "y",
      (at) => at.get("x"),
    );
    const labels = (refs: readonly Parameters<typeof cellLabel>[0][]): string[] => refs.map(cellLabel);
    expect(labels(cellReads(s, "x", { line: "oats" }))).toEqual(["protein of oats", "energy of the batch"]);
    expect(labels(cellFeeds(s, "x", { line: "oats" }))).toEqual(["y of oats"]);
    expect(labels(cellReads(s, "protein"))).toEqual(["protein of oats", "protein of milk"]);
    expect(labels(cellReads(s, "protein", { line: "oats" }))).toEqual(["grams of oats"]);
    expect(labels(cellFeeds(s, "energy"))).toEqual(
      expect.arrayContaining(["energy of the portion", "energy of 100 g", "x of oats", "x of milk"]),
    );
    expect(labels(cellFeeds(s, "grams", { line: "oats" }))).toEqual(
      expect.arrayContaining(["protein of oats", "grams of the batch"]),
    );
  });

  it("evaluate at a definition only what it makes or reaches, however many there are", () => {
    let calls = 0;
    let s = bowl;
    for (let i = 0; i < 300; i++) {
      s = withColumn(s, `own ${i}`, (at) => {
        calls += 1;
        return at.get(i === 0 ? "protein" : `own ${i - 1}`).plus(1);
      });
    }
    expect(calls).toBe(300 * 5); // two lines, the batch, a portion, 100 g
    calls = 0;
    const redefined = withColumn(s, "own 150", () => 7);
    expect(calls).toBe(149 * 5);
    expect(tally(cellValue(redefined, "own 299")).value.toString()).toBe("156");
    expect(tally(cellValue(s, "own 299")).value.toString()).toBe("321"); // 21 + 300
    expect(calls).toBe(149 * 5);
  });

  it("refuse a circle that a new figure closes among columns that were there before", () => {
    const s = withColumn(
      withColumn(withConstant(bowl, "way", 0), "a", (at) =>
        at.constant("way").value.n > 0n ? at.get("b") : 1,
      ),
      "b",
      (at) => at.get("a"),
    );
    expect(errorOf(() => withConstant(s, "way", 1)).code).toBe("column-cycle");
    expect(errorOf(() => withRow(s, "r", (at) => at.row("r"))).code).toBe("column-cycle");
    const row = withRow(bowl, "r", (at) => at.total());
    expect(
      errorOf(() =>
        withColumn(
          withColumn(row, "x", (at) => at.get("y")),
          "y",
          (at) => at.get("x"),
        ),
      ).code,
    ).toBe("column-cycle");
  });

  it("stay with a sheet that is edited and scaled, over real foods", () => {
    const s = withColumn(
      sheet(
        { name: "P", portions: 1, lines: [{ key: "o", food: "oats-rolled-dry", amount: "50 g" }] },
        starterFoods,
      ),
      "double",
      (at) => at.get("protein").times(2),
    ).edit({ o: "100 g" });
    expect(tally(cellValue(s, "double")).value.toString()).toBe("26.3"); // 2 × 13.15
  });
});

describe("bounds through arithmetic", () => {
  /** A tally with a bound, and a truth that the bound allows. */
  const bounded = fc
    .record({
      shown: fc.integer({ min: -20, max: 40 }),
      away: fc.integer({ min: 0, max: 50 }),
      bound: fc.constantFrom<Bound>("point", "at-least", "at-most", "unknown"),
    })
    .map(({ shown, away, bound }) => {
      const value = fraction(BigInt(shown), 2n);
      const by = fraction(BigInt(away), 3n);
      const truth =
        bound === "at-least"
          ? plus(value, by)
          : bound === "at-most"
            ? minus(value, by)
            : bound === "point"
              ? value
              : minus(by, value);
      const none = makeMarks(() => []);
      return { tally: new Tally(value.n, value.d, "g", none, () => exact(1), bound), truth };
    });

  const allows = (t: Tally, truth: Exact): boolean => {
    const side = compareRatios(truth, t.value);
    if (t.bound === "point") return side === 0;
    if (t.bound === "at-least") return side >= 0;
    return t.bound === "at-most" ? side <= 0 : true;
  };

  it("never claim what is not so: every truth that the operands allow, the result allows", () => {
    fc.assert(
      fc.property(bounded, bounded, (a, b) => {
        expect(allows(a.tally.plus(b.tally), plus(a.truth, b.truth))).toBe(true);
        expect(allows(a.tally.minus(b.tally), minus(a.truth, b.truth))).toBe(true);
        expect(allows(a.tally.times(b.tally), times(a.truth, b.truth))).toBe(true);
        if (b.tally.value.n !== 0n && b.truth.n !== 0n) {
          expect(allows(a.tally.over(b.tally), over(a.truth, b.truth))).toBe(true);
        }
      }),
      { numRuns: runs(5000) },
    );
  });

  it("claim what can be: at least turns round under subtraction and division", () => {
    const atLeast = new Tally(
      6n,
      1n,
      "g",
      makeMarks(() => []),
      () => exact(1),
      "at-least",
    );
    const six = constantTally(exact(6), "g");
    expect(atLeast.plus(1).bound).toBe("at-least");
    expect(six.minus(atLeast).bound).toBe("at-most");
    expect(six.over(atLeast).bound).toBe("at-most");
    expect(atLeast.over(2).bound).toBe("at-least");
    expect(atLeast.times(-1).bound).toBe("at-most");
    expect(atLeast.minus(atLeast).bound).toBe("unknown");
    expect(atLeast.over(atLeast).bound).toBe("unknown");
    expect(exactText(atLeast.times(atLeast).value)).toBe("36");
  });

  it("refuse unlike units in a sum, and multiply and cancel them otherwise", () => {
    const [g, mg] = [constantTally(exact(2), "g"), constantTally(exact(4), "mg")];
    expect(errorOf(() => g.plus(mg)).code).toBe("unit-kinds-differ");
    expect([g.times(mg).unit, g.over(mg).unit, g.over(g).unit]).toEqual(["g·mg", "g/mg", ""]);
    const price = constantTally(exact(3), "GBP/g");
    expect([g.times(price).unit, price.times(g).unit, price.over(g).unit]).toEqual(["GBP", "GBP", "GBP/g/g"]);
    expect(price.over(g).times(g).times(g).unit).toBe("GBP");
    expect([constantTally(exact(1), "").over(g).unit, g.over(mg).over(g).unit]).toEqual(["1/g", "1/mg"]);
    expect(constantTally(exact(1), "").over(g).times(g).unit).toBe("");
    expect(errorOf(() => g.over(0)).code).toBe("number-zero-denominator");
  });
});
