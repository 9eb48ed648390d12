import * as z from "zod/mini";
import { push, textSchema, valueSchema, wordSchema } from "../number/document.ts";
import { quote } from "../number/error.ts";
import { compare, exact, isNumeric } from "../number/fraction.ts";
import { didYouMean } from "../number/near.ts";
import { type Allergen, allergens } from "./allergens.ts";
import { type ComponentId, componentIds, isComponentId } from "./components.ts";
import type { Figure, FoodInput, Origin, State } from "./food.ts";

export const states: readonly [State, ...State[]] = ["raw", "dry", "drained", "cooked", "as sold"];
const origins: readonly [Origin, ...Origin[]] = ["plant", "animal", "mineral", "mixed"];

/** The schema of one food, made on first use so that importing this module does nothing. */
export function foodSchema(): z.ZodMiniType<FoodInput> {
  made ??= makeFoodSchema();
  return made;
}

let made: z.ZodMiniType<FoodInput> | undefined;

function makeFoodSchema(): z.ZodMiniType<FoodInput> {
  const notNegative = valueSchema({ from: 0 });
  const schema = z.strictObject({
    ...aboutFood(),
    per100g: figuresSchema(),
    source: textSchema(),
    energyFactors: z.optional(
      z.strictObject({ protein: notNegative, fat: notNegative, carbohydrate: notNegative }),
    ),
  });
  return (schema as unknown as z.ZodMiniType<FoodInput>).check((ctx) => {
    const { packs = [], price } = ctx.value;
    if (price !== undefined) return;
    packs.forEach((pack, i) => {
      if (pack.price === undefined) return;
      const hint = 'say which currency with the food: price: { currency: "GBP" }';
      push(ctx, "a price without a currency", hint, undefined, ["packs", i, "price"]);
    });
  }) as z.ZodMiniType<FoodInput>;
}

/** What may be said of a food beside its figures and their source. */
export function aboutFood(): z.core.$ZodLooseShape {
  const text = textSchema();
  const notNegative = valueSchema({ from: 0 });
  const positive = valueSchema({ above: 0 });
  return {
    id: textSchema(200),
    name: text,
    state: z.optional(wordSchema(states)),
    group: z.optional(text),
    origin: z.optional(wordSchema(origins)),
    density: z.optional(positive),
    measures: z.optional(z.array(z.strictObject({ name: measureName(), grams: positive }))),
    measuredWith: z.optional(wordSchema(["metric", "us", "us-label", "imperial", "australian"])),
    edibleShare: z.optional(valueSchema({ above: 0, to: 1 })),
    fortifiedWith: z.optional(z.array(componentSchema())),
    allergens: z.optional(z.array(wordSchema(Object.keys(allergens) as [Allergen, ...Allergen[]]))),
    cautions: z.optional(
      z.array(z.strictObject({ code: text, text, source: text, for: z.optional(z.array(text)) })),
    ),
    packs: z.optional(
      z.array(z.strictObject({ name: text, edible: positive, price: z.optional(notNegative) })),
    ),
    price: z.optional(z.strictObject({ currency: currencySchema(), per100g: z.optional(notNegative) })),
    aisle: z.optional(text),
  };
}

/** A written amount begins with its own figure: no one could tell `1/2 cup` of a cup from one of `1/2 cup`. */
function measureName(): z.ZodMiniType<string> {
  return textSchema(200).check((ctx) => {
    const name = ctx.value;
    if (!/^\s*[-+.,]?\s*\p{N}/u.test(name)) return;
    const hint = 'begin with a word: "cup" with the grams of a whole one, "half breast", "can of 400 g"';
    push(ctx, `the measure ${quote(name)} begins with a number, as written amounts do`, hint);
  });
}

/** A currency code of three capitals, as ISO 4217 writes them. */
function currencySchema(): z.ZodMiniType<string> {
  return z.string().check((ctx) => {
    if (!/^[A-Z]{3}$/.test(ctx.value)) push(ctx, "not a currency code", "write three capitals, as in GBP");
  });
}

function componentSchema(): z.ZodMiniType<ComponentId> {
  return z.custom<ComponentId>().check((ctx) => {
    const id: unknown = ctx.value;
    if (isComponentId(id)) return;
    const hint = didYouMean(
      typeof id === "string" ? id : "",
      componentIds,
      "use an id of the component registry",
    );
    push(ctx, `no component is called ${quote(id)}`, hint, "component-unknown");
  });
}

function figuresSchema(): z.ZodMiniType<FoodInput["per100g"]> {
  const figure = figureSchema();
  return z.record(z.string(), figure).check((ctx) => {
    for (const id of Object.keys(ctx.value)) {
      if (isComponentId(id)) continue;
      const hint = didYouMean(id, componentIds, "use an id of the component registry");
      push(ctx, `no component is called "${id}"`, hint, "component-unknown", [id]);
    }
  }) as z.ZodMiniType<FoodInput["per100g"]>;
}

function figureSchema(): z.ZodMiniType<Figure> {
  const value = valueSchema({ from: 0 });
  const source = z.optional(textSchema());
  const below = z.strictObject({ below: valueSchema({ above: 0 }), source });
  const full = z.strictObject({
    value,
    low: z.optional(value),
    high: z.optional(value),
    borrowedFrom: z.optional(textSchema(200)),
    calculated: z.optional(textSchema()),
    derived: z.optional(textSchema()),
    presumed: z.optional(z.literal(true)),
    source,
  });
  return z.custom<Figure>().check((ctx) => {
    const figure: unknown = ctx.value;
    if (figure === "trace") return;
    const schema =
      typeof figure === "object" && figure !== null && !isNumeric(figure)
        ? "below" in figure
          ? below
          : full
        : value;
    const read = schema.safeParse(figure);
    if (!read.success) {
      for (const issue of read.error.issues)
        ctx.issues.push({ ...issue, input: figure } as z.core.$ZodRawIssue);
      return;
    }
    const { low, high, value: middle } = read.data as { low?: string; high?: string; value?: string };
    if (middle === undefined) return;
    const inside =
      (low === undefined || compare(exact(low), exact(middle)) <= 0) &&
      (high === undefined || compare(exact(middle), exact(high)) <= 0);
    if (!inside) push(ctx, "the value lies outside low to high", "give low, value and high in rising order");
  });
}
