import { say } from "../document/language.ts";
import { components } from "../food/components.ts";
import { showFigure } from "../measure/showFigure.ts";
import { fault, kindOf } from "../number/error.ts";
import { Plan } from "../plan/planned.ts";
import { legend } from "../show/figure.ts";
import type { TableFigure } from "../show/table.ts";
import { tallyFigure } from "../show/tallyFigure.ts";
import { type DrawingOptions, drawing, drawingHow, label, place, rule } from "./drawing.ts";

const NAME = 120;
const DAY = 76;
const BAR = 40;
const ROW = BAR + 34;

/**
 * Draws what each day of a plan brings each person, energy and protein unless told otherwise: a row for each
 * person, a bar for each day, all of one component to one scale. A day of which not all is known ends hatched; one
 * that is not wholly eaten in the plan is an outline. One SVG element in the ink of the text around it, with all that
 * it shows in words.
 *
 * Throws `card-malformed`, `component-unknown`.
 *
 * @example
 * ```ts
 * const oats = sheet({ name: "Oats", portions: 1, lines: [{ food: "oats-rolled-dry", amount: "100 g" }] }, starterFoods);
 * const plan = portionPlan({ meals: [{ id: "breakfast", dishes: oats }], people: [{ id: "cox", name: "Cox" }] });
 * console.log(weekPicture(plan, { components: ["energy"] }).includes("energy: Cox: day 379 kcal")); // => true
 * ```
 */
export function weekPicture(plan: Plan, how: DrawingOptions = {}): string {
  if (!(plan instanceof Plan)) {
    const hint = "make one with portionPlan({ … })";
    throw fault("card-malformed", `expected a plan, got ${kindOf(plan)}`, hint, ["plan"]);
  }
  const { components: ids, id, language } = drawingHow(how);
  const { days, people } = plan;
  const body: string[] = [];
  const words: string[] = [];
  const marks: TableFigure[][] = [];
  let y = 0;
  for (const of of ids) {
    const { unit, name } = components[of];
    const heading = say(language, name);
    const rows = people.map((person) => ({
      name: person.name,
      days: days.map((day) => {
        const own = plan.day(person.id, day.id);
        const tally = own.brings(of);
        const cell = tallyFigure(tally, { unit: say(language, unit), places: 0, language });
        const value = showFigure(tally.value, { places: 0, language });
        const isOpen = tally.bound !== "point";
        const shown = tally.bound === "unknown" ? "?" : isOpen ? `≥ ${value}` : value;
        marks.push([cell]);
        return { day, tally, isOpen, shown, figure: cell.text, status: own.status, isWhole: own.isWhole };
      }),
    }));
    const most = Math.max(
      ...rows.flatMap((row) => row.days.map(({ tally }) => tally.value.toNumber())),
      1e-9,
    );
    body.push(
      `<g font-weight="bold">${label(say(language, "{component}, {unit}", { component: heading, unit: say(language, unit) }), 0, y + 16)}</g>`,
    );
    y += 26;
    for (const row of rows) {
      body.push(
        label(row.name, 0, y + BAR + 12),
        rule(NAME, y + BAR + 16, NAME + DAY * days.length, y + BAR + 16),
      );
      row.days.forEach(({ tally, isOpen, shown, status, isWhole }, i) => {
        const x = NAME + DAY * i + 8;
        const height = place((BAR * tally.value.toNumber()) / most);
        const top = y + BAR + 16 - height;
        const fill = isWhole
          ? isOpen
            ? `fill="url(#${id}-hatch)" stroke="currentColor"`
            : ""
          : 'fill="none" stroke="currentColor" stroke-dasharray="3 2"';
        if (status === "away") {
          body.push(label(say(language, "away"), x + (DAY - 16) / 2, y + BAR + 12, "middle"));
          return;
        }
        body.push(
          `<rect x="${x}" y="${place(top)}" width="${DAY - 16}" height="${height}" ${fill}/>`,
          `<g font-size="11">${label(shown, x + (DAY - 16) / 2, top - 3, "middle")}</g>`,
        );
      });
      words.push(
        say(language, "{component}: {person}: {days}.", {
          component: heading,
          person: row.name,
          days: row.days
            .map(({ day, figure, status, isWhole }) => {
              const gaps = { day: day.name, figure };
              if (status === "away") return say(language, "{day} away", gaps);
              return say(language, isWhole ? "{day} {figure}" : "{day} {figure}, not the whole day", gaps);
            })
            .join(", "),
        }),
      );
      y += ROW;
    }
    days.forEach((day, i) => {
      body.push(label(day.name, NAME + DAY * (i + 0.5), y + 4, "middle"));
    });
    y += 22;
  }
  const title = say(language, "By day and person: {components}", {
    components: ids.map((of) => say(language, components[of].name)).join(", "),
  });
  return drawing(
    { id, title, words: [...words, ...legend(marks, language)].join(" ") },
    { width: NAME + DAY * days.length, height: y },
    body,
  );
}
