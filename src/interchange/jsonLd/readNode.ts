import { isRecord } from "../../document/safe.ts";
import type { Refuse } from "../../document/schema.ts";
import { kindOf } from "../../number/error.ts";
import type { Exact } from "../../number/exact.ts";
import { portionsOf } from "../text/portionsOf.ts";
import { minutesOf } from "./duration.ts";
import { fieldOf, isOf, listOf, type Node } from "./nodes.ts";
import { plainText } from "./plainText.ts";

/** What a recipe in JSON-LD says. */
export interface JsonLdRecipe {
  readonly name: string | undefined;
  readonly portions: Exact | undefined;
  readonly ingredients: readonly string[];
  readonly method: readonly string[];
  readonly times: JsonLdTimes;
  /** Our own document of it, where it carries one. */
  readonly encoded: string | undefined;
}

/** How long it takes, in minutes. */
export interface JsonLdTimes {
  readonly preparation?: Exact;
  readonly cooking?: Exact;
  readonly total?: Exact;
}

/** The media type that our own document stands under. */
export const OUR_TYPE = "application/vnd.steelyard.recipe+json";

type Path = readonly (string | number)[];
const LONGEST_VALUE = 50_000;

/** Reads a recipe node; what is of the wrong type is refused, each in its place. */
export function readNode(node: Node, path: Path, refuse: Refuse): JsonLdRecipe {
  const at = (name: string): Path => [...path, name];
  const textsOf = (name: string): string[] => texts(fieldOf(node, name), at(name), refuse);
  const [name] = textsOf("name");
  const given = fieldOf(node, "recipeIngredient") === undefined ? "ingredients" : "recipeIngredient";
  const ingredients = listOf(fieldOf(node, given)).flatMap((each, i) =>
    ingredient(each, [...at(given), i], refuse),
  );
  const method = steps(fieldOf(node, "recipeInstructions"), at("recipeInstructions"), refuse);
  const times = Object.fromEntries(
    (["prepTime preparation", "cookTime cooking", "totalTime total"] as const).flatMap((pair) => {
      const [field = "", of = ""] = pair.split(" ");
      const [text] = textsOf(field);
      const minutes = text === undefined ? undefined : minutesOf(text);
      if (text !== undefined && minutes === undefined)
        refuse("not a duration", 'write it as ISO 8601 does: "PT1H30M"', at(field));
      return minutes && minutes.n > 0n ? [[of, minutes]] : [];
    }),
  );
  return {
    name: name?.slice(0, 500).replace(/\s+/g, " "),
    portions: portions(fieldOf(node, "recipeYield") ?? fieldOf(node, "yield"), at("recipeYield"), refuse),
    ingredients,
    method,
    times,
    encoded: encoded(fieldOf(node, "encoding")),
  };
}

/** Texts of a value: text, a number, a value object, a thing with a name or text, or several of them. */
function texts(value: unknown, path: Path, refuse: Refuse): string[] {
  return listOf(value).flatMap((each) => {
    const inner = isRecord(each) ? (each["@value"] ?? fieldOf(each, "text") ?? fieldOf(each, "name")) : each;
    if (typeof inner === "number" && Number.isFinite(inner)) return [String(inner)];
    if (typeof inner !== "string") {
      refuse(`expected text, got ${kindOf(each)}`, "give text, as schema.org has it", path);
      return [];
    }
    if (inner.length > LONGEST_VALUE) {
      refuse(`a text of ${inner.length} characters`, `give at most ${LONGEST_VALUE}`, path);
      return [];
    }
    const plain = plainText(inner);
    return plain === "" ? [] : [plain];
  });
}

/** The lines of one ingredient: text, of several lines maybe; a named value with its unit; a list of them. */
function ingredient(value: unknown, path: Path, refuse: Refuse): string[] {
  if (isRecord(value) && fieldOf(value, "itemListElement") !== undefined)
    return listOf(fieldOf(value, "itemListElement")).flatMap((each, i) =>
      ingredient(each, [...path, "itemListElement", i], refuse),
    );
  if (isRecord(value) && fieldOf(value, "item") !== undefined)
    return ingredient(fieldOf(value, "item"), [...path, "item"], refuse);
  if (isRecord(value) && fieldOf(value, "value") !== undefined) {
    const parts = ["value", "unitText", "name"].flatMap((name) =>
      texts(fieldOf(value, name), [...path, name], refuse),
    );
    return [parts.join(" ")];
  }
  return texts(value, path, refuse).flatMap((each) => each.split("\n"));
}

/** Steps in order: text, things with text, and sections, whose names stand before their steps. */
function steps(value: unknown, path: Path, refuse: Refuse): string[] {
  return listOf(value).flatMap((each, i) => {
    const at = [...path, i];
    if (!isRecord(each)) return texts(each, at, refuse).flatMap((text) => text.split("\n"));
    const inner = fieldOf(each, "itemListElement") ?? fieldOf(each, "steps") ?? fieldOf(each, "item");
    if (inner === undefined) return texts(each, at, refuse).flatMap((text) => text.split("\n"));
    const isSection = isOf(each, "HowToSection");
    const name = isSection
      ? texts(fieldOf(each, "name"), [...at, "name"], refuse).map((text) => `${text}:`)
      : [];
    return [...name, ...steps(inner, [...at, "itemListElement"], refuse)];
  });
}

function portions(value: unknown, path: Path, refuse: Refuse): Exact | undefined {
  const [given] = listOf(value);
  const inner = isRecord(given) ? (fieldOf(given, "value") ?? given) : given;
  if (inner === undefined) return undefined;
  if (typeof inner === "boolean")
    refuse("expected text or a number, got a boolean", 'write "4 servings"', path);
  const all = listOf(value).flatMap((each) =>
    texts(isRecord(each) ? (fieldOf(each, "value") ?? each) : each, path, refuse),
  );
  // Of several, the one that speaks of portions: "4", "4 servings", "1 loaf".
  const best = all.find((text) => /serv|portion|people|person/i.test(text)) ?? all[0];
  return best === undefined ? undefined : portionsOf(best);
}

function encoded(value: unknown): string | undefined {
  const ours = listOf(value).find((each) => isRecord(each) && fieldOf(each, "encodingFormat") === OUR_TYPE);
  const text = isRecord(ours) ? fieldOf(ours, "text") : undefined;
  return typeof text === "string" ? text : undefined;
}
