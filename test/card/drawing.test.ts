/** Drawings: what they are as long as, what they say to those who cannot see them, and that nothing in them acts. */
import { parse } from "parse5";
import { describe, expect, it } from "vitest";
import { curvePicture, multiplePicture, weekPicture } from "../../src/card.ts";
import { starterFoods } from "../../src/foods.ts";
import { portionPlan } from "../../src/plan/plan.ts";
import { sweep } from "../../src/scale/sweep.ts";
import { sheet } from "../../src/sheet/build.ts";
import { errorOf } from "../number/errorOf.ts";
import { elements, textOf } from "../show/markup.ts";

const oats = sheet(
  { name: "Oats", portions: 1, lines: [{ key: "oats", food: "oats-rolled-dry", amount: "100 g" }] },
  starterFoods,
);
const harm = `"><script>x()</script>`;
const days = ["mon", "tue"].map((id) => ({ id, name: id, meals: [{ id: "supper", dishes: { oats } }] }));
const plan = portionPlan({
  days,
  people: [
    { id: "cox", name: `Cox ${harm}`, demands: { factor: "1/2" } },
    { id: "bow", name: "Bow", demands: { factor: 2 }, away: ["tue"] },
  ],
});

const bars = (svg: string): number[] =>
  [...svg.matchAll(/<rect x="[\d.]+" y="[\d.]+" width="([\d.]+)" height="([\d.]+)"/g)].map(([, w, h]) =>
    Number(svg.includes("multiples") ? w : h),
  );

describe("drawings", () => {
  it("of a week have bars to one scale, and say who is away", () => {
    const svg = weekPicture(plan, { components: ["energy"] });
    // 379 kcal in 100 g of rolled oats: USDA SR28, NDB 08120. Half of it is a quarter of twice of it.
    expect(svg).toMatch(/mon 190 kcal c, tue 190 kcal c\./);
    expect(svg).toMatch(/mon 758 kcal c, tue away\. c: all or part calculated/);
    expect(bars(svg)).toEqual([10, 10, 40]);
  });

  it("of multiples lie as far to the left for a half as to the right for a double", () => {
    const svg = multiplePicture(plan, "mon/supper");
    expect(bars(svg)).toEqual([180, 180]);
    expect(svg).toMatch(/0\.5 times\. Bow 2 times\./);
  });

  it("of a slider follow it, leave out what cannot be reached, and are dashed where not all is known", () => {
    const slid = sweep(oats, [{ target: "energy", values: [100, 200, 300] }], { silent: "accept" });
    const known = curvePicture(slid, { components: ["protein"] });
    expect(known.match(/<circle/g)).toHaveLength(3);
    expect(known).not.toContain("dasharray");
    expect(curvePicture(slid, { components: ["iodine"] })).toContain("dasharray");
  });

  it("are named, in one ink, and leave hostile names inert", () => {
    for (const svg of [weekPicture(plan, { id: `a ${harm}` }), multiplePicture(plan, "mon/supper")]) {
      const page = parse(svg);
      expect(elements(page, "script")).toEqual([]);
      expect(elements(page, "title").map(textOf)).toHaveLength(1);
      expect(textOf(page)).toContain(harm);
      expect(svg).not.toMatch(/#[0-9a-f]{3,6}|rgb/i);
    }
  });

  it("refuse what they cannot draw", () => {
    expect(errorOf(() => weekPicture(oats as never)).code).toBe("card-malformed");
    expect(errorOf(() => multiplePicture(plan, "tea")).code).toBe("plan-malformed");
    const two = sweep(oats, [
      { target: "energy", values: [100] },
      { line: "oats", amounts: ["50 g"] },
    ]);
    expect(errorOf(() => curvePicture(two)).code).toBe("card-malformed");
    expect(errorOf(() => weekPicture(plan, { components: ["zeal" as "zinc"] })).code).toBe(
      "component-unknown",
    );
  });
});
