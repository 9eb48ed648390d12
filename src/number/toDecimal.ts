import { Decimal } from "./decimal.ts";
import { decimalPlaces, fixedText } from "./digits.ts";
import { fault } from "./error.ts";
import { exact, fraction, type Value } from "./exact.ts";
import { magnitude } from "./ratio.ts";

/** Significant digits of a Decimal made of a figure that does not end: those of IEEE 754 decimal128. */
export const FACE_DIGITS = 34;

/**
 * The Decimal of a figure: exact where it is whole or ends within `FACE_DIGITS` significant
 * digits, else the nearest decimal of that many, a half going away from zero.
 */
export function toDecimal(value: Value): Decimal {
  const a = exact(value);
  if (a.d === 1n) return new Decimal(a.n.toString());
  const places = FACE_DIGITS - magnitude(a) - 1;
  const ends = decimalPlaces(a.d);
  const text = fixedText(a, ends !== undefined && ends < places ? ends : places);
  return new Decimal(text);
}

let lastPower:
  | { readonly d: bigint; readonly odd: bigint; readonly lift: bigint; readonly places: number }
  | undefined;

/**
 * The face of `n / d`, not reduced first. Many figures of one sheet stand over one denominator, so
 * what lifts it to a power of ten is kept from call to call; `odd` is what neither 2 nor 5 divides.
 */
export function ratioToDecimal(n: bigint, d: bigint): Decimal {
  if (d < 0n) return ratioToDecimal(-n, -d);
  // Of a denominator of more than 1,024 binary digits the powers of 2 and 5 are not looked for.
  if (d >> 1024n !== 0n) return toDecimal(fraction(n, d));
  if (lastPower?.d !== d) lastPower = powerOf(d);
  const { odd, lift, places } = lastPower;
  if (odd !== 1n && n % odd !== 0n) return toDecimal(fraction(n, d));
  const digits = ((n < 0n ? -n : n) / odd) * lift;
  const padded = digits.toString().padStart(places + 1, "0");
  const text = `${padded.slice(0, padded.length - places)}.${padded.slice(padded.length - places)}`;
  const significant = text.length > FACE_DIGITS ? text.replace(/^[0.]+|\.|0+$/g, "").length : 0;
  return significant > FACE_DIGITS ? toDecimal(fraction(n, d)) : new Decimal(`${n < 0n ? "-" : ""}${text}`);
}

function powerOf(d: bigint): NonNullable<typeof lastPower> {
  if (d === 0n)
    throw fault(
      "number-zero-denominator",
      "a fraction over zero has no value",
      "write a denominator above 0",
    );
  let odd = d;
  while (odd % 2n === 0n) odd /= 2n;
  while (odd % 5n === 0n) odd /= 5n;
  const places = decimalPlaces(d / odd) ?? 0;
  return { d, odd, lift: 10n ** BigInt(places) / (d / odd), places };
}
