import { read } from "../document/read.ts";
import { language, readLanguage } from "../document/readLanguage.ts";
import { fields, once, optional, type Schema } from "../document/schema.ts";
import { fault, kindOf } from "../number/error.ts";
import type { Plan } from "../plan/planned.ts";
import { summaryTables } from "./summaryTables.ts";
import type { Table } from "./table.ts";
import { type ShowOptions, tablesFrom } from "./tabular.ts";

/**
 * Sums a plan up on one screen: who is off what by how much, what each is served of every dish, and what to
 * check. It is what `toText(plan)` prints; the rest of a plan is there by name, as `toText(plan, { parts: "pots" })`.
 *
 * Throws `table-malformed`.
 *
 * @example
 * ```ts
 * const oats = sheet({ name: "Oats", portions: 1, lines: [{ food: "oats-rolled-dry", amount: "60 g" }] }, starterFoods);
 * const plan = portionPlan({
 *   meals: [{ id: "breakfast", dishes: oats }],
 *   people: [{ id: "cox", name: "Cox" }, { id: "bow", name: "Bow", demands: { factor: 2 } }],
 * });
 * console.log(toText(summary(plan)[1]));
 * ```
 *
 * ```text
 * What is served, each time
 * Dish  Times   Cox    Bow
 * ────  ─────  ────  ─────
 * Oats      1  60 g  120 g
 * as eaten; where portions of one dish differ from time to time, their mean
 * ```
 */
export function summary(plan: Plan, how: ShowOptions = {}): readonly Table[] {
  if (typeof plan !== "object" || plan?.is !== "steelyard/plan@1")
    throw fault(
      "table-malformed",
      `expected a plan, got ${kindOf(plan)}`,
      "make one with portionPlan({ … })",
    );
  const { language } = read(summaryOptions(), how, "table-malformed");
  return tablesFrom(summaryTables(plan, readLanguage(language)));
}

const summaryOptions: () => Schema<ShowOptions> = /* @__PURE__ */ once(() =>
  fields<ShowOptions>({ language: optional(language()) }),
);
