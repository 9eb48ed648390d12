import { type Exact, exact } from "../number/exact.ts";
import { avoirdupois } from "./data/avoirdupois.ts";
import { cubicMeasures } from "./data/cubic.ts";
import { energies } from "./data/energy.ts";
import { lengths } from "./data/length.ts";
import { nordicMeasures } from "./data/nordic.ts";
import { siMasses, siVolumes } from "./data/si.ts";
import type { Measures } from "./measureSet.ts";

export { type HouseholdUnit, householdUnits } from "./measureSet.ts";

/** What a unit measures. */
export type UnitKind = "mass" | "volume" | "length" | "energy";

/** Units of one size everywhere. */
export type FixedUnitId =
  | keyof typeof siMasses
  | keyof typeof siVolumes
  | keyof typeof cubicMeasures
  | keyof typeof nordicMeasures
  | keyof typeof lengths
  | keyof typeof avoirdupois
  | keyof typeof energies;

/** A unit of a known size. */
export interface Unit {
  /** Canonical name: `g`, `fl oz`, `cup`. */
  readonly id: string;
  readonly kind: UnitKind;
  /** Grams, millilitres, millimetres or kilojoules in one. */
  readonly size: Exact;
  /** The set that the size comes from, for spoons, cups and the like. */
  readonly measures?: Measures;
}

/** The unit that sizes of a kind are given in. */
export const baseUnit: { readonly [K in UnitKind]: FixedUnitId } = {
  mass: "g",
  volume: "ml",
  length: "mm",
  energy: "kJ",
};

let fixed: ReadonlyMap<string, Unit> | undefined;

/** The unit of that canonical name among those of one size everywhere. */
export function fixedUnit(id: string): Unit | undefined {
  fixed ??= makeFixed();
  return fixed.get(id);
}

/** Canonical names of the units of one size everywhere. */
export function fixedUnitIds(): readonly string[] {
  fixed ??= makeFixed();
  return [...fixed.keys()];
}

function makeFixed(): ReadonlyMap<string, Unit> {
  const tables: readonly (readonly [UnitKind, { readonly [id: string]: string }])[] = [
    ["mass", siMasses],
    ["mass", avoirdupois],
    ["volume", siVolumes],
    ["volume", cubicMeasures],
    ["volume", nordicMeasures],
    ["length", lengths],
    ["energy", energies],
  ];
  const units = tables.flatMap(([kind, table]) =>
    Object.entries(table).map(([id, size]): Unit => Object.freeze({ id, kind, size: exact(size) })),
  );
  return new Map(units.map((unit) => [unit.id, unit]));
}
