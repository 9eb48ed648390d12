/** `Σ value of the chosen ≤ limit`, one candidate a line, in whole numbers. */
export interface Restriction {
  /** By line, by candidate. */
  readonly values: readonly (readonly bigint[])[];
  readonly limit: bigint;
}

/** How far to shift whole numbers down for sums of one a line to stay below 2 to the 52. */
export function shiftFor(values: readonly (readonly bigint[])[]): bigint {
  let most = 0n;
  for (const line of values) {
    for (const v of line) {
      const size = v < 0n ? -v : v;
      if (size > most) most = size;
    }
  }
  const bits = 51 - values.length.toString(2).length;
  return BigInt(Math.max(0, most.toString(2).length - bits));
}

export function smallest(values: readonly bigint[]): bigint {
  let [least = 0n] = values;
  for (const v of values) if (v < least) least = v;
  return least;
}

export function largest(values: readonly bigint[]): bigint {
  let [most = 0n] = values;
  for (const v of values) if (v > most) most = v;
  return most;
}

/** The indices of some values, the least first, earlier ones first among equals. */
export function ranked(values: readonly bigint[]): number[] {
  return values
    .map((_, k) => k)
    .sort((a, b) => {
      const [left, right] = [values[a] as bigint, values[b] as bigint];
      return left < right ? -1 : left > right ? 1 : a - b;
    });
}
