import { type Exact, exact, fraction, greatest, least, minus, over, plus } from "../number/exact.ts";
import { compareRatios, magnitude } from "../number/ratio.ts";

/** Amounts from `from` to `to` are printed to the nearest multiple of `nearest`. Exact text. */
export interface RoundingBand {
  readonly from: string;
  readonly to?: string;
  readonly nearest: string;
}

/** How a figure is rounded before it is printed. */
export type RoundingRule =
  | {
      readonly by: "bands";
      /** What is printed as 0 lies below this. */
      readonly zeroBelow: string;
      readonly bands: readonly RoundingBand[];
      /** Guidance may be rounded more coarsely than it says; law is not. */
      readonly binding: "law" | "guidance";
    }
  /** To a number of significant digits. */
  | { readonly by: "significant"; readonly digits: number }
  /** To the first of `steps` that it can have been rounded to, else to the last digit printed. */
  | { readonly by: "printed"; readonly steps?: readonly string[] };

/** The interval that a printed figure may have been rounded from, and whether it was printed as nothing. */
export interface RoundedFrom {
  readonly low: Exact;
  readonly high: Exact;
}

/** Below what limit a printed 0 lies. `unit` is one in its last printed digit. */
export function limitOfZero(rule: RoundingRule, unit: Exact): Exact {
  return rule.by === "bands" ? exact(rule.zeroBelow) : over(unit, TWO);
}

/**
 * All that a printed figure above 0 may stand for. Ends count in, since no rule says which way a half
 * goes. A figure finer than its rule allows was rounded to its own last digit.
 */
export function roundedFrom(printed: Exact, rule: RoundingRule, unit: Exact): RoundedFrom {
  if (rule.by === "significant") {
    const step = power(magnitude(printed) - rule.digits + 1);
    return around(printed, divides(step, printed) ? greatest(step, unit) : unit);
  }
  if (rule.by === "printed") {
    return around(
      printed,
      rule.steps?.map((step) => exact(step)).find((step) => divides(step, printed)) ?? unit,
    );
  }
  return inBands(printed, rule, unit) ?? around(printed, unit);
}

function inBands(
  printed: Exact,
  { bands, binding }: Extract<RoundingRule, { by: "bands" }>,
  unit: Exact,
): RoundedFrom | undefined {
  const all = bands.flatMap((band): RoundedFrom[] => {
    const step = exact(band.nearest);
    if (!divides(step, printed)) return [];
    const { low, high } = around(printed, binding === "guidance" ? greatest(step, unit) : step);
    // Guidance binds nobody: what it would print as 0 may be printed all the same.
    const isTrifle =
      band === bands[0] && binding === "guidance" && compareRatios(printed, exact(band.from)) < 0;
    const from = isTrifle ? low : greatest(low, exact(band.from));
    const to = band.to === undefined ? high : least(high, exact(band.to));
    return compareRatios(from, to) <= 0 ? [{ low: from, high: to }] : [];
  });
  const [first, ...rest] = all;
  return (
    first && rest.reduce((a, b) => ({ low: least(a.low, b.low), high: greatest(a.high, b.high) }), first)
  );
}

function around(printed: Exact, step: Exact): RoundedFrom {
  const half = over(step, TWO);
  return { low: minus(printed, half), high: plus(printed, half) };
}

function divides(step: Exact, value: Exact): boolean {
  return over(value, step).d === 1n;
}

function power(of: number): Exact {
  const ten = 10n ** BigInt(Math.abs(of));
  return of >= 0 ? fraction(ten) : fraction(1n, ten);
}

const TWO: Exact = /* @__PURE__ */ fraction(2n);
