import { readDocument } from "../number/document.ts";
import { type Fault, fault, throwIfAny } from "../number/error.ts";
import { compare, type Fraction, fraction, over, plus, type Value, ZERO } from "../number/fraction.ts";
import type { Aim, AimFacts, Band, MacroAim, MacroName, Rate, Wanted } from "./aim.ts";
import { aimSchema } from "./aimSchema.ts";
import { readGramsPer1000kcal, readGramsPerKg, readKcal, readPercent } from "./aimValues.ts";
import { readShare } from "./share.ts";
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
  throwIfAny(sharesBeyondWhole(facts));
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

/** Shares of protein, fat and carbohydrate that must together exceed the whole cannot be met. */
function sharesBeyondWhole(facts: AimFacts): Fault[] {
  const floors = macroNames.flatMap((name) => {
    const macro = facts.macros[name];
    return macro?.by === "share" ? [macro.band.exactly ?? macro.band.least ?? ZERO] : [];
  });
  const floor = floors.reduce(plus, ZERO);
  if (compare(floor, fraction(1n)) <= 0) return [];
  return [
    {
      code: "aim-malformed",
      path: ["protein", "share"],
      message: "the energy shares add up to more than the whole",
      hint: "let the shares of protein, fat and carbohydrate total at most 1",
    },
  ];
}
