import { readInto } from "../document/read.ts";
import { fields, once, optional, type Schema, type Shape } from "../document/schema.ts";
import { type Fault, throwIfAny } from "../number/error.ts";
import type { Exact } from "../number/exact.ts";
import { checkSheet } from "../sheet/given.ts";
import type { Sheet } from "../sheet/sheet.ts";
import { notesOn, type ScaleNote } from "./move.ts";
import { factorFor, type ReadTarget, type Silence, silence, type Target, targetSchema } from "./target.ts";

export interface ScaleOptions {
  /** What to do where lines say nothing of the target; `refuse` unless told. */
  readonly silent?: Silence;
}

export interface Scaled {
  readonly sheet: Sheet;
  /** What the held and adjustable lines of a portion were multiplied by. */
  readonly factor: Exact;
  readonly notes: readonly ScaleNote[];
}

/**
 * Scales a sheet to one target for a portion as eaten. One target gives one factor, in closed form
 * and exact. Held and adjustable lines move alike; per-portion lines follow the number of portions
 * and nothing else.
 *
 * Throws `target-malformed` (options that there are not included), `target-silent`,
 * `target-unreachable` (with what can be reached), `sheet-malformed` for what is no sheet, and the
 * codes of amounts and numbers.
 *
 * @example
 * ```ts
 * const porridge = sheet(
 *   { name: "Porridge", portions: 1, lines: [{ food: "oats-rolled-dry", amount: "100 g" }] },
 *   starterFoods,
 * );
 * const { sheet: larger, factor } = scale(porridge, { energy: "758 kcal" });
 * console.log(factor.toString()); // => 2
 * console.log(larger.lines[0].grams.toString()); // => 200
 * ```
 */
export function scale(s: Sheet, target: Target, how: ScaleOptions = {}): Scaled {
  checkSheet(s);
  const faults: Fault[] = [];
  const asked = readInto(faults, targetSchema(), target, "target-malformed");
  const { silent } = readInto(faults, scaleHow(), how, "target-malformed", ["how"]) ?? {};
  throwIfAny(faults);
  const { aim, portions } = asked as ReadTarget;
  const factor = factorFor([s], aim, silent ?? "refuse");
  const moved = s.scaled(factor, portions ?? s.values.portions);
  let notes: readonly ScaleNote[] | undefined;
  return {
    sheet: moved,
    factor,
    // Worked out when asked for: a chain of scales that nobody reads costs its factors alone.
    get notes() {
      notes ??= notesOn(s, moved);
      return notes;
    },
  };
}

const scaleHow: () => Schema<ScaleOptions> = /* @__PURE__ */ once(() => fields<ScaleOptions>(scaleShape()));

/** @internal The fields of {@link ScaleOptions}, for options that have more. */
export function scaleShape(): Shape<ScaleOptions> {
  return { silent: optional(silence()) };
}
