import { absolute, type Exact, isZero, minus, ONE, over, sum, times, ZERO } from "../../number/exact.ts";
import { compareRatios } from "../../number/ratio.ts";
import { ToldResult } from "../../number/told.ts";
import type { Demand } from "../../scale/demand.ts";
import type { ReadDemand } from "../../scale/engine/readDemand.ts";
import { missOf, outcomeText } from "../../scale/fit/answer.ts";
import { boundAt } from "../../scale/fit/bound.ts";
import { askedText, subjectName, subjectUnit } from "../../scale/fit/words.ts";
import { holdsWithin, slackOf } from "../../scale/round/heldBefore.ts";
import type { Sheet } from "../../sheet/sheet.ts";
import type { Bound } from "../../sheet/tally.ts";
import type { LineFactors } from "../share/lineFactors.ts";
import type { MealFigures } from "./figures.ts";

/** What measuring does to one demand, for the portion as eaten. */
export interface DemandDrift {
  readonly demand: Demand;
  /** What it is about, and how much is asked, in words: `protein`, `at least 30 g`. */
  readonly of: string;
  readonly asked: string;
  readonly unit: string;
  /** Where nothing but a limit is asked, the limit: an amount in `unit`, a share (0 to 1) or a ratio. */
  readonly limit: Exact | undefined;
  /** What the exact portion brings: an amount in `unit`, a share (0 to 1) or a ratio; null where there is nothing to take it of. */
  readonly before: Exact | null;
  /** What the measured portion brings. */
  readonly brings: Exact | null;
  /** What it would bring with every line of pots and additions rounded for itself. */
  readonly lineByLine: Exact | null;
  /** How the figures bound the truth, by what is known of each line. */
  readonly bound: Bound;
  /** By what share of what is asked the measured portion is off, short below 0; 0 within a limit, null where nothing is asked for. */
  readonly off: Exact | null;
  /** Whether it holds within the tolerance; a firm one has none. */
  readonly holds: boolean;
  /** Whether the exact portion held it so. What it did not is not pursued at the cost of what it did. */
  readonly heldBefore: boolean;
  /** What the measured portion makes of it: `energy exactly 300 kcal: 58 kcal over; the portion brings 358 kcal`. */
  readonly text: string;
}

/** The line that has moved most against the rest of the portion. */
export interface RatioDrift {
  readonly dish: string;
  readonly line: string;
  /** How far its share of the mass moved, doses left out: 0.02 is 2 % more of the portion than it was. */
  readonly drift: Exact;
}

/** Everything a portion's drift is told from. */
export interface DriftOf {
  readonly figures: MealFigures;
  /** What the exact portion was reckoned by, where nested recipes were other then than they are made. */
  readonly figuresBefore?: MealFigures;
  readonly demands: readonly ReadDemand[];
  readonly tolerance: Exact;
  readonly exact: LineFactors;
  readonly measured: LineFactors;
  readonly lineByLine: LineFactors;
  /** A pot or additions stay as they were found, since rounding them would break what must hold. */
  readonly unrounded: boolean;
}

/** What measurable amounts cost a portion in accuracy. Worked out when first looked at. */
export class PortionDrift extends ToldResult {
  readonly #of: DriftOf;
  readonly #sheets: () => readonly Sheet[];
  #demands: readonly DemandDrift[] | undefined;

  /** @internal */
  constructor(of: DriftOf, sheets: () => readonly Sheet[]) {
    super();
    this.#of = of;
    this.#sheets = sheets;
  }

  /**
   * `met`: every demand holds, targets within the tolerance. `off-target`: some target is further
   * off. `unrounded`: the portion, or a pot that it shares, is as it was found, since measurable
   * amounts would break what must hold for someone.
   */
  get status(): "met" | "off-target" | "unrounded" {
    if (this.#of.unrounded) return "unrounded";
    return this.demands.every(({ holds }) => holds) ? "met" : "off-target";
  }

  /** @internal What it is held against: figures and factors of exact amounts. */
  exactly(): Pick<DriftOf, "figures" | "exact" | "tolerance"> {
    return this.#of;
  }

  /** Every demand of the portion. */
  get demands(): readonly DemandDrift[] {
    this.#demands ??= this.#of.demands.map((demand) => this.#demand(demand));
    return this.#demands;
  }

  /** The worst line; nothing where nothing but doses is served. */
  get ratio(): RatioDrift | undefined {
    return worstRatio(this.#of, this.#of.measured);
  }

  /** The worst line if each were rounded for itself. */
  get lineByLineRatio(): RatioDrift | undefined {
    return worstRatio(this.#of, this.#of.lineByLine);
  }

  #demand(demand: ReadDemand): DemandDrift {
    const { figures, figuresBefore = figures, tolerance, exact, measured, lineByLine } = this.#of;
    const { subject, least, most } = demand;
    const limit = least ? undefined : most;
    const at = (factors: LineFactors, by = figures): Exact | null => {
      const { value, per } = by.at(subject, factors);
      return isZero(per) ? null : over(value, per);
    };
    // Of thousands of portions few are looked at closely: the rest is worked out when it is.
    const before = lazy(() => at(exact, figuresBefore));
    const bound = lazy(() => boundAt(this.#sheets(), subject, figures.brought(subject)));
    const brings = at(measured);
    const off = brings && offOf(demand, brings);
    const slack = slackOf(demand, tolerance);
    const holds = (value: Exact | null): boolean =>
      (!least && !most) || (value !== null && holdsWithin(demand, slack, { value, per: ONE }));
    return {
      demand: demand.demand,
      of: subjectName(subject),
      asked: askedText(demand),
      unit: subjectUnit(subject),
      limit,
      get before() {
        return before();
      },
      brings,
      get lineByLine() {
        return at(lineByLine);
      },
      get bound() {
        return bound();
      },
      off,
      holds: holds(brings),
      get heldBefore() {
        return holds(before());
      },
      get text() {
        return outcomeText(demand, brings, bound());
      },
    };
  }
}

/** Tells which line has moved most against the rest; undefined where nothing but doses is served. */
export function worstRatio(
  { figures, exact }: { readonly figures: Pick<MealFigures, "dishes">; readonly exact: LineFactors },
  after: LineFactors,
): RatioDrift | undefined {
  const lines = figures.dishes.flatMap(({ name = "", sheet }) =>
    sheet.plan.lines.flatMap(({ line }, i) => {
      const grams = (of: LineFactors): Exact =>
        times(of.get(name)?.[i] ?? ZERO, sheet.values.grams[i] ?? ZERO);
      const [was, is] = [grams(exact), grams(after)];
      return line.scaling === "per-portion" || isZero(was) ? [] : [{ dish: name, line: line.key, was, is }];
    }),
  );
  const [was, is] = [sum(lines.map((line) => line.was)), sum(lines.map((line) => line.is))];
  if (isZero(was) || isZero(is)) return undefined;
  return lines
    .map(({ dish, line, ...own }): RatioDrift => {
      const drift = minus(over(times(own.is, was), times(own.was, is)), ONE);
      return { dish, line, drift };
    })
    .reduce<RatioDrift | undefined>(worse, undefined);
}

function worse(worst: RatioDrift | undefined, each: RatioDrift): RatioDrift {
  return worst && compareRatios(absolute(worst.drift), absolute(each.drift)) >= 0 ? worst : each;
}

/** A miss as a share of the end that is missed. */
function offOf(demand: ReadDemand, brings: Exact): Exact | null {
  const miss = missOf(demand, brings);
  if (isZero(miss)) return ZERO;
  const end = (miss.n < 0n ? demand.least : demand.most) ?? ZERO;
  return isZero(end) ? null : over(miss, end);
}

/** Works a value out when it is first asked for. */
function lazy<T>(make: () => T): () => T {
  let made: { readonly value: T } | undefined;
  return () => {
    made ??= { value: make() };
    return made.value;
  };
}
