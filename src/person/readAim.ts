import { read } from "../document/read.ts";
import type { Refuse } from "../document/schema.ts";
import { compare, fraction, ONE, over, plus, times, toText, ZERO } from "../number/fraction.ts";
import type { AimFacts, Band, MacroName, ReadRate } from "./aim.ts";
import { type AimFields, aimSchema } from "./aimSchema.ts";

const macroNames: readonly MacroName[] = ["protein", "fat", "carbohydrate"];

/**
 * Reads an aim from outside, every fault at once.
 *
 * Throws `aim-malformed`, and the number codes.
 */
export function readAim(input: unknown): AimFacts {
  return read(aimSchema(), input, "aim-malformed");
}

/** The facts of an aim whose fields are sound. */
export function aimOf({ weight, fibre, equation, ...rest }: AimFields, refuse: Refuse): AimFacts {
  const [direction, rate] = weight === "hold" ? (["hold"] as const) : weight;
  const macros: { [M in MacroName]?: { by: "perKg" | "perKgLean" | "share"; band: Band } } = {};
  for (const name of macroNames) {
    const [by, band] = rest[name] ?? [];
    if (by && band) macros[name] = { by, band };
  }
  const facts: AimFacts = {
    direction,
    macros,
    ...(rate && { rate: rateOf(rate) }),
    ...(fibre && { fibrePer1000: fibre.per1000kcal }),
    ...(equation && { equation }),
  };
  refuseOtherWhole(facts, refuse);
  return facts;
}

function rateOf([by, value]: ReadRate): NonNullable<AimFacts["rate"]> {
  if (by === "percent") return { kind: "percent", value: over(value, fraction(100n)) };
  return { kind: by === "kcal" ? "kcal" : "kgPerWeek", value };
}

/**
 * Shares of protein, fat and carbohydrate that cannot stand together: more than the whole at least, or
 * less than the whole at most, for nothing but alcohol would bring the rest.
 */
function refuseOtherWhole(facts: AimFacts, refuse: Refuse): void {
  const bands = macroNames.map((name) => {
    const macro = facts.macros[name];
    return macro?.by === "share" ? macro.band : undefined;
  });
  const floor = bands.map((band) => band?.exactly ?? band?.least ?? ZERO).reduce(plus, ZERO);
  const ceilings = bands.map((band) => band?.exactly ?? band?.most);
  const ceiling = ceilings.every((each) => each !== undefined) ? ceilings.reduce(plus, ZERO) : ONE;
  const first = macroNames.find((_, i) => bands[i]) ?? "protein";
  if (compare(floor, ONE) > 0)
    refuse(
      "the energy shares add up to more than the whole",
      "let the shares of protein, fat and carbohydrate total at most 1",
      [first, "share"],
    );
  else if (compare(ceiling, ONE) < 0)
    refuse(
      `the energy shares of protein, fat and carbohydrate total ${toText(times(ceiling, fraction(100n)))} % at most, and nothing brings the rest`,
      "let the three total 100 %, or leave one of them free",
      [first, "share"],
    );
}
