import { type Fraction, fraction, ONE, over } from "../../number/fraction.ts";
import type { Sheet } from "../../sheet/sheet.ts";
import { figure } from "../../table/figure.ts";
import { type Cell, type Table, table } from "../../table/table.ts";
import type { CookingSchedule } from "./schedule.ts";
import type { DishServing } from "./served.ts";
import type { CookingSession } from "./session.ts";

/**
 * One row for each line and what it is weighed out for, in grams: a `pot`, each of its runs (`run`),
 * what was planned of a pot that a kitchen measures (`planned`), what is cooked for one person alone (`apart`), what is added to a portion (`serving`); and the share
 * of the pot in a portion as cooked (`share`), which belongs to no line. `times` is how often: amounts
 * times `times` of pots, apart and servings add up to all portions.
 */
export function scheduleRows({ sessions, servings }: CookingSchedule): Table {
  const keys = ["day", "meal", "dish", "pot", "person", "what", "line", "amount", "unit", "times"];
  const figures = ["amount", "times"];
  return table({
    columns: keys.map((key) => ({ key, heading: key, align: figures.includes(key) ? "end" : "start" })),
    rows: [...sessions.flatMap(cookedRows), ...servings.flatMap(servedRows)],
  });
}

function cookedRows({ day = "", meal, dish, pots, apart }: CookingSession): Cell[][] {
  const rows = (s: Sheet, what: string, times: Fraction, pot: string, person: string): Cell[][] =>
    s.lines.map(({ key, grams }) => [
      ...[day, meal, dish, pot, person, what, key],
      figure(grams),
      "g",
      figure(times),
    ]);
  return [
    ...pots.flatMap(({ number, sheet, exact, runs }) => [
      ...rows(sheet, "pot", ONE, String(number), ""),
      ...(exact === sheet ? [] : rows(exact, "planned", ONE, String(number), "")),
      ...runs.flatMap((run) => rows(run.sheet, "run", run.count, String(number), "")),
    ]),
    ...apart.flatMap(({ person, sheet }) => rows(sheet, "apart", ONE, "", person)),
  ];
}

function servedRows({ meal, dish, person, days, count, portion, added }: DishServing): Cell[][] {
  const times = figure(over(count, fraction(BigInt(Math.max(1, days.length)))));
  const lines = (added?.lines ?? []).map(({ key, grams }) => ["serving", key, figure(grams)]);
  const share = portion.pot ? [["share", "", figure(portion.grams)]] : [];
  return (days.length === 0 ? [""] : days).flatMap((day) =>
    [...share, ...lines].map((own): Cell[] => [day, meal, dish, "", person, ...own, "g", times]),
  );
}
