import type { PersonInput } from "../../src/plan/input.ts";
import type { Demand } from "../../src/scale/demand.ts";
import { bringsOf, groupsOf, Model, sideOf, solved } from "../scale/fit/outside.ts";
import { highs } from "../scale/solve/outside.ts";
import type { PotsWorld } from "./potsWorlds.ts";

/**
 * Whether people can share a pot, written out once more as one programme for all of them, in binary
 * floats, for HiGHS (registry package `highs`) to answer. Of everyone, what each group of lines is
 * multiplied by is taken over what the base of the pot is multiplied by; the parts' columns are the
 * same for all.
 */
export function canShare(world: PotsWorld, people: readonly PersonInput[], tolerance: number): boolean {
  const { recipe, aside } = world;
  const model = new Model();
  const inf = highs.infinity;
  const groups = groupsOf(recipe.lines);
  const brings = bringsOf(world.sheet);
  const besides = aside && bringsOf(aside.sheet);
  const one = model.column(0, 1, 1);
  const parts = new Map<string, number>();
  for (const group of groups) {
    if (group.startsWith("part ") && !parts.has(group)) parts.set(group, model.column(0, 0, inf));
  }
  for (const person of people) {
    // One over the factor of the pot's base, and what is multiplied beside the pot.
    const u = model.column(0, 0, inf);
    const isFit = Array.isArray(person.demands);
    const beside = aside && isFit ? model.column(0, 0, inf) : one;
    const loose = groups.some((group) => group.startsWith("line ")) && isFit ? model.column(0, 0, inf) : one;
    const columnOf = (i: number): number => {
      const group = groups[i] ?? "base";
      if (group === "dose") return u;
      if (group === "base") return one;
      return parts.get(group) ?? loose;
    };
    const within = (column: number, low: number, high: number, of: number): void => {
      model.row(0, inf, [column, 1], [of, -low]);
      model.row(-inf, 0, [column, 1], [of, -high]);
    };
    // Parts keep to their own dish, whatever stands beside it.
    for (const part of parts.values()) within(part, 0.5, 2, one);
    const against = (
      value: readonly number[],
      more: number,
      per: readonly number[] | "portion",
      morePer: number,
      bound: number,
    ): (readonly [number, number])[] => [
      ...value.map((v, i) => [columnOf(i), v] as const),
      [beside, more] as const,
      ...(per === "portion"
        ? [[u, -bound] as const]
        : [...per.map((v, i) => [columnOf(i), -bound * v] as const), [beside, -bound * morePer] as const]),
    ];
    const keep = (demand: Demand, by: number): void => {
      const { value, per, least, most } = sideOf(demand, brings);
      const other = besides && sideOf(demand, besides);
      const [more, morePer] = [
        other?.value[0] ?? 0,
        other && other.per !== "portion" ? (other.per[0] ?? 0) : 0,
      ];
      if (least !== undefined) model.row(0, inf, ...against(value, more, per, morePer, least * (1 - by)));
      if (most !== undefined) model.row(-inf, 0, ...against(value, more, per, morePer, most * (1 + by)));
    };
    if (isFit) {
      within(loose, 0.5, 2, one);
      for (const dish of new Set([one, beside])) within(dish, 0.1, 10, u);
      for (const demand of person.demands as readonly Demand[]) keep(demand, demand.firm ? 0 : tolerance);
      continue;
    }
    const target = person.demands as { readonly energy?: number; readonly factor?: string };
    if (target.factor === undefined) {
      const now = brings("energy").reduce((a, b) => a + b, besides?.("energy")[0] ?? 0);
      const dose = groups.reduce((all, g, i) => all + (g === "dose" ? (brings("energy")[i] ?? 0) : 0), 0);
      const factor = ((target.energy ?? 0) - dose) / (now - dose);
      within(one, factor / 10, factor * 10, u);
      keep({ of: "energy", exactly: String(target.energy) }, 0);
      continue;
    }
    const [n = "", d = "1"] = target.factor.split("/");
    const factor = Number(n) / Number(d);
    for (const column of [one, ...parts.values()]) {
      within(column, factor * (1 - tolerance), factor * (1 + tolerance), u);
    }
  }
  return solved(model).status !== "infeasible";
}
