import type { Shows } from "../cook/schedule.ts";
import type { DishServing } from "../cook/served.ts";
import { settledAmount } from "../cook/settledAmount.ts";
import { type Language, say } from "../document/language.ts";
import { lineAmount } from "../plan/lineAmount.ts";
import type { Sheet } from "../sheet/sheet.ts";
import { stated } from "../sheet/stated.ts";
import { figureCell } from "./figure.ts";
import { type ScheduleNames, where } from "./scheduleShows.ts";
import { type Cell, type Table, table } from "./table.ts";

/** What is cooked for one person alone, and what everyone is served each time. */
export function servedTables(shows: Shows, names: ScheduleNames, language: Language): readonly Table[] {
  const apart = shows.sessions.some((session) => session.apart.length > 0);
  return [
    ...(apart ? [apartTable(shows, names, language)] : []),
    ...(shows.servings.length === 0 ? [] : [servingTable(shows, names, language)]),
  ];
}

function apartTable({ days, sessions }: Shows, names: ScheduleNames, language: Language): Table {
  const dated = days.length > 0;
  return table({
    title: say(language, "Cooked for one person alone"),
    columns: [
      ...where(dated, "day", say(language, "Day")),
      { key: "dish", heading: say(language, "Dish") },
      { key: "person", heading: say(language, "Person") },
      { key: "lines", heading: say(language, "What goes in") },
    ],
    rows: sessions.flatMap((session) =>
      session.apart.map(({ person, sheet }) => [
        ...(dated ? [names.day(session.day)] : []),
        names.cooked(session),
        names.person(person),
        linesText(sheet, language),
      ]),
    ),
  });
}

function servingTable({ days, servings }: Shows, names: ScheduleNames, language: Language): Table {
  const dated = days.length > 0;
  const byVolume = servings.some(({ portion }) => portion.millilitres !== undefined);
  const added = servings.some((each) => each.added !== undefined);
  return table({
    title: say(language, "At serving, each time"),
    columns: [
      { key: "dish", heading: say(language, "Dish") },
      { key: "person", heading: say(language, "Person") },
      ...where(dated, "days", say(language, "Days")),
      { key: "portions", heading: say(language, "Portions"), align: "end" },
      { key: "grams", heading: say(language, "From the pot"), align: "end" },
      ...where(byVolume, "millilitres", say(language, "By volume"), true),
      ...where(added, "added", say(language, "Added")),
    ],
    rows: servings.map((each): Cell[] => [
      names.dish(each),
      names.person(each.person),
      ...(dated ? [names.days(each.days)] : []),
      figureCell(each.count, { language }),
      ...shareCells(each, byVolume, language),
      ...(added ? [each.added ? linesText(each.added, language) : ""] : []),
    ]),
  });
}

function shareCells({ portion }: DishServing, byVolume: boolean, language: Language): readonly Cell[] {
  const { pot, millilitres } = portion;
  if (!pot) return byVolume ? ["", ""] : [""];
  const volume = millilitres ? figureCell(millilitres, { unit: "ml", language }) : "";
  return byVolume ? [massCell(portion, language), volume] : [massCell(portion, language)];
}

/** As the scale shows it where it is weighed out: never rounded again. */
function massCell(
  { pot, grams: exactGrams, weighed, isRest }: DishServing["portion"],
  language: Language,
): Cell {
  const grams = figureCell(exactGrams, { unit: "g", language });
  if (isRest) return say(language, "the rest ({grams})", { grams: grams.text });
  if (!weighed) return grams;
  const read = settledAmount(weighed, pot?.sheet.origin.measures, language);
  return weighed.unit === "g" ? { ...grams, text: read } : `${read} (${grams.text})`;
}

function linesText(s: Sheet, language: Language): string {
  return s.lines
    .map((line, i) => `${stated(line.name, line.state, language)} ${lineAmount(s, i, language)}`)
    .join("; ");
}
