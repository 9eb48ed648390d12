import { isValue } from "../document/leaves.ts";
import { read } from "../document/read.ts";
import { asFar, attemptAt, once, type Refuse, type Schema } from "../document/schema.ts";
import { type Amount, amount, gramsOf, millilitresOf } from "../measure/amount.ts";
import { exactText } from "../number/digits.ts";
import { fault, quote, SteelyardError } from "../number/error.ts";
import { type Exact, exact, fraction, isZero, ONE, over, times, type Value } from "../number/exact.ts";
import { didYouMean } from "../number/near.ts";
import { type ComponentId, components, isComponentId } from "./components.ts";
import { labelEu2012 } from "./data/labelEu2012.ts";
import { labelUs101, usMicro, usMicroPercent, usPercent } from "./data/labelUs101.ts";
import { usDailyValues } from "./data/usDailyValues.ts";
import type { Figure, FoodInput } from "./food.ts";
import { refuseImpossible } from "./labelCheck.ts";
import type { LabelInput } from "./labelDocument.ts";
import type { LabelRow } from "./labelRow.ts";
import { limitOfZero, type RoundingRule, roundedFrom } from "./labelRule.ts";
import { labelSchema } from "./labelSchema.ts";
import { type Printed, readPrinted } from "./labelText.ts";

/**
 * A food from its label. Every figure keeps the interval that it may have been rounded from, per 100 g:
 * a printed 0 is "below the limit of rounding", and "less than 1 g" below that. What the label does not
 * say is unknown. Carbohydrate is available carbohydrate on an EU label, and by difference, fibre
 * counted in, on a US one. The food gets a measure `serving` where the label is for one.
 *
 * Throws `label-malformed`, all faults at once: figures that cannot be read or that no food can have,
 * a volume with no density.
 *
 * Source of the rules: see data/labelUs101.ts and data/labelEu2012.ts.
 *
 * @example
 * ```ts
 * const isolate = foodFromLabel({
 *   id: "pea-protein",
 *   name: "Pea protein powder",
 *   style: "us",
 *   per: "30 g",
 *   figures: { energy: 120, protein: "24 g", fat: "2 g", carbohydrate: "less than 1 g", sodium: "330 mg" },
 * });
 * console.log(isolate.per100g.protein); // => { value: '80', low: '235/3', high: '245/3', source: 'label, US style: 24 g' }
 * ```
 */
export function foodFromLabel(label: LabelInput): FoodInput {
  return read(labelledFood(), label, "label-malformed");
}

const labelledFood: () => Schema<FoodInput> = /* @__PURE__ */ once(() => asFar(labelSchema(), foodOf));

/** The food, as far as its label could be read. */
function foodOf({ style, per, figures, source, ...about }: Partial<LabelInput>, refuse: Refuse): FoodInput {
  const made: { -readonly [C in ComponentId]?: Figure } = {};
  let isSound = style !== undefined;
  const tell: Refuse = (...fault) => {
    isSound = false;
    refuse(...fault);
  };
  const said = `label, ${style?.toUpperCase()} style`;
  const serving =
    style === undefined || per === undefined
      ? undefined
      : attemptAt(tell, ["per"], () => servingOf(per, style, about.density, about.measures));
  for (const [key, written] of Object.entries(style ? (figures ?? {}) : {})) {
    if (!style || written === undefined) continue;
    attemptAt(tell, ["figures", key], () => {
      const row = rowOf(style, key);
      if (Object.hasOwn(made, row.component))
        throw bad(`two figures for ${components[row.component].name}`, "keep one of them");
      made[row.component] = figureOf(written, row, style, serving?.to100g ?? ONE, said);
    });
  }
  if (isSound && style) attemptAt(tell, [], () => refuseImpossible(made, style));
  const measures = [...(about.measures ?? []), ...(serving?.measure ? [serving.measure] : [])];
  return {
    ...(about as Omit<FoodInput, "per100g" | "source">),
    state: about.state ?? "as sold",
    source: source ?? said,
    ...(measures.length > 0 && { measures }),
    per100g: made,
  };
}

/** What brings the printed figures to 100 g, and the measure that a serving makes. */
function servingOf(
  per: LabelInput["per"],
  style: LabelInput["style"],
  density: LabelInput["density"],
  measures: LabelInput["measures"],
): {
  readonly to100g: Exact;
  readonly measure: NonNullable<FoodInput["measures"]>[number] | undefined;
} {
  const grams = gramsOfServing(readServing(per, style), density);
  const printedPer100 = typeof per === "string" && /^100 ?(?:g|ml)$/i.test(per.trim());
  const taken = measures?.some(({ name }) => name === "serving");
  return {
    to100g: over(fraction(100n), grams),
    measure: printedPer100 || taken ? undefined : { name: "serving", grams: exactText(grams) },
  };
}

function readServing(per: LabelInput["per"], style: LabelInput["style"]): Amount {
  try {
    return amount(per, { measures: style === "us" ? "us-label" : "metric" });
  } catch (error) {
    if (!(error instanceof SteelyardError)) throw error;
    throw bad(error.faults[0]?.message ?? error.message, 'write a mass or a volume: "30 g", "100 ml"');
  }
}

function gramsOfServing(serving: Amount, density: Value | undefined): Exact {
  if (isZero(serving.value)) throw bad("a serving of nothing", "write what the figures are for");
  const grams = gramsOf(serving);
  if (grams) return grams;
  const millilitres = millilitresOf(serving);
  if (!millilitres) throw bad("neither a mass nor a volume", 'write "30 g" or "100 ml"');
  if (density === undefined)
    throw bad("a volume of it has no mass without a density", 'give density in g/ml: "1.03" for milk, say');
  return times(millilitres, exact(density));
}

/** What a key of the figures stands for on a label of this style. */
function rowOf(style: LabelInput["style"], key: string): LabelRow {
  const rows = style === "us" ? labelUs101 : labelEu2012;
  const row = Object.hasOwn(rows, key) ? rows[key] : undefined;
  if (row) return row;
  if (isComponentId(key)) return { component: key, rule: { by: "printed" } };
  throw bad(
    `a ${style.toUpperCase()} label has no ${quote(key)}`,
    didYouMean(
      key,
      Object.keys(rows),
      `use one of ${Object.keys(rows).slice(0, 12).join(", ")}, … or a component id`,
    ),
  );
}

function figureOf(
  written: Value,
  row: LabelRow,
  style: LabelInput["style"],
  to100g: Exact,
  said: string,
): Figure {
  if (!isValue(written)) throw bad(`${quote(written)} is not a figure`, 'write it as printed: "12 g"');
  const printed = readPrinted(written, row.component);
  if (printed.kind === "trace") return "trace";
  const source = [`${said}: ${describe(written)}`, ...(row.note ? [row.note] : [])].join("; ");
  const limit = (value: Exact): Figure => ({ below: exactText(times(value, to100g)), source });
  if (printed.kind === "below") {
    if (isZero(printed.limit)) throw bad("less than nothing", "write 0, or the limit that is printed");
    return limit(printed.limit);
  }
  const { value, unit, rule, scale } = ruled(printed, row, style);
  if (isZero(value)) return limit(dailyTrifle(row) ?? times(limitOfZero(rule, unit), scale));
  const { low, high } = roundedFrom(value, rule, unit);
  const [v, l, h] = [value, low, high].map((each) => exactText(times(times(each, scale), to100g)));
  return { value: v ?? "0", low: l ?? "0", high: h ?? "0", source };
}

/** A printed number by the rule it was rounded by, and what then turns it into the component's unit. */
function ruled(
  printed: Extract<Printed, { kind: "amount" | "percent" }>,
  { component, rule }: LabelRow,
  style: LabelInput["style"],
): {
  readonly value: Exact;
  readonly unit: Exact;
  readonly rule: RoundingRule;
  readonly scale: Exact;
} {
  const daily = usDailyValues[component];
  if (printed.kind === "percent") {
    if (daily === undefined || style !== "us")
      throw bad(
        `there is no Daily Value of ${components[component].name} to take a per cent of`,
        "write the amount",
      );
    return {
      value: printed.percent,
      unit: printed.unit,
      rule: rule === "micro" ? usMicroPercent : usPercent,
      scale: over(exact(daily), fraction(100n)),
    };
  }
  // The rules of energy are for kilocalories; kilojoules are printed to whole ones as well.
  const inKj = component === "energy" && printed.scale.d !== 1n;
  const own = rule === "micro" ? usMicro(daily ?? "1") : rule;
  return {
    value: printed.value,
    unit: printed.unit,
    rule: inKj ? { by: "printed" } : own,
    scale: exact(1),
  };
}

/** Under 2 per cent of its Daily Value, a vitamin or mineral may be declared as 0: 21 CFR 101.9(c)(8)(iii). */
function dailyTrifle({ component, rule }: LabelRow): Exact | undefined {
  const daily = rule === "micro" ? usDailyValues[component] : undefined;
  return daily === undefined ? undefined : times(exact(daily), fraction(2n, 100n));
}

function describe(written: Value): string {
  return String(written).replace(/\s+/g, " ").slice(0, 100);
}

function bad(message: string, hint: string): SteelyardError {
  return fault("label-malformed", message, hint);
}
