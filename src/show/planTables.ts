import { type Language, say } from "../document/language.ts";
import { type ComponentId, components } from "../food/components.ts";
import { ZERO } from "../number/exact.ts";
import type { PlannedDish } from "../plan/dish.ts";
import { lineAmount } from "../plan/lineAmount.ts";
import { lossesNote } from "../plan/losses.ts";
import { missedOf } from "../plan/missed.ts";
import type { Plan, PlannedMeal } from "../plan/planned.ts";
import { lineNameAmong } from "../sheet/names.ts";
import type { Sheet } from "../sheet/sheet.ts";
import { measuresNote, stated } from "../sheet/stated.ts";
import { figureCell, legend } from "./figure.ts";
import { intervalTable } from "./intervalTable.ts";
import { driftTables } from "./measuredTables.ts";
import { isAsked, type Parts, type PlanPart } from "./parts.ts";
import { peopleTables } from "./peopleTables.ts";
import { firstTables, potTables } from "./potTables.ts";
import { summaryTables } from "./summaryTables.ts";
import { type Row, type Table, table } from "./table.ts";
import { rangedNotes, silentNotes, tallyFigure } from "./tallyFigure.ts";

/** What a plan shows of each portion unless told: energy and its sources, then what meals often lack. */
export const shownComponents: readonly ComponentId[] = [
  "energy",
  "protein",
  "fat",
  "saturatedFat",
  "carbohydrateByDifference",
  "sugars",
  "fibre",
  "sodium",
  "potassium",
  "calcium",
  "iron",
  "magnesium",
  "zinc",
  "selenium",
  "iodine",
  "vitaminARae",
  "vitaminC",
  "vitaminD",
  "vitaminE",
  "folateDfe",
  "vitaminB12",
]; // prettier-ignore

/**
 * Amounts by dish, then figures by meal, people as columns; then drift where a kitchen was given, then what is
 * not met. The summary says the same on one screen, and is shown where it is asked for by name; so are intervals.
 */
export function planTables(
  plan: Plan,
  language: Language,
  _most?: number,
  parts: Parts = "all",
): readonly Table[] {
  const has = (part: PlanPart): boolean => isAsked(parts, part);
  const byName = (part: PlanPart): boolean => parts !== "all" && has(part);
  const summed = byName("summary");
  const meals = plan.meals.flatMap((meal) => [
    ...[...meal.dishes.values()].flatMap((dish) => dishTables(plan, meal, dish, has, language)),
    ...(has("nutrients") ? [portionFigures(plan, meal, language)] : []),
    ...(byName("intervals") ? [portionIntervals(plan, meal, language)] : []),
  ]);
  return [
    ...(summed ? summaryTables(plan, language) : []),
    ...meals,
    ...(has("rounding") ? driftTables(plan, language) : []),
    ...(has("unmet") ? unmetTables(plan, language) : []),
    ...(has("people") ? peopleTables(plan.about(), language) : []),
  ];
}

function unmetTables(plan: Plan, language: Language): readonly Table[] {
  const nameOf = (all: readonly { readonly id: string; readonly name: string }[], id: string): string =>
    all.find((each) => each.id === id)?.name ?? id;
  const rows = plan.portions.flatMap((portion) => {
    const who = [nameOf(plan.people, portion.person), nameOf(plan.meals, portion.meal)];
    // A cause is often a long sentence: once is enough.
    const told = new Set<string>();
    return missedOf(portion, language).map(({ text, why }) => {
      const cells = [...who, text, told.has(why) ? "" : why];
      told.add(why);
      return cells;
    });
  });
  if (rows.length === 0) return [];
  return [
    table({
      title: say(language, "What is not met"),
      columns: [
        { key: "person", heading: say(language, "Person") },
        { key: "meal", heading: say(language, "Meal") },
        { key: "miss", heading: say(language, "Missed") },
        { key: "why", heading: say(language, "Why") },
      ],
      rows,
    }),
  ];
}

function dishTables(
  plan: Plan,
  meal: PlannedMeal,
  dish: PlannedDish,
  has: (part: PlanPart) => boolean,
  language: Language,
): readonly Table[] {
  const title = meal.dishes.size > 1 ? `${meal.name}: ${dish.batch.name}` : meal.name;
  const nameOf = (person: string): string => plan.people.find(({ id }) => id === person)?.name ?? person;
  return [
    ...(has("amounts") ? [amountsTable({ plan, meal, dish, title, language })] : []),
    ...(has("pots")
      ? [...firstTables(dish.batch, title, language), ...potTables({ dish, title, nameOf, language })]
      : []),
  ];
}

interface Dish {
  readonly plan: Plan;
  readonly meal: PlannedMeal;
  readonly dish: PlannedDish;
  readonly title: string;
  readonly language: Language;
}

function amountsTable({ plan, meal, dish, title, language }: Dish): Table {
  const { batch } = dish;
  const portions = plan.people.map((p) => plan.portion(p.id, meal.id));
  const sheets = [...portions.map(({ dishes }) => dishes.get(dish.name)), batch];
  const rows = batch.lines.map((line, i) => [
    stated(line.name, line.state, language),
    ...sheets.map((s) => lineAmount(s, i, language)),
  ]);
  const mass: Row = {
    kind: "total",
    cells: [
      say(language, "as eaten"),
      ...sheets.map((s, i) =>
        portions[i]?.status === "away"
          ? say(language, "away")
          : figureCell(s?.masses.cooked ?? ZERO, { unit: "g", language }),
      ),
    ],
  };
  return table({
    title,
    columns: [
      { key: "line", heading: say(language, "Line") },
      ...plan.people.map((p) => ({ key: p.id, heading: p.name, align: "end" as const })),
      { key: "all", heading: say(language, "For all"), align: "end" },
    ],
    rows: [...rows, mass],
    // Kitchens differ: someone's spoons may be others than the recipe's.
    notes: [
      ...measuresNote(
        sheets.flatMap((s) => s?.values.amounts ?? []),
        language,
      ),
      ...sameForAll(batch, language),
    ],
  });
}

function sameForAll(batch: Sheet, language: Language): string[] {
  const doses = batch.plan.lines.filter(({ line }) => line.scaling === "per-portion");
  return doses.map(({ source }) =>
    say(language, "{name}: the same for everyone", { name: say(language, source.name) }),
  );
}

function portionFigures(plan: Plan, meal: PlannedMeal, language: Language): Table {
  const tallies = shownComponents.map((id) => ({
    id,
    each: plan.people.map((p) => plan.brings(p.id, meal.id, id)),
    all: plan.holds(meal.id, id),
  }));
  const lineName = (key: string): string => lineNameAmong(meal.batch, key, language);
  const rows = tallies.map(({ id, each, all }) => [
    say(language, components[id].name),
    say(language, components[id].unit),
    ...[...each, all].map((t) => tallyFigure(t, { language })),
  ]);
  return table({
    title: say(language, "{meal}: what a portion brings", { meal: meal.name }),
    columns: [
      { key: "component", heading: say(language, "Component") },
      { key: "unit", heading: say(language, "Unit") },
      ...plan.people.map((p) => ({ key: p.id, heading: p.name, align: "end" as const })),
      { key: "all", heading: say(language, "For all"), align: "end" },
    ],
    rows,
    notes: [
      ...legend(rows, language),
      ...lossesNote(meal.batch.values(), shownComponents, language),
      ...silentNotes(
        tallies.map(({ id, all }) => [components[id].name, all]),
        language,
        undefined,
        lineName,
      ),
      ...rangedNotes(
        tallies.map(({ id, all }) => [components[id].name, all]),
        language,
        undefined,
        lineName,
      ),
    ],
  });
}

/** How sure each figure of each person's portion is, of components that anybody is told how sure of. */
function portionIntervals(plan: Plan, meal: PlannedMeal, language: Language): Table {
  const portions = plan.people.map(({ id, name }) => ({
    ...{ key: id, heading: name, sheets: [...plan.portion(id, meal.id).dishes.values()] },
    brings: (component: ComponentId) => plan.brings(id, meal.id, component),
  }));
  return intervalTable(meal.name, shownComponents, portions, language);
}
