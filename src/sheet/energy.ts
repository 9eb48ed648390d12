import type { Decimal } from "decimal.js";
import type { ComponentId } from "../food/components.ts";
import { type EnergyPart, type EnergySystem, type EnergySystemId, energySystems } from "../food/energy.ts";
import { exact, type Fraction, fraction, isZero, over, sum, toDecimal, ZERO } from "../number/fraction.ts";
import { apportion } from "../number/share.ts";
import { combine, type Tally } from "./tally.ts";

/** One constituent's share of the energy. */
export interface EnergyShare {
  readonly of: EnergyPart;
  /** What it brings, kcal. */
  readonly energy: Tally;
  /** Its exact share, 0 to 1; of what is known, where lines are silent. */
  readonly share: Decimal;
  readonly exactShare: Fraction;
  /** Whole per cent; all of them total 100 (largest remainder), or 0 where there is no energy. */
  readonly percent: number;
}

/** The shares of energy, by a named factor system. */
export interface EnergyShares {
  readonly system: EnergySystemId;
  readonly source: string;
  /** The energy that the shares are of: Σ grams × factor, kcal. */
  readonly energy: Tally;
  readonly shares: readonly EnergyShare[];
  /** Whether every line says all that the shares need. */
  readonly complete: boolean;
}

/** Shares energy among its constituents, from what a sheet holds of them. */
export function shareEnergy(of: (id: ComponentId) => Tally, id: EnergySystemId): EnergyShares {
  const system: EnergySystem = energySystems[id];
  const parts = (Object.keys(system.parts) as EnergyPart[]).flatMap((part) => {
    const term = system.parts[part];
    return term ? [{ part, energy: combine("kcal", [[of(term.component), exact(term.factor)]]) }] : [];
  });
  const total = sum(parts.map((p) => p.energy.exact));
  const percents = isZero(total)
    ? parts.map(() => 0n)
    : apportion(
        100n,
        parts.map((p) => p.energy.exact),
      );
  return {
    system: id,
    source: system.source,
    energy: combine(
      "kcal",
      parts.map((p) => [p.energy, fraction(1n)]),
    ),
    shares: parts.map(({ part, energy }, i) => {
      const exactShare = isZero(total) ? ZERO : over(energy.exact, total);
      return {
        of: part,
        energy,
        share: toDecimal(exactShare),
        exactShare,
        percent: Number(percents[i] ?? 0n),
      };
    }),
    complete: parts.every((p) => p.energy.complete),
  };
}
