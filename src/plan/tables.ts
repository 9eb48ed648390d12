import { type ComponentId, components } from "../food/components.ts";
import type { Sheet } from "../sheet/sheet.ts";
import { measuresNote, shownAmount, silentNotes, stated, tallyFigure } from "../sheet/show.ts";
import { figure, legend } from "../table/figure.ts";
import { type Row, type Table, table } from "../table/table.ts";
import type { Plan, PlannedMeal } from "./plan.ts";

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

/** Amounts by dish, then figures by meal; people as columns. */
export function planTables(plan: Plan): Table[] {
  return plan.meals.flatMap((meal) => [
    ...[...meal.batch].map(([dish, batch]) => amountsTable(plan, meal, dish, batch)),
    portionFigures(plan, meal),
  ]);
}

function amountsTable(plan: Plan, meal: PlannedMeal, dish: string, batch: Sheet): Table {
  const served = plan.people.map((p) => plan.portion(p.id, meal.id).dishes.get(dish));
  const sheets = [...served, batch];
  const rows = batch.lines.map((line, i) => [
    stated(line.name, line.state),
    ...sheets.map((s) => lineAmount(s, i)),
  ]);
  const mass: Row = {
    kind: "total",
    cells: ["as eaten", ...sheets.map((s) => figure(s?.masses.cooked ?? null, { unit: "g" }))],
  };
  return table({
    title: meal.batch.size > 1 ? `${meal.name}: ${batch.name}` : meal.name,
    columns: [
      { key: "line", heading: "Line" },
      ...plan.people.map((p) => ({ key: p.id, heading: p.name, align: "end" as const })),
      { key: "all", heading: "For all", align: "end" },
    ],
    rows: [...rows, mass],
    notes: [...measuresNote(batch.values.amounts), ...sameForAll(batch)],
  });
}

function sameForAll(batch: Sheet): string[] {
  const doses = batch.plan.lines.filter(({ line }) => line.scaling === "per-portion");
  return doses.map(({ source }) => `${source.name}: the same for everyone`);
}

/** The amount as written, with grams beside it where it was not written in them. */
function lineAmount(s: Sheet | undefined, i: number): string {
  const line = s?.lines[i];
  if (!line) return "";
  const grams = figure(line.exactGrams, { unit: "g" }).text;
  if (line.amount.unit === "g") return grams;
  return `${shownAmount(line.amount, s.origin.measures)} (${grams})`;
}

function portionFigures(plan: Plan, meal: PlannedMeal): Table {
  const tallies = shownComponents.map((id) => ({
    id,
    each: plan.people.map((p) => plan.brings(p.id, meal.id, id)),
    all: plan.holds(meal.id, id),
  }));
  const rows = tallies.map(({ id, each, all }) => [
    components[id].name,
    components[id].unit,
    ...[...each, all].map((t) => tallyFigure(t)),
  ]);
  return table({
    title: `${meal.name}: what a portion brings`,
    columns: [
      { key: "component", heading: "Component" },
      { key: "unit", heading: "Unit" },
      ...plan.people.map((p) => ({ key: p.id, heading: p.name, align: "end" as const })),
      { key: "all", heading: "For all", align: "end" },
    ],
    rows,
    notes: [...legend(rows), ...silentNotes(tallies.map(({ id, all }) => [components[id].name, all]))],
  });
}
