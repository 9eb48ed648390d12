import type { Language } from "../document/language.ts";
import { compareRatios } from "../number/ratio.ts";
import type { KnownDish } from "../plan/dish.ts";
import { inSentence } from "../sheet/names.ts";
import type { Sheet, SheetLine } from "../sheet/sheet.ts";
import { amountOfFood } from "./amountOfFood.ts";
import { methodWith, type Piece, shortNames } from "./method.ts";
import { asMeasured, inPlace } from "./methodOf.ts";
import type { DishPot } from "./session.ts";

/** How to make one run of a pot, its amounts in place. */
export interface CookingSteps {
  /**
   * `recipe` where the steps are its method. Where it has none, the lines in the order of loading that
   * is `common-practice`: what is dry before what is not, small before bulky, so that it does not cling
   * to the sides.
   */
  readonly by: "recipe" | "common-practice";
  /** Each line of the pot with its amount once, where it is named first. */
  readonly steps: readonly string[];
  /** Names of lines that go into the pot, though the method does not name them, with their amounts. */
  readonly unnamed: readonly string[];
  /** Names of lines that are left for serving. */
  readonly atServing: readonly string[];
  /** Names of lines that are cooked, but weighed out for each person. */
  readonly apart: readonly string[];
}

/** How to make a pot of a dish; what is left for serving, or weighed out for each person, is told apart. */
export function stepsOf(pot: DishPot, language: Language): CookingSteps {
  const { dish } = pot.made();
  return stepsFor(pot, dish.batch, dish.knownTo(pot.people.map(({ person }) => person)), language);
}

/** What is made in runs, with the lines that a kitchen measured. */
type Made = Pick<DishPot, "runs" | "measured">;

/** How to make a batch of a nested recipe. */
export function stepsOfBatch(batch: Made & Pick<DishPot, "sheet">, language: Language): CookingSteps {
  const { sheet } = batch;
  const known = { method: sheet.origin.method ?? [], lines: sheet.lines.map(({ key }) => key) };
  return stepsFor(batch, sheet, known, language);
}

function stepsFor(
  { runs, measured }: Made,
  whole: Sheet,
  known: Pick<KnownDish, "method" | "lines">,
  language: Language,
): CookingSteps {
  const run = runs[0]?.sheet;
  const names = shortNames(whole.lines, language);
  const lines = run?.lines ?? [];
  const amountOf = (s: Sheet, line: SheetLine): string =>
    measured.includes(line.key) ? asMeasured(s, line, language) : inPlace(s, line, language);
  const amounts = new Map(lines.map((line) => [line.key, run ? amountOf(run, line) : ""]));
  const named = (key: string): string =>
    asText({ name: inSentence(names.get(key) ?? key, language), amount: amounts.get(key) }, language);
  const others = whole.lines.filter(
    ({ key, grams }) => !amounts.has(key) && grams.n !== 0n && known.lines.includes(key),
  );
  const namesOf = (added: SheetLine["added"]): readonly string[] =>
    others
      .filter((line) => line.added === added)
      .map(({ key }) => inSentence(names.get(key) ?? key, language));
  const rest = { atServing: namesOf("serving"), apart: namesOf("cooking") };
  const { steps, unnamed } = methodWith(known.method, names, amounts, language, (key) =>
    known.lines.includes(key),
  );
  if (steps.length === 0) {
    return {
      by: "common-practice",
      steps: [...lines].sort(loading).map(({ key }) => named(key)),
      unnamed: [],
      ...rest,
    };
  }
  return {
    by: "recipe",
    steps: steps.map((pieces) => pieces.map((piece) => asText(piece, language)).join("")),
    unnamed: unnamed.map(named),
    ...rest,
  };
}

/** Dry before the rest, then by mass. Common practice, no source. */
function loading(a: SheetLine, b: SheetLine): number {
  const isWet = ({ state }: SheetLine): number => (state === "dry" ? 0 : 1);
  return isWet(a) - isWet(b) || compareRatios(a.grams, b.grams);
}

function asText(piece: Piece, language: Language): string {
  if ("text" in piece) return piece.text;
  const { name, amount } = piece;
  return amount === undefined ? name : amountOfFood(amount, name, language);
}
