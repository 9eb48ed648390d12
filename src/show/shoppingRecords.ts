import type { Exact } from "../number/exact.ts";
import type { Cost } from "../shop/cost.ts";
import type { CupboardItem, ShoppingLine } from "../shop/line.ts";
import type { ShoppingList } from "../shop/list.ts";
import type { PortionCost } from "../shop/portions.ts";
import { pointRow } from "./tallyRow.ts";
import type { Asked, Tidy, TidyRow } from "./tidy.ts";
import { tidyOf } from "./tidyOf.ts";

/** Columns of a list's records beside those of every result. */
const OWN: readonly string[] = ["name", "state", "aisle", "pack", "code", "text"];

/**
 * What to buy as tidy rows: of each food what is needed, bought and left over in grams, packs and pieces, and
 * its cost; what the cupboard had and has left; totals, one for each currency; what portions cost.
 */
export function shoppingTidy(list: ShoppingList, asked: Asked): Tidy {
  return tidyOf(asked, OWN, () => shoppingRows(list), ["cost", "packs", "pieces", "portions", "days"]);
}

function* shoppingRows(list: ShoppingList): Generator<TidyRow> {
  const day = list.shopDay?.day;
  for (const line of list.lines) yield* foodRows(line, day);
  for (const item of list.cupboard) yield* cupboardRows(item, day);
  for (const cost of list.totals) yield { day, row: "total", what: "bought", ...costRow(cost) };
  if (list.totals.length > 0) for (const portion of list.portions) yield* portionRows(portion);
}

function* foodRows(line: ShoppingLine, day: string | undefined): Generator<TidyRow> {
  const { food, name, state, aisle, packs, pieces, cost, allergens, cautions } = line;
  const own = { name, state, aisle };
  const head: TidyRow = { day, food, row: "food", own };
  yield* massRows(head, [
    ["needed", line.needed],
    ["from-cupboard", line.fromCupboard],
    ["bought", line.bought],
    ["left-over", line.leftOver],
    ["as-purchased", line.asPurchased],
    ["to-weigh-out", line.weighOut],
  ]);
  const counted = { ...head, what: "bought" };
  if (pieces)
    yield {
      ...counted,
      component: "pieces",
      ...pointRow(pieces.count, "piece"),
      own: { ...own, pack: pieces.name },
    };
  for (const pack of packs)
    yield {
      ...counted,
      component: "packs",
      ...pointRow(pack.count, "pack"),
      own: { ...own, pack: pack.name },
    };
  if (line.bought.n !== 0n)
    yield { ...counted, ...(cost ? costRow(cost) : { component: "cost", bound: "unknown" }) };
  if (line.keepsDays) yield { ...head, what: "keeps", component: "days", ...pointRow(line.keepsDays, "d") };
  for (const text of line.usedLate) yield { ...head, what: "used-late", own: { ...own, text } };
  if (allergens === undefined) yield { ...head, what: "allergens-not-known" };
  for (const text of allergens ?? []) yield { ...head, what: "holds", own: { ...own, text } };
  for (const { code, text, source } of cautions)
    yield { ...head, what: "caution", source, own: { ...own, code, text } };
}

function* massRows(
  head: TidyRow,
  masses: readonly (readonly [what: string, grams: Exact | undefined])[],
): Generator<TidyRow> {
  for (const [what, grams] of masses)
    if (grams) yield { ...head, what, component: "mass", ...pointRow(grams, "g") };
}

/** Money, in whole minor units; at least so much where something that it pays for has no price. */
function costRow({ currency, value, bound }: Cost): TidyRow {
  const row = pointRow(value, currency);
  return { component: "cost", ...row, bound, most: bound === "point" ? row.most : undefined };
}

/** Where there is enough, as the cupboard says without a figure, nothing is known of how much. */
function* cupboardRows(
  { food, name, state, had, used, left }: CupboardItem,
  day: string | undefined,
): Generator<TidyRow> {
  const head: TidyRow = { day, food, row: "cupboard", component: "mass", own: { name, state } };
  for (const [what, amount] of Object.entries({ had, used, left }))
    yield {
      ...head,
      what,
      ...(amount
        ? pointRow(amount, "g")
        : { unit: "g", bound: "unknown", own: { name, state, text: "enough" } }),
    };
}

function* portionRows({ person, meal, dish, portions, costs, perPortion }: PortionCost): Generator<TidyRow> {
  const head: TidyRow = { person, meal, dish };
  yield { ...head, row: "portions", component: "portions", ...pointRow(portions, "") };
  for (const cost of costs) yield { ...head, row: "portions", what: "bought", ...costRow(cost) };
  for (const cost of perPortion) yield { ...head, row: "portion", what: "bought", ...costRow(cost) };
}
