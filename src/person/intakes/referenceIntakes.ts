import { number } from "../../document/leaves.ts";
import { read } from "../../document/read.ts";
import { coded, fields, leaf, once, optional, type Schema, type Shape } from "../../document/schema.ts";
import { type ComponentId, component, components } from "../../food/components.ts";
import { fault, kindOf, together } from "../../number/error.ts";
import { type Exact, plus, type Value } from "../../number/exact.ts";
import { uncloned } from "../../number/uncloned.ts";
import { practitionerNote } from "../caution.ts";
import { energyAddition } from "../energyAdditions.ts";
import type { EquationId } from "../equations/equation.ts";
import { equationName, needOf } from "../need.ts";
import type { Facts, Person } from "../person.ts";
import { personFacts } from "../readPerson.ts";
import { checkAuthority, missing } from "./authority.ts";
import { figuresFor, isAcceptable, isOfFood } from "./figures.ts";
import { type IntakeSetting, noted, type ReferenceFigure, type UpperFigure } from "./resolve.ts";
import { childbearingOf } from "./stage.ts";
import type { Authority } from "./table.ts";

/** What an authority publishes of one nutrient for a person. */
export interface IntakeEntry {
  readonly reference?: ReferenceFigure;
  /** The lowest of `uppers` that counts what food brings, an acceptable daily intake last; else the first. */
  readonly upper?: UpperFigure;
  readonly references: readonly ReferenceFigure[];
  readonly uppers: readonly UpperFigure[];
}

/** A component that no upper level limits for a person. */
export interface NoUpper {
  readonly of: ComponentId;
  /** The authority has a level of it for people of another age. */
  readonly forOthers: boolean;
}

/** An authority's figures for a person. */
export interface ReferenceIntakes {
  /** @internal Refuses a structured clone, which has no functions. */
  readonly cloned?: symbol;
  readonly authority: Authority;
  /** Whom the figures were read for. */
  readonly person: Person;
  /**
   * What is published of a component's nutrient. Forms of one nutrient share an entry: each figure's
   * `of` says which component it counts, so that like is compared with like. Throws `component-unknown`.
   */
  get(id: ComponentId): IntakeEntry;
  /** All figures, in the order of the authority's tables, for `JSON.stringify`; {@link get} finds those of a component. */
  readonly references: readonly ReferenceFigure[];
  readonly uppers: readonly UpperFigure[];
  /** Components that some figure counts. */
  readonly components: readonly ComponentId[];
  /** Components whose figure is set per MJ or as a share of energy, while no energy is known. */
  readonly needEnergy: readonly ComponentId[];
  /**
   * Components that the authority has a figure of, and no upper level that counts food for this person:
   * nothing limits them, and no amount of them is proven safe. Forms of one nutrient are named once.
   */
  readonly withoutUpper: readonly NoUpper[];
  /** What of the authority's figures is not here, where the greater part was not read. */
  readonly missing?: string;
  readonly note: string;
}

/** What the figures may depend on besides the person. */
export interface IntakeOptions {
  /**
   * Energy of the day in kcal, for figures per MJ and shares of energy; else by `energyNeed`, with what
   * the authority adds for pregnancy or breastfeeding. It stands as the day's energy, too.
   */
  readonly energy?: Value;
  readonly equation?: EquationId;
  /** Phytate eaten in a day, mg, as EFSA classes it for zinc: 600 unless told. */
  readonly phytate?: 300 | 600 | 900 | 1200;
}

/** The same, read. */
interface ReadOptions extends Omit<IntakeOptions, "energy"> {
  readonly energy?: Exact;
}

const intakeOptions: () => Schema<ReadOptions> = /* @__PURE__ */ once(() =>
  fields<ReadOptions>(intakeShape()),
);

/** @internal The fields of {@link IntakeOptions}, for options that have more. */
export function intakeShape(): Shape<ReadOptions> {
  const all: readonly unknown[] = [300, 600, 900, 1200];
  const isPhytate = (given: unknown): given is 300 | 600 | 900 | 1200 => all.includes(given);
  return {
    phytate: optional(leaf(`one of ${all.join(", ")}`, { enum: all }, isPhytate, (given) => given)),
    equation: optional(equationName()),
    energy: optional(coded("number-malformed", number({ above: 0 }))),
  };
}

/** Whether something from outside is what {@link referenceIntakes} gives. */
export function isIntakes(x: unknown): x is ReferenceIntakes {
  return (
    typeof x === "object" &&
    x !== null &&
    "person" in x &&
    "get" in x &&
    typeof x.get === "function" &&
    "components" in x &&
    Array.isArray(x.components)
  );
}

/** Components that are forms of one nutrient. */
const forms: readonly (readonly ComponentId[])[] = [
  ["vitaminARae", "vitaminARe", "retinol"],
  ["folate", "folateDfe", "foodFolate", "folicAcid"],
  ["niacin", "niacinEquivalents"],
  ["epa", "dha"],
  ["salt", "sodium"],
  ["availableCarbohydrate", "carbohydrateByDifference"],
];

/**
 * Reference intakes and upper levels of an authority for a person: by sex, age, pregnancy and
 * breastfeeding; figures per kilogram, per megajoule or as a share of energy worked out for them.
 *
 * `"uk"`: COMA 1991 with SACN's updates, and the EVM's safe upper and guidance levels of 2003, for adults. `"us"`:
 * the Dietary Reference Intakes of the United States and Canada. `"eu"`: EFSA's reference values and
 * upper levels. Two are here in part, and `missing` says so: `"nordic"`, nine nutrients of the Nordic Nutrition
 * Recommendations 2023, and `"who"`, minerals of WHO and FAO, vitamins of children under 7, and WHO's goals for
 * populations. A figure holds for a day's average over time, for healthy people; where none is
 * published the entry is empty, which says nothing of safety. Where a table has no figure for pregnancy
 * or breastfeeding at this age, that of the same sex and age stands in, and `leavesOut` says so.
 *
 * Throws `person-malformed`, `authority-unknown`, and the number codes for `how.energy`.
 *
 * @example
 * ```ts
 * const intakes = referenceIntakes("eu", { sex: "female", age: 30, mass: "61 kg" });
 * const { value, unit, kind } = intakes.get("iron").reference ?? {};
 * console.log(`${value} ${unit}, ${kind}`); // => 16 mg, PRI
 * ```
 */
export function referenceIntakes(
  authority: Authority,
  person: Person,
  how: IntakeOptions = {},
): ReferenceIntakes {
  const { facts, asked } = together({
    authority: () => checkAuthority(authority),
    asked: () => read(intakeOptions(), how, "person-malformed"),
    facts: () => personFacts(person),
  });
  const day = energyOf(authority, facts, asked.energy, asked.equation);
  const setting: IntakeSetting = {
    phytate: String(asked.phytate ?? 600),
    ...(day && { energy: day.value }),
  };
  const { references: own, uppers, needEnergy, limited } = figuresFor(authority, facts, setting);
  const references: readonly ReferenceFigure[] = day ? [day, ...own] : own;
  const counted = new Set([...references, ...uppers].flatMap((figure) => figure.of));
  return {
    cloned: uncloned,
    authority,
    person,
    get: (id) => entryFor(component(id).id as ComponentId, references, uppers),
    references,
    uppers,
    components: (Object.keys(components) as ComponentId[]).filter((id) => counted.has(id)),
    needEnergy: [...needEnergy],
    withoutUpper: withoutUpper(limited, references, uppers),
    ...(missing[authority] && { missing: missing[authority] }),
    note: practitionerNote,
  };
}

/** Whether a figure counts what food brings, so that a portion can be held against it. Throws `comparison-malformed` for what is no upper level. */
export function countsFood(figure: Pick<UpperFigure, "covers">): boolean {
  const covers: unknown = figure?.covers;
  if (typeof covers === "string") return isOfFood({ covers: covers as UpperFigure["covers"] });
  const hint = "give an upper level, as intakes.get(id).uppers lists them";
  throw fault("comparison-malformed", `covers is ${kindOf(covers)}`, hint, ["covers"]);
}

/** What is limited for others alone, and what has a reference without a level; energy is limited by no level. */
function withoutUpper(
  limited: readonly ComponentId[],
  references: readonly ReferenceFigure[],
  uppers: readonly UpperFigure[],
): readonly NoUpper[] {
  const done = new Set(uppers.filter(countsFood).flatMap(({ of }) => of.flatMap(alike)));
  const left: NoUpper[] = [];
  const add = (of: ComponentId, forOthers: boolean): void => {
    if (of === "energy" || done.has(of)) return;
    left.push({ of, forOthers });
    for (const each of alike(of)) done.add(each);
  };
  for (const id of limited) add(id, true);
  for (const { of } of references) for (const id of of) add(id, false);
  return left;
}

/** A component, and other forms of the same nutrient. */
function alike(id: ComponentId): readonly ComponentId[] {
  return forms.find((each) => each.includes(id)) ?? [id];
}

function entryFor(
  id: ComponentId,
  references: readonly ReferenceFigure[],
  uppers: readonly UpperFigure[],
): IntakeEntry {
  const forms = alike(id);
  const concerns = (figure: { readonly of: readonly ComponentId[] }): boolean =>
    figure.of.some((each) => forms.includes(each));
  const ours = references.filter(concerns);
  const limits = uppers.filter(concerns);
  const [upper] = [...limits].sort(
    (a, b) =>
      Number(countsFood(b)) - Number(countsFood(a)) ||
      Number(isAcceptable(a)) - Number(isAcceptable(b)) ||
      a.value.comparedTo(b.value),
  );
  const [reference] = ours;
  return {
    references: ours,
    uppers: limits,
    ...(reference && { reference }),
    ...(upper && { upper }),
  };
}

/** The day's energy, where it is given or can be reckoned: with what the authority adds for a state. */
function energyOf(
  authority: Authority,
  facts: Facts,
  energy: Exact | undefined,
  chosen: IntakeOptions["equation"],
): ReferenceFigure | undefined {
  const figure = { of: ["energy"], unit: "kcal", kind: "energy need" } as const;
  if (energy) {
    const source = "the caller's own figure of the day";
    const check = "issuer" as const;
    return { ...figure, value: energy, source, check };
  }
  if (facts.activity === undefined) return undefined;
  const { total, equation, check } = needOf(facts, chosen);
  const added = energyAddition(authority, facts);
  const value = added ? plus(total, added.value) : total;
  const base = { ...figure, value, source: equation.source, check };
  if (!added) return { ...base, ...noted({ note: equation.name }, childbearingOf(facts)) };
  const note = `${equation.name}, with ${added.value} kcal for ${added.for} (${added.source})`;
  return { ...base, addition: added, note };
}
