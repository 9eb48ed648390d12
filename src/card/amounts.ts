import { measured, settledAmount, weighed } from "../cook/settledAmount.ts";
import { type Language, say } from "../document/language.ts";
import { millilitresOf } from "../measure/amount.ts";
import type { Kitchen } from "../measure/kitchen.ts";
import { measurable } from "../measure/measurable.ts";
import { absolute, type Exact, fraction, minus, times, ZERO } from "../number/exact.ts";
import { compareRatios } from "../number/ratio.ts";
import { purchasedGrams } from "../plan/lineAmount.ts";
import { inSpoons } from "../plan/measure/inSpoons.ts";
import type { PartServing } from "../plan/share/parts.ts";
import type { Sheet, SheetLine } from "../sheet/sheet.ts";
import { stated } from "../sheet/stated.ts";
import type { AmountGroup, AmountRow } from "./card.ts";

/** Stands beside what is measured before it is trimmed. */
export const AS_PURCHASED = "as purchased, {grams} of it edible";

/** A dish's lines, of those that are shown: what is cooked, and what is added when it is served. */
export function amountGroups(
  s: Sheet,
  serving: Pick<PartServing, "measured" | "kitchen">,
  language: Language,
  isShown: (key: string) => boolean = () => true,
): readonly AmountGroup[] {
  const rows = (added: SheetLine["added"]): readonly AmountRow[] =>
    s.lines.flatMap((line, i) =>
      line.added === added && isShown(line.key) ? [amountRow(s, i, line, serving, language)] : [],
    );
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
  { measured: settled, kitchen }: Pick<PartServing, "measured" | "kitchen">,
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

/** A mass as a kitchen without a scale takes it: in the spoons that it has, where they come close. */
function spooned(s: Sheet, i: number, kitchen: Kitchen, language: Language): string {
  const line = s.plan.lines[i];
  const aim = line && inSpoons(line, s.values.grams[i] ?? ZERO, kitchen);
  if (!aim) return "";
  const { measures } = s.origin;
  const size = millilitresOf(aim) ?? ZERO;
  const close = measurable(kitchen, aim, { each: 1 }).find(
    ({ value: exact }) => compareRatios(absolute(minus(exact, size)), times(size, NEAR)) <= 0,
  );
  return close
    ? say(language, "about {amount}", { amount: settledAmount(close.amount, measures, language) })
    : measured(aim, measures, language);
}

/** An eighth off is still about as much. Common practice, no source. */
const NEAR: Exact = /* @__PURE__ */ fraction(1n, 8n);
