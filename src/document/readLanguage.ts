import type { ErrorCode, Path } from "../number/error.ts";
import { britishEnglish, type Language, type PluralForms, type UnitWords } from "./language.ts";
import { anyText, callback, text, word } from "./leaves.ts";
import { read } from "./read.ts";
import { trust } from "./safe.ts";
import { andThen, byName, choice, fields, once, optional, readAs, type Schema } from "./schema.ts";

/** A language of one's own. */
const languageSchema: () => Schema<Language> = /* @__PURE__ */ once(() =>
  fields<Language>({
    tag: text(50),
    decimal: word([".", ","]),
    group: anyText(),
    phrases: byName(anyText()),
    spellings: optional(byName(anyText())),
    words: optional(unitWordsSchema()),
    temperatures: optional(word(["celsius", "fahrenheit", "both"])),
    times: optional(word(["hours", "minutes"])),
  }),
);

const unitWordsSchema: () => Schema<UnitWords> = /* @__PURE__ */ once(() => {
  const one = anyText();
  const forms = andThen(byName(anyText()), (read, refuse) => {
    if (!Object.hasOwn(read, "other")) refuse("the form for other numbers is left out", `give ${FORMS}`);
    return read as PluralForms;
  });
  return fields<UnitWords>({
    units: byName(
      choice<string | PluralForms>([one, forms], (given) => (typeof given === "string" ? one : forms), FORMS),
    ),
    sets: optional(byName(anyText())),
    nouns: optional(byName(anyText())),
    joins: optional(fields<NonNullable<UnitWords["joins"]>>({ mass: anyText(), other: anyText() })),
    category: optional(callback("a function from a figure to its plural category")),
  });
});

const FORMS = 'a word, or its forms: { one: "cup", other: "cups" }';

/** One language words many tables, and its words many amounts: each is looked through once. */
const READ: WeakSet<object> = /* @__PURE__ */ new WeakSet();

function readOnce<T extends object>(schema: Schema<T>, given: T, code: ErrorCode, path: Path = []): T {
  if (READ.has(given)) return given;
  read(schema, given, code, path);
  READ.add(given);
  trust(given);
  return given;
}

/** @internal A language, among the options of what shows something. */
export const language: () => Schema<Language> = /* @__PURE__ */ once(() =>
  readAs(languageSchema(), "a language", (given) =>
    readOnce(languageSchema(), given as Language, "table-malformed"),
  ),
);

/** @internal Unit words, among the options of an amount. */
export const unitWords: () => Schema<UnitWords> = /* @__PURE__ */ once(() =>
  readAs(unitWordsSchema(), "the words of a language", (given) =>
    readOnce(unitWordsSchema(), given as UnitWords, "format-malformed"),
  ),
);

/** A language from outside, British English where it is left out. Throws `table-malformed`. */
export function readLanguage(given: Language = britishEnglish): Language {
  return readOnce(languageSchema(), given, "table-malformed", ["language"]);
}
