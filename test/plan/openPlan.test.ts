import { readFileSync } from "node:fs";
import fc from "fast-check";
import { SteelyardError, sheet } from "steelyard";
import { starterFoods } from "steelyard/foods";
import {
  cookingSchedule,
  openPlan,
  type Plan,
  type PlanInput,
  portionPlan,
  type StoredPlan,
} from "steelyard/plan";
import { toRecords } from "steelyard/show";
import { describe, expect, it } from "vitest";
import { errorOf } from "../number/errorOf.ts";
import { lost } from "../properties/lossless.ts";
import { met, runs } from "../runs.ts";
import { madePlan, madeWeek } from "../stored/made.ts";
import { written } from "../written.ts";
import { planWorlds } from "./kitchenWorlds.ts";

const stored = (): unknown =>
  JSON.parse(readFileSync(new URL("../stored/plan-1.json", import.meta.url), "utf8"));
const good = written(madePlan()) as unknown as StoredPlan;

/** Rows with exact figures of all that a plan shows. */
const rowsOf = (plan: Plan): unknown => toRecords(plan, { figures: "exact" });

/** A target that per-portion lines alone pass is refused: no plan. */
function planned(input: PlanInput): Plan | undefined {
  try {
    return portionPlan(input);
  } catch (error) {
    if (error instanceof SteelyardError && error.code.startsWith("target-")) return undefined;
    throw error;
  }
}

describe("a stored plan", () => {
  it("opens with every figure literally the same, whatever was asked", () => {
    let opened = 0;
    fc.assert(
      fc.property(planWorlds, ({ input }) => {
        const plan = planned(input);
        if (!plan) return;
        opened += 1;
        expect(rowsOf(openPlan(written(plan)))).toEqual(rowsOf(plan));
        expect(lost(plan, written(plan))).toEqual([]);
        expect(written(openPlan(written(plan)))).toEqual(written(plan));
      }),
      { numRuns: runs(20) },
    );
    expect(opened).toBeGreaterThan(met(5));
  });

  it("holds people, kitchens, bodies, what is avoided and the options of a fit", () => {
    const opened = openPlan(good);
    expect(rowsOf(opened)).toEqual(rowsOf(madePlan()));
    expect(written(opened.avoided)).toEqual(written(madePlan().avoided));
    expect(written(opened.doses)).toEqual(written(madePlan().doses));
    expect(opened.cautions("cox")).toEqual(madePlan().cautions("cox"));
    const dated = (plan: Plan): unknown => toRecords(cookingSchedule(plan), { figures: "exact" });
    expect(dated(opened)).toEqual(dated(madePlan()));
  });

  it("holds each sheet once, and the defaults that it was planned by", () => {
    const oats = sheet(
      { name: "Oats", portions: 1, lines: [{ food: "oats-rolled-dry", amount: "60 g" }] },
      starterFoods,
    );
    const meals = Array.from({ length: 7 }, (_, i) => ({ id: `day ${i + 1}`, dishes: oats }));
    const plan = portionPlan({ meals, people: [{ id: "cox" }] }).toJSON();
    expect([plan.sheets.length, plan.tolerance, plan.silent]).toEqual([1, "0.02", "refuse"]);
  });

  it("opens the same from a database that keeps no order of fields", () => {
    const turned = (x: unknown): unknown => {
      if (Array.isArray(x)) return x.map(turned);
      if (typeof x !== "object" || x === null) return x;
      const fields = Object.entries(x).map(([name, each]) => [name, turned(each)] as const);
      return Object.fromEntries(fields.reverse());
    };
    expect(rowsOf(openPlan(turned(good)))).toEqual(rowsOf(madePlan()));
  });

  it("is what was planned, though the caller changes what they handed in", () => {
    const oats = sheet(
      { name: "Oats", portions: 1, lines: [{ food: "oats-rolled-dry", amount: "60 g" }] },
      starterFoods,
    );
    const bow = { id: "bow", demands: { factor: 2 } };
    const plan = portionPlan({ meals: [{ id: "early", dishes: oats }], people: [bow] });
    bow.demands.factor = 3;
    expect(plan.toJSON().people).toEqual([{ id: "bow", demands: { factor: 2 } }]);
  });

  it("opens as it was, of every format", () => {
    expect(openPlan(stored()).portions).toHaveLength(4);
    expect(written(openPlan(stored()))).toEqual(written(openPlan(good)));
    const week: unknown = JSON.parse(readFileSync(new URL("../stored/plan-2.json", import.meta.url), "utf8"));
    expect(written(openPlan(week))).toEqual(written(madeWeek()));
    expect(
      openPlan(week)
        .day("cox", "mon")
        .besides.map(({ name }) => name),
    ).toEqual(["Tablet", "More oats"]);
  });

  it("is opened from another copy of the package, and by whoever has the plan itself", () => {
    expect(rowsOf(openPlan({ toJSON: () => good }))).toEqual(rowsOf(madePlan()));
    expect(rowsOf(openPlan(madePlan()))).toEqual(rowsOf(madePlan()));
  });
});

describe("a stored plan whose portions come out otherwise", () => {
  const moved = {
    ...good,
    portions: good.portions.map((each) => (each.person === "bow" ? { ...each, factor: "7" } : each)),
  };

  it("is refused, each portion by its name", () => {
    const { faults } = errorOf(() => openPlan(moved));
    const bows = good.portions.flatMap(({ person }, i) => (person === "bow" ? [i] : []));
    expect(faults.map(({ code, path }) => [code, ...path])).toEqual(
      bows.map((i) => ["plan-moved", "portions", i]),
    );
    expect(faults[0]?.message).toContain('"bow" for "early"');
  });

  it("is given as it is found now where that is asked for", () => {
    expect(rowsOf(openPlan(moved, { moved: "accept" }))).toEqual(rowsOf(madePlan()));
  });
});

describe("a stored plan at fault", () => {
  const told = (given: unknown): readonly string[] => {
    const { faults } = errorOf(() => openPlan(given));
    return faults.map(({ code, path, message }) => `${code} ${path.join(".")}: ${message}`);
  };

  it("of a later version is told as that", () => {
    expect(told({ format: "steelyard-plan/3", menu: [] })).toEqual([
      'plan-format-newer format: format "steelyard-plan/3" is newer than this library',
    ]);
  });

  it("tells every fault of its document at once, with its place", () => {
    const [first, ...others] = good.sheets;
    expect(
      told({
        ...good,
        sheets: [{ ...first, format: "steelyard-sheet/8" }, ...others],
        meals: [{ id: "early", dish: 5 }],
        portions: 3,
      }),
    ).toEqual([
      'sheet-format-newer sheets.0.format: format "steelyard-sheet/8" is newer than this library',
      "plan-malformed portions: expected a list, got 3",
      "plan-malformed meals.0.dish: there is no sheet 5",
    ]);
  });

  it("tells what portionPlan refuses, where it stands", () => {
    expect(told({ ...good, people: [] })).toEqual(["plan-malformed people: an empty list"]);
    expect(told({ ...good, lines: undefined, kitchen: "moon" })).toEqual([
      'kitchen-malformed kitchen: no kitchen is called "moon"',
    ]);
  });

  it("refuses an option that there is not", () => {
    expect(errorOf(() => openPlan(good, { move: "accept" } as never)).message).toContain("move");
  });
});
