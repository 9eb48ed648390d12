import type { Language } from "../document/language.ts";
import { clean } from "../show/clean.ts";
import { escapeHtml } from "../show/html.ts";
import { patterns } from "./bars.ts";
import { style } from "./style.ts";

/** Languages that are written from right to left, by the first part of their tag. */
const RIGHT_TO_LEFT: readonly string[] = ["ar", "dv", "fa", "he", "ks", "ps", "sd", "ug", "ur", "yi"];

/** What keeps the page from fetching or running anything, whatever stands in it. */
const POLICY = "default-src 'none'; style-src 'unsafe-inline'; base-uri 'none'; form-action 'none'";

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

/** When a page was made, and which edition it is. */
export function issuedHtml({
  date,
  version,
}: {
  readonly date?: string | undefined;
  readonly version?: string | undefined;
}): string {
  const issued = [
    ...(date === undefined ? [] : [dated(date)]),
    ...(version === undefined ? [] : [escapeHtml(version)]),
  ];
  return issued.length === 0 ? "" : `<p class="issued">${issued.join(" · ")}</p>`;
}

function dated(date: string): string {
  return /^\d{4}-\d{2}-\d{2}$/.test(date) ? `<time datetime="${date}">${date}</time>` : escapeHtml(date);
}
