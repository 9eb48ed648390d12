import { type Exact, exact, fraction, ZERO } from "../number/exact.ts";
import { compareRatios } from "../number/ratio.ts";
import type { Check } from "./check.ts";
import { type Childbearing, childbearingOf } from "./intakes/stage.ts";
import type { Authority } from "./intakes/table.ts";
import type { Facts } from "./person.ts";

/** What an authority adds to a day's energy for pregnancy or breastfeeding. */
export interface EnergyAddition {
  readonly authority: Authority;
  readonly for: Childbearing;
  /** kcal a day. */
  readonly value: Exact;
  readonly source: string;
  readonly check: Check;
}

interface Published {
  readonly source: string;
  /** By trimester, kcal a day. */
  readonly pregnancy: readonly [string, string, string];
  readonly pregnancyRead: Check;
  /** kcal a day in the first six months, and in the second; none where none is published. */
  readonly breastfeeding: readonly [first: string, second?: string];
  readonly breastfeedingRead: Check;
  /** Ages in years that it is published for: from one, and below another. */
  readonly ages: { readonly from: number; readonly below?: number };
}

/**
 * SACN prints 0.8 and 1.4 MJ, for the last trimester and for feeding on milk alone. The second six
 * months are partly fed otherwise; neither SACN nor EFSA has one figure for them. EFSA's are read in its
 * Summary report of 2017 (e15121), page 12, beside 0.29, 1.1 and 2.1 MJ. The Institute of
 * Medicine reckons with what milk takes less what the body's own stores give: 500 - 170, then 400.
 * Those of the other authorities were not read, and none is added under them.
 */
export const energyAdditions: { readonly [A in Authority]?: Published } = {
  uk: {
    source: "SACN (UK) 2011, Dietary Reference Values for Energy",
    pregnancy: ["0", "0", "191"],
    pregnancyRead: "copy",
    breastfeeding: ["330"],
    breastfeedingRead: "unverified",
    ages: { from: 1 },
  },
  us: {
    source: "Institute of Medicine (US, Canada) 2002/2005, DRI for energy, chapter 5",
    pregnancy: ["0", "340", "452"],
    pregnancyRead: "issuer",
    breastfeeding: ["330", "400"],
    breastfeedingRead: "unverified",
    ages: { from: 14, below: 51 },
  },
  eu: {
    source: "EFSA 2013, Dietary Reference Values for energy, EFSA Journal 11(1):3005",
    pregnancy: ["70", "260", "500"],
    pregnancyRead: "issuer",
    breastfeeding: ["500"],
    breastfeedingRead: "issuer",
    ages: { from: 18 },
  },
};

const HALF_YEAR: Exact = /* @__PURE__ */ fraction(6n);
const YEAR: Exact = /* @__PURE__ */ fraction(12n);

/** What one authority adds for a person's state: nothing where it has no figure for it. */
export function energyAddition(authority: Authority, facts: Facts): EnergyAddition | undefined {
  const state = childbearingOf(facts);
  const found = energyAdditions[authority];
  if (!found) return undefined;
  const { source, ages, ...published } = found;
  const isOfAge =
    compareRatios(facts.age, exact(ages.from)) >= 0 &&
    (ages.below === undefined || compareRatios(facts.age, exact(ages.below)) < 0);
  if (state === undefined || !isOfAge) return undefined;
  const kcal =
    state === "pregnancy" ? published.pregnancy[(facts.pregnant ?? 1) - 1] : ofMonths(published, facts);
  if (kcal === undefined) return undefined;
  const check = state === "pregnancy" ? published.pregnancyRead : published.breastfeedingRead;
  return { authority, for: state, value: exact(kcal), source, check };
}

/** What every authority adds for a person's state. */
export function additionsFor(facts: Facts): readonly EnergyAddition[] {
  return (Object.keys(energyAdditions) as Authority[]).flatMap((authority): EnergyAddition[] => {
    const found = energyAddition(authority, facts);
    return found ? [found] : [];
  });
}

function ofMonths(
  { breastfeeding: [first, second] }: Pick<Published, "breastfeeding">,
  facts: Facts,
): string | undefined {
  const months = facts.monthsSinceBirth ?? ZERO;
  if (compareRatios(months, HALF_YEAR) < 0) return first;
  return compareRatios(months, YEAR) < 0 ? second : undefined;
}
