/**
 * The JSON Schemas of documents, held against the reader: whoever checks a document by them, with a
 * validator that knows nothing of us, hears what the reader would say of its shape.
 */

import { readFileSync } from "node:fs";
import { Ajv2020 } from "ajv/dist/2020.js";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { starterFoods } from "../../src/foods.ts";
import { foodTable, kitchen, kitchens, recipe, SteelyardError } from "../../src/index.ts";
import { personFacts } from "../../src/person/readPerson.ts";
import { openPlan } from "../../src/plan.ts";
import { readDemands } from "../../src/scale/fit/demands.ts";
import {
  demandJsonSchema,
  foodJsonSchema,
  kitchenJsonSchema,
  personJsonSchema,
  planJsonSchema,
  recipeJsonSchema,
} from "../../src/schema.ts";
import { met, runs } from "../runs.ts";
import { root } from "../sources.ts";
import { dataFile, names } from "./jsonSchemas.ts";

// Ajv 8: an independent validator of JSON Schema, draft 2020-12 (json-schema.org).
const ajv = new Ajv2020({ allErrors: false, strict: false });

const schemas = {
  recipe: recipeJsonSchema,
  food: foodJsonSchema,
  person: personJsonSchema,
  demand: demandJsonSchema,
  plan: planJsonSchema,
  kitchen: kitchenJsonSchema,
};

type Name = keyof typeof schemas;

const stored = (file: string): unknown => JSON.parse(readFileSync(`${root}test/stored/${file}`, "utf8"));

const plain = (x: unknown): unknown => JSON.parse(JSON.stringify(x));

/** Documents that the reader takes, and how it reads them. */
const documents: { readonly [N in Name]: readonly [(given: never) => unknown, readonly unknown[]] } = {
  recipe: [
    recipe,
    [
      stored("recipe-1.json"),
      {
        name: "Porridge",
        portions: 2,
        measures: "metric",
        lines: [
          { key: "oats", food: "oats-rolled-dry", amount: "80 g", part: "base", prep: "rolled" },
          {
            food: "milk-whole",
            amount: { value: "1 1/2", unit: "cup" },
            scaling: "adjustable",
            least: "50 ml",
          },
          {
            recipe: { name: "Jam", portions: 1, lines: [{ food: "sugar-white", amount: "20 g" }] },
            amount: "1 portion",
            retention: { vitaminC: "0.5" },
          },
        ],
        yieldFactor: "0.9",
        method: ["Stir."],
        notes: [{ kind: "storage", text: "Keep cold.", days: 2 }],
        meta: { id: [1, null, "x"] },
      },
    ],
  ],
  food: [
    (food: never) => foodTable([food]),
    [
      ...starterFoods.ids.map((id) => plain(starterFoods.get(id))),
      {
        id: "oats",
        name: "Oats",
        source: "own analysis",
        per100g: {
          protein: { value: "12.5", low: 12, high: 13, source: "our laboratory" },
          iron: { below: "0.1" },
          zinc: "trace",
          energy: 380,
        },
        measures: [{ name: "scoop", grams: 40 }],
        allergens: ["gluten"],
        meta: "shelf 3",
      },
    ],
  ],
  person: [
    personFacts,
    [
      {
        sex: "female",
        age: 24,
        mass: "52 kg",
        height: "1.64 m",
        activity: "active",
        id: "cox",
        meta: { boat: 8 },
      },
      { sex: "male", age: "31", mass: 88, height: "6 ft 1 in", activity: "1.9", bodyFat: "12 %" },
      {
        sex: "female",
        age: 30,
        mass: 64,
        height: "170 cm",
        activity: 1.6,
        breastfeeding: true,
        conditions: ["insulin"],
      },
    ],
  ],
  demand: [
    (demand: never) => readDemands([demand]),
    [
      { of: "energy", exactly: "650 kcal" },
      { of: "protein", least: 30, most: "45 g", firm: true },
      { energyShareOf: "fat", most: "35 %" },
      { ratioOf: ["omega6", "omega3"], most: 4 },
      { of: "mass", exactly: "1/3" },
    ],
  ],
  plan: [openPlan, [stored("plan-1.json"), stored("plan-2.json")]],
  kitchen: [kitchen, Object.values(kitchens).map(plain)],
};

const all = names as readonly Name[];

it("is made from the schemas that the reader uses", { timeout: 60_000 }, async () => {
  await expect(dataFile()).toMatchFileSnapshot("../../src/document/data/jsonSchemas.ts");
});

describe.each(all)("the JSON Schema of a %s", (name) => {
  const [read, samples] = documents[name];
  const validate = ajv.compile(schemas[name]);
  const valid = (given: unknown): boolean => validate(given) as boolean;
  const faultsOf = (given: unknown): readonly string[] => {
    try {
      read(given as never);
      return [];
    } catch (error) {
      if (!(error instanceof SteelyardError)) throw error;
      return error.faults.map(({ message }) => message);
    }
  };

  it("is one", () => {
    expect(schemas[name].$schema).toBe("https://json-schema.org/draft/2020-12/schema");
    expect(ajv.validateSchema(schemas[name])).toBe(true);
  });

  it("takes every document that the reader takes", () => {
    for (const sample of samples) {
      expect(faultsOf(sample)).toEqual([]);
      expect([valid(sample), validate.errors]).toEqual([true, null]);
    }
  });

  it("refuses a document that is spoilt in its shape, where the reader does", { timeout: 60_000 }, () => {
    // A few are enough of the starter foods, which are alike.
    const some = samples.slice(-3);
    let refused = 0;
    fc.assert(
      fc.property(fc.constantFrom(...some), fc.nat(), spoils, (sample, at, spoil) => {
        const spoilt = spoiltAt(sample, at, spoil);
        if (!faultsOf(spoilt).some((message) => OF_SHAPE.test(message))) return;
        refused += 1;
        if (valid(spoilt))
          throw new Error(
            `took ${placeAt(sample as object, at).path} spoilt by ${JSON.stringify(spoil)}: ${faultsOf(spoilt).join()}`,
          );
      }),
      { seed: 2020, numRuns: runs(200) },
    );
    expect(refused).toBeGreaterThan(met(20));
  });
});

/** What the reader says where a value is of another kind, where a field is left out, or is none. */
const OF_SHAPE = /^missing$|^expected an? |is not a field here$/;

/** What stands in the place of a value: another kind of thing, nothing at all, or one more field. */
type Spoil = { readonly put: unknown } | "leave out" | "add";

const spoils: fc.Arbitrary<Spoil> = fc.oneof(
  fc.constantFrom(true, null, [], [[]], { no: 1 }).map((put) => ({ put })),
  fc.constantFrom<Spoil>("leave out", "add"),
);

interface Place {
  readonly of: { [key: string]: unknown };
  readonly key: string;
  readonly path: string;
}

/** Every field and item of a document, but for an app's own, and foods as a stored sheet packs them: the schema looks into neither. */
function placesIn(of: object, above = ""): readonly Place[] {
  return Object.entries(of)
    .filter(([key]) => key !== "meta" && key !== "foods")
    .flatMap(([key, value]): readonly Place[] => {
      const path = `${above}/${key}`;
      const inner = typeof value === "object" && value !== null ? placesIn(value, path) : [];
      return [{ of: of as Place["of"], key, path }, ...inner];
    });
}

function placeAt(document: object, at: number): Place {
  const places = placesIn(document);
  return places[at % places.length] as Place;
}

/** A copy with one place of it spoilt. */
function spoiltAt(sample: unknown, at: number, spoil: Spoil): unknown {
  const copy = plain(sample) as object;
  const { of, key } = placeAt(copy, at);
  if (spoil === "leave out" && !Array.isArray(of)) delete of[key];
  else if (spoil === "add" && !Array.isArray(of)) of.unheardOf = 1;
  else if (typeof spoil === "object") of[key] = spoil.put;
  return copy;
}
