import type { ComponentId } from "../../food/components.ts";
import type { FoodCaution } from "../../food/food.ts";
import { together } from "../../number/error.ts";
import { exact, isZero } from "../../number/exact.ts";
import { compareRatios } from "../../number/ratio.ts";
import type { Tally } from "../../sheet/tally.ts";
import type { Check } from "../check.ts";
import type { Facts, Person } from "../person.ts";
import { personFacts } from "../readPerson.ts";
import { type Eaten, type EatenFood, type EatenPortion, readEaten } from "./eaten.ts";
import { meetings, type Trait, type TraitMeeting } from "./meetings.ts";
import { carries, type ToldBy, tellKind } from "./tellKind.ts";

/** Something to heed about a portion, and for whom. */
export interface PortionCaution {
  /** Of the food's own caution, or of the meeting of food and person. */
  readonly code: string;
  readonly text: string;
  readonly source: string;
  /** How the source was checked, where the caution is one of ours. */
  readonly check?: Check;
  /** The lines that give cause: `dish/line` in a nested recipe. */
  readonly lines: readonly string[];
  /** What of this person it meets; empty for a caution that rides along for everyone. */
  readonly because: readonly Trait[];
  /** What its lines bring of the components that it speaks of; all of the portion, where it is about the whole. */
  readonly amounts: readonly { readonly of: ComponentId; readonly amount: Tally }[];
  /** Of a plan of several days: those that it speaks of, by id; `amounts` are then their mean. */
  readonly days?: readonly string[];
}

/**
 * What to heed in a portion: first where a food, or a component, meets something that the person has
 * declared, then every caution that its foods carry for everyone or for someone such as this. A food that may
 * hold what a caution speaks of, but says nothing of it, counts as holding it.
 *
 * Foods are told by the cautions they carry, their figures and allergens, and by English words in their
 * names. Give a food that goes by another name a caution of its own with the code of the meeting
 * (`"tuna-pregnancy"`), and it is told too.
 *
 * It draws no conclusion and asks no doctor's place: each caution names the body that issued it.
 *
 * Throws `comparison-malformed`, `person-malformed`.
 *
 * @example
 * ```ts
 * const greens = sheet(
 *   { name: "Greens", portions: 1, lines: [{ key: "kale", food: "kale-raw", amount: "80 g" }] },
 *   starterFoods,
 * );
 * const coach: Person = { sex: "male", age: 61, mass: "84 kg", conditions: ["warfarin"] };
 * const [first] = cautionsFor(greens, coach);
 * console.log(`${first.code}: ${first.lines.join(", ")}`); // => warfarin-vitamin-k: kale
 * ```
 */
export function cautionsFor(eaten: Eaten, person: Person): readonly PortionCaution[] {
  const { portion, facts } = together({
    portion: () => readEaten(eaten, "comparison-malformed"),
    facts: () => personFacts(person),
  });
  return portionCautions(portion, facts);
}

/** As {@link cautionsFor}; without a person only those that ride along. */
export function portionCautions(portion: EatenPortion, facts: Facts | undefined): readonly PortionCaution[] {
  const traits = facts ? traitsOf(facts) : [];
  return [
    ...meetings.flatMap((meeting) => meet(meeting, portion, traits)),
    ...carried(portion, facts && traits),
  ];
}

/** Tells whether a food's caution concerns someone of these traits; whoever is not known may be concerned. */
export function concerns({ for: whom }: FoodCaution, traits: readonly string[] | undefined): boolean {
  return whom === undefined || traits === undefined || whom.some((each) => traits.includes(each));
}

function traitsOf(facts: Facts): Trait[] {
  return [
    ...facts.conditions,
    ...(facts.pregnant ? (["pregnant"] as const) : []),
    ...(facts.breastfeeding ? (["breastfeeding"] as const) : []),
    ...agesOf(facts),
  ];
}

/** The ages that meetings part people by: below one, or from one on. */
const AGES: readonly { readonly trait: Trait; readonly below?: number; readonly from?: number }[] = [
  { trait: "under-18", below: 18 },
  { trait: "under-16", below: 16 },
  { trait: "under-5", below: 5 },
  { trait: "over-65", from: 65 },
];

function agesOf({ age }: Facts): Trait[] {
  return AGES.filter(
    ({ below, from }) =>
      (below !== undefined && compareRatios(age, exact(below)) < 0) ||
      (from !== undefined && compareRatios(age, exact(from)) >= 0),
  ).map(({ trait }) => trait);
}

function meet(meeting: TraitMeeting, portion: EatenPortion, traits: readonly Trait[]): PortionCaution[] {
  const because = meeting.traits.filter((trait) => traits.includes(trait));
  if (because.length === 0 || meeting.unless?.some((trait) => traits.includes(trait))) return [];
  const told = toldFoods(meeting, portion);
  const { code, text, source, check, foods, kind, components = [], whole } = meeting;
  if (told.length === 0 && (foods || kind) && !whole) return [];
  const amounts = components
    .map((of) => ({
      of,
      amount: told.length > 0 && !whole ? portion.bringsIn(of, told) : portion.brings(of),
    }))
    .filter(({ amount }) => !(amount.bound === "point" && isZero(amount.value)));
  if (told.length === 0 && amounts.length === 0) return [];
  if (!isEnough(meeting, told, amounts[0]?.amount)) return [];
  return [{ code, text, source, check, lines: told.map(({ key }) => key), because, amounts }];
}

/** A food that a meeting is about, and by what it was told. */
interface ToldFood extends EatenFood {
  readonly by: ToldBy;
}

function toldFoods({ code, foods = [], kind }: TraitMeeting, portion: EatenPortion): ToldFood[] {
  return portion.foods.flatMap((each) => {
    const said = carries(each.food, [code, ...foods]) ? "said" : undefined;
    const by = said ?? (kind && tellKind(each.food, kind));
    return by ? [{ ...each, by }] : [];
  });
}

/** Whether an amount is worth a word. Unknown is not little: it counts for foods that may hold it, or where any may. */
function isEnough(
  { least, kind }: TraitMeeting,
  told: readonly ToldFood[],
  amount: Tally | undefined,
): boolean {
  if (least === undefined || (amount && compareRatios(amount.value, exact(least)) >= 0)) return true;
  if (told.some(({ by }) => by === "said" || by === "silent")) return true;
  return kind === undefined && amount !== undefined && amount.missing.length > 0;
}

/** The foods' own cautions, each said once with its lines; of someone unknown, whomever they concern. */
function carried({ foods }: EatenPortion, traits: readonly string[] | undefined): PortionCaution[] {
  const found = new Map<string, { caution: FoodCaution; lines: string[] }>();
  for (const { key, food } of foods) {
    for (const caution of food.cautions ?? []) {
      if (!concerns(caution, traits)) continue;
      const same = JSON.stringify([caution.code, caution.text, caution.source]);
      const entry = found.get(same) ?? { caution, lines: [] };
      if (!entry.lines.includes(key)) entry.lines.push(key);
      found.set(same, entry);
    }
  }
  return [...found.values()].map(({ caution: { code, text, source }, lines }) => ({
    code,
    text,
    source,
    lines,
    because: [],
    amounts: [],
  }));
}
