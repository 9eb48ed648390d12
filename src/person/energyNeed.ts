import { read } from "../document/read.ts";
import { fields, once, optional, type Schema } from "../document/schema.ts";
import { together } from "../number/error.ts";
import { type Exact, exact, greatest, least, times } from "../number/exact.ts";
import { classAt } from "./activity.ts";
import { type Caution, practitionerNote } from "./caution.ts";
import type { Check } from "./check.ts";
import { additionsFor, type EnergyAddition } from "./energyAdditions.ts";
import type { EquationId } from "./equations/equation.ts";
import { equationName, isWithin, needOf, needsByEquation } from "./need.ts";
import { needCautions } from "./needCautions.ts";
import type { ActivityClass, Facts, Person } from "./person.ts";
import { personFacts } from "./readPerson.ts";

/** What a person needs in a day by one equation, and how far the others lie from it. kcal. */
export interface EnergyNeed {
  readonly resting: Exact;
  readonly total: Exact;
  readonly equation: EquationId;
  readonly name: string;
  readonly source: string;
  readonly check: Check;
  readonly population: string;
  readonly activity: ActivityTaken;
  readonly cautions: readonly Caution[];
  /** Every equation that this person's data serve, the chosen one among them. */
  readonly spread: readonly SpreadItem[];
  /** The lowest and the highest total in the spread: how sure one number can be. */
  readonly range: { readonly least: Exact; readonly most: Exact };
  /**
   * What authorities add for this person's pregnancy or breastfeeding: no part of `total`, for equations
   * leave it out. `referenceIntakes` adds its authority's.
   */
  readonly additions: readonly EnergyAddition[];
  readonly note: string;
}

export interface SpreadItem {
  readonly equation: EquationId;
  readonly resting: Exact;
  readonly total: Exact;
  /** Whether the person's age is within that of the people the equation was made from. */
  readonly withinPopulation: boolean;
}

/** The physical activity level that total energy was reckoned with. */
export interface ActivityTaken {
  readonly level: Exact;
  readonly class?: ActivityClass;
  /** The band of the class, where a class was named for an adult. */
  readonly band?: { readonly least: Exact; readonly most: Exact };
  /** Whose level a class was read as: FAO/WHO/UNU's for adults, EFSA's for the young. */
  readonly source?: string;
  readonly check?: Check;
}

/**
 * Energy that a person needs in a day, in kcal: resting energy by a named equation, times the
 * physical activity level.
 *
 * The equation is Mifflin-St Jeor for adults of 19 to 78 whose height is known, and Schofield
 * otherwise, unless `how.equation` names one. Equations differ by a few hundred kcal for the same
 * person: `spread` and `range` show it, and a caution tells where the change of equation, or a step in its
 * figures, moves the need. A class of activity is an adult's by FAO/WHO/UNU 2004, and EFSA's for the young.
 *
 * In are Mifflin-St Jeor 1990, Henry (Oxford) 2005 by mass and height and by mass, Schofield 1985,
 * Harris-Benedict as revised in 1984, and by lean mass Cunningham 1980 and 1991 and Katch-McArdle. The
 * equations for total energy of the National Academies' report of 2023 have no resting energy, and stand apart:
 * `estimatedEnergyRequirement`. `check` says how those of an equation were read, or
 * that they are unverified. The total is of someone neither pregnant nor breastfeeding: `additions`
 * lists what authorities add.
 *
 * Throws `person-malformed`; `person-needs` where the equation wants a height, a lean mass or an
 * activity that was not given; `equation-unsuitable` for an unknown name or an age it has no line for.
 *
 * @example
 * ```ts
 * const need = energyNeed({ sex: "female", age: 25, mass: "60 kg", height: "160 cm", activity: "active" });
 * console.log(need.resting.toString(), need.equation); // => 1314 mifflin-st-jeor
 * ```
 */
export function energyNeed(person: Person, how: { readonly equation?: EquationId } = {}): EnergyNeed {
  const { facts, asked } = together({
    asked: () => read(needHow(), how, "person-malformed"),
    facts: () => personFacts(person),
  });
  const need = needOf(facts, asked.equation);
  const spread = needsByEquation(facts, need);
  const totals = spread.map((each) => times(each.resting, need.level));
  const { equation } = need;
  return {
    resting: need.resting,
    total: need.total,
    equation: equation.id,
    name: equation.name,
    source: equation.source,
    check: need.check,
    population: equation.population,
    activity: showActivity(facts, need.level),
    cautions: needCautions(facts, need),
    spread: spread.map((each, i) => ({
      equation: each.equation.id,
      resting: each.resting,
      total: totals[i] ?? each.resting,
      withinPopulation: isWithin(each.equation, facts),
    })),
    range: {
      least: totals.reduce(least, need.total),
      most: totals.reduce(greatest, need.total),
    },
    additions: additionsFor(facts),
    note: practitionerNote,
  };
}

const needHow: () => Schema<{ readonly equation?: EquationId }> = /* @__PURE__ */ once(() =>
  fields<{ readonly equation?: EquationId }>({ equation: optional(equationName()) }),
);

function showActivity(facts: Facts, level: Exact): ActivityTaken {
  const { activity } = facts;
  if (typeof activity !== "string") return { level: level };
  const { least: low, most: high, source, check } = classAt(activity, facts.age);
  return {
    level,
    class: activity,
    ...(low && high && { band: { least: exact(low), most: exact(high) } }),
    source,
    check,
  };
}
