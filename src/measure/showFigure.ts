import { britishEnglish, type Language, say } from "../document/language.ts";
import { fixedText } from "../number/digits.ts";
import { fault } from "../number/error.ts";
import { type Exact, exact, fraction, times, ZERO } from "../number/exact.ts";
import { ceiling, floor, magnitude } from "../number/ratio.ts";

export interface FigureOptions {
  /** Significant digits, 1 to 34; 3 unless told. Whole units are never rounded away: 1234 stays 1234. */
  readonly significant?: number;
  /** Decimal places, 0 to 34, instead of significant digits. */
  readonly places?: number;
  /** Which way to round: a half away from zero unless told; a lower bound goes down and an upper one up. */
  readonly rounding?: "nearest" | "down" | "up";
  /** Whether zeros that only pad the decimals stay; they go unless told. */
  readonly zeros?: "trim" | "keep";
  /** Whether thousands are set apart; not unless told, since `1,000` reads as one in half the world. */
  readonly grouped?: boolean;
  /** Written after the figure, in the reader's language. */
  readonly unit?: string;
  /** British English unless told. */
  readonly language?: Language;
}

const LEAST_POWER = -9;
const GREATEST_POWER = 15;

/**
 * A figure as a person reads it: 3 significant digits but whole units in full, rounded exactly, a
 * half away from zero. Something is never shown as nothing: what would round to 0 is shown as under
 * the limit of rounding. Plain digits from a thousand-millionth to 10^15, powers of ten outside.
 *
 * Throws `figure-malformed` for `significant` or `places` out of range.
 *
 * @example
 * ```ts
 * showFigure(exact("1234.5")); // => 1235
 * showFigure(exact("1/3"), { unit: "g" }); // => 0.333 g
 * showFigure(exact("0.2"), { places: 0 }); // => under 0.5
 * ```
 */
export function showFigure(f: Exact, how: FigureOptions = {}): string {
  const language = how.language ?? britishEnglish;
  const unit = how.unit === undefined ? "" : ` ${say(language, how.unit)}`;
  const places = inRange("places", how.places, 0);
  if (places === undefined) return `${significantText(f, how)}${unit}`;
  if (!roundsToNothing(f, how)) return `${localDigits(fixed(f, places, how), how)}${unit}`;
  const nearest = (how.rounding ?? "nearest") === "nearest";
  const limit = nearest ? fixedText(fraction(5n, 10n ** BigInt(places + 1)), places + 1) : "0";
  const figure = `${nearest && f.n < 0n ? "-" : ""}${localDigits(limit, how)}${unit}`;
  return say(language, f.n > 0n === nearest ? "under {figure}" : "over {figure}", { figure });
}

/**
 * A share as a per cent, to whole per cents unless told: 1/4 is `25%`. Whole per cents need not
 * add up to 100; where they must, apportion them first.
 *
 * Throws `figure-malformed`.
 */
export function showPercent(share: Exact, how: Omit<FigureOptions, "unit"> = {}): string {
  const precise = how.significant === undefined && how.places === undefined ? { ...how, places: 0 } : how;
  const figure = showFigure(times(share, fraction(100n)), precise);
  return say(how.language ?? britishEnglish, "{figure}%", { figure });
}

/** A figure that only bounds the truth, rounded so that it still does: at least 4.149 is at least 4.14. */
export function showBound(f: Exact, bound: "at-least" | "at-most", how: FigureOptions = {}): string {
  const own: FigureOptions = { ...how, rounding: bound === "at-least" ? "down" : "up" };
  const figure = showFigure(f, own);
  if (roundsToNothing(f, own)) return figure;
  const phrase = bound === "at-least" ? "at least {figure}" : "at most {figure}";
  return say(how.language ?? britishEnglish, phrase, { figure });
}

/** The ends of a range, rounded so that both still hold. */
export function showRange(low: Exact, high: Exact, how: FigureOptions = {}): string {
  const { unit, ...plain } = how;
  const end = (f: Exact, rounding: "down" | "up", own: FigureOptions): string => {
    const rounded = { ...own, rounding };
    return showFigure(roundsToNothing(f, rounded) && rounding === "down" ? ZERO : f, rounded);
  };
  const most = end(high, "up", how);
  const least = end(low, "down", plain);
  if (least === end(high, "up", plain)) return most;
  return say(how.language ?? britishEnglish, "{low} to {high}", { low: least, high: most });
}

function significantText(f: Exact, how: FigureOptions): string {
  const digits = inRange("significant", how.significant, 1) ?? 3;
  const power = magnitude(f);
  if (f.n !== 0n && (power < LEAST_POWER || power >= GREATEST_POWER)) {
    const shift = fraction(10n ** BigInt(Math.abs(power)));
    const text = rounded(power > 0 ? fraction(f.n, f.d * shift.n) : times(f, shift), digits, how);
    return /^-?10/.test(text)
      ? `${text.startsWith("-") ? "-1" : "1"} × 10^${power + 1}`
      : `${localDigits(text, how)} × 10^${power}`;
  }
  return localDigits(rounded(f, digits, how), how);
}

function rounded(f: Exact, digits: number, how: FigureOptions): string {
  if (f.n === 0n) return "0";
  const places = Math.max(0, digits - 1 - magnitude(f));
  const text = fixed(f, places, how);
  // 9.996 rounds up into another digit before the point, and so needs one fewer after it.
  const carried = magnitude(exact(text)) > magnitude(f) && places > 0;
  return carried ? fixedText(exact(text), places - 1) : text;
}

function fixed(f: Exact, places: number, how: FigureOptions): string {
  if (how.rounding === undefined || how.rounding === "nearest") return fixedText(f, places);
  const whole = (how.rounding === "down" ? floor : ceiling)({ n: f.n * 10n ** BigInt(places), d: f.d });
  return fixedText({ n: whole, d: 10n ** BigInt(places) }, places);
}

function localDigits(text: string, how: FigureOptions): string {
  const language = how.language ?? britishEnglish;
  const [whole = "", part = ""] = text.split(".");
  const decimals = how.zeros === "keep" ? part : part.replace(/0+$/, "");
  const grouped = how.grouped === true ? whole.replace(/\B(?=(?:\d{3})+$)/g, language.group) : whole;
  return decimals === "" ? grouped : `${grouped}${language.decimal}${decimals}`;
}

/** Whether a figure that is something would be shown as 0: never to significant digits. */
function roundsToNothing(f: Exact, how: FigureOptions): boolean {
  return how.places !== undefined && f.n !== 0n && /^-?[0.]+$/.test(fixed(f, how.places, how));
}

function inRange(name: string, value: number | undefined, least: number): number | undefined {
  if (value !== undefined && !(Number.isInteger(value) && value >= least && value <= 34)) {
    throw fault(
      "figure-malformed",
      `${name} of ${String(value)}`,
      `give a whole number from ${least} to 34`,
      [name],
    );
  }
  return value;
}
