import { type Allergen, allergens } from "../../food/allergens.ts";
import { type Path, quote } from "../../number/error.ts";
import { didYouMean } from "../../number/near.ts";
import type { Facts } from "../../person/person.ts";
import { type Given, kindOf, type PlanFaults } from "./planFaults.ts";

/** Something that someone is not to be served, read. */
export type ReadAvoid = {
  /** Where in the input it stands. */
  readonly path: Path;
  /** Who allows it all the same, and why. */
  readonly because: string | undefined;
} & ReadThing;

type ReadThing =
  | { readonly kind: "allergen"; readonly allergen: Allergen; readonly name: string }
  | { readonly kind: "food"; readonly food: string; readonly name: string }
  | { readonly kind: "origin"; readonly origin: "animal"; readonly name: string };

/** Foods that a plan's recipes can draw on. */
export interface KnownFoods {
  readonly ids: Iterable<string>;
  /** A food's name; nothing where no table has it. */
  readonly nameOf: (id: string) => string | undefined;
}

const AVOID: readonly string[] = ["allergen", "food", "origin", "override"];
const LONGEST_REASON = 500;
const HINT =
  'write an allergen, "milk", { food: "kale-raw" } or { origin: "animal" }; override: "who allows it, and why" lets it pass';

/**
 * What someone is not to be served: what `avoid` lists, then what the person declares. An entry of
 * `avoid` on a declared allergen stands in its place, so that it can be overridden.
 * `foods` is nothing where the recipes are refused, so that none can be told from a slip of the pen.
 */
export function readAvoid(
  faults: PlanFaults,
  given: unknown,
  path: Path,
  foods: KnownFoods | undefined,
): readonly ReadAvoid[] {
  if (given === undefined) return [];
  const list = faults.list(
    given,
    path,
    "what is to be avoided",
    `give a list: ["milk", { food: "kale-raw" }]`,
  );
  const read = (list ?? []).flatMap((value, i) => readOne(faults, value, [...path, i], foods) ?? []);
  const seen = new Set<string>();
  for (const each of read) {
    const same = JSON.stringify([each.kind, idOf(each)]);
    if (seen.has(same)) faults.refuse(each.path, `${quote(idOf(each))} comes twice`, "keep one of them");
    seen.add(same);
  }
  return read;
}

/** The allergens that a person declares, except for those that `avoid` speaks of itself. */
export function declaredBy(facts: Facts, avoids: readonly ReadAvoid[], path: Path): readonly ReadAvoid[] {
  return facts.allergens
    .filter((allergen, i, all) => all.indexOf(allergen) === i)
    .filter((allergen) => !avoids.some((each) => each.kind === "allergen" && each.allergen === allergen))
    .map((allergen) => ({
      kind: "allergen",
      allergen,
      name: allergens[allergen].name,
      path: [...path, "allergens", facts.allergens.indexOf(allergen)],
      because: undefined,
    }));
}

/** The id of what is avoided: of an allergen or a food, or the origin. */
export function idOf(avoid: ReadAvoid): string {
  switch (avoid.kind) {
    case "allergen":
      return avoid.allergen;
    case "food":
      return avoid.food;
    case "origin":
      return avoid.origin;
  }
}

function readOne(
  faults: PlanFaults,
  given: unknown,
  path: Path,
  foods: KnownFoods | undefined,
): ReadAvoid | undefined {
  if (typeof given === "string") {
    const thing = readAllergen(faults, given, path);
    return thing && { ...thing, path, because: undefined };
  }
  const entry = faults.record(given, path, "what is to be avoided", AVOID, HINT);
  if (!entry) return undefined;
  const because = readReason(faults, entry.override, [...path, "override"]);
  const thing = readThing(faults, entry, path, foods);
  return thing && { ...thing, path, because };
}

function readThing(
  faults: PlanFaults,
  entry: Given,
  path: Path,
  foods: KnownFoods | undefined,
): ReadThing | undefined {
  const { allergen, food, origin } = entry;
  const given = [
    ...(allergen === undefined ? [] : ["an allergen"]),
    ...(food === undefined ? [] : ["a food"]),
    ...(origin === undefined ? [] : ["an origin"]),
  ];
  if (given.length !== 1) {
    const which = given.length === 0 ? "neither an allergen, nor a food, nor an origin" : given.join(" and ");
    return faults.refuse(path, which, "give one of them in each entry");
  }
  if (allergen !== undefined) return readAllergen(faults, allergen, [...path, "allergen"]);
  if (food !== undefined) return readFood(faults, food, [...path, "food"], foods);
  return readOrigin(faults, origin, [...path, "origin"]);
}

function readAllergen(faults: PlanFaults, given: unknown, path: Path): ReadThing | undefined {
  const ids = Object.keys(allergens) as Allergen[];
  const allergen = ids.find((id) => id === given);
  if (allergen) return { kind: "allergen", allergen, name: allergens[allergen].name };
  const otherwise = `use one of ${ids.join(", ")}; a food is written { food: "its-id" }, and whatever is of animal origin { origin: "animal" }`;
  const hint = typeof given === "string" ? didYouMean(given, ids, otherwise) : otherwise;
  return faults.refuse(path, `no allergen is called ${kindOf(given)}`, hint);
}

function readFood(
  faults: PlanFaults,
  given: unknown,
  path: Path,
  foods: KnownFoods | undefined,
): ReadThing | undefined {
  if (typeof given !== "string") {
    return faults.refuse(path, `the food is ${kindOf(given)}`, "give the id of a food");
  }
  if (!foods) return undefined;
  const name = foods.nameOf(given);
  if (name !== undefined) return { kind: "food", food: given, name };
  // An id with a slip in it would guard against nothing.
  const hint = didYouMean(given, foods.ids, "use an id of the table that the recipes draw on");
  return faults.refuse(path, `no food is called ${quote(given)}`, hint);
}

function readOrigin(faults: PlanFaults, given: unknown, path: Path): ReadThing | undefined {
  if (given === "animal") return { kind: "origin", origin: given, name: "food of animal origin" };
  const what = typeof given === "string" ? quote(given) : kindOf(given);
  return faults.refuse(path, `the origin is ${what}`, 'write "animal": no other can be avoided as a whole');
}

function readReason(faults: PlanFaults, given: unknown, path: Path): string | undefined {
  if (given === undefined) return undefined;
  const hint = "write who allows it, and why";
  if (typeof given !== "string") return faults.refuse(path, `the override is ${kindOf(given)}`, hint);
  if (given.trim() === "") return faults.refuse(path, "an override without words", hint);
  if (given.length > LONGEST_REASON) {
    return faults.refuse(path, `an override of ${given.length} characters`, `use at most ${LONGEST_REASON}`);
  }
  if (/\p{Cc}/u.test(given)) {
    return faults.refuse(path, "an override with control characters", "take them out");
  }
  return given.trim();
}
