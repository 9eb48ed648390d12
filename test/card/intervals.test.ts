import { describe, expect, it } from "vitest";
import { personCard } from "../../src/card.ts";
import { starterFoods } from "../../src/foods.ts";
import { foodTable, sheet, uncertainty } from "../../src/index.ts";
import { portionPlan } from "../../src/plan.ts";
import { portionInterval } from "../../src/sheet/portionInterval.ts";
import { toText } from "../../src/show.ts";
import { errorOf } from "../number/errorOf.ts";

/** Made up: oats of 4 mg ± 0.3, greens of 2.5 mg ± 0.4, seeds of which nobody says how sure they are. */
const foods = foodTable([
  {
    id: "oats",
    name: "Oats",
    source: "made up",
    per100g: { energy: 380, iron: { value: "4", error: "0.3" }, zinc: 3 },
  },
  {
    id: "greens",
    name: "Greens",
    source: "made up",
    per100g: { energy: 25, iron: { value: "2.5", error: "0.4" }, zinc: { value: 1, error: "0.1" } },
  },
  { id: "seeds", name: "Seeds", source: "made up", per100g: { energy: 500, iron: "6" } },
]);
const dish = (name: string, ...keys: readonly string[]): ReturnType<typeof sheet> =>
  sheet({ name, portions: 1, lines: keys.map((food) => ({ food, amount: "100 g" })) }, foods);
const plan = portionPlan({
  meals: [
    {
      id: "lunch",
      name: "Lunch",
      dishes: { bowl: dish("Bowl", "oats", "greens"), side: dish("Side", "oats", "seeds") },
    },
  ],
  people: [{ id: "cox", name: "The cox" }],
});

describe("intervals", () => {
  it("of several dishes let a food of both move as one", () => {
    // 2 · 100 g of oats together, the greens apart: √(0.6² + 0.4²) = 0.721111, twice that about 16.5 mg.
    const [a, b] = [dish("Bowl", "oats", "greens"), dish("Side", "oats", "seeds")];
    const found = portionInterval([a, b], "iron");
    expect([found?.low, found?.high].map((end) => end?.toFixed(4))).toEqual(["15.0578", "17.9422"]);
    expect(found?.unsaid).toEqual(["Seeds"]);
    const { low, high } = uncertainty(a, "iron", "portion");
    const one = portionInterval([a], "iron");
    expect([one?.low.eq(low), one?.high.eq(high)]).toEqual([true, true]);
    expect(portionInterval([b], "zinc")).toBeUndefined();
  });

  it("stand on a card where they are asked for, and nowhere else", () => {
    const card = personCard(plan, "cox", { intervals: true, components: ["energy", "iron", "zinc"] });
    expect(card.replace(/&nbsp;/g, " ")).toContain("about 16.5 mg, 15 to 18");
    expect(card).toMatch(
      /nobody says how sure these foods&#39; figures are, and they count as they stand: Seeds</,
    );
    expect(card).toContain("ranges hold about 95 times in 100");
    // Seeds are silent on zinc: a bound stays one.
    expect(card).toMatch(/at least 7/);
    expect(personCard(plan, "cox")).not.toMatch(/about \d|95 times/);
    expect(errorOf(() => personCard(plan, "cox", { intervals: "yes" as never })).code).toBe("card-malformed");
  });

  it("stand in a plan's tables by name", () => {
    const text = toText(plan, { parts: ["intervals"] });
    expect(text).toContain("Lunch: how sure a portion's figures are");
    expect(text).toMatch(/iron\s+│?\s*mg\s+│?\s*about 16\.5, 15 to 18/);
    expect(text).not.toMatch(/energy\s+│?\s*kcal/);
    expect(toText(plan, { parts: "all" })).not.toContain("how sure");
  });

  it("follow a retention factor that is known to scatter", () => {
    const peas = sheet(
      {
        name: "Peas",
        portions: 1,
        lines: [{ food: "chickpeas-dry", amount: "100 g", retention: "legumes-boiled" }],
      },
      starterFoods,
    );
    const raw = sheet(
      { name: "Peas", portions: 1, lines: [{ food: "chickpeas-dry", amount: "100 g" }] },
      starterFoods,
    );
    const wide = (s: typeof peas): number => {
      const { low, high } = portionInterval([s], "folate") ?? {};
      return low && high ? high.minus(low).toNumber() : 0;
    };
    expect(peas.total("folate").derived).toHaveLength(1);
    expect(wide(peas)).toBeGreaterThan(wide(raw));
  });
});
