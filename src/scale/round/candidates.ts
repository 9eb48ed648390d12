import { type Amount, amount, gramsOf, millilitresOf, withExact } from "../../measure/amount.ts";
import { type MeasurableOptions, measurable } from "../../measure/measurable.ts";
import {
  absolute,
  type Exact,
  equals,
  greatest,
  isZero,
  least as lesser,
  minus,
  over,
  ZERO,
} from "../../number/exact.ts";
import { compareRatios } from "../../number/ratio.ts";
import type { PlanLine } from "../../sheet/plan.ts";
import type { Sheet } from "../../sheet/sheet.ts";
import { type Dish, nameIn } from "../engine/model.ts";
import { counted, divisionOf, type LineDivision } from "./division.ts";
import type { RoundTask } from "./read.ts";
import { gram } from "./wish.ts";

/** An amount that the kitchen can measure, with what it weighs. */
export interface Offer {
  readonly amount: Amount;
  readonly grams: Exact;
}

/** Why a line was left as it stands. */
export type KeptReason = "per-portion" | "nothing" | "as-written" | "not-measurable" | "out-of-bounds";

/** What one line may become. A line that is not rounded has no offers, and says why. */
export interface LineOffers {
  readonly dish: number;
  readonly line: number;
  readonly name: string;
  readonly exact: Amount;
  /** Edible portion, the batch's. */
  readonly grams: Exact;
  readonly offers: readonly Offer[];
  readonly kept: KeptReason | undefined;
  /** Whether the kitchen can measure it: what it becomes, or what it stays. */
  readonly measurable: boolean;
  /** How it is divided, where its food or nested recipe says so and it is counted. */
  readonly division: LineDivision | undefined;
}

/** Gives what a cook takes who rounds a line alone: the nearest amount, the smaller of two as near. */
export function nearestOffer({ grams, offers }: LineOffers): Offer | undefined {
  const off = (offer: Offer): Exact => absolute(minus(offer.grams, grams));
  return [...offers].sort((a, b) => compareRatios(off(a), off(b)) || compareRatios(a.grams, b.grams))[0];
}

/** What offers are made from: the lines, and with what they are measured. */
export type OfferTask = Pick<RoundTask, "dishes" | "kitchen" | "wishes" | "each">;

/** What the kitchen offers for every line, in the order of dishes and lines. */
export function lineOffers(task: OfferTask): LineOffers[] {
  return task.dishes.flatMap((dish, d) => dish.sheet.plan.lines.map((_, i) => offersFor(task, dish, d, i)));
}

function offersFor(task: OfferTask, dish: Dish, d: number, i: number): LineOffers {
  const { plan, values } = dish.sheet;
  const line = plan.lines[i] as PlanLine;
  const exact = values.amounts[i] ?? amount("0 g");
  const grams = values.grams[i] ?? ZERO;
  const name = nameIn(dish, line.line.key);
  const division = divisionOf(line, exact);
  const base = { dish: d, line: i, name, exact, grams, division };
  const how = howFor(dish.sheet, division);
  const stays = (kept: KeptReason): LineOffers => {
    return { ...base, offers: [], kept, measurable: isMeasurable(task, how, exact) };
  };
  if (isZero(grams)) return stays("nothing");
  if (line.line.scaling === "per-portion") return stays("per-portion");
  const wish = task.wishes.get(name);
  if (wish === "as-written") return stays("as-written");
  const near = (aim: Amount): Offer[] =>
    measurable(task.kitchen, aim, { ...how, each: task.each }).map((found) => ({
      amount: found.amount,
      // By the line's own reader: a food's cup may weigh more than its density says.
      grams: line.reader.toGrams(found.amount).grams,
    }));
  const by = (one: Amount): Offer[] => near(withExact(one, over(grams, line.reader.toGrams(one).grams)));
  const own = division ? counted(line, division, exact) : exact;
  const all = wish ? by(wish.one) : usual(near(own), by(gram()), line);
  if (all.length === 0) return stays("not-measurable");
  const offers = withinBounds(dish.sheet, line, grams, all);
  if (offers.length === 0) return stays("out-of-bounds");
  return { ...base, offers, kept: undefined, measurable: true };

  /** The author's own family of units, else by weight. A nested recipe is weighed, taken as it stands, or by its pieces. */
  function usual(own: Offer[], weighed: Offer[], { nested }: PlanLine): Offer[] {
    if (!nested || nested.origin.piece || exact.kind === "mass" || weighed.length === 0)
      return own.length > 0 ? own : weighed;
    const asItIs = own.filter((offer) => equals(offer.grams, grams));
    return [...asItIs, ...weighed.filter((offer) => asItIs.length === 0 || !equals(offer.grams, grams))];
  }
}

/** The food's own cups and spoons ("cup, chopped") are those of the recipe. */
function howFor({ origin }: Sheet, division: LineDivision | undefined): MeasurableOptions {
  return {
    ...(origin.measures !== undefined && { measures: origin.measures }),
    ...(division && { piece: division.step }),
  };
}

/** Whether the kitchen can measure just this. */
function isMeasurable({ kitchen }: OfferTask, how: MeasurableOptions, a: Amount): boolean {
  const size = gramsOf(a) ?? millilitresOf(a) ?? a.value;
  return measurable(kitchen, a, { ...how, each: 1 }).some((found) => equals(found.value, size));
}

/** A line's own bounds hold for what is measured, too; where it stood outside already it goes no further. */
function withinBounds(s: Sheet, line: PlanLine, exact: Exact, offers: readonly Offer[]): Offer[] {
  const { portions } = s.values;
  const now = over(exact, portions);
  const low = line.least && lesser(line.least, now);
  const high = line.most && greatest(line.most, now);
  return offers.filter(({ grams }) => {
    const portion = over(grams, portions);
    return !(low && compareRatios(portion, low) < 0) && !(high && compareRatios(portion, high) > 0);
  });
}
