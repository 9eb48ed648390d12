import { read } from "../document/read.ts";
import { fields, once, optional, type Schema } from "../document/schema.ts";
import { exactText } from "../number/digits.ts";
import { fault, throwIfAny, together } from "../number/error.ts";
import { type Exact, exact, fraction, minus, over, plus, times, ZERO } from "../number/exact.ts";
import type { Demand } from "../scale/demand.ts";
import type { Aim, AimFacts, Band, MacroName } from "./aim.ts";
import { type Caution, practitionerNote } from "./caution.ts";
import { targetCautions } from "./dayCautions.ts";
import { type EnergyAddition, energyAddition } from "./energyAdditions.ts";
import type { EquationId } from "./equations/equation.ts";
import { authorityName } from "./intakes/authority.ts";
import type { Authority } from "./intakes/table.ts";
import { macroEnergy, macroFaults } from "./macroEnergy.ts";
import { needOf } from "./need.ts";
import { needCautions } from "./needCautions.ts";
import type { Facts, Person } from "./person.ts";
import { readAim } from "./readAim.ts";
import { personFacts } from "./readPerson.ts";
import { refusals, supervision } from "./refusals.ts";
import { weightRule } from "./weightRule.ts";

/** A day's demands, as `fit` takes them, and how they came about. Energy in kcal. */
export interface DayTarget {
  readonly demands: readonly Demand[];
  readonly cautions: readonly Caution[];
  readonly energy: {
    readonly resting: Exact;
    /** Need without the aim, `addition` included. */
    readonly need: Exact;
    /** What an authority adds for pregnancy or breastfeeding, where `how.authority` names one that does. */
    readonly addition?: EnergyAddition;
    /** What the aim adds; below zero for a loss. */
    readonly change: Exact;
    readonly target: Exact;
    readonly equation: EquationId;
    readonly source: string;
    /** Body mass change per week that the rule reckons with, in kg; below zero for a loss. */
    readonly kgPerWeek: Exact;
    readonly rule: { readonly kcalPerKg: Exact; readonly text: string; readonly source: string };
  };
  readonly note: string;
}

const DAYS: Exact = /* @__PURE__ */ fraction(7n);

/**
 * What a day should bring for a person and an aim. Energy is one exact figure; protein, fat and
 * carbohydrate follow the aim; fibre is a lower limit. What pregnancy or breastfeeding adds to energy
 * is counted in where `how.authority` says whose figure to take; a caution says what was done.
 *
 * An aim that cannot be met is refused: shares of the three macronutrients that do not make a whole, or
 * grams that bring more than the day's energy. One that is extreme carries a caution.
 *
 * Throws `person-malformed`, `aim-malformed`, `person-needs`, `equation-unsuitable`, `authority-unknown`; and
 * `aim-refused` for weight loss of someone under 18, pregnant, breastfeeding, underweight, or with an
 * eating disorder now or before, unless `person.supervised` records the clinician who watches over it.
 *
 * @example
 * ```ts
 * const day = dayTarget(
 *   { sex: "female", age: 24, mass: "9 st 8 lb", height: "5 ft 7 in", activity: "active" },
 *   { weight: "hold", protein: { perKg: "1.6" }, fat: { share: "30 %" }, fibre: { per1000kcal: 14 } },
 * );
 * const breakfast = mealDemands(day.demands, "1/4");
 * breakfast.find((demand) => demand.of === "protein"); // => { of: 'protein', exactly: '24.312551032' }
 * ```
 */
export function dayTarget(person: Person, aim: Aim, how: { readonly authority?: Authority } = {}): DayTarget {
  const { asked, facts, aimed } = together({
    asked: () => read(dayHow(), how, "aim-malformed"),
    facts: () => personFacts(person),
    aimed: () => readAim(aim),
  });
  const { authority } = asked;
  throwIfAny(refusals(facts, aimed));
  const need = needOf(facts, aimed.equation);
  const addition = authority && energyAddition(authority, facts);
  const total = addition ? plus(need.total, addition.value) : need.total;
  const change = changeOf(aimed, total);
  const target = plus(total, change);
  if (target.n <= 0n) {
    throw fault("aim-malformed", "the aim leaves no energy to eat", "aim for a slower loss", [
      "weight",
      "lose",
    ]);
  }
  const kgPerWeek = over(times(change, DAYS), exact(weightRule.kcalPerKg));
  const counted = authority && { authority, ...(addition && { addition }) };
  const macros = macroDemands(facts, aimed);
  throwIfAny(macroFaults(aimed, macroEnergy(facts, aimed, target), target));
  return {
    demands: [
      { of: "energy", exactly: exactText(target) },
      ...macros,
      ...(aimed.fibrePer1000
        ? [
            {
              of: "fibre" as const,
              least: exactText(over(times(aimed.fibrePer1000, target), fraction(1000n))),
            },
          ]
        : []),
    ],
    cautions: [
      ...needCautions(facts, need, counted),
      ...targetCautions({
        facts,
        aimed,
        resting: need.resting,
        target,
        kgPerWeek,
        authority,
      }),
      ...supervision(facts, aimed),
    ],
    energy: {
      resting: need.resting,
      need: total,
      ...(addition && { addition }),
      change,
      target,
      equation: need.equation.id,
      source: need.equation.source,
      kgPerWeek,
      rule: {
        kcalPerKg: exact(weightRule.kcalPerKg),
        text: weightRule.text,
        source: weightRule.source,
      },
    },
    note: practitionerNote,
  };
}

const dayHow: () => Schema<{ readonly authority?: Authority }> = /* @__PURE__ */ once(() =>
  fields<{ readonly authority?: Authority }>({ authority: optional(authorityName()) }),
);

function changeOf(aim: AimFacts, need: Exact): Exact {
  if (!aim.rate) return ZERO;
  const { kind, value } = aim.rate;
  const size =
    kind === "percent"
      ? times(value, need)
      : kind === "kcal"
        ? value
        : over(times(value, exact(weightRule.kcalPerKg)), DAYS);
  return aim.direction === "lose" ? minus(ZERO, size) : size;
}

function macroDemands(facts: Facts, aim: AimFacts): Demand[] {
  const names: readonly MacroName[] = ["protein", "fat", "carbohydrate"];
  return names.flatMap((name): Demand[] => {
    const macro = aim.macros[name];
    if (!macro) return [];
    if (macro.by === "share") return [{ energyShareOf: name, ...amountOf(macro.band, (f) => f) }];
    const kg = macro.by === "perKg" ? facts.mass : facts.lean;
    if (!kg) {
      throw fault("person-needs", `${name} per kg of lean mass`, "give the person's leanMass or bodyFat", [
        "leanMass",
      ]);
    }
    const of = name === "carbohydrate" ? "availableCarbohydrate" : name;
    return [{ of, ...amountOf(macro.band, (f) => times(f, kg)) }];
  });
}

function amountOf(
  band: Band,
  by: (f: Exact) => Exact,
): { exactly: string } | { least: string; most?: string } | { most: string } {
  if (band.exactly) return { exactly: exactText(by(band.exactly)) };
  if (band.least) {
    return { least: exactText(by(band.least)), ...(band.most && { most: exactText(by(band.most)) }) };
  }
  return { most: exactText(by(band.most ?? ZERO)) };
}
