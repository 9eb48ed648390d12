/** Where the free functions stood before `exact.ts`; to be imported from there. */
export { decimalText, fixedText, toText } from "./digits.ts";
export type { Exact as Fraction } from "./exact.ts";
export {
  absolute,
  Exact,
  equals,
  exact,
  fraction,
  greatest,
  isDecimal,
  isNumeric,
  isRatio,
  isZero,
  least,
  minus,
  negate,
  ONE,
  over,
  plus,
  sum,
  times,
  toStep,
  type Value,
  ZERO,
} from "./exact.ts";
export { gcd } from "./gcd.ts";
export { ceiling, compare, floor, lcm, magnitude, nearest, type Ratio } from "./ratio.ts";
export { FACE_DIGITS, ratioToDecimal, toDecimal } from "./toDecimal.ts";
