import { callback, word } from "../document/leaves.ts";
import { read } from "../document/read.ts";
import { refuseHole } from "../document/safe.ts";
import { fields, once, optional, type Schema } from "../document/schema.ts";
import { type ComponentId, type ComponentUnit, component } from "../food/components.ts";
import { readFigure } from "../food/composition.ts";
import type { ReadFigure } from "../food/figure.ts";
import type { FoodInput } from "../food/food.ts";
import type { FoodTable } from "../food/table.ts";
import { fault, kindOf, within } from "../number/error.ts";
import {
  type Exact,
  fraction,
  greatest,
  isZero,
  least,
  ONE,
  over,
  plus,
  sum,
  times,
  ZERO,
} from "../number/exact.ts";
import { compareRatios } from "../number/ratio.ts";
import { checkSheet } from "./given.ts";
import { componentIndex } from "./plan.ts";
import type { Sheet } from "./sheet.ts";
import type { Source } from "./source.ts";

/** Options of {@link between}. */
export interface BetweenOptions {
  /** Of what: the batch, unless told. */
  readonly where?: "total" | "portion" | "per100g";
  /** Ids of the foods that stand in for a silent one; those of its group and state, unless told. */
  readonly like?: (food: FoodInput) => readonly string[];
}

/** A line whose figure may lie anywhere in an interval. */
export interface WidenedLine {
  /** Key of the line, `dish/line` in a nested recipe. */
  readonly key: string;
  /** Whether the figure is not known at all, is a trace or a limit, or was printed with its interval. */
  readonly why: "silent" | "trace" | "limit" | "interval";
  readonly least: Exact;
  /** Nothing where no limit is known. */
  readonly most: Exact | undefined;
  /** The foods that the interval was taken from. */
  readonly like: readonly string[];
}

/** The least and the most that a figure of a sheet can be. */
export interface Between {
  readonly unit: ComponentUnit;
  readonly least: Exact;
  /** Nothing where some line has no limit. */
  readonly most: Exact | undefined;
  readonly widened: readonly WidenedLine[];
  /** Keys of the lines that nothing limits from above. */
  readonly unlimited: readonly string[];
}

/**
 * Between what limits a figure lies: silent lines are taken to lie between the smallest and the largest
 * figure among like foods of the sheet's own table, of the same group and state; figures that carry an
 * interval widen it by that. Borrowed figures count as they stand, and never stand in for others.
 *
 * Like foods say what is usual, not what is possible: this is a range to think with, not a proof.
 *
 * Throws `component-unknown`, `food-unknown` for an id that `like` gives, `sheet-malformed` for options
 * that there are not, and `sheet-empty` for 100 g of a recipe with no mass.
 *
 * @example
 * ```ts
 * const s = sheet(
 *   { name: "Greens", portions: 1, lines: [{ food: "kale-raw", amount: "100 g" }, { food: "mine", amount: "50 g" }] },
 *   starterFoods.with([{ id: "mine", name: "Greens from the garden", state: "raw", group: "vegetables", source: "garden", per100g: {} }]),
 * );
 * const range = between(s, "vitaminC");
 * console.log(`${range.least} to ${range.most}, ${range.widened[0].why}`); // => 121.05 to 191.85, silent
 * ```
 */
export function between(s: Sheet, id: ComponentId, how: BetweenOptions = {}): Between {
  checkSheet(s);
  read(betweenHow(), how, "sheet-malformed");
  const { unit } = component(id);
  const { low, high, lines } = rangeOf(s, id, how);
  const share = shareOf(s, how.where ?? "total");
  const scaled = (end: Exact): Exact => times(end, share);
  const most = high && scaled(high);
  return {
    unit,
    least: scaled(low),
    most,
    widened: lines.map((line) => ({
      key: line.key,
      why: line.why,
      least: scaled(line.low),
      most: line.high && scaled(line.high),
      like: line.like,
    })),
    unlimited: lines.filter((line) => line.high === undefined).map((line) => line.key),
  };
}

const betweenHow: () => Schema<BetweenOptions> = /* @__PURE__ */ once(() =>
  fields<BetweenOptions>({
    where: optional(word(["total", "portion", "per100g"])),
    like: optional(callback(LIKE)),
  }),
);

const LIKE = "a function from a food to the ids of foods like it";

interface Ends {
  readonly low: Exact;
  readonly high: Exact | undefined;
}

interface Wide extends Ends {
  readonly key: string;
  readonly why: WidenedLine["why"];
  readonly like: readonly string[];
}

interface Range extends Ends {
  readonly lines: readonly Wide[];
}

/** The batch's range, the water that the pot takes up or gives off counted in, as far as there is any to lose. */
function rangeOf(s: Sheet, id: ComponentId, how: BetweenOptions): Range {
  const lines = s.plan.lines.map(({ line, source, nested }, i): Range => {
    const grams = s.values.grams[i] ?? ZERO;
    if (isZero(grams)) return { low: ZERO, high: ZERO, lines: [] };
    const made = nested ? nestedRange(nested, source, id, how) : foodRange(source, s.plan.foods, id, how);
    const part = nested ? over(grams, nested.masses.cooked) : over(grams, HUNDRED);
    const named = made.lines.map((wide) => ({
      ...wide,
      key: wide.key === "" ? line.key : `${line.key}/${wide.key}`,
    }));
    return scale({ ...made, lines: named }, part);
  });
  const inPot = (i: number): boolean => id === "water" && s.plan.lines[i]?.line.added === "cooking";
  const pot = together(lines.filter((_, i) => inPot(i)));
  const served = together(lines.filter((_, i) => !inPot(i)));
  return together([id === "water" ? dried(pot, s.masses.change) : pot, served], lines);
}

function together(all: readonly Ends[], lines: readonly Range[] = []): Range {
  const highs = all.map(({ high }) => high);
  return {
    low: sum(all.map(({ low }) => low)),
    high: highs.every((high) => high !== undefined) ? sum(highs) : undefined,
    lines: lines.flatMap((range) => range.lines),
  };
}

/** A pot's water after cooking; where even the most of it is less than what came off, all of it may have stayed. */
function dried({ low, high }: Ends, change: Exact): Ends {
  const left = high && plus(high, change);
  return { low: greatest(ZERO, plus(low, change)), high: left && left.n < 0n ? high : left };
}

function nestedRange(nested: Sheet, source: Source, id: ComponentId, how: BetweenOptions): Range {
  const range = rangeOf(source.asEaten ?? nested, id, how);
  // Its foods are cooked again one by one; its water has one share as a whole.
  return id === "water" ? scale(range, source.left.get(id) ?? ONE) : range;
}

/** 100 g of a food, as cooking leaves it. */
function foodRange(source: Source, foods: FoodTable, id: ComponentId, how: BetweenOptions): Range {
  const figure = source.figure(componentIndex(id));
  const food = source.food?.input;
  if (!figure || !food) return { low: ZERO, high: undefined, lines: [] };
  const { low = figure.value, high } = figure;
  const known = figure.kind !== "missing" && high !== undefined;
  if (known && compareRatios(low, high) === 0) return { low, high, lines: [] };
  const like = known ? [] : likeFoods(food, foods, how).flatMap((each) => endsOf(each, source, id));
  const ends: Ends = known ? { low, high } : widest(figure, like);
  return {
    ...ends,
    lines: [{ key: "", why: whyOf(figure), ...ends, like: like.map((each) => each.id) }],
  };
}

/** From the smallest to the largest of like foods; what is known at least, of a trace say, stays the least. */
function widest(
  { kind, value, low = value }: ReadFigure,
  like: readonly (Ends & { readonly high: Exact })[],
): Ends {
  const [first, ...rest] = like;
  if (!first) return { low, high: undefined };
  const lows = rest.reduce((all, each) => least(all, each.low), first.low);
  const highs = rest.reduce((all, each) => greatest(all, each.high), first.high);
  return { low: kind === "missing" ? lows : low, high: greatest(low, highs) };
}

function likeFoods(food: FoodInput, foods: FoodTable, { like }: BetweenOptions): readonly FoodInput[] {
  if (like) {
    const ids: unknown = like(food);
    if (Array.isArray(ids)) {
      within(["like"], () => refuseHole(ids, "sheet-malformed"));
      return ids.map((id, i) => within(["like", i], () => foods.get(id)));
    }
    throw fault("sheet-malformed", `like gives ${kindOf(ids)}`, `give ${LIKE}`, ["like"]);
  }
  const { id, group, state } = food;
  if (group === undefined || state === undefined) return [];
  return foods.ids
    .map((each) => foods.get(each))
    .filter((f) => f.id !== id && f.group === group && f.state === state);
}

/** What a like food says of a component, cooked as the line is; nothing where it does not know it itself. */
function endsOf(
  food: FoodInput,
  { cookings }: Source,
  id: ComponentId,
): (Ends & { readonly high: Exact; readonly id: string })[] {
  const figure = readFigure(food, id, ...cookings);
  if (figure.kind === "borrowed" || figure.inputs?.includes("borrowed")) return [];
  const { low = figure.value, high } = figure;
  return figure.kind === "missing" || high === undefined ? [] : [{ id: food.id, low, high }];
}

function whyOf({ kind, inputs = [] }: ReadFigure): WidenedLine["why"] {
  if (kind === "missing") return "silent";
  if (kind === "trace" || inputs.includes("trace")) return "trace";
  return kind === "below" || inputs.includes("below") ? "limit" : "interval";
}

function scale({ low, high, lines }: Range, share: Exact): Range {
  const ends = (e: Ends): Ends => ({ low: times(e.low, share), high: e.high && times(e.high, share) });
  return { ...ends({ low, high }), lines: lines.map((line) => ({ ...line, ...ends(line) })) };
}

function shareOf(s: Sheet, where: NonNullable<BetweenOptions["where"]>): Exact {
  if (where === "total") return ONE;
  if (where === "portion") return over(ONE, s.values.portions);
  if (isZero(s.masses.cooked))
    throw fault(
      "sheet-empty",
      "the recipe has no mass, so 100 g of it cannot be told",
      "give a line an amount above 0",
    );
  return over(fraction(100n), s.masses.cooked);
}

const HUNDRED: Exact = /* @__PURE__ */ fraction(100n);
