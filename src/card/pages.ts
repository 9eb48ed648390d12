import { CookingSchedule } from "../cook/schedule.ts";
import { type Language, say } from "../document/language.ts";
import { anyText } from "../document/leaves.ts";
import { read } from "../document/read.ts";
import { language as readerLanguage, readLanguage } from "../document/readLanguage.ts";
import { isRecord } from "../document/safe.ts";
import { byName, fields, list, once, optional, type Schema } from "../document/schema.ts";
import type { Plan } from "../plan/planned.ts";
import { cardOf } from "./content.ts";
import { cookDays } from "./cookContent.ts";
import { cookParts } from "./cookHtml.ts";
import { checkCard, checkCookCard } from "./given.ts";
import type { CardOptions, CookCardOptions } from "./how.ts";
import { cardParts } from "./html.ts";
import { documentHtml } from "./markup.ts";

/** Type of pages that may go on to a second sheet, in points: read at arm's length. */
const TYPE = 10.5;

/**
 * The cook's pages of a schedule, one for each day of cooking: in which order to work, what is made first,
 * each pot with its amounts, method and runs, and then what each person takes of it and what is added. HTML
 * that needs no script and no network, reads on a phone, and prints page by page on A4 and A5. Fields and
 * their order are those of the trade's standardized recipe and production record.
 *
 * Throws `card-malformed`.
 *
 * @example
 * ```ts
 * const dal = sheet(
 *   {
 *     name: "Dal",
 *     portions: 4,
 *     lines: [
 *       { key: "lentils", food: "lentils-red-dry", amount: "300 g" },
 *       { key: "water", food: "water-tap", amount: "900 g" },
 *     ],
 *     method: ["Simmer {lentils} in {water} until soft."],
 *   },
 *   starterFoods,
 * );
 * const plan = portionPlan({
 *   meals: [{ id: "supper", dishes: { dal } }],
 *   people: [{ id: "cox", name: "Cox" }, { id: "bow", name: "Bow", demands: { factor: 2 } }],
 *   kitchen: "metric",
 * });
 * const page = cookCard(cookingSchedule(plan), { date: "2026-01-12" });
 * console.log(page.includes("Simmer 225 g lentils in 675 g water until soft.")); // => true
 * ```
 */
export function cookCard(schedule: CookingSchedule, how: CookCardOptions = {}): string {
  checkCookCard(schedule, how);
  const language = readLanguage(how.language);
  const pages = cookPages(schedule, how, language);
  return documentHtml({ title: say(language, "To cook"), language, type: TYPE, parts: pagesHtml(pages) });
}

/** What {@link cardPages} can be told: all that a person's card can, but for what is one person's own. */
export interface PagesOptions extends Omit<CardOptions, "about" | "cautions" | "day" | "meals"> {
  /** People to make pages for, by id; everyone unless told. */
  readonly people?: readonly string[];
  /** Languages of some people's own pages, by id; `language` unless told. */
  readonly languages?: Readonly<Record<string, Language>>;
}

/**
 * All pages in one document that prints page by page: of a schedule first the cook's, day by day, then each
 * person's; of a plan each person's. What a person's page says to take of a pot is what the cook's page says.
 *
 * Throws as {@link personCard} and {@link cookCard} do.
 *
 * @example
 * ```ts
 * const oats = sheet({ name: "Oats", portions: 1, lines: [{ food: "oats-rolled-dry", amount: "60 g" }] }, starterFoods);
 * const plan = portionPlan({
 *   meals: [{ id: "breakfast", dishes: oats }],
 *   people: [{ id: "cox", name: "Cox" }, { id: "bow", name: "Bow" }],
 * });
 * console.log(cardPages(plan).split('<article class="page"').length - 1); // => 2
 * console.log(cardPages(cookingSchedule(plan)).split('<article class="page"').length - 1); // => 3
 * ```
 */
export function cardPages(of: Plan | CookingSchedule, how: PagesOptions = {}): string {
  if (!isRecord(how)) checkCard(of, how);
  const { people, languages = {}, ...card }: PagesOptions = how;
  checkCard(of, card);
  read(pagesHow(), { people, languages }, "card-malformed");
  const language = readLanguage(how.language);
  const plan = of instanceof CookingSchedule ? of.plan : of;
  const cook = of instanceof CookingSchedule ? cookPages(of, dates(how), language) : [];
  const ids = people ?? plan.people.map(({ id }) => id);
  const pages = ids.map((id, i) => {
    const own = readLanguage(languages[id] ?? how.language);
    return cardParts(cardOf(of, id, { ...card, language: own }), own, `p${i + 1}-`).join("\n");
  });
  const title = plan.people.map(({ name }) => name).join(", ");
  return documentHtml({ title, language, type: TYPE, parts: pagesHtml([...cook, ...pages]) });
}

/** What only the pages of several people are told; the rest is read as a card's. */
const pagesHow: () => Schema<Pick<PagesOptions, "people" | "languages">> = /* @__PURE__ */ once(() =>
  fields<Pick<PagesOptions, "people" | "languages">>({
    people: optional(list(anyText(), { like: '["cox", "bow"]' })),
    languages: optional(byName(readerLanguage(), { like: "{ cox: german }" })),
  }),
);

function cookPages(schedule: CookingSchedule, how: CookCardOptions, language: Language): readonly string[] {
  return cookDays(schedule, how, language).map((day, i) =>
    cookParts(day, how, language, `c${i + 1}-`).join("\n"),
  );
}

function dates({ date, version }: PagesOptions): CookCardOptions {
  return { ...(date !== undefined && { date }), ...(version !== undefined && { version }) };
}

function pagesHtml(pages: readonly string[]): readonly string[] {
  return ["<main>", ...pages.map((page) => `<article class="page">\n${page}\n</article>`), "</main>"];
}
