import { compare, type Fraction, over, ZERO } from "../../number/fraction.ts";
import type { Sheet } from "../../sheet/sheet.ts";
import type { Brought } from "./brought.ts";
import type { ReadDemand } from "./demands.ts";
import { type Linear, less, onePortion, type Point, valueAt } from "./linear.ts";
import { BASE, DOSE, gather, type LineAt, type Model, nameIn } from "./model.ts";
import type { Side } from "./open.ts";

type SheetLine = Sheet["plan"]["lines"][number];

/** What a constraint is about. */
export type On =
  | { readonly kind: "demand"; readonly demand: ReadDemand }
  /** A line's own least or most, grams of one portion; of a dose, what everyone is given. */
  | ({ readonly kind: "line"; readonly name: string; readonly isDose?: boolean } & LineAt);

/**
 * `least ≤ value / per ≤ most`, with `per` at or above 0. Everything that a fit keeps to has this
 * form: for an amount of one portion `per` is `u`, for a share the energy, for a ratio its second
 * amount.
 */
export interface Constraint {
  readonly on: On;
  readonly value: Linear;
  readonly per: Linear;
  readonly least: Fraction | undefined;
  readonly most: Fraction | undefined;
  /** Whether it may be missed where not everything can be met. */
  readonly soft: boolean;
}

export function demandConstraint(model: Model, demand: ReadDemand, { value, per }: Brought): Constraint {
  return {
    on: { kind: "demand", demand },
    value: gather(model, value),
    per: per ? gather(model, per) : onePortion(model.movers.length),
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
  const per = onePortion(model.movers.length);
  const tightest = new Map<string, Constraint & { readonly factor: Fraction }>();
  const isBound = ({ least, most }: SheetLine): boolean => least !== undefined || most !== undefined;
  for (const at of linesByName(model, isBound)) {
    const { line, least, most } = model.dishes[at.dish]?.sheet.plan.lines[at.line] ?? {};
    const grams = gramsOf(model, at);
    const place = model.places[at.dish]?.[at.line] ?? BASE;
    if (!line || place === DOSE) continue;
    const constrain = (end: "least" | "most", bound: Fraction): void => {
      const factor = grams.n === 0n ? (bound.n === 0n ? ZERO : undefined) : over(bound, grams);
      // Nothing moves a line of no grams: a most always holds, a least above 0 never does.
      if (factor === undefined && end === "most") return;
      if (end === "least" && bound.n === 0n) return;
      const id = factor === undefined ? `${end}:${at.name}` : `${end}:${place}`;
      const now = tightest.get(id);
      const isTighter = !now || compare(factor ?? ZERO, now.factor) * (end === "least" ? 1 : -1) > 0;
      if (!isTighter) return;
      tightest.set(id, {
        on: { kind: "line", ...at },
        value: weightOf(model, at),
        per,
        least: end === "least" ? bound : undefined,
        most: end === "most" ? bound : undefined,
        soft: false,
        factor: factor ?? ZERO,
      });
    };
    if (least !== undefined) constrain("least", least);
    if (most !== undefined) constrain("most", most);
  }
  return [...tightest.values()];
}

/** Which end a point is beyond, if it is beyond one. */
export function sideMissed({ value, per, least, most }: Constraint, point: Point): Side | undefined {
  const against = (bound: Fraction): Fraction => valueAt(less(value, bound, per), point);
  if (least && against(least).n < 0n) return "least";
  return most && against(most).n > 0n ? "most" : undefined;
}

/** What everyone is given of doses that were freed. */
export function doseConstraints(model: Model): Constraint[] {
  if (!model.movers.some(({ isDose }) => isDose)) return [];
  return linesByName(model).flatMap((at): Constraint[] => {
    if (!model.movers[model.places[at.dish]?.[at.line] ?? BASE]?.isDose) return [];
    const grams = gramsOf(model, at);
    const on = { kind: "line", ...at, isDose: true } as const;
    const per = onePortion(model.movers.length);
    return [{ on, value: weightOf(model, at), per, least: grams, most: grams, soft: false }];
  });
}

/** Every line that is wanted with its name, in the order of the names. */
export function linesByName(
  model: Pick<Model, "dishes">,
  isWanted?: (line: SheetLine) => boolean,
): (LineAt & { readonly name: string })[] {
  const all = model.dishes.flatMap((dish, d) =>
    dish.sheet.plan.lines.flatMap((line, i) =>
      isWanted && !isWanted(line) ? [] : [{ dish: d, line: i, name: nameIn(dish, line.line.key) }],
    ),
  );
  return all.sort((a, b) => (a.name < b.name ? -1 : 1));
}

/** Grams of a line in one portion as written. */
export function gramsOf({ dishes }: Pick<Model, "dishes">, { dish, line }: LineAt): Fraction {
  const values = dishes[dish]?.sheet.values;
  return values ? over(values.grams[line] ?? ZERO, values.portions) : ZERO;
}

/** What a single line weighs in one portion, as a quantity. */
export function weightOf(model: Model, at: LineAt): Linear {
  const { n, d } = gramsOf(model, at);
  const place = model.places[at.dish]?.[at.line] ?? BASE;
  return {
    still: place === BASE ? n : 0n,
    each: model.movers.map((_, j) => (j === place ? n : 0n)),
    dose: place === DOSE ? n : 0n,
    scale: d,
  };
}

/** The constraint with other ends; `undefined` opens one. */
export function withEnds(
  constraint: Constraint,
  ends: { readonly least: Fraction | undefined; readonly most: Fraction | undefined },
): Constraint {
  return { ...constraint, ...ends };
}

/** Whether one figure is asked, neither more nor less. */
export function isExact({ least, most }: Pick<Constraint, "least" | "most">): boolean {
  return least !== undefined && most !== undefined && compare(least, most) === 0;
}
