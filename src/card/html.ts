import type { Piece } from "../cook/method.ts";
import { type Language, say } from "../document/language.ts";
import { clean } from "../show/clean.ts";
import { escapeHtml } from "../show/html.ts";
import { AS_PURCHASED } from "./amounts.ts";
import type { AmountGroup, AmountRow, Card, CardBatch, CardDish, CardMeal, DayRow, Sourced } from "./card.ts";
import { beamSvg, energySvg, looks, patterns, shareSvg, swatch } from "./picture.ts";
import { style } from "./style.ts";
import { typeSize } from "./typeSize.ts";

/** Languages that are written from right to left, by the first part of their tag. */
const RIGHT_TO_LEFT: readonly string[] = ["ar", "dv", "fa", "he", "ks", "ps", "sd", "ug", "ur", "yi"];

/** What keeps the page from fetching or running anything, whatever stands in it. */
const POLICY = "default-src 'none'; style-src 'unsafe-inline'; base-uri 'none'; form-action 'none'";

/** A card as one page that needs nothing from anywhere. */
export function cardHtml(card: Card, language: Language): string {
  const title = [card.person, ...card.meals.map(({ name }) => name)].join(", ");
  return documentHtml({ title, language, type: typeSize(card), parts: cardParts(card, language, "") });
}

/** What stands in a person's page; `at` tells its marks from those of other pages in one document. */
export function cardParts(card: Card, language: Language, at: string): readonly string[] {
  const page = new Page(language, at);
  return [
    page.header(card),
    "<main>",
    ...card.meals.map((meal, i) => page.meal(meal, i)),
    page.brings(card),
    page.cautions(card.cautions),
    "</main>",
    page.footer(card),
  ];
}

/** A document that asks for nothing and runs nothing. */
export function documentHtml({
  title,
  language,
  type,
  parts,
}: {
  readonly title: string;
  readonly language: Language;
  /** The size of type in print, in points. */
  readonly type: number;
  readonly parts: readonly string[];
}): string {
  const direction = RIGHT_TO_LEFT.includes(language.tag.split("-")[0] ?? "") ? ' dir="rtl"' : "";
  return [
    "<!doctype html>",
    `<html lang="${attribute(language.tag)}"${direction} style="--type:${type}pt">`,
    "<head>",
    '<meta charset="utf-8">',
    `<meta http-equiv="Content-Security-Policy" content="${POLICY}">`,
    '<meta name="viewport" content="width=device-width, initial-scale=1">',
    '<meta name="color-scheme" content="light dark">',
    `<title>${attribute(title)}</title>`,
    `<style>${style}</style>`,
    "</head>",
    "<body>",
    patterns(),
    ...parts,
    "</body>",
    "</html>",
    "",
  ].join("\n");
}

/** Text for an attribute or a title: on one line. */
export function attribute(text: string): string {
  return escapeHtml(clean(text).replaceAll("\n", " "));
}

/** Text set apart, so that a name that runs the other way leaves its neighbours alone. */
export function apart(text: string): string {
  return `<bdi>${escapeHtml(text)}</bdi>`;
}

/** A group of so few rows stays in one column of the page. */
const SHORT = 5;

/** The parts of a page in one language. */
class Page {
  readonly #language: Language;
  readonly #at: string;

  constructor(language: Language, at: string) {
    this.#language = language;
    this.#at = at;
  }

  header({ person, date, version, about, factor }: Card): string {
    const issued = [
      ...(date === undefined ? [] : [dated(date)]),
      ...(version === undefined ? [] : [escapeHtml(version)]),
    ];
    return [
      '<header class="head">',
      `<div><h1>${apart(person)}</h1>`,
      issued.length === 0 ? "" : `<p class="issued">${issued.join(" · ")}</p>`,
      about.length === 0 ? "" : `<p class="about">${about.map(apart).join(" · ")}</p>`,
      "</div>",
      beamSvg(factor),
      "</header>",
    ].join("\n");
  }

  meal({ name, missed, dishes, notes }: CardMeal, i: number): string {
    const id = `${this.#at}meal-${i + 1}`;
    return [
      `<section aria-labelledby="${id}">`,
      `<h2 id="${id}">${apart(name)}</h2>`,
      ...missed.map((text) => `<p class="over-text">${escapeHtml(text)}</p>`),
      ...dishes.map((dish, d) => this.#dish(dish, `${id}-dish-${d + 1}`)),
      ...notes.map(noteHtml),
      "</section>",
    ].join("\n");
  }

  /** A nested recipe, made before the dish that takes it. */
  #first({ name, rows, mass, method }: CardBatch, id: string): string {
    const spoons = rows.some(({ measure }) => measure !== "");
    const steps = method.map((step) => `<li>${step.map(pieceHtml).join("")}</li>`);
    const rest = spoons ? "<td></td>" : "";
    return [
      `<h4 id="${id}">${this.#say("First make {mass} of", { mass })} ${apart(name)}</h4>`,
      `<table aria-labelledby="${id}"><tbody class="short">${rows.map((row) => this.#amount(row, spoons)).join("\n")}</tbody>`,
      `<tfoot><tr><th scope="row">${this.#say("When done")}</th><td class="weigh">${escapeHtml(mass)}</td>${rest}</tr></tfoot></table>`,
      steps.length === 0 ? "" : `<ol>${steps.join("")}</ol>`,
    ].join("\n");
  }

  #dish({ name, first, groups, pots, mass, method, notes }: CardDish, id: string): string {
    const spoons =
      pots.some(({ measure }) => measure !== "") ||
      groups.some(({ rows }) => rows.some(({ measure }) => measure !== ""));
    const sum = (text: string, weigh: string, measure: string, gaps = {}): string =>
      `<tr><th scope="row">${this.#say(text, gaps)}</th><td class="weigh">${escapeHtml(weigh)}</td>${spoons ? `<td class="measure">${escapeHtml(measure)}</td>` : ""}</tr>`;
    const heads = [
      `<th scope="col">${this.#say("What")}</th>`,
      `<th scope="col" class="weigh">${this.#say("Weigh")}</th>`,
      ...(spoons ? [`<th scope="col" class="measure">${this.#say("or measure")}</th>`] : []),
    ];
    const steps = method.map((step) => `<li>${step.map(pieceHtml).join("")}</li>`);
    return [
      `<h3 id="${id}">${apart(name)}</h3>`,
      ...first.map((batch, i) => this.#first(batch, `${id}-first-${i + 1}`)),
      `<table aria-labelledby="${id}">`,
      `<thead><tr>${heads.join("")}</tr></thead>`,
      pots.length === 0
        ? ""
        : `<tbody class="pot-share">${pots.map(({ when, weigh, measure }) => sum(when === "" ? "From the pot" : "From the pot, {when}", weigh, measure, { when })).join("")}</tbody>`,
      ...groups.map((group) => this.#group(group, spoons)),
      "<tfoot>",
      sum("As eaten", mass, ""),
      "</tfoot>",
      "</table>",
      steps.length === 0 ? "" : `<ol>${steps.join("")}</ol>`,
      ...notes.map(noteHtml),
    ].join("\n");
  }

  #group({ heading, rows }: AmountGroup, spoons: boolean): string {
    const head =
      heading === undefined
        ? ""
        : `<tr><th scope="rowgroup" colspan="${spoons ? 3 : 2}">${escapeHtml(heading)}</th></tr>`;
    return `<tbody${rows.length <= SHORT ? ' class="short"' : ""}>${head}${rows.map((row) => this.#amount(row, spoons)).join("\n")}</tbody>`;
  }

  #amount({ name, prep, madeOf, weigh, measure, edible, dose }: AmountRow, spoons: boolean): string {
    const under = [
      ...(prep === undefined ? [] : [escapeHtml(prep)]),
      ...(edible === undefined ? [] : [this.#say(AS_PURCHASED, { grams: edible })]),
      ...(madeOf.length === 0 ? [] : [this.#say("of {foods}", { foods: madeOf.join("; ") })]),
      ...(dose ? [this.#say("the same for everyone")] : []),
    ].join(" · ");
    const small = under === "" ? "" : ` <small>${under}</small>`;
    return `<tr${dose ? ' class="dose"' : ""}><th scope="row">${apart(name)}${small}</th><td class="weigh">${escapeHtml(weigh)}</td>${spoons ? `<td class="measure">${escapeHtml(measure)}</td>` : ""}</tr>`;
  }

  brings(card: Card): string {
    const { energy, day, against } = card;
    if (day.length === 0) return "";
    const heads = ["Nutrient", "Brings", ...(against ? ["Of a day", "Picture"] : [])];
    const key = energy?.slices.map(
      ({ part, name, shown }) => `<li>${swatch(looks[part])}${escapeHtml(name)} ${escapeHtml(shown)}</li>`,
    );
    const open = energy?.open.join(", ") ?? "";
    const rest =
      open === ""
        ? []
        : [`<li>${swatch("unknown")}${this.#say("not all known: {parts}", { parts: open })}</li>`];
    return [
      `<section aria-labelledby="${this.#at}brings">`,
      `<h2 id="${this.#at}brings">${this.#say(card.days > 1 ? "Nutrients a day, mean of {days} days" : "Nutrients", { days: String(card.days) })}</h2>`,
      energy === undefined
        ? ""
        : `<figure>${energySvg(energy, `${this.#at}energy-title`).replace("{title}", () => attribute(energy.spoken))}<figcaption><ul class="key">${[...(key ?? []), ...rest].join("")}</ul></figcaption></figure>`,
      `<table aria-labelledby="${this.#at}brings">`,
      against ? `<caption>${this.#dayCaption(day)}</caption>` : "",
      `<thead><tr>${heads.map((text, i) => `<th scope="col"${i > 0 && i < 3 ? ' class="brings"' : ""}>${this.#say(text)}</th>`).join("")}</tr></thead>`,
      `<tbody>${day.map((row) => this.#nutrient(row, against)).join("\n")}</tbody>`,
      "</table>",
      "</section>",
    ].join("\n");
  }

  #dayCaption(day: readonly DayRow[]): string {
    const open = day.some(({ share }) => share?.open);
    const upper = day.some(({ share }) => share?.upper !== undefined);
    return [
      this.#say("The line marks a whole day."),
      ...(open ? [this.#say("Hatched: not known, there may be more.")] : []),
      ...(upper ? [this.#say("The broken line marks the upper level, where it lies near.")] : []),
    ].join(" ");
  }

  #nutrient({ name, brings, share }: DayRow, against: boolean): string {
    const tone = brings.tone === "known" ? "" : ` data-tone="${brings.tone}"`;
    const cells = `<th scope="row">${escapeHtml(name)}</th><td class="brings"${tone}>${figureHtml(brings.text)}</td>`;
    if (!against) return `<tr>${cells}</tr>`;
    if (share === undefined) return `<tr>${cells}<td></td><td></td></tr>`;
    const over = share.over ? ` <span class="over-text">${this.#say("over")}</span>` : "";
    const picture = shareSvg(share).replace("{label}", () => attribute(share.spoken));
    return `<tr>${cells}<td class="percent">${figureHtml(share.shown)}${over}</td><td>${picture}</td></tr>`;
  }

  cautions(all: readonly Sourced[]): string {
    if (all.length === 0) return "";
    const items = all.map(({ text, footnote }) => `<li>${escapeHtml(text)}${this.#reference(footnote)}</li>`);
    return [
      `<section class="cautions" aria-labelledby="${this.#at}cautions">`,
      `<h2 id="${this.#at}cautions">${this.#say("Take care")}</h2>`,
      `<ul>${items.join("")}</ul>`,
      "</section>",
    ].join("\n");
  }

  #reference(footnote: number | undefined): string {
    if (footnote === undefined) return "";
    const label = attribute(say(this.#language, "source {number}", { number: String(footnote) }));
    return `<sup><a href="#${this.#at}source-${footnote}" aria-label="${label}">${footnote}</a></sup>`;
  }

  footer({ notes, sources }: Card): string {
    const list = sources.map((source, i) => `<li id="${this.#at}source-${i + 1}">${escapeHtml(source)}</li>`);
    return [
      "<footer>",
      `<ul>${notes.map((note) => `<li>${escapeHtml(note)}</li>`).join("")}</ul>`,
      `<h2>${this.#say("Sources")}</h2>`,
      `<ol>${list.join("")}</ol>`,
      "</footer>",
    ].join("\n");
  }

  #say(phrase: string, gaps: { readonly [name: string]: string } = {}): string {
    return escapeHtml(say(this.#language, phrase, gaps));
  }
}

function noteHtml(note: string): string {
  return `<p class="small">${escapeHtml(note)}</p>`;
}

/** A figure with its unit and mark on one line; words before it may stand above. */
function figureHtml(text: string): string {
  return escapeHtml(text).replace(/(?<=\d.*)(?<!,) /g, "&nbsp;");
}

export function dated(date: string): string {
  return /^\d{4}-\d{2}-\d{2}$/.test(date) ? `<time datetime="${date}">${date}</time>` : escapeHtml(date);
}

function pieceHtml(piece: Piece): string {
  if ("text" in piece) return escapeHtml(piece.text);
  const amount = piece.amount === undefined ? "" : `${escapeHtml(piece.amount)} `;
  return `<b>${amount}${apart(piece.name)}</b>`;
}
