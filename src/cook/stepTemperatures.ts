import { type Language, say } from "../document/language.ts";
import { readNumber } from "../measure/numberText.ts";
import { exactText } from "../number/digits.ts";
import {
  absolute,
  type Exact,
  exact,
  fraction,
  minus,
  negate,
  over,
  plus,
  times,
  toStep,
  ZERO,
} from "../number/exact.ts";
import { compareRatios } from "../number/ratio.ts";
import { temperature } from "./convertUnits.ts";

type Scale = "celsius" | "fahrenheit";

/** Figures, what stands between them, and the scale: after a degree sign or word, or a letter alone after three digits, since 2 C are cups. */
const TEMPERATURE =
  /(?:(?<![\p{L}\p{N}.,/–—-])|(?<=[°º] ?[CFcf] ?[/–—-] ?))([-−]?\d{1,4}(?:[.,]\d{1,2})?)(?:( ?[-–—/] ?| to | or | and )([-−]?\d{1,4}(?:[.,]\d{1,2})?))?(?: ?[°º] ?([CFcf])| ?([℃℉])| [Dd]eg(?:rees?|\.)? ?(C|F|[Cc]elsius|[Cc]entigrade|[Ff]ahrenheit)|(?<=\d{3}) ?([CF]))(?![\p{L}\p{N}])/gu;
const BY = /(?:\b(?:by|within|another)|±|\+\/-) ?$/iu;
const THAN = /^ (?:above|below|colder|cooler|higher|hotter|less|lower|more|over|under|warmer)\b/iu;

/** Puts the temperatures of a step's stretches into the reader's scale; undefined where the step has both already. */
export function temperaturesFor(
  step: string,
  wanted: Scale | "both",
  language: Language,
): ((text: string) => string) | undefined {
  const scales = new Set([...step.matchAll(TEMPERATURE)].map(scaleOf));
  const [scale] = scales;
  if (scale === undefined || scales.size > 1 || scale === wanted) return undefined;
  const other = scale === "celsius" ? "fahrenheit" : "celsius";
  return (text) =>
    text.replace(TEMPERATURE, (written: string, ...rest: unknown[]) => {
      const [first, between, second] = rest as (string | undefined)[];
      const at = rest.find((each) => typeof each === "number") ?? 0;
      const isDifference = BY.test(text.slice(0, at)) || THAN.test(text.slice(at + written.length));
      const put = (figure = ""): string => converted(figure, other, isDifference);
      const figure = second === undefined ? put(first) : `${put(first)}${between}${put(second)}`;
      const shown = say(language, other === "celsius" ? "{figure} °C" : "{figure} °F", { figure });
      return wanted === "both" ? `${written} (${shown})` : shown;
    });
}

function scaleOf(found: RegExpMatchArray): Scale {
  return /[Ff℉]/u.test(found.slice(4).join("").slice(0, 1)) ? "fahrenheit" : "celsius";
}

/** A figure of the other scale, as round as it was written. */
function converted(written: string, to: Scale, isDifference: boolean): string {
  const minusSign = /^[-−]/.exec(written)?.[0] ?? "";
  const size = readNumber(written.slice(minusSign.length)).value;
  const degrees = minusSign === "" ? size : negate(size);
  const { zero, perDegree } = fahrenheitLine();
  const from = isDifference ? ZERO : zero;
  const exactly =
    to === "fahrenheit" ? plus(times(degrees, perDegree), from) : over(minus(degrees, from), perDegree);
  const hot = to === "fahrenheit" ? degrees : exactly;
  const isRound = compareRatios(hot, fraction(100n)) >= 0 && times(degrees, fraction(1n, 5n)).d === 1n;
  const shown = toStep(exactly, fraction(isRound ? 5n : 1n));
  const text = exactText(absolute(shown));
  return compareRatios(shown, ZERO) < 0 ? `${minusSign || "-"}${text}` : text;
}

/**
 * Degrees Fahrenheit at 0 °C, and in one degree Celsius. The scales are straight lines to each other,
 * so that two points tell all: convert-units has 32 and 212 °F where water freezes and boils.
 */
function fahrenheitLine(): { readonly zero: Exact; readonly perDegree: Exact } {
  const { transform } = temperature._anchors.metric;
  const zero = exact(transform(0));
  return { zero, perDegree: over(minus(exact(transform(100)), zero), exact(100)) };
}
