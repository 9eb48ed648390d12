import { exact, type Fraction } from "../../number/fraction.ts";
import { figure } from "../../table/figure.ts";
import { type Cell, type Table, table } from "../../table/table.ts";
import { type Cost, minorPlaces } from "./cost.ts";
import type { ShoppingLine } from "./line.ts";
import type { ShoppingList } from "./list.ts";

/** One figure of one food for each row: what of it, the pack or piece where it counts one, and its unit. */
export function shoppingRecords(list: ShoppingList): Table {
  return table({
    columns: [
      { key: "food", heading: "Food" },
      { key: "name", heading: "Name" },
      { key: "state", heading: "State" },
      { key: "aisle", heading: "Aisle" },
      { key: "what", heading: "What" },
      { key: "pack", heading: "Pack" },
      { key: "amount", heading: "Amount", align: "end" },
      { key: "unit", heading: "Unit" },
    ],
    rows: list.lines.flatMap((line) =>
      figuresOf(line).map(({ what, pack = "", amount, unit }) => [
        line.food,
        line.name,
        line.state ?? "",
        line.aisle,
        what,
        pack,
        amount,
        unit,
      ]),
    ),
  });
}

interface LongFigure {
  readonly what: string;
  readonly pack?: string;
  readonly amount: Cell;
  readonly unit: string;
}

function figuresOf({ exact: grams, packs, pieces, cost }: ShoppingLine): readonly LongFigure[] {
  const mass = (what: string, of: Fraction | undefined): readonly LongFigure[] =>
    of ? [{ what, amount: figure(of), unit: "g" }] : [];
  return [
    ...mass("needed", grams.needed),
    ...mass("from cupboard", grams.fromCupboard),
    ...mass("bought", grams.bought),
    ...mass("left over", grams.leftOver),
    ...mass("as purchased", grams.asPurchased),
    ...mass("to weigh out", grams.weighOut),
    ...(pieces
      ? [{ what: "pieces", pack: pieces.name, amount: figure(exact(pieces.count)), unit: "piece" }]
      : []),
    ...packs.map(({ name, count }) => ({
      what: "packs",
      pack: name,
      amount: figure(exact(count)),
      unit: "pack",
    })),
    ...(grams.bought.n === 0n
      ? []
      : [{ what: "cost", amount: costFigure(cost), unit: cost?.currency ?? "" }]),
  ];
}

function costFigure(cost: Cost | undefined): Cell {
  if (!cost) return figure(null);
  return figure(exact(cost.value), { places: minorPlaces(cost.currency), zeros: "keep" });
}
