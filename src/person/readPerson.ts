import * as z from "zod/mini";
import { type Allergen, allergens } from "../food/allergens.ts";
import { readShare } from "../measure/share.ts";
import { push, readDocument, textSchema, valueSchema, wordSchema } from "../number/document.ts";
import { type Fault, fault, SteelyardError, throwIfAny } from "../number/error.ts";
import { compare, exact, type Fraction, minus, ONE, times, type Value } from "../number/fraction.ts";
import type { ActivityClass, Condition, Facts, Person } from "./person.ts";
import { readHeight, readMass } from "./size.ts";

const classes: readonly [ActivityClass, ...ActivityClass[]] = ["sedentary", "active", "vigorous"];

const conditions: readonly [Condition, ...Condition[]] = [
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
export function readPerson(input: Person): Facts {
  const person = readDocument(personSchema(), input, "person-malformed");
  const mass = readMass(person.mass);
  const facts: Facts = {
    sex: person.sex,
    age: exact(person.age),
    mass,
    breastfeeding: person.breastfeeding ?? false,
    conditions: person.conditions ?? [],
    allergens: person.allergens ?? [],
    ...(person.height !== undefined && { height: readHeight(person.height) }),
    ...leanOf(person, mass),
    ...(person.activity !== undefined && { activity: readActivity(person.activity) }),
    ...(person.pregnant && { pregnant: person.pregnant }),
    ...(person.monthsSinceBirth !== undefined && { monthsSinceBirth: exact(person.monthsSinceBirth) }),
    ...(person.postmenopausal !== undefined && { postmenopausal: person.postmenopausal }),
    ...(person.supervised && { supervised: person.supervised }),
  };
  throwIfAny(contradictions(person, facts));
  return facts;
}

/** The schema of a person, made on first use. */
export function personSchema(): z.ZodMiniType<Person> {
  made ??= z.strictObject({
    sex: wordSchema(["female", "male"]),
    age: valueSchema({ from: 1, to: 120 }),
    mass: sizeSchema(readMass, ["2", "650"], "kg"),
    height: z.optional(sizeSchema(readHeight, ["0.4", "2.8"], "m")),
    leanMass: z.optional(sizeSchema(readMass, ["1", "400"], "kg")),
    bodyFat: z.optional(readable((v) => readShare(v, "person-malformed"))),
    activity: z.optional(readable(readActivity)),
    pregnant: z.optional(trimesterSchema()),
    breastfeeding: z.optional(z.boolean()),
    monthsSinceBirth: z.optional(valueSchema({ from: 0, to: 72 })),
    postmenopausal: z.optional(z.boolean()),
    conditions: z.optional(z.array(wordSchema(conditions))),
    allergens: z.optional(z.array(wordSchema(Object.keys(allergens) as [Allergen, ...Allergen[]]))),
    supervised: z.optional(z.strictObject({ by: textSchema(500) })),
    id: z.optional(textSchema(200)),
  }) as unknown as z.ZodMiniType<Person>;
  return made;
}

let made: z.ZodMiniType<Person> | undefined;

/** A value that one of our readers takes; the reader's own fault is reported where it refuses. */
function readable(read: (value: Value) => unknown): z.ZodMiniType<Value> {
  return z.custom<Value>().check((ctx) => {
    try {
      read(ctx.value);
    } catch (error) {
      if (!(error instanceof SteelyardError)) throw error;
      push(ctx, error.faults[0]?.message ?? "", error.hint, error.code);
    }
  });
}

function sizeSchema(
  read: (value: Value) => Fraction,
  [least, most]: readonly [string, string],
  unit: string,
): z.ZodMiniType<Value> {
  return readable((value) => {
    const size = read(value);
    if (compare(size, exact(least)) < 0 || compare(size, exact(most)) > 0) {
      throw fault(
        "person-malformed",
        `not within ${least} to ${most} ${unit}`,
        "check the figure and its unit",
      );
    }
  });
}

function trimesterSchema(): z.ZodMiniType<1 | 2 | 3> {
  return z.custom<1 | 2 | 3>((v) => v === 1 || v === 2 || v === 3, {
    error: "expected the trimester: 1, 2 or 3",
  });
}

function readActivity(value: ActivityClass | Value): ActivityClass | Fraction {
  const named = classes.find((c) => c === value);
  if (named) return named;
  const hint = `write ${classes.map((c) => `"${c}"`).join(", ")}, or a physical activity level from 1 to 5`;
  let level: Fraction;
  try {
    level = exact(value);
  } catch {
    throw fault("person-malformed", "not an activity", hint);
  }
  if (compare(level, ONE) < 0 || compare(level, exact(5)) > 0) {
    throw fault("person-malformed", "a physical activity level outside 1 to 5", hint);
  }
  return level;
}

function leanOf(person: Person, mass: Fraction): { lean?: Fraction } {
  if (person.leanMass !== undefined) return { lean: readMass(person.leanMass) };
  if (person.bodyFat === undefined) return {};
  return { lean: times(mass, minus(ONE, readShare(person.bodyFat, "person-malformed"))) };
}

/** Fields that are each sound but cannot be true together. */
function contradictions(person: Person, facts: Facts): Fault[] {
  const found: Fault[] = [];
  const refuse = (path: keyof Person, message: string, hint: string): void => {
    found.push({ code: "person-malformed", path: [path], message, hint });
  };
  if (facts.sex === "male" && facts.pregnant) refuse("pregnant", "pregnant and male", "check sex");
  if (facts.sex === "male" && facts.breastfeeding) {
    refuse("breastfeeding", "breastfeeding and male", "check sex");
  }
  if (person.leanMass !== undefined && person.bodyFat !== undefined) {
    refuse("bodyFat", "both lean mass and body fat", "give one of them");
  }
  if (facts.lean && compare(facts.lean, facts.mass) > 0) {
    refuse("leanMass", "more lean mass than body mass", "check the figures and their units");
  }
  if (facts.lean && facts.lean.n === 0n) {
    refuse("bodyFat", "a body of nothing but fat", "write the share of fat, as in 0.22");
  }
  if (facts.monthsSinceBirth && !facts.breastfeeding) {
    refuse("monthsSinceBirth", "months since a birth, but not breastfeeding", "set breastfeeding as well");
  }
  return found;
}
