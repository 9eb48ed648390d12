import { isRecord } from "../../document/safe.ts";

/** A thing in JSON-LD. */
export type Node = { readonly [field: string]: unknown };

/** A value of a thing by its plain name, with or without the vocabulary before it. */
export function fieldOf(node: Node, name: string): unknown {
  for (const key of [name, `schema:${name}`, `https://schema.org/${name}`, `http://schema.org/${name}`])
    if (Object.hasOwn(node, key)) return node[key];
  return undefined;
}

/** Whether a thing is of a type: the last part of its address, whatever its case. */
export function isOf(node: Node, type: string): boolean {
  return listOf(node["@type"]).some(
    (each) =>
      typeof each === "string" && (each.split(/[/:#]/).at(-1) ?? "").toLowerCase() === type.toLowerCase(),
  );
}

/** One or several as a list; nothing as an empty one. */
export function listOf(value: unknown): readonly unknown[] {
  if (value === undefined || value === null) return [];
  if (Array.isArray(value)) return value;
  if (isRecord(value) && Array.isArray(value["@list"])) return value["@list"];
  return [value];
}

/** Where a recipe may stand inside something else. */
const WAYS = ["@graph", "mainEntity", "mainEntityOfPage", "hasPart", "itemListElement", "item"] as const;

/** The recipes in a document, with their places; an untyped thing with ingredients where none is typed. */
export function recipesIn(
  given: unknown,
): readonly { readonly node: Node; readonly path: readonly (string | number)[] }[] {
  const found: { node: Node; path: (string | number)[] }[] = [];
  const untyped: typeof found = [];
  const look = (value: unknown, path: (string | number)[]): void => {
    if (Array.isArray(value))
      value.forEach((each, i) => {
        look(each, [...path, i]);
      });
    if (!isRecord(value)) return;
    if (isOf(value, "Recipe")) {
      found.push({ node: value, path });
      return;
    }
    if (
      value["@type"] === undefined &&
      (fieldOf(value, "recipeIngredient") ?? fieldOf(value, "ingredients")) !== undefined
    )
      untyped.push({ node: value, path });
    for (const way of WAYS) {
      const inner = fieldOf(value, way);
      if (inner !== undefined) look(inner, [...path, way]);
    }
  };
  look(given, []);
  return found.length > 0 ? found : untyped;
}
