import { type Language, say } from "../document/language.ts";
import { plainFractions } from "../measure/clean.ts";
import { readNumber } from "../measure/numberText.ts";
import { type Exact, exact, over, plus, times } from "../number/exact.ts";
import { floor } from "../number/ratio.ts";
import { time } from "./convertUnits.ts";

/** A figure or two, the unit, and minutes after hours: `1 1/2 to 2 hours`, `1 h 30 min`. */
const TIME =
  /(?<![\p{L}\p{N}.,/–—-])((?:\d{1,4} ?)?(?:[¼½¾⅐-⅞]|\d{1,2}[/⁄]\d{1,2})|\d{1,4}(?:[.,]\d{1,2})?)(?:( ?[-–—] ?| to | or )((?:\d{1,4} ?)?(?:[¼½¾⅐-⅞]|\d{1,2}[/⁄]\d{1,2})|\d{1,4}(?:[.,]\d{1,2})?))? ?(?:(h|hrs?|hours?)(?:(?: and | )(\d{1,2}) ?(?:mins?|minutes?))?|mins?|minutes?)(?![\p{L}\p{N}])/gu;

/** Says the times of a text in hours and minutes, or in minutes, by the reader's words; what is no whole minute stays as written. */
export function timesFor(text: string, wanted: "hours" | "minutes" | undefined, language: Language): string {
  if (wanted === undefined) return text;
  const hour = over(exact(time.metric.h.to_anchor), exact(time.metric.min.to_anchor));
  return text.replace(TIME, (written: string, ...rest: unknown[]) => {
    const [first = "", between = "", second, hours, andMinutes = "0"] = rest as (string | undefined)[];
    const figures = second === undefined ? [first] : [first, second];
    const minutes = figures.map((figure, i) => {
      const { value } = readNumber(plainFractions(figure));
      const more = i === figures.length - 1 ? andMinutes : "0";
      return hours === undefined ? value : plus(times(value, hour), exact(more));
    });
    if (minutes.some(({ d }) => d !== 1n)) return written;
    if (wanted === "minutes") return minutesText(minutes.map(({ n }) => n).join(between), language);
    return minutes.map((each) => hoursText(each, hour, language)).join(between);
  });
}

const minutesText = (figure: string, language: Language): string => say(language, "{figure} min", { figure });

function hoursText(all: Exact, hour: Exact, language: Language): string {
  const whole = floor(over(all, hour));
  const rest = all.n - whole * hour.n;
  if (whole === 0n) return minutesText(String(rest), language);
  if (rest === 0n) return say(language, "{figure} h", { figure: String(whole) });
  return say(language, "{hours} h {minutes} min", { hours: String(whole), minutes: String(rest) });
}
