import { fault, quote, within } from "../../number/error.ts";
import {
  compare,
  exact,
  type Fraction,
  isNumeric,
  isZero,
  ONE,
  over,
  sum,
  times,
  type Value,
  ZERO,
} from "../../number/fraction.ts";
import { didYouMean } from "../../number/near.ts";
import type { Tally } from "../../sheet/tally.ts";
import type { EatenPortion } from "../portion/eaten.ts";
import { aminoAcids } from "./pattern.ts";

/** Share of the protein that is digested: of the whole, or of each line by its key. */
export type Digestibility = Value | { readonly [line: string]: Value };

/** Lines with their protein in one portion, and whether they tell all their amino acids. */
function proteinLines(portion: EatenPortion): { key: string; protein: Tally; told: boolean }[] {
  const ids = Object.values(aminoAcids).flat();
  return portion.meals.flatMap(({ name, sheet }) =>
    sheet.lines.map(({ key }) => ({
      key: name === undefined ? key : `${name}/${key}`,
      protein: sheet.cell(key, "protein").share(over(ONE, sheet.values.portions)),
      told: ids.every((id) => sheet.cell(key, id).bound === "exact"),
    })),
  );
}

/** Of all the protein, the share that comes with lines that tell all their amino acids. */
export function toldShare(portion: EatenPortion): Fraction {
  const lines = proteinLines(portion);
  const whole = sum(lines.map(({ protein }) => protein.value));
  const told = sum(lines.filter((line) => line.told).map(({ protein }) => protein.value));
  return isZero(whole) ? ZERO : over(told, whole);
}

/** Of all the protein, the share that is digested; nothing where a line with protein has no figure. */
export function digestedShare(portion: EatenPortion, given: Digestibility | undefined): Fraction | undefined {
  if (given === undefined) return undefined;
  if (typeof given !== "object" || given === null || Array.isArray(given) || isNumeric(given))
    return readShareOf(given as Value, []);
  const lines = proteinLines(portion);
  const keys = lines.map(({ key }) => key);
  for (const [key, value] of Object.entries(given)) {
    if (!keys.includes(key)) {
      const hint = didYouMean(key, keys, `use one of ${keys.slice(0, 10).join(", ")}`);
      throw fault("comparison-malformed", `no line is called ${quote(key)}`, hint, ["digestibility", key]);
    }
    readShareOf(value, [key]);
  }
  const some = lines.filter(({ protein }) => protein.bound !== "exact" || !isZero(protein.value));
  const digested = some.map(({ key, protein }) => {
    const share = Object.hasOwn(given, key) ? (given as { readonly [line: string]: Value })[key] : undefined;
    return share === undefined || protein.bound !== "exact" ? undefined : times(protein.value, exact(share));
  });
  const whole = sum(some.map(({ protein }) => protein.value));
  const all = digested.filter((each) => each !== undefined);
  return all.length < digested.length || isZero(whole) ? undefined : over(sum(all), whole);
}

function readShareOf(value: Value, path: readonly string[]): Fraction {
  const share = within(["digestibility", ...path], () => exact(value));
  if (share.n >= 0n && compare(share, ONE) <= 0) return share;
  throw fault("comparison-malformed", "a digestibility outside 0 to 1", "write it as a share: 0.85", [
    "digestibility",
    ...path,
  ]);
}
