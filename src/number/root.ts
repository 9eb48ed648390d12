import { type Exact, fraction, ZERO } from "./exact.ts";

const DIGITS = 6;

/** The square root of what is not below 0, to six significant digits, rounded up. */
export function rootUp({ n, d }: Exact): Exact {
  if (n <= 0n) return ZERO;
  // √(n/d) = √(n·d)/d; a factor of 100 to some power makes room for the digits that are asked for.
  const size = `${n * d}`.length - 2 * `${d}`.length;
  const places = Math.max(0, DIGITS + 2 - Math.floor(size / 2));
  const scale = 10n ** BigInt(places);
  const root = wholeRootUp(n * d * scale * scale);
  const above = (root + d - 1n) / d;
  const extra = `${above}`.length - DIGITS;
  if (extra <= 0) return fraction(above, scale);
  const step = 10n ** BigInt(extra);
  return fraction(((above + step - 1n) / step) * step, scale);
}

/** The least whole number whose square is not below this one: Newton's method from above. */
function wholeRootUp(square: bigint): bigint {
  let root = 10n ** BigInt(Math.ceil(`${square}`.length / 2));
  for (;;) {
    const next = (root + square / root) / 2n;
    if (next >= root) break;
    root = next;
  }
  return root * root < square ? root + 1n : root;
}
