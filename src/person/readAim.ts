import { readShare } from "../measure/share.ts";
import { readDocument } from "../number/document.ts";
import { type Fault, fault, throwIfAny } from "../number/error.ts";
import {
  compare,
  type Fraction,
  fraction,
  ONE,
  over,
  plus,
  times,
  toText,
  type Value,
  ZERO,
} from "../number/fraction.ts";
import type { Aim, AimFacts, Band, MacroAim, MacroName, Rate, Wanted } from "./aim.ts";
import { aimSchema } from "./aimSchema.ts";
import { readGramsPer1000kcal, readGramsPerKg, readKcal, readPercent } from "./aimValues.ts";
import { readMass } from "./size.ts";

const macroNames: readonly MacroName[] = ["protein", "fat", "carbohydrate"];

/**
 * Reads an aim from outside, every fault at once.
 *
 * Throws `aim-malformed`, and the number codes.
 */
export function readAim(input: Aim): AimFacts {
  const aim = readDocument(aimSchema(), input, "aim-malformed");
  const direction = aim.weight === "hold" ? "hold" : "lose" in aim.weight ? "lose" : "gain";
  const rate = aim.weight === "hold" ? undefined : "lose" in aim.weight ? aim.weight.lose : aim.weight.gain;
  const macros: { [M in MacroName]?: { by: "perKg" | "perKgLean" | "share"; band: Band } } = {};
  for (const name of macroNames) {
    const macro = aim[name];
    if (macro) macros[name] = readMacro(macro);
  }
  const facts: AimFacts = {
    direction,
    macros,
    ...(rate && { rate: readRate(rate) }),
    ...(aim.fibre && { fibrePer1000: readGramsPer1000kcal(aim.fibre.per1000kcal) }),
    ...(aim.equation && { equation: aim.equation }),
  };
  throwIfAny(sharesAgainstWhole(facts));
  return facts;
}

function readRate(rate: Rate): { kind: "percent" | "kcal" | "kgPerWeek"; value: Fraction } {
  if (rate.percent !== undefined)
    return { kind: "percent", value: over(readPercent(rate.percent), fraction(100n)) };
  if (rate.kcal !== undefined) return { kind: "kcal", value: readKcal(rate.kcal) };
  return { kind: "kgPerWeek", value: readMass(rate.perWeek) };
}

function readMacro(macro: MacroAim): { by: "perKg" | "perKgLean" | "share"; band: Band } {
  if (macro.share !== undefined) {
    return { by: "share", band: readBand(macro.share, (v) => readShare(v, "aim-malformed")) };
  }
  if (macro.perKgLean !== undefined)
    return { by: "perKgLean", band: readBand(macro.perKgLean, readGramsPerKg) };
  if (macro.perKg !== undefined) return { by: "perKg", band: readBand(macro.perKg, readGramsPerKg) };
  throw fault("aim-malformed", "nothing asked", "give perKg, perKgLean or share");
}

function readBand(wanted: Wanted, read: (value: Value) => Fraction): Band {
  if (typeof wanted !== "object" || "toFixed" in wanted) return { exactly: read(wanted) };
  return {
    ...(wanted.least !== undefined && { least: read(wanted.least) }),
    ...(wanted.most !== undefined && { most: read(wanted.most) }),
  };
}

/**
 * Shares of protein, fat and carbohydrate that cannot stand together: more than the whole at least, or
 * less than the whole at most, for nothing but alcohol would bring the rest.
 */
function sharesAgainstWhole(facts: AimFacts): Fault[] {
  const bands = macroNames.map((name) => {
    const macro = facts.macros[name];
    return macro?.by === "share" ? macro.band : undefined;
  });
  const floor = bands.map((band) => band?.exactly ?? band?.least ?? ZERO).reduce(plus, ZERO);
  const ceilings = bands.map((band) => band?.exactly ?? band?.most);
  const ceiling = ceilings.every((each) => each !== undefined) ? ceilings.reduce(plus, ZERO) : ONE;
  const first = macroNames.find((_, i) => bands[i]) ?? "protein";
  const refuse = (message: string, hint: string): Fault[] => [
    { code: "aim-malformed", path: [first, "share"], message, hint },
  ];
  if (compare(floor, ONE) > 0) {
    return refuse(
      "the energy shares add up to more than the whole",
      "let the shares of protein, fat and carbohydrate total at most 1",
    );
  }
  if (compare(ceiling, ONE) < 0) {
    return refuse(
      `the energy shares of protein, fat and carbohydrate total ${toText(times(ceiling, fraction(100n)))} % at most, and nothing brings the rest`,
      "let the three total 100 %, or leave one of them free",
    );
  }
  return [];
}
