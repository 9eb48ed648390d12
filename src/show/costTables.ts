import { type Language, say } from "../document/language.ts";
import { exact, sum } from "../number/exact.ts";
import { type Cost, costOfPieces } from "../shop/cost.ts";
import type { PortionCost } from "../shop/portions.ts";
import type { ShopNames } from "../shop/shopped.ts";
import { money } from "./shoppingCells.ts";
import { type Cell, type Row, type Table, table } from "./table.ts";

/** What portions cost, one table for each currency: people by meals, or dishes. */
export function costTables(
  portions: readonly PortionCost[],
  names: ShopNames,
  language: Language,
): readonly Table[] {
  const currencies = [...new Set(portions.flatMap(({ costs }) => costs.map(({ currency }) => currency)))];
  const ofPeople = portions.filter(({ person }) => person !== undefined);
  const ofDishes = portions.filter(({ person }) => person === undefined);
  return currencies.flatMap((currency) => [
    ...(ofPeople.length > 0 ? [peopleTable(ofPeople, names, currency, language)] : []),
    ...(ofDishes.length > 0 ? [dishTable(ofDishes, currency, language)] : []),
  ]);
}

function peopleTable(
  portions: readonly PortionCost[],
  { people, meals }: ShopNames,
  currency: string,
  language: Language,
): Table {
  const costs = new Map<string, Map<string, Cost>>();
  for (const { person = "", meal = "", costs: own } of portions) {
    const cost = own.find((each) => each.currency === currency);
    const byMeal = costs.get(person) ?? new Map<string, Cost>();
    if (cost) costs.set(person, byMeal.set(meal, cost));
  }
  const many = meals.size > 1;
  const cells = (name: string, byMeal: readonly (readonly Cost[])[]): readonly Cell[] => {
    const together = many ? [...byMeal, byMeal.flat()] : byMeal;
    return [
      name,
      ...together.map((all) => (all.length === 0 ? "" : money(added(all, currency), language, false))),
    ];
  };
  const of = (person: string, meal: string): readonly Cost[] => {
    const cost = costs.get(person)?.get(meal);
    return cost ? [cost] : [];
  };
  const ids = [...meals.keys()];
  const rows = [...people].map(([person, name]): Row => {
    return {
      kind: "body",
      cells: cells(
        name,
        ids.map((meal) => of(person, meal)),
      ),
    };
  });
  const all = ids.map((meal) => [...people.keys()].flatMap((person) => of(person, meal)));
  const total: Row = { kind: "total", cells: cells(say(language, "Total"), all) };
  const priced = { unit: currency, align: "end" } as const;
  return table({
    title: say(language, "What portions cost"),
    columns: [
      { key: "person", heading: say(language, "Person") },
      ...[...meals].map(([id, name]) => ({ key: `meal ${id}`, heading: name, ...priced })),
      ...(many ? [{ key: "all", heading: say(language, "All meals"), ...priced }] : []),
    ],
    rows: [...rows, total],
    notes: [
      ...(portions.some((each) => !each.portions.eq(1))
        ? [say(language, "all portions of each person, on all days")]
        : []),
      note(language),
    ],
  });
}

/** Costs already in minor units, so that the sum is what a reader gets by adding them up. */
function added(costs: readonly Cost[], currency: string): Cost {
  const bound = costs.some((each) => each.bound === "at-least") ? "at-least" : "point";
  return costOfPieces(currency, sum(costs.map(({ value }) => exact(value))), bound);
}

function dishTable(portions: readonly PortionCost[], currency: string, language: Language): Table {
  const priced = { unit: currency, align: "end" } as const;
  const of = (costs: readonly Cost[]): Cell => {
    const cost = costs.find((each) => each.currency === currency);
    return cost ? money(cost, language, false) : "";
  };
  return table({
    title: say(language, "What portions cost"),
    columns: [
      { key: "dish", heading: say(language, "Dish") },
      { key: "portions", heading: say(language, "Portions"), align: "end" },
      { key: "cost", heading: say(language, "Cost"), ...priced },
      { key: "perPortion", heading: say(language, "Per portion"), ...priced },
    ],
    rows: portions.map(({ dish = "", portions: count, costs, perPortion }) => [
      dish,
      count.toString(),
      of(costs),
      of(perPortion),
    ]),
    notes: [note(language)],
  });
}

function note(language: Language): string {
  return say(
    language,
    "each food's cost is shared by what is eaten of it, so what is left over is paid for too",
  );
}
