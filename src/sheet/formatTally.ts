import { britishEnglish, type Language, say } from "../document/language.ts";
import { count, flag, word } from "../document/leaves.ts";
import { read } from "../document/read.ts";
import { language } from "../document/readLanguage.ts";
import { fields, once, optional, type Schema } from "../document/schema.ts";
import { type FigureOptions, showBound, showFigure, showRange } from "../measure/showFigure.ts";
import { fault, kindOf } from "../number/error.ts";
import type { Exact } from "../number/exact.ts";
import type { Bound } from "./bound.ts";

/** How a tally is written: figures as `FigureOptions` say, and whether its marks are. */
export interface TallyOptions extends Omit<FigureOptions, "unit" | "rounding"> {
  /** Whether it is said of what the figure is made where nobody measured it; it is unless told. */
  readonly marks?: boolean;
}

const MARKS = ["borrowed", "calculated", "derived", "presumed"] as const;

/** What is read of a tally, which writes itself by this: so it is told by its parts, not by its class. */
/** What is written of a tally: its figure, how it bounds the truth, and its marks by line. */
export interface FormattableTally extends Readonly<Record<(typeof MARKS)[number], readonly string[]>> {
  readonly value: Exact;
  readonly unit: string;
  readonly bound: Bound;
  readonly least: Exact | undefined;
  readonly most: Exact | undefined;
}

/**
 * Writes a tally as a person reads it, with its unit: the figure, what it bounds, and in words how it is known
 * where it was not measured. Bounds and ends are rounded so that they still hold.
 *
 * Throws `figure-malformed` for digits out of range.
 *
 * @example
 * ```ts
 * const porridge = sheet(
 *   { name: "Porridge", portions: 1, lines: [
 *     { food: "oats-rolled-dry", amount: "60 g" },
 *     { food: "milk-whole", amount: "200 g" },
 *   ] },
 *   starterFoods,
 * );
 * formatTally(porridge.portion("energy")); // => 349 kcal (calculated)
 * formatTally(porridge.portion("iodine"), { marks: false }); // => at least 68.6 µg
 * ```
 */
export function formatTally(t: FormattableTally, how: TallyOptions = {}): string {
  if (typeof t !== "object" || t === null || !("bound" in t && "missing" in t && "derived" in t))
    throw fault(
      "figure-malformed",
      `${kindOf(t)} is not a tally`,
      'take one from a sheet: s.portion("iron")',
    );
  return tallyText(t, read(tallyOptions(), how, "figure-malformed"));
}

const tallyOptions: () => Schema<TallyOptions> = /* @__PURE__ */ once(() =>
  fields<TallyOptions>({
    significant: optional(count(1, 34)),
    places: optional(count(0, 34)),
    zeros: optional(word(["trim", "keep"])),
    grouped: optional(flag()),
    language: optional(language()),
    marks: optional(flag()),
  }),
);

/** As {@link formatTally}, of what is trusted. */
export function tallyText(t: FormattableTally, how: TallyOptions = {}): string {
  const { marks = true, language = britishEnglish, ...digits } = how;
  if (t.bound === "unknown") return say(language, "not known");
  const figure = figureOf(t, t.unit === "" ? { ...digits, language } : { ...digits, language, unit: t.unit });
  const said = marks ? MARKS.filter((mark) => t[mark].length > 0) : [];
  if (said.length === 0) return figure;
  const words = said.map((mark) => say(language, mark)).join(", ");
  return say(language, "{figure} ({marks})", { figure, marks: words });
}

function figureOf(t: FormattableTally, how: FigureOptions & { readonly language: Language }): string {
  if (t.bound === "at-least" || t.bound === "at-most") return showBound(t.value, t.bound, how);
  if (t.bound !== "between") return showFigure(t.value, how);
  const { least, most } = t;
  if (least && most) return showRange(least, most, how);
  if (least) return showBound(least, "at-least", how);
  return most ? showBound(most, "at-most", how) : say(how.language, "not known");
}
