import { CookingSchedule } from "../cook/schedule.ts";
import { anyText, asWritten, flag, thing, word } from "../document/leaves.ts";
import { read } from "../document/read.ts";
import { language } from "../document/readLanguage.ts";
import { choice, fields, list, once, openFields, optional, type Schema } from "../document/schema.ts";
import type { ComponentId } from "../food/components.ts";
import { fault, kindOf } from "../number/error.ts";
import { Comparison } from "../person/compare/comparison.ts";
import { Plan } from "../plan/planned.ts";
import { energyBy } from "../sheet/energy.ts";
import type { CardAbout, CardCaution, CardDay, CardDayFigure, CardOptions, CookCardOptions } from "./how.ts";

/**
 * Checks what a card is asked for: kinds of values alone, what they say is read where it is used.
 * Throws `card-malformed`, all faults at once.
 */
export function checkCard(of: unknown, how: unknown): void {
  if (!(of instanceof Plan) && !(of instanceof CookingSchedule)) {
    const hint = "make one with portionPlan({ … })";
    throw fault("card-malformed", `expected a plan, got ${kindOf(of)}`, hint, ["plan"]);
  }
  read(cardHow(), how, "card-malformed");
}

const cardHow: () => Schema<Omit<CardOptions, "energyBy">> = /* @__PURE__ */ once(() => {
  const text = optional(anyText());
  const texts = optional(list(anyText(), { like: '["the coach", "the cook"]' }));
  return fields<CardOptions & { readonly energyBy?: never }>({
    date: text,
    version: text,
    meals: optional(list(anyText(), { like: "ids of the plan's meals" })),
    days: optional(list(anyText(), { like: "ids of the menu's days" })),
    components: optional(list(anyText(), { like: '["iron", "fibre"]' })) as Schema<
      readonly ComponentId[] | undefined
    >,
    day: optional(daySchema()),
    cautions: optional(
      list(
        openFields<CardCaution>({
          text: anyText(),
          code: text,
          source: text,
          because: texts,
          check: optional(asWritten()),
        }),
        { like: '[{ text: "Hot.", source: "the cook" }]' },
      ),
    ),
    personal: optional(word(["hide", "show"])),
    about: optional(fields<CardAbout>({ mass: text, age: text, conditions: texts })),
    intervals: optional(flag()),
    energyBy: optional(energyBy()) as Schema<never>,
    language: optional(language()),
  });
});

/** A published figure says more than a card shows, so that other fields may stand in one. */
function daySchema(): Schema<readonly CardDay[] | Comparison> {
  const figure = optional(
    openFields<CardDayFigure>({ value: asWritten(), source: anyText(), check: optional(asWritten()) }),
  );
  const entries = list(fields<CardDay>({ of: asWritten(), reference: figure, upper: figure }), {
    like: '[{ of: "iron", reference: { value: 16, source: "…" } }]',
  });
  const compared = thing("a comparison", (given): given is Comparison => given instanceof Comparison);
  return choice<readonly CardDay[] | Comparison>(
    [entries, compared],
    (given) => (given instanceof Comparison ? compared : entries),
    "a list",
  );
}

/** Checks what a cook's page is asked for. Throws `card-malformed`, all faults at once. */
export function checkCookCard(schedule: unknown, how: unknown): void {
  if (!(schedule instanceof CookingSchedule)) {
    const hint = "make one with cookingSchedule(plan)";
    throw fault("card-malformed", `expected a cooking schedule, got ${kindOf(schedule)}`, hint, ["schedule"]);
  }
  read(cookHow(), how, "card-malformed");
}

const cookHow: () => Schema<CookCardOptions> = /* @__PURE__ */ once(() => {
  const text = optional(anyText());
  return fields<CookCardOptions>({ day: text, date: text, version: text, language: optional(language()) });
});
