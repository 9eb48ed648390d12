import { magnitude, nearest, type Ratio } from "./ratio.ts";

/** Significant digits of a figure as it is read: more than any kitchen, few enough to read. */
const READ_DIGITS = 20;

/**
 * Writes a figure for reading: exact where it ends within 20 significant digits, else rounded to
 * those, a half away from zero, without zeros at its end.
 */
export function readText(a: Ratio): string {
  if (a.d === 1n && a.n < SHORT && a.n > -SHORT) return a.n.toString();
  const places = READ_DIGITS - 1 - magnitude(a);
  const text = fixedText(a, Math.min(places, decimalPlaces(a.d) ?? places));
  return places > 0 ? text.replace(/\.?0+$/, "") : text;
}

const SHORT = 100000000000000000000n;

/** Decimals beyond these say no more than the fraction does, in more characters. */
const MOST_PLACES = 1000;

/** Writes a figure exactly: `3`, `0.25` or `1/3`, a fraction too where a thousand decimals do not end it. */
export function exactText(a: Ratio): string {
  return decimalText(a) ?? `${a.n}/${a.d}`;
}

/** Writes a figure in lowest terms as decimal text; undefined if it does not end within a thousand decimals. */
export function decimalText(a: Ratio): string | undefined {
  if (a.d === 1n) return a.n.toString();
  const places = decimalPlaces(a.d);
  return places === undefined ? undefined : fixedText(a, places);
}

/** Writes a figure to a number of decimal places, a half going away from zero; zero bears no sign. */
export function fixedText({ n, d }: Ratio, places: number): string {
  const power = 10n ** BigInt(Math.abs(places));
  if (places <= 0) return (nearest({ n, d: d * power }) * power).toString();
  const scaled = nearest({ n: n * power, d });
  const digits = (scaled < 0n ? -scaled : scaled).toString().padStart(places + 1, "0");
  return `${scaled < 0n ? "-" : ""}${digits.slice(0, -places)}.${digits.slice(-places)}`;
}

/** Counts the decimals of a figure in lowest terms over `d`; undefined if a thousand do not end it. */
export function decimalPlaces(d: bigint): number | undefined {
  // 10 to the 1,000 has 3,322 binary digits.
  if (d >> 3322n !== 0n) return undefined;
  let rest = d;
  let twos = 0;
  let fives = 0;
  for (; rest % 2n === 0n; rest /= 2n) twos += 1;
  for (; rest % 5n === 0n; rest /= 5n) fives += 1;
  const places = Math.max(twos, fives);
  return rest === 1n && places <= MOST_PLACES ? places : undefined;
}
