import { OF_A_POT } from "../cook/notes.ts";
import type { CookingSchedule, Shows } from "../cook/schedule.ts";
import type { DishPot } from "../cook/session.ts";
import { type Language, say } from "../document/language.ts";
import { sum } from "../number/exact.ts";
import { figureCell } from "./figure.ts";
import { isAsked, type Parts, type SchedulePart } from "./parts.ts";
import { type ScheduleNames, where } from "./scheduleShows.ts";
import { servedTables } from "./servedTables.ts";
import { batchTables, sessionPotTables } from "./sessionPotTables.ts";
import { type Cell, type Table, table } from "./table.ts";

/** What is made first and when, each batch and pot, what everyone is served, and what to heed. */
export function scheduleTables(
  schedule: CookingSchedule,
  language: Language,
  _most?: number,
  parts: Parts = "all",
): readonly Table[] {
  const asked: Parts = parts === "summary" ? "all" : parts;
  const has = (part: SchedulePart): boolean => isAsked(asked, part);
  const shows = schedule.shows(language);
  const names = namesIn(shows, language);
  return [
    ...(has("order") && shows.batches.length > 0 ? [aheadTable(shows, names, language)] : []),
    ...(has("order") ? [whenTable(shows, names, language)] : []),
    ...(has("batches") ? shows.batches.flatMap((batch) => batchTables(batch, names, language)) : []),
    ...(has("pots") ? shows.sessions.flatMap((session) => sessionPotTables(session, names, language)) : []),
    ...(has("servings") ? servedTables(shows, names, language) : []),
    ...(has("notes") ? heedTables(shows, names, language) : []),
  ];
}

/** What has to be there before the first pot is cooked. */
function aheadTable({ days, batches }: Shows, names: ScheduleNames, language: Language): Table {
  const dated = days.length > 0;
  return table({
    title: say(language, "Made first"),
    columns: [
      ...where(dated, "day", say(language, "Day")),
      { key: "recipe", heading: say(language, "Recipe") },
      { key: "portions", heading: say(language, "Portions"), align: "end" },
      { key: "made", heading: say(language, "As made"), align: "end" },
      { key: "left", heading: say(language, "Left over"), align: "end" },
    ],
    rows: batches.map(({ day, name, sheet: s, left }): Cell[] => [
      ...(dated ? [names.day(day)] : []),
      name,
      figureCell(s.values.portions, { language }),
      figureCell(s.masses.cooked, { unit: "g", language }),
      left.n === 0n ? "" : figureCell(left, { unit: "g", language }),
    ]),
  });
}

/** What everything of a schedule is called. */
function namesIn({ plan: { people, meals, days }, batches }: Shows, language: Language): ScheduleNames {
  const recipes = new Map(batches.map(({ recipe, name }) => [recipe, name]));
  const persons = new Map(people.map(({ id, name }) => [id, name]));
  const dated = new Map(days.map(({ id, name }) => [id, name]));
  const titles = new Map(meals.map((meal) => [meal.id, meal]));
  const day = (id: string | undefined): string => (id === undefined ? "" : (dated.get(id) ?? id));
  const titled = (
    title: string,
    { meal, dish }: { readonly meal: string; readonly dish: string },
  ): string => {
    const { dishes, id, own } = titles.get(meal) ?? {};
    const isMenu = own?.id !== id;
    return dishes && (isMenu || dishes.size > 1)
      ? say(language, "{meal}: {dish}", { meal: title, dish: dishes.get(dish)?.batch.name ?? dish })
      : title;
  };
  const named = ({ meal, dish }: { readonly meal: string; readonly dish: string }): string =>
    titles.get(meal)?.dishes.get(dish)?.batch.name ?? dish;
  return {
    day,
    days: (ids) => ids.map(day).join(", "),
    person: (id) => persons.get(id) ?? id,
    meal: (id) => titles.get(id)?.name ?? id,
    recipe: (id) => recipes.get(id) ?? id,
    dish: (of) => titled(titles.get(of.meal)?.name ?? of.meal, of),
    cooked: ({ meals: all, ...of }) => {
      return all.length > 1 ? named(of) : titled(titles.get(of.meal)?.own.name ?? of.meal, of);
    },
    named,
  };
}

function whenTable({ days, sessions }: Shows, names: ScheduleNames, language: Language): Table {
  const dated = days.length > 0;
  const numbered = sessions.some((session) => session.made().dish.pots.length > 1);
  const inVessels = sessions.some(({ pots }) => pots.some(({ vessel }) => vessel !== undefined));
  const rows = sessions.flatMap((session) =>
    session.pots.map((pot): Cell[] => [
      ...(dated ? [names.day(session.day)] : []),
      names.cooked(session),
      ...(numbered ? [String(pot.number)] : []),
      figureCell(pot.sheet.values.portions, { language }),
      ...(dated ? [names.days(session.eaten)] : []),
      figureCell(pot.sheet.masses.cooked, { unit: "g", language }),
      ...(inVessels ? [runsText(pot, language)] : []),
    ]),
  );
  return table({
    title: say(language, "What is cooked"),
    columns: [
      ...where(dated, "day", say(language, "Day")),
      { key: "dish", heading: say(language, "Dish") },
      ...where(numbered, "pot", say(language, "Pot"), true),
      { key: "portions", heading: say(language, "Portions"), align: "end" },
      ...where(dated, "eaten", say(language, "Eaten on")),
      { key: "cooked", heading: say(language, "As cooked"), align: "end" },
      ...where(inVessels, "runs", say(language, "Runs"), true),
    ],
    rows,
    notes: rows.length === 0 ? [say(language, "nothing is cooked")] : [],
  });
}

/** How many runs; unknown where nothing says how much room the pot takes. */
function runsText({ vessel, runs }: DishPot, language: Language): Cell {
  if (!vessel) return "";
  if (vessel.fit === "not-known") return figureCell(null, { language });
  return figureCell(sum(runs.map(({ count }) => count)), { language });
}

function heedTables({ days, notes: all }: Shows, names: ScheduleNames, language: Language): readonly Table[] {
  const notes = all.filter(({ code }) => !OF_A_POT.has(code));
  if (notes.length === 0) return [];
  const dated = days.length > 0;
  const sourced = notes.some(({ source }) => source !== undefined);
  return [
    table({
      title: say(language, "Cautions"),
      columns: [
        ...where(dated, "day", say(language, "Day")),
        { key: "dish", heading: say(language, "Dish") },
        { key: "note", heading: say(language, "Note") },
        ...where(sourced, "source", say(language, "Source")),
      ],
      rows: notes.map(({ days: on, meal = "", dish, recipe, text, source }) => [
        ...(dated ? [names.days(on)] : []),
        recipe !== undefined
          ? names.recipe(recipe)
          : dish === undefined
            ? names.meal(meal)
            : names.dish({ meal, dish }),
        text,
        ...(sourced ? [source ?? ""] : []),
      ]),
    }),
  ];
}
