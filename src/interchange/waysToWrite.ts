import type { FoodInput } from "../food/food.ts";
import type { ReadAmount, StatedAmount } from "./readLine.ts";
import type { Written } from "./text/written.ts";

/** Words for the same piece. */
const SAME_PIECES: readonly (readonly string[])[] = [
  ["stick", "stalk", "rib"],
  ["can", "tin"],
  ["package", "packet", "pack", "sachet", "envelope"],
  ["slice", "rasher"],
  ["sprig", "twig"],
];

/** Units that are weights whatever the food is. */
const MASSES: ReadonlySet<string | null> = new Set(["g", "kg", "mg", "oz", "lb"]);

/** Volumes that are the same in every kitchen. */
const METRIC: ReadonlySet<string | null> = new Set(["ml", "cl", "dl", "l"]);

/** Spoons, by which the form that a table lists first is meant unless said. */
const SPOONS: ReadonlySet<string> = new Set(["tsp", "tbsp"]);

/**
 * The ways that a line's amount may be written for a food, the surest first: what is weighed; what it
 * says otherwise; packs by what they hold; pieces by the food's own measures.
 */
export function waysToWrite(written: Omit<Written, "apart">, food: FoodInput): readonly string[] {
  const rankOf = ({ unit }: ReadAmount): number => (MASSES.has(unit) ? 0 : METRIC.has(unit) ? 1 : 2);
  const surest = [...written.amounts].sort((a, b) => rankOf(a) - rankOf(b));
  const all = surest.flatMap((amount) => waysOf(amount, written, food));
  return [...new Set(all)];
}

function waysOf(amount: ReadAmount, written: Omit<Written, "apart">, food: FoodInput): string[] {
  const { unit, each, plus } = amount;
  const measures = (food.measures ?? []).map(({ name }) => name);
  if (plus) return [`${text(amount)} + ${text(plus)}`];
  if (each) return packWays(amount, each, measures, food);
  if (unit === null) return countWays(amount, measures, food);
  const names = SAME_PIECES.find((all) => all.includes(unit)) ?? [unit];
  const said = [written.food, ...written.preparation, ...written.state].join(" ");
  const ofUnit = measures.filter((name) => name.startsWith(`${unit}, `));
  // A cup of a form that the line names (a cup, chopped), or the only form that there is.
  const named = ofUnit.filter((name) =>
    name
      .split(", ")
      .slice(1)
      .some((form) => said.includes(form)),
  );
  const forms = named.length > 0 ? named : ofUnit.length === 1 || SPOONS.has(unit) ? ofUnit : [];
  return [
    ...names.slice(0, ofUnit.length > 0 ? 0 : 1),
    ...forms,
    ...names,
    ...names.map((name) => `medium ${name}`),

    ...names.flatMap((name) => onlyOne(ofWord(name, measures), name)),
  ].map((name) => text(amount, name));
}

/** Packs that say what they hold weigh that; what is used drained is known by the food's own pack alone. */
function packWays(
  amount: ReadAmount,
  each: StatedAmount,
  measures: readonly string[],
  food: FoodInput,
): string[] {
  const own = measures.filter((name) => name.split(",")[0] === amount.unit).map((name) => text(amount, name));
  if (food.state === "drained") return own;
  // A size that could be read in two ways is left to whoever refuses it, with both readings.
  const isOne = (amount.least === "1" && amount.most === "1") || each.least.includes(",");
  const isWhole = /^\d+$/.test(amount.least) && amount.least === amount.most;
  const held = isOne
    ? [text(each)]
    : isWhole && each.least === each.most && /^\d+(?:\.\d+)?$/.test(each.least)
      ? [`${timesText(each.least, amount.least)} ${each.unit ?? ""}`]
      : [];
  return [...held, ...own];
}

/** A decimal number text times a whole one, exactly. */
function timesText(decimal: string, times: string): string {
  const [whole = "0", part = ""] = decimal.split(".");
  const digits = (BigInt(whole + part) * BigInt(times)).toString().padStart(part.length + 1, "0");
  return part === "" ? digits : `${digits.slice(0, -part.length)}.${digits.slice(-part.length)}`;
}

const SIZES: ReadonlySet<string> = new Set(["small", "large", "extra large"]);

/** One measure where there is one alone; of several, the one that says no more than the word, else a medium one. */
function onlyOne(names: readonly string[], word: string): readonly string[] {
  const just = names.filter((name) => name.split("(")[0]?.trim().toLowerCase() === word);
  return names.length === 1 ? names : just.length === 1 ? just : ofWord("medium", names);
}

/** A bare count is of the food's own piece, else of medium ones. */
function countWays(amount: ReadAmount, measures: readonly string[], food: FoodInput): string[] {
  const name = food.name.toLowerCase();
  const pieces = measures.filter(
    (each) => each === "fruit" || each === "piece" || name.includes(each.toLowerCase()),
  );
  const sizes = measures.filter((each) => SIZES.has(each));
  const medium = ["medium", ...ofWord("medium", measures)];
  return [...pieces, ...medium, ...(sizes.length === 1 ? sizes : [])].map((each) => text(amount, each));
}

/** Measures of a piece that say a size or piece among other words: `stalk, medium (7-1/2" - 8" long)`. */
function ofWord(word: string, measures: readonly string[]): string[] {
  return measures.filter((name) => {
    const [before = ""] = name.toLowerCase().split("(");
    const words: readonly string[] = before.match(/\p{L}+/gu) ?? [];
    return !/^(?:cup|tbsp|tsp|fl oz|nlea)\b/.test(before) && words.includes(word);
  });
}

/** An amount as a recipe document writes it. */
function text({ least, most, unit }: StatedAmount, named: string | null = unit): string {
  const figure = least === most ? least : `${least}-${most}`;
  return named === null ? figure : `${figure} ${named}`;
}
