import { type ComponentId, componentIds, components } from "../food/components.ts";
import {
  equals,
  type Fraction,
  fraction,
  isZero,
  minus,
  negate,
  over,
  sum,
  times,
  ZERO,
} from "../number/fraction.ts";
import { figure, legend } from "../table/figure.ts";
import { Shown } from "../table/shown.ts";
import { type Row, type Table, table } from "../table/table.ts";
import { checkSheet } from "./given.ts";
import { componentIndex } from "./plan.ts";
import type { Sheet } from "./sheet.ts";
import { tallyFigure } from "./show.ts";
import { type Bound, constantTally, Tally } from "./tally.ts";
import { driedNote } from "./water.ts";

/** What went in, what came on and off in cooking, and what is eaten: raw + gained = retained + lost, exactly. */
export interface Balance {
  readonly raw: Tally;
  readonly gained: Tally;
  readonly retained: Tally;
  readonly lost: Tally;
}

/** What cooking does to a batch: its mass and each of its components. */
export class CookingBalance extends Shown {
  /** Of the batch, grams. Whatever mass comes or goes is taken to be water, as far as there is water to lose. */
  readonly mass: Balance;
  /**
   * Grams lost beyond the water that the pot is known to hold, 0 in most dishes: fat and drippings,
   * or a yield that is wrong. Above 0, the water left is not known.
   */
  readonly beyondWater: Fraction;
  readonly #sheet: Sheet;

  /** @internal Use {@link cooking}. */
  constructor(s: Sheet) {
    super();
    this.#sheet = s;
    const { raw, cooked, change } = s.masses;
    const grams = (value: Fraction): Tally => constantTally(value, "g");
    this.mass = {
      raw: grams(raw),
      gained: grams(above(change)),
      retained: grams(cooked),
      lost: grams(above(negate(change))),
    };
    this.beyondWater = s.water.beyond;
  }

  /** A component of the batch. Throws `component-unknown`. */
  of(id: ComponentId): Balance {
    const c = componentIndex(id);
    const all = this.#sheet.plan.lines.map((_, i) => this.#change(i, id, c));
    const [brought, eaten] = [this.#sheet.brought(id), this.#sheet.total(id)];
    return this.#balance(brought, eaten, all, id === "water" ? this.#sheet.water.change : ZERO);
  }

  /** A component of one line; the water that the pot takes up or gives off belongs to none. Throws `line-unknown`, `component-unknown`. */
  line(lineKey: string, id: ComponentId): Balance {
    const change = this.#change(this.#sheet.plan.indexOf(lineKey), id, componentIndex(id));
    const cell = this.#sheet.cell(lineKey, id);
    return this.#balance(cell, cell, [change], ZERO);
  }

  /** Mass, and every component that cooking changes. */
  override toTables(): readonly Table[] {
    const changed = componentIds
      .map((id) => ({ id, balance: this.of(id) }))
      .filter(({ balance }) => !isZero(balance.lost.value) || !isZero(balance.gained.value));
    const row = (name: string, unit: string, b: Balance): Row => ({
      kind: "body",
      cells: [
        name,
        unit,
        tallyFigure(b.raw),
        tallyFigure(b.gained),
        tallyFigure(b.retained),
        tallyFigure(b.lost),
        leftOf(b),
      ],
    });
    const rows = [
      row("mass", "g", this.mass),
      ...changed.map(({ id, balance }) => row(components[id].name, components[id].unit, balance)),
    ];
    return [
      table({
        title: `${this.#sheet.name}: what cooking keeps`,
        columns: [
          { key: "component", heading: "Component" },
          { key: "unit", heading: "Unit" },
          { key: "raw", heading: "Raw", align: "end" },
          { key: "gained", heading: "Gained", align: "end" },
          { key: "retained", heading: "As eaten", align: "end" },
          { key: "lost", heading: "Lost", align: "end" },
          { key: "left", heading: "Left", unit: "%", align: "end" },
        ],
        rows,
        notes: [
          ...legend(rows),
          ...driedNote(this.#sheet.water),
          "components not listed are taken to stay whole",
        ],
      }),
    ];
  }

  /** A line's component as weighed in, and how much of it comes (above 0) or goes (below 0). */
  #change(i: number, id: ComponentId, c: number): Change {
    const { source, nested } = this.#sheet.plan.lines[i] ?? {};
    if (!source) return { raw: ZERO, change: ZERO };
    const hundreds = over(this.#sheet.values.grams[i] ?? ZERO, HUNDRED);
    const left = fraction(source.values[c] ?? 0n, source.scale);
    const whole =
      source.left.size === 0
        ? left
        : (source.food?.composition.figures[c]?.value ?? nested?.per100g(id).value ?? left);
    return { raw: times(whole, hundreds), change: times(minus(left, whole), hundreds) };
  }

  #balance(brought: Tally, retained: Tally, lines: readonly Change[], water: Fraction): Balance {
    const changes = [...lines.map(({ change }) => change), water];
    const like = (known: Tally, value: Fraction): Tally =>
      equals(value, known.value)
        ? known
        : new Tally(value.n, value.d, known.unit, known, () => known.coverage, boundLike(known, value));
    return {
      raw: like(brought, sum(lines.map(({ raw }) => raw))),
      gained: like(retained, sum(changes.map(above))),
      retained,
      lost: like(retained, sum(changes.map((change) => above(negate(change))))),
    };
  }
}

/** The ends of middle figures do not move in step with what single lines gain or lose; nothing is nothing. */
function boundLike({ bound }: Tally, value: Fraction): Bound {
  return bound !== "between" ? bound : isZero(value) ? "exact" : "unknown";
}

interface Change {
  readonly raw: Fraction;
  readonly change: Fraction;
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

const HUNDRED: Fraction = /* @__PURE__ */ fraction(100n);

function above(change: Fraction): Fraction {
  return change.n > 0n ? change : ZERO;
}

function leftOf({ raw, retained }: Balance): ReturnType<typeof figure> {
  return isZero(raw.value) ? figure(null) : figure(times(over(retained.value, raw.value), HUNDRED));
}
