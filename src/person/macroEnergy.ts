import { fixedText } from "../number/digits.ts";
import type { Fault } from "../number/error.ts";
import { type Exact, exact, fraction, ONE, over, plus, times, ZERO } from "../number/exact.ts";
import { compareRatios } from "../number/ratio.ts";
import type { AimFacts, MacroName } from "./aim.ts";
import type { Facts } from "./person.ts";

/** General Atwater factors, kcal per g. */
const KCAL: { readonly [M in MacroName]: string } = { protein: "4", fat: "9", carbohydrate: "4" };

/** How far foods' own factors may stray from the general ones: a tenth, common practice, no source. */
const STRAY: Exact = /* @__PURE__ */ fraction(1n, 10n);

/** What an aim's protein, fat and carbohydrate come to, kcal: at least, and at most where all three have a limit. */
export interface MacroEnergy {
  readonly least: Exact;
  readonly most: Exact | undefined;
}

/** The energy of what an aim asks of protein, fat and carbohydrate together. */
export function macroEnergy(facts: Facts, { macros }: AimFacts, target: Exact): MacroEnergy {
  const names = Object.keys(KCAL) as MacroName[];
  const energy = (name: MacroName, end: "least" | "most"): Exact | undefined => {
    const macro = macros[name];
    const asked = macro?.band.exactly ?? macro?.band[end];
    if (!macro || !asked) return undefined;
    if (macro.by === "share") return times(asked, target);
    const kg = macro.by === "perKg" ? facts.mass : (facts.lean ?? ZERO);
    return times(times(asked, kg), exact(KCAL[name]));
  };
  const mosts = names.map((name) => energy(name, "most"));
  return {
    least: names.map((name) => energy(name, "least") ?? ZERO).reduce(plus, ZERO),
    most: mosts.every((most) => most !== undefined) ? mosts.reduce(plus, ZERO) : undefined,
  };
}

/** On which side of the day's energy protein, fat and carbohydrate as asked come to lie by general factors. */
export function sideOfEnergy({ least, most }: MacroEnergy, target: Exact): "more" | "less" | undefined {
  if (compareRatios(least, target) > 0) return "more";
  return most !== undefined && compareRatios(most, target) < 0 ? "less" : undefined;
}

/** What cannot be met whatever is eaten: macros that bring more than the day's energy, or cannot bring it. */
export function macroFaults({ macros }: AimFacts, { least, most }: MacroEnergy, target: Exact): Fault[] {
  const isOver = compareRatios(over(least, target), plus(ONE, STRAY)) > 0;
  const isUnder = most !== undefined && compareRatios(plus(over(most, target), STRAY), ONE) < 0;
  if (!isOver && !isUnder) return [];
  const [name = "protein"] = (Object.keys(KCAL) as MacroName[]).filter((each) => macros[each]);
  const kcal = (energy: Exact): string => fixedText(energy, 0);
  return [
    {
      code: "aim-malformed",
      path: [name, macros[name]?.by ?? "perKg"],
      message: isOver
        ? `protein, fat and carbohydrate as asked bring ${kcal(least)} kcal or more, and the day has ${kcal(target)}`
        : `protein, fat and carbohydrate as asked bring ${kcal(most ?? ZERO)} kcal at most, and the day has ${kcal(target)}`,
      hint: "leave one of the three free, or give it a band",
    },
  ];
}
