import * as Plot from "@observablehq/plot";
import { desc, from, op } from "arquero";
import { parseHTML } from "linkedom";
import { describe, expect, it } from "vitest";
import { type ComponentId, components } from "../../src/food/components.ts";
import { starterFoods } from "../../src/foods.ts";
import { equals, exact, type Fraction, plus, toText, ZERO } from "../../src/number/fraction.ts";
import { portionPlan } from "../../src/plan/plan.ts";
import { portionRows } from "../../src/plan/records.ts";
import { sheet } from "../../src/sheet/build.ts";
import { type DataRecord, toRecords } from "../../src/table/records.ts";
import { HOSTILE } from "../table/hostile.ts";
import { campPlan } from "./camp.ts";

const plan = campPlan();
const looked: readonly ComponentId[] = ["energy", "protein", "iron", "iodine", "vitaminD"];
const records = toRecords(portionRows(plan.portions, looked));
const precise = toRecords(portionRows(plan.portions, looked), { figures: "exact" });

const total = (all: readonly DataRecord[]): Fraction =>
  all.reduce((sum, { amount }) => (amount === null ? sum : plus(sum, exact(String(amount)))), ZERO);

describe("portionRows", () => {
  it("has one row for each person, meal, dish, line and component, under these names", () => {
    const lines = [...(plan.portions[0]?.dishes.values() ?? [])].flatMap((s) => s.lines).length;
    expect(records).toHaveLength(3 * lines * (looked.length + 1));
    const key = (r: DataRecord): string => `${r.person}|${r.meal}|${r.dish}|${r.line}|${r.component}`;
    expect(new Set(records.map(key)).size).toBe(records.length);
    for (const record of records) {
      expect(Object.keys(record)).toEqual([
        "person",
        "meal",
        "dish",
        "line",
        "component",
        "amount",
        "unit",
        "bound",
        "coverage",
        "least",
        "most",
      ]);
    }
  });

  it("adds up, as exact text, to what each portion brings and weighs, literally", () => {
    for (const { id: person } of plan.people) {
      for (const id of looked) {
        const rows = precise.filter((r) => r.person === person && r.component === id);
        expect(toText(total(rows))).toBe(toText(plan.brings(person, "breakfast", id).value));
      }
      const grams = precise.filter((r) => r.person === person && r.component === "mass");
      const dishes = [...plan.portion(person, "breakfast").dishes.values()];
      const raw = dishes.reduce((sum, s) => plus(sum, s.masses.raw), ZERO);
      expect(equals(total(grams), raw)).toBe(true);
    }
  });

  it("gives what is not known as no amount, never as zero, and says so", () => {
    const silent = records.filter((r) => r.bound === "unknown");
    expect(silent.length).toBeGreaterThan(0);
    for (const { amount, coverage } of silent) expect([amount, coverage]).toEqual([null, 0]);
    const { missing } = plan.brings("cox", "breakfast", "iodine");
    const named = silent.filter((r) => r.person === "cox" && r.component === "iodine");
    const ofTopping = missing.filter((key) => key.startsWith("pot/topping/"));
    // The topping is a recipe of its own: a line whose foods are all silent.
    expect(ofTopping).toHaveLength(3);
    expect(named.map((r) => `${r.dish}/${r.line}`).sort()).toEqual(
      [...missing.filter((key) => !ofTopping.includes(key)), "pot/topping"].sort(),
    );
  });

  it("takes every component that some dish knows of, unless told which", () => {
    const all = new Set(toRecords(portionRows(plan.portions)).map((r) => r.component));
    expect(all.has("leucine") && all.has("mass")).toBe(true);
    for (const id of all) if (id !== "mass") expect(Object.hasOwn(components, String(id))).toBe(true);
  });

  it("is what toRecords reads of a sheet, too", () => {
    const s = plan.portion("cox", "breakfast").dishes.get("pot");
    const rows = s ? toRecords(s) : [];
    expect(rows.filter((r) => r.component === "mass").map((r) => r.line)).toEqual(s?.lines.map((l) => l.key));
    expect(rows.find((r) => r.line === "oats" && r.component === "protein")).toMatchObject({
      amount: s?.cell("oats", "protein").value.toNumber(),
      unit: "g",
      bound: "exact",
      coverage: 1,
    });
  });

  // arquero's own groupby and rollup, in binary floats: 1e-9 apart at most.
  it("goes into a data frame: arquero groups and sums to what the plan says", () => {
    const frame = from([...records])
      .filter((r: DataRecord) => r.component === "protein")
      .groupby("person")
      .rollup({ protein: op.sum("amount") })
      .orderby(desc("protein"));
    expect(frame.array("person")).toEqual(["heavyweight", "lightweight", "cox"]);
    for (const { person, protein } of frame.objects() as { person: string; protein: number }[]) {
      expect(protein).toBeCloseTo(plan.brings(person, "breakfast", "protein").value.toNumber(), 9);
    }
  });

  it("goes into a plot: Observable Plot draws a bar for every known amount", () => {
    const { document } = parseHTML("<!doctype html><html><body></body></html>");
    const protein = records.filter((r) => r.component === "protein");
    const svg = Plot.plot({
      document,
      marks: [Plot.barX(protein, { x: "amount", y: "person", fill: "line" })],
    });
    const bars = [...svg.querySelectorAll("[aria-label=bar] rect")];
    expect(bars).toHaveLength(protein.length);
    // Stacked, the bars of a person are as long as their protein: lengths go as the plan's figures.
    const length = (who: string): number =>
      bars
        .filter((_, i) => protein[i]?.person === who)
        .reduce((sum, bar) => sum + Number(bar.getAttribute("width")), 0);
    const [cox, heavy] = ["cox", "heavyweight"].map((who) =>
      plan.brings(who, "breakfast", "protein").value.toNumber(),
    );
    expect(length("heavyweight") / length("cox")).toBeCloseTo((heavy ?? 0) / (cox ?? 1), 6);
  });

  it("keeps hostile ids as they were put in: a row is data", () => {
    const dishes = sheet(
      { name: "Oats", portions: 1, lines: [{ key: "oats", food: "oats-rolled-dry", amount: "60 g" }] },
      starterFoods,
    );
    // A plan itself refuses what shows nothing, control characters and `__proto__`.
    const harmful = HOSTILE.filter(
      (text) => text.trim() !== "" && !/\p{Cc}|\p{Cs}/u.test(text) && text !== "__proto__",
    );
    expect(harmful.length).toBeGreaterThan(20);
    for (const text of harmful) {
      const odd = portionPlan({
        meals: [{ id: text, dishes }],
        people: [{ id: text, name: "Cox", demands: {} }],
      });
      const rows = toRecords(portionRows(odd.portions, ["energy"]));
      expect(rows.map((r) => [r.person, r.meal, r.dish])).toEqual(Array(2).fill([text, text, text]));
    }
  });
});
