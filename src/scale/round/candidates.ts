import { type Amount, amount, gramsOf, millilitresOf, withExact } from "../../measure/amount.ts";
import { type Kitchen, kitchen as readKitchen } from "../../measure/kitchen.ts";
import { measurable } from "../../measure/measurable.ts";
import { SteelyardError, within } from "../../number/error.ts";
import { compare, type Fraction, isZero, over, times, ZERO } from "../../number/fraction.ts";
import type { Sheet } from "../../sheet/sheet.ts";
import { type Dish, nameIn } from "../fit/model.ts";
import type { RoundTask } from "./read.ts";

/** An amount that the kitchen can measure, with what it weighs. */
export interface Offer {
  readonly amount: Amount;
  readonly grams: Fraction;
}

/** One line's choice. A line that is not rounded has no offers, and says why. */
export interface LineOffers {
  readonly dish: number;
  readonly line: number;
  readonly name: string;
  readonly exact: Amount;
  readonly grams: Fraction;
  readonly offers: readonly Offer[];
  readonly kept: "per-portion" | "nothing" | "as-written" | "not-measurable" | undefined;
  /** Whether the kitchen can measure the line as it stands. */
  readonly measurable: boolean;
}

/** What the kitchen offers for every line, in the order of dishes and lines. */
export function lineOffers(task: RoundTask): LineOffers[] {
  const place = readKitchen(task.kitchen);
  return task.dishes.flatMap((dish, d) =>
    dish.sheet.plan.lines.map((_, i) => offersFor(task, place, dish, d, i)),
  );
}

function offersFor(task: RoundTask, place: Kitchen, dish: Dish, d: number, i: number): LineOffers {
  const { plan, values } = dish.sheet;
  const line = plan.lines[i]?.line;
  const grams = values.grams[i] ?? ZERO;
  const exact = values.amounts[i] ?? amount("0 g");
  const name = nameIn(dish, line?.key ?? "");
  const base = { dish: d, line: i, name, exact, grams };
  const keep = (kept: LineOffers["kept"], can: boolean): LineOffers => ({
    ...base,
    offers: [],
    kept,
    measurable: can,
  });
  if (isZero(grams)) return keep("nothing", true);
  const wish = task.wishes.get(name);
  if (line?.scaling === "per-portion") return keep("per-portion", canMeasure(place, dish.sheet, i));
  if (wish === "as-written") return keep("as-written", canMeasure(place, dish.sheet, i));
  const all = within(["lines", name], () => offered(place, dish.sheet, i, wish, task.each));
  const offers = all.filter((offer) => withinBounds(dish.sheet, i, offer.grams));
  if (offers.length === 0) return keep("not-measurable", false);
  return { ...base, offers, kept: undefined, measurable: true };
}

/** What can be measured of a line near its amount, by the wish, else in the author's own family of units. */
function offered(place: Kitchen, s: Sheet, i: number, wish: string | undefined, each: number): Offer[] {
  const now = s.values.amounts[i];
  const grams = s.values.grams[i] ?? ZERO;
  if (!now) return [];
  const weighed = (): Offer[] => near(place, withExact(amount("1 g"), grams), grams, each);
  if (wish === "weigh" || (wish === undefined && s.plan.lines[i]?.nested)) return weighed();
  if (wish !== undefined) return near(place, inUnit(place, s, i, wish), grams, each);
  const own = near(place, now, grams, each, s);
  return own.length > 0 ? own : weighed();
}

/** Measurable amounts near one, each with its share of the grams: a line's conversion is linear. */
function near(place: Kitchen, a: Amount, grams: Fraction, each: number, s?: Sheet): Offer[] {
  const measures = s?.origin.measures;
  const size = gramsOf(a) ?? millilitresOf(a) ?? a.exact;
  const found = measurable(place, a, { each, ...(measures === undefined ? {} : { measures }) });
  return found.map((m) => ({ amount: m.amount, grams: times(grams, over(m.exact, size)) }));
}

/** The line's amount in a unit that was wished for, by the food's own measures or density. */
function inUnit(place: Kitchen, s: Sheet, i: number, unit: string): Amount {
  const reader = s.plan.lines[i]?.reader;
  const grams = s.values.grams[i] ?? ZERO;
  if (!reader) return amount("0 g");
  const one = unitOfKitchen(unit, place) ?? reader.read({ value: 1, unit });
  return withExact(one, over(grams, reader.toGrams(one).grams));
}

/** One of a unit as this kitchen has it; nothing where the word is only the food's own. */
function unitOfKitchen(unit: string, { measures }: Kitchen): Amount | undefined {
  try {
    return amount({ value: 1, unit }, { measures });
  } catch (error) {
    if (error instanceof SteelyardError && error.code === "amount-unknown-unit") return undefined;
    throw error;
  }
}

/** Whether the kitchen can measure just what is written. */
function canMeasure(place: Kitchen, s: Sheet, i: number): boolean {
  const grams = s.values.grams[i] ?? ZERO;
  try {
    return offered(place, s, i, undefined, 1).some((offer) => compare(offer.grams, grams) === 0);
  } catch (error) {
    if (error instanceof SteelyardError) return false;
    throw error;
  }
}

/** A line's own bounds hold for what is measured, too. */
function withinBounds(s: Sheet, i: number, grams: Fraction): boolean {
  const { least, most } = s.plan.lines[i] ?? {};
  const portion = over(grams, s.values.portions);
  return (
    (least === undefined || compare(portion, least) >= 0) &&
    (most === undefined || compare(portion, most) <= 0)
  );
}
