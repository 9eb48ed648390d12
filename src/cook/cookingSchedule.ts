import type { Plan } from "../plan/planned.ts";
import type { ScheduleOptions } from "./input.ts";
import { readSchedule } from "./read.ts";
import { CookingSchedule } from "./schedule.ts";

export type { ScheduledDrift } from "./dayDrift.ts";
export type { BatchDraw } from "./draw.ts";
export type { MealSchedule, RunsOptions, ScheduleOptions, Vessel } from "./input.ts";
export type { CookedBatch } from "./madeBatch.ts";
export type { PersonDrift } from "./measuring.ts";
export type { CookingNote, CookingNoteCode } from "./notes.ts";
export { CookingSchedule } from "./schedule.ts";
export type { DishServing } from "./served.ts";
export type { CookedApart, CookedPot, CookingSession, PersonPortions } from "./session.ts";
export type { CookingSteps } from "./steps.ts";
export type { CookingRun, VesselFit, VesselUse } from "./vessel.ts";

/**
 * The cook's side of a plan: on which days its pots are cooked and for how many portions, in how many
 * runs where a vessel is too small, how to make each with the amounts in place, and what is added to
 * each portion when it is served.
 *
 * A meal is eaten on each of its days by everyone who is not away, be it for the whole day, for this
 * meal, or because the plan has them away from it altogether. What is cooked on a day is for all that is
 * eaten from then until it is cooked again. Without days everything is cooked at once.
 *
 * Amounts are exact: over all sessions and servings they are the sum of all portions, and the runs of a
 * pot are the pot. Where the plan has a kitchen, each run is brought to amounts that it can measure, as
 * the plan brings a pot, and portions are shared out of it in steps of the scale; so what is cooked is
 * what is served and bought, if not quite what was planned. Firm demands hold. Each pot keeps its exact
 * amounts (`exact`) and tells which line moved most (`drift`), each session what that does to everyone's
 * demands (`drifts`). A day on which everyone takes one portion is the plan's own pot.
 *
 * Nested recipes are made first (`batches`), each once for every dish and day that draws on it until it is
 * made again, and until it keeps no longer where its recipe gives days. What is made of one is what is drawn
 * and what is left of it, literally; where a kitchen measures it, it is rounded up, dishes take no more than
 * there is, and portions tell what that does to them.
 *
 * How long food keeps, and how it is cooled and reheated, is told in the recipe's own words and never
 * made up: a recipe's note on storage may give a number of days, beyond which its portions are reported.
 * Where it gives none, follow local food-safety rules.
 *
 * Throws one error with every fault: `schedule-malformed` (no plan; days, people, meals and dishes that
 * are not known; a meal eaten before it is first cooked), and the codes of amounts and numbers.
 *
 * @example
 * ```ts
 * const soup = sheet(
 *   {
 *     name: "Lentil soup",
 *     portions: 4,
 *     lines: [
 *       { key: "lentils", food: "lentils-red-dry", amount: "300 g" },
 *       { key: "water", food: "water-tap", amount: "1.2 kg" },
 *     ],
 *     method: ["Simmer {lentils} in {water} until soft."],
 *     notes: [{ kind: "storage", text: "Keeps 2 days in the cold.", source: "club kitchen rules", days: 2 }],
 *   },
 *   starterFoods,
 * );
 * const plan = portionPlan({
 *   meals: [{ id: "supper", dishes: { soup: { sheet: soup, density: "1.05" } } }],
 *   people: [{ id: "cox" }, { id: "bow", demands: { factor: 2 } }],
 * });
 * const schedule = cookingSchedule(plan, {
 *   days: ["Sun", "Mon", "Tue", "Wed", "Thu"],
 *   cook: ["Sun", "Wed"],
 *   away: { bow: ["Tue"] },
 *   meals: { supper: { vessel: "2 l" } },
 * });
 * const [sunday] = schedule.sessions;
 * const [run] = sunday.pots[0].runs;
 * console.log(`${sunday.day}: ${run.count} × ${run.sheet.mass.raw.toFixed(1)} g`); // => Sun: 2 × 1312.5 g
 * console.log(sunday.pots[0].steps().steps); // => [ 'Simmer 263 g lentils in 1050 g water until soft.' ]
 * console.log(schedule.notes.map(({ code }) => code)); // => [ 'several-runs', 'storage', 'several-runs' ]
 * ```
 */
export function cookingSchedule(plan: Plan, how: ScheduleOptions = {}): CookingSchedule {
  return new CookingSchedule(plan, readSchedule(plan, how));
}
