import { anyText, text, word } from "../../document/leaves.ts";
import { isRecord } from "../../document/safe.ts";
import { andThen, choice, fields, list, optional, type Schema } from "../../document/schema.ts";
import { type Allergen, allergens } from "../../food/allergens.ts";
import { type Fault, type Path, quote } from "../../number/error.ts";
import { didYouMean } from "../../number/near.ts";
import type { Facts } from "../../person/person.ts";
import { checkName } from "./name.ts";

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

/** An entry's fields as they are read. */
interface AvoidFields {
  readonly allergen?: Allergen;
  readonly food?: string;
  readonly origin?: "animal";
  readonly override?: string;
}

/** The schema of what someone is not to be served. */
export function avoidSchema(): Schema<readonly AvoidFields[]> {
  const otherwise = 'a food is written { food: "its-id" }, whatever is of animal origin { origin: "animal" }';
  const id = word(Object.keys(allergens) as Allergen[], undefined, otherwise);
  const plain = andThen(id, (allergen): AvoidFields => ({ allergen }));
  const entry = fields<AvoidFields>(
    {
      allergen: optional(id),
      food: optional(anyText()),
      origin: optional(word(["animal"])),
      override: optional(andThen(text(LONGEST_REASON, checkName), (reason) => reason.trim())),
    },
    ({ allergen, food, origin }, _, refuse) => {
      const given = [
        ...(allergen === undefined ? [] : ["an allergen"]),
        ...(food === undefined ? [] : ["a food"]),
        ...(origin === undefined ? [] : ["an origin"]),
      ];
      if (given.length === 0)
        refuse("neither an allergen, nor a food, nor an origin", "give one of them in each entry");
      if (given.length > 1) refuse(given.join(" and "), "give one of them in each entry");
    },
  );
  // One that is at fault stands for nothing.
  const full = andThen(entry, (read) => read);
  const one = choice<AvoidFields>(
    [plain, full],
    (given) => (typeof given === "string" ? plain : isRecord(given) ? full : undefined),
    'an allergen, "milk", { food: "kale-raw" } or { origin: "animal" }; override: "who allows it, and why" lets it pass',
  );
  return list(one, { like: '["milk", { food: "kale-raw" }]' });
}

const LONGEST_REASON = 500;

/**
 * What someone is not to be served: what `avoid` lists, then what the person declares. An entry of
 * `avoid` on a declared allergen stands in its place, so that it can be overridden.
 * `foods` is nothing where the recipes are refused, so that none can be told from a slip of the pen.
 */
export function readAvoid(
  faults: Fault[],
  given: readonly (AvoidFields | undefined)[],
  path: Path,
  foods: KnownFoods | undefined,
): readonly ReadAvoid[] {
  const refuse = (path: Path, message: string, hint: string): void => {
    faults.push({ code: "plan-malformed", path, message, hint });
  };
  const thingOf = ({ allergen, food, origin }: AvoidFields, path: Path): ReadThing | undefined => {
    if (allergen) return { kind: "allergen", allergen, name: allergens[allergen].name };
    if (origin) return { kind: "origin", origin, name: "food of animal origin" };
    if (food === undefined || !foods) return undefined;
    const name = foods.nameOf(food);
    if (name !== undefined) return { kind: "food", food, name };
    // An id with a slip in it would guard against nothing.
    const hint = didYouMean(food, foods.ids, "use an id of the table that the recipes draw on");
    refuse([...path, "food"], `no food is called ${quote(food)}`, hint);
    return undefined;
  };
  const seen = new Set<string>();
  return given.flatMap((entry, i) => {
    const at = [...path, i];
    const thing = entry && thingOf(entry, at);
    if (!thing) return [];
    const read: ReadAvoid = { ...thing, path: at, because: entry.override };
    const same = JSON.stringify([read.kind, idOf(read)]);
    if (seen.has(same)) refuse(at, `${quote(idOf(read))} comes twice`, "keep one of them");
    seen.add(same);
    return [read];
  });
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
