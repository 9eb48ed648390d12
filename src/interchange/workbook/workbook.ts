import { britishEnglish, type Language, say } from "../../document/language.ts";
import { read } from "../../document/read.ts";
import { language as languageSchema } from "../../document/readLanguage.ts";
import { fields, once, optional, type Schema } from "../../document/schema.ts";
import { componentAt, componentIds, components } from "../../food/components.ts";
import { exactText } from "../../number/digits.ts";
import { fault, kindOf } from "../../number/error.ts";
import { sum } from "../../number/exact.ts";
import { compareText } from "../../number/text.ts";
import type { Plan, PlannedDay } from "../../plan/plan.ts";
import { Sheet } from "../../sheet/sheet.ts";
import { type Tabular, tablesOf } from "../../show/tabular.ts";
import { packPages } from "./package.ts";
import { type Page, type PageCell, pageNames } from "./page.ts";
import { isFloor, type RecipePage, recipePage } from "./recipePage.ts";
import { tablePages } from "./tablePages.ts";

/** Options of {@link workbook}. */
export interface WorkbookOptions {
  readonly language?: Language;
}

/** Sheets by the name that each one's page is to have. */
export type SheetsByName = { readonly [name: string]: Sheet };

/**
 * A workbook in Office Open XML, as bytes to save or send: each recipe on a page of its own, of a plan
 * each dish with people as columns and a page of their days; sources on the last.
 *
 * It stays alive. Grams, figures per 100 g, portions and yields are cells, and every total is a sum of
 * products over them, so that a changed amount moves all that follows. What is unknown is an empty cell,
 * and a total over it says so below: `at least`. Figures are the nearest binary numbers; what is not such a
 * number, or says more of itself, stands as text among the sources.
 *
 * Columns of `portionsAt` and `portionsOfMany`, and other things that say their own tables, have a page for each
 * table: figures as numbers, with what is a bound in a column beside them. Nothing of those is reckoned again.
 *
 * Throws `workbook-malformed` for what it cannot show, and for more rows than a page has.
 *
 * @example
 * ```ts
 * const porridge = sheet(
 *   recipe({ name: "Porridge", portions: 2, lines: [{ food: "oats-rolled-dry", amount: "100 g" }] }),
 *   starterFoods,
 * );
 * const bytes = workbook(porridge);
 * console.log(String.fromCharCode(...bytes.slice(0, 2))); // => PK
 * ```
 */
export function workbook(of: Sheet | Plan | SheetsByName | Tabular, how: WorkbookOptions = {}): Uint8Array {
  const { language = britishEnglish } = read(workbookHow(), how, "workbook-malformed");
  if (isTabular(of)) return packPages(tablePages(tablesOf(of, { language }), language));
  const made = isPlan(of) ? planPages(of, language) : sheetPages(of, language);
  const sources = sourcesPage(made.names.at(-1) ?? "", made.recipes, language);
  return packPages([...made.pages, sources]);
}

const workbookHow: () => Schema<WorkbookOptions> = /* @__PURE__ */ once(() =>
  fields<WorkbookOptions>({ language: optional(languageSchema()) }),
);

interface Made {
  readonly pages: readonly Page[];
  readonly recipes: readonly RecipePage[];
  readonly names: readonly string[];
}

/** A plan is known by what it says of itself, so that no workbook of a sheet brings along what plans do. */
function isPlan(of: unknown): of is Plan {
  return typeof of === "object" && of !== null && "is" in of && of.is === "steelyard/plan@1" && "day" in of;
}

/** Columns of doubles, coefficients and whatever else says its own tables. */
function isTabular(of: unknown): of is Tabular {
  return typeof of === "object" && of !== null && "toTables" in of && typeof of.toTables === "function";
}

function isSheet(of: unknown): of is Sheet {
  return of instanceof Sheet;
}

function sheetPages(of: Sheet | SheetsByName, language: Language): Made {
  const hint = "give a sheet, a plan, or sheets by name: { breakfast, supper }";
  if (typeof of !== "object" || of === null)
    throw fault("workbook-malformed", `expected a sheet, a plan or sheets, got ${kindOf(of)}`, hint);
  const named: readonly (readonly [string, Sheet])[] = isSheet(of) ? [[of.name, of]] : Object.entries(of);
  if (named.length === 0) throw fault("workbook-malformed", "no sheets", hint);
  for (const [name, s] of named)
    if (!isSheet(s)) throw fault("workbook-malformed", `expected a sheet, got ${kindOf(s)}`, hint, [name]);
  const names = pageNames([...named.map(([name]) => name), say(language, "Sources")]);
  const recipes = named.map(([, s], i) =>
    recipePage(names[i] ?? "", s.name, [{ name: say(language, "Batch"), sheet: s }], language),
  );
  return { pages: recipes.map(({ page }) => page), recipes, names };
}

/** A dish of a meal, with who eats of it. */
interface ServedDish {
  readonly day: string;
  readonly title: string;
  readonly eaten: readonly { readonly person: string; readonly name: string; readonly sheet: Sheet }[];
}

function planPages(plan: Plan, language: Language): Made {
  const dishes = plan.meals.flatMap((meal): ServedDish[] =>
    [...meal.dishes.keys()].flatMap((dish): ServedDish[] => {
      const eaten = plan.people.flatMap(({ id, name }) => {
        const sheet = plan.portions.find((p) => p.person === id && p.meal === meal.id)?.dishes.get(dish);
        return sheet ? [{ person: id, name, sheet }] : [];
      });
      const title = `${meal.name}: ${eaten[0]?.sheet.name ?? dish}`;
      return eaten.length === 0 ? [] : [{ day: meal.day, title, eaten }];
    }),
  );
  if (dishes.length === 0)
    throw fault("workbook-malformed", "nobody eats anything in this plan", "plan a meal that somebody eats");
  const days = plan.days.map(({ name }) => name);
  const names = pageNames([...days, ...dishes.map(({ title }) => title), say(language, "Sources")]);
  const recipes = dishes.map(({ title, eaten }, i) =>
    recipePage(names[days.length + i] ?? "", title, eaten, language),
  );
  const dayPages = plan.days.map((day, i) => dayPage(names[i] ?? "", plan, day, dishes, recipes, language));
  return { pages: [...dayPages, ...recipes.map(({ page }) => page)], recipes, names };
}

/** What each person eats in a day: people as columns, each figure the sum of the pages of dishes. */
function dayPage(
  name: string,
  plan: Plan,
  day: PlannedDay,
  dishes: readonly ServedDish[],
  recipes: readonly RecipePage[],
  language: Language,
): Page {
  const tell = (phrase: string): string => say(language, phrase);
  const eats = plan.people.map(({ id }) =>
    dishes.flatMap(({ day: of, eaten }, i) => {
      const k = eaten.findIndex(({ person }) => person === id);
      return of === day.id && k >= 0
        ? [{ page: recipes[i] as RecipePage, k, sheet: (eaten[k] as { sheet: Sheet }).sheet }]
        : [];
    }),
  );
  const own = dishes.flatMap(({ eaten }) => eaten.flatMap(({ sheet }) => sheet.plan.ownComponents));
  const known = [...componentIds, ...[...new Set(own)].sort(compareText)].filter((id) =>
    eats.some((all) => all.some(({ page, k }) => page.at(k, id))),
  );
  const rows = known.map((id): PageCell[] => [
    { text: tell(components[id].name) },
    { text: tell(components[id].unit) },
    ...eats.flatMap((all): PageCell[] => {
      const told = all.flatMap(({ page, k }) => page.at(k, id) ?? []);
      if (told.length === 0) return [undefined, undefined];
      const untold = told.length < all.length;
      const floors = told.map(({ floor }) => `${floor}<>""`);
      const least = tell("at least");
      const asked = floors.length > 1 ? `OR(${floors.join(",")})` : (floors[0] ?? "");
      const isLeast = untold || all.some(({ sheet }) => isFloor(sheet, id));
      const of = { value: sum(all.map(({ sheet }) => sheet.portion(id).value)), look: "total" as const };
      return [
        { formula: told.map(({ figure }) => figure).join("+"), ...of },
        {
          formula: untold
            ? `"${least.replaceAll('"', '""')}"`
            : `IF(${asked},"${least.replaceAll('"', '""')}","")`,
          value: isLeast ? least : "",
          look: "totalText",
        },
      ];
    }),
  ]);
  const people = plan.people.flatMap((person): PageCell[] => [
    { text: person.name, look: "heading" },
    undefined,
  ]);
  const heading: PageCell[] = [
    { text: tell("Component"), look: "heading" },
    { text: tell("Unit"), look: "heading" },
    ...people,
  ];
  return {
    name,
    rows: [[{ text: day.name, look: "title" }], heading, ...rows],
    widths: [34, 8],
    otherWidth: 12,
    heading: { rows: 2, columns: 2 },
  };
}

/** Where each line's figures come from, and what single figures say of themselves. */
function sourcesPage(name: string, recipes: readonly RecipePage[], language: Language): Page {
  const rows: PageCell[][] = [
    ["Page", "Line", "Component", "In 100 g", "Unit", "Source"].map((text) => ({
      text: say(language, text),
      look: "heading",
    })),
  ];
  for (const { page, lines } of recipes) {
    for (const { name: line, figures, source } of lines) {
      rows.push([{ text: page.name }, { text: line }, undefined, undefined, undefined, { text: source }]);
      figures.forEach(({ value, note }, k) => {
        const id = componentAt(k);
        if (value === undefined) return;
        const exact = typeof value === "string" ? value : exactText(value);
        if (note === "" && !exact.includes("/")) return;
        const { name: of, unit } = components[id];
        const figure = [say(language, of), exact, say(language, unit), note];
        rows.push([{ text: page.name }, { text: line }, ...figure.map((text): PageCell => ({ text }))]);
      });
    }
  }
  return { name, rows, widths: [18, 30, 26, 14, 8], otherWidth: 70, heading: { rows: 1, columns: 0 } };
}
