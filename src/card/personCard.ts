import type { CookingSchedule } from "../cook/schedule.ts";
import { readLanguage } from "../document/readLanguage.ts";
import type { Plan } from "../plan/plan.ts";
import { cardOf } from "./content.ts";
import { checkCard } from "./given.ts";
import type { CardOptions } from "./how.ts";
import { cardHtml } from "./html.ts";

export type { CardAbout, CardCaution, CardDay, CardDayFigure, CardOptions, CookCardOptions } from "./how.ts";
export { cardPages, cookCard, type PagesOptions } from "./pages.ts";

/**
 * A person's card, to hang on a kitchen wall: one page of HTML that needs no script and no network.
 * Allergens stand under the name. For each meal it says what to take of a pot that a cook makes for several,
 * and what to add; of a pot of their own how much goes in, and the method with amounts in place. Spoons come
 * first for spoonfuls, grams only where the kitchen's scale can show them. Of a schedule it says what is taken
 * as it is cooked, as the cook's page does; of several days a line or two for each dish. Then what the portion
 * brings, against the person's day where one is given, on one axis; and what to take care of. Sources are
 * folded away on a screen. It follows the reader's choice of light and dark, is read by screen readers, and
 * prints on one side of A4 or A5, with the sources on a second: type goes down to 10.5 points (7.4 on A5) as a
 * card grows, after that it goes on to another side.
 *
 * Where the plan knows the `person`, their day and their cautions come from there unless they are
 * given here.
 *
 * Nothing of the person's body stands on it unless `about` gives it. Cautions that give away age or
 * health, and what the person avoids, stay off unless `personal` says `"show"`; which allergens a
 * portion holds, and of which foods they are not known, stands on every card. Shares of a day can
 * still tell of a body: who knows that a reference is so much per kilogram can reckon back, and energy
 * follows size. A day that comes from the plan leaves out figures per kilogram; give a `day` of your own,
 * or an empty one, where more matters.
 *
 * Amounts and figures are rounded to be read; the plan has them exactly. Texts from outside show as
 * they were written and do nothing else.
 *
 * Throws `plan-malformed` for a person or meal that the plan lacks, `card-malformed`,
 * `component-unknown`, and the number codes for figures of `day`, all at once.
 *
 * @example
 * ```ts
 * const porridge = sheet(
 *   {
 *     name: "Porridge",
 *     portions: 1,
 *     lines: [{ key: "oats", food: "oats-rolled-dry", amount: "60 g" }],
 *     method: ["Simmer {oats} in plenty of water."],
 *   },
 *   starterFoods,
 * );
 * const plan = portionPlan({
 *   meals: [{ id: "breakfast", dishes: porridge }],
 *   people: [{ id: "cox", name: "Cox", demands: { energy: "379 kcal" } }],
 * });
 * const page = personCard(plan, "cox", { date: "2026-01-12" });
 * console.log(page.includes("<li>Simmer <b>100 g <bdi>oats</bdi></b> in plenty of water.</li>")); // => true
 * ```
 */
export function personCard(of: Plan | CookingSchedule, person: string, how: CardOptions = {}): string {
  checkCard(of, how);
  const language = readLanguage(how.language);
  return cardHtml(cardOf(of, person, how), language);
}
