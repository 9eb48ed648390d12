import { thing } from "../document/leaves.ts";
import { readInto } from "../document/read.ts";
import {
  andThen,
  byName,
  coded,
  fields,
  list,
  once,
  optional,
  type Refuse,
  type Schema,
} from "../document/schema.ts";
import { componentIds, isComponentId } from "../food/components.ts";
import { type Fault, quote, throwIfAny } from "../number/error.ts";
import { didYouMean } from "../number/near.ts";
import type { Quantity } from "../scale/demand.ts";
import { quantity } from "../scale/quantity.ts";
import type { ScaleOptions } from "../scale/scale.ts";
import { type Silence, silence } from "../scale/target.ts";
import { checkSheet } from "../sheet/given.ts";
import type { Sheet } from "../sheet/sheet.ts";
import type { Tabular } from "../show/tabular.ts";
import type { PortionColumns } from "./columns.ts";
import { filled } from "./fill.ts";
import { fitting } from "./fitting.ts";
import { refuseSilent, scaling } from "./scaling.ts";

/** Targets of many portions as eaten, a column of doubles each, in the component's own unit or in grams. */
export type Targets = { readonly [Q in Quantity | "factor"]?: Float64Array };

/** Options of {@link portionsAt}. */
export interface PortionsAtOptions extends ScaleOptions {
  /** What to do where lines say nothing of the one target; `refuse` unless told. Of several, see `fit`. */
  readonly silent?: Silence;
}

/**
 * Portions of one sheet at very many targets, as columns. One target scales it, as `scale` does; several
 * are fitted exactly, as `fit` does, each row for itself: a solution serves for all rows over which its
 * basis stays, and `solved` says how many were worked out.
 *
 * Figures are doubles, each within 1e-12 of the exact answer as a part of it; bounds, marks and what is out
 * of reach are those of the exact answer, literally. A target counts as its shortest decimal text. Nothing
 * is rounded to a kitchen, and no column goes back into a sheet: make that with `scale` or `fit`. Rows do
 * not know of each other, so that slices of the targets give slices of the columns.
 *
 * Throws `target-malformed` (no target, columns of different lengths, `factor` beside another target),
 * `component-unknown`, `target-silent`, and `sheet-malformed` for what is no sheet.
 *
 * @example
 * ```ts
 * const porridge = sheet(
 *   { name: "Porridge", portions: 1, lines: [{ food: "oats-rolled-dry", amount: "100 g" }] },
 *   starterFoods,
 * );
 * const { columns, factor } = portionsAt(porridge, { energy: Float64Array.of(379, 758) }, ["protein"]);
 * console.log([...factor], [...columns.protein.value]); // => [ 1, 2 ] [ 13.15, 26.3 ]
 * ```
 */
export function portionsAt<const Q extends Quantity>(
  s: Sheet,
  targets: Targets,
  components: readonly Q[],
  how: PortionsAtOptions = {},
): PortionColumns<Q> & Tabular {
  checkSheet(s);
  const faults: Fault[] = [];
  const read = readInto(faults, targetsSchema(), targets, "target-malformed", ["targets"]);
  const asked = readInto(faults, askedSchema(), components, "component-unknown");
  const { silent = "refuse" } = readInto(faults, howSchema(), how, "target-malformed", ["how"]) ?? {};
  throwIfAny(faults);
  const [first, ...others] = Object.entries(read as Targets) as [Quantity | "factor", Float64Array][];
  const [of, rows] = first as [Quantity | "factor", Float64Array];
  const wanted = [...new Set(asked)] as Q[];
  if (others.length === 0) {
    if (silent === "refuse") refuseSilent(s, of);
    return filled(s, scaling(s, of, rows, wanted), rows.length, wanted);
  }
  const all = [of, ...others.map(([name]) => name)] as readonly Quantity[];
  return filled(s, fitting(s, all, [rows, ...others.map(([, own]) => own)], wanted), rows.length, wanted);
}

/** The schema of quantities asked for. */
export const askedSchema: () => Schema<readonly Quantity[]> = /* @__PURE__ */ once(() =>
  list(coded("component-unknown", quantity()), { like: '["energy", "protein"]' }),
);

const howSchema: () => Schema<PortionsAtOptions> = /* @__PURE__ */ once(() =>
  fields<PortionsAtOptions>({ silent: optional(silence()) }),
);

const targetsSchema: () => Schema<Targets> = /* @__PURE__ */ once(() => {
  const names = [...componentIds, "mass", "factor"];
  const check = (name: string, refuse: Refuse): void => {
    if (names.includes(name) || isComponentId(name)) return;
    const hint = didYouMean(name, names, "use a component id, mass or factor");
    refuse(`${quote(name)} is nothing to scale to`, hint, [], "target-malformed");
  };
  const like = "{ energy: Float64Array.of(500, 600) }";
  const all = byName(thing("a Float64Array", isDoubles), { names, like, check });
  return coded("target-malformed", andThen(all, checkedTargets));
});

function isDoubles(given: unknown): given is Float64Array {
  return Object.prototype.toString.call(given) === "[object Float64Array]";
}

function checkedTargets(given: { readonly [name: string]: Float64Array }, refuse: Refuse): Targets {
  const [first, ...others] = Object.entries(given);
  if (!first) refuse("no target", "give a column of them: { energy: Float64Array.of(500, 600) }");
  for (const [name, { length }] of others)
    if (length !== first?.[1].length)
      refuse(`${length} targets, and ${first?.[1].length} of ${first?.[0]}`, "give one of each to a row", [
        name,
      ]);
  if (others.length > 0 && Object.hasOwn(given, "factor"))
    refuse("a factor beside another target", "give the factor alone, or other targets without it", [
      "factor",
    ]);
  return given;
}
