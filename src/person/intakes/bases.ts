import type { Decimal } from "decimal.js";
import type { ComponentId } from "../../food/components.ts";
import { within } from "../../number/error.ts";
import { exact, type Fraction, fraction, sum, times, toDecimal, type Value } from "../../number/fraction.ts";
import { type BasisRule, basisRules } from "./basisRules.ts";

/** Amounts of components, each in its own unit. What is absent is unknown. */
export type Amounts = { readonly [C in ComponentId]?: Value };

/** An amount in the terms that a figure counts. */
export interface CountedAmount {
  readonly value: Decimal;
  /** The rule it was converted by; absent where it was given in these terms. */
  readonly rule?: BasisRule;
}

/**
 * An amount of what a figure counts (its `of`), from amounts in whatever terms are known: as given
 * where it is given, else by the first rule whose every term is known. Nothing where none serves.
 *
 * Throws the number codes for amounts that are none.
 *
 * @example
 * ```ts
 * amountOf(["vitaminARe"], { vitaminARae: 700, retinol: 300 })?.value; // => 1100
 * ```
 */
export function amountOf(of: readonly ComponentId[], amounts: Amounts): CountedAmount | undefined {
  const parts: Fraction[] = [];
  let rule: BasisRule | undefined;
  for (const id of of) {
    const given = read(amounts, id);
    if (given) {
      parts.push(given);
      continue;
    }
    const serves = basisRules.find(
      (each) => each.gives === id && each.from.every((from) => read(amounts, from)),
    );
    if (!serves) return undefined;
    rule = serves;
    parts.push(
      sum(
        serves.from.map((from) =>
          times(read(amounts, from) ?? fraction(0n), serves.terms[from] ?? fraction(0n)),
        ),
      ),
    );
  }
  return { value: toDecimal(sum(parts)), ...(rule && { rule }) };
}

function read(amounts: Amounts, id: ComponentId): Fraction | undefined {
  const value = Object.hasOwn(amounts, id) ? amounts[id] : undefined;
  return value === undefined ? undefined : within([id], () => exact(value));
}
