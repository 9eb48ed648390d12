import type { CookedBatch } from "../cook/madeBatch.ts";
import { costNotes, measuredNotes, OF_A_POT, type SpokenNote } from "../cook/notes.ts";
import type { DishPot, DishSession } from "../cook/session.ts";
import type { CookingRun } from "../cook/vessel.ts";
import { type Language, say } from "../document/language.ts";
import { showFigure } from "../measure/showFigure.ts";
import { lineAmount, purchasedGrams } from "../plan/lineAmount.ts";
import { measuresNote, stated } from "../sheet/stated.ts";
import { figureCell } from "./figure.ts";
import { type ScheduleNames, where } from "./scheduleShows.ts";
import { type Table, table } from "./table.ts";

/** Each pot of a session line by line, and how to make it. */
export function sessionPotTables(
  session: DishSession,
  names: ScheduleNames,
  language: Language,
): readonly Table[] {
  return session.pots.flatMap((pot) => {
    const title = titleOf(session, pot, names, language);
    return [amountsTable(pot, measuredNotes(pot), title, language), stepsTable(pot, title, language)];
  });
}

/** Each batch of a nested recipe line by line, how to make it, and what takes of it. */
export function batchTables(batch: CookedBatch, names: ScheduleNames, language: Language): readonly Table[] {
  const { day, name } = batch;
  const title =
    day === undefined ? name : say(language, "{day}: {dish}", { day: names.day(day), dish: name });
  return [
    amountsTable(batch, costNotes(batch, batch.exact), title, language),
    stepsTable(batch, title, language),
    drawsTable(batch, names, title, language),
  ];
}

function drawsTable(
  { draws, left }: CookedBatch,
  names: ScheduleNames,
  title: string,
  language: Language,
): Table {
  const dated = draws.some(({ day }) => day !== undefined);
  const grams = (value: CookedBatch["left"]) => figureCell(value, { unit: "g", language });
  const dishOf = ({ meal, dish, recipe }: CookedBatch["draws"][number]): string =>
    recipe === undefined ? names.named({ meal: meal ?? "", dish: dish ?? "" }) : names.recipe(recipe);
  const rest = [...(dated ? [""] : []), say(language, "left over"), "", grams(left)];
  return table({
    title: say(language, "{name}: what it is for", { name: title }),
    columns: [
      ...where(dated, "day", say(language, "Day")),
      { key: "dish", heading: say(language, "Dish") },
      { key: "person", heading: say(language, "Person") },
      { key: "grams", heading: say(language, "Take"), align: "end" },
    ],
    rows: [
      ...draws.map((draw) => [
        ...(dated ? [names.day(draw.day)] : []),
        dishOf(draw),
        draw.person === undefined ? "" : names.person(draw.person),
        grams(draw.grams),
      ]),
      ...(left.n === 0n ? [] : [{ kind: "total" as const, cells: rest }]),
    ],
  });
}

function titleOf(
  session: DishSession,
  { number, people }: DishPot,
  names: ScheduleNames,
  language: Language,
): string {
  const { day } = session;
  const dish = names.cooked(session);
  const name = day === undefined ? dish : say(language, "{day}: {dish}", { day: names.day(day), dish });
  if (session.made().dish.pots.length === 1) return name;
  const eaters = people.map(({ person }) => names.person(person)).join(", ");
  const gaps = { number: String(number), people: eaters };
  const known = session.made().dish.knownTo(people.map(({ person }) => person)).name;
  return known === names.named(session)
    ? say(language, "{name}: pot {number}, for {people}", { ...gaps, name })
    : say(language, "{name}: pot {number}, {version}, for {people}", { ...gaps, name, version: known });
}

type Made = Pick<CookedBatch, "sheet" | "runs" | "measured" | "steps">;

function amountsTable(pot: Made, cost: readonly SpokenNote[], title: string, language: Language): Table {
  const { sheet: s, runs } = pot;
  const parted = runs.some(({ sheet }) => sheet !== s) ? runs : [];
  const sheets = [s, ...parted.map(({ sheet }) => sheet)];
  // What each run measures in several spoons nobody measures for all of them at once.
  const isSummed = (key: string, i: number): boolean =>
    pot.measured.includes(key) &&
    !purchasedGrams(s, i) &&
    parted.some(({ sheet }) => sheet.lines[i]?.amount.parts !== undefined);
  const rows = s.lines.map((line, i) => [
    stated(line.name, line.state, language),
    ...sheets.map((each) =>
      each === s && isSummed(line.key, i)
        ? figureCell(line.grams, { unit: "g", language })
        : lineAmount(each, i, language),
    ),
  ]);
  const cooked = sheets.map(({ masses }) => figureCell(masses.cooked, { unit: "g", language }));
  return table({
    title,
    columns: [
      { key: "line", heading: say(language, "Line") },
      { key: "all", heading: say(language, "In all"), align: "end" },
      ...parted.map((run, i) => ({
        key: i === 0 ? "run" : "rest",
        heading: runHeading(run, i, parted.length > 1, language),
        align: "end" as const,
      })),
    ],
    rows: [...rows, { kind: "total", cells: [say(language, "as cooked"), ...cooked] }],
    notes: [
      ...measuresNote(
        sheets.flatMap(({ values }) => values.amounts),
        language,
      ),
      ...cost
        .filter(({ code }) => OF_A_POT.has(code))
        .map(({ phrase, gaps }) => say(language, phrase, gaps?.(language))),
    ],
  });
}

function runHeading(
  { count: exactCount }: CookingRun,
  at: number,
  full: boolean,
  language: Language,
): string {
  if (at > 0) return say(language, "The rest");
  const count = showFigure(exactCount, { language });
  if (!full) return say(language, "Each of {count} runs", { count });
  return exactCount.eq(1)
    ? say(language, "The full run")
    : say(language, "Each of {count} full runs", { count });
}

function stepsTable(pot: Made, title: string, language: Language): Table {
  const { by, steps, unnamed, atServing, apart } = pot.steps(language);
  const several = pot.runs.some(({ count }) => count.gt(1)) || pot.runs.length > 1;
  const listed = (phrase: string, lines: readonly string[]): readonly string[] =>
    lines.length === 0 ? [] : [say(language, phrase, { lines: lines.join("; ") })];
  return table({
    title: say(language, by === "recipe" ? "{name}: method" : "{name}: in what order", { name: title }),
    columns: [
      { key: "step", heading: say(language, "Step"), align: "end" },
      { key: "what", heading: by === "recipe" ? say(language, "What to do") : say(language, "What goes in") },
    ],
    rows: steps.map((step, i) => [String(i + 1), step]),
    notes: [
      ...(several ? [say(language, pot.runs.length > 1 ? FULL_RUN : ONE_RUN)] : []),
      ...(by === "recipe" ? [] : [say(language, ORDER)]),
      ...listed("Not named in the method: {lines}", unnamed),
      ...listed("Left for serving: {lines}", atServing),
      ...listed("Weighed out for each person: {lines}", apart),
    ],
  });
}

const ONE_RUN = "amounts are those of one run";
const FULL_RUN = "amounts are those of one full run";
const ORDER =
  "the recipe has no method: what is dry and small goes in before what is bulky, or it clings to the sides (common practice, no source)";
