import { AS_PURCHASED } from "./amounts.ts";
import type { AmountRow, Card, CardBatch, CardDish, DayRow } from "./card.ts";

/*
 * How large the type can be for the card to fit one sheet. Heights are in lines' own measure, the size
 * of the type (rem), reckoned from how many characters fit beside each other; they follow the rules of
 * style.ts, and err on the tall side, since what font the reader has is not known. A5 is A4 with type,
 * sheet and all at seven tenths, so that what fits one fits the other.
 */

const LARGEST = 12;
const SMALLEST = 7;
const STEP = 0.25;

/** Room on A4 inside the margins, in points. */
const WIDTH = 540;
const HEIGHT = 780;
/** Width of a character, and height of a line. */
const CHARACTER = 0.56;
const LINE = 1.25;
const GAP = 1.6;
/** What balancing two columns of unequal blocks can leave empty. */
const SLACK = 4;

/**
 * The largest type in points, from 7 to 12, at which the card fits a sheet of A4. A card that needs
 * smaller type than a person can read goes on to a second sheet instead.
 */
export function typeSize(card: Card): number {
  for (let size = LARGEST; size > SMALLEST; size -= STEP) {
    if (height(card, WIDTH / size) * size <= HEIGHT) return size;
  }
  return SMALLEST;
}

function height(card: Card, width: number): number {
  const column = (width - GAP) / 2;
  const main = [
    ...card.meals.flatMap(({ name, missed, dishes, notes }) => [
      headingHeight(name, 1.35, column),
      ...missed.map((text) => prose(text, column)),
      ...dishes.map((dish) => dishHeight(dish, column)),
      ...notes.map((note) => prose(note, column)),
    ]),
    bringsHeight(card, column),
    cautionsHeight(card, column),
  ];
  const foot = [...card.notes, ...card.sources].map((text) => 0.78 * prose(text, column / 0.78 - 1.2));
  return headHeight(card, width) + total(main) / 2 + SLACK + (total(foot) + LINE) / 2 + 2;
}

function headHeight({ person, about }: Card, width: number): number {
  return headingHeight(person, 2.6, width - 16) + 2 * LINE + prose(about.join(" · "), width - 16);
}

function headingHeight(text: string, size: number, width: number): number {
  return size * prose(text, width / size) + 0.8 * size;
}

function batchHeight({ name, rows, method }: CardBatch, column: number): number {
  const amounts = rows.map((row) => amountHeight(row, column));
  return headingHeight(name, 1, column) + LINE + 3 + total([...amounts, ...stepHeights(method, column)]);
}

function stepHeights(method: CardDish["method"], column: number): readonly number[] {
  return method.map((step) => {
    const text = step.map((piece) => ("text" in piece ? piece.text : `${piece.amount ?? ""} ${piece.name}`));
    return prose(text.join(""), column - 1.6) + 0.3;
  });
}

function dishHeight({ name, first, groups, pots, method, notes }: CardDish, column: number): number {
  const rows = groups.flatMap((group) => group.rows.map((row) => amountHeight(row, column)));
  const steps = [...first.map((batch) => batchHeight(batch, column)), ...stepHeights(method, column)];
  const small = notes.map((note) => prose(note, column));
  return (
    headingHeight(name, 1.1, column) +
    groups.length * 2 +
    2 * pots.length +
    4 +
    total([...rows, ...steps, ...small])
  );
}

/** Beside the name stand what to weigh, and spoons in what is left. */
function amountHeight(row: AmountRow, column: number): number {
  const { name, prep, madeOf, weigh, measure, edible, dose } = row;
  const figures = weigh.length * 1.2 * CHARACTER + 1;
  const spoons = Math.min(6, measure.length * CHARACTER + 1);
  const bought = edible === undefined ? 0 : AS_PURCHASED.length + edible.length;
  const under = [prep ?? "", ...madeOf].join("; ").length + bought + (dose ? 24 : 0);
  const text = name.length + under * 0.85 + 2;
  const lines = Math.max(
    Math.ceil((text * CHARACTER) / Math.max(6, column - figures - spoons)),
    Math.ceil((measure.length * CHARACTER) / 5),
  );
  return 1.9 + (lines - 1) * LINE;
}

function bringsHeight({ energy, day, against }: Card, column: number): number {
  const key = energy === undefined ? 0 : 3 + prose(energy.spoken, column);
  return (
    2.6 + key + (against ? 2.5 * LINE : 0) + 1.5 + total(day.map((row) => dayHeight(row, against, column)))
  );
}

function dayHeight({ name, brings, share }: DayRow, against: boolean, column: number): number {
  const figures = (brings.text.length + (share?.shown.length ?? 0)) * CHARACTER;
  const room = column - figures - (against ? 7 : 1);
  return 1.6 + (Math.ceil((name.length * CHARACTER) / Math.max(5, room)) - 1) * LINE;
}

function cautionsHeight({ cautions }: Card, column: number): number {
  return cautions.length === 0 ? 0 : 3.5 + total(cautions.map(({ text }) => prose(text, column - 2.6)));
}

/** Words over as many lines as they need: a line breaks before its end, by half a word or so. */
function prose(text: string, width: number): number {
  if (text === "") return 0;
  const room = Math.max(4, width / CHARACTER - 3);
  return text.split("\n").reduce((sum, line) => sum + Math.max(1, Math.ceil(line.length / room)) * LINE, 0);
}

function total(all: readonly number[]): number {
  return all.reduce((a, b) => a + b, 0);
}
