import { type ComponentId, component, components } from "../../food/components.ts";
import { collect, type Fault, throwIfAny } from "../../number/error.ts";
import { compare, exact, type Fraction, over, times } from "../../number/fraction.ts";
import { compare as compareDay } from "../../person/compare/compare.ts";
import { Comparison } from "../../person/compare/comparison.ts";
import { countsFood } from "../../person/intakes/referenceIntakes.ts";
import type { IntakeFigure } from "../../person/intakes/resolve.ts";
import type { Sheet } from "../../sheet/sheet.ts";
import { tallyFigure } from "../../sheet/show.ts";
import type { Tally } from "../../sheet/tally.ts";
import { figure, showFigure } from "../../table/figure.ts";
import { type Language, say } from "../../table/language.ts";
import type { Plan } from "../plan.ts";
import type { DayRow, DayShare } from "./card.ts";
import type { CardDay } from "./how.ts";

/** What a card shows of nutrients unless told: few enough to be read from across a kitchen. */
export const cardComponents: readonly ComponentId[] = [
  "energy",
  "protein",
  "fat",
  "saturatedFat",
  "carbohydrateByDifference",
  "sugars",
  "fibre",
  "sodium",
  "calcium",
  "iron",
  "iodine",
  "vitaminD",
  "vitaminB12",
  "folateDfe",
]; // prettier-ignore

/** A day's figures once read: exact, by component. */
export interface ReadDay {
  readonly reference: Fraction | undefined;
  readonly upper: Fraction | undefined;
  readonly sources: readonly string[];
}

/**
 * The figures of a comparison that a row of the card can be held against. Without `bodies` those are
 * left out that are so much for each kilogram: with what is brought, a share of one tells a body's mass.
 */
function figuresOf({ rows }: Comparison, bodies: "show" | "hide"): readonly CardDay[] {
  const shown = <F extends IntakeFigure>(figure: F | undefined): F | undefined =>
    bodies === "show" || figure?.per?.of !== "kg" ? figure : undefined;
  return rows.flatMap(({ of, reference, upper }): CardDay[] => {
    const [id, ...others] = of;
    if (!id || others.length > 0) return [];
    const whole = shown(reference?.figure);
    const counts = shown(upper && countsFood(upper.figure) ? upper.figure : undefined);
    return [{ of: id, ...(whole && { reference: whole }), ...(counts && { upper: counts }) }];
  });
}

/** The day of the plan's own person; nothing where the plan does not know them, or nothing is served. */
export function ownDay(plan: Plan, person: string, { dishes, ids, bodies }: OwnDay): readonly CardDay[] {
  const intakes = plan.intakes(person);
  if (!intakes || dishes.size === 0) return [];
  return figuresOf(compareDay(dishes, intakes, { components: ids }), bodies);
}

interface OwnDay {
  readonly dishes: ReadonlyMap<string, Sheet>;
  /** What the card shows. */
  readonly ids: readonly ComponentId[];
  readonly bodies: "show" | "hide";
}

/** Reads the day, naming every fault: `component-unknown`, `card-malformed` and the number codes. */
export function readDay(given: readonly CardDay[] | Comparison): ReadonlyMap<ComponentId, ReadDay> {
  const day = given instanceof Comparison ? figuresOf(given, "show") : given;
  const faults: Fault[] = [];
  const read = new Map<ComponentId, ReadDay>();
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
    const figureOf = (field: "reference" | "upper"): Fraction | undefined => {
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
    const sources = [entry.reference?.source, entry.upper?.source].filter((s) => s !== undefined);
    read.set(entry.of, { reference: figureOf("reference"), upper: figureOf("upper"), sources });
  });
  throwIfAny(faults);
  return read;
}

/** A nutrient's row: what is brought, and what share of a day that is. */
export function dayRow(id: ComponentId, tally: Tally, day: ReadDay | undefined, language: Language): DayRow {
  const { name, unit } = components[id];
  return {
    id,
    name: say(language, name),
    brings: tallyFigure(tally, { unit, language }),
    share: day?.reference && shareOf(tally, day.reference, day.upper, language),
  };
}

function shareOf(
  tally: Tally,
  reference: Fraction,
  upper: Fraction | undefined,
  language: Language,
): DayShare {
  const known = over(tally.exact, reference);
  const above = isOver(tally, upper);
  const unknown = tally.bound === "unknown";
  const open = unknown || tally.bound === "at-least";
  const percent = percentOf(known, tally, language);
  const shown = unknown ? figure(null, { language }).text : percent;
  const spoken = [
    unknown ? say(language, "not known") : say(language, "{share} of a day", { share: percent }),
    ...(open && !unknown ? [say(language, "the rest is not known")] : []),
    ...(above ? [say(language, "above the upper level")] : []),
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
function percentOf(share: Fraction, { bound }: Tally, language: Language): string {
  const tone = bound === "at-least" || bound === "at-most" ? bound : "known";
  const shown = figure(times(share, HUNDRED), { tone, places: 0, language }).text;
  return say(language, "{figure}%", { figure: shown });
}

const HUNDRED: Fraction = { n: 100n, d: 1n };

/** Whether what is known is above the upper level. */
function isOver(tally: Tally, upper: Fraction | undefined): boolean {
  return upper !== undefined && tally.bound !== "at-most" && compare(tally.exact, upper) > 0;
}

/** What to say of a nutrient that is above its upper level; nothing of one that is not. */
export function overCaution(
  id: ComponentId,
  tally: Tally,
  upper: Fraction | undefined,
  language: Language,
): string | undefined {
  if (upper === undefined || !isOver(tally, upper)) return undefined;
  const { name, unit } = components[id];
  return say(language, "{component}: {brings} is above the upper level of {upper} a day", {
    component: say(language, name),
    brings: tallyFigure(tally, { unit, language }).text,
    upper: showFigure(upper, { unit, language }),
  });
}
