import type { Language } from "../document/language.ts";
import type { Card } from "./card.ts";
import { documentHtml } from "./markup.ts";
import { PersonPage } from "./personHtml.ts";
import { typeSize } from "./typeSize.ts";

/** A card as one page that needs nothing from anywhere. */
export function cardHtml(card: Card, language: Language): string {
  const days = [...new Set(card.meals.flatMap(({ day }) => day ?? []))];
  const title = [card.person, ...(days.length > 0 ? days : card.meals.map(({ name }) => name))].join(", ");
  return documentHtml({ title, language, type: typeSize(card), parts: cardParts(card, language, "") });
}

/** What stands in a person's page; `at` tells its marks from those of other pages in one document. */
export function cardParts(card: Card, language: Language, at: string): readonly string[] {
  return new PersonPage(card, language, at).parts();
}
