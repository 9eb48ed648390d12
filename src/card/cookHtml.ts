import { type Language, say } from "../document/language.ts";
import { escapeHtml } from "../show/html.ts";
import type { AmountRow } from "./card.ts";
import type { CookBlock, CookDay, ServedRow } from "./cookContent.ts";
import type { CookCardOptions } from "./how.ts";
import { apart, issuedHtml } from "./markup.ts";
import { amountHtml, takeHtml } from "./take.ts";

/** One day's page for whoever cooks: the order of work, then each pot with amounts, method and portions. */
export function cookParts(
  { day, order, batches, pots, notes }: CookDay,
  { date, version }: Pick<CookCardOptions, "date" | "version">,
  language: Language,
  at: string,
): readonly string[] {
  const words = (phrase: string): string => escapeHtml(say(language, phrase));
  const title = day === "" ? words("To cook") : escapeHtml(say(language, "To cook: {day}", { day }));
  const block = (each: CookBlock, i: number, kind: string): string =>
    blockHtml(each, `${at}${kind}-${i + 1}`, words);
  const section = (heading: string, blocks: readonly string[]): readonly string[] =>
    blocks.length === 0 ? [] : [`<h2>${words(heading)}</h2>`, ...blocks];
  return [
    `<header class="head"><div><h1>${title}</h1>`,
    issuedHtml({ date, version }),
    "</div></header>",
    '<div class="sides cook">',
    order.length < 2
      ? ""
      : `<ol class="order">${order.map((each) => `<li>${escapeHtml(each)}</li>`).join("")}</ol>`,
    ...section(
      "Made first",
      batches.map((each, i) => block(each, i, "batch")),
    ),
    ...section(
      batches.length === 0 ? "Pots" : "Then",
      pots.map((each, i) => block(each, i, "pot")),
    ),
    notes.length === 0
      ? ""
      : `<section class="cautions"><h2>${words("Take care")}</h2><ul>${notes.map((note) => `<li>${escapeHtml(note)}</li>`).join("")}</ul></section>`,
    "</div>",
  ];
}

function blockHtml(
  { name, facts, rows, steps, served, notes }: CookBlock,
  id: string,
  words: (phrase: string) => string,
): string {
  const made =
    steps.length === 0 ? "" : `<ol>${steps.map((step) => `<li>${amountHtml(step)}</li>`).join("")}</ol>`;
  const aside =
    notes.length === 0
      ? ""
      : `<ul class="asides">${notes.map((note) => `<li>${amountHtml(note)}</li>`).join("")}</ul>`;
  return [
    `<section class="pot" aria-labelledby="${id}">`,
    `<h3 id="${id}">${apart(name)}</h3>`,
    `<p class="facts">${facts.map(escapeHtml).join(" · ")}</p>`,
    '<div class="work">',
    amountsHtml(rows, id, words),
    `<div>${made}${aside}</div>`,
    "</div>",
    servedHtml(served, id, words),
    "</section>",
  ].join("\n");
}

function amountsHtml(rows: readonly AmountRow[], id: string, words: (phrase: string) => string): string {
  const body = rows.map((row) => {
    const { name, prep, edible } = row;
    const under = [prep ?? "", edible === undefined ? "" : words("as purchased")].filter(
      (text) => text !== "",
    );
    const small = under.length === 0 ? "" : ` <small>${escapeHtml(under.join(" · "))}</small>`;
    return `<tr><th scope="row">${apart(name)}${small}</th><td class="weigh">${takeHtml(row)}</td></tr>`;
  });
  return `<table aria-labelledby="${id}"><thead class="unseen"><tr><th scope="col">${words("What")}</th><th scope="col">${words("How much")}</th></tr></thead><tbody>${body.join("")}</tbody></table>`;
}

function servedHtml(rows: readonly ServedRow[], id: string, words: (phrase: string) => string): string {
  if (rows.length === 0) return "";
  const [when, added] = [rows.some((row) => row.when !== ""), rows.some((row) => row.added !== "")];
  const body = rows.map(
    (row) =>
      `<tr><th scope="row">${apart(row.who)}</th>${when ? `<td>${escapeHtml(row.when)}</td>` : ""}<td class="weigh">${takeHtml(row)}</td>${added ? `<td class="added">${amountHtml(row.added)}</td>` : ""}</tr>`,
  );
  const heads = [
    `<th scope="col">${words("For")}</th>`,
    when ? `<th scope="col">${words("When")}</th>` : "",
    `<th scope="col" class="weigh">${words("Take")}</th>`,
    added ? `<th scope="col">${words("With it")}</th>` : "",
  ];
  return `<table class="served" aria-labelledby="${id}"><thead><tr>${heads.join("")}</tr></thead><tbody>${body.join("")}</tbody></table>`;
}
