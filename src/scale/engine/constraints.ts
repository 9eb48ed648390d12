import {
  type Exact,
  fraction,
  greatest,
  least as lesser,
  ONE,
  over,
  times,
  ZERO,
} from "../../number/exact.ts";
import { compareRatios } from "../../number/ratio.ts";
import { compareText } from "../../number/text.ts";
import type { Brought } from "./brought.ts";
import { type Linear, less, ONE_PORTION, type Point, pointValue } from "./linear.ts";
import { boundsOf, type LineBound } from "./lineBounds.ts";
import {
  amountAt,
  BASE,
  DOSE,
  gather,
  type LineAt,
  type Model,
  nameIn,
  type Ranges,
  rangeOver,
} from "./model.ts";

import type { ReadDemand } from "./readDemand.ts";

/** What a constraint is about. */
export type On =
  | { readonly kind: "demand"; readonly demand: ReadDemand }
  /** A line's own least or most, grams of one portion; of a dose, what everyone is given. */
  | ({ readonly kind: "line"; readonly name: string; readonly isDose?: boolean } & LineAt)
  /** How many times its recipe a further sheet may be. */
  | { readonly kind: "sheet"; readonly name: string }
  /** What share of a day's energy a meal may bring. */
  | { readonly kind: "share"; readonly name: string };

/**
 * `least ≤ value / per ≤ most`, with `per` at or above 0. Everything that a fit keeps to has this
 * form: for an amount of one portion `per` is `u`, for a share the energy, for a ratio its second
 * amount.
 */
export interface Constraint {
  readonly on: On;
  readonly value: Linear;
  readonly per: Linear;
  readonly least: Exact | undefined;
  readonly most: Exact | undefined;
  /** Whether it may be missed where not everything can be met. */
  readonly soft: boolean;
}

export function demandConstraint(model: Model, demand: ReadDemand, { value, per }: Brought): Constraint {
  return {
    on: { kind: "demand", demand },
    value: gather(model, value),
    per: per ? gather(model, per) : ONE_PORTION,
    least: demand.least,
    most: demand.most,
    soft: !demand.firm,
  };
}

/**
 * Each moving line's own bounds. Of lines that move as one only the tightest bound at either end
 * counts, the first by key where several are as tight.
 */
export function lineConstraints(model: Model): Constraint[] {
  const tightest = new Map<string, { readonly at: BoundAt; readonly place: number }>();
  for (const at of boundsByName(model)) {
    const place = model.places[at.dish]?.[at.line] ?? BASE;
    if (place === DOSE) continue;
    const { end, factor } = at.bound;
    const id = factor === undefined ? `${end}:${at.name}` : `${end}:${place}`;
    const now = tightest.get(id)?.at.bound.factor;
    const isTighter = !now || !factor || compareRatios(factor, now) * (end === "least" ? 1 : -1) > 0;
    if (isTighter) tightest.set(id, { at, place });
  }
  return [...tightest.values()].map(({ at: { dish, line, name, bound }, place }): Constraint => {
    const { end, amount, grams } = bound;
    return {
      on: { kind: "line", dish, line, name },
      value: amountAt(place, before(model, dish, grams)),
      per: ONE_PORTION,
      least: end === "least" ? amount : undefined,
      most: end === "most" ? amount : undefined,
      soft: false,
    };
  });
}

/**
 * What a further sheet may be of its own recipe: what the common factor may, or a tenth to ten where that
 * is told narrower. An end told of it beside the common factor replaces that.
 */
export function sheetConstraints(model: Model, { common, parts }: Ranges): Constraint[] {
  return model.movers.flatMap(({ kind, name, dish }, place): Constraint[] => {
    if (kind !== "dish") return [];
    const told = parts.get(name);
    const own = {
      on: { kind: "sheet", name } as const,
      value: amountAt(place, ONE),
      per: ONE_PORTION,
      soft: false,
    };
    const usual = { least: lesser(common.least, TENTH), most: common.most && greatest(common.most, TEN) };
    const within = rangeOver(usual, model.dishes[dish]);
    const least = told?.least ? undefined : within.least;
    const most = told?.most ? undefined : within.most;
    return least || most ? [{ ...own, least, most }] : [];
  });
}

const TENTH: Exact = /* @__PURE__ */ fraction(1n, 10n);
const TEN: Exact = /* @__PURE__ */ fraction(10n);

/** A line's own bound, and which line's. */
interface BoundAt extends LineAt {
  readonly name: string;
  readonly bound: LineBound;
}

function boundsByName({ dishes }: Model): BoundAt[] {
  const all = dishes.flatMap((dish, d) =>
    boundsOf(dish.sheet).map((bound): BoundAt => {
      return { dish: d, line: bound.line, name: nameIn(dish, bound.key), bound };
    }),
  );
  return dishes.length === 1 ? all : all.sort((a, b) => compareText(a.name, b.name));
}

/** What a constraint's quotient comes to, or nothing where there is nothing to divide by. */
export function quotientAt({ value, per }: Pick<Constraint, "value" | "per">, point: Point): Exact | null {
  const below = pointValue(per, point);
  return below.n === 0n ? null : over(pointValue(value, point), below);
}

/** Which end a point is beyond, if it is beyond one. */
export function sideMissed({ value, per, least, most }: Constraint, point: Point): LimitEnd | undefined {
  const against = (bound: Exact): Exact => pointValue(less(value, bound, per), point);
  if (least && against(least).n < 0n) return "least";
  return most && against(most).n > 0n ? "most" : undefined;
}

/** What everyone is given of doses that were freed. */
export function doseConstraints(model: Model): Constraint[] {
  if (!model.movers.some(({ isDose }) => isDose)) return [];
  return linesByName(model).flatMap((at): Constraint[] => {
    if (!model.movers[model.places[at.dish]?.[at.line] ?? BASE]?.isDose) return [];
    const grams = writtenGrams(model, at);
    const on = { kind: "line", ...at, isDose: true } as const;
    return [{ on, value: weightOf(model, at), per: ONE_PORTION, least: grams, most: grams, soft: false }];
  });
}

/** Every line with its name, in the order of the names. */
export function linesByName({ dishes }: Pick<Model, "dishes">): (LineAt & { readonly name: string })[] {
  const all = dishes.flatMap((dish, d) =>
    dish.sheet.plan.lines.map(({ line }, i) => ({ dish: d, line: i, name: nameIn(dish, line.key) })),
  );
  return all.sort((a, b) => compareText(a.name, b.name));
}

/** Grams of a line in one portion as written. */
export function writtenGrams({ dishes }: Pick<Model, "dishes">, { dish, line }: LineAt): Exact {
  const values = dishes[dish]?.sheet.values;
  return values ? before({ dishes }, dish, over(values.grams[line] ?? ZERO, values.portions)) : ZERO;
}

/** Grams of a line that moves, as its dish was multiplied beforehand. */
function before({ dishes }: Pick<Model, "dishes">, dish: number, grams: Exact): Exact {
  const by = dishes[dish]?.before;
  return by ? times(grams, by) : grams;
}

/** What a single line weighs in one portion, as a quantity. */
export function weightOf(model: Model, at: LineAt): Linear {
  return amountAt(model.places[at.dish]?.[at.line] ?? BASE, writtenGrams(model, at));
}

/** The constraint with other ends; `undefined` opens one. */
export function withEnds(
  constraint: Constraint,
  ends: { readonly least: Exact | undefined; readonly most: Exact | undefined },
): Constraint {
  return { ...constraint, ...ends };
}

/** Whether one figure is asked, neither more nor less. */
export function isExact({ least, most }: Pick<Constraint, "least" | "most">): boolean {
  return least !== undefined && most !== undefined && (least === most || compareRatios(least, most) === 0);
}

/** The end of something that stands in the way. */
export type LimitEnd = "least" | "most";
