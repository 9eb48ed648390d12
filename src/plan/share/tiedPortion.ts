import { type Exact, ONE } from "../../number/exact.ts";
import type { Constraint } from "../../scale/engine/constraints.ts";
import type { Linear, Point } from "../../scale/engine/linear.ts";
import { amountAt, type LineAt, type Model, nameIn } from "../../scale/engine/model.ts";
import { layOut } from "../../scale/engine/programme.ts";
import { type Nearest, nearestPoint } from "../../scale/engine/quotient.ts";
import { easedPortion, type Held, placeOf } from "./heldPortion.ts";

/** What a pot's ratios ask of a portion: each group at its ratio to the first. */
export function ties(model: Model, groups: readonly LineAt[], ratios: readonly Exact[]): Constraint[] {
  const [first, ...others] = groups;
  if (!first) return [];
  return others.flatMap((group, p): Constraint[] => {
    const ratio = ratios[p];
    const dish = model.dishes[group.dish];
    if (!ratio || !dish) return [];
    const key = dish.sheet.plan.lines[group.line]?.line.key ?? "";
    const on = { kind: "line", name: nameIn(dish, key), ...group } as const;
    const at = (own: LineAt): Linear => amountAt(placeOf(model, own), ONE);
    return [{ on, value: at(group), per: at(first), least: ratio, most: ratio, soft: false }];
  });
}

/**
 * The portion that a pot of these ratios gives: no demand is missed by more than the tolerance, the
 * total of what they are missed by is least, and then departures are, as a fit chooses.
 */
export function portionAt(
  { problem, groups }: Held,
  ratios: readonly Exact[],
  tolerance: Exact,
  pivots: number | undefined,
): Point {
  const { model, constraints } = problem;
  const held = constraints.flatMap((each) =>
    each.soft ? [{ ...easedPortion(each, tolerance), soft: false }] : [],
  );
  const all = [...constraints, ...(tolerance.n === 0n ? [] : held), ...ties(model, groups, ratios)];
  const mayMiss = tolerance.n > 0n;
  // The ratios suit this portion, so there is one.
  return (nearestPoint(layOut(model, all, mayMiss), pivots) as Nearest).point;
}
