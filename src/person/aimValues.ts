import { figure } from "../measure/figure.ts";
import { fault, quote } from "../number/error.ts";
import { type Exact, exact, type Value, ZERO } from "../number/exact.ts";
import { compareRatios } from "../number/ratio.ts";

/** Reads a per cent of the day's need, above 0 to 100: 15, `"15"` or `"15 %"`. */
export function readPercent(value: Value): Exact {
  const [, number] = (typeof value === "string" && /^\s*([^%]*?)\s*%\s*$/.exec(value)) || [];
  return within(exact(number ?? value), value, ["0", "100"], "per cent");
}

/** Reads energy of a day in kcal, above 0: a number, or text with a unit (`"500 kcal"`, `"2 MJ"`). */
export function readKcal(value: Value): Exact {
  return within(figure(value, "kcal"), value, ["0", "20000"], "kcal");
}

/** Reads grams for each kilogram of body, 0 to 20. */
export function readGramsPerKg(value: Value): Exact {
  const grams = figure(value, "g");
  return grams.n === 0n ? ZERO : within(grams, value, ["0", "20"], "g per kg");
}

/** Reads grams for each 1,000 kcal, 0 to 200. */
export function readGramsPer1000kcal(value: Value): Exact {
  const grams = figure(value, "g");
  return grams.n === 0n ? ZERO : within(grams, value, ["0", "200"], "g");
}

function within(read: Exact, written: Value, [above, to]: readonly [string, string], unit: string): Exact {
  if (compareRatios(read, exact(above)) > 0 && compareRatios(read, exact(to)) <= 0) return read;
  throw fault(
    "aim-malformed",
    `${quote(written)} is not above ${above} and up to ${to} ${unit}`,
    `give more than ${above}, and ${to} ${unit} or less`,
  );
}
