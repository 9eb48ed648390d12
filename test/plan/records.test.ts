import * as Plot from "@observablehq/plot";
import { desc, from, op } from "arquero";
import { parseHTML } from "linkedom";
import { describe, expect, it } from "vitest";
import { listedIds } from "../../src/food/components.ts";
import { starterFoods } from "../../src/foods.ts";
import { exactText } from "../../src/number/digits.ts";
import { type Exact, equals, exact, plus, ZERO } from "../../src/number/exact.ts";
import { portionPlan } from "../../src/plan/plan.ts";
import { sheet } from "../../src/sheet/build.ts";
import { type TidyRecord, toRecords } from "../../src/show/records.ts";
import { HOSTILE } from "../show/hostile.ts";
import { campPlan } from "./camp.ts";

const plan = campPlan();
const looked = ["energy", "protein", "iron", "iodine", "vitaminD"] as const;
const isServed = (r: TidyRecord): boolean => r.person !== null && r.row === "line" && r.what === "eaten";
const records = toRecords(plan, { components: looked }).filter(isServed);
const precise = toRecords(plan, { components: [...looked, "mass"], figures: "exact" });

const total = (all: readonly TidyRecord[]): Exact =>
  all.reduce((sum, { amount }) => (amount === null ? sum : plus(sum, exact(String(amount)))), ZERO);

describe("the records of a plan", () => {
  it("have one row for each person, meal, dish, line and component", () => {
    const lines = [...(plan.portions[0]?.dishes.values() ?? [])].flatMap((s) => s.lines).length;
    expect(records).toHaveLength(3 * lines * looked.length);
    const key = (r: TidyRecord): string => `${r.person}|${r.meal}|${r.dish}|${r.line}|${r.component}`;
    expect(new Set(records.map(key)).size).toBe(records.length);
    expect(new Set(records.map((r) => r.person))).toEqual(new Set(plan.people.map(({ id }) => id)));
  });

  it("add up, as exact text, to what each portion brings and weighs, literally", () => {
    for (const { id: person } of plan.people) {
      const own = precise.filter((r) => r.person === person && r.meal === "breakfast");
      for (const id of looked) {
        const rows = own.filter((r) => r.component === id && isServed(r));
        const brings = exactText(plan.brings(person, "breakfast", id).value);
        expect(exactText(total(rows))).toBe(brings);
        const [meal] = own.filter((r) => r.component === id && r.row === "meal" && r.what === "eaten");
        expect(meal?.amount ?? "0").toBe(brings);
      }
      const grams = own.filter((r) => r.component === "mass" && r.row === "line" && r.what === "raw");
      const dishes = [...plan.portion(person, "breakfast").dishes.values()];
      const raw = dishes.reduce((sum, s) => plus(sum, s.masses.raw), ZERO);
      expect(equals(total(grams), raw)).toBe(true);
    }
    const all = precise.filter((r) => r.person === null && r.row === "total" && r.dish === null);
    for (const { component, amount } of all.filter((r) => r.component !== "mass"))
      expect(amount ?? "0").toBe(exactText(plan.holds("breakfast", component as "iron").value));
  });

  it("give what is not known as no amount, never as zero, and say so", () => {
    const silent = records.filter((r) => r.bound === "unknown");
    expect(silent.length).toBeGreaterThan(0);
    for (const { amount, coverage, marks } of silent)
      expect([amount, coverage, marks]).toEqual([null, 0, "missing"]);
    const { missing } = plan.brings("cox", "breakfast", "iodine");
    const named = silent.filter((r) => r.person === "cox" && r.component === "iodine");
    const ofTopping = missing.filter((key) => key.startsWith("pot/topping/"));
    // The topping is a recipe of its own: a line whose foods are all silent.
    expect(ofTopping).toHaveLength(3);
    expect(named.map((r) => `${r.dish}/${r.line}`).sort()).toEqual(
      [...missing.filter((key) => !ofTopping.includes(key)), "pot/topping"].sort(),
    );
  });

  it("have every component, whether or not anything is known of it", () => {
    const all = new Set(
      toRecords(plan)
        .filter(isServed)
        .map((r) => r.component),
    );
    expect([...all].sort()).toEqual([...listedIds].sort());
  });

  // arquero's own groupby and rollup, in binary floats: 1e-9 apart at most.
  it("goes into a data frame: arquero groups and sums to what the plan says", () => {
    const frame = from([...records])
      .filter((r: TidyRecord) => r.component === "protein")
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
      const [row] = toRecords(odd, { components: ["energy"] }).filter(isServed);
      expect([row?.person, row?.meal, row?.dish]).toEqual([text, text, text]);
    }
  });
});

describe("the records of a menu of days", () => {
  const dish = (name: string, food: string, amount: string) =>
    sheet({ name, portions: 2, lines: [{ key: "it", food, amount }] }, starterFoods);
  const meals = (grams: number) => [
    { id: "breakfast", dishes: { oats: dish("Oats", "oats-rolled-dry", `${grams} g`) } },
    { id: "supper", dishes: { rice: dish("Rice", "rice-brown-long-dry", "200 g") } },
  ];
  const menu = portionPlan({
    days: [
      { id: "mon", meals: meals(120) },
      { id: "tue", meals: meals(90) },
    ],
    people: [
      { id: "cox", besides: [{ name: "milk", sheet: dish("Milk", "milk-whole", "400 g"), days: ["tue"] }] },
      { id: "bow", away: ["mon/supper"] },
    ],
  });
  const rows = toRecords(menu, { components: ["iron", "mass"], figures: "exact" });

  it("name the day of each meal, and have each person's days, means and ends", () => {
    const dated = rows.filter(({ meal }) => meal !== null);
    expect(dated.every(({ meal, day }) => meal?.startsWith(`${day}/`))).toBe(true);
    for (const person of ["cox", "bow"]) {
      const own = rows.filter((row) => row.person === person && row.component === "iron");
      for (const day of ["mon", "tue"]) {
        const [eaten, ...others] = own.filter((row) => row.row === "day" && row.day === day);
        expect([eaten?.amount, others]).toEqual([exactText(menu.day(person, day).brings("iron").value), []]);
      }
      const mean = menu.mean(person);
      const said = (row: string) => own.filter((each) => each.row === row);
      expect(said("mean").map(({ amount }) => amount)).toEqual([exactText(mean.brings("iron").value)]);
      for (const [row, end] of [
        ["least-day", mean.least("iron")],
        ["most-day", mean.most("iron")],
      ] as const)
        expect(said(row).map(({ day, least, most }) => [day, least, most])).toEqual([
          [end.day ?? null, end.least ? exactText(end.least) : null, end.most ? exactText(end.most) : null],
        ]);
    }
  });

  it("have what is eaten besides, and days add up to it and the meals, literally", () => {
    const iron = rows.filter((row) => row.person === "cox" && row.day === "tue" && row.component === "iron");
    const dishes = iron.filter(({ row }) => row === "portion");
    expect(dishes.map(({ dish, status }) => [dish, status])).toContainEqual(["milk", "besides"]);
    expect(exactText(total(dishes))).toBe(iron.find(({ row }) => row === "day")?.amount);
  });
});
