import { text } from "../document/leaves.ts";
import { read } from "../document/read.ts";
import { fields, once, optional, type Schema } from "../document/schema.ts";
import { checkFoodTable, type FoodTable } from "../food/table.ts";
import { type Measures, measures, type ReadySet } from "../measure/measures.ts";
import type { ReadLine } from "./readLine.ts";
import { readLineOf } from "./readLineOf.ts";
import { physicalLines } from "./text/physicalLines.ts";
import { titleOf } from "./text/titleOf.ts";
import { nothingOf } from "./text/written.ts";

/** By what lines of text are read. */
export interface LinesOptions {
  /** Which spoons and cups are meant. Without it a line in spoons or cups stays unclear. */
  readonly measures?: Measures;
}

/**
 * Reads the ingredient lines of a recipe as people write them. Every line that says something comes back, in
 * order, with its words: its amounts (a range keeps both ends, two statements of one amount are both kept, a
 * pack keeps its size), food, state, preparation, what is optional and what may stand instead, foods of the
 * table that may be meant, and, where food and amount are clear, the `line` for a recipe document; a line that
 * names several foods has each of them in `apart`. What is unclear says why, and nothing is made up.
 *
 * Throws `food-malformed` for what is no table of foods, and `format-malformed` for other options or what is
 * no text.
 *
 * @example
 * ```ts
 * const [oats, milk] = linesFromText("1 1/2 cups (120 g) rolled oats\n2-3 tbsp milk", starterFoods, { measures: "us" });
 * console.log(oats?.line); // => { food: 'oats-rolled-dry', amount: '120 g' }
 * console.log(milk?.line?.amount); // => 2-3 tbsp
 * ```
 */
export function linesFromText(
  given: string,
  foods: FoodTable,
  options: LinesOptions = {},
): readonly ReadLine[] {
  checkFoodTable(foods);
  const how = read(linesOptions(), options, "format-malformed");
  const whole = read(text(LONGEST_TEXT), given, "format-malformed");
  const lines = physicalLines(whole);
  const title = titleOf(whole, lines);
  return lines.map((line, i) =>
    i === 0 && title !== undefined ? headingLine(line, title) : readLineOf(line, foods, how),
  );
}

function headingLine(text: string, note: string): ReadLine {
  const { apart: _, ...nothing } = nothingOf(text);
  return { ...nothing, kind: "heading", note, candidates: [] };
}

/** The longest text that is read, in characters. */
export const LONGEST_TEXT = 1_000_000;

const linesOptions: () => Schema<{ readonly measures?: ReadySet }> = /* @__PURE__ */ once(() =>
  fields<{ readonly measures?: ReadySet }>({ measures: optional(measures()) }),
);
