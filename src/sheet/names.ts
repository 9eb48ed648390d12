import { type Language, say } from "../document/language.ts";
import type { Sheet } from "./sheet.ts";

/** Adjectives of places, which keep their capitals. */
const PLACES: ReadonlySet<string> = /* @__PURE__ */ new Set(
  "Atlantic American Asian Brazil British Brussels Chinese Dutch English French German Greek Indian Irish Italian Japanese Mexican Pacific Scottish Spanish Swiss Thai Turkish Welsh".split(
    " ",
  ),
);

/**
 * A name as it stands within a sentence: without the capital of its first word, in English, unless that is of a
 * place or all capitals.
 */
export function inSentence(name: string, language: Language): string {
  const [, first = ""] = /^(\p{Lu}\p{Ll}+)(?!\p{L})/u.exec(name) ?? [];
  if (first === "" || PLACES.has(first) || !language.tag.startsWith("en")) return name;
  return name.charAt(0).toLowerCase() + name.slice(1);
}

/** A name as far as its first comma: `Oats, rolled` is `Oats`. */
export function shortName(name: string): string {
  return name.split(",")[0]?.trim() || name;
}

/** What a reader calls a line: the short name of its food, of one within a nested recipe too, never its key. */
export function lineNameIn(s: Sheet, key: string, language: Language): string {
  for (const { line, source, nested } of s.plan.lines) {
    if (line.key === key) return shortName(say(language, source.name));
    if (nested && key.startsWith(`${line.key}/`)) {
      return lineNameIn(nested, key.slice(line.key.length + 1), language);
    }
  }
  return keyWords(key);
}

/** A line's own key as words, where nothing tells its food: `topping/tomatoPaste` is `tomato paste`. */
export function keyWords(key: string): string {
  const own = key.slice(key.lastIndexOf("/") + 1);
  return own
    .replace(/(?<=\p{Ll})(?=\p{Lu})/gu, " ")
    .replace(/[-_]+/g, " ")
    .toLowerCase();
}

/** What a reader calls a line of several sheets, whose names stand before the keys of their lines: `pot/oats`. */
export function lineNameAmong(
  sheets: Iterable<readonly [name: string, s: Sheet]>,
  key: string,
  language: Language,
): string {
  for (const [name, s] of sheets) {
    if (key.startsWith(`${name}/`)) return lineNameIn(s, key.slice(name.length + 1), language);
  }
  return keyWords(key);
}

/** A line's path as words, what it is of before it: `Oat pot/oats` is `Oat pot: oats`. */
export function pathWords(key: string): string {
  const within = key.split("/").slice(0, -1).join(", ");
  return within === "" ? keyWords(key) : `${within}: ${keyWords(key)}`;
}
