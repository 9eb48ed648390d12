import { numberWords } from "../data/words.ts";

/** A number or a range at the beginning of a text, and what follows it. */
export interface SpelledNumber {
  readonly least: string;
  readonly most: string;
  readonly rest: string;
  /** Whether it stands in words alone, so that "a" may be no more than an article. */
  readonly isArticle: boolean;
}

interface One {
  readonly value: string;
  readonly rest: string;
  readonly isArticle: boolean;
}

const MIXED = /^(\d+)(?: ?- ?| and | & | )(\d+) ?\/ ?(\d+)(?![\d/])/;
const FRACTION = /^(\d+) ?\/ ?(\d+)(?![\d/])/;
const DECIMAL = /^(?:\d+(?:[.,]\d{1,2}(?!\d)|\.\d+)?|\.\d+)(?![\d%])(?! ?%)(?![.,]\d)/;
const WORD = /^([a-z]+)(?![a-z'’])/i;
const BETWEEN = /^ ?(?:-|–|—|−|~|\.\.+|…|to|or|and up to|up to) ?(?=[\d.]|[a-z]+\b)/i;

/** Reads a number in figures or words, or a range of two, at the beginning of a text. */
export function readQuantity(text: string): SpelledNumber | undefined {
  const first = readOne(text);
  if (!first) return undefined;
  const between = BETWEEN.exec(first.rest);
  const second = between && !first.isArticle ? readOne(first.rest.slice(between[0].length)) : undefined;
  if (second && !second.isArticle && isGreaterNumber(second.value, first.value))
    return { least: first.value, most: second.value, rest: second.rest, isArticle: false };
  return { least: first.value, most: first.value, rest: first.rest, isArticle: first.isArticle };
}

/** Reads one number at the beginning of a text. */
export function readOne(text: string): One | undefined {
  const mixed = MIXED.exec(text);
  if (mixed && Number(mixed[2]) < Number(mixed[3]))
    return {
      value: `${mixed[1]} ${mixed[2]}/${mixed[3]}`,
      rest: text.slice(mixed[0].length),
      isArticle: false,
    };
  const fraction = FRACTION.exec(text);
  if (fraction && Number(fraction[2]) > 0)
    return {
      value: `${fraction[1]}/${fraction[2]}`,
      rest: text.slice(fraction[0].length).replace(/^ (?:of )?an? (?=\p{L})/u, " "),
      isArticle: false,
    };
  // Three digits behind one comma may be thousands or decimals, and stay as they stand; behind two commas they are thousands.
  const grouped = /^\d{1,3}(?:,\d{3})+(?![\d,.])/.exec(text)?.[0];
  if (grouped !== undefined) {
    const isPlain = grouped.split(",").length > 2;
    const value = isPlain ? grouped.replaceAll(",", "") : grouped;
    return { value, rest: text.slice(grouped.length), isArticle: false };
  }
  const decimal = DECIMAL.exec(text);
  if (decimal) {
    const value = decimal[0].replace(",", ".").replace(/^\./, "0.");
    return { value, rest: text.slice(decimal[0].length), isArticle: false };
  }
  return readWords(text);
}

/** One, half a, a quarter of a, one and a half, a dozen, a couple of. */
function readWords(text: string): One | undefined {
  const part =
    /^(?:(?:a|one) )?(half|quarter|third)(?:(?: of)? an?|(?: of)(?= (?:the|one)\b))?(?= |-|$)/i.exec(text);
  if (part) {
    const value = numberWords.get((part[1] ?? "").toLowerCase()) ?? "";
    const after = text.slice(part[0].length);
    const dozen = /^ dozen\b/i.exec(after);
    if (dozen && value === "1/2") return { value: "6", rest: after.slice(dozen[0].length), isArticle: false };
    // "half-inch pieces" and "half and half" are no amounts.
    return /^(?:-| and half)/i.test(after) ? undefined : { value, rest: after, isArticle: false };
  }
  const quarters = /^(two|three)[ -](quarters?|thirds?)(?: of(?: an?)?| an?)?(?= |$)/i.exec(text);
  if (quarters) {
    const top = (quarters[1] ?? "").toLowerCase() === "two" ? 2 : 3;
    const value = `${top}/${/^q/i.test(quarters[2] ?? "") ? 4 : 3}`;
    return { value, rest: text.slice(quarters[0].length), isArticle: false };
  }
  const dozen = /^(?:an? )?(dozen|couple)(?: of)?(?= )/i.exec(text);
  if (dozen) {
    const value = /^d/i.test(dozen[1] ?? "") ? "12" : "2";
    return { value, rest: text.slice(dozen[0].length), isArticle: false };
  }
  const word = WORD.exec(text)?.[1] ?? "";
  const value = numberWords.get(word.toLowerCase());
  if (value === undefined || value.includes("/")) return undefined;
  const rest = text.slice(word.length);
  const more = /^ and (?:a )?(half|quarter|third)(?= |$)/i.exec(rest);
  const isArticle = /^an?$/i.test(word);
  if (more && !isArticle) {
    const part = numberWords.get((more[1] ?? "").toLowerCase()) ?? "";
    return { value: `${value} ${part}`, rest: rest.slice(more[0].length), isArticle: false };
  }
  return { value, rest, isArticle };
}

/** Whether one number text is above another, exactly. */
export function isGreaterNumber(a: string, b: string): boolean {
  const [n, d] = ratio(a);
  const [m, e] = ratio(b);
  return n * e > m * d;
}

/** A number text (`3`, `1.5`, `1/2`, `3 1/2`, `1,000` as thousands) as a ratio. */
function ratio(given: string): readonly [bigint, bigint] {
  const text = given.replaceAll(",", "");
  const [whole = "0", part] = text.includes("/") && text.includes(" ") ? text.split(" ") : ["0", text];
  const [top = "0", bottom = "1"] = (part ?? "0").split("/");
  const [units = "0", decimals = ""] = top.split(".");
  const d = BigInt(bottom) * 10n ** BigInt(decimals.length);
  return [BigInt(whole) * d + BigInt(units + decimals), d];
}
