import { count, figureLeaf, meta, text, value, word } from "../document/leaves.ts";
import { isRecord } from "../document/safe.ts";
import {
  choice,
  fields,
  leaf,
  list,
  once,
  optional,
  type Refuse,
  type Schema,
  type Shape,
} from "../document/schema.ts";
import { measureSetNames } from "../measure/measures.ts";
import { quote } from "../number/error.ts";
import { exact, isRatio, type Value } from "../number/exact.ts";
import { didYouMean } from "../number/near.ts";
import { compareRatios } from "../number/ratio.ts";
import { type Allergen, allergens } from "./allergens.ts";
import { byComponent, componentId } from "./componentSchema.ts";
import type {
  Division,
  EnergyFactors,
  Figure,
  FoodCaution,
  FoodInput,
  FoodMeasure,
  FoodPrice,
  Origin,
  Pack,
  State,
} from "./food.ts";

export const states: readonly State[] = ["raw", "dry", "drained", "cooked", "as sold"];
const origins: readonly Origin[] = ["plant", "animal", "mineral", "mixed"];

/** The schema of one food. */
export const foodSchema: () => Schema<FoodInput> = /* @__PURE__ */ once(() => {
  const notNegative = value({ from: 0 });
  return fields<FoodInput>(
    {
      ...aboutFood(),
      per100g: figuresSchema(),
      source: text(),
      energyFactors: optional(
        fields<EnergyFactors>({ protein: notNegative, fat: notNegative, carbohydrate: notNegative }),
      ),
    },
    (given, read, refuse) => {
      refusePriceless(given, read, refuse);
      refuseUncounted(read, refuse);
    },
  );
});

/** The schema of a food's figures. */
export const figuresSchema: () => Schema<FoodInput["per100g"]> = /* @__PURE__ */ once(() =>
  byComponent(figureSchema()),
);

/** What may be said of a food beside its figures and their source. */
export function aboutFood(): Shape<Omit<FoodInput, "per100g" | "source" | "energyFactors">> {
  const notNegative = value({ from: 0 });
  const positive = value({ above: 0 });
  return {
    id: text(200),
    name: text(),
    kitchenName: optional(text()),
    otherNames: optional(list(text())),
    state: optional(word(states)),
    group: optional(text()),
    origin: optional(word(origins)),
    density: optional(positive),
    measures: optional(list(fields<FoodMeasure>({ name: text(200, refuseNumberFirst), grams: positive }))),
    measuredWith: optional(word(measureSetNames)),
    divides: optional(fields<Division>({ step: step(), by: optional(text(200)) })),
    edibleShare: optional(value({ above: 0, to: 1 })),
    fortifiedWith: optional(list(componentId())),
    allergens: optional(list(word(Object.keys(allergens) as Allergen[]))),
    cautions: optional(
      list(fields<FoodCaution>({ code: text(), text: text(), source: text(), for: optional(list(text())) })),
    ),
    packs: optional(list(fields<Pack>({ name: text(), edible: positive, price: optional(notNegative) }))),
    price: optional(fields<FoodPrice>({ currency: currency(), per100g: optional(notNegative) })),
    aisle: optional(text()),
    keepsDays: optional(notNegative),
    meta: optional(meta()),
  };
}

/** A written amount begins with its own figure: no one could tell `1/2 cup` of a cup from one of `1/2 cup`. */
export function refuseNumberFirst(name: string, refuse: Refuse): void {
  if (!/^\s*[-+.,]?\s*\p{N}/u.test(name)) return;
  const hint = 'begin with a word: "cup" with the grams of a whole one, "half breast", "can of 400 g"';
  refuse(`the measure ${quote(name)} begins with a number, as written amounts do`, hint);
}

/** The least part of a piece that is taken: 1 over a whole number, which a knife can cut. */
export function step(): Schema<Value> {
  return figureLeaf(
    (given) => exact(given),
    { above: 0, to: 1 },
    (given, read, refuse) => {
      if (read.n !== 1n || read.d > 16n)
        refuse(`pieces in steps of ${quote(given)}`, 'write 1, "1/2", "1/3" and so on, to "1/16"');
      return isRatio(given) ? read : given;
    },
  );
}

function refuseUncounted({ divides, measures = [] }: Partial<FoodInput>, refuse: Refuse): void {
  const by = divides?.by;
  const names = measures.flatMap((each) => each?.name ?? []);
  if (by === undefined || names.includes(by)) return;
  const hint = didYouMean(by, names, "name one of its measures, or leave this out");
  refuse(`there is no measure ${quote(by)} to count it by`, hint, ["divides", "by"]);
}

/** A currency code of three capitals, as ISO 4217 writes them. */
function currency(): Schema<string> {
  return text(2000, (code, refuse) => {
    if (!/^[A-Z]{3}$/.test(code)) refuse("not a currency code", "write three capitals, as in GBP");
  });
}

function refusePriceless(_: unknown, { packs = [], price }: Partial<FoodInput>, refuse: Refuse): void {
  if (price !== undefined) return;
  packs.forEach((pack, i) => {
    if (pack?.price === undefined) return;
    const hint = 'say which currency with the food: price: { currency: "GBP" }';
    refuse("a price without a currency", hint, ["packs", i, "price"]);
  });
}

type Below = Extract<Figure, { readonly below: unknown }>;
type Full = Extract<Figure, { readonly value: unknown }>;

function figureSchema(): Schema<Figure> {
  const plain = value({ from: 0 });
  const trace = word(["trace"]);
  const source = optional(text());
  const below = fields<Below>({ below: value({ above: 0 }), source });
  const full = fields<Full>(
    {
      value: plain,
      low: optional(plain),
      high: optional(plain),
      borrowedFrom: optional(text(200)),
      calculated: optional(text()),
      derived: optional(text()),
      presumed: optional(
        leaf(
          "true",
          { const: true },
          (given) => given === true,
          (given) => given,
        ),
      ),
      error: optional(plain),
      count: optional(count(1)),
      least: optional(plain),
      most: optional(plain),
      sourceCode: optional(text(200)),
      source,
    },
    refuseOutside,
  );
  return choice<Figure>(
    [plain, trace, below, full],
    (given) => (given === "trace" ? trace : !isRecord(given) ? plain : "below" in given ? below : full),
    "a figure",
  );
}

function refuseOutside(
  _: unknown,
  { low, high, value: middle, least, most }: Partial<Full>,
  refuse: Refuse,
): void {
  if (least !== undefined && most !== undefined && compareRatios(exact(least), exact(most)) > 0)
    refuse("the least found is above the most", "give the least first", ["least"]);
  if (middle === undefined) return;
  const isInside =
    (low === undefined || compareRatios(exact(low), exact(middle)) <= 0) &&
    (high === undefined || compareRatios(exact(middle), exact(high)) <= 0);
  if (!isInside) refuse("the value lies outside low to high", "give low, value and high in rising order");
}
