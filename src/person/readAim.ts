import { isValue, NUMBER, readBy, word } from "../document/leaves.ts";
import { read } from "../document/read.ts";
import { isRecord } from "../document/safe.ts";
import {
  andThen,
  choice,
  fields,
  once,
  oneOf,
  optional,
  type Refuse,
  type Schema,
} from "../document/schema.ts";
import { readShare } from "../measure/share.ts";
import { exactText } from "../number/digits.ts";
import { type Exact, fraction, ONE, over, plus, times, type Value, ZERO } from "../number/exact.ts";
import { compareRatios } from "../number/ratio.ts";
import type { AimFacts, Band, MacroName, ReadMacro, ReadRate } from "./aim.ts";
import { readGramsPer1000kcal, readGramsPerKg, readKcal, readPercent } from "./aimValues.ts";
import { energyEquations } from "./equations/all.ts";
import type { EquationId } from "./equations/equation.ts";
import { readMass } from "./size.ts";

/** The fields of an aim as they are read. */
export interface AimFields extends Readonly<Partial<Record<MacroName, ReadMacro>>> {
  readonly weight: "hold" | readonly ["lose" | "gain", ReadRate];
  readonly fibre?: { readonly per1000kcal: Exact };
  readonly equation?: EquationId;
}

/** The schema of an aim. */
export const aimSchema: () => Schema<AimFacts> = /* @__PURE__ */ once(() => {
  const perKg = wanted(readGramsPerKg);
  const macro = oneOf<Record<ReadMacro[0], Band>>({
    perKg,
    perKgLean: perKg,
    share: wanted((share) => readShare(share, "aim-malformed")),
  });
  const rate = oneOf<Record<ReadRate[0], Exact>>({
    percent: readBy(readPercent),
    kcal: readBy(readKcal),
    perWeek: readBy(readMass),
  });
  const hold = word(["hold"]);
  const change = oneOf<Record<"lose" | "gain", ReadRate>>({ lose: rate, gain: rate });
  return andThen(
    fields<AimFields>({
      weight: choice<AimFields["weight"]>(
        [hold, change],
        (given) => (given === "hold" ? hold : isRecord(given) ? change : undefined),
        '"hold", { lose } or { gain }, as in { lose: { percent: 15 } }',
      ),
      protein: optional(macro),
      fat: optional(macro),
      carbohydrate: optional(macro),
      fibre: optional(fields<{ readonly per1000kcal: Exact }>({ per1000kcal: readBy(readGramsPer1000kcal) })),
      equation: optional(word(Object.keys(energyEquations) as EquationId[])),
    }),
    aimOf,
  );
});

/** One figure, or limits. */
function wanted(reader: (value: Value) => Exact): Schema<Band> {
  const one = andThen(readBy(reader), (exactly): Band => ({ exactly }));
  const limit = readBy(reader);
  const band = andThen(
    fields<Pick<Band, "least" | "most">>({ least: optional(limit), most: optional(limit) }),
    refuseTurned,
  );
  return choice<Band>(
    [one, band],
    (given) => (isValue(given) ? one : isRecord(given) ? band : undefined),
    `${NUMBER}; or least, most or both`,
  );
}

function refuseTurned({ least, most }: Band, refuse: Refuse): Band {
  if (!least && !most) refuse("a band without limits", "give least, most or both");
  if (least && most && compareRatios(least, most) > 0)
    refuse("least is more than most", "give the limits in rising order");
  return { ...(least && { least }), ...(most && { most }) };
}

const macroNames: readonly MacroName[] = ["protein", "fat", "carbohydrate"];

/**
 * Reads an aim from outside, every fault at once.
 *
 * Throws `aim-malformed`, and the number codes.
 */
export function readAim(input: unknown): AimFacts {
  return read(aimSchema(), input, "aim-malformed");
}

/** Gives the facts of an aim whose fields are sound. */
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
  if (compareRatios(floor, ONE) > 0)
    refuse(
      "the energy shares add up to more than the whole",
      "let the shares of protein, fat and carbohydrate total at most 1",
      [first, "share"],
    );
  else if (compareRatios(ceiling, ONE) < 0)
    refuse(
      `the energy shares of protein, fat and carbohydrate total ${exactText(times(ceiling, fraction(100n)))} % at most, and nothing brings the rest`,
      "let the three total 100 %, or leave one of them free",
      [first, "share"],
    );
}
