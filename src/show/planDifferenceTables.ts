import { type Language, say } from "../document/language.ts";
import { components } from "../food/components.ts";
import type { InAndOut, PlanDifference } from "../shop/planDifference.ts";
import { figureCell } from "./figure.ts";
import { changeRows, OF_CHANGES, shoppingDifferenceTables } from "./shoppingDifferenceTables.ts";
import { type Cell, type Table, table } from "./table.ts";
import { tallyFigure } from "./tallyFigure.ts";
import { pointRow, tallyRow } from "./tallyRow.ts";
import type { Asked, Tidy, TidyRow } from "./tidy.ts";
import { tidyOf } from "./tidyOf.ts";
import type { WantedRows } from "./wanted.ts";

/** Who and what came and went, what is served otherwise, means that moved, and what is bought otherwise. */
export function planDifferenceTables(d: PlanDifference, language: Language): readonly Table[] {
  return [
    ...cameAndWent(d, language),
    ...served(d, language),
    ...means(d, language),
    ...shoppingDifferenceTables(d.shopping, language),
  ];
}

const BEFORE_AND_NOW = [
  { key: "before", heading: "Before" },
  { key: "now", heading: "Now" },
] as const;

function compared(language: Language) {
  return BEFORE_AND_NOW.map(({ key, heading }) => ({
    key,
    heading: say(language, heading),
    align: "end" as const,
  }));
}

function cameAndWent(d: PlanDifference, language: Language): readonly Table[] {
  const { person, meal, dish } = d.names();
  const row = (what: string, { in: came, out }: InAndOut, name: (id: string) => string): Cell[][] =>
    came.length + out.length === 0 ? [] : [[what, came.map(name).join("; "), out.map(name).join("; ")]];
  const rows = [
    ...row(say(language, "People"), d.people, person),
    ...row(say(language, "Meals"), d.meals, meal),
    ...d.dishes.flatMap((each) => row(meal(each.meal), each, (name) => dish(each.meal, name))),
  ];
  if (rows.length === 0) return [];
  return [
    table({
      title: say(language, "What came and what went"),
      columns: [
        { key: "what", heading: say(language, "What") },
        { key: "in", heading: say(language, "Came") },
        { key: "out", heading: say(language, "Went") },
      ],
      rows,
    }),
  ];
}

function served(d: PlanDifference, language: Language): readonly Table[] {
  const { amounts } = d;
  if (amounts.length === 0) return [];
  const { person, meal, dish } = d.names();
  const grams = (value: (typeof amounts)[number]["before"]) => figureCell(value, { unit: "g", language });
  return [
    table({
      title: say(language, "Served otherwise"),
      columns: [
        { key: "person", heading: say(language, "Person") },
        { key: "meal", heading: say(language, "Meal") },
        { key: "dish", heading: say(language, "Dish") },
        { key: "line", heading: say(language, "Line") },
        ...compared(language),
      ],
      rows: amounts.map(({ name, ...each }) => [
        person(each.person),
        meal(each.meal),
        dish(each.meal, each.dish),
        say(language, name),
        grams(each.before),
        grams(each.after),
      ]),
    }),
  ];
}

function means(d: PlanDifference, language: Language): readonly Table[] {
  if (d.means.length === 0) return [];
  const { person } = d.names();
  return [
    table({
      title: say(language, "A day on the mean"),
      columns: [
        { key: "person", heading: say(language, "Person") },
        { key: "component", heading: say(language, "Component") },
        { key: "unit", heading: say(language, "Unit") },
        ...compared(language),
      ],
      rows: d.means.map(({ component, before, after, ...own }) => [
        person(own.person),
        say(language, components[component].name),
        components[component].unit,
        tallyFigure(before, { language }),
        tallyFigure(after, { language }),
      ]),
    }),
  ];
}

/** Of each amount and mean that moved a row `before` and one `after`; then those of what is bought otherwise. */
export function planDifferenceTidy(d: PlanDifference, asked: Asked): Tidy {
  return tidyOf(asked, OF_CHANGES, (want) => rowsOf(d, want));
}

function* rowsOf(d: PlanDifference, want: WantedRows): Generator<TidyRow> {
  const { amounts, means: moved } = d;
  for (const { person, meal, dish, line, name, before, after } of want.has("mass") ? amounts : []) {
    const head: TidyRow = { person, meal, dish, line, row: "line", component: "mass", own: { name } };
    yield { ...head, what: "before", ...pointRow(before, "g") };
    yield { ...head, what: "after", ...pointRow(after, "g") };
  }
  for (const { person, component, before, after } of moved) {
    if (!want.has(component)) continue;
    const head: TidyRow = { person, row: "mean", component };
    yield { ...head, what: "before", ...tallyRow(before) };
    yield { ...head, what: "after", ...tallyRow(after) };
  }
  if (want.has("mass")) yield* changeRows(d.shopping);
}
