import { isValue, NUMBER, readBy, word } from "../document/leaves.ts";
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
import { compare, type Fraction, type Value } from "../number/fraction.ts";
import type { AimFacts, Band, MacroName, ReadMacro, ReadRate } from "./aim.ts";
import { readGramsPer1000kcal, readGramsPerKg, readKcal, readPercent } from "./aimValues.ts";
import { energyEquations } from "./equations/all.ts";
import type { EquationId } from "./equations/equation.ts";
import { aimOf } from "./readAim.ts";
import { readMass } from "./size.ts";

/** The fields of an aim as they are read. */
export interface AimFields extends Readonly<Partial<Record<MacroName, ReadMacro>>> {
  readonly weight: "hold" | readonly ["lose" | "gain", ReadRate];
  readonly fibre?: { readonly per1000kcal: Fraction };
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
  const rate = oneOf<Record<ReadRate[0], Fraction>>({
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
        (given) => (typeof given === "string" ? hold : isRecord(given) ? change : undefined),
        '"hold", { lose } or { gain }, as in { lose: { percent: 15 } }',
      ),
      protein: optional(macro),
      fat: optional(macro),
      carbohydrate: optional(macro),
      fibre: optional(
        fields<{ readonly per1000kcal: Fraction }>({ per1000kcal: readBy(readGramsPer1000kcal) }),
      ),
      equation: optional(word(Object.keys(energyEquations) as EquationId[])),
    }),
    aimOf,
  );
});

/** One figure, or limits. */
function wanted(reader: (value: Value) => Fraction): Schema<Band> {
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
  if (least && most && compare(least, most) > 0)
    refuse("least is more than most", "give the limits in rising order");
  return { ...(least && { least }), ...(most && { most }) };
}
