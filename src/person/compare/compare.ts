import { read } from "../../document/read.ts";
import { fields, list, once, optional, type Schema } from "../../document/schema.ts";
import { componentId } from "../../food/componentSchema.ts";
import { type ComponentId, componentIds } from "../../food/components.ts";
import { fault, together } from "../../number/error.ts";
import { isZero } from "../../number/exact.ts";
import { type EnergyBy, energyBy, type NamedSystem } from "../../sheet/energy.ts";
import { practitionerNote } from "../caution.ts";
import type { LabelReference } from "../intakes/labelReference.ts";
import { countsFood, type ReferenceIntakes } from "../intakes/referenceIntakes.ts";
import type { ReferenceFigure, UpperFigure } from "../intakes/resolve.ts";
import type { Facts, Person } from "../person.ts";
import { type PortionCaution, portionCautions } from "../portion/cautions.ts";
import { type Eaten, type EatenPortion, readEaten } from "../portion/eaten.ts";
import { energyRangesFor } from "../ranges/all.ts";
import { personFacts, personSchema } from "../readPerson.ts";
import { type StateEnergy, stateCautions, stateEnergyOf } from "../stateCautions.ts";
import { balanceOf, ratiosOf } from "./balance.ts";
import { Comparison, type ComparisonRow } from "./comparison.ts";
import { type HeldUpper, holdReference, holdUpper } from "./held.ts";

/** Options of {@link compare}. */
export interface CompareOptions {
  /** Whose cautions to look for; the person that the intakes were read for, unless told. */
  readonly person?: Person;
  /** The components to look at; all that have a figure, unless told. */
  readonly components?: readonly ComponentId[];
  /** By which factor system shares of energy are reckoned: `atwater-general` unless told. */
  readonly system?: EnergyBy;
}

/**
 * Holds a portion against a day: one portion of a sheet as eaten, or one of each of several, which are
 * taken for meals of one day and added up.
 *
 * Like is held against like. What each figure counts is what is added up: vitamin A in the equivalents
 * that the authority uses, folate as such or in dietary folate equivalents, niacin with its tryptophan,
 * and for an upper level only the form that it covers (retinol, folic acid). Levels that cover
 * supplements alone are not held against food. Food tables give alpha-tocopherol: of a figure in
 * alpha-tocopherol equivalents it is what there is at least.
 *
 * Words are chosen so that a gap cannot pass for safety. Above an upper level is said where what is
 * known is above it; under one only where nothing silent could lift it; else it is not proven. A
 * reference is a day's average over time, for healthy people, and no portion has to meet it.
 *
 * Throws `comparison-malformed`, `component-unknown`, `person-malformed`.
 *
 * @example
 * ```ts
 * const lunch = sheet(
 *   { name: "Lentils and rice", portions: 1, lines: [{ food: "lentils-boiled", amount: "200 g" }, { food: "rice-white-long-boiled", amount: "180 g" }] },
 *   starterFoods,
 * );
 * const rower: Person = { sex: "female", age: 24, mass: "60 kg", height: "1.70 m", activity: "active" };
 * const day = compare(lunch, referenceIntakes("uk", rower));
 * const iron = day.get("iron")?.reference;
 * console.log(`${iron?.share?.toFixed(2)} of ${iron?.figure.value} mg, ${iron?.verdict} of a day`); // => 0.47 of 14.8 mg, part of a day
 * ```
 */
export function compare(
  eaten: Eaten,
  intakes: ReferenceIntakes | LabelReference,
  how: CompareOptions = {},
): Comparison {
  const { portion, figures, asked } = together({
    portion: () => readEaten(eaten, "comparison-malformed"),
    figures: () => figuresOf(intakes),
    asked: () => read(compareHow(), how, "comparison-malformed"),
  });
  const wanted = new Set(asked.components ?? componentIds);
  const person = how.person ?? ("person" in intakes ? intakes.person : undefined);
  const facts = asked.person ?? (person && personFacts(person));
  const ranges = person && "person" in intakes ? energyRangesFor(intakes.authority, person) : [];
  // Energy that was reckoned for somebody else holds nothing for this person's state.
  const counted = "person" in intakes && person === intakes.person ? stateEnergyOf(intakes) : undefined;
  return new Comparison({
    name: portion.name,
    meals: portion.meals.length,
    authority: "person" in intakes ? intakes.authority : `label ${intakes.authority}`,
    rows: rowsOf(portion, figures).filter(({ of }) => of.some((id) => wanted.has(id))),
    balance: balanceOf(portion, ranges, how.system ?? "atwater-general"),
    ratios: ratiosOf(portion),
    cautions: [...statesOf(facts, counted), ...portionCautions(portion, facts)],
    needEnergy: "person" in intakes ? intakes.needEnergy : [],
    withoutUpper: "person" in intakes ? intakes.withoutUpper.filter(({ of }) => wanted.has(of)) : [],
    note: practitionerNote,
  });
}

interface ReadOptions {
  readonly components?: readonly ComponentId[];
  readonly person?: Facts;
  readonly system?: NamedSystem;
}

const compareHow: () => Schema<ReadOptions> = /* @__PURE__ */ once(() =>
  fields<ReadOptions>({
    components: optional(list(componentId(), { like: '["iron", "fibre"]' })),
    person: optional(personSchema()),
    system: optional(energyBy()),
  }),
);

/** What pregnancy or breastfeeding itself gives cause to say: it concerns the whole, and no one line. */
function statesOf(facts: Facts | undefined, energy: StateEnergy | undefined): PortionCaution[] {
  if (!facts) return [];
  return stateCautions(facts, energy).map(({ state, caution }) => ({
    ...caution,
    lines: [],
    because: [state],
    amounts: [],
  }));
}

interface Figures {
  readonly references: readonly ReferenceFigure[];
  readonly uppers: readonly UpperFigure[];
}

/** Every figure once: forms of one nutrient share an entry. */
function figuresOf(intakes: ReferenceIntakes | LabelReference): Figures {
  if (
    typeof intakes !== "object" ||
    intakes === null ||
    typeof intakes.get !== "function" ||
    !Array.isArray(intakes.components)
  ) {
    throw fault(
      "comparison-malformed",
      "there are no reference intakes to compare with",
      'make them with referenceIntakes("uk", person), or labelReference("eu")',
    );
  }
  const references = new Set<ReferenceFigure>();
  const uppers = new Set<UpperFigure>();
  for (const id of intakes.components) {
    if ("person" in intakes) {
      const entry = intakes.get(id);
      for (const figure of entry.references) references.add(figure);
      for (const figure of entry.uppers) uppers.add(figure);
    } else {
      const figure = intakes.get(id);
      if (figure) references.add(figure);
    }
  }
  return { references: [...references], uppers: [...uppers] };
}

/** One row for each set of components that figures count, in the order of the registry. */
function rowsOf(portion: EatenPortion, { references, uppers }: Figures): ComparisonRow[] {
  const all = [...references, ...uppers];
  const keys = [...new Map(all.map(({ of }) => [of.join(" "), of])).entries()];
  const place = (of: readonly ComponentId[]): number => componentIds.indexOf(of[0] ?? "energy");
  return keys
    .sort(([, a], [, b]) => place(a) - place(b))
    .flatMap(([key, of]) => {
      const same = (figure: ReferenceFigure | UpperFigure): boolean => figure.of.join(" ") === key;
      const held = references.filter(same).map((figure) => holdReference(portion, figure));
      const limits = [...uppers.filter(same)]
        .sort((a, b) => Number(countsFood(b)) - Number(countsFood(a)) || a.value.comparedTo(b.value))
        .map((figure) => holdUpper(portion, figure));
      const [reference] = held;
      const [upper] = limits;
      // What nobody needs is passed over where there is none.
      if (!reference && limits.every(isFree)) return [];
      return [{ of, reference, upper, references: held, uppers: limits }];
    });
}

function isFree({ figure, amount }: HeldUpper): boolean {
  return figure.kind === "TDI" && amount.bound === "point" && isZero(amount.value);
}
