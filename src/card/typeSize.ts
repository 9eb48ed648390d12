import { AS_PURCHASED } from "./amounts.ts";
import { type AmountRow, type Card, type CardBatch, type CardDish, type DayRow, isBrief } from "./card.ts";

/*
 * How large the type can be for the card to fit one sheet. Heights are in lines' own measure, the size
 * of the type (rem), reckoned from how many characters fit beside each other; they follow the rules of
 * style.ts, and err on the tall side, since what font the reader has is not known. A5 is A4 with type,
 * sheet and all at seven tenths, so that what fits one fits the other.
 */

const LARGEST = 16;
const SMALLEST = 10.5;
const STEP = 0.25;

/** Room on A4 inside the margins, in points. */
const WIDTH = 540;
const HEIGHT = 780;
/** Width of a character, and height of a line. */
const CHARACTER = 0.5;
const LINE = 1.25;
const GAP = 1.6;
/** What balancing two columns of unequal blocks can leave empty. */
const SLACK = 2;

/**
 * The largest type in points, from 10.5 to 16, at which the card fits a sheet of A4. A card that needs
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
  const days = new Set(card.meals.map(({ day }) => day));
  const main = [
    ...(days.size > 1 ? [2 * days.size] : []),
    ...card.meals.flatMap(({ name, missed, dishes, notes }) => [
      days.size > 1 ? 0 : headingHeight(name, 1.35, column),
      ...missed.map((text) => prose(text, column)),
      ...dishes.map((dish) => (days.size > 1 && isBrief(dish) ? briefHeight : dishHeight)(dish, column)),
      ...notes.map((note) => prose(note, column)),
    ]),
  ];
  const [meals, brings, care] = [total(main), bringsHeight(card, column), cautionsHeight(card, column)];
  // Nutrients stay together, at the foot of the first column or in the second.
  const half = (meals + brings + care) / 2;
  const columns = Math.max(half, Math.min(meals + brings, brings + care));
  const foot = card.notes.map((text) => prose(text, column - 1.2));
  return headHeight(card, width) + columns + SLACK + total(foot) / 2 + 2;
}

function headHeight({ person, about, allergens }: Card, width: number): number {
  const lines = [...allergens, about.join(" · ")].map((text) => prose(text, width));
  return headingHeight(person, 2.2, width) + LINE + total(lines);
}

function headingHeight(text: string, size: number, width: number): number {
  return size * prose(text, width / size) + 0.6 * size;
}

function batchHeight({ name, rows, method }: CardBatch, column: number): number {
  const amounts = rows.map((row) => amountHeight(row, column));
  return headingHeight(name, 1, column) + LINE + total([...amounts, ...stepHeights(method, column)]);
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
  const shares = pots.map(({ also }) => (also === "" ? 2.7 : 3.8));
  const heads = groups.filter(({ heading }) => heading !== undefined).length * 2.1;
  const sum = groups.length > 0 || pots.length !== 1 ? 1.9 : 0;
  return headingHeight(name, 1.1, column) + heads + sum + total([...shares, ...rows, ...steps, ...small]);
}

/** A dish of a day among others: what to take beside its name, and beneath it what to add. */
function briefHeight({ name, groups, pots, notes }: CardDish, column: number): number {
  const rows = groups.flatMap((group) => group.rows);
  const added = rows.map(({ lead, name: food, prep = "" }) => `${lead} ${food}, ${prep}`).join("; ");
  const figures = pots.reduce((sum, { lead, also }) => sum + lead.length * 1.2 + also.length, 1) * CHARACTER;
  const room = column - Math.max(figures, 5.5);
  return (
    prose(`Breakfast ${name}`, room) +
    prose(added, room) +
    total(notes.map((note) => prose(note, room))) +
    0.5
  );
}

/** Beside the name stands what to take, and beneath it the same in other words. */
function amountHeight({ name, prep, madeOf, lead, also, edible, dose }: AmountRow, column: number): number {
  const bought = edible === undefined ? 0 : AS_PURCHASED.length + edible.length;
  const under = [prep ?? "", ...madeOf].join("; ").length + bought + (dose ? 24 : 0);
  const text = name.length + under * 0.85 + 2;
  const own = Math.ceil((lead.length * 1.2 * CHARACTER) / (0.45 * column));
  const lines = Math.ceil((text * CHARACTER) / (0.55 * column - 0.5));
  return Math.max(lines * LINE, own * 1.5 + (also === "" ? 0 : 1.1)) + 0.45;
}

function bringsHeight({ energy, day, against }: Card, column: number): number {
  const key = energy === undefined ? 0 : 1.6 + prose(energy.spoken, column);
  return 2.6 + key + (against ? 3 * LINE : 0) + total(day.map((row) => dayHeight(row, against, column)));
}

function dayHeight({ id, name, brings, part, share }: DayRow, against: boolean, column: number): number {
  const room = against && share !== undefined ? 0.48 * column : column;
  const figure = brings.text.length * (id === "energy" || id === "protein" ? 1.5 : 1);
  const under = part === "" ? 0 : prose(part, against ? 0.48 * column : column);
  return prose("x".repeat(name.length + figure + 2), room) + under + 0.6;
}

function cautionsHeight({ cautions }: Card, column: number): number {
  return cautions.length === 0 ? 0 : 2.6 + total(cautions.map(({ text }) => prose(text, column - 2.6)));
}

/** Words over as many lines as they need: a line breaks before its end, by half a word or so. */
function prose(text: string, width: number): number {
  if (text === "") return 0;
  const room = Math.max(4, width / CHARACTER - 1);
  return text.split("\n").reduce((sum, line) => sum + Math.max(1, Math.ceil(line.length / room)) * LINE, 0);
}

function total(all: readonly number[]): number {
  return all.reduce((a, b) => a + b, 0);
}
