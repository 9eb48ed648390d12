import { clean } from "../show/clean.ts";
import { escapeHtml } from "../show/html.ts";
import type { Take } from "./card.ts";

/** How much to take, for a cell: what to measure large, the same in other words beneath. */
export function takeHtml({ lead, also }: Take): string {
  const small = also === "" ? "" : ` <small>${amountHtml(also)}</small>`;
  const look = lead.length > LONG ? "lead long" : "lead";
  return `<span class="${look}">${amountHtml(lead)}</span>${small}`;
}

/** An amount of more characters may go on to another line. */
const LONG = 18;

/** An amount with its fractions as one sign each, as they are printed on spoons. */
export function amountHtml(text: string): string {
  return escapeHtml(
    clean(text).replace(
      /(?<![\d/.,])(?:(\d+) )?([1-7]\/[2348])(?![\d/])/g,
      (all, whole = "", part: string) => {
        const sign = SIGNS[part];
        return sign === undefined ? all : `${whole}${sign}`;
      },
    ),
  );
}

const SIGNS: { readonly [fraction: string]: string } = {
  "1/2": "½",
  "1/3": "⅓",
  "2/3": "⅔",
  "1/4": "¼",
  "3/4": "¾",
  "1/8": "⅛",
  "3/8": "⅜",
  "5/8": "⅝",
  "7/8": "⅞",
};
