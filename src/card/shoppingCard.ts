import { type Language, say } from "../document/language.ts";
import { anyText } from "../document/leaves.ts";
import { read } from "../document/read.ts";
import { language as readerLanguage, readLanguage } from "../document/readLanguage.ts";
import { fields, once, optional, type Schema } from "../document/schema.ts";
import { fault, kindOf } from "../number/error.ts";
import { stated } from "../sheet/stated.ts";
import type { ShoppingLine } from "../shop/line.ts";
import { ShoppingList } from "../shop/list.ts";
import { shoppingNotes } from "../shop/notes.ts";
import { escapeHtml } from "../show/html.ts";
import { grams, money } from "../show/shoppingCells.ts";
import { shoppingTitle, toBuy } from "../show/shoppingTables.ts";
import type { Cell } from "../show/table.ts";
import type { CookCardOptions } from "./how.ts";
import { apart, documentHtml, issuedHtml } from "./markup.ts";

/** Options of {@link shoppingCard}. */
export type ShoppingCardOptions = Omit<CookCardOptions, "day">;

/**
 * A shopping list to take along: by aisle a box to tick, what to buy, what is needed of it and its price; what is
 * in the cupboard already, the total, and each allergen and caution once. HTML that needs no script and no
 * network, reads on a phone with two lines an item, and prints on A4 and A5.
 *
 * Throws `card-malformed`.
 *
 * @example
 * ```ts
 * const oats = sheet({ name: "Oats", portions: 1, lines: [{ food: "oats-rolled-dry", amount: "60 g" }] }, starterFoods);
 * const page = shoppingCard(shoppingList(oats), { date: "2026-01-12" });
 * console.log(page.includes('<td class="weigh">60 g</td>')); // => true
 * ```
 */
export function shoppingCard(list: ShoppingList, how: ShoppingCardOptions = {}): string {
  if (!(list instanceof ShoppingList)) {
    const hint = "make one with shoppingList(plan)";
    throw fault("card-malformed", `expected a shopping list, got ${kindOf(list)}`, hint, ["list"]);
  }
  const { date, version } = read(shoppingHow(), how, "card-malformed");
  const language = readLanguage(how.language);
  const words = (phrase: string): string => escapeHtml(say(language, phrase));
  const title = shoppingTitle(list, language);
  const notes = shoppingNotes(list, language).map((note) => `<li>${escapeHtml(note)}</li>`);
  const parts = [
    `<header class="head"><div><h1>${escapeHtml(title)}</h1>`,
    issuedHtml({ date, version }),
    "</div></header>",
    '<main class="sides shop">',
    ...aislesHtml(list, language),
    ...stockHtml(list, language),
    "</main>",
    notes.length === 0 ? "" : `<footer><h2>${words("Notes")}</h2><ul>${notes.join("")}</ul></footer>`,
  ];
  return documentHtml({ title, language, type: 10.5, parts });
}

const shoppingHow: () => Schema<ShoppingCardOptions> = /* @__PURE__ */ once(() =>
  fields<ShoppingCardOptions>({
    date: optional(anyText()),
    version: optional(anyText()),
    language: optional(readerLanguage()),
  }),
);

function aislesHtml(list: ShoppingList, language: Language): readonly string[] {
  const lines = list.lines.filter(({ bought }) => bought.n !== 0n);
  const isPriced = list.totals.length > 0;
  const heads = ["Food and what is needed", isPriced ? "To buy, and its price" : "To buy"].map(
    (head) => `<th scope="col">${escapeHtml(say(language, head))}</th>`,
  );
  const price = ({ cost }: ShoppingLine): string => {
    if (!isPriced) return "";
    return `<small>${cost ? textOf(money(cost, language, true)) : escapeHtml(say(language, "no price known"))}</small>`;
  };
  const needed = (line: ShoppingLine): string =>
    say(language, "need {grams}", { grams: unitOf(grams(line.needed, language)) });
  const sections = [...new Set(lines.map(({ aisle }) => aisle))].map((aisle, i) => {
    const id = `aisle-${i + 1}`;
    const rows = lines.filter((line) => line.aisle === aisle);
    const body = rows.map((line) =>
      [
        `<tr><th scope="row"><span class="box" aria-hidden="true"></span>${apart(stated(line.name, line.state, language))}`,
        `<small>${escapeHtml(needed(line))}</small></th>`,
        `<td class="weigh">${textOf(toBuy(line, language))}${price(line)}</td></tr>`,
      ].join(""),
    );
    return [
      `<section aria-labelledby="${id}"><h2 id="${id}">${escapeHtml(say(language, aisle))}</h2>`,
      `<table class="buy${rows.length < 6 ? " short" : ""}" aria-labelledby="${id}"><thead class="unseen"><tr>${heads.join("")}</tr></thead>`,
      `<tbody>${body.join("\n")}</tbody></table></section>`,
    ].join("\n");
  });
  const totals = list.totals.map((cost) => textOf(money(cost, language, true)));
  return totals.length === 0
    ? sections
    : [
        ...sections,
        `<p class="total"><b>${escapeHtml(say(language, "Total"))}: ${totals.join("; ")}</b></p>`,
      ];
}

function stockHtml(list: ShoppingList, language: Language): readonly string[] {
  const used = list.cupboard.filter((item) => item.used.n !== 0n);
  if (used.length === 0) return [];
  const items = used.map(
    ({ name, state, used: grammes }) =>
      `<li>${apart(stated(name, state, language))} ${textOf(unitOf(grams(grammes, language)))}</li>`,
  );
  return [
    `<section aria-labelledby="stock"><h2 id="stock">${escapeHtml(say(language, "Already in the cupboard"))}</h2>`,
    `<ul>${items.join("")}</ul></section>`,
  ];
}

function unitOf(cell: Cell): string {
  return `${typeof cell === "string" ? cell : cell.text} g`;
}

function textOf(cell: Cell): string {
  return escapeHtml(typeof cell === "string" ? cell : cell.text);
}
