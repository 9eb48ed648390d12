import { type Language, say } from "../document/language.ts";
import { amount } from "../measure/amount.ts";
import { formatAmount } from "../measure/format.ts";
import { showFigure } from "../measure/showFigure.ts";
import { type Exact, fraction, over } from "../number/exact.ts";
import { amountHow, stated } from "../sheet/stated.ts";
import type { ShoppingLine } from "../shop/line.ts";
import type { ShoppingList } from "../shop/list.ts";
import { shoppingNotes } from "../shop/notes.ts";
import { costTables } from "./costTables.ts";
import { figureCell } from "./figure.ts";
import { grams, money, priceColumn } from "./shoppingCells.ts";
import { type Cell, type Row, type Table, table } from "./table.ts";

/** What to buy by aisle; what the cupboard gives; what portions cost, where anything has a price. */
export function shoppingTables(list: ShoppingList, language: Language): readonly Table[] {
  const names = list.names();
  return [
    toBuyTable(list, language),
    ...(list.cupboard.length > 0 ? [cupboardTable(list, language)] : []),
    ...(list.totals.length > 0 ? costTables(list.portions, names, language) : []),
  ];
}

function toBuyTable(list: ShoppingList, language: Language): Table {
  const { totals } = list;
  const [only, ...others] = totals;
  const priced = only !== undefined;
  const lines = list.lines.filter(({ bought }) => bought.n !== 0n);
  const packed = lines.some(({ packs }) => packs.length > 0);
  const optional = (asked: boolean, cell: () => Cell): Cell[] => (asked ? [cell()] : []);
  const rowOf = (line: ShoppingLine): Row => ({
    kind: "body",
    cells: [
      stated(line.name, line.state, language),
      grams(line.needed, language),
      toBuy(line, language),
      ...optional(packed, () =>
        line.packs.length > 0 || line.leftOver.n > 0n ? grams(line.leftOver, language) : "",
      ),
      ...optional(priced, () =>
        line.cost ? money(line.cost, language, others.length > 0) : figureCell(null, { language }),
      ),
    ],
  });
  const aisles = [...new Set(lines.map(({ aisle }) => aisle))];
  const rows = aisles.flatMap((aisle): Row[] => [
    { kind: "group", heading: say(language, aisle) },
    ...lines.filter((line) => line.aisle === aisle).map(rowOf),
  ]);
  const total = totals.map(
    (each): Row => ({
      kind: "total",
      cells: [
        say(language, "Total"),
        "",
        "",
        ...optional(packed, () => ""),
        money(each, language, others.length > 0),
      ],
    }),
  );
  return table({
    title: shoppingTitle(list, language),
    columns: [
      { key: "food", heading: say(language, "Food") },
      { key: "needed", heading: say(language, "Needed"), unit: "g", align: "end" },
      { key: "buy", heading: say(language, "Buy"), align: "end" },
      ...(packed
        ? [{ key: "leftOver", heading: say(language, "Left over"), unit: "g", align: "end" as const }]
        : []),
      ...(priced ? [priceColumn("price", say(language, "Price"), totals)] : []),
    ],
    rows: [...rows, ...total],
    notes: shoppingNotes(list, language),
  });
}

/** What a list is headed by: its shop day, where it has one. */
export function shoppingTitle({ shopDay }: ShoppingList, language: Language): string {
  if (!shopDay) return say(language, "Shopping list");
  const { name: day, for: days } = shopDay;
  const [first, last] = [days[0]?.name, days.at(-1)?.name];
  if (first === undefined || last === undefined) return say(language, "Shopping list, {day}", { day });
  return first === last
    ? say(language, "Shopping list, {day}: for {first}", { day, first })
    : say(language, "Shopping list, {day}: for {first} to {last}", { day, first, last });
}

/** What is bought of a food, in the words of a shop. */
export function toBuy(line: ShoppingLine, language: Language): Cell {
  const { weighOut } = line;
  if (weighOut) {
    const grams = figureCell(weighOut, { unit: "g", language });
    if (line.pourOut) return { ...grams, text: pouredText(line.pourOut, language) };
    const pieces = piecesText(line, language);
    if (pieces === undefined) return grams;
    return { ...grams, text: say(language, "{grams} (about {pieces})", { grams: grams.text, pieces }) };
  }
  return line.packs
    .map(({ name, count }) =>
      say(language, "{count} × {pack}", { count: count.toString(), pack: say(language, name) }),
    )
    .join("; ");
}

/** In litres from one litre up. */
function pouredText(millilitres: Exact, language: Language): string {
  const litres = over(millilitres, LITRE);
  return litres.n >= litres.d
    ? showFigure(litres, { unit: "l", language })
    : showFigure(millilitres, { unit: "ml", language });
}

const LITRE: Exact = /* @__PURE__ */ fraction(1000n);

function piecesText({ pieces }: ShoppingLine, language: Language): string | undefined {
  if (!pieces) return undefined;
  const { name, count } = pieces;
  // A food's own words, as a name of it is said.
  return say(
    language,
    formatAmount(amount({ value: count, unit: name }, { own: [name] }), amountHow(language)),
  );
}

function cupboardTable(list: ShoppingList, language: Language): Table {
  const amount = (of: Exact | undefined): Cell => (of ? grams(of, language) : say(language, "enough"));
  const mass = { unit: "g", align: "end" } as const;
  return table({
    title: say(language, "From the cupboard"),
    columns: [
      { key: "food", heading: say(language, "Food") },
      { key: "had", heading: say(language, "In stock"), ...mass },
      { key: "used", heading: say(language, "Use"), ...mass },
      { key: "left", heading: say(language, "Remaining"), ...mass },
    ],
    rows: list.cupboard.map(({ name, state, had, used, left }) => [
      stated(name, state, language),
      amount(had),
      amount(used),
      amount(left),
    ]),
  });
}
