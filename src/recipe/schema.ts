import { flag, meta, text, value, word } from "../document/leaves.ts";
import { read } from "../document/read.ts";
import { isRecord } from "../document/safe.ts";
import {
  andThen,
  choice,
  fields,
  later,
  leaf,
  list,
  once,
  optional,
  type Refuse,
  readAs,
  type Schema,
} from "../document/schema.ts";
import { byComponent } from "../food/componentSchema.ts";
import { componentIds, OWN_PATTERN } from "../food/components.ts";
import { refuseNumberFirst, step } from "../food/schema.ts";
import { isYieldCode, type YieldCode, type YieldInput } from "../food/yield.ts";
import { checkFoodless } from "../measure/foodless.ts";
import { measures } from "../measure/measures.ts";
import { checkLine, checkRecipe } from "./across.ts";
import type { Recipe, RecipeNote, Retention, ServedIn, WrittenAmount } from "./document.ts";
import { isRead, recipeOf } from "./make.ts";
import type { LineAsRead, ReadRecipe } from "./readRecipe.ts";

/** The schema of a recipe document, and of a recipe that was read from one. */
export const recipeSchema: () => Schema<Recipe> = /* @__PURE__ */ once(() => {
  const written = andThen(documentSchema(), recipeOf);
  const made = readAs(written, "a recipe", (given) => given as Recipe);
  return choice<Recipe>([written], (given) => (isRead(given) ? made : written), "a recipe");
});

/** The fields of a recipe document. */
export const documentSchema: () => Schema<ReadRecipe> = /* @__PURE__ */ once(() =>
  fields<ReadRecipe>(
    {
      format: optional(text()),
      name: text(500),
      portions: value({ above: 0 }),
      measures: optional(andThen(measures(), (set) => set.measures)),
      lines: list(lineSchema(), { least: 1 }),
      cookedMass: optional(writtenAmount()),
      yieldFactor: optional(yieldSchema()),
      yieldPresumed: optional(flag()),
      normalPortion: optional(writtenAmount()),
      piece: optional(
        fields<ServedIn>({
          name: text(100, refuseNumberFirst),
          mass: writtenAmount(),
          step: optional(step()),
        }),
      ),
      method: optional(list(text(10_000))),
      notes: optional(list(noteSchema())),
      meta: optional(meta()),
    },
    checkRecipe,
  ),
);

function noteSchema(): Schema<RecipeNote> {
  return fields<RecipeNote>(
    {
      kind: word(["storage", "cooling", "reheating", "safety", "general"]),
      text: text(),
      source: optional(text()),
      days: optional(value({ from: 0 })),
    },
    ({ days }, { kind }, refuse) => {
      if (days !== undefined && kind !== undefined && kind !== "storage")
        refuse(`days on a note on ${kind}`, 'leave days out, or make the note one on "storage"', ["days"]);
    },
  );
}

/** A line by itself; what hangs together with other lines is the recipe's to check. */
function lineSchema(): Schema<LineAsRead> {
  const id = text(200);
  const nested = later(recipeSchema);
  return fields<LineAsRead>(
    {
      key: optional(text(200, refuseMarks)),
      food: optional(text(200)),
      recipe: optional(
        choice<string | Recipe>(
          [id, nested],
          (given) => (typeof given === "string" ? id : isRecord(given) ? nested : undefined),
          "a recipe's id or its document",
        ),
      ),
      amount: rangedAmount(),
      weighed: optional(word(["edible", "as-purchased"])),
      scaling: optional(word(["held", "adjustable", "per-portion"])),
      part: optional(text(200)),
      least: optional(writtenAmount()),
      most: optional(writtenAmount()),
      retention: optional(retentionSchema()),
      retentionPresumed: optional(flag()),
      yieldFactor: optional(yieldSchema()),
      added: optional(word(["cooking", "serving"])),
      prep: optional(text()),
      meta: optional(meta()),
    },
    checkLine,
  );
}

/** `/` joins keys of nested recipes and braces name lines in a method, so a key has none of them. */
function refuseMarks(key: string, refuse: Refuse): void {
  if (/[/{}]/.test(key)) refuse("a key with / or braces", "use letters, digits and hyphens");
}

/** An amount as a document holds it; what its unit comes to is the food's to say. */
export function writtenAmount(): Schema<WrittenAmount> {
  return amountSchema((given) => checkFoodless(given));
}

/** A line's amount, which may be a range: its middle is used, and its ends are carried. */
export function rangedAmount(): Schema<WrittenAmount> {
  return amountSchema((given) => checkFoodless(given, true));
}

function amountSchema(check: (given: unknown) => WrittenAmount): Schema<WrittenAmount> {
  const written = text(1000);
  const data = fields<Exclude<WrittenAmount, string>>({ value: value(), unit: text(100) });
  return readAs(
    choice<WrittenAmount>([written, data], () => undefined, ""),
    'an amount: text such as "1 1/2 tbsp", or { value, unit }',
    check,
  );
}

/** A yield: a figure above 0, or the code of a published one. */
export function yieldSchema(): Schema<YieldInput> {
  const figure = value({ above: 0 });
  const withCode = fields<YieldCode>({ code: text(200) });
  return choice<YieldInput>(
    [figure, withCode],
    (given) => (isYieldCode(given as YieldInput) ? withCode : figure),
    "a yield: cooked mass divided by raw mass, or { code } of a published one",
  );
}

function retentionSchema(): Schema<Retention> {
  const code = text(200);
  const shares = byComponent(value({ from: 0, to: 1 }));
  const withCode = fields<{ readonly code: string }>({ code });
  const json = {
    type: "object",
    properties: { code: { type: "string" } },
    propertyNames: { anyOf: [{ enum: ["code", ...componentIds] }, { pattern: OWN_PATTERN }] },
    additionalProperties: { type: ["number", "string"], minimum: 0, maximum: 1 },
  };
  const record = leaf<Readonly<Record<string, unknown>>, Retention>("an object", json, isRecord, (given) => {
    if (!("code" in given)) return read(shares, given, "recipe-malformed");
    const { code: named, ...others } = given;
    const told = read(withCode, { code: named }, "recipe-malformed");
    return { ...told, ...(read(shares, others, "recipe-malformed") as object) };
  });
  return choice<Retention>(
    [code, record],
    (given) => (isRecord(given) ? record : typeof given === "string" ? code : undefined),
    "a code of the retention table, or shares from 0 to 1 by component",
  );
}
