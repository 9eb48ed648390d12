import { type Language, say } from "../document/language.ts";
import { type ComponentId, component, components } from "../food/components.ts";
import { showFigure } from "../measure/showFigure.ts";
import { collect, type Fault, throwIfAny } from "../number/error.ts";
import { type Exact, exact, fraction, over, times, ZERO } from "../number/exact.ts";
import { sourceText } from "../person/check.ts";
import { Comparison } from "../person/compare/comparison.ts";
import { countsFood, type ReferenceIntakes } from "../person/intakes/referenceIntakes.ts";
import type { IntakeFigure, ReferenceFigure, UpperFigure } from "../person/intakes/resolve.ts";
import { verdictOn } from "../person/portion/verdict.ts";
import { scaledBy } from "../sheet/ends.ts";
import type { PortionInterval } from "../sheet/portionInterval.ts";
import type { Tally } from "../sheet/tally.ts";
import { figureCell, markOf, rangeFigure } from "../show/figure.ts";
import { intervalFigure } from "../show/intervalFigure.ts";
import type { TableFigure, Tone } from "../show/table.ts";
import { endsFigure, hasEnds, tallyFigure } from "../show/tallyFigure.ts";
import type { DayRow, RowDayShare } from "./card.ts";
import type { CardDay } from "./how.ts";

/** What a card shows of nutrients unless told: few enough to be read from across a kitchen. */
export const cardComponents: readonly ComponentId[] = [
  "energy",
  "protein",
  "fibre",
  "calcium",
  "iron",
  "iodine",
]; // prettier-ignore

/** What is held against upper levels besides, shown or not. */
export const watchedComponents: readonly ComponentId[] = [
  "saturatedFat",
  "sugars",
  "sodium",
  "vitaminD",
  "folateDfe",
]; // prettier-ignore

/** A day's figures once read: exact, by component. */
export interface DayHeldFigures {
  readonly reference: Exact | undefined;
  readonly upper: Exact | undefined;
  readonly sources: readonly string[];
}

/** The figures of a comparison that a row of the card can be held against. */
function figuresOf({ rows }: Comparison, bodies: "show" | "hide"): readonly CardDay[] {
  return rows.flatMap(({ of, reference, upper }): CardDay[] => {
    const [id, ...others] = of;
    if (!id || others.length > 0) return [];
    const shown = <F extends IntakeFigure>(figure: F | undefined): F | undefined =>
      figure && (bodies === "show" || !tellsOfBody(figure)) ? figure : undefined;
    return [dayOf(id, shown(reference?.figure), shown(upper?.figure))];
  });
}

/**
 * Tells whether a share of this figure gives away a body: what was eaten, divided by the share, is an energy
 * need or a target, so much for each kilogram, or so much of that energy.
 */
function tellsOfBody(figure: IntakeFigure): boolean {
  return figure.per !== undefined || ("kind" in figure && figure.kind === "energy need");
}

function dayOf(of: ComponentId, reference?: ReferenceFigure, upper?: UpperFigure): CardDay {
  const counts = upper && countsFood(upper) ? upper : undefined;
  return { of, ...(reference && { reference }), ...(counts && { upper: counts }) };
}

/**
 * Gives a person's day as it is published, and their own energy, for the same rows as a comparison gives.
 * Where bodies are hidden, figures that give one away are left out.
 */
export function ownDay(
  intakes: ReferenceIntakes,
  ids: readonly ComponentId[],
  bodies: "show" | "hide",
): readonly CardDay[] {
  return ids.map((id) => {
    const { references, uppers } = intakes.get(id);
    const ours = <F extends IntakeFigure>(all: readonly F[]): readonly F[] =>
      all.filter((figure) => figure.of.join() === id && (bodies === "show" || !tellsOfBody(figure)));
    const lowest = [...ours(uppers)].filter(countsFood).sort((a, b) => a.value.comparedTo(b.value));
    return dayOf(id, ours(references)[0], lowest[0]);
  });
}

/** Reads the day, naming every fault: `component-unknown`, `card-malformed` and the number codes. */
export function readDay(
  given: readonly CardDay[] | Comparison,
  bodies: "show" | "hide",
  language: Language,
): ReadonlyMap<ComponentId, DayHeldFigures> {
  const day = given instanceof Comparison ? figuresOf(given, bodies) : given;
  const faults: Fault[] = [];
  const read = new Map<ComponentId, DayHeldFigures>();
  day.forEach((entry, i) => {
    const path = ["day", i];
    collect(faults, [...path, "of"], () => component(entry.of));
    if (read.has(entry.of)) {
      faults.push({
        code: "card-malformed",
        path: [...path, "of"],
        message: `${entry.of} comes twice`,
        hint: "give each component of the day once",
      });
    }
    const figureOf = (field: "reference" | "upper"): Exact | undefined => {
      const given = entry[field];
      if (given === undefined) return undefined;
      const value = collect(faults, [...path, field, "value"], () => exact(given.value));
      if (!value || value.n > 0n) return value;
      faults.push({
        code: "card-malformed",
        path: [...path, field, "value"],
        message: "a day's figure that is not above 0",
        hint: "give it in the component's own unit, or leave it out",
      });
      return undefined;
    };
    const sources = [entry.reference, entry.upper].flatMap((given) =>
      given ? [sourceText(given, language)] : [],
    );
    read.set(entry.of, { reference: figureOf("reference"), upper: figureOf("upper"), sources });
  });
  throwIfAny(faults);
  return read;
}

/** A nutrient's row: what is brought, and what share of a day that is. */
export function dayRow(
  id: ComponentId,
  tally: Tally,
  day: DayHeldFigures | undefined,
  language: Language,
  interval?: PortionInterval,
): DayRow {
  const { name, unit } = components[id];
  const brings = intervalFigure(tally, interval, { unit, language });
  const words = PART[brings.tone];
  return {
    id,
    name: say(language, name),
    brings: words === undefined ? brings : { ...brings, text: withoutMark(brings, language) },
    part: words === undefined ? "" : say(language, words),
    share: day?.reference && shareOf(tally, day.reference, day.upper, language),
  };
}

/** What a letter stands for in tables; a page on a wall says it in words. */
const PART: { readonly [T in Tone]?: string } = {
  presumed: "all or part assumed to be none",
  derived: "all or part worked out",
  calculated: "all or part calculated",
  borrowed: "all or part from a like food",
  trace: "traces not counted",
};

function withoutMark({ text, tone }: TableFigure, language: Language): string {
  if (PART[tone] === undefined) return text;
  const mark = ` ${markOf(tone, language)}`;
  return text.endsWith(mark) ? text.slice(0, -mark.length) : text.replace(`${mark},`, ",");
}

function shareOf(tally: Tally, reference: Exact, upper: Exact | undefined, language: Language): RowDayShare {
  const isMiddle = tally.bound === "between";
  // Of a range the bar goes as far as there is certain to be.
  const known = over(isMiddle ? (tally.least ?? ZERO) : tally.value, reference);
  const standing = upper && verdictOn(tally.ends, upper);
  const above = standing === "past";
  const unknown = tally.bound === "unknown";
  const open = unknown || tally.bound === "at-least" || isMiddle;
  const isRest = tally.bound === "at-least" || (isMiddle && tally.most === undefined);
  const percent = percentOf(known, tally, reference, language);
  const shown = unknown ? figureCell(null, { language }).text : percent;
  const spoken = [
    unknown ? say(language, "not known") : say(language, "{share} of a day", { share: percent }),
    ...(isRest ? [say(language, "the rest is not known")] : []),
    ...(above ? [say(language, "above the upper level")] : []),
    ...(standing === "may-be-past" ? [say(language, "may be above the upper level")] : []),
  ].join(", ");
  return {
    known,
    open,
    upper: upper && over(upper, reference),
    over: above,
    shown,
    spoken,
  };
}

/** Whole per cents, rounded the way that the bound asks for: at least 37.9 % is at least 37 %. */
function percentOf(share: Exact, tally: Tally, reference: Exact, language: Language): string {
  const { bound } = tally;
  if (bound === "between") {
    const ends = scaledBy(tally.ends, over(HUNDRED, reference));
    const { text } = endsFigure({ value: times(share, HUNDRED), ends }, { places: 0, language });
    return say(language, "{figure}%", { figure: text });
  }
  const tone = bound === "at-least" || bound === "at-most" ? bound : "known";
  const shown = figureCell(times(share, HUNDRED), { tone, places: 0, language }).text;
  return say(language, "{figure}%", { figure: shown });
}

const HUNDRED: Exact = /* @__PURE__ */ fraction(100n);

/** What to say of a nutrient that is above its upper level, or may be by what is told; nothing of others. */
export function overCaution(
  id: ComponentId,
  tally: Tally,
  upper: Exact | undefined,
  language: Language,
): string | undefined {
  const standing = upper && verdictOn(tally.ends, upper);
  if (upper === undefined || (standing !== "past" && standing !== "may-be-past")) return undefined;
  const { name, unit } = components[id];
  const text =
    standing === "past"
      ? "{component}: {brings} is above the upper level of {upper} a day"
      : "{component}: {brings} may be above the upper level of {upper} a day";
  const how = { unit, language };
  return say(language, text, {
    component: say(language, name),
    brings: standing === "past" ? withoutMark(tallyFigure(tally, how), language) : reachText(tally, how),
    upper: showFigure(upper, { unit, language }),
  });
}

/** How far what is told reaches: where lines are silent there may be more, and no end of it is known. */
function reachText(tally: Tally, how: { readonly unit: string; readonly language: Language }): string {
  const { low, high, told } = tally.ends;
  if (high === undefined && low && told) {
    const { text } = rangeFigure(tally.value, low, told, how);
    return say(how.language, "{range} or more", { range: text });
  }
  return withoutMark(hasEnds(tally) ? endsFigure(tally, how) : tallyFigure(tally, how), how.language);
}
