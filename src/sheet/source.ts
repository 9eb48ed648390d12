import { type ComponentId, componentAt, componentIds, componentPlace } from "../food/components.ts";
import { type Composition, cook, overOneScale, readFigure, type Shares } from "../food/composition.ts";
import { figureMarks, isRanged, type ReadFigure } from "../food/figure.ts";
import type { State } from "../food/food.ts";
import { kitchenNameOf } from "../food/kitchenName.ts";
import type { Food } from "../food/table.ts";
import { type Exact, equals, isZero, ONE, over, times, ZERO } from "../number/exact.ts";
import { type Ends, isNothing, scaledBy } from "./ends.ts";
import { Sheet } from "./sheet.ts";
import type { KeptKind } from "./tally.ts";

/** Something a source says of itself for one component. */
export interface Mark {
  /** Key of the line inside a nested recipe; empty for the source itself. */
  readonly at: string;
  readonly kind: KeptKind;
  /** Share of the source's mass that the mark speaks of, 0 to 1. */
  readonly share: Exact;
}

/**
 * What a line draws its figures from: a food, or a nested recipe as eaten. Values stand per 100 g
 * in registry order over one scale, so that a sheet adds whole numbers.
 */
export interface Source {
  readonly id: string;
  readonly name: string;
  readonly state: State | undefined;
  readonly food: Food | undefined;
  readonly values: readonly bigint[];
  readonly scale: bigint;
  /** What the line's own cooking leaves of components. */
  readonly left: Shares;
  /** The cookings of a food one after another: its own, then those of the dishes around it. */
  readonly cookings: readonly Shares[];
  /** A nested recipe as the line's cooking leaves it, food by food; its water is left to `left`. */
  readonly asEaten: Sheet | undefined;
  /** What a food says of a component, after cooking; nothing of a nested recipe, which asks its own lines. */
  figure(component: number): ReadFigure | undefined;
  /** Between what 100 g of it can hold of a component, after cooking. */
  ends(component: number): Ends;
  marks(component: number): readonly Mark[];
  /** The same as another cooking leaves it. */
  again(shares: Shares): Source;
}

const NO_MARKS: readonly Mark[] = [];

/** A food as a source, with what cooking leaves of each component. */
export function foodSource(food: Food, shares: Shares): Source {
  if (shares.size > 0)
    return cookedFood(food, cook(food.input, food.composition, shares, []), shares, [shares]);
  // All lines of a food that nothing is cooked out of draw on one source.
  const made = UNCOOKED.get(food) ?? cookedFood(food, food.composition, shares, []);
  UNCOOKED.set(food, made);
  return made;
}

const UNCOOKED: WeakMap<Food, Source> = /* @__PURE__ */ new WeakMap();

function cookedFood(food: Food, made: Composition, left: Shares, cookings: readonly Shares[]): Source {
  const { id, state } = food.input;
  const name = kitchenNameOf(food.input);
  const { values, scale, figures } = made;
  const marks: (readonly Mark[] | undefined)[] = [];
  // Of a component that the registry lacks and the food does not tell.
  const figure = (component: number): ReadFigure =>
    figures[component] ?? readFigure(food.input, componentAt(component), ...cookings);
  return {
    ...{ id, name, state, food, values, scale, left, cookings, asEaten: undefined },
    figure,
    ends: (component) => figureEnds(figure(component)),
    marks: (component) => {
      const known = marks[component];
      if (known) return known;
      const kinds = kindsOf(figure(component));
      const own = kinds.length === 0 ? NO_MARKS : kinds.map((kind) => ({ at: "", kind, share: ONE }));
      marks[component] = own;
      return own;
    },
    again: (shares) =>
      cookedFood(food, cook(food.input, made, shares, cookings), left, [...cookings, shares]),
  };
}

function kindsOf(figure: ReadFigure): readonly KeptKind[] {
  const own = figureMarks(figure);
  if (own.length > 0 && isNothing(figureEnds(figure))) return [...own, "nil"];
  return isRanged(figure) ? [...own, "ranged"] : own;
}

/** Of what is silent or a trace nothing limits the most, and nothing of it is told. */
function figureEnds({ value, low = value, high }: ReadFigure): Ends {
  return { low, high, told: high ?? value };
}

/**
 * A nested recipe as eaten, per 100 g of it. Cooking it again cooks each of its foods again, so that
 * what is computed from other components follows them; only its water is left as a whole, since the
 * yield has added to it or taken off it.
 */
export function nestedSource(id: string, nested: Sheet, shares: Shares): Source {
  return sheetSource(id, shares.size === 0 ? nested : cookedAgain(nested, shares), shares);
}

function sheetSource(id: string, asEaten: Sheet, left: Shares): Source {
  const kept = (component: ComponentId): Exact => (component === "water" && left.get(component)) || ONE;
  const per100g = (each: ComponentId): Exact => times(asEaten.per100g(each).value, kept(each));
  const values = componentIds.map(per100g);
  for (const each of asEaten.plan.ownComponents) values[componentPlace(each)] = per100g(each);
  return {
    ...{ id, name: asEaten.name, state: undefined, food: undefined, left, cookings: [], asEaten },
    ...overOneScale(values),
    figure: () => undefined,
    ends: (component) => {
      const each = componentAt(component);
      return scaledBy(asEaten.per100g(each).ends, kept(each));
    },
    marks: (component) => {
      const marks = asEaten.marks(component);
      const isLeft = !equals(kept(componentAt(component)), ONE);
      return isLeft ? [...marks, ...leftMarks(asEaten, component, marks)] : marks;
    },
    again: (shares) => sheetSource(id, cookedAgain(asEaten, shares), left),
  };
}

/** What a share left of a whole nested recipe makes of its foods' figures: derived, where there was something. */
function leftMarks(s: Sheet, component: number, marks: readonly Mark[]): Mark[] {
  const isSaid = (at: string): boolean =>
    marks.some((m) => m.at === at && (m.kind === "missing" || m.kind === "trace" || m.kind === "derived"));
  return foodsIn(s, component, ONE).flatMap(({ at, share }) =>
    isSaid(at) ? [] : [{ at, kind: "derived" as const, share }],
  );
}

/** The foods of a sheet that hold something of a component, nested ones too, by key and share of its mass. */
function foodsIn({ plan, values, masses }: Sheet, component: number, of: Exact): Omit<Mark, "kind">[] {
  return plan.lines.flatMap(({ line, source }, i) => {
    const grams = values.grams[i] ?? ZERO;
    if (isZero(grams) || isNothing(source.ends(component))) return [];
    const share = times(of, over(grams, masses.raw));
    if (!source.asEaten) return [{ at: line.key, share }];
    return foodsIn(source.asEaten, component, share).map((each) => ({
      ...each,
      at: `${line.key}/${each.at}`,
    }));
  });
}

function cookedAgain({ plan, values }: Sheet, shares: Shares): Sheet {
  const { presumed, spread } = shares;
  const whole = new Map([...shares].map(([id, left]) => [id, id === "water" ? ONE : left]));
  const dry = Object.assign(whole, { ...(presumed && { presumed }), ...(spread && { spread }) });
  const lines = plan.lines.map((line) => ({ ...line, source: line.source.again(dry) }));
  return new Sheet(plan.withLines(lines), values);
}
