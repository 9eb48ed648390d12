import { amountOfFood } from "../cook/amountOfFood.ts";
import type { Piece } from "../cook/method.ts";
import { type Language, say } from "../document/language.ts";
import { inSentence } from "../sheet/names.ts";
import { escapeHtml } from "../show/html.ts";
import { AS_PURCHASED } from "./amounts.ts";
import { energySvg, looks, shareSvg, swatch } from "./bars.ts";
import {
  type AmountGroup,
  type AmountRow,
  type Card,
  type CardBatch,
  type CardDish,
  type CardMeal,
  type DayRow,
  isBrief,
  type Sourced,
} from "./card.ts";
import { apart, attribute, issuedHtml } from "./markup.ts";
import { amountHtml, takeHtml } from "./take.ts";

/** A group of so few rows stays in one column of the page. */
const SHORT = 5;
/** What stands large, above the nutrients that a reader chose. */
const LARGE: ReadonlySet<string> = /* @__PURE__ */ new Set(["energy", "protein"]);

/** A person's page in one language: what to take, what that is, what to take care of. */
export class PersonPage {
  readonly #card: Card;
  readonly #language: Language;
  readonly #at: string;
  readonly #days: readonly string[];

  /** Of several pages in one document all are its main part. */
  readonly #tag: "main" | "div";

  constructor(card: Card, language: Language, at: string) {
    this.#tag = at === "" ? "main" : "div";
    this.#card = card;
    this.#language = language;
    this.#at = at;
    this.#days = [...new Set(card.meals.flatMap(({ day }) => day ?? []))];
  }

  parts(): readonly string[] {
    const { meals } = this.#card;
    const isWeek = this.#days.length > 1;
    return [
      this.#header(),
      `<${this.#tag} class="sides">`,
      ...(isWeek
        ? this.#days.map((day, i) => this.#day(day, i))
        : meals.map((meal, i) => this.#meal(meal, `${this.#at}meal-${i + 1}`, "h2"))),
      this.#brings(),
      this.#cautions(),
      `</${this.#tag}>`,
      this.#footer(),
    ];
  }

  #header(): string {
    const { person, about, allergens } = this.#card;
    const [day] = this.#days.length === 1 ? this.#days : [];
    return [
      '<header class="head">',
      `<h1 id="${this.#at}name">${apart(person)}${day === undefined ? "" : ` <small>${apart(day)}</small>`}</h1>`,
      issuedHtml(this.#card),
      ...allergens.map((text) => `<p class="allergens">${escapeHtml(text)}</p>`),
      about.length === 0 ? "" : `<p class="about">${about.map(apart).join(" · ")}</p>`,
      "</header>",
    ].join("\n");
  }

  /** A day among others: a row for each dish, and in full what is more than a row. */
  #day(day: string, d: number): string {
    const id = `${this.#at}day-${d + 1}`;
    const meals = this.#card.meals.filter((meal) => meal.day === day);
    const brief = meals.flatMap((meal) => meal.dishes.filter(isBrief).map((dish) => this.#brief(meal, dish)));
    const rest = meals.flatMap((meal, i) => {
      const dishes = meal.dishes.filter((dish) => !isBrief(dish));
      const isSaid = dishes.length === 0 && meal.missed.length === 0 && meal.notes.length === 0;
      return isSaid ? [] : [this.#meal({ ...meal, dishes }, `${id}-meal-${i + 1}`, "h3")];
    });
    return [
      `<section class="day" aria-labelledby="${this.#named(id)}"><h2 id="${id}">${apart(day)}</h2>`,
      brief.length === 0
        ? ""
        : `<table aria-labelledby="${id}">${this.#heads()}<tbody>${brief.join("\n")}</tbody></table>`,
      ...rest,
      "</section>",
    ].join("\n");
  }

  #brief({ name: meal }: CardMeal, { name, pots, groups, notes }: CardDish): string {
    const added = groups
      .flatMap((group) => group.rows)
      .map(({ lead, name: food, prep }) => {
        const own = amountOfFood(lead, inSentence(food, this.#language), this.#language);
        return amountHtml(prep === undefined ? own : `${own}, ${prep}`);
      });
    const under = added.length === 0 ? "" : `<br><small>${added.join("; ")}</small>`;
    const takes = pots.map(({ when, lead, also }) => {
      const days = when === "" ? "" : ` <small>${escapeHtml(when)}</small>`;
      return `<span class="lead">${amountHtml(lead)}</span>${also === "" ? "" : ` <small>${amountHtml(also)}</small>`}${days}`;
    });
    const said = notes.map((note) => `<br><small>${escapeHtml(note)}</small>`).join("");
    const head = `<small>${apart(meal)}</small> <b>${apart(name)}</b>${under}${said}`;
    return takes.length === 0
      ? `<tr><th scope="row" colspan="2">${head}</th></tr>`
      : `<tr class="taken"><th scope="row">${head}</th><td class="weigh">${takes.join("; ")}</td></tr>`;
  }

  #meal({ name, missed, dishes, notes }: CardMeal, id: string, level: "h2" | "h3"): string {
    const tag = level === "h2" ? "section" : "div";
    const label = level === "h2" ? ` aria-labelledby="${this.#named(id)}"` : "";
    return [
      `<${tag}${label}>`,
      `<${level} id="${id}">${apart(name)}</${level}>`,
      ...missed.map((text) => `<p class="over-text">${escapeHtml(text)}</p>`),
      ...dishes.map((dish, d) => this.#dish(dish, `${id}-dish-${d + 1}`, level === "h2" ? "h3" : "h4")),
      ...notes.map(noteHtml),
      `</${tag}>`,
    ].join("\n");
  }

  /** A nested recipe, made before the dish that takes it. */
  #first({ name, rows, mass, method }: CardBatch, id: string): string {
    return [
      `<h4 id="${id}">${this.#say("First make {mass} of", { mass })} ${apart(name)}</h4>`,
      `<table aria-labelledby="${id}">${this.#heads()}<tbody class="short">${rows.map((row) => this.#amount(row)).join("\n")}</tbody></table>`,
      stepsHtml(method),
    ].join("\n");
  }

  #dish({ name, first, groups, pots, mass, method, notes }: CardDish, id: string, level: string): string {
    const share = pots.map((pot) => {
      const text = pot.when === "" ? "From the pot" : "From the pot, {when}";
      return `<tr><th scope="row">${this.#say(text, { when: pot.when })}</th><td class="weigh">${takeHtml(pot)}</td></tr>`;
    });
    const lines = pots.length + groups.reduce((sum, { rows }) => sum + rows.length, 0);
    // What is taken of one pot and eaten as it is needs no sum.
    const isSum = groups.length > 0 || pots.length !== 1;
    return [
      `<${level} id="${id}">${apart(name)}</${level}>`,
      ...first.map((batch, i) => this.#first(batch, `${id}-first-${i + 1}`)),
      `<table class="bowl${lines <= SHORT ? " short" : ""}" aria-labelledby="${id}">`,
      this.#heads(),
      share.length === 0 ? "" : `<tbody class="pot-share">${share.join("")}</tbody>`,
      ...groups.map((group) => this.#group(group)),
      isSum
        ? `<tfoot><tr><th scope="row">${this.#say("As eaten")}</th><td class="weigh">${escapeHtml(mass)}</td></tr></tfoot>`
        : "",
      "</table>",
      stepsHtml(method),
      ...notes.map(noteHtml),
    ].join("\n");
  }

  #heads(): string {
    return `<thead class="unseen"><tr><th scope="col">${this.#say("What")}</th><th scope="col">${this.#say("How much")}</th></tr></thead>`;
  }

  #group({ heading, rows }: AmountGroup): string {
    const head =
      heading === undefined ? "" : `<tr><th scope="rowgroup" colspan="2">${escapeHtml(heading)}</th></tr>`;
    return `<tbody${rows.length <= SHORT ? ' class="short"' : ""}>${head}${rows.map((row) => this.#amount(row)).join("\n")}</tbody>`;
  }

  #amount(row: AmountRow): string {
    const { name, prep, madeOf, edible, dose } = row;
    const under = [
      ...(prep === undefined ? [] : [escapeHtml(prep)]),
      ...(edible === undefined ? [] : [this.#say(AS_PURCHASED, { grams: edible })]),
      ...(madeOf.length === 0 ? [] : [this.#say("of {foods}", { foods: madeOf.join("; ") })]),
      ...(dose ? [this.#say("the same for everyone")] : []),
    ].join(" · ");
    const small = under === "" ? "" : ` <small>${under}</small>`;
    return `<tr${dose ? ' class="dose"' : ""}><th scope="row">${apart(name)}${small}</th><td class="weigh">${takeHtml(row)}</td></tr>`;
  }

  #brings(): string {
    const { energy, day, against, days, meals } = this.#card;
    if (day.length === 0) return "";
    const id = `${this.#at}brings`;
    const key = energy?.slices.map(
      ({ part, name, shown }) => `<li>${swatch(looks[part])}${escapeHtml(name)} ${escapeHtml(shown)}</li>`,
    );
    const open = energy?.open.join(", ") ?? "";
    const rest =
      open === ""
        ? []
        : [`<li>${swatch("unknown")}${this.#say("not all known: {parts}", { parts: open })}</li>`];
    const title =
      days > 1
        ? this.#say("Nutrients a day, mean of {days} days", { days: String(days) })
        : this.#say(meals.length === 1 ? "Nutrients of this portion" : "Nutrients of all these portions");
    return [
      `<section class="nutrients" aria-labelledby="${this.#named(id)}">`,
      `<h2 id="${id}">${title}</h2>`,
      `<table aria-labelledby="${id}">`,
      this.#nutrientHeads(against),
      `<tbody>${day.map((row) => this.#nutrient(row, against)).join("\n")}</tbody>`,
      "</table>",
      against ? `<p class="small">${this.#reading(day)}</p>` : "",
      energy === undefined
        ? ""
        : `<figure>${energySvg(energy, `${id}-energy`).replace("{title}", () => attribute(energy.spoken))}<figcaption><ul class="key"><li>${this.#say("Energy from:")}</li>${[...(key ?? []), ...rest].join("")}</ul></figcaption></figure>`,
      "</section>",
    ].join("\n");
  }

  /** Over shares stands one axis for all of them, from nothing to a fifth more than a day. */
  #nutrientHeads(against: boolean): string {
    if (!against) {
      return `<thead class="unseen"><tr><th scope="col">${this.#say("Nutrient")}</th><th scope="col">${this.#say("How much")}</th></tr></thead>`;
    }
    const half = this.#say("{figure}%", { figure: "50" });
    const axis = `<span class="axis" aria-hidden="true"><i>0</i><i>${half}</i><i>${this.#say("a day")}</i></span>`;
    return `<thead><tr><th scope="col">${this.#say("Nutrient")}</th><th scope="col"><span class="unseen">${this.#say("Share of a day")}</span>${axis}</th></tr></thead>`;
  }

  #reading(day: readonly DayRow[]): string {
    const open = day.some(({ share }) => share?.open);
    const upper = day.some(({ share }) => share?.upper !== undefined);
    return [
      this.#say("The line marks a whole day."),
      ...(open ? [this.#say("Hatched: not known, there may be more.")] : []),
      ...(upper ? [this.#say("The broken line marks the upper level, where it lies near.")] : []),
    ].join(" ");
  }

  #nutrient({ id, name, brings, part, share }: DayRow, against: boolean): string {
    const tone = brings.tone === "known" ? "" : ` data-tone="${brings.tone}"`;
    const said = part === "" ? "" : ` <small>${escapeHtml(part)}</small>`;
    const amount = `<span class="lead"${tone}>${figureHtml(brings.text)}</span>`;
    const look = LARGE.has(id) ? ' class="large"' : "";
    if (!against || share === undefined) {
      return `<tr${look}><th scope="row">${escapeHtml(name)}</th><td class="brings">${amount}${said}</td></tr>`;
    }
    const over = share.over ? ` <span class="over-text">${this.#say("over")}</span>` : "";
    const picture = shareSvg(share).replace("{label}", () => attribute(share.spoken));
    return `<tr${look}><th scope="row">${escapeHtml(name)} ${amount}${said}</th><td><span class="of-day"><span class="percent">${figureHtml(share.shown)}${over}</span>${picture}</span></td></tr>`;
  }

  #cautions(): string {
    const { cautions } = this.#card;
    if (cautions.length === 0) return "";
    const items = cautions.map(
      ({ text, footnote }: Sourced) => `<li>${escapeHtml(text)}${this.#reference(footnote)}</li>`,
    );
    return [
      `<section class="cautions" aria-labelledby="${this.#named(`${this.#at}cautions`)}">`,
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

  #footer(): string {
    const notes = this.#card.notes.map((note) => `<li>${amountHtml(note)}</li>`);
    return `<footer><ul>${notes.join("")}</ul>${this.#back()}</footer>`;
  }

  /** Folded away on a screen; on a second side in print, where several days begin on already. */
  #back(): string {
    const { person, sources } = this.#card;
    const list = sources.map((source, i) => `<li id="${this.#at}source-${i + 1}">${escapeHtml(source)}</li>`);
    if (list.length === 0) return "";
    return `<details class="sources${this.#days.length > 1 ? " follow" : ""}"><summary>${this.#say("Sources")} <span class="whose">${apart(person)}</span></summary><ol>${list.join("")}</ol></details>`;
  }

  /** Of several people's pages in one document a section is named with the person. */
  #named(id: string): string {
    return this.#at === "" ? id : `${this.#at}name ${id}`;
  }

  #say(phrase: string, gaps: { readonly [name: string]: string } = {}): string {
    return escapeHtml(say(this.#language, phrase, gaps));
  }
}

function noteHtml(note: string): string {
  return `<p class="small">${escapeHtml(note)}</p>`;
}

function stepsHtml(method: CardDish["method"]): string {
  if (method.length === 0) return "";
  return `<ol>${method.map((step) => `<li>${step.map(pieceHtml).join("")}</li>`).join("")}</ol>`;
}

/** A figure with its unit and mark on one line; words before it may stand above. */
function figureHtml(text: string): string {
  return escapeHtml(text).replace(/(?<=\d.*)(?<!,) /g, "&nbsp;");
}

function pieceHtml(piece: Piece): string {
  if ("text" in piece) return escapeHtml(piece.text);
  const amount = piece.amount === undefined ? "" : `${amountHtml(piece.amount)} `;
  return `<b>${amount}${apart(piece.name)}</b>`;
}
