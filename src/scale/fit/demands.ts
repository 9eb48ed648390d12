import { refuseUnsafe } from "../../document/safe.ts";
import { componentIds, isComponentId } from "../../food/components.ts";
import { wholeNumber } from "../../measure/amountData.ts";
import { figure, hinting } from "../../measure/figure.ts";
import { readShare } from "../../measure/share.ts";
import { collect, type Fault, fault, quote, SteelyardError, throwIfAny, within } from "../../number/error.ts";
import { compare, exact, type Fraction, type Value } from "../../number/fraction.ts";
import { didYouMean } from "../../number/near.ts";
import type { Demand, EnergyShareOf, Quantity } from "../demand.ts";
import { unitOf } from "../linear.ts";

/** What a demand is about, told apart by kind. */
export type Subject =
  | {
      readonly kind: "amount";
      readonly of: Quantity;
      /** Of a firm limit, ranged figures count with their high ends: what may be served is what they can hold. */
      readonly by?: "high";
    }
  | { readonly kind: "share"; readonly of: EnergyShareOf }
  | { readonly kind: "ratio"; readonly of: readonly [Quantity, Quantity] };

/**
 * A demand, read. `least` and `most` are equal where one figure is asked. A least of 0 asks nothing and
 * is left out: every portion brings that much, whatever a line does not tell.
 */
export interface ReadDemand {
  /** As it was handed in. */
  readonly demand: Demand;
  readonly subject: Subject;
  readonly least: Fraction | undefined;
  readonly most: Fraction | undefined;
  readonly firm: boolean;
}

/** More than any person asks, and few enough for every machine. */
const MOST_DEMANDS = 500;

const SUBJECTS = ["of", "energyShareOf", "ratioOf"] as const;
const AMOUNTS = ["exactly", "least", "most"] as const;
const FIELDS: readonly string[] = [...SUBJECTS, ...AMOUNTS, "firm"];
const SHARES: readonly EnergyShareOf[] = [
  "protein",
  "fat",
  "carbohydrate",
  "saturatedFat",
  "addedSugars",
  "fibre",
  "alcohol",
];

/**
 * Reads demands, in an order of their own, so that what follows does not mind the caller's.
 *
 * Throws `demand-malformed` and the codes of figures, all faults at once, each path beginning with
 * the demand's place in the list.
 */
export function readDemands(input: unknown): ReadDemand[] {
  if (!Array.isArray(input)) {
    throw fault(
      "demand-malformed",
      "the demands are not a list",
      'give a list, even for one: [{ of: "energy", exactly: "650 kcal" }]',
    );
  }
  if (input.length > MOST_DEMANDS) {
    throw fault("demand-malformed", `${input.length} demands`, `give at most ${MOST_DEMANDS}`);
  }
  refuseUnsafe(input, "demand-malformed");
  const faults: Fault[] = [];
  const read = input.flatMap((each: unknown, i) => {
    const demand = collect(faults, [i], () => readDemand(each));
    return demand ? [demand] : [];
  });
  throwIfAny(faults);
  return read.sort(byMeaning);
}

type Given = { readonly [field: string]: unknown };

function readDemand(input: unknown): ReadDemand {
  if (typeof input !== "object" || input === null || Array.isArray(input)) {
    throw malformed("this is not a demand", 'write one, such as { of: "protein", least: "30 g" }');
  }
  const given = Object.fromEntries(Object.entries(input).filter(([, value]) => value !== undefined));
  const faults: Fault[] = [];
  for (const field of Object.keys(given)) {
    if (FIELDS.includes(field)) continue;
    const hint = didYouMean(field, FIELDS, `use ${FIELDS.join(", ")}`);
    collect(faults, [field], () => {
      throw malformed(`${quote(field)} is not a field of a demand`, hint);
    });
  }
  if (given.firm !== undefined && typeof given.firm !== "boolean") {
    collect(faults, ["firm"], () => {
      throw malformed(`firm is ${quote(given.firm)}`, "write true or false");
    });
  }
  const subject = collect(faults, [], () => readSubject(given));
  const ends = readEnds(given, subject, faults);
  throwIfAny(faults);
  if (!subject) throw malformed("this is not a demand", "say what it is about");
  const firm = given.firm === true;
  const isLimit = firm && ends.most !== undefined && ends.least === undefined;
  const counted = isLimit && subject.kind === "amount" ? ({ ...subject, by: "high" } as const) : subject;
  return { demand: input as Demand, subject: counted, ...ends, firm };
}

function readSubject(given: Given): Subject {
  const [first, second] = SUBJECTS.filter((field) => Object.hasOwn(given, field));
  if (first === undefined) {
    throw malformed(
      "the demand does not say what it is about",
      'name a component or the mass: { of: "protein", … }, or energyShareOf, or ratioOf',
    );
  }
  if (second !== undefined) {
    throw fault("demand-malformed", `both ${first} and ${second}`, "write two demands", [second]);
  }
  const value = given[first];
  return within([first], (): Subject => {
    if (first === "of") return { kind: "amount", of: readQuantity(value) };
    if (first === "energyShareOf") return { kind: "share", of: readShareOf(value) };
    return { kind: "ratio", of: readRatio(value) };
  });
}

function readQuantity(value: unknown): Quantity {
  if (value === "mass" || isComponentId(value)) return value;
  const hint = "use a component id, or mass";
  throw malformed(
    `no component is called ${quote(value)}`,
    typeof value === "string" ? didYouMean(value, [...componentIds, "mass"], hint) : hint,
  );
}

function readShareOf(value: unknown): EnergyShareOf {
  const found = SHARES.find((share) => share === value);
  if (found) return found;
  const hint = `use one of ${SHARES.join(", ")}`;
  throw malformed(
    `no share of energy is told of ${quote(value)}`,
    typeof value === "string" ? didYouMean(value, SHARES, hint) : hint,
  );
}

function readRatio(value: unknown): readonly [Quantity, Quantity] {
  if (!Array.isArray(value) || value.length !== 2) {
    throw malformed("a ratio is of two amounts", 'name both: ratioOf: ["omega6", "omega3"]');
  }
  const faults: Fault[] = [];
  const [of, to] = [0, 1].map((i) => collect(faults, [i], () => readQuantity(value[i])));
  throwIfAny(faults);
  if (of === undefined || to === undefined || of === to) {
    throw malformed(`a ratio of ${quote(of)} with itself`, "it is always 1; name another");
  }
  return [of, to];
}

function readEnds(
  given: Given,
  subject: Subject | undefined,
  faults: Fault[],
): { least: Fraction | undefined; most: Fraction | undefined } {
  const present = AMOUNTS.filter((field) => Object.hasOwn(given, field));
  if (present.length === 0) {
    collect(faults, [], () => {
      throw malformed("the demand does not say how much", 'write exactly, least or most: least: "30 g"');
    });
  }
  const [first, ...others] = present;
  if (first === "exactly" && others[0] !== undefined) {
    collect(faults, [others[0]], () => {
      throw malformed(`both exactly and ${others[0]}`, "write exactly alone, or least and most");
    });
  }
  const [exactly, least, most] = AMOUNTS.map((field) =>
    subject && Object.hasOwn(given, field)
      ? collect(faults, [field], () => readAmount(given[field], subject))
      : undefined,
  );
  if (least && most && compare(least, most) > 0) {
    collect(faults, ["most"], () => {
      throw malformed(`least ${quote(given.least)} is above most ${quote(given.most)}`, "swap them");
    });
  }
  return exactly ? { least: exactly, most: exactly } : { least: least && unlessNothing(least), most };
}

/** A least that asks for something, else undefined. */
function unlessNothing(least: Fraction): Fraction | undefined {
  return least.n === 0n ? undefined : least;
}

/** A figure for the subject; whatever a reader says of it, here it is a demand that is malformed. */
function readAmount(value: unknown, subject: Subject): Fraction {
  try {
    if (subject.kind === "share") return readShare(value as Value, "demand-malformed");
    if (subject.kind === "ratio") return readPlain(value as Value);
    return figure(value as Value, unitOf(subject.of));
  } catch (error) {
    if (error instanceof SteelyardError) throw malformed(error.faults[0]?.message ?? "", error.hint);
    throw error;
  }
}

function readPlain(value: Value): Fraction {
  const read = hinting("write a number: 4", () =>
    typeof value === "string" ? wholeNumber(value) : exact(value),
  );
  if (read.n >= 0n) return read;
  throw malformed(`${quote(value)} is below 0`, "give 0 or more");
}

function malformed(message: string, hint: string): SteelyardError {
  return fault("demand-malformed", message, hint);
}

/** Amounts first, in the order of the components, then shares, then ratios; limits before figures. */
function byMeaning(a: ReadDemand, b: ReadDemand): number {
  const [left, right] = [rank(a.subject), rank(b.subject)];
  for (let i = 0; i < left.length; i += 1) {
    const difference = (left[i] as number) - (right[i] as number);
    if (difference !== 0) return difference;
  }
  return compareEnds(a.least, b.least) || compareEnds(a.most, b.most) || Number(b.firm) - Number(a.firm);
}

function rank({ kind, of }: Subject): readonly [number, number, number] {
  if (kind === "amount") return [0, quantityRank(of), 0];
  if (kind === "share") return [1, SHARES.indexOf(of), 0];
  return [2, quantityRank(of[0]), quantityRank(of[1])];
}

function quantityRank(of: Quantity): number {
  return of === "mass" ? -1 : componentIds.indexOf(of);
}

function compareEnds(a: Fraction | undefined, b: Fraction | undefined): number {
  if (a && b) return compare(a, b);
  return a === b ? 0 : a ? 1 : -1;
}
