import type { CookedBatch } from "../cook/madeBatch.ts";
import type { CookingNote } from "../cook/notes.ts";
import type { CookingSchedule } from "../cook/schedule.ts";
import type { DishServing } from "../cook/served.ts";
import type { CookedPot, CookingSession } from "../cook/session.ts";
import { type Exact, fraction, ONE, over, sum } from "../number/exact.ts";
import type { Sheet } from "../sheet/sheet.ts";
import { lineColumns, type Whose, writtenRows } from "./sheetRecords.ts";
import { pointRow } from "./tallyRow.ts";
import type { Asked, Tidy, TidyRow } from "./tidy.ts";
import { tidyOf } from "./tidyOf.ts";
import type { WantedRows } from "./wanted.ts";

/** Columns of a schedule's records beside those of every result. */
const OWN: readonly string[] = [...lineColumns, "pot", "times", "eatenOn", "step", "code", "text"];

/**
 * What each line is weighed out for, in grams and as written: a `pot`, each of its runs (`run`), what was
 * planned of a pot that a kitchen measures (`planned`), what is cooked for one person alone (`apart`), what
 * is added to a portion (`serving`); of nested recipes what is made (`batch`), taken (`draw`) and `left`; and the share of the pot in a portion as cooked (`share`), which belongs
 * to no line. `times` is how often: amounts times `times` of pots, apart and servings add up to all portions.
 * How many portions and runs, each step of the method (`step`), and what the cook should know (`note`).
 */
export function scheduleTidy(schedule: CookingSchedule, asked: Asked): Tidy {
  return tidyOf(asked, OWN, (want) => scheduleRows(schedule, want), ["portions", "runs"]);
}

function* scheduleRows(
  { batches, sessions, servings, notes }: CookingSchedule,
  want: WantedRows,
): Generator<TidyRow> {
  for (const batch of batches) yield* batchRows(batch, want);
  for (const session of sessions) yield* cookedRows(session, want);
  for (const serving of servings) yield* servedRows(serving, want);
  for (const note of notes) yield* noteRows(note);
}

/** A nested recipe as it is made, what each draw takes of it, and what is left. */
function* batchRows({ day, recipe, sheet, draws, left }: CookedBatch, want: WantedRows): Generator<TidyRow> {
  const whose: Whose = { day, dish: recipe, sheet: sheet.name, what: "batch", own: { times: ONE } };
  for (const i of sheet.lines.keys()) yield* writtenRows(sheet, i, whose, want);
  const named = { ...whose, own: { times: ONE, name: sheet.name } };
  yield { ...named, row: "total", component: "mass", ...pointRow(sheet.masses.cooked, "g") };
  yield { ...named, row: "total", component: "portions", ...pointRow(sheet.values.portions, "") };
  for (const { meal, dish, recipe: into, person, day: on, grams } of draws) {
    const at = { day: on, meal, dish: dish ?? into, person, sheet: sheet.name };
    yield { ...at, row: "total", what: "draw", component: "mass", ...pointRow(grams, "g") };
  }
  yield { ...named, row: "total", what: "left", component: "mass", ...pointRow(left, "g") };
}

function* cookedRows(
  { day, meal, dish, eaten, pots, apart }: CookingSession,
  want: WantedRows,
): Generator<TidyRow> {
  const at = { day, meal, dish };
  const rows = function* (s: Sheet, what: string, times: Exact, more: TidyRow): Generator<TidyRow> {
    const whose: Whose = { ...at, sheet: s.name, what, person: more.person, own: { ...more.own, times } };
    for (const i of s.lines.keys()) yield* writtenRows(s, i, whose, want);
    yield { ...whose, row: "total", component: "mass", ...pointRow(s.masses.cooked, "g") };
  };
  for (const pot of pots) {
    const { number, sheet, exact, runs } = pot;
    const own = { own: { pot: String(number), eatenOn: eaten.join(", ") } };
    yield* rows(sheet, "pot", ONE, own);
    if (exact !== sheet) yield* rows(exact, "planned", ONE, own);
    for (const run of runs) yield* rows(run.sheet, "run", run.count, own);
    yield* potRows({ ...at, sheet: sheet.name, what: "pot", ...own }, pot);
  }
  for (const { person, sheet } of apart) yield* rows(sheet, "apart", ONE, { person });
}

/** How many portions of whom, how many runs, and how to make one. */
function* potRows(head: TidyRow, pot: CookedPot): Generator<TidyRow> {
  const { sheet, people, vessel, runs } = pot;
  yield { ...head, row: "total", component: "portions", ...pointRow(sheet.values.portions, "") };
  for (const { person, count: own } of people)
    yield { ...head, person, row: "portions", component: "portions", ...pointRow(own, "") };
  const count = sum(runs.map((run) => run.count));
  const isKnown = vessel !== undefined && vessel.fit !== "not-known";
  if (vessel)
    yield {
      ...head,
      row: "total",
      component: "runs",
      ...(isKnown ? pointRow(count, "") : { unit: "", bound: "unknown" }),
    };
  for (const [i, text] of pot.steps().steps.entries())
    yield { ...head, what: "step", own: { ...head.own, step: String(i + 1), text } };
}

function* servedRows(
  { meal, dish, person, days, count, portion, added }: DishServing,
  want: WantedRows,
): Generator<TidyRow> {
  const own = { times: over(count, fraction(BigInt(Math.max(1, days.length)))) };
  for (const day of days.length === 0 ? [undefined] : days) {
    const whose = { day, meal, dish, person, own };
    if (portion.pot)
      yield {
        ...whose,
        row: "portion",
        what: "share",
        component: "mass",
        ...pointRow(portion.grams, "g"),
      };
    if (added)
      for (const i of added.lines.keys())
        yield* writtenRows(added, i, { ...whose, sheet: added.name, what: "serving" }, want);
  }
}

function* noteRows({ code, days, meal, dish, recipe, text, source }: CookingNote): Generator<TidyRow> {
  for (const day of days.length === 0 ? [undefined] : days)
    yield { day, meal, dish: dish ?? recipe, what: "note", source, own: { code, text } };
}
