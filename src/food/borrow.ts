import { flag, text, word } from "../document/leaves.ts";
import { readFar } from "../document/read.ts";
import { fields, list, once, optional, type Schema } from "../document/schema.ts";
import { exactText } from "../number/digits.ts";
import { collect, type Fault, fault, quote, throwIfAny } from "../number/error.ts";
import { times } from "../number/exact.ts";
import { componentId } from "./componentSchema.ts";
import { type ComponentId, componentIds } from "./components.ts";
import type { Figure, FoodInput } from "./food.ts";
import { type BorrowBasis, type Loan, likeStates, loanOf } from "./lending.ts";
import { checkFoodTable, type FoodTable } from "./table.ts";

/** What to borrow, from which food into which. */
export interface BorrowOptions {
  /** Id of the food that is silent. */
  readonly into: string;
  /** Id of the food that is like it and knows. */
  readonly from: string;
  /** Which components; all that may be borrowed, unless told. */
  readonly components?: readonly ComponentId[];
  /**
   * What the rest goes by, beside amino acids, which go by protein, and fatty acids, which go by fat:
   * dry matter where both waters are known and else weight, unless told.
   */
  readonly basis?: BorrowBasis;
  /** Set to borrow between states all the same, raw into dry, say; cooking and drying are then yours to answer for. */
  readonly acrossStates?: boolean;
}

/**
 * A table in which one food has taken over from a like one what it is silent on. Each figure names its
 * lender and the ratio it was brought over by, everywhere it is shown. Raw from raw and cooked from
 * cooked; never over a figure that is known, never one that was borrowed itself, never a nutrient that
 * was added: as either food's `fortifiedWith` says, and folic acid always.
 *
 * Throws one error with every fault: `food-unknown`, `component-unknown`, and `borrow-refused` with
 * the reason.
 *
 * Source of the rules: FAO/INFOODS Guidelines for Checking Food Composition Data (2012), on imputed
 * and borrowed values; unverified.
 *
 * @example
 * ```ts
 * const mine = starterFoods.with([{
 *   id: "farm-oats", name: "Oats from the farm", state: "dry", source: "own analysis",
 *   per100g: { protein: "12.0", fat: "7.1", water: "11.0" },
 * }]);
 * const fuller = borrow(mine, { into: "farm-oats", from: "oats-rolled-dry" });
 * console.log(fuller.get("farm-oats").per100g.leucine);
 * ```
 *
 * ```text
 * {
 *   value: '1176/1315',
 *   low: '1176/1315',
 *   high: '1176/1315',
 *   borrowedFrom: 'oats-rolled-dry',
 *   source: 'by protein, × 240/263; USDA SR28, NDB 08120'
 * }
 * ```
 */
export function borrow(table: FoodTable, how: BorrowOptions): FoodTable {
  checkFoodTable(table);
  const faults: Fault[] = [];
  const read = readFar(faults, borrowHow(), how, "borrow-refused") ?? {};
  const { into, from } = twoFoods(table, read, faults);
  if (!into || !from) {
    throwIfAny(faults);
    throw fault("borrow-refused", "two foods are needed", "name them in into and from");
  }
  const figures: { [C in ComponentId]?: Figure } = {};
  const asked: readonly (ComponentId | undefined)[] = read.components ?? componentIds;
  asked.forEach((id, i) => {
    if (id === undefined) return;
    const loan = collect(faults, ["components", i], () => loanOf(into, from, id, read.basis));
    if (!loan) return;
    if ("refused" in loan) {
      if (read.components) faults.push(refusal(["components", i], id, loan.refused, from));
      return;
    }
    figures[id] = borrowed(loan, from);
  });
  throwIfAny(faults);
  if (Object.keys(figures).length === 0)
    throw fault(
      "borrow-refused",
      `${quote(from.id)} has nothing to lend to ${quote(into.id)}`,
      "lenders(table, id) finds foods that have",
    );
  return table.with([{ ...into, per100g: { ...into.per100g, ...figures } }]);
}

function twoFoods(
  table: FoodTable,
  { into, from, acrossStates }: Partial<BorrowOptions>,
  faults: Fault[],
): { readonly into: FoodInput | undefined; readonly from: FoodInput | undefined } {
  const get = (path: "into" | "from", id: string | undefined): FoodInput | undefined =>
    id === undefined ? undefined : collect(faults, [path], () => table.get(id));
  const [a, b] = [get("into", into), get("from", from)];
  const refuse = (message: string, hint: string): void => {
    faults.push({ code: "borrow-refused", path: ["from"], message, hint });
  };
  if (a && b && a.id === b.id) refuse("a food cannot borrow from itself", "lenders(table, id) finds others");
  else if (a && b && !acrossStates && !likeStates(a, b))
    refuse(
      `${quote(b.id)} is ${b.state ?? "of no stated state"}, ${quote(a.id)} ${a.state ?? "of none"}`,
      "borrow raw from raw and cooked from cooked, or say acrossStates: true",
    );
  return { into: a, from: b };
}

const borrowHow: () => Schema<BorrowOptions> = /* @__PURE__ */ once(() =>
  fields<BorrowOptions>({
    into: text(200),
    from: text(200),
    components: optional(list(componentId())),
    basis: optional(word(bases)),
    acrossStates: optional(flag()),
  }),
);

const bases: readonly BorrowBasis[] = ["dry-matter", "fat-free-dry-matter", "weight"];

function refusal(path: (string | number)[], id: ComponentId, reason: string, from: FoodInput): Fault {
  return {
    code: "borrow-refused",
    path,
    message: `${id}: ${reason}`,
    hint: `leave it out, or borrow it from another food than ${quote(from.id)}`,
  };
}

function borrowed({ figure, ratio, by }: Exclude<Loan, { refused: string }>, from: FoodInput): Figure {
  const brought = (value: typeof figure.value): string => exactText(times(value, ratio));
  const note = figure.note === undefined ? "" : `, there ${figure.note}`;
  return {
    value: brought(figure.value),
    ...(figure.low === undefined ? {} : { low: brought(figure.low) }),
    ...(figure.high === undefined ? {} : { high: brought(figure.high) }),
    borrowedFrom: from.id,
    source: `by ${by}, × ${exactText(ratio)}; ${from.source}${note}`,
  };
}
