import { type ComponentId, componentIds } from "../food/components.ts";
import { readFigure, type ShareSpread, type Shares } from "../food/composition.ts";
import { isRanged, type ReadFigure } from "../food/figure.ts";
import type { Food } from "../food/table.ts";
import { type Exact, exact, fraction, isZero, minus, ONE, over, times, ZERO } from "../number/exact.ts";
import { componentIndex, type PlanLine } from "./plan.ts";
import type { Sheet } from "./sheet.ts";

/** How an amount errs where it is weighed or spooned. */
export type Weighing =
  /** Grams: it lies anywhere within half a step either way. */
  | { readonly step: Exact }
  /** Standard deviation of what is measured out, as a share of it. */
  | { readonly spread: Exact };

/** Something that is not known sharply, and how a sum on a line moves with it. */
export interface SpreadTerm {
  /** What it is: terms of one name move together, others apart from each other. */
  readonly of: string;
  readonly variance: Exact;
  /** By how much the sum moves for 1 more of it. */
  readonly slope: Exact;
  /** Key of the line. */
  readonly line: string;
}

/** The terms of a sum, and the lines that bring something of which nobody says how sure it is. */
export interface Spread {
  readonly terms: readonly SpreadTerm[];
  readonly unsaid: readonly string[];
}

/** A rectangular distribution of full width w has the variance w²/12: JCGM 100:2008, 4.3.7. */
const RECTANGLE: Exact = /* @__PURE__ */ fraction(1n, 12n);

/** Nine in ten of a normal distribution lie within 1.645 standard deviations: JCGM 100:2008, table G.1. */
const NINE_IN_TEN: Exact = /* @__PURE__ */ fraction(1645n, 1000n);

/** How sure what all lines bring of a component is, or one line, by key; how amounts err, by line. */
export function spreadOf(
  s: Sheet,
  id: ComponentId,
  weighing: (line: string) => Weighing | undefined,
  only?: string,
): Spread {
  const all = s.plan.lines.map((planned, i): Spread => {
    const { key } = planned.line;
    const grams = s.values.grams[i] ?? ZERO;
    if ((only !== undefined && key !== only) || isZero(grams)) return NOTHING;
    const own = lineSpread(planned, id, grams);
    const how = weighing(key);
    return how ? { ...own, terms: [...own.terms, weighed(planned, id, grams, how)] } : own;
  });
  return joined(all);
}

const NOTHING: Spread = { terms: [], unsaid: [] };

function joined(all: readonly Spread[]): Spread {
  return { terms: all.flatMap(({ terms }) => terms), unsaid: all.flatMap(({ unsaid }) => unsaid) };
}

function lineSpread({ line, source }: PlanLine, id: ComponentId, grams: Exact): Spread {
  if (source.asEaten) {
    const { terms, unsaid } = spreadOf(source.asEaten, id, () => undefined);
    const share = over(grams, source.asEaten.masses.cooked);
    const under = (key: string): string => `${line.key}/${key}`;
    return {
      terms: terms.map((t) => ({ ...t, slope: times(t.slope, share), line: under(t.line) })),
      unsaid: unsaid.map(under),
    };
  }
  if (!source.food) return NOTHING;
  const of = figureTerms(source.food, id, source.cookings);
  const figure = source.figure(componentIndex(id));
  const brings = figure !== undefined && !isZero(figure.value);
  return {
    terms: of.map((t) => ({ ...t, slope: times(t.slope, per100(grams)), line: line.key })),
    unsaid: of.length === 0 && brings ? [line.key] : [],
  };
}

type FigureTerm = Omit<SpreadTerm, "line">;

/** What a food's figure rests on per 100 g, after these cookings. */
function figureTerms(food: Food, id: ComponentId, cookings: readonly Shares[]): readonly FigureTerm[] {
  const shares = cookings.at(-1);
  if (!shares) return wholeTerms(food, id);
  const before = cookings.slice(0, -1);
  const left = shares.get(id);
  if (left) {
    const kept = figureTerms(food, id, before).map((t) => ({ ...t, slope: times(t.slope, left) }));
    const spread = shares.spread?.get(id);
    const { value } = readFigure(food.input, id, ...before);
    return spread && !isZero(value) ? [...kept, leftTerm(food, id, left, spread, value)] : kept;
  }
  return byFormula(food, readFigure(food.input, id, ...cookings), cookings) ?? figureTerms(food, id, before);
}

/** How much is left of one food's figure when it is cooked one way is one thing, whatever the line. */
function leftTerm(
  food: Food,
  id: ComponentId,
  left: Exact,
  { low, high }: ShareSpread,
  slope: Exact,
): FigureTerm {
  const half = over(over(minus(high, low), fraction(2n)), NINE_IN_TEN);
  return { of: `left ${id} ${food.input.id} ${left} ${low} ${high}`, variance: times(half, half), slope };
}

function wholeTerms(food: Food, id: ComponentId): readonly FigureTerm[] {
  const figure = food.composition.figures[componentIds.indexOf(id)];
  if (!figure) return [];
  const of = `figure ${id} ${food.input.id}`;
  const { error, low, high, value } = figure;
  if (error) return isZero(error) ? [] : [{ of, variance: times(error, error), slope: ONE }];
  if (figure.formula) return byFormula(food, figure, []) ?? [];
  // Of a limit or a trace the value is what is known at least, not the middle of anything.
  if (!isRanged(figure) || isZero(value) || !low || !high) return [];
  const width = minus(high, low);
  return [{ of, variance: times(times(width, width), RECTANGLE), slope: ONE }];
}

/** A weighted sum moves with what it is made of. */
function byFormula(
  food: Food,
  { formula }: ReadFigure,
  cookings: readonly Shares[],
): readonly FigureTerm[] | undefined {
  if (!formula) return undefined;
  return Object.entries(formula.terms).flatMap(([input, weight]) =>
    figureTerms(food, input as ComponentId, cookings).map((t) => ({
      ...t,
      slope: times(t.slope, exact(weight)),
    })),
  );
}

function weighed({ line, source }: PlanLine, id: ComponentId, grams: Exact, how: Weighing): SpreadTerm {
  const per100g = fraction(source.values[componentIndex(id)] ?? 0n, source.scale);
  const variance =
    "step" in how
      ? times(times(how.step, how.step), RECTANGLE)
      : times(times(grams, grams), times(how.spread, how.spread));
  return { of: `amount of ${line.key}`, variance, slope: per100(per100g), line: line.key };
}

function per100(value: Exact): Exact {
  return over(value, fraction(100n));
}
