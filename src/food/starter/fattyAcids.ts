import { exactText } from "../../number/digits.ts";
import { exact, fraction, isZero, plus } from "../../number/exact.ts";
import type { ComponentId } from "../components.ts";
import type { Figure } from "../food.ts";
import type { FattyAcid } from "./row.ts";

/** A figure of the source: as printed, and what it says of how it came by it. */
export interface PrintedAcid {
  readonly value: string;
  readonly presumed?: true;
  readonly calculated?: string;
  readonly derived?: string;
  readonly borrowedFrom?: string;
}

/** A figure, as its bare value where there is nothing to say of it. */
export function bare(printed: PrintedAcid): Figure {
  return Object.keys(printed).length === 1 ? printed.value : printed;
}

export type Acids = { readonly [A in FattyAcid]?: PrintedAcid };

type Made = { -readonly [C in ComponentId]?: Figure };
type Term = readonly [name: string, of: PrintedAcid | undefined];

/**
 * Linoleic and alpha-linolenic acid as the source gives them. Where it does not, and `standIn` is
 * set, its undifferentiated 18:2 and 18:3 stand in, and say so: right for plant foods whose 18:2
 * and 18:3 are those two acids, wrong where there is industrial fat, gamma-linolenic acid or animal
 * fat. The omega sums are of the acids they name; with one of those unknown there is no sum.
 */
export function fattyAcids(
  acids: Acids,
  longChain: { readonly [C in "epa" | "dpa" | "dha"]?: PrintedAcid },
  standIn: boolean,
): Made {
  const made: Made = {};
  const linoleic = named("18:2 n-6", acids["18:2 n-6"], standIn ? acids["18:2"] : undefined);
  // A reported 18:3 n-6 says that the undifferentiated 18:3 is not one acid alone.
  const oneAcid = standIn && acids["18:3 n-6"] === undefined;
  const linolenic = named("18:3 n-3", acids["18:3 n-3"], oneAcid ? acids["18:3"] : undefined);
  if (linoleic) made.linoleicAcid = linoleic.figure;
  if (linolenic) made.alphaLinolenicAcid = linolenic.figure;

  const gamma: readonly Term[] = acids["18:3 n-6"] ? [["18:3 n-6", acids["18:3 n-6"]]] : [];
  const omega6 = sum(linoleic?.term, ...gamma, ["20:4", acids["20:4"]]);
  const omega3 = sum(linolenic?.term, ["EPA", longChain.epa], ["DPA", longChain.dpa], ["DHA", longChain.dha]);
  if (omega6) made.omega6 = omega6;
  if (omega3) made.omega3 = omega3;
  return made;
}

function named(
  acid: "18:2 n-6" | "18:3 n-3",
  given: PrintedAcid | undefined,
  undifferentiated: PrintedAcid | undefined,
): { readonly figure: Figure; readonly term: Term } | undefined {
  if (given) return { figure: bare(given), term: [acid, given] };
  if (!undifferentiated) return undefined;
  const whole = `${acid.slice(0, 4)} undifferentiated`;
  return {
    figure: { ...undifferentiated, derived: `${whole}, taken for ${acid}` },
    term: [whole, undifferentiated],
  };
}

/** What is to be said of a term that brings some of the sum is to be said of the sum; of none, what is said of all. */
function sum(...terms: readonly (Term | undefined)[]): Figure | undefined {
  let total = fraction(0n);
  const names: string[] = [];
  const given: PrintedAcid[] = [];
  for (const term of terms) {
    if (!term?.[1]) return undefined;
    total = plus(total, exact(term[1].value));
    names.push(term[0]);
    given.push(term[1]);
  }
  const brings = given.filter(({ value }) => !isZero(exact(value)));
  const said = brings.length > 0 ? brings : given;
  const all = (of: "calculated" | "borrowedFrom"): string | undefined => {
    const words = new Set(said.flatMap((each) => each[of] ?? []));
    return words.size === 0 ? undefined : [...words].join("; ");
  };
  const [calculated, borrowedFrom] = [all("calculated"), all("borrowedFrom")];
  return {
    value: exactText(total),
    derived: names.join(" + "),
    ...(calculated !== undefined && { calculated }),
    ...(borrowedFrom !== undefined && { borrowedFrom }),
    ...(said.some(({ presumed }) => presumed) && { presumed: true }),
  };
}
