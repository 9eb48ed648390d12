import { type Amount, millilitresOf } from "../../measure/amount.ts";
import { type FormatHow, formatAmount } from "../../measure/format.ts";
import type { Kitchen } from "../../measure/kitchen.ts";
import { measurable } from "../../measure/measurable.ts";
import type { Measures } from "../../measure/measures.ts";
import {
  absolute,
  compare,
  type Fraction,
  fraction,
  minus,
  nearest,
  times,
  ZERO,
} from "../../number/fraction.ts";
import type { Sheet, SheetLine } from "../../sheet/sheet.ts";
import { amountHow, stated } from "../../sheet/show.ts";
import { showFigure } from "../../table/figure.ts";
import { type Language, say } from "../../table/language.ts";
import { inSpoons } from "../kitchen/spoons.ts";
import type { Serving } from "../pot.ts";
import { purchasedGrams } from "../show.ts";
import type { AmountGroup, AmountRow } from "./card.ts";

/** Keys of lines whose amounts a kitchen measured: they are shown as they are, and not rounded again. */
export type MeasuredLines = readonly string[];

/** Stands beside what is measured before it is trimmed. */
export const AS_PURCHASED = "as purchased, {grams} of it edible";

/** A dish's lines: what is cooked, and what is added when it is served. */
export function amountGroups(
  s: Sheet,
  serving: Pick<Serving, "measured" | "kitchen">,
  language: Language,
): readonly AmountGroup[] {
  const rows = (added: SheetLine["added"]): readonly AmountRow[] =>
    s.lines.flatMap((line, i) => (line.added === added ? [amountRow(s, i, line, serving, language)] : []));
  const [cooked, served] = [rows("cooking"), rows("serving")];
  if (served.length === 0) return [{ heading: undefined, rows: cooked }];
  const atServing = { heading: say(language, "Add when serving"), rows: served };
  return cooked.length === 0
    ? [atServing]
    : [{ heading: say(language, "In the pot"), rows: cooked }, atServing];
}

function amountRow(
  s: Sheet,
  i: number,
  line: SheetLine,
  { measured: settled, kitchen }: Pick<Serving, "measured" | "kitchen">,
  language: Language,
): AmountRow {
  const { measures } = s.origin;
  const asItIs = settled.includes(line.key) ? settledAmount(line.amount, measures, language) : undefined;
  const isGrams = line.amount.unit === "g";
  const purchased = purchasedGrams(s, i);
  const spoons = (): string =>
    line.amount.kind === "mass"
      ? kitchen && !kitchen.scale
        ? spooned(s, i, kitchen, language)
        : ""
      : measured(line.amount, measures, language);
  return {
    key: line.key,
    name: stated(line.name, line.state, language),
    prep: line.prep,
    madeOf: (line.nested?.lines ?? []).map((inner) => say(language, inner.name)),
    weigh: asItIs !== undefined && isGrams ? asItIs : weighed(purchased ?? line.grams, language),
    measure: asItIs === undefined ? spoons() : isGrams ? "" : asItIs,
    edible: purchased && weighed(line.grams, language),
    dose: line.scaling === "per-portion",
  };
}

/** An amount that a kitchen can measure, to the last digit. */
export function settledAmount(a: Amount, measures: Measures | undefined, language: Language): string {
  return formatAmount(a, { ...amountHow(language), ...(measures !== undefined && { measures }) });
}

/** Grams as a kitchen scale is read: whole from 10 g up, tenths from 1 g, hundredths below. */
export function weighed(grams: Fraction, language: Language): string {
  const places = grams.n >= 10n * grams.d ? 0 : grams.n >= grams.d ? 1 : 2;
  return showFigure(grams, { places, unit: "g", language });
}

/** A mass as a kitchen without a scale takes it: in the spoons that it has, where they come close. */
function spooned(s: Sheet, i: number, kitchen: Kitchen, language: Language): string {
  const line = s.plan.lines[i];
  const aim = line && inSpoons(line, s.values.grams[i] ?? ZERO, kitchen);
  if (!aim) return "";
  const { measures } = s.origin;
  const size = millilitresOf(aim) ?? ZERO;
  const close = measurable(kitchen, aim, { each: 1 }).find(
    ({ value: exact }) => compare(absolute(minus(exact, size)), times(size, NEAR)) <= 0,
  );
  return close
    ? say(language, "about {amount}", { amount: settledAmount(close.amount, measures, language) })
    : measured(aim, measures, language);
}

/** An eighth off is still about as much. Common practice, no source. */
const NEAR: Fraction = /* @__PURE__ */ fraction(1n, 8n);

/** Fractions that spoons and cups come in. Common practice, no source. */
const DENOMINATORS: readonly number[] = [2, 3, 4, 8];
/** A fraction stands in for a figure that it misses by no more than this share; beyond it decimals do. */
const CLOSE: Fraction = /* @__PURE__ */ fraction(1n, 20n);
const METRIC_MASSES: readonly string[] = ["mg", "g", "kg"];

/** An amount in spoons, cups, millilitres or pieces, `about` where a near fraction stands for it. */
export function measured(a: Amount, measures: Measures | undefined, language: Language): string {
  if (a.kind === "mass" && METRIC_MASSES.includes(a.unit)) return "";
  const how: FormatHow = { ...amountHow(language), ...(measures !== undefined && { measures }) };
  if (a.parts !== undefined || METRIC_VOLUMES.includes(a.unit)) {
    return formatAmount(a, { ...how, significant: 3 });
  }
  const miss = nearestMiss(a.value);
  if (miss.n === 0n) return formatAmount(a, { ...how, denominators: DENOMINATORS });
  const close = compare(miss, times(a.value, CLOSE)) <= 0;
  const amount = formatAmount(a, close ? { ...how, denominators: DENOMINATORS } : { ...how, significant: 2 });
  return say(language, "about {amount}", { amount });
}

const METRIC_VOLUMES: readonly string[] = ["ml", "cl", "dl", "l"];

/** How far a figure lies from the nearest fraction that can be measured. */
function nearestMiss(figure: Fraction): Fraction {
  return [1, ...DENOMINATORS]
    .map((d) => {
      const parts = fraction(BigInt(d));
      const near = fraction(nearest(times(figure, parts)), BigInt(d));
      return absolute(minus(near, figure));
    })
    .reduce((best, miss) => (compare(miss, best) < 0 ? miss : best));
}
