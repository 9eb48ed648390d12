import { flag, type Json, meta, number, readBy, text, word } from "../document/leaves.ts";
import { read } from "../document/read.ts";
import { asFar, fields, leaf, list, once, optional, type Refuse, type Schema } from "../document/schema.ts";
import { type Allergen, allergens } from "../food/allergens.ts";
import { readShare } from "../measure/share.ts";
import { fault } from "../number/error.ts";
import { type Exact, exact, minus, ONE, times, type Value } from "../number/exact.ts";
import { compareRatios } from "../number/ratio.ts";
import type { ActivityClass, Condition, Facts, Person } from "./person.ts";
import { readHeight, readMass } from "./size.ts";

const classes: readonly ActivityClass[] = ["sedentary", "active", "vigorous"];

const conditions: readonly Condition[] = [
  "kidney-disease",
  "insulin",
  "warfarin",
  "thyroid-disease",
  "eating-disorder-history",
  "coeliac-disease",
  "diabetes",
  "hypertension",
  "levothyroxine",
  "lithium",
  "mao-inhibitors",
  "phenylketonuria",
  "haemochromatosis",
];

/**
 * Reads a person from outside: every fault at once, each with its path and a hint.
 *
 * Throws `person-malformed`, and the number codes.
 */
export function personFacts(input: unknown): Facts {
  return read(personSchema(), input, "person-malformed");
}

/** A person's fields as they are read. */
interface PersonFields {
  readonly sex: Person["sex"];
  readonly age: Exact;
  readonly mass: Exact;
  readonly height?: Exact;
  readonly leanMass?: Exact;
  readonly bodyFat?: Exact;
  readonly activity?: ActivityClass | Exact;
  readonly pregnant?: 1 | 2 | 3;
  readonly breastfeeding?: boolean;
  readonly monthsSinceBirth?: Exact;
  readonly postmenopausal?: boolean;
  readonly conditions?: readonly Condition[];
  readonly allergens?: readonly Allergen[];
  readonly supervised?: { readonly by: string };
  readonly id?: string;
  readonly meta?: Json;
}

/** The schema of a person. */
export const personSchema: () => Schema<Facts> = /* @__PURE__ */ once(() =>
  asFar(
    fields<PersonFields>({
      sex: word(["female", "male"]),
      age: number({ from: 1, to: 120 }),
      mass: size(readMass, ["2", "650"], "kg"),
      height: optional(size(readHeight, ["0.4", "2.8"], "m")),
      leanMass: optional(size(readMass, ["1", "400"], "kg")),
      bodyFat: optional(readBy((share: Value) => readShare(share, "person-malformed"))),
      activity: optional(readBy(readActivity)),
      pregnant: optional(trimester()),
      breastfeeding: optional(flag()),
      monthsSinceBirth: optional(number({ from: 0, to: 72 })),
      postmenopausal: optional(flag()),
      conditions: optional(list(word(conditions))),
      allergens: optional(list(word(Object.keys(allergens) as Allergen[]))),
      supervised: optional(fields<{ readonly by: string }>({ by: text(500) })),
      id: optional(text(200)),
      meta: optional(meta()),
    }),
    factsOf,
  ),
);

function factsOf(read: Partial<PersonFields>, refuse: Refuse): Facts {
  refuseContradictions(read, refuse);
  const { bodyFat, leanMass, mass, id: _, meta: __, ...facts } = read;
  const lean = leanMass ?? (mass && bodyFat && times(mass, minus(ONE, bodyFat)));
  return {
    ...(facts as Facts),
    mass: mass ?? ONE,
    ...(lean && { lean }),
    breastfeeding: facts.breastfeeding ?? false,
    conditions: facts.conditions ?? [],
    allergens: facts.allergens ?? [],
  };
}

function size(
  reader: (value: Value) => Exact,
  [least, most]: readonly [string, string],
  unit: string,
): Schema<Exact> {
  return readBy((value: Value) => {
    const size = reader(value);
    if (compareRatios(size, exact(least)) >= 0 && compareRatios(size, exact(most)) <= 0) return size;
    const hint = "check the figure and its unit";
    throw fault("person-malformed", `not within ${least} to ${most} ${unit}`, hint);
  });
}

function trimester(): Schema<1 | 2 | 3> {
  const isTrimester = (given: unknown): given is 1 | 2 | 3 => given === 1 || given === 2 || given === 3;
  return leaf("the trimester: 1, 2 or 3", { enum: [1, 2, 3] }, isTrimester, (given) => given);
}

function readActivity(value: ActivityClass | Value): ActivityClass | Exact {
  const named = classes.find((c) => c === value);
  if (named) return named;
  const hint = `write ${classes.map((c) => `"${c}"`).join(", ")}, or a physical activity level from 1 to 5`;
  let level: Exact;
  try {
    level = exact(value);
  } catch {
    throw fault("person-malformed", "not an activity", hint);
  }
  if (compareRatios(level, ONE) < 0 || compareRatios(level, exact(5)) > 0) {
    throw fault("person-malformed", "a physical activity level outside 1 to 5", hint);
  }
  return level;
}

/** Fields that are each sound but cannot be true together. */
function refuseContradictions(person: Partial<PersonFields>, refuse: Refuse): void {
  const { sex, mass, leanMass, bodyFat } = person;
  if (sex === "male" && person.pregnant) refuse("pregnant and male", "check sex", ["pregnant"]);
  if (sex === "male" && person.breastfeeding)
    refuse("breastfeeding and male", "check sex", ["breastfeeding"]);
  if (leanMass !== undefined && bodyFat !== undefined)
    refuse("both lean mass and body fat", "give one of them", ["bodyFat"]);
  if (leanMass && mass && compareRatios(leanMass, mass) > 0)
    refuse("more lean mass than body mass", "check the figures and their units", ["leanMass"]);
  if (bodyFat && compareRatios(bodyFat, ONE) === 0)
    refuse("a body of nothing but fat", "write the share of fat, as in 0.22", ["bodyFat"]);
  if (person.monthsSinceBirth && !person.breastfeeding)
    refuse("months since a birth, but not breastfeeding", "set breastfeeding as well", ["monthsSinceBirth"]);
}
