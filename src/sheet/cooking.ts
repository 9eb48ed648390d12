import type { ComponentId } from "../food/components.ts";
import type { Shares } from "../food/composition.ts";
import { showFigure } from "../measure/showFigure.ts";
import { type Exact, equals, isZero, minus, negate, sum, ZERO } from "../number/exact.ts";
import { Result } from "../number/result.ts";
import { checkSheet } from "./given.ts";
import type { PlanLine } from "./plan.ts";
import { Sheet } from "./sheet.ts";
import { foodSource, nestedSource, type Source } from "./source.ts";
import { type Bound, constantTally, Tally } from "./tally.ts";

/** What went in, what came on and off in cooking, and what is eaten: raw + gained = retained + lost, exactly. */
export interface Balance {
  readonly raw: Tally;
  readonly gained: Tally;
  readonly retained: Tally;
  readonly lost: Tally;
}

/** What cooking does to a batch: its mass and each of its components. */
export class CookingBalance extends Result {
  readonly is = "steelyard/cooking@1";
  /** Of the batch, grams. Whatever mass comes or goes is taken to be water, as far as there is water to lose. */
  readonly mass: Balance;
  /**
   * Grams lost beyond the water that the pot is known to hold, 0 in most dishes: fat and drippings,
   * or a yield that is wrong. Above 0, the water left is not known.
   */
  readonly beyondWater: Exact;
  readonly #sheet: Sheet;
  readonly #raw: Sheet;

  /** @internal Use {@link cooking}. */
  constructor(s: Sheet) {
    super();
    this.#sheet = s;
    this.#raw = uncooked(s);
    const { raw, cooked, change } = s.masses;
    const grams = (value: Exact): Tally => constantTally(value, "g");
    this.mass = {
      raw: grams(raw),
      gained: grams(above(change)),
      retained: grams(cooked),
      lost: grams(above(negate(change))),
    };
    this.beyondWater = s.water.beyond;
  }

  override toString(): string {
    const grams = (tally: Tally): string => showFigure(tally.value, { unit: "g" });
    return `${this.#sheet.name}: ${grams(this.mass.raw)} raw, ${grams(this.mass.retained)} as eaten`;
  }

  /** @internal What was cooked. */
  cooked(): Sheet {
    return this.#sheet;
  }

  /** A component of the batch. Throws `component-unknown`. */
  of(id: ComponentId): Balance {
    const changes = this.#sheet.plan.lines.map(({ line }) => this.#change(line.key, id));
    const water = id === "water" ? this.#sheet.water.change : ZERO;
    return balance(this.#raw.brought(id), this.#sheet.total(id), [...changes, water]);
  }

  /** A component of one line; the water that the pot takes up or gives off belongs to none. Throws `line-unknown`, `component-unknown`. */
  line(lineKey: string, id: ComponentId): Balance {
    const [raw, cell] = [this.#raw.cell(lineKey, id), this.#sheet.cell(lineKey, id)];
    return balance(raw, cell, [this.#change(lineKey, id)]);
  }

  /** How much of a component of a line comes (above 0) or goes (below 0). */
  #change(lineKey: string, id: ComponentId): Exact {
    return minus(this.#sheet.cell(lineKey, id).value, this.#raw.cell(lineKey, id).value);
  }
}

/** The same lines as they are weighed in. */
function uncooked({ plan, values }: Sheet): Sheet {
  const lines = plan.lines.map((each) => ({ ...each, source: rawSource(each) }));
  return new Sheet(plan.withLines(lines), values);
}

function rawSource({ source, nested }: PlanLine): Source {
  if (source.left.size === 0) return source;
  if (nested) return nestedSource(source.id, nested, NO_SHARES);
  return source.food ? foodSource(source.food, NO_SHARES) : source;
}

function balance(raw: Tally, retained: Tally, changes: readonly Exact[]): Balance {
  const of = (value: Exact): Tally =>
    equals(value, retained.value)
      ? retained
      : new Tally(
          value.n,
          value.d,
          retained.unit,
          retained,
          () => retained.coverage,
          boundLike(retained, value),
        );
  return {
    raw,
    gained: of(sum(changes.map(above))),
    retained,
    lost: of(sum(changes.map((change) => above(negate(change))))),
  };
}

/** The ends of middle figures do not move in step with what single lines gain or lose; nothing is nothing. */
function boundLike({ bound }: Tally, value: Exact): Bound {
  return bound !== "between" ? bound : isZero(value) ? "point" : "unknown";
}

/**
 * What cooking keeps of a batch, and what is lost and gained: water by the yield, components by
 * their retention.
 *
 * Source of the method: yield at recipe level and retention by ingredient and component (the mixed
 * method): EuroFIR recipe guideline (2015).
 *
 * @example
 * ```ts
 * const greens = sheet(
 *   { name: "Greens", portions: 1, yieldFactor: "0.9", lines: [{ food: "spinach-raw", amount: "100 g", retention: "3004" }] },
 *   starterFoods,
 * );
 * const { raw, lost } = cooking(greens).of("vitaminC");
 * console.log(`${lost.value} of ${raw.value} mg`); // => 11.24 of 28.1 mg
 * ```
 */
export function cooking(s: Sheet): CookingBalance {
  checkSheet(s);
  return new CookingBalance(s);
}

const NO_SHARES: Shares = /* @__PURE__ */ new Map();

function above(change: Exact): Exact {
  return change.n > 0n ? change : ZERO;
}
