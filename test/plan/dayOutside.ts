import type { Demand } from "../../src/scale/demand.ts";
import { boundsOf, bringsOf, groupsOf, Model, type Solved, sideOf, solved } from "../scale/fit/outside.ts";
import type { Meal } from "../scale/fit/together.ts";
import { highs } from "../scale/solve/outside.ts";

/** Dishes of a day, each with the meal that it belongs to, and what share of the day's energy each meal has. */
export interface Day extends Meal {
  readonly mealOf: readonly number[];
  readonly shares: readonly number[];
  readonly band: number;
}

/** What a day comes to at its best: departures inside dishes, then how far meals are from their shares. */
export interface Best {
  readonly status: Solved["status"];
  readonly inside: number;
  readonly far: number;
}

/** Which lines move as one in each dish, and which of those is the dish's own factor. */
export function groupsIn({
  dishes,
}: Pick<Meal, "dishes">): readonly { readonly of: readonly string[]; readonly base: string | undefined }[] {
  return dishes.map(({ recipe }) => {
    const of = groupsOf(recipe.lines);
    const parts = of.filter((g) => g.startsWith("part")).sort();
    return { of, base: of.includes("base") ? "base" : parts[0] };
  });
}

/** The dish whose factor is the common one. */
export function leadIn(day: Pick<Meal, "dishes">): number {
  return Math.max(
    0,
    groupsIn(day).findIndex(({ base }) => base !== undefined),
  );
}

/** What each meal is multiplied by to bring its share of the day's energy before anything is fitted. */
export function before({ dishes, demands, mealOf, shares }: Day): readonly number[] {
  const all = dishes.map(({ sheet }) => bringsOf(sheet)("energy"));
  const groups = groupsIn({ dishes });
  const energy = (meal: number, dose: boolean): number =>
    all.reduce(
      (total, own, d) =>
        mealOf[d] !== meal
          ? total
          : total + own.reduce((sum, e, i) => sum + ((groups[d]?.of[i] === "dose") === dose ? e : 0), 0),
      0,
    );
  const written = shares.reduce((total, _, m) => total + energy(m, true) + energy(m, false), 0);
  const asked = demands.find(({ of }) => of === "energy") as Demand | undefined;
  const number = (value: unknown): number | undefined => {
    if (value === undefined) return undefined;
    const [n = "", d = "1"] = String(value).split("/");
    return Number(n) / Number(d);
  };
  const [exactly, least, most] = [asked?.exactly, asked?.least, asked?.most].map(number);
  const whole =
    exactly ??
    (least !== undefined && most !== undefined
      ? (least + most) / 2
      : least !== undefined
        ? Math.max(least, written)
        : most !== undefined && most > 0
          ? Math.min(most, written)
          : written);
  return shares.map((share, m) => {
    const moving = energy(m, false);
    if (moving === 0) return 1;
    return Math.min(10, Math.max(0.1, (share * whole - energy(m, true)) / moving));
  });
}

/**
 * A day written out once more, in binary floats, for HiGHS (registry package `highs`): columns are factors
 * over what the dish was multiplied by beforehand, over the same of the first dish with held lines; `u` is one
 * over that. The first aim is solved, held, and then the second.
 */
export function bestOf(day: Day): Best {
  const { dishes, demands, mealOf, shares, band } = day;
  const model = new Model();
  const inf = highs.infinity;
  const by = before(day);
  const pre = (d: number): number => by[mealOf[d] ?? 0] ?? 1;
  const lead = leadIn(day);
  const groups = groupsIn(day);
  const u = model.column(0, 0.1 * pre(lead), 10 * pre(lead));
  const inside: (readonly [number, number])[] = [];
  const columns = dishes.map(({ recipe, sheet: s }, d) => {
    const { of, base } = groups[d] ?? { of: [], base: undefined };
    const size = d === lead ? model.column(0, 1, 1) : model.column(0, 0, inf);
    if (d !== lead) {
      model.row(0, inf, [size, 1], [u, -0.1 / pre(d)]);
      model.row(-inf, 0, [size, 1], [u, -10 / pre(d)]);
    }
    const own = new Map<string, number>();
    const columnOf = (i: number): number =>
      of[i] === "dose" ? u : of[i] === base ? size : (own.get(of[i] ?? "") ?? size);
    of.forEach((group, i) => {
      if (group === base || group === "dose" || own.has(group)) return;
      const { low, high } = boundsOf(recipe.lines, i);
      const f = model.column(0, 0, inf);
      model.row(0, inf, [f, 1], [size, -low]);
      if (high !== inf) model.row(-inf, 0, [f, 1], [size, -high]);
      const [rise, fall] = [model.column(1, 0, inf), model.column(2, 0, inf)];
      model.row(0, 0, [f, 1], [size, -1], [rise, -1], [fall, 1]);
      inside.push([rise, 1], [fall, 2]);
      own.set(group, f);
    });
    recipe.lines.forEach((_, i) => {
      if (of[i] === "dose") return;
      const { least, most } = boundsOf(recipe.lines, i);
      const grams = ((s.lines[i]?.grams.toNumber() ?? 0) / s.portions.toNumber()) * pre(d);
      if (least !== undefined) model.row(0, inf, [columnOf(i), grams], [u, -least]);
      if (most !== undefined) model.row(-inf, 0, [columnOf(i), grams], [u, -most]);
    });
    return columnOf;
  });
  const terms = (d: number, values: readonly number[]): (readonly [number, number])[] =>
    values.map((v, i) => {
      const column = (columns[d] as (i: number) => number)(i);
      return [column, column === u ? v : v * pre(d)] as const;
    });
  for (const demand of demands) {
    const sides = dishes.map(({ sheet: s }) => sideOf(demand, bringsOf(s)));
    const { least, most } = sides[0] ?? {};
    const against = (bound: number): (readonly [number, number])[] => [
      ...sides.flatMap(({ value, per }, d) =>
        terms(
          d,
          value.map((v, i) => (per === "portion" ? v : v - bound * (per[i] ?? 0))),
        ),
      ),
      ...(sides[0]?.per === "portion" ? [[u, -bound] as const] : []),
    ];
    if (least !== undefined) model.row(0, inf, ...against(least));
    if (most !== undefined) model.row(-inf, 0, ...against(most));
  }
  const far: (readonly [number, number])[] = [];
  shares.forEach((share, m) => {
    const against = (bound: number): (readonly [number, number])[] =>
      dishes.flatMap(({ sheet: s }, d) =>
        terms(
          d,
          bringsOf(s)("energy").map((e) => e * ((mealOf[d] === m ? 1 : 0) - bound)),
        ),
      );
    model.row(0, inf, ...against(share * (1 - band)));
    model.row(-inf, 0, ...against(share * (1 + band)));
    const [over, under] = [model.column(0, 0, inf), model.column(0, 0, inf)];
    model.row(0, 0, ...against(share), [over, -1], [under, 1]);
    far.push([over, 1], [under, 1]);
  });
  const first = solved(model);
  if (first.status !== "optimal") return { status: first.status, inside: Number.NaN, far: Number.NaN };
  const then = model.with((copy) => {
    copy.row(-inf, first.objective + 1e-9, ...inside);
    for (const [column] of inside) copy.cost(column, 0);
    for (const [column] of far) copy.cost(column, 1);
  });
  const second = solved(then);
  return { status: second.status, inside: first.objective, far: second.objective };
}
