import { shortNames } from "../cook/method.ts";
import { settledAmount, weighed } from "../cook/settledAmount.ts";
import { type Language, say } from "../document/language.ts";
import { type Amount, gramsOf, millilitresOf } from "../measure/amount.ts";
import { formatAmount } from "../measure/format.ts";
import { type Kitchen, kitchens, readyKitchen } from "../measure/kitchen.ts";
import { measurable } from "../measure/measurable.ts";
import { householdUnits } from "../measure/measureSet.ts";
import type { Measures } from "../measure/measures.ts";
import { absolute, type Exact, fraction, isZero, minus, ONE, over, times, ZERO } from "../number/exact.ts";
import { compareRatios, nearest } from "../number/ratio.ts";
import { purchasedGrams } from "../plan/lineAmount.ts";
import { inSpoons } from "../plan/measure/inSpoons.ts";
import type { PartServing } from "../plan/share/parts.ts";
import type { Sheet, SheetLine } from "../sheet/sheet.ts";
import { amountHow } from "../sheet/stated.ts";
import type { AmountGroup, AmountRow, Take } from "./card.ts";

/** Stands beside what is measured before it is trimmed. */
export const AS_PURCHASED = "as purchased, {grams} of it edible";

/** A dish's lines, of those that are shown: what is cooked, and what is added when it is served. */
export function amountGroups(
  s: Sheet,
  serving: Pick<PartServing, "measured" | "kitchen">,
  language: Language,
  isShown: (key: string) => boolean = () => true,
): readonly AmountGroup[] {
  const names = shortNames(s.lines, language);
  const rows = (added: SheetLine["added"]): readonly AmountRow[] =>
    s.lines.flatMap((line, i) => {
      if (line.added !== added || !isShown(line.key)) return [];
      const name = names.get(line.key) ?? line.name;
      return [amountRow(s, i, line, { ...serving, name: toldState(name, line.state, language) }, language)];
    });
  const [cooked, served] = [rows("cooking"), rows("serving")];
  if (served.length === 0) return [{ heading: undefined, rows: cooked }];
  const atServing = { heading: say(language, "Add when serving"), rows: served };
  return cooked.length === 0
    ? [atServing]
    : [{ heading: say(language, "In the pot"), rows: cooked }, atServing];
}

/** A short name, with the state where it changes how much a gram is. */
function toldState(name: string, state: string | undefined, language: Language): string {
  const isTold = state === "dry" || state === "cooked" || state === "drained";
  return isTold && !name.toLowerCase().includes(state)
    ? say(language, "{name}, {state}", { name, state: say(language, state) })
    : name;
}

function amountRow(
  s: Sheet,
  i: number,
  line: SheetLine,
  { measured, kitchen, name }: Pick<PartServing, "measured" | "kitchen"> & { readonly name: string },
  language: Language,
): AmountRow {
  const purchased = purchasedGrams(s, i);
  const grams = purchased ?? line.grams;
  const { measures } = s.origin;
  const take = measured.includes(line.key)
    ? settledTake(line.amount, measures, grams, kitchen, language)
    : readTake(line.amount, spoons(s, i, kitchen, language), grams, kitchen, language);
  return {
    key: line.key,
    name,
    prep: line.prep,
    madeOf: (line.nested?.lines ?? []).map((inner) => say(language, inner.name)),
    ...take,
    edible: purchased && weighed(line.grams, language),
    dose: line.scaling === "per-portion",
  };
}

/** An amount that a kitchen measured: as it is, and in grams where those help. */
function settledTake(
  a: Amount,
  measures: Measures | undefined,
  grams: Exact,
  kitchen: Kitchen | undefined,
  language: Language,
): Take {
  const lead = settledAmount(a, measures, language);
  return { lead, also: a.unit === "g" ? "" : onScale(grams, kitchen, language) };
}

/** Spoons stand first for spoonfuls and where a scale shows nothing; otherwise grams do. */
function readTake(
  a: Amount,
  measure: string,
  grams: Exact,
  kitchen: Kitchen | undefined,
  language: Language,
): Take {
  const scale = onScale(grams, kitchen, language);
  if (measure === "") return { lead: scale === "" ? weighed(grams, language) : scale, also: "" };
  const isFirst = scale === "" || (SPOONS.has(a.unit) && isSpoonful(a));
  return isFirst ? { lead: measure, also: scale } : { lead: scale, also: measure };
}

const SPOONS: ReadonlySet<string> = /* @__PURE__ */ new Set(["tsp", "dessertspoon", "tbsp"]);
/** Beyond three tablespoons nobody counts spoons. Common practice, no source. */
const SPOONFULS: Exact = /* @__PURE__ */ fraction(45n);
const isSpoonful = (a: Amount): boolean => compareRatios(millilitresOf(a) ?? ZERO, SPOONFULS) <= 0;

/** Grams as the kitchen's scale shows them; nothing where it cannot. One that nobody describes shows whole grams. */
function onScale(grams: Exact, kitchen: Kitchen | undefined, language: Language): string {
  if (kitchen && !kitchen.scale) return "";
  const scale = kitchen && readyKitchen(kitchen).scale;
  const step = (scale && gramsOf(scale)) ?? ONE;
  if (compareRatios(grams, step) < 0) return "";
  if (!kitchen || compareRatios(step, ONE) <= 0) return weighed(grams, language);
  return weighed(times(fraction(nearest(over(grams, step))), step), language);
}

/** In spoons, cups or pieces, where those come close; nothing where they do not. */
function spoons(s: Sheet, i: number, kitchen: Kitchen | undefined, language: Language): string {
  const line = s.lines[i];
  const { measures } = s.origin;
  if (!line) return "";
  const { amount: a } = line;
  if (a.kind === "mass") {
    const planned = kitchen && !kitchen.scale ? s.plan.lines[i] : undefined;
    const aim = planned && kitchen && inSpoons(planned, s.values.grams[i] ?? ZERO, kitchen);
    return aim && kitchen ? near(aim, kitchen, measures, language) : "";
  }
  if (a.kind === "own") return pieces(a, measures, language);
  const isHousehold = a.parts !== undefined || householdUnits.some((unit) => unit === a.unit);
  if (!isHousehold) return formatAmount(a, { ...amountHow(language), significant: 2 });
  return near(a, { ...(kitchen ?? kitchens.metric), measures: measures ?? "metric" }, measures, language);
}

/** The nearest that the drawer can measure. */
function near(aim: Amount, kitchen: Kitchen, measures: Measures | undefined, language: Language): string {
  const size = millilitresOf(aim) ?? ZERO;
  const miss = (value: Exact): Exact => absolute(minus(value, size));
  const found = measurable(kitchen, aim, { each: 1 }).filter(
    ({ value }) => compareRatios(miss(value), times(size, NEAR)) <= 0,
  );
  const [best] = [...found].sort((a, b) => compareRatios(miss(a.value), miss(b.value)));
  if (!best) return "";
  const text = settledAmount(best.amount, measures, language);
  return isZero(miss(best.value)) ? text : say(language, "about {amount}", { amount: text });
}

/** An eighth off is still about as much. Common practice, no source. */
const NEAR: Exact = /* @__PURE__ */ fraction(1n, 8n);

/** Pieces in the parts that a cook cuts: halves, thirds and quarters. */
function pieces(a: Amount, measures: Measures | undefined, language: Language): string {
  const fractions = [1n, 2n, 3n, 4n].map((d) => fraction(nearest(times(a.value, fraction(d))), d));
  const miss = (value: Exact): Exact => absolute(minus(value, a.value));
  const [best] = [...fractions].sort((x, y) => compareRatios(miss(x), miss(y)));
  if (!best || isZero(best) || compareRatios(miss(best), times(a.value, NEAR)) > 0) return "";
  const how = { ...amountHow(language), ...(measures !== undefined && { measures }) };
  const text = formatAmount({ ...a, value: best }, { ...how, denominators: [2, 3, 4] });
  return isZero(miss(best)) ? text : say(language, "about {amount}", { amount: text });
}
