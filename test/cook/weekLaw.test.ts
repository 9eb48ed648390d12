import { parse } from "parse5";
import { describe, expect, it } from "vitest";
import { cardPages } from "../../src/card/personCard.ts";
import { cookingSchedule } from "../../src/cook/cookingSchedule.ts";
import type { CookingSchedule } from "../../src/cook/schedule.ts";
import { partOf } from "../../src/cook/vessel.ts";
import { componentIds } from "../../src/food/components.ts";
import { starterFoods } from "../../src/foods.ts";
import { exactText } from "../../src/number/digits.ts";
import { type Exact, minus, over, plus, sum, times, ZERO } from "../../src/number/exact.ts";
import type { PersonInput } from "../../src/plan/input.ts";
import { portionPlan } from "../../src/plan/plan.ts";
import type { RecipeInput } from "../../src/recipe/document.ts";
import { sheet } from "../../src/sheet/build.ts";
import { revise } from "../../src/sheet/revise.ts";
import type { Sheet } from "../../src/sheet/sheet.ts";
import { shoppingList } from "../../src/shop/shoppingList.ts";
import { isLong } from "../runs.ts";

// A week is held by adding up, literally: what is cooked against what is eaten and left. Dishes and packs are our own.

const sauce: RecipeInput = {
  name: "Tomato sauce",
  portions: 6,
  lines: [
    { key: "tomatoes", food: "tomatoes-canned", amount: "800 g" },
    { key: "onion", food: "onions-raw", amount: "2 medium" },
    { key: "oil", food: "olive-oil", amount: "27 g" },
  ],
  cookedMass: "840 g",
  notes: [{ kind: "storage", text: "Keep cold.", days: 3 }],
};
const foods = starterFoods.with(
  (["oats-rolled-dry", "lentils-red-dry", "tomatoes-canned"] as const).map((id) => ({
    ...starterFoods.get(id),
    packs: [
      { name: "small", edible: 150 },
      { name: "large", edible: 400 },
    ],
  })),
);
const made = (of: RecipeInput): Sheet => sheet(of, foods, { recipes: { sauce } });

const pot = made({
  name: "Oat pot",
  portions: 2,
  lines: [
    { key: "oats", food: "oats-rolled-dry", amount: "120 g" },
    { key: "milk", food: "milk-whole", amount: "300 g" },
    { key: "seeds", food: "pumpkin-seeds", amount: "40 g", added: "serving" },
    { key: "cinnamon", food: "cinnamon-ground", amount: "2 g", scaling: "per-portion", added: "serving" },
  ],
});
const stew = made({
  name: "Lentil stew",
  portions: 4,
  lines: [
    { key: "lentils", food: "lentils-red-dry", amount: "300 g" },
    { key: "sauce", recipe: "sauce", amount: "2 portions" },
    { key: "water", food: "water-tap", amount: "900 g" },
    { key: "yoghurt", food: "yoghurt-greek-fat-free", amount: "120 g", added: "serving" },
  ],
  cookedMass: "1400 g",
  notes: [{ kind: "storage", text: "Keep cold.", days: 2 }],
});
const pasta = made({
  name: "Pasta",
  portions: 3,
  lines: [
    { key: "pasta", food: "pasta-cooked", amount: "600 g" },
    { key: "sauce", recipe: "sauce", amount: "2 portions" },
    { key: "cheese", food: "parmesan", amount: "45 g", scaling: "adjustable", added: "serving" },
  ],
});
const muffins = made({
  name: "Oat muffins",
  portions: 12,
  piece: { name: "muffin", mass: "60 g" },
  lines: [
    { key: "oats", food: "oats-rolled-dry", amount: "300 g" },
    { key: "eggs", food: "egg-raw", amount: "3 large" },
    { key: "banana", food: "bananas-raw", amount: "3 medium" },
  ],
  cookedMass: "720 g",
});

const names = ["mon", "tue", "wed", "thu", "fri", "sat", "sun"];
const days = names.map((id, i) => ({
  id,
  meals: [
    { id: "breakfast", dishes: { pot } },
    { id: "tea", dishes: { muffins } },
    { id: "supper", dishes: i % 3 === 1 ? { pasta } : { stew } },
  ],
}));

/** One as the recipes are, one who swaps what is cooked and added, one who leaves out and leaves on Friday. */
function crew(many: number): readonly PersonInput[] {
  return Array.from({ length: many }, (_, i): PersonInput => {
    const own = {
      id: `p${i}`,
      name: `Person ${i};`,
      daily: [
        { of: "energy", exactly: `${1500 + 370 * i} kcal` },
        { of: "protein", least: "40 g" },
      ] as const,
    };
    if (i % 3 === 1) {
      return {
        ...own,
        instead: {
          pot: revise(pot, { swap: { milk: "soya-drink-unsweetened-fortified" }, name: "Soya pot" }),
          pasta: revise(pasta, { swap: { cheese: "walnuts" }, name: "Pasta and walnuts" }),
        },
      };
    }
    return i % 3 === 2
      ? { ...own, leaveOut: ["stew/yoghurt"], away: ["wed/tea", "fri/supper", "sat", "sun"] }
      : own;
  });
}

const quantities: readonly (readonly [string, (s: Sheet) => Exact])[] = [
  ["mass", (s) => s.masses.cooked],
  ...componentIds.map((id) => [id, (s: Sheet) => s.total(id).value] as const),
];

const potsOf = ({ sessions }: CookingSchedule) => sessions.flatMap(({ pots }) => pots);

/** What is cooked and added, each time it is; nested recipes are in it as what is drawn of them. */
function cookedIn(schedule: CookingSchedule): readonly Sheet[] {
  return [
    ...potsOf(schedule).map((each) => each.sheet),
    ...schedule.sessions.flatMap(({ apart }) => apart.map((each) => each.sheet)),
    ...schedule.servings.flatMap(({ added, count }) => (added ? [partOf(added, count)] : [])),
  ];
}

/** What lines of a sheet take of a nested recipe. */
function drawnIn(s: Sheet, recipe: string): readonly Sheet[] {
  return s.plan.lines.flatMap(({ source, nested }, i) =>
    nested && source.id === recipe
      ? [partOf(nested, over(s.values.grams[i] ?? ZERO, nested.masses.cooked))]
      : [],
  );
}

/** Grams on the cook's pages and on a person's, by person, as they are printed. */
function printed(pages: string) {
  interface Node {
    readonly nodeName: string;
    readonly value?: string;
    readonly childNodes?: readonly Node[];
    readonly attrs?: readonly { readonly name: string; readonly value: string }[];
  }
  const all = (node: Node): readonly Node[] => [node, ...(node.childNodes ?? []).flatMap(all)];
  const text = (node: Node): string =>
    all(node)
      .flatMap(({ value }) => value ?? [])
      .join(" ");
  const has = (node: Node, name: string, own: string): boolean =>
    node.nodeName === name && node.attrs?.some(({ value }) => value === own) === true;
  const grams = (node: Node): readonly number[] =>
    all(node)
      .filter((each) => has(each, "td", "weigh"))
      .map((each) => Number(/([\d.]+) g/.exec(text(each))?.[1]));
  const rows: Record<string, number[]> = {};
  const own: Record<string, number[]> = {};
  for (const page of all(parse(pages) as Node).filter(({ nodeName }) => nodeName === "article")) {
    const title = text(all(page).find(({ nodeName }) => nodeName === "h1") ?? page).trim();
    for (const table of all(page).filter((each) => has(each, "table", "served"))) {
      for (const row of all(table).filter(({ nodeName }) => nodeName === "tr")) {
        const who = /Person \d+;/.exec(text(row))?.[0];
        if (who) rows[who] = [...(rows[who] ?? []), ...grams(row)];
      }
    }
    const isShare = (each: Node): boolean => has(each, "tbody", "pot-share") || has(each, "tr", "taken");
    for (const body of all(page).filter(isShare)) own[title] = [...(own[title] ?? []), ...grams(body)];
  }
  const sorted = (of: typeof own) =>
    Object.fromEntries(Object.entries(of).map(([who, each]) => [who, each.sort((a, b) => a - b)]));
  return { cook: sorted(rows), people: sorted(own) };
}

describe("a week", () => {
  const plan = portionPlan({ days, people: crew(isLong ? 9 : 3), kitchen: "metric", silent: "accept" });
  const schedule = cookingSchedule(plan, {
    cook: { stew: ["mon", "thu", "sat"], muffins: ["mon", "wed", "sat"] },
  });

  it("has in it what it is to be held with: versions, absences, left-overs, a batch made twice", () => {
    expect(
      plan.meals.flatMap(({ dishes }) => [...dishes.values()].flatMap(({ versions }) => versions)).length,
    ).toBeGreaterThan(0);
    expect(plan.portions.some(({ status }) => status === "away")).toBe(true);
    expect(schedule.batches.length).toBeGreaterThan(1);
    expect(schedule.batches.some(({ left }) => left.n > 0n)).toBe(true);
    expect(potsOf(schedule).some(({ sheet: s }) => s.values.portions.gt(6))).toBe(true);
  });

  it("cooks and adds what is eaten and what stays in pots, literally, of mass and every component", () => {
    const eaten = schedule.eaten().flatMap(({ sheets }) => sheets);
    const left = potsOf(schedule).map((each) =>
      partOf(each.sheet, over(each.left, each.sheet.masses.cooked)),
    );
    for (const [name, of] of quantities) {
      const [made_, gone] = [sum(cookedIn(schedule).map(of)), sum([...eaten, ...left].map(of))];
      expect(`${name} ${exactText(gone)}`).toBe(`${name} ${exactText(made_)}`);
    }
    // By the grams that each is told to take, too.
    const taken = sum(schedule.servings.map(({ portion, count }) => times(portion.grams, count)));
    const pots = sum(potsOf(schedule).map((each) => minus(each.sheet.masses.cooked, each.left)));
    expect(exactText(taken)).toBe(exactText(pots));
  });

  it("makes of each batch what is drawn of it and what is left, literally, of mass and every component", () => {
    for (const { draws, left, sheet: s } of schedule.batches)
      expect(exactText(plus(left, sum(draws.map(({ grams }) => grams))))).toBe(exactText(s.masses.cooked));
    const rest = schedule.batches.map(({ sheet: s, left }) => partOf(s, over(left, s.masses.cooked)));
    const drawn = cookedIn(schedule).flatMap((s) => drawnIn(s, "sauce"));
    for (const [name, of] of quantities) {
      const batch = sum(schedule.batches.map((each) => of(each.sheet)));
      expect(`${name} ${exactText(sum([...drawn, ...rest].map(of)))}`).toBe(`${name} ${exactText(batch)}`);
    }
  });

  it("tells each person to take what the cook is told to give them", () => {
    const pages = cardPages(schedule);
    const { cook, people } = printed(pages);
    // Somebody's day is off, and that is no cook's business.
    expect(schedule.notes.map(({ code }) => code)).toContain("off-target");
    expect(pages).not.toContain("off by more than the tolerance");
    // What a swap adds stands on the page of whoever eats it.
    const [, ...own] = pages.split(/<bdi>Pasta and walnuts<\/bdi><\/(?:b|h3|h4)>/);
    expect(own.length).toBeGreaterThan(0);
    for (const each of own) expect(each.slice(0, each.indexOf("</table>"))).toMatch(/walnuts/i);
    expect(Object.keys(people).sort()).toEqual(plan.people.map(({ name }) => name).sort());
    expect(people).toEqual(cook);
  });

  it("tells what each person's day comes to as it is cooked, pooled pots and all", () => {
    const energy = (s: Sheet, grams: Exact, of: Exact): Exact =>
      over(times(s.total("energy").value, grams), of);
    const eats = ({ id, meals }: (typeof plan.days)[number], person: string): Exact =>
      sum(
        schedule.servings
          .filter((each) => each.person === person && meals.includes(each.meal))
          .map(({ meal, dish, portion: { grams }, added }) => {
            const pot = schedule.sessions
              .filter((each) => each.dish === dish && each.meals.includes(meal) && each.eaten.includes(id))
              .flatMap(({ pots }) => pots)
              .find(({ people }) => people.some((each) => each.person === person));
            const taken = pot ? energy(pot.sheet, grams, pot.sheet.masses.cooked) : ZERO;
            return plus(taken, added?.total("energy").value ?? ZERO);
          }),
      );
    expect(schedule.drifts.length).toBeGreaterThan(15);
    let moved = 0;
    for (const { person, day, drift } of schedule.drifts) {
      const found = plan.days.find(({ id }) => id === day);
      const [told] = drift.demands;
      if (!found || !told?.brings) throw new Error(`${person} on ${day}: no energy`);
      expect(`${person} ${day} ${exactText(told.brings)}`).toBe(
        `${person} ${day} ${exactText(eats(found, person))}`,
      );
      // Where each meal is cooked for itself it is what the plan has told.
      if (exactText(told.brings) !== exactText(plan.day(person, day).drift?.demands[0]?.brings ?? ZERO))
        moved += 1;
    }
    expect(moved).toBeGreaterThan(0);
    const off = schedule.drifts.flatMap(({ drift }) =>
      drift.demands.filter(({ holds, heldBefore }) => !holds && heldBefore),
    );
    expect(schedule.notes.filter(({ code, dish }) => code === "off-target" && !dish).length > 0).toBe(
      off.length > 0,
    );
  });

  it("buys what covers it, and one pack less does not", () => {
    const needed = new Map<string, Exact>();
    for (const s of [...cookedIn(schedule), ...schedule.batches.map((each) => each.sheet)])
      for (const { food, grams } of s.lines)
        if (food) needed.set(food, plus(needed.get(food) ?? ZERO, grams));
    const list = shoppingList(schedule);
    expect(list.lines.flatMap(({ food, packs }) => (packs.length > 0 ? [food] : [])).sort()).toEqual([
      "lentils-red-dry",
      "oats-rolled-dry",
      "tomatoes-canned",
    ]);
    for (const line of list.lines) {
      expect(`${line.food} ${exactText(line.needed)}`).toBe(
        `${line.food} ${exactText(needed.get(line.food) ?? ZERO)}`,
      );
      // Water comes from the tap.
      if (line.food === "water-tap") continue;
      expect(`${line.food} ${line.bought.gte(line.needed)}`).toBe(`${line.food} true`);
      for (const { edible } of line.packs) expect(minus(line.bought, edible).lt(line.needed)).toBe(true);
    }
  });
});
