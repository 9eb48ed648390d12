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

function figuresOf(line: ShoppingLine): readonly LongFigure[] {
  const { packs, pieces, cost } = line;
  const mass = (what: string, of: Fraction | undefined): readonly LongFigure[] =>
    of ? [{ what, amount: figure(of), unit: "g" }] : [];
  return [
    ...mass("needed", line.needed),
    ...mass("from cupboard", line.fromCupboard),
    ...mass("bought", line.bought),
    ...mass("left over", line.leftOver),
    ...mass("as purchased", line.asPurchased),
    ...mass("to weigh out", line.weighOut),
    ...(pieces ? [{ what: "pieces", pack: pieces.name, amount: figure(pieces.count), unit: "piece" }] : []),
    ...packs.map(({ name, count }) => ({
      what: "packs",
      pack: name,
      amount: figure(count),
      unit: "pack",
    })),
    ...(line.bought.n === 0n ? [] : [{ what: "cost", amount: costFigure(cost), unit: cost?.currency ?? "" }]),
  ];
}

function costFigure(cost: Cost | undefined): Cell {
  if (!cost) return figure(null);
  return figure(exact(cost.value), { places: minorPlaces(cost.currency), zeros: "keep" });
}
