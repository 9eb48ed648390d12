import { number } from "../../document/leaves.ts";
import { isRecord } from "../../document/safe.ts";
import { andThen, byName, choice, type Schema } from "../../document/schema.ts";
import { fault, quote } from "../../number/error.ts";
import { type Exact, isZero, ONE, over, sum, times, type Value, ZERO } from "../../number/exact.ts";
import { didYouMean } from "../../number/near.ts";
import type { Tally } from "../../sheet/tally.ts";
import type { EatenPortion } from "../portion/eaten.ts";
import { aminoAcids } from "./pattern.ts";

/** Share of the protein that is digested: of the whole, or of each line by its key. */
export type Digestibility = Value | { readonly [line: string]: Value };

/** The same, read: of the whole, or by line. */
export type ReadDigestibility = Exact | ReadonlyMap<string, Exact>;

/** The schema of a digestibility; which lines there are is the portion's to say. */
export function digestibility(): Schema<ReadDigestibility> {
  const share: Schema<Exact> = number({ from: 0, to: 1 });
  const byLine = andThen(byName(share), (read) => new Map(Object.entries(read)));
  const expected = 'a share, 0.85, or one for each line: { oats: "0.86" }';
  return choice<ReadDigestibility>([share, byLine], (given) => (isRecord(given) ? byLine : share), expected);
}

/** Lines with their protein in one portion, and whether they tell all their amino acids. */
function proteinLines(portion: EatenPortion): { key: string; protein: Tally; told: boolean }[] {
  const ids = Object.values(aminoAcids).flat();
  return portion.meals.flatMap(({ name, sheet }) =>
    sheet.lines.map(({ key }) => ({
      key: name === undefined ? key : `${name}/${key}`,
      protein: sheet.cell(key, "protein").share(over(ONE, sheet.values.portions)),
      told: ids.every((id) => sheet.cell(key, id).bound === "point"),
    })),
  );
}

/** Of all the protein, the share that comes with lines that tell all their amino acids. */
export function toldShare(portion: EatenPortion): Exact {
  const lines = proteinLines(portion);
  const whole = sum(lines.map(({ protein }) => protein.value));
  const told = sum(lines.filter((line) => line.told).map(({ protein }) => protein.value));
  return isZero(whole) ? ZERO : over(told, whole);
}

/** Of all the protein, the share that is digested; nothing where a line with protein has no figure. */
export function digestedShare(
  portion: EatenPortion,
  given: ReadDigestibility | undefined,
): Exact | undefined {
  if (!(given instanceof Map)) return given as Exact | undefined;
  const lines = proteinLines(portion);
  const keys = lines.map(({ key }) => key);
  for (const key of given.keys()) {
    if (!keys.includes(key)) {
      const hint = didYouMean(key, keys, `use one of ${keys.slice(0, 10).join(", ")}`);
      throw fault("comparison-malformed", `no line is called ${quote(key)}`, hint, ["digestibility", key]);
    }
  }
  const some = lines.filter(({ protein }) => protein.bound !== "point" || !isZero(protein.value));
  const digested = some.map(({ key, protein }) => {
    const share: Exact | undefined = given.get(key);
    return share === undefined || protein.bound !== "point" ? undefined : times(protein.value, share);
  });
  const whole = sum(some.map(({ protein }) => protein.value));
  const all = digested.filter((each) => each !== undefined);
  return all.length < digested.length || isZero(whole) ? undefined : over(sum(all), whole);
}
